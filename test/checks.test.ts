/**
 * Every `@check` of the sources is repeated by a test: one file of tests names what the comment stands over, in its code or in a
 * title, and holds each result that the comment gives. What is compared are digits, for a comment counts in millimetres.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const filesIn = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.ts'))
    .map(name => ({ file: `${folder}/${name}`, text: readFileSync(`${folder}/${name}`, 'utf8') }))

const NUMBER = /(?<![A-Za-z_\d.])[-−]?\d(?:[\d_]|[\u00a0\u2009\u202f ](?=\d{3}(?!\d)))*(?:\.[\d_]+)?(?:e[-+]?\d+)?/g

/** 0.0355, 3.55e-2 and 35.5 are the same digits. */
const digitsOf = (text: string) => {
  const plain = text.replaceAll(/[-−_\u00a0\u2009\u202f ]/g, '').split('e')[0] ?? ''
  return plain.replace('.', '').replace(/^0+/, '').replace(/0+$/, '')
}
const numbersOf = (text: string) => [...text.matchAll(NUMBER)].map(([found]) => found)
/** One digit alone is in every file. */
const tells = (number: string) => number.replaceAll(/\D/g, '').replace(/^0+/, '').length >= 2

interface Check {
  readonly file: string
  readonly name: string
  readonly results: readonly string[]
}

function checksOf(file: string, text: string): readonly Check[] {
  return [...text.matchAll(/\/\*\*(?:(?!\*\/)[\s\S])*?@check((?:(?!\*\/)[\s\S])*)\*\//g)].map(found => {
    const said = (found[1] ?? '').split(/\n\s*\*\s*@/)[0] ?? ''
    const below = text.slice(found.index + found[0].length)
    const name = /^\s*(?:export )?(?:async )?(?:function |const |readonly )?(\w+)/.exec(below)?.[1] ?? ''
    // what stands before an arrow is given, what stands behind it is the result
    const results = said.split(';').flatMap(part => numbersOf(part.slice(part.lastIndexOf('→') + 1)).filter(tells))
    return { file, name, results: results.map(digitsOf) }
  })
}

const sources = filesIn('src')
const tests = filesIn('test')
  .filter(({ file }) => file !== 'test/checks.test.ts')
  .map(({ file, text }) => ({ file, text, digits: new Set(numbersOf(text).map(digitsOf)) }))

const repeats = ({ name, results }: Check) =>
  tests.some(({ text, digits }) => new RegExp(`\\b${name}\\b`).test(text) && results.every(each => digits.has(each)))

/** Not repeated yet: may only grow shorter. */
const UNREPEATED: readonly string[] = ['plan/bill/bill-market screwNumber', 'plan/electric/plan-wires driverShare']

describe('the check of a formula', () => {
  const checks = sources.flatMap(({ file, text }) => checksOf(file, text))

  it('is found, wherever it stands', () => {
    const written = sources.reduce((sum, { text }) => sum + text.split('@check').length - 1, 0)
    expect(written).toBeGreaterThan(200)
    expect(checks).toHaveLength(written)
    expect(checks.filter(({ name }) => name === '')).toEqual([])
  })

  it('is repeated by a test that names it and holds its figures', () => {
    const missing = checks.filter(check => !repeats(check)).map(({ file, name }) => `${file.slice(4, -3)} ${name}`)
    expect(missing.toSorted()).toEqual(UNREPEATED.toSorted())
  })

  it('is missed where the figure is another, or the name', () => {
    const [made] = checksOf('a.ts', '/** @check  3 m → 21.151 mm² */\nexport function awgArea() {}')
    expect(made).toEqual({ file: 'a.ts', name: 'awgArea', results: ['21151'] })
    expect(made && repeats(made)).toBe(true)
    expect(made && repeats({ ...made, results: ['21152'] })).toBe(false)
    expect(made && repeats({ ...made, name: 'awgAreaOfNobody' })).toBe(false)
  })
})

/** What stands over each table of `test/published`, and its name. */
const tables = filesIn('test/published').flatMap(({ text }) =>
  [...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export const (\w+)/g)].map(([, said = '', name = '']) => ({
    said,
    name
  }))
)

describe('a table that is only remembered', () => {
  const recalled = tables.filter(({ name }) => name.endsWith('Recalled'))

  it('says so by its name: beside a table of the sources from memory it is a copy, not a source', () => {
    expect(recalled.length).toBeGreaterThan(2)
    const marked = tables.filter(({ said }) => /from memory|remembered/i.test(said) && !/recomputed/.test(said))
    expect(marked.map(({ name }) => name).filter(name => !/Recalled$/.test(name))).toEqual([])
    expect(recalled.filter(({ said }) => !/from memory|remembered/i.test(said))).toEqual([])
  })

  it('is called so by the test that holds it against the sources', () => {
    for (const { name } of recalled) {
      const users = tests.filter(({ file, text }) => file.endsWith('.test.ts') && text.includes(name))
      expect(users.length, name).toBeGreaterThan(0)
      for (const { file, text } of users) expect(/[`'][^`'\n]*remembered/.test(text), `${file}: ${name}`).toBe(true)
    }
  })
})
