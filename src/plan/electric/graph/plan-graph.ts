/** The whole system as one circuit between named points: what was sized is laid into it once, every current and voltage is read from it. */
import type { Circuit, CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { AmplifierOnSupply, CurrentRequest, SupplyCurrent } from '../../../contract/supply/supply-current.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { computeCircuit } from '../../../domain/circuit/points/compute-circuit.ts'
import { supplyJudgement } from '../../../domain/circuit/source/supply-judgement.ts'
import type { Assumption } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import { type Part, runPart, waitingFor } from '../../request/part.ts'
import { RUNNING_OVER_NOMINAL, usual } from '../../request/plan-usual.ts'
import { starterSource } from '../battery-sources.ts'
import { hasBlock } from '../plan-run.ts'
import type { CurrentPart, PowerRuns } from '../plan-supply.ts'
import { converterPieces, converterSources } from './graph-converter.ts'
import { type Hub, minusOf, type Pieces, points, powerPieces, together } from './graph-pieces.ts'
import { secondPieces, secondSources, trunkEndsAt } from './graph-second.ts'
import { chargingEnds, endsAssumed, starterAssumed, starterOf } from './vehicle-habits.ts'

export type CircuitPart = Part<CircuitRequest, Circuit>

const starterPoles = { id: 'battery', plus: points.batteryPlus, minus: points.batteryMinus }

/** The plan's own charging system; where none is described it is stiff and gives whatever is asked. */
function chargingOf(request: PlanRequest, charging: SupplyCurrent['charging']) {
  const { systemVoltageV } = request.supply
  const { stiffA, stiffOhm } = usual
  const poles = { id: 'charging', plus: points.batteryPlus, minus: minusOf(request) }
  const setV = systemVoltageV * RUNNING_OVER_NOMINAL
  if (charging === undefined)
    return { ...poles, setV, idleA: stiffA.value, drivingA: stiffA.value, slopeOhm: stiffOhm.value }
  const limits = { idleA: charging.idleAvailableA, drivingA: charging.cruiseAvailableA }
  return { ...poles, setV, ...limits, ...chargingEnds(request) }
}

function vehicleOf(request: PlanRequest, charging: SupplyCurrent['charging']) {
  return {
    id: 'vehicle',
    plus: points.batteryPlus,
    minus: minusOf(request),
    currentA: charging?.baseLoadA ?? 0,
    parkedA: request.supply.battery?.parkedLoadA ?? supplyJudgement.parkedLoadA.value
  }
}

/** Each under its place, with the name that the person knows it by; that of the bass as its gain is set. */
function amplifierOf(
  amplifier: AmplifierOnSupply,
  index: number,
  names: readonly string[],
  { powerW, supplyPowerW }: JoinedDrivers
) {
  const name = names[index]
  const gainPowerW = index === 0 && powerW < supplyPowerW ? powerW : undefined
  return {
    ...amplifier,
    ...present({ name, gainPowerW }),
    id: points.amplifier(index),
    ...points.amplifierPoles(index)
  }
}

function graphRequest(
  request: PlanRequest,
  { amplifiers }: CurrentRequest,
  { charging }: SupplyCurrent,
  pieces: Pieces,
  runs: PowerRuns,
  joined: JoinedDrivers
): CircuitRequest {
  const { supply } = request
  const { cables, fuses, links } = pieces
  const second = secondSources(request, runs)
  const converters = [...second.converters, ...converterSources(request, runs)]
  return {
    systemVoltageV: supply.systemVoltageV,
    batteries: [{ ...starterPoles, ...starterSource(supply) }, ...second.batteries],
    alternators: [chargingOf(request, charging)],
    ...(converters.length === 0 ? {} : { converters }),
    cables,
    ...(fuses.length === 0 ? {} : { fuses }),
    ...(links.length === 0 ? {} : { links }),
    amplifiers: amplifiers.map((amplifier, index) => amplifierOf(amplifier, index, runs.amplifiers, joined)),
    accessories: [vehicleOf(request, charging)],
    ...present({ starter: starterOf(request) })
  }
}

/** What stands in the request of the part as a figure and was said by nobody. */
function graphAssumed(request: PlanRequest, { charging }: SupplyCurrent): readonly Assumption[] {
  const { supply } = request
  const { systemVoltageV, battery } = supply
  const { stiffA } = usual
  return [
    {
      field: 'supply.source',
      value: systemVoltageV * RUNNING_OVER_NOMINAL,
      why: 'volts at the battery while the engine runs: 13.8 for each 12'
    },
    ...(charging === undefined ? [{ field: 'supply.charging', ...stiffA }] : []),
    ...(battery === undefined ? [{ field: 'supply.battery.parkedLoadA', ...supplyJudgement.parkedLoadA }] : []),
    ...starterAssumed(request),
    ...endsAssumed(request)
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
  runs: PowerRuns,
  joined: JoinedDrivers | undefined
): { readonly circuit: CircuitPart; readonly assumed: readonly Assumption[] } {
  const { trunk, missing } = runs
  if (!current.done || trunk === undefined || joined === undefined)
    return { circuit: waitingFor('a cable that passes'), assumed: [] }
  if (missing !== undefined) return { circuit: waitingFor(`a branch cable to ${missing} that passes`), assumed: [] }
  if (request.supply.converter !== undefined && runs.converter === undefined) {
    return { circuit: waitingFor('a cable that passes for the output of the converter'), assumed: [] }
  }
  const drawn = current.outcome.result
  const hub = hubOf(runs)
  const power = powerPieces(request, trunk, runs.branches, trunkEndsAt(runs), hub)
  const pieces = together([power, secondPieces(request, runs), converterPieces(request, runs)])
  const circuit = runPart(graphRequest(request, current.request, drawn, pieces, runs, joined), computeCircuit)
  return { circuit, assumed: [...pieces.assumed, ...graphAssumed(request, drawn)] }
}
