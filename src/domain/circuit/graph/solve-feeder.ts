/** A feeder resolved and solved: defaults chosen, conductors warmed until current and resistance agree. */

import type { FeederRequest, FeederSource } from '../../../contract/supply/supply-feeder.ts'
import type { Assumptions } from '../../assume.ts'
import { twelves } from '../../twelves.ts'
import { batteryOhm, openCircuit } from '../fuse/battery-source.ts'
import { requireFuseStands } from '../fuse/fuse-rating.ts'
import { loadDefaults } from '../load/defaults.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { feederDefaults } from './defaults.ts'
import { type LoadTask, resolveLoad } from './feeder-loads.ts'
import { resolveStage, type StageTask, stageOhm, stageTemperature, withoutAssumedBody } from './feeder-stage.ts'
import { type Source, type SourceState, sourceState } from './limited-source.ts'
import type { Branch } from './shared-trunk.ts'

export interface FeederTask {
  readonly source: Source
  readonly trunk: StageTask
  readonly branches: readonly StageTask[]
  readonly loads: readonly LoadTask[]
  readonly dropOutsV: readonly number[]
}

export interface Solved {
  readonly answer: SourceState
  readonly trunkC: number
  readonly branchesC: readonly number[]
}

function resolveSource(source: FeederSource, systemVoltageV: number, assumed: Assumptions): Source {
  const resistanceOhm = assumed.take(source.resistanceOhm, 'source.resistanceOhm', feederDefaults.sourceOhm)
  if (source.currentLimitA === undefined) return { voltageV: source.voltageV, resistanceOhm }
  const { baseLoadA } = supplyDefaults
  return {
    voltageV: source.voltageV,
    resistanceOhm,
    limit: {
      currentA: source.currentLimitA,
      baseLoadA: assumed.take(source.baseLoadA, 'source.baseLoadA', baseLoadA),
      batteryV: openCircuit(source.battery ?? {}, systemVoltageV, assumed, 'source.battery.'),
      batteryOhm: batteryOhm(source.battery ?? {}, systemVoltageV, assumed, 'source.battery.')
    }
  }
}

/** A trunk that ends in the only amplifier has its fuse; one that ends in a block has none of a maker's. */
function makerOnTrunk({ amplifiers }: FeederRequest): number | undefined {
  const [only] = amplifiers
  return amplifiers.length === 1 && only?.branch === undefined ? only?.makerFuseA : undefined
}

/** @throws DesignError `fuse-voltage` */
function requireFuses({ trunk, amplifiers, source, systemVoltageV }: FeederRequest): void {
  const highestV = Math.max(systemVoltageV, source.voltageV)
  const stages = [
    ['trunk', trunk] as const,
    ...amplifiers.map(({ branch }, index) => [`amplifiers[${index}].branch`, branch] as const)
  ]
  for (const [at, stage] of stages) if (stage?.fuse !== undefined) requireFuseStands(stage.fuse, highestV, `${at}.fuse`)
}

export function resolveFeeder(request: FeederRequest, assumed: Assumptions): FeederTask {
  const { systemVoltageV } = request
  requireFuses(request)
  const usual = loadDefaults.dropOutV
  const loads = request.amplifiers.map((amplifier, index) =>
    resolveLoad(amplifier, request, assumed, `amplifiers[${index}].`)
  )
  const total = loads.reduce((sum, { nominalA }) => sum + nominalA, 0)
  return {
    source: resolveSource(request.source, systemVoltageV, assumed),
    trunk: resolveStage(request.trunk, total, systemVoltageV, assumed, 'trunk.', makerOnTrunk(request)),
    branches: request.amplifiers.map(({ branch, makerFuseA }, index) =>
      resolveStage(
        branch,
        loads[index]?.nominalA ?? 0,
        systemVoltageV,
        assumed,
        `amplifiers[${index}].branch.`,
        makerFuseA
      )
    ),
    loads,
    dropOutsV: request.amplifiers.map(({ dropOutV }, index) =>
      assumed.work(dropOutV, `amplifiers[${index}].dropOutV`, usual.value * twelves(systemVoltageV), usual)
    )
  }
}

/** The feeder without what was assumed of the body; undefined where nothing was. */
export function bareOfAssumedBody(feeder: FeederTask): FeederTask | undefined {
  const stages = [feeder.trunk, ...feeder.branches]
  if (!stages.some(({ cable }) => cable?.bodyAssumed)) return undefined
  return { ...feeder, trunk: withoutAssumedBody(feeder.trunk), branches: feeder.branches.map(withoutAssumedBody) }
}

const PASSES = 12
const SETTLED_K = 0.01

const NOTHING = { kind: 'power', amount: 0 } as const

export function branchesAt(feeder: FeederTask, branchesC: readonly number[]): readonly Branch[] {
  return feeder.branches.map((stage, index) => ({
    load: feeder.loads[index]?.load ?? NOTHING,
    ohm: stageOhm(stage, branchesC[index] ?? 20)
  }))
}

function solveAt(feeder: FeederTask, trunkC: number, branchesC: readonly number[]): SourceState {
  return sourceState(feeder.source, stageOhm(feeder.trunk, trunkC), branchesAt(feeder, branchesC))
}

/** Resistance and temperature settle together: each pass heats the conductors with the current of the last. */
export function solveFeeder(feeder: FeederTask, heldC: number | undefined): Solved {
  const ambient = (stage: StageTask) => heldC ?? stage.cable?.surroundings.ambientC ?? 20
  let solved: Solved = {
    answer: solveAt(feeder, ambient(feeder.trunk), feeder.branches.map(ambient)),
    trunkC: ambient(feeder.trunk),
    branchesC: feeder.branches.map(ambient)
  }
  if (heldC !== undefined) return solved
  for (let pass = 0; pass < PASSES; pass++) {
    const { state } = solved.answer
    if (state === undefined) return solved
    const trunkC = stageTemperature(feeder.trunk, state.totalA)
    const branchesC = feeder.branches.map((stage, index) => stageTemperature(stage, state.loads[index]?.currentA ?? 0))
    const change = Math.max(
      Math.abs(trunkC - solved.trunkC),
      ...branchesC.map((now, index) => Math.abs(now - (solved.branchesC[index] ?? now)))
    )
    solved = { answer: solveAt(feeder, trunkC, branchesC), trunkC, branchesC }
    if (change < SETTLED_K) return solved
  }
  return solved
}
