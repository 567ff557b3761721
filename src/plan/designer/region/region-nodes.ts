/** Drivers looked at for a size: figures that a shelf has, on round values. All ours. */

import { regionDefaults } from './defaults.ts'
import type { Node } from './grow-region.ts'
import type { Trio } from './typical-driver.ts'

export const regionSizes: Node = [
  regionDefaults.fsShares.value.length,
  regionDefaults.qtsNodes.value.length,
  regionDefaults.vasShares.value.length
]

/** Whole hertz and litres: a region is told to people. */
export function trioAt(nominalM: number, [fs, q, vas]: Node): Trio {
  const { middle, fsPower, vasPower, fsShares, qtsNodes, vasShares } = regionDefaults
  const size = nominalM / middle.value.nominalM
  return {
    fsHz: Math.round(middle.value.fsHz * size ** fsPower.value * (fsShares.value[fs] as number)),
    qts: qtsNodes.value[q] as number,
    vasM3: Math.round(middle.value.vasM3 * size ** vasPower.value * (vasShares.value[vas] as number) * 1e3) / 1e3
  }
}
