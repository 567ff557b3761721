/** Slips in the figures that no relation ties to the others: excursion and inductance. */
import { INDUCTANCE_RANGE_H, XMAX_DOUBTFUL_M, XMAX_DOUBTFUL_RADIUS_SHARE, XMAX_TINY_M } from './judgement.ts'

export interface LooseSlip {
  readonly id: 'xmax-peak-to-peak' | 'xmax-in-inches' | 'inductance-in-microhenry' | 'inductance-in-henry'
  readonly says: string
  readonly mended: { readonly xmaxM?: number; readonly leH?: number }
}

interface LooseFigures {
  readonly sdM2: number
  readonly xmaxM?: number
  readonly leH?: number
}

/**
 * @source common practice, no source; the limits stand in judgement.ts
 * @check  Xmax 28 mm on 300 cm² (cone radius 98 mm) → xmax-peak-to-peak, 14 mm
 */
export function looseSlips({ sdM2, xmaxM, leH }: LooseFigures): readonly LooseSlip[] {
  return [...(xmaxM === undefined ? [] : excursionSlips(xmaxM, sdM2)), ...(leH === undefined ? [] : coilSlips(leH))]
}

function excursionSlips(xmaxM: number, sdM2: number): readonly LooseSlip[] {
  if (xmaxM < XMAX_TINY_M) {
    return [{ id: 'xmax-in-inches', says: 'Xmax looks like inches, not millimetres', mended: { xmaxM: xmaxM * 25.4 } }]
  }
  const limit = Math.min(XMAX_DOUBTFUL_M, XMAX_DOUBTFUL_RADIUS_SHARE * Math.sqrt(sdM2 / Math.PI))
  if (xmaxM <= limit) return []
  const says = 'Xmax may be a peak-to-peak figure; here it is one way from rest, half of that'
  return [{ id: 'xmax-peak-to-peak', says, mended: { xmaxM: xmaxM / 2 } }]
}

function coilSlips(leH: number): readonly LooseSlip[] {
  const [low, high] = INDUCTANCE_RANGE_H
  if (leH > high) {
    return [{ id: 'inductance-in-microhenry', says: 'Le looks like µH, not mH', mended: { leH: leH / 1e3 } }]
  }
  if (leH > 0 && leH < low) {
    return [{ id: 'inductance-in-henry', says: 'Le looks like H, not mH', mended: { leH: leH * 1e3 } }]
  }
  return []
}
