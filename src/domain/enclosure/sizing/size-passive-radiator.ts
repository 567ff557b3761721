/** Boxes with passive radiators: the flat vented box for the losses, and the mass and compliance that tune it. */

import type { RadiatorCandidate } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { Assumptions } from '../../assume.ts'
import { inDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { phrased, worded } from '../../say.ts'
import { type RadiatorSize, radiatorComplianceMPerN, radiatorTuning } from '../alignment/passive-radiator.ts'
import { sizingDefaults } from './defaults.ts'
import { flatBox } from './size-vented.ts'
import type { SizingProblem } from './sizing-problem.ts'
import { bandReasons, ebpReason, type Reason, spaceReason } from './suitability.ts'
import type { CandidateFamilies, UnrankedCandidate } from './unranked-candidates.ts'

export function sizePassiveRadiator(problem: SizingProblem, assume: Assumptions): CandidateFamilies {
  const { boxed, request } = problem
  const flat = flatBox(problem)
  const { wanted } = request
  const netVolumeM3 = wanted?.netVolumeM3 ?? (flat === undefined ? undefined : boxed.vasM3 / flat.alpha)
  const tuningHz = wanted?.tuningHz ?? (flat === undefined ? undefined : boxed.fsHz * flat.h)
  if (netVolumeM3 === undefined || tuningHz === undefined) {
    const why = `no flat opened box for Qts ${inDigits(boxed.qts)} with these losses; ask for a volume and a tuning`
    return { candidates: [], unsuited: [{ kind: 'passive-radiator', why }] }
  }
  return { candidates: [candidateOf(problem, netVolumeM3, tuningHz, assume)], unsuited: [] }
}

function radiatorsFor(problem: SizingProblem, volumeM3: number, tuningHz: number, assume: Assumptions) {
  const { air, driver, faces, boxed, request } = problem
  const given = request.passiveRadiators ?? {}
  const field = 'passiveRadiators'
  const { radiatorsPerFace, radiatorArea, radiatorCompliance } = sizingDefaults
  const size: RadiatorSize = {
    count: assume.work(given.count, `${field}.count`, radiatorsPerFace.value * faces, radiatorsPerFace),
    areaM2: assume.work(given.areaM2, `${field}.areaM2`, driver.sdM2, radiatorArea)
  }
  const delta = Math.max(sizingDefaults.smallestDelta.value, boxed.vasM3 / volumeM3)
  const complianceMPerN = assume.work(
    given.complianceMPerN,
    `${field}.complianceMPerN`,
    radiatorComplianceMPerN(delta, volumeM3, size, air.stiffnessPa),
    radiatorCompliance
  )
  const tuning = radiatorTuning(tuningHz, volumeM3, size, complianceMPerN, air.stiffnessPa)
  // Twice the volume that the drivers sweep, shared by all radiators.
  const swept =
    driver.xmaxM === undefined ? undefined : (2 * faces * driver.sdM2 * driver.xmaxM) / (size.count * size.areaM2)
  const radiators: RadiatorCandidate = {
    ...size,
    complianceMPerN,
    ...tuning,
    ...present({ excursionM: swept })
  }
  return radiators
}

function evaluated(problem: SizingProblem, netVolumeM3: number, radiators: RadiatorCandidate) {
  const { openedLeakQ: leakQ, absorptionQ, request } = problem
  const { count, areaM2, massKg, complianceMPerN } = radiators
  const qm = request.passiveRadiators?.qm
  const rear = {
    netVolumeM3,
    leakQ,
    ...present({ absorptionQ }),
    passiveRadiators: { count, areaM2, massKg, complianceMPerN, ...present({ qm }) }
  }
  return problem.evaluate({ kind: 'passive-radiator', rear }, 'plateau')
}

function candidateOf(
  problem: SizingProblem,
  netVolumeM3: number,
  tuningHz: number,
  assume: Assumptions
): UnrankedCandidate {
  const { boxed, request } = problem
  const radiators = radiatorsFor(problem, netVolumeM3, tuningHz, assume)
  const response = evaluated(problem, netVolumeM3, radiators)
  const alpha = boxed.vasM3 / netVolumeM3
  const reasons: readonly Reason[] = [
    notchReason(radiators.resonanceHz, response.f3Hz, radiators.delta, alpha),
    ...bandReasons(response, 0),
    ...spaceReason(netVolumeM3 / problem.volumeFactor, request.space?.netVolumeM3),
    ebpReason(problem.ebpHz, 'opened')
  ]
  const asked = request.wanted?.netVolumeM3 !== undefined || request.wanted?.tuningHz !== undefined
  return {
    kind: 'passive-radiator',
    alignment: asked ? 'as-asked' : boxed.fsHz > tuningHz ? 'c4' : 'qb3',
    ...worded({
      name: phrased(`Passive radiators, ${asked ? 'as asked' : 'volume and tuning of the flat vented box'}`)
    }),
    reasons,
    goodAt: 'vented bass without port noise or a long port; steep below its tuning, a notch at the free resonance',
    netVolumeM3,
    totalVolumeM3: netVolumeM3,
    tuningHz,
    alpha,
    tuningRatio: tuningHz / boxed.fsHz,
    response,
    passiveRadiators: radiators,
    source: 'small-1974-passive-radiator',
    rank: 0
  }
}

/** The nearer the notch to the pass band, the more it takes from the bottom octave. */
function notchReason(notchHz: number, f3Hz: number | undefined, delta: number, alpha: number): Reason {
  const text = `notch at ${inDigits(notchHz)} Hz, radiator ${inDigits(delta)} times as compliant as the box, drivers ${inDigits(alpha)} times`
  return { against: f3Hz !== undefined && notchHz > 0.75 * f3Hz, text }
}
