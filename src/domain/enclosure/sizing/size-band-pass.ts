/** Fourth-order band-passes: for wanted edges, or the flat and the rippled shape at the level of the bare driver. */

import type { Unsuited } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { AlignmentId } from '../../../contract/enclosures/words.ts'
import { DesignError } from '../../design-error.ts'
import { inDigits } from '../../digits.ts'
import { effectiveLengthM } from '../../port/port-length.ts'
import { phrased, say, worded } from '../../say.ts'
import { type BandPass4, bandPass4, bandPass4ForEdges } from '../alignment/band-pass-4.ts'
import type { SizingProblem } from './sizing-problem.ts'
import { bandReasons, ebpReason, type Reason, spaceReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

/** Shapes offered when no edges are asked for: maximally flat, and 0.35 dB of ripple. */
const shapes = [
  { id: 'band-pass-4-flat', s: Math.SQRT1_2, name: 'Band-pass, flat' },
  { id: 'band-pass-4-ripple', s: 0.6, name: 'Band-pass, 0.35 dB of ripple' }
] as const

export function sizeBandPass(problem: SizingProblem): CandidateFamilies {
  const { boxed, request } = problem
  const { lowHz, highHz, frontVolumeM3 } = request.wanted ?? {}
  if (frontVolumeM3 !== undefined) return asAsked(problem, frontVolumeM3)
  if (lowHz !== undefined || highHz !== undefined) return forEdges(problem, lowHz, highHz)
  const unsuited: Unsuited[] = []
  const candidates = shapes.flatMap(({ id, s, name }, rank) => {
    const qtc = 1 / (2 * s)
    if (qtc > boxed.qts) return [candidateOf(problem, bandPass4(boxed, s, qtc), id, name, rank)]
    const why = `Qts ${inDigits(boxed.qts)} lies above the Qtc ${inDigits(qtc)} of a rear chamber at the level of the bare driver`
    unsuited.push({ kind: 'band-pass-4', alignment: id, why })
    return []
  })
  return { candidates, unsuited }
}

function forEdges(problem: SizingProblem, lowHz: number | undefined, highHz: number | undefined): CandidateFamilies {
  if (lowHz === undefined || highHz === undefined || lowHz >= highHz) {
    const field = lowHz === undefined ? 'wanted.lowHz' : 'wanted.highHz'
    const detail = say('refused.a-band-pass-needs-both-half')
    throw new DesignError(lowHz === undefined || highHz === undefined ? 'missing-input' : 'conflicting-input', {
      field,
      detail
    })
  }
  const box = bandPass4ForEdges(problem.boxed, lowHz, highHz)
  if (box !== undefined)
    return { candidates: [candidateOf(problem, box, 'band-pass-4-edges', 'for your edges', 0)], unsuited: [] }
  const centre = Math.sqrt(lowHz * highHz)
  const why =
    centre > problem.boxed.fsHz
      ? `no fourth-order shape spans ${inDigits(lowHz)} to ${inDigits(highHz)} Hz around this driver`
      : `the centre ${inDigits(centre)} Hz lies not above the resonance ${inDigits(problem.boxed.fsHz)} Hz of the driver`
  return { candidates: [], unsuited: [{ kind: 'band-pass-4', alignment: 'band-pass-4-edges', why }] }
}

/** Both chambers as told, the front tuned as told or to the resonance of the closed one. */
function asAsked(problem: SizingProblem, frontVolumeM3: number): CandidateFamilies {
  const { boxed, request } = problem
  const { netVolumeM3, tuningHz } = request.wanted ?? {}
  if (netVolumeM3 === undefined) {
    const detail = say('refused.a-front-chamber-needs-the-one-behind')
    throw new DesignError('missing-input', { field: 'wanted.netVolumeM3', detail })
  }
  const rise = Math.sqrt(1 + boxed.vasM3 / netVolumeM3)
  const [fcHz, qtc] = [boxed.fsHz * rise, boxed.qts * rise]
  const centreHz = tuningHz ?? fcHz
  const response = evaluated(problem, { rearVolumeM3: netVolumeM3, frontVolumeM3, centreHz })
  const { f3Hz = centreHz, f3UpperHz = centreHz } = response
  const candidate: UnrankedCandidate = {
    ...common(problem, { netVolumeM3, frontVolumeM3, totalVolumeM3: netVolumeM3 + frontVolumeM3, fcHz, qtc }),
    alignment: 'as-asked',
    ...worded({ name: say('alignment.band-pass-as-asked') }),
    reasons: [...bandReasons(response, 0), ...roomReasons(problem, netVolumeM3 + frontVolumeM3)],
    goodAt: goodAtBand(f3Hz, f3UpperHz),
    frontTuningHz: centreHz,
    response,
    rank: 0
  }
  return { candidates: [candidate], unsuited: [] }
}

const goodAtBand = (lowHz: number, highHz: number) =>
  `filters itself: ${inDigits(lowHz)} to ${inDigits(highHz)} Hz, cone well held; all sound by the port, errors of volume hardly forgiven`

const roomReasons = (problem: SizingProblem, totalVolumeM3: number): readonly Reason[] => [
  ...spaceReason(totalVolumeM3 / problem.volumeFactor, problem.request.space?.netVolumeM3),
  ebpReason(problem.ebpHz, 'opened')
]

type Chambers = Pick<UnrankedCandidate, 'netVolumeM3' | 'frontVolumeM3' | 'totalVolumeM3' | 'fcHz' | 'qtc'>

const common = ({ boxed }: SizingProblem, chambers: Chambers) =>
  ({
    kind: 'band-pass-4',
    ...chambers,
    alpha: boxed.vasM3 / chambers.netVolumeM3,
    source: 'geddes-1989-band-pass'
  }) as const

type Sized = Pick<BandPass4, 'rearVolumeM3' | 'frontVolumeM3' | 'centreHz'>

function evaluated(problem: SizingProblem, { rearVolumeM3, frontVolumeM3, centreHz }: Sized) {
  const { air, driver, request, openedLeakQ } = problem
  const opening = { count: 1, areaM2: driver.sdM2 / 2 }
  const lengthM = effectiveLengthM(centreHz, frontVolumeM3, opening, air.soundSpeedMPerS)
  const leak = request.losses?.leakQ === undefined ? {} : { leakQ: openedLeakQ }
  return problem.evaluate(
    {
      kind: 'band-pass-4',
      rear: { netVolumeM3: rearVolumeM3, ...leak },
      front: { netVolumeM3: frontVolumeM3, ...leak, port: { ...opening, lengthM, endFactor: 0 } }
    },
    'peak'
  )
}

function candidateOf(
  problem: SizingProblem,
  box: BandPass4,
  alignment: AlignmentId,
  shape: string,
  rank: number
): UnrankedCandidate {
  const { rearVolumeM3, frontVolumeM3, centreHz } = box
  const response = evaluated(problem, box)
  const totalVolumeM3 = rearVolumeM3 + frontVolumeM3
  const chambers = { netVolumeM3: rearVolumeM3, frontVolumeM3, totalVolumeM3, fcHz: centreHz, qtc: box.qtc }
  const gain = `${inDigits(box.gainDb)} dB at its centre against the bare driver`
  const reasons: readonly Reason[] = [
    { against: box.gainDb < -6, text: gain },
    ...bandReasons(response, box.rippleDb),
    ...roomReasons(problem, totalVolumeM3)
  ]
  return {
    ...common(problem, chambers),
    alignment,
    ...worded({ name: phrased(shape) }),
    reasons,
    goodAt: goodAtBand(box.lowHz, box.highHz),
    frontTuningHz: centreHz,
    alignmentF3Hz: box.lowHz,
    response,
    rank
  }
}
