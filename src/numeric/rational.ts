/** Exact fractions, for counts of networks and shares that must come out equal or not at all. */

/** Always in lowest terms, the denominator above zero. */
export interface Rational {
  readonly numerator: bigint
  readonly denominator: bigint
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [left, right] = [a < 0n ? -a : a, b < 0n ? -b : b]
  while (right !== 0n) [left, right] = [right, left % right]
  return left
}

/** @throws RangeError when the denominator is zero */
export function rational(numerator: bigint, denominator = 1n): Rational {
  if (denominator === 0n) throw new RangeError('a fraction has no denominator of zero')
  const divisor = greatestCommonDivisor(numerator, denominator) * (denominator < 0n ? -1n : 1n)
  return { numerator: numerator / divisor, denominator: denominator / divisor }
}

/**
 * The decimal a person typed, not the binary number nearest to it: 3.6 is 18/5.
 *
 * @param value  finite
 * @check 3.6 → 18/5; 1e-7 → 1/10000000
 */
export function rationalOf(value: number): Rational {
  const [mantissa = '0', exponent = '0'] = String(value).split('e')
  const [whole = '0', decimals = ''] = mantissa.split('.')
  const places = BigInt(decimals.length) - BigInt(exponent)
  const digits = BigInt(whole + decimals)
  return places >= 0n ? rational(digits, 10n ** places) : rational(digits * 10n ** -places)
}

export function sum(terms: readonly Rational[]): Rational {
  return terms.reduce(
    (total, term) =>
      rational(
        total.numerator * term.denominator + term.numerator * total.denominator,
        total.denominator * term.denominator
      ),
    rational(0n)
  )
}

export function product(a: Rational, b: Rational): Rational {
  return rational(a.numerator * b.numerator, a.denominator * b.denominator)
}

/** @throws RangeError when the value is zero */
export function reciprocal({ numerator, denominator }: Rational): Rational {
  return rational(denominator, numerator)
}

/** Below zero, zero or above zero as a is less than, equal to or more than b. */
export function compare(a: Rational, b: Rational): number {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}

export function numberOf({ numerator, denominator }: Rational): number {
  return Number(numerator) / Number(denominator)
}

/** `1/2`, also `2/1`. */
export function textOf({ numerator, denominator }: Rational): string {
  return `${numerator}/${denominator}`
}
