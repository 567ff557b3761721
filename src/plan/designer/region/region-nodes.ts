/** Drivers looked at for a size: figures that a shelf has, on round values. All ours. */
import type { Node } from './grow-region.ts'
import type { Trio } from './typical-driver.ts'

/** A driver of 25 cm, from which others follow by the powers of their size below, as invented drivers of 20 to 38 cm do. */
const MIDDLE = { nominalM: 0.25, fsHz: 31, vasM3: 26e-3 } as const
const FS_POWER = -0.72
const VAS_POWER = 4

const FS_SHARES = [0.75, 0.85, 0.95, 1.05, 1.2, 1.35, 1.5] as const
const QTS_NODES = [0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7] as const
const VAS_SHARES = [0.4, 0.6, 0.9, 1.35, 2, 3] as const

export const regionSizes: Node = [FS_SHARES.length, QTS_NODES.length, VAS_SHARES.length]

/** Whole hertz and litres: a region is told to people. */
export function trioAt(nominalM: number, [fs, q, vas]: Node): Trio {
  const size = nominalM / MIDDLE.nominalM
  return {
    fsHz: Math.round(MIDDLE.fsHz * size ** FS_POWER * (FS_SHARES[fs] as number)),
    qts: QTS_NODES[q] as number,
    vasM3: Math.round(MIDDLE.vasM3 * size ** VAS_POWER * (VAS_SHARES[vas] as number) * 1e3) / 1e3
  }
}
