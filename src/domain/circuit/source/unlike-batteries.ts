/** Two batteries joined for good: only two of a kind make one bank. */
import type { BatteryChemistry } from '../../../contract/supply/words.ts'
import { assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { twelves } from '../../twelves.ts'
import { batteryOhm } from '../fuse/battery-source.ts'
import type { BatteryRequest } from './engine-off.ts'

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

const REMEDY =
  'Join them by a DC-DC charger made for the second battery, with a fuse at each end (arrangement `isolated`), or take two of one kind.'

/** @returns nothing for two of a kind; a stop rests on two given chemistries */
export function unlikeCautions({ battery, secondBattery, systemVoltageV }: Batteries): readonly Caution[] {
  if (battery === undefined || secondBattery?.arrangement !== 'parallel') return []
  return unlike(battery, secondBattery) ? [tiedTogether(battery, secondBattery, systemVoltageV)] : []
}

function tiedTogether(first: BatteryRequest, second: BatteryRequest, systemVoltageV: number): Caution {
  const [one, other] = [first.chemistry, second.chemistry]
  if (one === undefined || other === undefined) {
    const [which, known] = one === undefined ? ['battery', other] : ['secondBattery', one]
    return caution(
      'unlike-batteries-parallel',
      `One battery is ${known}, the chemistry of the other is not said: read it on its label. Unless both are alike they must not be joined in parallel, so they were not reckoned as one. ${REMEDY}`,
      { at: `${which}.chemistry`, level: 'care' }
    )
  }
  const crossed = kindOf(one) !== kindOf(other)
  const flow = crossed ? equalisingA(first, second, systemVoltageV) : undefined
  const why =
    flow === undefined
      ? 'they want different charging voltages, so one is overcharged or the other never fills'
      : `about ${flow.toFixed(0)} A flow between them at rest, for hours, and the lead battery never fills`
  return caution(
    'unlike-batteries-parallel',
    `A ${one} and a ${other} battery must not be joined in parallel: ${why}. They were not reckoned as one. ${REMEDY}`,
    { at: 'secondBattery.chemistry', ...(flow === undefined ? {} : { figures: { equalisingA: flow } }) }
  )
}
