/** The lead from source to amplifier: screened for a line level, a twisted pair a channel for a loudspeaker level. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanSignal } from '../../contract/systems/plan-request.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'
import type { SignalPart } from './plan-signal.ts'
import { jumperM, turnOnOf } from './turn-on-way.ts'

/**
 * `twisted-pair`: both cores of a loudspeaker output rest at half the supply where it is bridge-tied, so that a screen,
 * which invites a ground, has no place in the lead.
 */
export interface SignalLead {
  readonly kind: 'screened' | 'twisted-pair'
  /** As it is bought and drawn. */
  readonly name: string
  readonly said?: { readonly name: Said }
  /** Of one. */
  readonly lengthM: number
  readonly count: number
  /** Stands beside the amplifier; the lead ends in it, a short screened one goes on. */
  readonly converter: boolean
  /** From what switches them to the amplifier or its relay; 0 where the amplifier senses its signal. */
  readonly turnOnLengthM: number
  /** On from the turn-on terminal of one amplifier to that of the next; absent with one, or where they sense their signal. */
  readonly jumperM?: number
}

/** The signal leads take the way of the power cable, on the other side of the car. */
export function planLead(brief: SupplyBrief, signal: PlanSignal, part: SignalPart): SignalLead {
  const lengthM = brief.supply.positiveLengthM
  const method = turnOnOf(brief)?.method
  const switched = method !== undefined && method !== 'signal-sensing'
  const turnOn = {
    turnOnLengthM: switched ? lengthM : 0,
    ...present({ jumperM: switched ? jumperM(brief) : undefined })
  }
  if (signal.source?.kind !== 'speaker-level') {
    return {
      kind: 'screened',
      ...worded({ name: say('part.lead.screened') }),
      lengthM,
      count: 1,
      converter: false,
      ...turnOn
    }
  }
  const connection = part.done ? part.outcome.result.input?.connection : undefined
  return {
    kind: 'twisted-pair',
    ...worded({ name: say('part.lead.twisted', { areaMm2: wiringDefaults.leadMm2.value }) }),
    lengthM,
    count: wiringDefaults.channels.value,
    converter: connection === 'line-output-converter',
    ...turnOn
  }
}
