/** The whole system as one circuit between named points: what was sized is laid into it once, every current and voltage is read from it. */

import type { Circuit, CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { AmplifierOnSupply, CurrentRequest, SupplyCurrent } from '../../../contract/supply/supply-current.ts'
import { loadDefaults } from '../../../domain/circuit/load/defaults.ts'
import { computeCircuit } from '../../../domain/circuit/points/compute-circuit.ts'
import type { Assumption } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import { planDefaults } from '../../request/defaults.ts'
import { type Part, waitingFor } from '../../request/part.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import { capacitorOf } from '../accessories.ts'
import { withPartNames } from '../part-words.ts'
import { hasBlock } from '../plan-run.ts'
import type { CurrentPart, PowerRuns } from '../plan-supply.ts'
import { converterPieces, converterSources } from './graph-converter.ts'
import { capacitorPieces, capacitorsOf, type Hub, minusOf, points, powerPieces, together } from './graph-pieces.ts'
import { secondPieces, secondSources, trunkEndsAt } from './graph-second.ts'
import { type ThinWires, thinWires } from './graph-turn-on.ts'
import { chargingEnds, endsAssumed, starterAssumed, starterOf } from './vehicle-habits.ts'

export type CircuitPart = Part<CircuitRequest, Circuit>

const starterPoles = { id: 'battery', plus: points.batteryPlus, minus: points.batteryMinus }

const runningV = (systemVoltageV: number) => planDefaults.runningOverNominal.value * systemVoltageV

/** The plan's own charging system; where none is described it is stiff and gives whatever is asked. */
function chargingOf(brief: SupplyBrief, charging: SupplyCurrent['charging'], minus: string) {
  const { systemVoltageV } = brief.supply
  const { stiffA, stiffOhm } = planDefaults
  const poles = { id: 'charging', plus: points.batteryPlus, minus }
  const setV = runningV(systemVoltageV)
  if (charging === undefined)
    return { ...poles, setV, idleA: stiffA.value, drivingA: stiffA.value, slopeOhm: stiffOhm.value }
  const limits = { idleA: charging.idleAvailableA, drivingA: charging.cruiseAvailableA }
  return { ...poles, setV, ...limits, ...chargingEnds(brief) }
}

function vehicleOf({ supply }: SupplyBrief, charging: SupplyCurrent['charging'], minus: string) {
  return {
    id: 'vehicle',
    plus: points.batteryPlus,
    minus,
    currentA: charging?.baseLoadA ?? 0,
    parkedA: supply.battery?.parkedLoadA ?? loadDefaults.parkedLoadA.value
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
  brief: SupplyBrief,
  { amplifiers }: CurrentRequest,
  { charging }: SupplyCurrent,
  { pieces, accessories }: ThinWires,
  runs: PowerRuns,
  joined: JoinedDrivers,
  minus: string
): CircuitRequest {
  const { supply, starter } = brief
  const { cables, fuses, links } = pieces
  const second = secondSources(brief, runs)
  const converters = [...second.converters, ...converterSources(brief, runs)]
  return {
    systemVoltageV: supply.systemVoltageV,
    batteries: [{ ...starterPoles, ...starter }, ...second.batteries],
    alternators: [chargingOf(brief, charging, minus)],
    ...(converters.length === 0 ? {} : { converters }),
    cables,
    ...present({ fuses: fuses.length === 0 ? undefined : fuses, links: links.length === 0 ? undefined : links }),
    amplifiers: amplifiers.map((amplifier, index) => amplifierOf(amplifier, index, runs.amplifiers, joined)),
    accessories: [vehicleOf(brief, charging, minus), ...accessories],
    ...capacitorsOf(brief),
    ...present({ starter: starterOf(brief, minus) })
  }
}

/** What stands in the request of the part as a figure and was said by nobody. */
function graphAssumed(brief: SupplyBrief, { charging }: SupplyCurrent): readonly Assumption[] {
  const { systemVoltageV, battery } = brief.supply
  const { stiffA } = planDefaults
  const { parkedLoadA: parked } = loadDefaults
  return [
    {
      field: 'supply.source',
      value: runningV(systemVoltageV),
      why: planDefaults.runningOverNominal.why
    },
    ...(charging === undefined ? [{ field: 'supply.charging', value: stiffA.value, why: stiffA.why }] : []),
    ...(battery === undefined ? [{ field: 'supply.battery.parkedLoadA', value: parked.value, why: parked.why }] : []),
    ...starterAssumed(brief),
    ...endsAssumed(brief)
  ]
}

/** One amplifier behind a converter has no block: its branch begins and ends there. */
const hubOf = ({ converter, branches }: PowerRuns, minus: string): Hub =>
  converter === undefined || hasBlock({ branches, converter })
    ? { plus: points.block, returns: points.returns, minus }
    : { plus: points.converterOut, returns: points.converterMinus, minus }

/** Its parts are those of the plan, whose names every language has. */
function namedCircuit(request: CircuitRequest): ReturnType<typeof computeCircuit> {
  const { cautions, ...rest } = computeCircuit(request)
  return { ...rest, cautions: cautions.map(withPartNames) }
}

/** @returns the part, and what it takes for granted */
export function planGraph(
  brief: SupplyBrief,
  current: CurrentPart,
  runs: PowerRuns,
  joined: JoinedDrivers | undefined
): { readonly circuit: CircuitPart; readonly assumed: readonly Assumption[] } {
  const { trunk, missing } = runs
  if (!current.done || trunk === undefined || joined === undefined)
    return { circuit: waitingFor('a cable that passes'), assumed: [] }
  if (missing !== undefined) return { circuit: waitingFor(`a branch cable to ${missing} that passes`), assumed: [] }
  if (brief.supply.converter !== undefined && runs.converter === undefined) {
    return { circuit: waitingFor('a cable that passes for the output of the converter'), assumed: [] }
  }
  const drawn = current.outcome.result
  const hub = hubOf(runs, minusOf(brief))
  const power = powerPieces(brief, trunk, runs.branches, trunkEndsAt(runs), hub)
  const thin = thinWires(brief, runs, hub.minus)
  const pieces = together([
    power,
    thin.pieces,
    secondPieces(brief, runs),
    converterPieces(brief, runs),
    capacitorPieces(brief, capacitorOf(brief, runs))
  ])
  const laid = { ...thin, pieces }
  const circuit = brief.run(graphRequest(brief, current.request, drawn, laid, runs, joined, hub.minus), namedCircuit)
  return { circuit, assumed: [...pieces.assumed, ...graphAssumed(brief, drawn)] }
}
