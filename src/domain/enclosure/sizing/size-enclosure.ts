/** POST /v1/enclosures/sizing: boxes that suit a driver, what each gives and costs, and which do not suit and why. */
import type {
  EnclosureCandidate,
  EnclosureSizing,
  SizingRequest
} from '../../../contract/enclosures/enclosure-sizing.ts'
import type { SizedKind } from '../../../contract/enclosures/words.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { isComputable } from '../../computable.ts'
import { requireWithin } from '../../design-error.ts'
import { inDigits } from '../../digits.ts'
import { givenDriverCautions } from '../../driver/given-driver-cautions.ts'
import { explain } from '../../formula.ts'
import type { Outcome } from '../../outcome.ts'
import { say } from '../../say.ts'
import { sizingDefaults } from './defaults.ts'
import { closedResonanceByQ, closedVolume, tuningByRatio, volumeByAlpha } from './formulas.ts'
import { sizeBandPass } from './size-band-pass.ts'
import { sizeBandPass6 } from './size-band-pass-6.ts'
import { sizeClosed } from './size-closed.ts'
import { sizePassiveRadiator } from './size-passive-radiator.ts'
import { sizeVented } from './size-vented.ts'
import { type SizingProblem, sizingProblem } from './sizing-problem.ts'
import { leastAirReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

const sizers: Readonly<Record<SizedKind, (problem: SizingProblem, assume: Assumptions) => CandidateFamilies>> = {
  closed: sizeClosed,
  vented: sizeVented,
  'passive-radiator': sizePassiveRadiator,
  'band-pass-4': sizeBandPass,
  'band-pass-6-parallel': (problem, assume) => sizeBandPass6('band-pass-6-parallel', problem, assume),
  'band-pass-6-series': (problem, assume) => sizeBandPass6('band-pass-6-series', problem, assume)
}

/**
 * Every alignment is solved for the driver in its circuit and the losses at hand, then evaluated through the network.
 *
 * @throws DesignError `missing-input`, `conflicting-input`
 * @validity Small signal, lumped elements; volumes are acoustic, driver, port and bracing not in them.
 */
export function sizeEnclosure(request: SizingRequest): Outcome<EnclosureSizing> {
  const assume = assumptions()
  const problem = sizingProblem(request, assume)
  const drivers = driversOf(problem)
  const { kinds } = sizingDefaults
  if (request.kinds === undefined) assume.note('kinds', kinds.value.join(', '), kinds)
  const parts = (request.kinds ?? kinds.value).map(kind => sizers[kind](problem, assume))
  const unranked = parts
    .flatMap(part => part.candidates)
    .filter(isComputable)
    .map(candidate => withLeastAir(candidate, problem))
  const candidates = unranked.map(candidate => candidateOf(candidate, unranked, problem))
  return {
    result: {
      drivers,
      candidates,
      unsuited: parts.flatMap(part => part.unsuited)
    },
    cautions: [...givenDriverCautions(request.driver, problem.air), ...sizingCautions(problem, candidates)],
    assumed: assume.list,
    sources: [
      ...candidates.map(({ source }) => source),
      ...(candidates.some(({ secondOpinion }) => secondOpinion !== undefined)
        ? (['margolis-small-1981'] as const)
        : []),
      'practice-enclosure-choice',
      'ours-enclosure-limits',
      'acoustic-network'
    ],
    basis: candidates.flatMap((candidate, index) => candidateBasis(candidate, index, problem))
  }
}

function withLeastAir(candidate: UnrankedCandidate, { driver, count, volumeFactor }: SizingProblem): UnrankedCandidate {
  const drivers = { sdM2: driver.sdM2, xmaxM: driver.xmaxM, count }
  return {
    ...candidate,
    reasons: [...candidate.reasons, ...leastAirReason(candidate.netVolumeM3 / volumeFactor, drivers)]
  }
}

/** @throws DesignError `out-of-range` for parameters no driver has */
function driversOf({ driver, count, boxed, ebpHz }: SizingProblem): EnclosureSizing['drivers'] {
  requireWithin('driver.fsHz', boxed.fsHz, 1, 2000, 'Hz')
  requireWithin('driver.qts', boxed.qts, 0.02, 50, '1')
  requireWithin('driver.vasM3', driver.vasM3, 1e-5, 100, 'm³')
  return { count, fsHz: driver.fsHz, qts: driver.qts, qtsWithSource: boxed.qts, vasM3: boxed.vasM3, ebpHz }
}

function candidateOf(
  candidate: UnrankedCandidate,
  all: readonly UnrankedCandidate[],
  { volumeFactor }: SizingProblem
): EnclosureCandidate {
  const { reasons, totalVolumeM3, rank, ...rest } = candidate
  const suits = reasons.every(({ against }) => !against)
  const smallest = Math.min(...all.map(other => other.totalVolumeM3))
  return {
    ...rest,
    preferred: preferredOf(candidate.kind, all) === candidate,
    suits,
    why: [...reasons].sort((a, b) => Number(b.against) - Number(a.against)).map(({ text }) => text),
    goodAt: `${candidate.goodAt}. ${spoken(candidate)}`,
    ...(volumeFactor === 1 ? {} : { builtVolumeM3: candidate.netVolumeM3 / volumeFactor }),
    space: { roughOuterM3: roughOuterM3(totalVolumeM3 / volumeFactor), timesSmallest: totalVolumeM3 / smallest }
  }
}

function preferredOf(kind: SizedKind, all: readonly UnrankedCandidate[]): UnrankedCandidate | undefined {
  const score = ({ reasons, rank }: UnrankedCandidate) => (reasons.some(({ against }) => against) ? 100 : 0) + rank
  return all.filter(candidate => candidate.kind === kind).sort((a, b) => score(a) - score(b))[0]
}

function spoken({ response }: UnrankedCandidate): string {
  const at30 = response.levels.find(({ frequencyHz }) => frequencyHz === 31.5)?.relativeDb ?? 0
  const half = response.f3Hz === undefined ? '' : `Half power at ${inDigits(response.f3Hz)} Hz, `
  const delay =
    response.groupDelayAtF3S === undefined ? '' : `, ${inDigits(response.groupDelayAtF3S * 1e3)} ms of delay there`
  return `${half}${inDigits(at30, 2)} dB at 31.5 Hz${delay}.`
}

/** A cube of board around the air, driver, port and braces; any other shape is larger. */
function roughOuterM3(netVolumeM3: number): number {
  return (
    (Math.cbrt(netVolumeM3 * (1 + sizingDefaults.roughDisplacementShare.value)) +
      2 * sizingDefaults.roughBoardM.value) **
    3
  )
}

function sizingCautions({ request }: SizingProblem, candidates: readonly EnclosureCandidate[]): readonly Caution[] {
  const cautions: Caution[] = []
  if (candidates.every(({ suits }) => !suits)) {
    cautions.push(caution('no-box-suits', say('no-box-suits')))
  }
  const opened = candidates.some(({ kind }) => kind !== 'closed')
  if (opened && request.lining?.amount === 'filled') {
    const message = say('lining-in-opened-box')
    cautions.push(caution('lining-in-opened-box', message, { at: 'lining.amount' }))
  }
  if (candidates.some(({ kind }) => kind === 'vented' || kind === 'passive-radiator')) {
    const message = say('cone-unloaded-below-tuning')
    cautions.push(caution('cone-unloaded-below-tuning', message))
  }
  return cautions
}

function candidateBasis(candidate: EnclosureCandidate, index: number, { boxed }: SizingProblem): readonly Basis[] {
  const at = `candidates[${index}]`
  const { kind, alpha, netVolumeM3, tuningHz, tuningRatio: h, qtc: Qtc, fcHz } = candidate
  const { vasM3: Vas, fsHz: fs, qts: Qts } = boxed
  if (kind === 'closed' && Qtc !== undefined && fcHz !== undefined) {
    return [
      explain(closedVolume, `${at}.netVolumeM3`, netVolumeM3, { Vas, Qtc, Qts }),
      explain(closedResonanceByQ, `${at}.fcHz`, fcHz, { fs, Qtc, Qts })
    ]
  }
  const volume = explain(volumeByAlpha, `${at}.netVolumeM3`, netVolumeM3, { Vas, alpha })
  if (tuningHz === undefined || h === undefined) return [volume]
  return [volume, explain(tuningByRatio, `${at}.tuningHz`, tuningHz, { fs, h })]
}
