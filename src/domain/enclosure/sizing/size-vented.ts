/** Vented boxes: every family that has a member for the driver and its losses, and the tuning or volume asked for. */

import type { Unsuited } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { AlignmentId } from '../../../contract/enclosures/words.ts'
import { inDigits } from '../../digits.ts'
import { effectiveLengthM } from '../../port/port-length.ts'
import { present } from '../../present.ts'
import { say, worded } from '../../say.ts'
import { flatBoxFit } from '../alignment/power-law-fits.ts'
import { levelDb } from '../alignment/rational-response.ts'
import { type VentedBox, ventedCoefficients, ventedHalfPowerRatio, ventedResponse } from '../alignment/vented-box.ts'
import { familyBox, flatTotalQ, type VentedFamily, ventedFamilies } from '../alignment/vented-families.ts'
import { passBandOf } from '../model/pass-band.ts'
import { sizingDefaults } from './defaults.ts'
import type { SizingProblem } from './sizing-problem.ts'
import { bandReasons, ebpReason, type Reason, spaceReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

const familyWords: Readonly<Record<VentedFamily, { goodAt: string; rank: number }>> = {
  b4: { goodAt: 'flat, louder and lower than closed for its volume', rank: 0 },
  qb3: {
    goodAt: 'small for a vented box, flat, loud above its tuning',
    rank: 1
  },
  c4: {
    goodAt: 'reaches lowest, loudest in the bottom octave, with ripple and longer delay',
    rank: 1
  },
  sc4: {
    goodAt: 'less delay than the quasi third order for a little more volume',
    rank: 3
  },
  be4: { goodAt: 'flattest delay a vented box can have, gentle slope', rank: 2 },
  sbb4: {
    goodAt: 'tightest of the vented boxes, tuned low, gentle slope',
    rank: 4
  }
}
const sourceOf = (family: VentedFamily) => {
  if (family === 'sbb4') return 'hoge-1977-vented'
  return family === 'sc4' || family === 'be4' ? 'bullock-vented' : 'thiele-1961-vented'
}

/** What suits the driver first, then by rank. */
const bySuitability = (a: UnrankedCandidate, b: UnrankedCandidate) => againstIt(a) - againstIt(b) || a.rank - b.rank
const againstIt = ({ reasons }: UnrankedCandidate) => Number(reasons.some(({ against }) => against))

export function sizeVented(problem: SizingProblem): CandidateFamilies {
  const unsuited: Unsuited[] = []
  const candidates = ventedFamilies.flatMap(family => {
    const box = familyBox(family, problem.boxed.qts, problem.openedLossPerQ)
    if (box !== undefined && box.alpha > 0) return [familyCandidate(problem, family, box)]
    const why = missingMember(problem, family, box)
    if (why !== undefined) unsuited.push({ kind: 'vented', alignment: family, why })
    return []
  })
  return { candidates: [...[...candidates].sort(bySuitability), ...askedCandidates(problem, candidates)], unsuited }
}

/** The flat member for a driver: QB3 below, C4 above the QT of B4. */
export function flatBox({ boxed, openedLossPerQ }: SizingProblem): VentedBox | undefined {
  const families: readonly VentedFamily[] = ['b4', 'qb3', 'c4']
  return families
    .map(family => familyBox(family, boxed.qts, openedLossPerQ))
    .find(box => box !== undefined && box.alpha > 0)
}

function missingMember({ boxed, openedLossPerQ }: SizingProblem, family: VentedFamily, box: VentedBox | undefined) {
  const flat = flatTotalQ(openedLossPerQ)
  const qts = inDigits(boxed.qts)
  if (box !== undefined) return `would need a negative volume at Qts ${qts} with these losses`
  if (family === 'c4' && boxed.qts > flat) return `Qts ${qts} is too high: no Chebyshev box has so little damping`
  if (family === 'qb3' && boxed.qts < flat) return `Qts ${qts} is too low for a vented box with these losses`
  if (family === 'sc4' && boxed.qts < flat) return `Qts ${qts} lies below the lowest of the family`
  if (family === 'b4') return `asks for Qts ${inDigits(flat)} with these losses, the driver has ${qts}`
  return undefined
}

function familyCandidate(problem: SizingProblem, family: VentedFamily, box: VentedBox): UnrankedCandidate {
  const { goodAt, rank } = familyWords[family]
  const { netVolumeM3, tuningHz, f3Hz } = flatBoxFit(problem.boxed)
  const fitted = problem.boxed.qts >= 0.25 && problem.boxed.qts <= 0.6 && ['qb3', 'b4', 'c4'].includes(family)
  return {
    ...candidateOf(problem, box, family, rank),
    ...worded({ name: say('alignment.vented', { how: say(`alignment.${family}`) }) }),
    goodAt,
    source: sourceOf(family),
    ...(fitted
      ? {
          secondOpinion: {
            method: 'power-law fit for QL about 7 (Margolis & Small 1981, from memory)',
            netVolumeM3,
            tuningHz,
            f3Hz
          }
        }
      : {})
  }
}

function evaluated(problem: SizingProblem, netVolumeM3: number, tuningHz: number) {
  const { openedLeakQ: leakQ, absorptionQ, request } = problem
  const rear = {
    netVolumeM3,
    leakQ,
    ...present({ absorptionQ }),
    port: tunedOpening(problem, netVolumeM3, tuningHz, request.losses?.portQ)
  }
  return problem.evaluate({ kind: 'vented', rear }, 'plateau')
}

function candidateOf(problem: SizingProblem, box: VentedBox, alignment: AlignmentId, rank: number): UnrankedCandidate {
  const { boxed, openedLossPerQ, request } = problem
  const netVolumeM3 = boxed.vasM3 / box.alpha
  const tuningHz = boxed.fsHz * box.h
  const response = evaluated(problem, netVolumeM3, tuningHz)
  const coefficients = ventedCoefficients(box, openedLossPerQ)
  const ideal = ventedResponse(coefficients, boxed.fsHz, tuningHz)
  const { rippleDb } = passBandOf(f => levelDb(ideal, f), boxed.fsHz / 10, boxed.fsHz * 20)
  const reasons: readonly Reason[] = [
    ...qualityReasons(problem),
    ...bandReasons(response, rippleDb),
    ...spaceReason(netVolumeM3 / problem.volumeFactor, request.space?.netVolumeM3),
    ebpReason(problem.ebpHz, 'opened')
  ]
  return {
    kind: 'vented',
    alignment,
    ...worded({ name: say('alignment.vented', { how: say('alignment.as-asked') }) }),
    reasons,
    goodAt: 'louder and lower than closed around its tuning; nothing holds the cone below it',
    netVolumeM3,
    totalVolumeM3: netVolumeM3,
    tuningHz,
    alpha: box.alpha,
    tuningRatio: box.h,
    alignmentF3Hz: ventedHalfPowerRatio(coefficients) * Math.sqrt(boxed.fsHz * tuningHz),
    response,
    source: 'small-1973-vented-box',
    rank
  }
}

/** Any lumped port of the right mass sounds the same; its real size is the business of the port. */
function tunedOpening({ air, driver }: SizingProblem, volumeM3: number, tuningHz: number, lossQ: number | undefined) {
  const opening = { count: 1, areaM2: driver.sdM2 / 4 }
  const lengthM = effectiveLengthM(tuningHz, volumeM3, opening, air.soundSpeedMPerS)
  return { ...opening, lengthM, endFactor: 0, ...present({ lossQ }) }
}

function qualityReasons({ boxed, openedLossPerQ }: SizingProblem): readonly Reason[] {
  const flat = flatTotalQ(openedLossPerQ)
  const side = boxed.qts < flat ? 'below' : 'above'
  const text = `Qts ${inDigits(boxed.qts)} lies ${side} the ${inDigits(flat)} that is maximally flat with these losses`
  return [{ against: false, text }]
}

/** The volume and tuning asked for, and the best tuning in a space that no family fits. */
function askedCandidates(problem: SizingProblem, families: readonly UnrankedCandidate[]): readonly UnrankedCandidate[] {
  const { wanted, space } = problem.request
  const flat = flatBox(problem)
  const candidates: UnrankedCandidate[] = []
  if (wanted?.netVolumeM3 !== undefined || wanted?.tuningHz !== undefined) {
    const volume = wanted.netVolumeM3 ?? (flat === undefined ? undefined : problem.boxed.vasM3 / flat.alpha)
    if (volume !== undefined) candidates.push(givenCandidate(problem, volume, wanted.tuningHz, 'as-asked'))
  }
  const cramped = families.filter(({ alignment }) => ['qb3', 'b4', 'c4'].includes(alignment))
  if (space !== undefined && cramped.every(({ netVolumeM3 }) => netVolumeM3 > space.netVolumeM3)) {
    candidates.push(givenCandidate(problem, space.netVolumeM3, undefined, 'in-your-space'))
  }
  return candidates
}

function givenCandidate(
  problem: SizingProblem,
  volumeM3: number,
  tuningHz: number | undefined,
  id: AlignmentId
): UnrankedCandidate {
  const chosen = tuningHz ?? bestTuningHz(problem, volumeM3)
  const { fsHz, vasM3, qts } = problem.boxed
  const candidate = candidateOf(problem, { h: chosen / fsHz, alpha: vasM3 / volumeM3, qt: qts }, id, 5)
  const asked =
    tuningHz === undefined
      ? say('alignment.lowest', { peakDb: sizingDefaults.chosenPeakDb.value })
      : say('alignment.as-asked')
  const how = id === 'as-asked' ? asked : say('alignment.in-your-space', { how: asked })
  return { ...candidate, ...worded({ name: say('alignment.vented', { how }) }) }
}

/** The tuning, in steps a builder can cut to, with the lowest half power among those that hardly peak; coarse, then fine. */
function bestTuningHz(problem: SizingProblem, volumeM3: number): number {
  const [low, high] = sizingDefaults.tuningSpanHz.value
  const coarse = 4 * sizingDefaults.tuningStepHz.value
  const near = bestOf(problem, volumeM3, low, high, coarse)
  return bestOf(
    problem,
    volumeM3,
    Math.max(low, near - coarse),
    Math.min(high, near + coarse),
    sizingDefaults.tuningStepHz.value
  )
}

function bestOf(
  { boxed, openedLossPerQ }: SizingProblem,
  volumeM3: number,
  lowHz: number,
  highHz: number,
  stepHz: number
): number {
  const tried = Array.from({ length: Math.round((highHz - lowHz) / stepHz) + 1 }, (_, index) => {
    const tuningHz = lowHz + index * stepHz
    const box = { h: tuningHz / boxed.fsHz, alpha: boxed.vasM3 / volumeM3, qt: boxed.qts }
    const response = ventedResponse(ventedCoefficients(box, openedLossPerQ), boxed.fsHz, tuningHz)
    const { f3Hz = Number.MAX_VALUE, peakDb } = passBandOf(f => levelDb(response, f), 8, 300)
    return { tuningHz, f3Hz, peakDb }
  })
  const flat = tried.filter(({ peakDb }) => peakDb <= sizingDefaults.chosenPeakDb.value)
  const choice = flat.length > 0 ? flat : [...tried].sort((a, b) => a.peakDb - b.peakDb).slice(0, 1)
  return choice.reduce((best, here) => (here.f3Hz < best.f3Hz ? here : best)).tuningHz
}
