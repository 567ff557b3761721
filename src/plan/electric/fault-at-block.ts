/** What the first battery may drive into a dead short at the distribution block, over the trunk. */

import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import { assumptions } from '../../domain/assume.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { conductorLaw, conductorOhmPerM } from '../../domain/circuit/cable/conductor-resistance.ts'
import {
  type Breaking,
  breakingCurrent,
  coldFuseOhm,
  strongestSource
} from '../../domain/circuit/fuse/battery-source.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'

/** Cold, and nothing counted of its way back: the side that lets most through. */
function trunkOhm({ onTheWay }: SupplyBrief, { designation, runs, positiveLengthM, fuse }: PowerRun): number {
  // their defaults are told by the trunk itself
  const ohmPerM = conductorOhmPerM(
    cableSize(designation, undefined, 'designation'),
    conductorLaw(onTheWay, assumptions()),
    wiringDefaults.coldC.value
  )
  return (positiveLengthM * ohmPerM + (fuse === undefined ? 0 : coldFuseOhm(fuse.ratingA))) / runs
}

const atBlock = (brief: SupplyBrief, trunk: PowerRun): Breaking =>
  strongestSource(brief.starter, brief.supply.systemVoltageV, trunkOhm(brief, trunk), assumptions())

/** Whether the usual families do not break it, where the battery is described and nothing else stands at the block. */
export function tooStrongAtBlock(brief: SupplyBrief, trunk: PowerRun, { fuse }: Pick<PowerRun, 'fuse'>): boolean {
  const { secondBattery, converter } = brief.supply
  if (fuse === undefined || secondBattery !== undefined || converter !== undefined) return false
  const fault = atBlock(brief, trunk)
  return fault.described && breakingCurrent(fault, fuse.ratingA) > fuse.breakingA
}
