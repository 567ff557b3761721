/** Rounding to the digits that travel on the wire, so that what is shown is exactly what was computed with. */

/** @check 0.123456789 → 0.123457; 41666.6667 → 41666.7 */
function sixDigits(value: number): number {
  return Number(value.toPrecision(6))
}

/** The same record with every number in it, to any depth, at six significant digits. */
export function sixDigitsThroughout<Value>(value: Value): Value {
  if (typeof value === 'number') return sixDigits(value) as Value
  if (Array.isArray(value)) return value.map(sixDigitsThroughout) as Value
  if (typeof value !== 'object' || value === null) return value
  const members = Object.entries(value).map(([name, inner]) => [name, sixDigitsThroughout(inner)])
  return Object.fromEntries(members) as Value
}
