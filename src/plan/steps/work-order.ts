/** The order of work with its days. */
import type { BuildWay, WorkDay } from '../../contract/systems/workshop.ts'
import type { BuildFacts } from '../work/build-facts.ts'
import { type BuildOrder, buildOrder } from '../work/build-order.ts'
import type { BuildNode } from '../work/build-step.ts'
import { workDefaults } from '../work/defaults.ts'
import { waysOfWorking } from './ways.ts'
import { lastDay, latestBatteryOff } from './work-days.ts'

export interface WorkOrder extends BuildOrder {
  /** Of a careful first build. */
  readonly days: readonly WorkDay[]
  /** How many days a practised hand needs. */
  readonly practisedDays: number
  /** The car has no battery from this day to the last. */
  readonly batteryOffDay: number
  /** All of them, for comparison. */
  readonly ways: readonly BuildWay[]
}

export function workOrder(nodes: readonly BuildNode[], box: BuildFacts): WorkOrder {
  const order = buildOrder(nodes)
  const days = latestBatteryOff(order.steps)
  const practised = order.steps.map(step => ({ ...step, minutes: workDefaults.practised.value * step.minutes }))
  return {
    ...order,
    days,
    practisedDays: lastDay(latestBatteryOff(practised)),
    batteryOffDay: days.find(({ steps }) => steps.includes('battery-off'))?.day ?? 1,
    ways: waysOfWorking(box)
  }
}
