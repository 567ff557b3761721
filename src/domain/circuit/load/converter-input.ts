/** What a converter draws from the voltage that feeds it. */

interface ConverterDraw {
  readonly outputW: number
  readonly efficiency: number
  readonly idleW: number
  readonly inputV: number
}

/**
 * What a converter takes for what it gives.
 *
 *   Pin = Pout/η + P0
 *
 * @source conservation of energy
 * @check  680 W, η 0.88, 4 W → 776.7 W
 */
export function converterInputW({ outputW, efficiency, idleW }: Omit<ConverterDraw, 'inputV'>): number {
  return outputW / efficiency + idleW
}

/**
 * Its input current.
 *
 *   Iin = (Pout/η + P0)/Uin
 *
 * @source conservation of energy
 * @check  70 A at 13.6 V, η 0.88, 4 W idle, from 24 V → 45.24 A
 */
export function converterInputA(draw: ConverterDraw): number {
  return converterInputW(draw) / draw.inputV
}
