/** What stands beside the amplifiers: second battery, capacitor, turn-on relay, as bill, picture and steps show them. */

import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import { planDefaults } from '../request/defaults.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'
import type { PowerRuns } from './plan-supply.ts'
import { relayRating } from './second-battery.ts'
import { turnOnRelayOf } from './turn-on-way.ts'

type Accessories = Pick<PlanCircuit, 'secondBattery' | 'capacitor' | 'turnOnRelay'>

function secondBatteryOf({ supply }: SupplyBrief, runs: PowerRuns): PlanCircuit['secondBattery'] {
  const { secondBattery } = supply
  const { link, charger, trunk, secondLead } = runs
  if (secondBattery === undefined || link === undefined) return undefined
  const { capacityAh, chemistry = 'flooded' } = secondBattery
  return {
    ...worded({ name: say('part.second-battery-name', { capacityAh, chemistry: say(`part.chemistry.${chemistry}`) }) }),
    link: link.kind,
    ...present({
      relayA: link.kind === 'relay' && trunk !== undefined ? relayRating(trunk) : undefined,
      ...(link.kind === 'joined'
        ? {}
        : { signalWireM: supply.positiveLengthM, signalFuseA: wiringDefaults.linkFuseA.value }),
      sealed: chemistry === 'lithium' ? true : undefined,
      charger,
      lead: secondLead
    })
  }
}

/** At the terminals of the bass amplifier, behind its fuse: the leads carry its ripple, and are as thick as the cable that ends there. */
export function capacitorOf({ supply }: SupplyBrief, { trunk, branches }: PowerRuns): PlanCircuit['capacitor'] {
  const { capacitor } = supply
  const designation = branches[0]?.designation ?? trunk?.designation
  if (capacitor === undefined || designation === undefined) return undefined
  const { capacitanceF } = capacitor
  return {
    capacitanceF,
    designation,
    lengthM: planDefaults.capacitorLeadM.value,
    ...worded({ at: say('part.beside.amplifier') })
  }
}

export function accessories(brief: SupplyBrief, runs: PowerRuns): Accessories {
  return present({
    secondBattery: secondBatteryOf(brief, runs),
    capacitor: capacitorOf(brief, runs),
    turnOnRelay: turnOnRelayOf(brief)
  })
}
