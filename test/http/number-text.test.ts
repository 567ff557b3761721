import { describe, expect, it } from 'vitest'
import { fullArrayText, sixDigitArrayText, sixDigitText } from '../../src/http/wire/answer/number-text.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

/** ECMAScript's own conversion: correctly rounded decimal digits. */
const plain = (value: number) => String(Number(value.toPrecision(6)))

describe('number text', () => {
  it('is what toPrecision(6) says, for numbers of every size', () => {
    const { uniform } = randomStream(11)
    const values = Array.from({ length: 40_000 }, () => {
      const size = 10 ** (uniform() * 22 - 11)
      return (uniform() < 0.5 ? -1 : 1) * size * uniform()
    })
    expect(sixDigitArrayText(values, 1)).toBe(`[${values.map(plain).join(',')}]`)
  })

  it('rounds halves and carries as toPrecision does', () => {
    const { uniform } = randomStream(12)
    const halves = Array.from({ length: 20_000 }, () => {
      const digits = 1e5 + Math.floor(uniform() * 9e5)
      return (digits + 0.5) / 10 ** Math.floor(uniform() * 9)
    })
    const edges = [0, -0, 1, 10, 999999, 999999.5, 99999.95, 9.999995, 0.9999995, 0.001, 0.00099999949, 1e6, 123456.5]
    const values = [...halves, ...edges, 1e21, 1.5e300, 5e-324, 0.1 + 0.2, 100, 1200.5, 0.05, 3e-7]
    expect(sixDigitArrayText(values, 1)).toBe(`[${values.map(plain).join(',')}]`)
  })

  it('says the same of one number as of a list', () => {
    const { uniform } = randomStream(13)
    const values = Array.from({ length: 60_000 }, (_, k) => {
      const tie = (1e5 + Math.floor(uniform() * 9e5) + 0.5) / 10 ** Math.floor(uniform() * 9)
      const any = (uniform() < 0.5 ? -1 : 1) * 10 ** (uniform() * 14 - 6)
      return k % 3 === 0 ? tie : any
    })
    const wrong = [...values, 0, -0, 1e21, 999999.5, 0.00099999949, 1.5e300].filter(v => sixDigitText(v) !== plain(v))
    expect(wrong).toEqual([])
  })

  it('takes the public unit, and every digit where asked', () => {
    expect(sixDigitArrayText([0.0123456789, 0.364], 1e3)).toBe('[12.3457,364]')
    expect(fullArrayText([0.1 + 0.2, 2], 1)).toBe('[0.30000000000000004,2]')
    expect(sixDigitArrayText([], 1)).toBe('[]')
  })

  it('reads arrays longer than its memory', () => {
    const values = Array.from({ length: 20_000 }, (_, k) => k + 0.25)
    expect(JSON.parse(sixDigitArrayText(values, 1))).toEqual(values.map(value => Number(value.toPrecision(6))))
  })

  it('never writes what JSON does not know', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => sixDigitArrayText([1, bad], 1)).toThrow(RangeError)
      expect(() => fullArrayText([1, bad], 1)).toThrow(RangeError)
    }
  })
})
