/** The batteries of a plan as sources of fault current. */
import type { BatterySource } from '../../contract/supply/fuse.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { present } from '../../domain/present.ts'

/** Of a kind that says too little of its resistance the capacity would be refused. */
function strength({ chemistry, capacityAh, coldCrankingA, resistanceOhm }: BatterySource): BatterySource {
  const known = chemistry === undefined || chemistry === 'flooded' ? {} : present({ capacityAh })
  return { ...present({ chemistry, coldCrankingA, resistanceOhm }), ...known }
}

/** The starter battery, from what is said of it in either place. */
export function starterSource({
  source = {},
  battery
}: Pick<PlanRequest['supply'], 'source' | 'battery'>): BatterySource {
  const { openCircuitV } = source
  return { ...present({ openCircuitV }), ...strength({ ...battery, ...source }) }
}

/** A second one; a flooded one without cranking current says nothing of its strength. */
export const secondSource = ({
  secondBattery = { capacityAh: 0 }
}: {
  readonly secondBattery?: BatterySource
}): BatterySource => strength(secondBattery)
