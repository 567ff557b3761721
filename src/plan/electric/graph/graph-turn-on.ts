/** The thin wires in the circuit of a plan: what switches the amplifiers on, and what closes a relay or wakes a charger while the engine runs. */

import type { TurnOn } from '../../../contract/signals/signal-result.ts'
import type { CircuitFuse, CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import { present } from '../../../domain/present.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import { wiringDefaults } from '../defaults.ts'
import type { PowerRuns } from '../plan-supply.ts'
import { jumperM, jumperSize, turnOnOf, turnOnRelayOf } from '../turn-on-way.ts'
import { graphDefaults } from './defaults.ts'
import { cable, type Pieces, points, together } from './graph-pieces.ts'

type Accessories = NonNullable<CircuitRequest['accessories']>

export interface ThinWires {
  readonly pieces: Pieces
  readonly accessories: Accessories
}

/** Thin wires lie in the cabin, and are copper whatever the power cable is. */
const thin = (designation: string) => ({ designation, conductor: 'copper', spaces: ['cabin'] }) as const
const bladeFuse = (id: string, from: string, to: string, ratingA: number): CircuitFuse => ({
  id,
  from,
  to,
  ratingA,
  type: 'C'
})

const terminalOf = (index: number) => (index === 0 ? 'turn-on terminal' : `turn-on terminal ${index + 1}`)
const terminal = terminalOf(0)
const coilPlus = 'coil of the turn-on relay'

/** From the source's output, or from an accessory circuit behind a fuse of its own, as far as what it switches. */
function switchedWire({ supply }: SupplyBrief, { method, limitA }: TurnOn, to: string, tapFuseA: number | undefined) {
  const [from, begin] = [points.batteryPlus, 'switched output']
  const feed = { id: begin, from, to: begin, assumed: true }
  const laid = thin(wiringDefaults.turnOnSize.value)
  if (method !== 'accessory-relay' || tapFuseA === undefined) {
    const output = {
      ...feed,
      resistanceOhm: graphDefaults.outputOhm.value,
      ...present({ limitA })
    }
    return { links: [output], cables: [cable('turn-on wire', [begin, to], supply.positiveLengthM, laid)] }
  }
  const behind = 'turn-on wire behind its fuse'
  return {
    links: [{ ...feed, id: 'accessory circuit', resistanceOhm: graphDefaults.contactOhm.value }],
    fuses: [bladeFuse('fuse of the turn-on wire', begin, behind, tapFuseA)],
    cables: [cable('turn-on wire', [behind, to], supply.positiveLengthM, laid)]
  }
}

/** Its contact hands on what feeds the amplifiers beside it. */
function relayContact(designation: string, fuseA: number, feed: string): Partial<Pieces> {
  const [behind, contact, switched] = ['turn-on feed behind its fuse', 'turn-on relay 30', 'turn-on relay 87']
  const laid = thin(designation)
  return {
    fuses: [bladeFuse('turn-on fuse', feed, behind, fuseA)],
    cables: [
      cable('turn-on feed', [behind, contact], wiringDefaults.relayWireM.value, laid),
      cable('turn-on lead', [switched, terminal], wiringDefaults.relayWireM.value, laid)
    ],
    links: [
      { id: 'turn-on relay', from: contact, to: switched, resistanceOhm: graphDefaults.contactOhm.value, assumed: true }
    ]
  }
}

/** What the input of each amplifier draws; what more is told hangs on the first. */
function inputLoads({ supply, turnOn }: SupplyBrief, { loadA }: TurnOn): Accessories {
  const others = (turnOn?.loadsA ?? []).slice(1, 1 + (supply.otherAmplifiers?.length ?? 0))
  const firstA = others.reduce((left, each) => left - each, loadA)
  return [firstA, ...others].map((currentA, index) => ({
    id: index === 0 ? 'turn-on' : `turn-on ${index + 1}`,
    plus: terminalOf(index),
    minus: points.amplifierPoles(index).minus,
    currentA,
    parkedA: currentA
  }))
}

/** From the terminal of each amplifier on to the next. */
function jumpers(brief: SupplyBrief, designation: string): Partial<Pieces> {
  const lengthM = jumperM(brief) ?? 0
  const next = (brief.supply.otherAmplifiers ?? []).map((_, index) => index + 1)
  return {
    cables: next.map(index =>
      cable(`turn-on jumper ${index}`, [terminalOf(index - 1), terminalOf(index)], lengthM, thin(designation))
    )
  }
}

/** The relay is fed at the terminal of the bass amplifier, behind its fuse. */
function turnOnWires(brief: SupplyBrief): readonly ThinWires[] {
  const way = turnOnOf(brief)
  if (way === undefined || way.method === 'signal-sensing') return []
  const { plus, minus } = points.amplifierPoles(0)
  const inputs = inputLoads(brief, way)
  const relay = turnOnRelayOf(brief)
  if (relay === undefined) {
    const wires = [switchedWire(brief, way, terminal, undefined), jumpers(brief, jumperSize({}))]
    return [{ pieces: together(wires), accessories: inputs }]
  }
  const { designation, fuseA, tapFuseA, coilCurrentA } = relay
  const coil = { id: 'turn-on coil', plus: coilPlus, minus, currentA: coilCurrentA, parkedA: coilCurrentA }
  const pieces = together([
    switchedWire(brief, way, coilPlus, tapFuseA),
    relayContact(designation, fuseA, plus),
    jumpers(brief, designation)
  ])
  return [{ pieces, accessories: [...inputs, coil] }]
}

/** From a feed that is live while the engine runs. */
function linkWires({ supply }: SupplyBrief, { link }: PowerRuns, minus: string): readonly ThinWires[] {
  if (link === undefined || link.kind === 'joined') return []
  const [live, behind, coil] = ['feed with the engine', 'link wire behind its fuse', 'coil of the link']
  const feed = {
    id: live,
    from: points.batteryPlus,
    to: live,
    resistanceOhm: graphDefaults.contactOhm.value
  }
  const pieces = together([
    {
      links: [{ ...feed, assumed: true, opensWithoutEngine: true }],
      fuses: [bladeFuse('fuse of the link wire', live, behind, wiringDefaults.linkFuseA.value)],
      cables: [cable('link wire', [behind, coil], supply.positiveLengthM, thin(wiringDefaults.turnOnSize.value))]
    }
  ])
  return [
    { pieces, accessories: [{ id: 'link coil', plus: coil, minus, currentA: graphDefaults.linkA.value[link.kind] }] }
  ]
}

/** @param minus  where the vehicle's own returns meet */
export function thinWires(brief: SupplyBrief, runs: PowerRuns, minus: string): ThinWires {
  const all = [...turnOnWires(brief), ...linkWires(brief, runs, minus)]
  return {
    pieces: together(all.map(({ pieces }) => pieces)),
    accessories: all.flatMap(({ accessories }) => accessories)
  }
}
