/** The one-liners of the guide are run as they stand there, wherever the interpreter exists. */
import { execFile, spawnSync } from 'node:child_process'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { firstPath, firstQuery, firstRequest, snippets } from '../../src/http/docs/snippets.ts'
import { operations } from '../../src/http/operations.ts'
import { listening } from '../support/service.ts'

const run = promisify(execFile)
const exists = (command: string) => spawnSync(command, ['--version']).status === 0
const landed = operations.some(({ path }) => firstPath.startsWith(path))

let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening()
})
afterAll(() => service.app.close())

const textOf = (wanted: string) => snippets(service.url).find(({ language }) => language === wanted)?.text ?? ''
const answer = async () => (await service.app.inject({ method: 'POST', url: firstPath, payload: firstRequest })).json()

describe.skipIf(!landed)('one-liners of the guide', () => {
  it.skipIf(!exists('curl'))('curl', async () => {
    const { stdout } = await run('bash', ['-c', textOf('curl')])
    expect(JSON.parse(stdout)).toEqual(await answer())
  })

  it.skipIf(!exists('python3'))('Python', async () => {
    const { stdout } = await run('python3', ['-c', textOf('Python')])
    expect(stdout.trim()).toBe((await answer()).result.summary.lines.join('\n'))
  })

  it('JavaScript', async () => {
    const { stdout } = await run(process.execPath, ['--input-type=module', '-e', textOf('JavaScript')])
    expect(stdout.trim()).toBe((await answer()).result.summary.lines.join('\n'))
  })

  it('the cacheable form is one that a cache keeps', async () => {
    const found = await fetch(service.url + firstQuery)
    expect(found.headers.get('cache-control')).toMatch(/^public/)
    expect((await found.json()).result.cable.designation).toMatch(/AWG/)
  })
})
