/** Closed boxes for the damping, the volume or the space asked for. */

import type { Unsuited } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { AlignmentId } from '../../../contract/enclosures/words.ts'
import type { Assumptions } from '../../assume.ts'
import { inDigits, inLitres } from '../../digits.ts'
import { present } from '../../present.ts'
import { say, worded } from '../../say.ts'
import { closedBox, closedBoxVolumeM3, closedHalfPowerRatio, closedPeakDb } from '../alignment/closed-box.ts'
import { sizingDefaults } from './defaults.ts'
import type { SizingProblem } from './sizing-problem.ts'
import { bandReasons, ebpReason, type Reason, spaceReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

/** Two cubic centimetres more or less are no other box. */
const SAME_VOLUME = 1e-6

export function sizeClosed(problem: SizingProblem, assume: Assumptions): CandidateFamilies {
  const { request, boxed } = problem
  const { wanted, space } = request
  if (wanted?.qtc === undefined) {
    assume.note('wanted.qtc', sizingDefaults.usualQtc.value.join(', '), sizingDefaults.usualQtc)
  }
  const unsuited: Unsuited[] = []
  const candidates: UnrankedCandidate[] = []
  for (const qtc of wanted?.qtc ?? sizingDefaults.usualQtc.value) {
    if (qtc > boxed.qts) candidates.push(candidateOf(problem, closedBoxVolumeM3(boxed, qtc), 'closed-qtc', qtc))
    else unsuited.push({ kind: 'closed', alignment: 'closed-qtc', why: tooDamped(boxed.qts, qtc) })
  }
  if (wanted?.netVolumeM3 !== undefined) candidates.push(candidateOf(problem, wanted.netVolumeM3, 'as-asked'))
  const cramped = space !== undefined && candidates.every(({ netVolumeM3 }) => netVolumeM3 > space.netVolumeM3)
  if (space !== undefined && cramped) candidates.push(candidateOf(problem, space.netVolumeM3, 'in-your-space'))
  return { candidates, unsuited }
}

const tooDamped = (qts: number, qtc: number) =>
  `Qtc ${inDigits(qtc)} lies not above the driver's Qts ${inDigits(qts)} (source resistance in it): a closed box can only raise it`

function evaluated({ evaluate, request, absorptionQ }: SizingProblem, netVolumeM3: number) {
  const { leakQ } = request.losses ?? {}
  const rear = {
    netVolumeM3,
    ...present({ leakQ, absorptionQ })
  }
  return evaluate({ kind: 'closed', rear }, 'plateau')
}

function candidateOf(
  problem: SizingProblem,
  netVolumeM3: number,
  alignment: AlignmentId,
  asked?: number
): UnrankedCandidate {
  const { alpha, fcHz, qtc } = closedBox(problem.boxed, netVolumeM3)
  const response = evaluated(problem, netVolumeM3)
  const reasons = [
    ...sizeReasons(alpha, netVolumeM3),
    ...bandReasons(response, asked === undefined ? closedPeakDb(qtc) : 0),
    ...spaceReason(netVolumeM3 / problem.volumeFactor, problem.request.space?.netVolumeM3),
    ebpReason(problem.ebpHz, 'closed')
  ]
  return {
    kind: 'closed',
    alignment,
    ...worded({ name: say('alignment.closed', { qtc: inDigits(asked ?? qtc) }) }),
    reasons,
    goodAt: closedWords(qtc),
    netVolumeM3,
    totalVolumeM3: netVolumeM3,
    fcHz,
    qtc,
    alpha,
    alignmentF3Hz: fcHz * closedHalfPowerRatio(qtc),
    response,
    source: 'small-1972-closed-box',
    rank: Math.abs(qtc - Math.SQRT1_2) + (Math.abs((asked ?? 0) / qtc - 1) < SAME_VOLUME ? 0 : 0.05)
  }
}

function sizeReasons(alpha: number, netVolumeM3: number): readonly Reason[] {
  if (alpha >= 1 / sizingDefaults.largestVolumes.value) return []
  const text = `${inLitres(netVolumeM3)} is ${inDigits(1 / alpha)} times Vas and hardly stiffens the cone: an infinite baffle does the same`
  return [{ against: true, text }]
}

function closedWords(qtc: number): string {
  if (qtc < 0.62)
    return 'tightest: transients settle fastest and level falls gently from high up; the cabin fills it in'
  if (qtc < 0.78) return 'tight and flat; rolls off at 12 dB an octave, which the rise of a cabin can make good'
  if (qtc < 1.05) return 'small; a little fuller around its resonance, still tight'
  return 'smallest; boomy around its resonance, little below it'
}
