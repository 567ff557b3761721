/** How far the figures of a sheet may lie from the true ones by nothing but the rounding in print. */
import {
  type PartialSmallSignalSet,
  printedQuantities,
  type SmallSignalQuantity,
  smallSignalQuantities
} from './small-signal-quantities.ts'

/** Half a unit of the last printed digit over the figure itself; nought for what is not printed. */
export type Roundings = { readonly [Name in SmallSignalQuantity]?: number }

/** Digits that a figure can carry through the conversion of its unit. */
const DIGITS = 12

/** Place of the last digit that is not nought: 0.38 → 0.01, 62 → 1, 60 → 10. */
function lastPlace(figure: number): number {
  const [digits = '', exponent = '0'] = figure.toExponential(DIGITS - 1).split('e')
  const decimals = digits.replace(/0+$/, '').split('.')[1]?.length ?? 0
  return 10 ** (Number(exponent) - decimals)
}

/**
 * Relative half unit of the coarsest reading that is plausible: trailing noughts are lost in JSON, so 0.4 may have been
 * 0.40, but Qts is not printed to tenths, nor Vas to tens of litres.
 *
 *   δ = ½·min(place of the last digit, coarsest step of the quantity)/figure
 *
 * @param value  SI > 0
 * @source derived: rounding to the nearest; the coarsest steps are common practice, no source
 * @check  Qes 0.38 → 0.005/0.38; Vas 60 L → 0.5/60; Qts 0.4 → 0.005/0.4
 */
export function relativeRounding(name: SmallSignalQuantity, value: number): number {
  const { perSi, coarsestStep } = printedQuantities[name]
  const figure = value * perSi
  return (0.5 * Math.min(lastPlace(figure), coarsestStep)) / figure
}

export function roundingsOf(given: PartialSmallSignalSet): Roundings {
  return Object.fromEntries(
    smallSignalQuantities.flatMap(name => {
      const value = given[name]
      return value === undefined ? [] : [[name, relativeRounding(name, value)]]
    })
  )
}
