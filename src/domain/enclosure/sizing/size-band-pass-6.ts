/** Sixth-order band-passes by search: no closed alignment exists, so four dimensions are fitted to the wanted band on the network. */

import type { CandidateResponse } from '../../../contract/enclosures/enclosure-sizing.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import { simplexMinimum } from '../../../numeric/simplex-minimum.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { inDigits } from '../../digits.ts'
import { effectiveLengthM } from '../../port/port-length.ts'
import { phrased, say, worded } from '../../say.ts'
import type { EnclosureRequest } from '../model/request.ts'
import { sizingDefaults } from './defaults.ts'
import type { SizingProblem } from './sizing-problem.ts'
import { bandReasons, ebpReason, type Reason, spaceReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

type SixthOrderKind = 'band-pass-6-parallel' | 'band-pass-6-series'

interface Chambers {
  readonly rearVolumeM3: number
  readonly frontVolumeM3: number
  readonly rearTuningHz: number
  readonly frontTuningHz: number
}

/** Points the level is looked at inside the band, and rounds of the search. Ours. */
const POINTS = 21
const ROUNDS = 200
/** What a decibel of level is worth against a decibel of unevenness. Ours. */
const LEVEL_WEIGHT = 0.25
/** Edges count inside this share of the wanted ones. Ours. */
const EDGE_SHARE = 1.1

export function sizeBandPass6(kind: SixthOrderKind, problem: SizingProblem, assume: Assumptions): CandidateFamilies {
  const { boxed, request } = problem
  const { usualBand } = sizingDefaults
  const [lowRatio, highRatio] = usualBand.value
  const lowHz = assume.work(request.wanted?.lowHz, 'wanted.lowHz', lowRatio * boxed.fsHz, usualBand)
  const highHz = assume.work(request.wanted?.highHz, 'wanted.highHz', highRatio * boxed.fsHz, usualBand)
  if (!(lowHz * 1.2 < highHz)) {
    const detail = say('refused.a-band-pass-needs-its-upper')
    throw new DesignError('conflicting-input', { field: 'wanted.highHz', value: highHz, minimum: lowHz * 1.2, detail })
  }
  const found = searched(kind, problem, lowHz, highHz)
  return { candidates: [candidateOf(kind, problem, found, { lowHz, highHz })], unsuited: [] }
}

/** Lined up in logarithms, so that a step is a ratio. */
function searched(kind: SixthOrderKind, problem: SizingProblem, lowHz: number, highHz: number): Chambers {
  const { vasM3 } = problem.boxed
  const grid = {
    inside: logarithmicGrid(lowHz, highHz, POINTS),
    above: logarithmicGrid(1.15 * highHz, 3 * highHz, POINTS)
  }
  const cost = (at: readonly number[]) => costOf(kind, problem, chambersAt(at, vasM3), grid)
  const starts = [0.5, 1].map(share => [share, share / 2, 1.15 * lowHz, 0.8 * highHz].map(Math.log))
  const ends = starts.map(start => simplexMinimum(cost, start, 0.25, ROUNDS))
  const best = ends.reduce((low, end) => (end.value < low.value ? end : low))
  return chambersAt(best.at, vasM3)
}

function chambersAt([rear = 0, front = 0, low = 0, high = 0]: readonly number[], vasM3: number): Chambers {
  return {
    rearVolumeM3: Math.exp(rear) * vasM3,
    frontVolumeM3: Math.exp(front) * vasM3,
    rearTuningHz: Math.exp(low),
    frontTuningHz: Math.exp(high)
  }
}

interface Grid {
  readonly inside: readonly number[]
  readonly above: readonly number[]
}

/** Unevenness inside the band, what the edges lack of half power, level, and what passes the bounds. */
function costOf(kind: SixthOrderKind, problem: SizingProblem, chambers: Chambers, grid: Grid): number {
  const { inside, above } = grid
  const evaluated = problem.levelsOf(enclosureOf(kind, problem, chambers), [...inside, ...above])
  const levels = evaluated.slice(0, inside.length)
  const inner = levels.slice(2, -2)
  const mean = inner.reduce((sum, level) => sum + level, 0) / inner.length
  const uneven = inner.reduce((sum, level) => sum + (level - mean) ** 2, 0) / inner.length
  const half = Math.max(...levels) - 3
  const edges = [levels[0] ?? -100, levels.at(-1) ?? -100].map(level => Math.max(0, half - level) ** 2)
  // A resonance above the band must not stand out of it.
  const loud = Math.max(0, Math.max(...evaluated.slice(inside.length)) - mean + 3) ** 2
  return uneven + loud + (edges[0] ?? 0) + (edges[1] ?? 0) - LEVEL_WEIGHT * mean + strayed(problem, chambers, inside)
}

function strayed({ boxed, request, volumeFactor }: SizingProblem, chambers: Chambers, grid: readonly number[]): number {
  const beyond = (value: number, low: number, high: number) =>
    100 * (Math.max(0, Math.log(low / value)) ** 2 + Math.max(0, Math.log(value / high)) ** 2)
  const { rearVolumeM3, frontVolumeM3, rearTuningHz, frontTuningHz } = chambers
  const [lowHz = 1] = grid
  const highHz = grid.at(-1) ?? 1
  const room = (request.space?.netVolumeM3 ?? Number.POSITIVE_INFINITY) * volumeFactor
  return (
    beyond(rearVolumeM3, 0.08 * boxed.vasM3, 4 * boxed.vasM3) +
    beyond(frontVolumeM3, 0.04 * boxed.vasM3, 4 * boxed.vasM3) +
    beyond(rearTuningHz, 0.6 * lowHz, highHz) +
    beyond(frontTuningHz, lowHz, 1.2 * highHz) +
    beyond(rearVolumeM3 + frontVolumeM3, 0, 0.98 * room)
  )
}

function enclosureOf(kind: SixthOrderKind, problem: SizingProblem, chambers: Chambers): EnclosureRequest {
  const { air, driver, openedLeakQ: leakQ } = problem
  const opening = { count: 1, areaM2: driver.sdM2 / 2 }
  const chamber = (netVolumeM3: number, tuningHz: number) => {
    const lengthM = effectiveLengthM(tuningHz, netVolumeM3, opening, air.soundSpeedMPerS)
    return { netVolumeM3, leakQ, port: { ...opening, lengthM, endFactor: 0 } }
  }
  return {
    kind,
    rear: chamber(chambers.rearVolumeM3, chambers.rearTuningHz),
    front: chamber(chambers.frontVolumeM3, chambers.frontTuningHz)
  }
}

interface Band {
  readonly lowHz: number
  readonly highHz: number
}

function bandReason({ f3Hz, f3UpperHz }: CandidateResponse, { lowHz, highHz }: Band): Reason {
  const short =
    f3Hz === undefined || f3UpperHz === undefined || f3Hz > lowHz * EDGE_SHARE || f3UpperHz < highHz / EDGE_SHARE
  const text = `half power from ${inDigits(f3Hz ?? 0)} to ${inDigits(f3UpperHz ?? 0)} Hz, asked for ${inDigits(lowHz)} to ${inDigits(highHz)} Hz`
  return { against: short, text }
}

const names: Readonly<Record<SixthOrderKind, string>> = {
  'band-pass-6-parallel': 'Sixth-order band-pass, both chambers open to the outside',
  'band-pass-6-series': 'Sixth-order band-pass, rear chamber opens into the front'
}

function candidateOf(kind: SixthOrderKind, problem: SizingProblem, chambers: Chambers, band: Band): UnrankedCandidate {
  const { rearVolumeM3, frontVolumeM3, rearTuningHz, frontTuningHz } = chambers
  const response = problem.evaluate(enclosureOf(kind, problem, chambers), 'peak')
  const totalVolumeM3 = rearVolumeM3 + frontVolumeM3
  const reasons: readonly Reason[] = [
    bandReason(response, band),
    { against: response.peakDb < -6, text: `${inDigits(response.peakDb)} dB at its peak against the bare driver` },
    ...bandReasons(response, response.rippleDb),
    ...spaceReason(totalVolumeM3 / problem.volumeFactor, problem.request.space?.netVolumeM3),
    ebpReason(problem.ebpHz, 'opened')
  ]
  return {
    kind,
    alignment: 'band-pass-6-search',
    ...worded({ name: phrased(names[kind]) }),
    reasons,
    goodAt: 'loudest in its band, steep below it; all sound by ports, and small errors of volume or port show',
    netVolumeM3: rearVolumeM3,
    frontVolumeM3,
    totalVolumeM3,
    tuningHz: rearTuningHz,
    frontTuningHz,
    alpha: problem.boxed.vasM3 / rearVolumeM3,
    tuningRatio: rearTuningHz / problem.boxed.fsHz,
    response,
    source: 'geddes-1989-band-pass',
    rank: 0
  }
}
