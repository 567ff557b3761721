/**
 * @param values  at least one
 * @returns their arithmetic mean
 * @check  2, 3 and 7 → 4
 */
export const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length
