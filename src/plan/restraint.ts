/** How hard a box must be held: while driving, and in a crash. */
import { type Caution, caution } from '../domain/caution.ts'
import { STANDARD_GRAVITY_M_PER_S2 } from '../domain/constants.ts'
import type { SourceId } from '../domain/source.ts'
import { liftRule } from './workshop-practice.ts'

/** Share of the weight to hold while driving, by mass of the vehicle. */
const drivingShares = [
  { vehicleUpToKg: 2000, forward: 0.9, rearward: 0.5, sideways: 0.7 },
  { vehicleUpToKg: 3500, forward: 0.8, rearward: 0.5, sideways: 0.6 }
] as const

/** Seat regulation: 20 × mass × 9.8 N. */
const crashFactor = 20
const crashGravity = 9.8

/** What one small lashing strap may carry [N] when its label is not known: 500 daN, common practice. */
const strapCapacityN = 5000

export interface RestraintRequest {
  readonly massKg: number
  /** Up to 2.0 t when absent, the harder case. */
  readonly vehicleMassKg?: number
  /** Lashing capacity printed on one strap [N]. */
  readonly strapCapacityN?: number
}

export interface Restraint {
  readonly massKg: number
  readonly crashForceN: number
  readonly drivingForwardN: number
  readonly drivingRearwardN: number
  readonly drivingSidewaysN: number
  /** Straps that hold the crash force, each at the capacity below. */
  readonly strapCount: number
  readonly strapCapacityN: number
  readonly advice: readonly string[]
}

export const restraintSources: readonly SourceId[] = [
  'seat-inertia-49-cfr-571-207',
  'load-securing-esv-09-0008',
  'seat-back-luggage-un-r17'
]

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
export function restraint({ massKg, vehicleMassKg, strapCapacityN: printed }: RestraintRequest): Restraint {
  const shares = drivingShares.find(row => (vehicleMassKg ?? 0) <= row.vehicleUpToKg) ?? drivingShares[1]
  const weightN = massKg * STANDARD_GRAVITY_M_PER_S2
  const crashForceN = crashFactor * massKg * crashGravity
  const capacity = printed ?? strapCapacityN
  return {
    massKg,
    crashForceN,
    drivingForwardN: shares.forward * weightN,
    drivingRearwardN: shares.rearward * weightN,
    drivingSidewaysN: shares.sideways * weightN,
    strapCount: Math.max(2, Math.ceil(crashForceN / capacity - 1e-9)),
    strapCapacityN: capacity,
    advice: [
      'Bolt the box, or strap it, to factory lashing eyes or to the body structure; leaning on the seat back is no restraint.',
      'Put load plates of at least 50 × 50 mm behind the board: wood pulls through before a bolt gives way.',
      'Look from below before drilling: never into the tank, brake lines, wiring, airbag areas or the battery of the drive.'
    ]
  }
}

const round = (value: number) => Math.round(value / 10) * 10

export function restraintCautions({
  massKg,
  crashForceN,
  drivingForwardN,
  strapCount,
  strapCapacityN: capacity
}: Restraint): readonly Caution[] {
  const kg = Math.round(massKg * 10) / 10
  const held = caution(
    'box-restraint',
    `A box of ${kg} kg pulls forward with ${round(drivingForwardN)} N under hard braking and with about ${round(crashForceN)} N in a crash of 20 times its weight: bolt it down, or use at least ${strapCount} straps of ${round(capacity)} N each.`,
    { figures: { massKg: kg, crashForceN: round(crashForceN) } }
  )
  if (massKg <= liftRule.twoPeopleKg) return [held]
  return [
    held,
    caution('two-people-lift', `At ${kg} kg the box is a load for two people.`, { figures: { massKg: kg } })
  ]
}
