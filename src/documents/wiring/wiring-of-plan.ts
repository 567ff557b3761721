/** The wiring of a computed plan in the words and figures its diagrams carry. */
import type { PlanCircuit, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { ohmNumber } from '../../domain/coils/coil-loads.ts'
import { chosenNetwork } from '../../domain/coils/wire-coils.ts'
import { present } from '../../domain/present.ts'
import { spoken, told } from '../../domain/say.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure, lengthText, opened, type Reader, runText } from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import { conductorsOf, leading, lineOf, unplanned } from './conductors.ts'
import type { SystemWiring, WiringBattery, WiringLine } from './system-wiring-record.ts'
import { blockOf } from './wiring-block.ts'
import type { DrawnWiring } from './wiring-diagram.ts'
import { type Conductors, converterLink, fuseText, linkLines } from './wiring-links.ts'

type TurnOnLines = Pick<SystemWiring, 'turnOn' | 'turnOnFuse' | 'turnOnRelay'>

function turnOnLines({ signalLead, turnOnRelay: relay }: PlanCircuit, all: Conductors, paper: Reader): TurnOnLines {
  const { language } = paper
  if (signalLead.turnOnLengthM === 0) return {}
  const id = relay?.tapFuseA === undefined ? 'wire.turn-on' : 'wire.accessory-relay'
  const turnOn = leading(lineOf(all, 'turn-on'), line => told(language, id, { line }))
  if (turnOn === undefined) return {}
  const line = lineOf(all, 'turn-on-relay')
  if (relay === undefined || line === undefined) return { turnOn }
  const { tapFuseA, fuseA, coilVoltageV } = relay
  const coil = told(language, 'wire.coil-volts', { voltage: figure(coilVoltageV, 0, paper) })
  return {
    turnOn,
    ...present({ turnOnFuse: tapFuseA === undefined ? undefined : `${tapFuseA} A` }),
    turnOnRelay: { lines: [coil, told(language, 'wire.with-diode')], feed: { fuse: `${fuseA} A`, line } }
  }
}

/** Most sentences on how the coils are joined. */
const MOST_JOINTS = 12

type SupplyLines = Pick<
  SystemWiring,
  | 'battery'
  | 'secondBattery'
  | 'link'
  | 'fusedAtEnd'
  | 'capacitor'
  | 'fuse'
  | 'fusePlace'
  | 'positive'
  | 'negative'
  | 'returnBy'
>

/** Where the caller has planned the fuse, else the limit it must keep. */
function fusePlaceText({ fuse }: PowerRun, { fuseDistanceM, sheathed }: PlanRequest['supply'], paper: Reader) {
  const { language } = paper
  if (fuseDistanceM !== undefined) {
    const distance = lengthText(fuseDistanceM, paper)
    return told(language, sheathed === true ? 'wire.from-source-sheathed' : 'wire.from-source', { distance })
  }
  if (fuse === undefined) return undefined
  return told(language, 'wire.within-source', { distance: lengthText(fuse.placement.idealM, paper) })
}

/** Behind a block the ground leads belong to the branches. */
function wayBack({ returnBy }: PowerRun, all: Conductors, sensor: boolean, { language }: Reader): WiringLine {
  const home = sensor ? 'wire.back-sensor' : 'wire.back-battery'
  const id = returnBy === 'cable' ? home : 'wire.to-body'
  const back = leading(lineOf(all, 'main minus'), line => told(language, id, { line }))
  return back ?? unplanned(told(language, 'wire.body-strap'))
}

function secondLines(
  { name, lead }: NonNullable<PlanCircuit['secondBattery']>,
  all: Conductors,
  { language }: Reader
): WiringBattery {
  if (lead === undefined) return { name }
  const id = lead.returnBy === 'body' ? 'wire.to-ground-point' : 'wire.to-returns'
  return {
    name,
    ...present({
      fuse: fuseText(lead),
      positive: lineOf(all, 'second battery'),
      negative: leading(lineOf(all, 'second battery minus'), line => told(language, id, { line }))
    })
  }
}

function accessoryLines(
  circuit: PlanCircuit,
  { secondBattery: asked }: PlanRequest['supply'],
  all: Conductors,
  paper: Reader
): Pick<SystemWiring, 'secondBattery' | 'link' | 'capacitor'> {
  const { secondBattery, capacitor } = circuit
  const link = secondBattery === undefined ? converterLink(circuit, all, paper) : linkLines(secondBattery, all, paper)
  const bare = asked === undefined ? undefined : { name: `${figure(asked.capacityAh, 0, paper)} A·h` }
  const leads = lineOf(all, 'capacitor')
  return {
    ...present({
      secondBattery: secondBattery === undefined ? bare : secondLines(secondBattery, all, paper),
      link,
      capacitor:
        capacitor === undefined || leads === undefined
          ? undefined
          : { text: `${figure(capacitor.capacitanceF, 1, paper)} F`, leads }
    })
  }
}

function supplyLines({ circuit }: SystemPlan, supply: PlanRequest['supply'], paper: Reader): SupplyLines {
  const { trunk } = circuit
  const { language } = paper
  const all = conductorsOf({ circuit }, paper)
  const sensor = circuit.batterySensor === true ? [told(language, 'wire.sensor')] : []
  const devices = {
    battery: [`${figure(supply.systemVoltageV, 1, paper)} V`, ...sensor],
    ...accessoryLines(circuit, supply, all, paper)
  }
  const positive = lineOf(all, 'main')
  if (trunk === undefined || positive === undefined) {
    const returnBy = supply.return.kind === 'cable' ? 'cable' : 'body'
    const text = told(language, 'wire.no-cable-long', { length: runText(supply.positiveLengthM, paper) })
    return { ...devices, positive: unplanned(text), negative: unplanned(told(language, 'wire.no-cable')), returnBy }
  }
  return {
    ...devices,
    ...present({ fuse: fuseText(trunk), fusePlace: fusePlaceText(trunk, supply, paper) }),
    positive,
    ...(trunk.endFuse === undefined ? {} : { fusedAtEnd: true }),
    negative: wayBack(trunk, all, circuit.batterySensor === true, paper),
    returnBy: trunk.returnBy
  }
}

type SourceLines = Pick<SystemWiring, 'source' | 'signal' | 'signalEnd'> & TurnOnLines

function sourceLines({ parts, circuit }: SystemPlan, all: Conductors, paper: Reader): SourceLines {
  const { signalLead } = circuit
  const { language } = paper
  const signal = resultOf(parts.signal)
  const output = signalLead.kind === 'screened' ? 'wire.line-output' : 'wire.loudspeaker-output'
  return {
    source: told(language, signal?.input === undefined ? 'wire.source-plain' : output),
    signal: lineOf(all, 'signal') ?? unplanned(signalLead.name),
    ...present({
      signalEnd: signalLead.converter ? told(language, 'wire.line-converter') : undefined
    }),
    ...turnOnLines(circuit, all, paper)
  }
}

function drivenLines(
  { circuit }: SystemPlan,
  all: Conductors,
  { language }: Reader
): Pick<SystemWiring, 'speakerWire' | 'insideWire'> {
  const outputs = circuit.speakerWire?.count ?? 1
  const one = (line: string) => (outputs === 1 ? line : told(language, 'wire.each-output', { line }))
  const insideWire = leading(lineOf(all, 'inside'), line => told(language, 'wire.inside', { line }))
  return {
    speakerWire: leading(lineOf(all, 'loudspeaker'), one) ?? unplanned(told(language, 'wire.no-speaker-wire')),
    ...present({ insideWire })
  }
}

/** @returns none for a plan without an amplifier that fits */
export function wiringOf(plan: SystemPlan, request: PlanRequest, paper: Reader): SystemWiring | undefined {
  const { parts, circuit } = plan
  const { driver, driverCount } = request
  const best = resultOf(parts.matching)?.best
  if (best === undefined) return undefined
  const signal = resultOf(parts.signal)
  const wiring = resultOf(parts.wiring)
  const all = conductorsOf(plan, paper)
  const block = blockOf(circuit, all, paper)
  const { language } = paper
  const load = `${figure(best.loadOhm, 2, paper)} Ω`
  const gain = signal && figure(signal.gain.meterVoltageV, 1, paper)
  return {
    language,
    ...supplyLines(plan, request.supply, paper),
    ...present({ block }),
    amplifier: [
      best.amplifier,
      best.bridged ? told(language, 'wire.bridged', { load }) : load,
      ...(gain === undefined ? [] : [told(language, 'wire.gain', { voltage: gain })])
    ],
    ...drivenLines(plan, all, paper),
    load,
    outputs: best.outputs,
    driverCount,
    joints: [
      ...(driver.name === undefined ? [] : [told(language, 'wire.drivers-named', { name: driver.name })]),
      `${opened(best.join)}.`,
      ...(wiring?.chosen?.steps ?? [])
    ].slice(0, MOST_JOINTS),
    ...sourceLines(plan, all, paper),
    notDrawn: circuit.notPlanned.map(({ text }) => text)
  }
}

export function coilsOf({ parts: { wiring } }: SystemPlan, { language }: Reader): DrawnWiring | undefined {
  const request = wiring.done ? wiring.request : undefined
  const load = request === undefined ? undefined : chosenNetwork(request)
  if (request === undefined || load === undefined) return undefined
  const { driverCount, coilsPerDriver } = request
  return {
    language,
    network: load.network,
    driverCount,
    coilsPerDriver,
    loadOhm: ohmNumber(load),
    join: spoken(load.join, language)
  }
}
