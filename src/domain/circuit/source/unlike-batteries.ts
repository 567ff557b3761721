/** Two batteries joined for good: only two of a kind make one bank. */

import type { BatteryRequest } from '../../../contract/supply/supply-current.ts'
import type { BatteryChemistry } from '../../../contract/supply/words.ts'
import { assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed } from '../../digits.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { batteryOhm } from '../fuse/battery-source.ts'

/** At rest, full, for each 12 V; lithium iron phosphate from memory. */
const REST_V = { lead: 12.6, lithium: 13.3 } as const

interface Batteries {
  readonly battery?: BatteryRequest
  readonly secondBattery?: BatteryRequest & { readonly arrangement: 'isolated' | 'parallel' }
  readonly systemVoltageV: number
}

type Kind = Pick<BatteryRequest, 'chemistry'>

const kindOf = (chemistry: BatteryChemistry) => (chemistry === 'lithium' ? 'lithium' : 'lead')

/** Of a chemistry that is not said, flooded is assumed, as everywhere; two that are not said are taken as two of a kind. */
export function unlike(first: Kind, second: Kind): boolean {
  if (first.chemistry === undefined && second.chemistry === undefined) return false
  return (first.chemistry ?? 'flooded') !== (second.chemistry ?? 'flooded')
}

/**
 * Current between a lead and a lithium battery tied together at rest [A]: ΔV/(R1 + R2).
 *
 * @source Ohm's law on rest voltages of 12.6 V and 13.3 V per 12 V, the latter from memory
 * @check  9.5 + 5 mΩ → 48.28 A
 */
function equalisingA(first: BatteryRequest, second: BatteryRequest, systemVoltageV: number): number {
  const ohm = (battery: BatteryRequest) => batteryOhm(battery, systemVoltageV, assumptions(), '')
  return (twelves(systemVoltageV) * (REST_V.lithium - REST_V.lead)) / (ohm(first) + ohm(second))
}

const REMEDY = say('unlike-batteries-parallel.remedy')

/** @returns nothing for two of a kind; a stop rests on two given chemistries */
export function unlikeCautions({ battery, secondBattery, systemVoltageV }: Batteries): readonly Caution[] {
  if (battery === undefined || secondBattery?.arrangement !== 'parallel') return []
  return unlike(battery, secondBattery) ? [tiedTogether(battery, secondBattery, systemVoltageV)] : []
}

function tiedTogether(first: BatteryRequest, second: BatteryRequest, systemVoltageV: number): Caution {
  const [one, other] = [first.chemistry, second.chemistry]
  if (one === undefined || other === undefined) {
    const [which, known = 'flooded'] =
      one === undefined ? (['battery', other] as const) : (['secondBattery', one] as const)
    return caution(
      'unlike-batteries-parallel',
      say('unlike-batteries-parallel', { known: say(`chemistry.${known}`), remedy: REMEDY }),
      {
        at: `${which}.chemistry`,
        level: 'care'
      }
    )
  }
  const crossed = kindOf(one) !== kindOf(other)
  const flow = crossed ? equalisingA(first, second, systemVoltageV) : undefined
  const why =
    flow === undefined
      ? say('unlike-batteries-parallel.charging')
      : say('unlike-batteries-parallel.equalising', { flowA: fixed(flow, 0) })
  return caution(
    'unlike-batteries-parallel',
    say('unlike-batteries-parallel.known', {
      one: say(`chemistry.${one}`),
      other: say(`chemistry.${other}`),
      why,
      remedy: REMEDY
    }),
    { at: 'secondBattery.chemistry', ...(flow === undefined ? {} : { figures: { equalisingA: flow } }) }
  )
}
