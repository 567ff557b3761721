/** What the first battery may drive into a dead short at the distribution block, over the trunk. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { conductorLaw, conductorOhmPerM } from '../../domain/circuit/cable/conductor-resistance.ts'
import {
  type Breaking,
  breakingCurrent,
  coldFuseOhm,
  strongestSource
} from '../../domain/circuit/fuse/battery-source.ts'
import { starterSource } from './battery-sources.ts'
import { conductorOf } from './plan-conductor.ts'
import type { PowerRun } from './plan-run.ts'

/** Cold, and nothing counted of its way back: the side that lets most through. */
function trunkOhm(request: PlanRequest, { designation, runs, positiveLengthM, fuse }: PowerRun): number {
  // their defaults are told by the trunk itself
  const ohmPerM = conductorOhmPerM(
    cableSize(designation, undefined, 'designation'),
    conductorLaw(conductorOf(request), assumptions()),
    20
  )
  return (positiveLengthM * ohmPerM + (fuse === undefined ? 0 : coldFuseOhm(fuse.ratingA))) / runs
}

const atBlock = (request: PlanRequest, trunk: PowerRun): Breaking =>
  strongestSource(starterSource(request.supply), request.supply.systemVoltageV, trunkOhm(request, trunk), assumptions())

/** Whether the usual families do not break it, where the battery is described and nothing else stands at the block. */
export function tooStrongAtBlock(request: PlanRequest, trunk: PowerRun, { fuse }: Pick<PowerRun, 'fuse'>): boolean {
  const { secondBattery, converter } = request.supply
  if (fuse === undefined || secondBattery !== undefined || converter !== undefined) return false
  const fault = atBlock(request, trunk)
  return fault.described && breakingCurrent(fault, fuse.ratingA) > fuse.breakingA
}
