import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/http/wire/problem/refusal.ts'
import { MOST_DEPTH, readJson } from '../../src/http/wire/request/json-reader.ts'

function faults(text: string) {
  try {
    readJson(text)
    return []
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return error.errors?.map(({ pointer, code }) => `${code} ${pointer}`) ?? error.code
  }
}

describe('JSON reader', () => {
  it('reads what JSON.parse reads', () => {
    const harmless = fc
      .json({ maxDepth: 5 })
      .filter(text => !/__proto__|constructor|prototype|e-[3-9]\d|e-\d{3}/.test(text))
    fc.assert(
      fc.property(harmless, text => {
        expect(readJson(text)).toEqual(JSON.parse(text))
      }),
      { seed: 7, numRuns: 400 }
    )
  })

  // RFC 8259 §2 and §7: none of these is a JSON text.
  for (const text of [
    '',
    ' ',
    '{',
    '}',
    "{'a':1}",
    '{"a":1,}',
    '[1,]',
    'NaN',
    '{"a":Infinity}',
    '01',
    '+1',
    '.5',
    '1.',
    '{} {}',
    '"\t"',
    '"\\x41"',
    '{"a"}',
    '[1 2]'
  ]) {
    it(`refuses ${JSON.stringify(text)}`, () => expect(faults(text)).toBe('unreadable-body'))
  }

  // RFC 7493 §2.1 to §2.3: names are unique, numbers fit double precision, no half surrogate pair.
  for (const [text, fault] of [
    ['{"a":1,"a":2}', 'duplicate-name /a'],
    ['{"a":1,"\\u0061":2}', 'duplicate-name /a'],
    ['[{"b":{"c":1,"c":1}}]', 'duplicate-name /0/b/c'],
    ['{"a":1,"b":{"a":1},"c":[{"a":1},{"a":1}],"a":3}', 'duplicate-name /a'],
    ['{"x":1e999}', 'too-large /x'],
    ['{"x":5e-324}', 'too-small /x'],
    ['{"x":-1e-999}', 'too-small /x'],
    ['[0,-1e400]', 'too-large /1'],
    ['{"x":["a","\\ud800"]}', 'broken-character /x/1'],
    ['{"x":{"\\ud800":1}}', 'broken-character /x'],
    ['{"a/b":{"c~d":{"e":1,"e":1}}}', 'duplicate-name /a~1b/c~0d/e'],
    ['{"__proto__":{"x":1}}', 'forbidden-name /__proto__'],
    ['{"\\u005f_proto__":1}', 'forbidden-name /__proto__'],
    ['{"constructor":{"prototype":{}}}', 'forbidden-name /constructor']
  ] as const) {
    it(`says ${fault} of ${text}`, () => expect(faults(text)).toContain(fault))
  }

  it('lets the same name stand in different objects, and braces and quotes in strings', () => {
    const text =
      '{"a":{"a":[{"a":"{\\"a\\":1,"},{"a":"}\\\\"}]},"b":"\\ud83d\\ude00","c":[1e308,-0,0.000e5,0e-999,1e-30,-1.5E+3]}'
    expect(readJson(text)).toEqual(JSON.parse(text))
  })

  it('goes as deep as the limit and no deeper, without exhausting the stack', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth)
    expect(faults(nested(MOST_DEPTH))).toEqual([])
    expect(faults(nested(MOST_DEPTH + 1))).toEqual([`too-deep ${'/0'.repeat(MOST_DEPTH)}`])
    expect(faults(`${'{"a":'.repeat(40_000)}1${'}'.repeat(40_000)}`)).toEqual([`too-deep ${'/a'.repeat(MOST_DEPTH)}`])
  })
})
