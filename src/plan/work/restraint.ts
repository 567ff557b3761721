/** How hard a box must be held: while driving, and in a crash. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Restraint } from '../../contract/systems/workshop.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { STANDARD_GRAVITY_M_PER_S2 } from '../../domain/constants.ts'
import { fixed, inDigits, toDigits } from '../../domain/digits.ts'
import { say, worded } from '../../domain/say.ts'
import { workDefaults } from './defaults.ts'

/** How the straps lie and what holds them. */
type StrapRequest = NonNullable<PlanRequest['car']['restraint']>

export interface RestraintRequest extends StrapRequest {
  readonly massKg: number
  /** Up to 2.0 t when absent, the harder case. */
  readonly vehicleMassKg?: number
}

export const restraintSources: readonly SourceId[] = [
  'seat-inertia-49-cfr-571-207',
  'load-securing-esv-09-0008',
  'lashing-eyes-din-75410-2',
  'seat-back-luggage-un-r17'
]

/**
 * Straps against a force.
 *
 *   n = max(2, ⌈F/(cos α·cos β·min(strap, eye))⌉)
 *
 * @param slopeDeg  α against the floor [°], below 90
 * @param spreadDeg  β aside from the direction of the force [°], below 90
 * @source derived: the part of each pull that lies along the force; the weaker of strap and eye gives way
 * @check  8624 N, 5000 N straps on 3500 N eyes: 45° and 0° → 4; 45° and 45° → 5
 */
function strapsFor(forceN: number, weakestN: number, slopeDeg: number, spreadDeg: number): number {
  const along = Math.cos((slopeDeg * Math.PI) / 180) * Math.cos((spreadDeg * Math.PI) / 180)
  return Math.max(workDefaults.leastStraps.value, Math.ceil(forceN / (along * weakestN) - 1e-9))
}

function adviceOf(eyeStrengthN: number): readonly Said[] {
  return [
    say('finish.bolt-the-box-to-the-body'),
    say('finish.never-fasten-it-to-child-seat'),
    say('finish.a-lashing-eye-is-often-weaker', { eyeStrength: inDigits(eyeStrengthN, 2) }),
    say('finish.put-load-plates-of-at-least'),
    say('finish.look-from-both-sides-before-drilling'),
    say('finish.never-under-a-car-on-its'),
    say('finish.the-crash-force-is-a-yardstick')
  ]
}

/**
 * Forces on a box.
 *
 *   crash    F = 20·m·9.8
 *   driving  F = share·m·g   (vehicle up to 2.0 t: 0.9 forward, 0.5 rearward, 0.7 sideways)
 *
 * @param request  massKg > 0; vehicleMassKg up to 3500
 * @validity the crash figure is a yardstick taken from seat regulations, not a rule for boxes
 * @source 49 CFR 571.207 S4.2 (read); A. Berg, W. Sicks, J.-P. Cheynet, ESV 09-0008 (2009), Figure 1, from VDI 2700-16 (read)
 * @check  35 kg → 6860 N
 */
export function restraint({ massKg, vehicleMassKg, ...given }: RestraintRequest, assumed: Assumptions): Restraint {
  const { drivingShares, crashFactor, crashGravityMPerS2 } = workDefaults
  const shares = drivingShares.value.find(row => (vehicleMassKg ?? 0) <= row.vehicleUpToKg) ?? drivingShares.value[1]
  const weightN = massKg * STANDARD_GRAVITY_M_PER_S2
  const crashForceN = crashFactor.value * massKg * crashGravityMPerS2.value
  const resolved = (field: keyof StrapRequest) =>
    assumed.take<number>(given[field], `car.restraint.${field}`, workDefaults[field])
  const straps = {
    strapCapacityN: resolved('strapCapacityN'),
    eyeStrengthN: resolved('eyeStrengthN'),
    strapSlopeDeg: resolved('strapSlopeDeg'),
    strapSpreadDeg: resolved('strapSpreadDeg')
  }
  const weakestN = Math.min(straps.strapCapacityN, straps.eyeStrengthN)
  return {
    massKg,
    crashForceN,
    drivingForwardN: shares.forward * weightN,
    drivingRearwardN: shares.rearward * weightN,
    drivingSidewaysN: shares.sideways * weightN,
    strapCount: strapsFor(crashForceN, weakestN, straps.strapSlopeDeg, straps.strapSpreadDeg),
    ...straps,
    ...worded({ advice: adviceOf(straps.eyeStrengthN) })
  }
}

export function restraintCautions(held: Restraint): readonly Caution[] {
  const { massKg, crashForceN, drivingForwardN, strapCount, strapCapacityN, eyeStrengthN } = held
  const weakestN = toDigits(Math.min(strapCapacityN, eyeStrengthN), 2)
  const message = say('box-restraint', {
    massKg: fixed(massKg, 1),
    crashForceN: toDigits(crashForceN, 2),
    drivingForwardN: toDigits(drivingForwardN, 2),
    strapCount,
    weakestN,
    strapSlopeDeg: held.strapSlopeDeg,
    strapSpreadDeg: held.strapSpreadDeg
  })
  return [
    caution('box-restraint', message, {
      figures: { massKg, crashForceN, drivingForwardN, strapCount, strapCapacityN, eyeStrengthN }
    })
  ]
}
