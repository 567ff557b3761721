/** Grids of a positive variable. */

/** `points` values from `from` to `to`, equally spaced in their logarithm, both ends exact. */
export function logarithmicGrid(from: number, to: number, points: number): number[] {
  const ratio = Math.log(to / from) / (points - 1)
  return Array.from({ length: points }, (_, index) =>
    index === points - 1 ? to : index === 0 ? from : from * Math.exp(ratio * index)
  )
}
