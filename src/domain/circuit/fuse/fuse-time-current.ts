/** How soon a fuse opens at an overcurrent: the band between its shortest and longest operating time. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { TimeBand, TimePoint } from '../../../contract/supply/supply-fuses.ts'
import type { FuseType } from '../../../contract/supply/words.ts'
import { present } from '../../present.ts'

interface TimeTable {
  readonly source: SourceId
  readonly status: string
  readonly points: readonly TimePoint[]
}

const fuseTimeCurrent = {
  C: {
    source: 'fuse-time-current',
    status: 'second-hand, 35 to 40 A; smaller ratings alike at 135 to 200 %',
    points: [
      { percent: 100, minimumS: 360_000 },
      { percent: 135, minimumS: 0.75, maximumS: 600 },
      { percent: 160, minimumS: 0.25, maximumS: 50 },
      { percent: 200, minimumS: 0.15, maximumS: 5 },
      { percent: 350, minimumS: 0.08, maximumS: 0.5 },
      { percent: 600, maximumS: 0.15 }
    ]
  },
  E: {
    source: 'fuse-time-current',
    status: 'second-hand, 20 to 80 A',
    points: [
      { percent: 100, minimumS: 360_000 },
      { percent: 135, minimumS: 60, maximumS: 1800 },
      { percent: 200, minimumS: 2, maximumS: 50 },
      { percent: 350, minimumS: 0.2, maximumS: 7 },
      { percent: 600, minimumS: 0.04, maximumS: 1 }
    ]
  },
  strip: {
    source: 'fuse-time-current-strip',
    status: 'from memory, low confidence, information only',
    points: [
      { percent: 100, minimumS: 14_400 },
      { percent: 200, minimumS: 1, maximumS: 15 },
      { percent: 350, minimumS: 0.3, maximumS: 5 },
      { percent: 600, minimumS: 0.1, maximumS: 1 }
    ]
  },
  cartridge: {
    source: 'ul-248-15',
    status: 'from memory, low confidence, information only',
    points: [
      { percent: 110, minimumS: 14_400 },
      { percent: 135, maximumS: 7200 },
      { percent: 200, maximumS: 480 },
      { percent: 600, minimumS: 0.005, maximumS: 0.05 }
    ]
  },
  knifeBlade: {
    source: 'iec-60269-2',
    status: 'from memory, low confidence, information only',
    points: [
      { percent: 125, minimumS: 7200 },
      { percent: 160, maximumS: 7200 },
      { percent: 600, minimumS: 0.03, maximumS: 1 }
    ]
  }
} as const satisfies Readonly<Record<string, TimeTable>>

/** Miniature blades are read by the regular ones, single-bolt fuses by the strips: the nearest kin with known times. */
const tableOf: Readonly<Record<FuseType, keyof typeof fuseTimeCurrent>> = {
  F: 'C',
  C: 'C',
  E: 'E',
  SF30: 'strip',
  SF51: 'strip',
  'single-bolt': 'strip',
  'marine-strip': 'strip',
  'class-t': 'cartridge',
  'knife-blade': 'knifeBlade'
}

export function timeTable(type: FuseType): TimeTable {
  return fuseTimeCurrent[tableOf[type]]
}

/** Straight between two rows on logarithmic axes; undefined outside the rows that have the bound. */
function between(points: readonly TimePoint[], percent: number, bound: 'minimumS' | 'maximumS'): number | undefined {
  const known = points.filter(point => point[bound] !== undefined)
  const upper = known.findIndex(point => point.percent >= percent)
  const [above, below] = [known[upper], known[upper - 1]]
  const seconds = above?.[bound]
  if (above === undefined || seconds === undefined) return undefined
  if (above.percent === percent) return seconds
  const lower = below?.[bound]
  if (below === undefined || lower === undefined) return undefined
  const share = Math.log(percent / below.percent) / Math.log(above.percent / below.percent)
  return lower * (seconds / lower) ** share
}

/**
 * Operating-time band of a fuse at a current.
 *
 * @param currentA  [A] ≥ 0; @param ratingA  rating [A] > 0
 * @returns band [s]; the longest time beyond 600 % is that of 600 %
 * @validity Fuse at room temperature. Limits of acceptance, not the curve of a part.
 * @source notes that quote data sheets to ISO 8820-3 (second-hand); strips from memory
 * @check  type C at 200 % → 0.15 … 5 s; type E at 200 % → 2 … 50 s
 */
export function timeBand(type: FuseType, ratingA: number, currentA: number): TimeBand {
  const { points } = timeTable(type)
  const percent = (100 * currentA) / ratingA
  const last = points.at(-1)
  const [minimumS, maximumS] = [between(points, percent, 'minimumS'), between(points, percent, 'maximumS')]
  const beyond = last !== undefined && percent > last.percent ? last.maximumS : undefined
  return {
    percent,
    ...present({ minimumS }),
    ...(maximumS === undefined ? (beyond === undefined ? {} : { maximumS: beyond }) : { maximumS })
  }
}

/**
 * Largest heat a fuse lets through at a fault current, I²·t.
 *
 * @returns [A²s]; undefined where the fuse may not open
 * @validity Up to 600 % by the longest operating time; beyond it melts adiabatically, so I²·t stays that of 600 % (derived).
 * @source operating times as {@link timeBand}
 * @check  type C, 30 A, 180 A → 4860 A²s
 */
export function letThroughA2s(type: FuseType, ratingA: number, faultA: number): number | undefined {
  const last = timeTable(type).points.at(-1)
  const capped = Math.min(faultA, (ratingA * (last?.percent ?? 600)) / 100)
  const { maximumS } = timeBand(type, ratingA, capped)
  return maximumS === undefined ? undefined : capped ** 2 * maximumS
}
