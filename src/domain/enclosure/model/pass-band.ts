/** What matters of a level curve: where it reaches half power, how far it strays above that, and where its peak is. */
import type { CandidateResponse } from '../../../contract/enclosures/enclosure-sizing.ts'
import { bracketedRoot } from '../../../numeric/bracketed-root.ts'
import { goldenMaximum } from '../../../numeric/golden-maximum.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import { present } from '../../present.ts'
import { HALF_POWER } from './half-power.ts'

/** Half power [dB]. */
const HALF_POWER_DB = 20 * Math.log10(HALF_POWER)

/** Half power and a tenth of it, where the level rises through them in the span; the fall of a band-pass; turning points above f3. */
type PassBand = Pick<CandidateResponse, 'f3Hz' | 'f10Hz' | 'f3UpperHz' | 'rippleDb' | 'peakDb'>

const POINTS_PER_DECADE = 120

type Level = (frequencyHz: number) => number
/** Levels of many frequencies at once, where that is faster than one by one. */
type LevelsOn = (frequenciesHz: readonly number[]) => readonly number[]
const each =
  (level: Level): LevelsOn =>
  frequencies =>
    frequencies.map(level)

function grid(fromHz: number, toHz: number): readonly number[] {
  return logarithmicGrid(fromHz, toHz, Math.ceil(POINTS_PER_DECADE * Math.log10(toHz / fromHz)) + 1)
}

function crossing(levels: readonly number[], frequencies: readonly number[], thresholdDb: number, upward: boolean) {
  const order = levels.map((_, index) => index).slice(1)
  const hit = (upward ? order : order.reverse()).find(index => {
    const before = (levels[index - 1] ?? 0) - thresholdDb
    const after = (levels[index] ?? 0) - thresholdDb
    return upward ? before < 0 && after >= 0 : before >= 0 && after < 0
  })
  return hit === undefined ? undefined : ([frequencies[hit - 1] ?? 0, frequencies[hit] ?? 0] as const)
}

/** Level of the turning point between two grid points. */
function turningLevel(level: (f: number) => number, low: number, high: number, sign: number): number {
  return level(goldenMaximum(f => sign * level(f), low, high))
}

/**
 * @param level  dB re the reference of the response
 * @param levelsOn  the same for a whole grid
 * @param fromHz  > 0, below every corner
 * @param toHz  far above every corner
 * @source derived: sampled at 120 points a decade, crossings refined by Brent's method, turning points by golden section
 * @check  closed box of Qtc 1 → f3/fc 0.786151, peak 1.2494 dB
 */
export function passBandOf(level: Level, fromHz: number, toHz: number, levelsOn: LevelsOn = each(level)): PassBand {
  const frequencies = grid(fromHz, toHz)
  const levels = levelsOn(frequencies)
  const root = (thresholdDb: number, upward: boolean) => {
    const excess = (f: number) => level(f) - thresholdDb
    const bracket = crossing(levels, frequencies, thresholdDb, upward)
    if (bracket === undefined) return undefined
    const [low, high] = bracket
    return bracketedRoot(excess, low, high, excess(low), excess(high), 1e-13)
  }
  const f3Hz = root(HALF_POWER_DB, true)
  const f10Hz = root(-10, true)
  const f3UpperHz = root(HALF_POWER_DB, false)
  const turns = turningLevels(level, frequencies, levels, f3Hz ?? toHz, f3UpperHz ?? toHz)
  return {
    ...present({ f3Hz, f10Hz, f3UpperHz }),
    rippleDb: Math.max(0, ...turns) - Math.min(0, ...turns),
    peakDb: Math.max(0, ...turns)
  }
}

/** The highest level between two frequencies, refined. */
export function highestLevelDb(level: Level, fromHz: number, toHz: number, levelsOn: LevelsOn = each(level)): number {
  const frequencies = grid(fromHz, toHz)
  const levels = levelsOn(frequencies)
  const turns = turningLevels(level, frequencies, levels, fromHz, toHz)
  return Math.max(levels[0] ?? 0, levels.at(-1) ?? 0, ...turns)
}

function turningLevels(
  level: (f: number) => number,
  frequencies: readonly number[],
  levels: readonly number[],
  fromHz: number,
  toHz: number
): readonly number[] {
  const turns: number[] = []
  for (let index = 1; index < levels.length - 1; index++) {
    const [before = 0, here = 0, after = 0] = levels.slice(index - 1, index + 2)
    const [low = 0, at = 0, high = 0] = frequencies.slice(index - 1, index + 2)
    if (at <= fromHz || at >= toHz || here > before === after > here) continue
    turns.push(turningLevel(level, low, high, here > before ? 1 : -1))
  }
  return turns
}
