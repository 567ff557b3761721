import { describe, expect, it } from 'vitest'
import { acceptedType, withoutQuoted } from '../../src/http/serving/representation/negotiate.ts'

const offers = ['application/json', 'text/html', 'application/pdf', 'image/svg+xml'] as const

describe('quoted strings', () => {
  // A reading that starts anew at every quote is quadratic: one that takes all at the first has looked at each sign once.
  it('a string without an end is one string, however many quotes and backslashes it holds', () => {
    expect(withoutQuoted('"\\'.repeat(8000))).toBe('""')
    expect(withoutQuoted(`a/b;x=${'"\\'.repeat(8000)}`)).toBe('a/b;x=""')
    expect(withoutQuoted('"'.repeat(8001))).toBe('""'.repeat(4001))
  })

  it('ends at its quote, not at an escaped one', () => {
    expect(withoutQuoted('a;b="1,\\",2", c;d="x"')).toBe('a;b="", c;d=""')
  })
})

describe('accepted type (RFC 9110 §12.5.1)', () => {
  for (const [accept, expected] of [
    [undefined, 'application/json'],
    ['', 'application/json'],
    ['*/*', 'application/json'],
    ['application/pdf', 'application/pdf'],
    ['APPLICATION/PDF', 'application/pdf'],
    ['application/*', 'application/json'],
    ['image/*', 'image/svg+xml'],
    ['text/html, application/pdf;q=0.9', 'text/html'],
    ['text/html;q=0.8, application/pdf;q=0.9', 'application/pdf'],
    ['text/html;q=0.8, application/pdf;q=0.9, */*;q=0.95', 'application/json'],
    ['application/json;q=0, */*', 'text/html'],
    ['application/*;q=0, */*;q=0.1', 'text/html'],
    ['*/*;q=0.1, application/json;q=0', 'text/html'],
    ['text/html;level=1;q=0.5, application/pdf;q=0.4', 'text/html'],
    ['application/pdf;version="1,7;q=0"', 'application/pdf'],
    ['application/pdf ; q = 0.3, text/html ;q=0.2', 'application/pdf'],
    ['text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,*/*;q=0.8', 'text/html'],
    ['application/json;q=0', undefined],
    ['text/html;q=0, application/pdf;q=0.000', undefined],
    ['text/plain', undefined],
    ['*/html', undefined],
    ['application/pdf;q=2', undefined],
    ['application/pdf;q=-1', undefined],
    ['nonsense, ;;;, /', undefined]
  ] as const) {
    it(`answers ${String(accept)} with ${String(expected)}`, () => expect(acceptedType(accept, offers)).toBe(expected))
  }
})
