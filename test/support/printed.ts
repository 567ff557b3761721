/** Comparison with a figure as a publication prints it: the tolerance is what its digits can tell. */
import { expect } from 'vitest'

/** Half a unit in the last printed place: '0.1019' → 0.00005, '1.3e2' → 5. */
export function printedTolerance(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(exponent) - decimals)
}

/** Refuses a figure too coarse to catch a 2 % error, unless the test says so on purpose. */
export function expectPrinted(actual: number, printed: string, { coarsest = 0.02 } = {}): void {
  const expected = Number(printed)
  const tolerance = printedTolerance(printed)
  expect(tolerance, `'${printed}' has too few digits to test against`).toBeLessThanOrEqual(
    coarsest * Math.abs(expected)
  )
  const deviation = Math.abs(actual - expected)
  expect(deviation, `${actual} does not print as ${printed}`).toBeLessThanOrEqual(tolerance * (1 + 1e-9))
}
