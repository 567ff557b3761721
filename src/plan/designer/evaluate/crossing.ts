/**
 * Frequency at which a curve passes a value between two neighbours of its grid, straight on logarithms of both.
 *
 * @param above  index of the upper neighbour, at least 1
 * @check  10 at 20 Hz, 40 at 80 Hz, value 20 → 40 Hz
 */
function crossingHz(frequenciesHz: Float64Array, values: Float64Array, above: number, value: number): number {
  const [low, high] = [Math.log(values[above - 1] as number), Math.log(values[above] as number)]
  const [from, to] = [frequenciesHz[above - 1] as number, frequenciesHz[above] as number]
  return from * (to / from) ** ((Math.log(value) - low) / (high - low))
}

/** Lowest frequency of a grid at which a curve has risen to a value; its first where it begins above, none where it never does. */
export function risesToHz(frequenciesHz: Float64Array, values: Float64Array, value: number): number | undefined {
  const above = values.findIndex(each => each >= value)
  if (above <= 0) return above < 0 ? undefined : frequenciesHz[0]
  return crossingHz(frequenciesHz, values, above, value)
}
