/** The whole system as one circuit between named points: what was sized is laid into it once, every current and voltage is read from it. */
import type { Circuit, CircuitBattery, CircuitRequest } from '../../contract/supply/supply-circuit.ts'
import type { AmplifierOnSupply, CurrentRequest, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { computeCircuit } from '../../domain/circuit/points/compute-circuit.ts'
import type { BatteryRequest } from '../../domain/circuit/source/engine-off.ts'
import { supplyJudgement } from '../../domain/circuit/source/supply-judgement.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { type Part, runPart, waitingFor } from '../request/part.ts'
import { RUNNING_OVER_NOMINAL, usual } from '../request/plan-usual.ts'
import { converterPieces, converterSources } from './graph-converter.ts'
import { type Hub, type Pieces, points, powerPieces, together } from './graph-pieces.ts'
import { secondPieces, secondSources, trunkEndsAt } from './graph-second.ts'
import { hasBlock } from './plan-run.ts'
import type { CurrentPart, PowerRuns } from './plan-supply.ts'

export type CircuitPart = Part<CircuitRequest, Circuit>

/** Of a kind that says too little of its resistance the capacity would be refused. */
function capacityOf({ chemistry, capacityAh }: Pick<CircuitBattery, 'chemistry' | 'capacityAh'>) {
  return chemistry === undefined || chemistry === 'flooded' ? {} : present({ capacityAh })
}

/** The battery, from what is said of it in either place. */
function batteryOf({ source = {}, battery }: Pick<PlanRequest['supply'], 'source' | 'battery'>) {
  const said: Partial<BatteryRequest> = { ...battery, ...source }
  const { chemistry, capacityAh, resistanceOhm, coldCrankingA } = said
  const { openCircuitV } = source
  return {
    id: 'battery',
    plus: points.batteryPlus,
    minus: points.batteryMinus,
    ...present({ openCircuitV, chemistry, resistanceOhm, coldCrankingA }),
    ...capacityOf(present({ chemistry, capacityAh }))
  }
}

/** The plan's own charging system; where none is described it is stiff and gives whatever is asked. */
function chargingOf({ systemVoltageV }: PlanRequest['supply'], charging: SupplyCurrent['charging']) {
  const { stiffA, stiffOhm } = usual
  const poles = { id: 'charging', plus: points.batteryPlus, minus: points.batteryMinus }
  const setV = systemVoltageV * RUNNING_OVER_NOMINAL
  if (charging === undefined)
    return { ...poles, setV, idleA: stiffA.value, drivingA: stiffA.value, slopeOhm: stiffOhm.value }
  return { ...poles, setV, idleA: charging.idleAvailableA, drivingA: charging.cruiseAvailableA }
}

function vehicleOf({ battery }: PlanRequest['supply'], charging: SupplyCurrent['charging']) {
  return {
    id: 'vehicle',
    plus: points.batteryPlus,
    minus: points.batteryMinus,
    currentA: charging?.baseLoadA ?? 0,
    parkedA: battery?.parkedLoadA ?? supplyJudgement.parkedLoadA.value
  }
}

/** Each under its place, with the name that the person knows it by. */
function amplifierOf(amplifier: AmplifierOnSupply, index: number, names: readonly string[]) {
  const name = names[index]
  return { ...amplifier, ...present({ name }), id: points.amplifier(index), ...points.amplifierPoles(index) }
}

function graphRequest(
  request: PlanRequest,
  { amplifiers }: CurrentRequest,
  { charging }: SupplyCurrent,
  pieces: Pieces,
  runs: PowerRuns
): CircuitRequest {
  const { supply } = request
  const { cables, fuses, links } = pieces
  const second = secondSources(request, runs)
  const converters = [...second.converters, ...converterSources(request, runs)]
  return {
    systemVoltageV: supply.systemVoltageV,
    batteries: [batteryOf(supply), ...second.batteries],
    alternators: [chargingOf(supply, charging)],
    ...(converters.length === 0 ? {} : { converters }),
    cables,
    ...(fuses.length === 0 ? {} : { fuses }),
    ...(links.length === 0 ? {} : { links }),
    amplifiers: amplifiers.map((amplifier, index) => amplifierOf(amplifier, index, runs.amplifiers)),
    accessories: [vehicleOf(supply, charging)]
  }
}

/** What stands in the request of the part as a figure and was said by nobody. */
function graphAssumed({ supply }: PlanRequest, { charging }: SupplyCurrent): readonly Assumption[] {
  const { systemVoltageV, battery } = supply
  const { stiffA } = usual
  return [
    {
      field: 'supply.source',
      value: systemVoltageV * RUNNING_OVER_NOMINAL,
      why: 'volts at the battery while the engine runs: 13.8 for each 12'
    },
    ...(charging === undefined ? [{ field: 'supply.charging', ...stiffA }] : []),
    ...(battery === undefined ? [{ field: 'supply.battery.parkedLoadA', ...supplyJudgement.parkedLoadA }] : [])
  ]
}

/** One amplifier behind a converter has no block: its branch begins and ends there. */
const hubOf = ({ converter, branches }: PowerRuns): Hub =>
  converter === undefined || hasBlock({ branches, converter })
    ? { plus: points.block, returns: points.returns }
    : { plus: points.converterOut, returns: points.converterMinus }

/** @returns the part, and what it takes for granted */
export function planGraph(
  request: PlanRequest,
  current: CurrentPart,
  runs: PowerRuns
): { readonly circuit: CircuitPart; readonly assumed: readonly Assumption[] } {
  const { trunk, missing } = runs
  if (!current.done || trunk === undefined) return { circuit: waitingFor('a cable that passes'), assumed: [] }
  if (missing !== undefined) return { circuit: waitingFor(`a branch cable to ${missing} that passes`), assumed: [] }
  if (request.supply.converter !== undefined && runs.converter === undefined) {
    return { circuit: waitingFor('a cable that passes for the output of the converter'), assumed: [] }
  }
  const drawn = current.outcome.result
  const hub = hubOf(runs)
  const power = powerPieces(request, trunk, runs.branches, trunkEndsAt(runs), hub)
  const pieces = together([power, secondPieces(request, runs), converterPieces(request, runs)])
  const circuit = runPart(graphRequest(request, current.request, drawn, pieces, runs), computeCircuit)
  return { circuit, assumed: [...pieces.assumed, ...graphAssumed(request, drawn)] }
}
