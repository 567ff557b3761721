/** Free board round the flanges on a face. Common practice, no source. */
export const frontGaps = { toEdgeM: 15e-3, toFlangeM: 25e-3 } as const

/**
 * Free way before a cone whose ring is as large as the cone itself.
 *
 *   h = d/4
 *
 * @source derived; that it should be: common practice, no source
 * @check  π·0.28·0.07 m = π·0.28²/4
 */
export const ringGapM = (diameterM: number): number => diameterM / 4

interface LineGaps {
  readonly edgeM: number
  readonly betweenM: number
}

/** Shortest clear length of a line of flanges [m]. */
export function leastLineM(diameters: readonly number[]): number {
  const sum = diameters.reduce((total, diameter) => total + diameter, 0)
  return diameters.length === 0 ? 0 : sum + 2 * frontGaps.toEdgeM + (diameters.length - 1) * frontGaps.toFlangeM
}

/** Even gaps along a line; where they would bring flanges too close to each other, the edges give way first. */
export function lineGaps(lengthM: number, diameters: readonly number[]): LineGaps {
  const freeM = lengthM - diameters.reduce((total, diameter) => total + diameter, 0)
  const inner = diameters.length - 1
  const evenM = freeM / (inner + 2)
  if (inner === 0 || evenM >= frontGaps.toFlangeM) return { edgeM: evenM, betweenM: evenM }
  const betweenM = Math.max(evenM, Math.min(frontGaps.toFlangeM, (freeM - 2 * frontGaps.toEdgeM) / inner))
  return { edgeM: (freeM - inner * betweenM) / 2, betweenM }
}
