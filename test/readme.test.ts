/** What the README shows is what the service does. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { settingTable } from '../src/http/serving/settings.ts'
import { post } from './support/call.ts'

const root = new URL('..', import.meta.url)
const readme = readFileSync(new URL('README.md', root), 'utf8')
const settingNames = Object.values(settingTable).map(({ variable }) => variable)
const { scripts } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'))

const blocks = [...readme.matchAll(/```(sh|json)\n([\s\S]*?)```/g)].map(([, language, text]) => ({
  language,
  text: text ?? ''
}))
const calls = blocks.flatMap(({ text }, index) => {
  const found = /^curl -s localhost:3000(\S+) .*-d '([\s\S]*)'/.exec(text)
  return found === null ? [] : [{ path: found[1] ?? '', body: JSON.parse(found[2] ?? ''), shown: blocks[index + 1] }]
})

describe('README', () => {
  it('shows calls with their answers', () => {
    expect(calls).toHaveLength(2)
    for (const { shown } of calls) expect(shown?.language).toBe('json')
  })

  for (const { path, body, shown } of calls) {
    it(`shows what POST ${path} answers`, async () => {
      const answer = await post(path, body)
      expect(answer.body).toMatchObject(JSON.parse(shown?.text ?? ''))
    })
  }

  it('names commands that exist', () => {
    const named = [...readme.matchAll(/npm (?:run )?(demo|test|start)\b/g)].map(([, name]) => name ?? '')
    expect(new Set(named)).toEqual(new Set(['demo', 'test', 'start']))
    for (const name of named) expect(scripts).toHaveProperty(name)
  })

  it('names settings that exist', () => {
    const named = [...readme.matchAll(/`([A-Z]+(?:_[A-Z0-9]+)*)`/g)]
      .map(([, name]) => name ?? '')
      .filter(name => name.length > 3)
    expect(named.length).toBeGreaterThan(5)
    for (const name of named) expect(settingNames).toContain(name)
  })
})
