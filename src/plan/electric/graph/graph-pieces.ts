/** Cables, fuses and the body between the points of a plan's circuit. */

import type { CircuitCable, CircuitFuse, CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { PlanCircuit, PowerRun } from '../../../contract/systems/plan-circuit.ts'
import { supplyDefaults } from '../../../domain/circuit/source/defaults.ts'
import type { Assumption } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import type { BranchRun } from '../plan-run.ts'
import { graphDefaults } from './defaults.ts'

const amplifier = (index: number) => `amplifier ${index + 1}`

/** One name for each point, in the words of bill and picture. */
export const points = {
  batteryPlus: 'battery plus',
  batteryMinus: 'battery minus',
  sensor: 'body side of the battery sensor',
  block: 'block',
  returns: 'block of the returns',
  ground: 'ground point',
  relay: 'isolating relay',
  chargerIn: 'charger input',
  chargerOut: 'charger output',
  chargerMinus: 'charger minus',
  converterIn: 'converter input',
  converterOut: 'converter output',
  converterMinus: 'converter minus',
  secondPlus: 'second battery plus',
  secondMinus: 'second battery minus',
  amplifier,
  amplifierPoles: (index: number) => ({ plus: `${amplifier(index)} plus`, minus: `${amplifier(index)} minus` })
} as const

type Link = NonNullable<CircuitRequest['links']>[number]

export interface Pieces {
  readonly cables: readonly CircuitCable[]
  readonly fuses: readonly CircuitFuse[]
  readonly links: readonly Link[]
  readonly assumed: readonly Assumption[]
}

const NOTHING: Pieces = { cables: [], fuses: [], links: [], assumed: [] }

export const together = (all: readonly Partial<Pieces>[]): Pieces =>
  all.reduce<Pieces>(
    (sum, { cables = [], fuses = [], links = [], assumed = [] }) => ({
      cables: [...sum.cables, ...cables],
      fuses: [...sum.fuses, ...fuses],
      links: [...sum.links, ...links],
      assumed: [...sum.assumed, ...assumed]
    }),
    NOTHING
  )

type Laid = Pick<CircuitCable, 'designation'> & Omit<Partial<CircuitCable>, 'id' | 'from' | 'to' | 'lengthM'>

export const cable = (
  id: string,
  [from, to]: readonly [string, string],
  lengthM: number,
  laid: Laid
): CircuitCable => ({
  id,
  from,
  to,
  lengthM: Math.max(graphDefaults.shortestM.value, lengthM),
  ...laid
})

export function fuseBetween(
  id: string,
  [from, to]: readonly [string, string],
  { ratingA, type, breakingA, voltageV }: NonNullable<PowerRun['fuse']>
): CircuitFuse {
  return { id, from, to, ratingA, type, breakingA, ratedVoltageV: voltageV }
}

/** From a source over its tail and fuse to the far end; without a rated fuse the cable is bare, and the circuit says so. */
function fusedWay(
  name: string,
  [from, to]: readonly [string, string],
  { positiveLengthM, fuse, endFuse }: PowerRun,
  laid: Laid,
  tail: { readonly lengthM: number; readonly sheathed?: boolean }
): Partial<Pieces> {
  if (fuse === undefined) return { cables: [cable(name, [from, to], positiveLengthM, laid)] }
  const { lengthM, sheathed } = tail
  const tailed = lengthM >= graphDefaults.shortestM.value
  const [start, behind] = [tailed ? `${name} before its fuse` : from, `${name} behind its fuse`]
  const end = endFuse === undefined ? to : `${name} before its end fuse`
  return {
    cables: [
      ...(tailed ? [cable(`${name} tail`, [from, start], lengthM, { ...laid, ...present({ sheathed }) })] : []),
      cable(name, [behind, end], positiveLengthM - (tailed ? lengthM : 0), laid)
    ],
    fuses: [
      fuseBetween(`${name} fuse`, [start, behind], fuse),
      ...(endFuse === undefined ? [] : [fuseBetween(`${name} end fuse`, [end, to], endFuse)])
    ]
  }
}

/** Cables side by side are cables of their own, each behind its fuse. */
function trunkPieces({ supply, onTheWay }: SupplyBrief, trunk: PowerRun, to: string): Pieces {
  const { fuseDistanceM = 0, sheathed } = supply
  const laid = { designation: trunk.designation, ...onTheWay }
  const tail = { lengthM: Math.min(fuseDistanceM, trunk.positiveLengthM / 2), ...present({ sheathed }) }
  return together(numbered('main', trunk.runs).map(name => fusedWay(name, [points.batteryPlus, to], trunk, laid, tail)))
}

const numbered = (name: string, count: number) =>
  Array.from({ length: count }, (_, index) => (count === 1 ? name : `${name} ${index + 1}`))

/** Of the run that feeds all: a return cable to the battery, or a lead to the body. */
function trunkReturn({ onTheWay }: SupplyBrief, trunk: PowerRun, from: string, minus: string): Partial<Pieces> {
  const { designation, runs, returnBy, returnLengthM } = trunk
  if (returnLengthM === 0) return {}
  const laid = { designation, ...onTheWay }
  const to = returnBy === 'body' ? points.ground : minus
  const name = returnBy === 'body' ? 'ground lead' : 'return cable'
  return { cables: numbered(name, runs).map(each => cable(each, [from, to], returnLengthM, laid)) }
}

/** Named after the amplifier, since the person knows it by that. */
const branchName = (index: number) => `branch ${index + 1}`

/** Where branches begin, where returns by cable come together, and where all that returns ends. */
export interface Hub {
  readonly plus: string
  readonly returns: string
  readonly minus: string
}

function branchPieces({ inTheBoot }: SupplyBrief, branch: BranchRun, index: number, hub: Hub): Partial<Pieces> {
  const { designation, returnBy, returnLengthM } = branch
  const { plus, minus } = points.amplifierPoles(index)
  const laid = { designation, ...inTheBoot }
  const name = branchName(index)
  const way = fusedWay(name, [hub.plus, plus], branch, laid, { lengthM: 0 })
  const to = returnBy === 'body' ? points.ground : hub.returns
  return together([way, { cables: [cable(`${name} return`, [minus, to], returnLengthM, laid)] }])
}

/** Where the vehicle, its charging and every return meet: past a battery sensor its reading would be wrong. */
export const minusOf = ({ supply }: SupplyBrief): string =>
  supply.batterySensor === true ? points.sensor : points.batteryMinus

function sensorPieces({ supply }: SupplyBrief): Partial<Pieces> {
  if (supply.batterySensor !== true) return {}
  return {
    links: [
      {
        id: 'battery sensor',
        from: points.sensor,
        to: points.batteryMinus,
        resistanceOhm: graphDefaults.sensorOhm.value
      }
    ]
  }
}

function bodyPieces({ supply }: SupplyBrief, minus: string): Partial<Pieces> {
  const { return: path } = supply
  if (path.kind !== 'chassis') return {}
  const { value, why } = supplyDefaults.chassisOhm
  const given = path.resistanceOhm !== undefined
  const body = { id: 'body', from: points.ground, to: minus, resistanceOhm: path.resistanceOhm ?? value }
  return {
    links: [{ ...body, ...(given ? {} : { assumed: true }) }],
    assumed: given ? [] : [{ field: 'supply.return.resistanceOhm', value, why }]
  }
}

const CAPACITOR = { id: 'capacitor', plus: 'capacitor plus', minus: 'capacitor minus' } as const

/** Its two leads, at the terminals of the bass amplifier. */
export function capacitorPieces(brief: SupplyBrief, capacitor: PlanCircuit['capacitor']): Partial<Pieces> {
  if (capacitor === undefined) return {}
  const { designation, lengthM } = capacitor
  const { plus, minus } = points.amplifierPoles(0)
  const laid = { designation, ...brief.inTheBoot }
  return {
    cables: [
      cable('capacitor lead', [plus, CAPACITOR.plus], lengthM, laid),
      cable('capacitor return', [CAPACITOR.minus, minus], lengthM, laid)
    ]
  }
}

/** What its sheet says, where it was given. */
export function capacitorsOf({ supply: { capacitor } }: SupplyBrief): Pick<CircuitRequest, 'capacitors'> {
  if (capacitor === undefined) return {}
  const { capacitanceF, esrOhm, prechargeOhm } = capacitor
  return { capacitors: [{ ...CAPACITOR, capacitanceF, ...present({ esrOhm, prechargeOhm }) }] }
}

/** @param end  where the trunk ends */
export function powerPieces(
  brief: SupplyBrief,
  trunk: PowerRun,
  branches: readonly BranchRun[],
  end: string,
  hub: Hub
): Pieces {
  const { minus } = points.amplifierPoles(0)
  const shared = branches.length > 0
  return together([
    trunkPieces(brief, trunk, end),
    trunkReturn(brief, trunk, shared ? hub.returns : minus, hub.minus),
    ...branches.map((branch, index) => branchPieces(brief, branch, index, hub)),
    bodyPieces(brief, hub.minus),
    sensorPieces(brief)
  ])
}
