/** How a figure scatters over the samples. */
import { percentileOfSorted } from '../../../numeric/percentile.ts'

export type FigureSpread<Unit extends string> = Readonly<
  Record<`nominal${Unit}` | `mean${Unit}` | `standardDeviation${Unit}`, number> &
    Record<`percentiles${Unit}`, readonly number[]>
>

/**
 * Mean, standard deviation and percentiles of a sample.
 *
 *   m = Σx/n    s = √(Σ(x − m)²/(n − 1))
 *
 * @param values  at least two
 */
export function spreadOf<Unit extends string>(
  unit: Unit,
  nominal: number,
  values: readonly number[],
  percents: readonly number[]
): FigureSpread<Unit> {
  const sorted = Float64Array.from(values).sort()
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length
  const square = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return {
    [`nominal${unit}`]: nominal,
    [`mean${unit}`]: mean,
    [`standardDeviation${unit}`]: Math.sqrt(square / Math.max(1, sorted.length - 1)),
    [`percentiles${unit}`]: percents.map(percent => percentileOfSorted(sorted, percent))
  } as FigureSpread<Unit>
}

/** Curves of all samples, all values of one frequency side by side so that each can be sorted where it lies. */
interface CurveStore {
  readonly values: Float64Array
  readonly points: number
  readonly samples: number
}

export function curveStore(points: number, samples: number): CurveStore {
  return { values: new Float64Array(points * samples), points, samples }
}

export function storeCurve({ values, samples }: CurveStore, sample: number, curve: readonly number[]): void {
  for (let k = 0; k < curve.length; k++) values[k * samples + sample] = curve[k] as number
}

/** One curve a percentile; leaves the store sorted. */
export function percentileCurves({ values, points, samples }: CurveStore, percents: readonly number[]): number[][] {
  const columns = Array.from({ length: points }, (_, k) => values.subarray(k * samples, (k + 1) * samples).sort())
  return percents.map(percent => columns.map(column => percentileOfSorted(column, percent)))
}
