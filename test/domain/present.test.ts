import { describe, expect, it } from 'vitest'
import { present } from '../../src/domain/present.ts'

describe('the fields that have a value', () => {
  it('keeps nought, false and an empty text, and leaves out what is unknown', () => {
    const kept = present({ powerW: 0, mono: false, label: '', lengthM: undefined as number | undefined })
    expect(Object.keys(kept)).toEqual(['powerW', 'mono', 'label'])
    expect(kept).toEqual({ powerW: 0, mono: false, label: '' })
  })
})
