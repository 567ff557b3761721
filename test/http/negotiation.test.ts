import { describe, expect, it } from 'vitest'
import { chooseForm } from '../../src/http/negotiation.ts'

const forms = ['application/json', 'text/html', 'application/pdf']

describe('content negotiation (RFC 9110 §12.5.1)', () => {
  for (const [accept, form] of [
    [undefined, 'application/json'],
    ['', 'application/json'],
    ['*/*', 'application/json'],
    ['application/*', 'application/json'],
    ['application/json; charset=utf-8', 'application/json'],
    ['APPLICATION/PDF', 'application/pdf'],
    ['text/html, application/pdf;q=0.9', 'text/html'],
    ['text/html;q=0.2, application/pdf;q=0.9', 'application/pdf'],
    ['text/*;q=0.3, text/html;q=0.7, */*;q=0.5', 'text/html'],
    ['application/json;q=0, */*', 'text/html'],
    ['text/html;level=1', 'text/html'],
    ['image/png, */*;q=0.1', 'application/json'],
    ['image/png', undefined],
    ['*/*;q=0', undefined],
    [';;', undefined]
  ] as const) {
    it(`answers ${accept ?? 'no header'} with ${form ?? '406'}`, () => expect(chooseForm(accept, forms)).toBe(form))
  }

  // The example of RFC 9110 §12.5.1: text/html;level=3 is 0.7 there because parameters count; here they do not.
  it('prefers the more specific range', () =>
    expect(chooseForm('application/*;q=0.9, application/pdf;q=0.1, text/html;q=0.5', forms)).toBe('application/json'))
})
