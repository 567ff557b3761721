import { describe, expect, it } from 'vitest'
import { remembered } from '../../../src/plan/designer/search/remembered.ts'

describe('a function with a memory', () => {
  const asked: (readonly number[])[] = []
  const sum = remembered((...numbers: readonly number[]) => {
    asked.push(numbers)
    return numbers.length === 1 ? undefined : numbers.reduce((total, each) => total + each, 0)
  })

  it('is asked once for the same numbers in the same order', () => {
    expect([sum(1, 2), sum(1, 2), sum(2, 1), sum(1, 2, 3), sum(1, 2)]).toEqual([3, 3, 3, 6, 3])
    expect(asked).toEqual([
      [1, 2],
      [2, 1],
      [1, 2, 3]
    ])
  })

  it('remembers that there is no answer', () => {
    asked.length = 0
    expect([sum(7), sum(7)]).toEqual([undefined, undefined])
    expect(asked).toEqual([[7]])
  })
})
