/** By arithmetic. */
import { expect, it } from 'vitest'
import { mean } from '../../src/numeric/mean.ts'

it('the mean of 2, 3 and 7 is 4, whatever their order', () => {
  expect(mean([2, 3, 7])).toBe(4)
  expect(mean([7, 2, 3])).toBe(4)
})
