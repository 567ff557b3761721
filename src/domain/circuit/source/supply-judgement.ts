/** Judgement values of the supply room: common practice or choices of this service; every one used is echoed to the caller. */
import type { AmplifierClass } from '../../../contract/supply/words.ts'

interface ClassDraw {
  /** Output over input at rated sine output, converter included. */
  readonly efficiency: number
  readonly lowest: number
  readonly highest: number
  /** Idle draw of one amplifier [W]. */
  readonly quiescentW: number
  /** How input power falls with output: straight, with the square root of the output, or not at all. */
  readonly law: 'linear' | 'square-root' | 'constant'
}

/** Efficiencies and idle draws: common practice, no source; π/4 bounds a class B stage (derived). */
export const classDraws: Readonly<Record<AmplifierClass, ClassDraw>> = {
  A: { efficiency: 0.2, lowest: 0.15, highest: 0.25, quiescentW: 40, law: 'constant' },
  AB: { efficiency: 0.6, lowest: 0.45, highest: 0.65, quiescentW: 40, law: 'square-root' },
  B: { efficiency: 0.6, lowest: 0.5, highest: 0.785, quiescentW: 40, law: 'square-root' },
  D: { efficiency: 0.85, lowest: 0.75, highest: 0.92, quiescentW: 15, law: 'linear' },
  G: { efficiency: 0.65, lowest: 0.55, highest: 0.75, quiescentW: 40, law: 'square-root' },
  H: { efficiency: 0.7, lowest: 0.6, highest: 0.75, quiescentW: 40, law: 'square-root' }
}

export const supplyJudgement = {
  /** No class B output stage behind a converter gets this far, so an unnamed class above it is taken as D. */
  switchingFrom: 0.72,
  /** A default idle draw is never taken above this share of the full draw. */
  quiescentShare: 0.2,
  averageDuty: 1 / 8,
  heavyDuty: 1 / 3,
  standbyLimitA: 0.001,
  regulation:
    'supply type not stated: current as a regulated amplifier, output as an unregulated one, the safe side of each',
  ratingVPer12V: 14.4,
  /** Usual charging voltage with the engine running, common practice. */
  chargingVPer12V: 14.4,
  idleFraction: {
    value: 0.5,
    why: 'alternator output at idle 0.4 to 0.6 of its rating, common practice; give idleA when the rating line is known'
  },
  hotFactor: { value: 0.85, why: 'a hot alternator gives about 85 % of its rating, common practice' },
  baseLoadA: { value: 35, why: 'engine, lights and blower draw 20 to 60 A, common practice' },
  parkedLoadA: {
    value: 3,
    why: 'music source, displays and door electronics of a parked car: 3 A, our choice; measure it'
  },
  usableFraction: { value: 0.5, why: 'a starting battery is not discharged below half, common practice' },
  usableLithium: {
    value: 0.8,
    why: 'a lithium battery is used to four fifths, common practice; its own management ends it'
  },
  peukert: { agm: 1.12, gel: 1.12, flooded: 1.24, lithium: 1.05 },
  jointOhm: { value: 0.0002, why: 'a crimped lug or ring 0.2 mΩ, common practice' },
  blockContactOhm: { value: 0.0002, why: 'a contact of the distribution block 0.2 mΩ, common practice' },
  chassisOhm: {
    value: 0.002,
    why: 'body return 2 mΩ (0.5 to 10): measure it, bonded, aluminium and composite bodies differ'
  },
  dropLimitPercent: {
    value: 3,
    why: 'main feeder: 3 % of nominal voltage on the cable, as electronics and feeders are classed'
  },
  totalDropCarePercent: 5,
  totalDropStopPercent: 10,
  dropOutV: { value: 10.5, why: 'a 12 V amplifier’s converter stops near 10.5 V when its sheet says nothing' },
  groundLeadM: 0.5,
  /** A ground reading may lie this many times above its design; our choice for length, area, lugs and meter. */
  groundTolerance: 1.3,
  parallelRuns: 4,
  /** A size that lacks no more of its section than this is told; our choice. */
  nearMissPercent: 10,
  collapseMargin: 2,
  /** Ripple this loud under the signal is taken as audible; our choice. */
  groundNoiseDb: -60
} as const
