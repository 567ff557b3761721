/** The Job of a split search on this machine: its pods' own script, the same bytes as one call; its manifest agrees with itself. */
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { readSettings } from '../../src/http/serving/settings.ts'
import { listening } from '../support/service.ts'

const deploy = fileURLToPath(new URL('../../scripts/deploy', import.meta.url))
const requestFile = path.join(deploy, 'kubernetes/search-job/request.json')
const folder = mkdtempSync(path.join(tmpdir(), 'search-'))
let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening({ workers: 1, workTimeoutMs: 60_000 })
})
afterAll(async () => {
  await service.app.close()
  rmSync(folder, { recursive: true })
})

describe('a search as a job', () => {
  it('gives from three processes the very bytes of one call', async () => {
    const script = path.join(deploy, 'search-locally.ts')
    await promisify(execFile)(process.execPath, ['--import', 'tsx', script, requestFile, '3', service.url, folder])
    const reply = await fetch(`${service.url}/v1/designs/search`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: readFileSync(requestFile)
    })
    expect(readFileSync(path.join(folder, 'answer.json'), 'utf8')).toBe(await reply.text())
  })

  it('has as many pods as parts, and settings that the service takes', () => {
    const { spec } = parse(readFileSync(path.join(deploy, 'kubernetes/search-job/job.yaml'), 'utf8'))
    const [container] = spec.template.spec.containers
    const {
      PARTS,
      REQUEST: _,
      SEARCH_DIR: __,
      ...settings
    } = Object.fromEntries(container.env.map(({ name, value }: { name: string; value: string }) => [name, value]))
    expect(spec.completionMode).toBe('Indexed')
    expect(Number(PARTS)).toBe(spec.completions)
    expect(readSettings(settings)).not.toHaveProperty('faults')
  })
})
