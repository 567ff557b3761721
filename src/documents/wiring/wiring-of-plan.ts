/** The wiring of a computed plan in the words and figures its diagrams carry. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { ohmNumber } from '../../domain/coils/coil-loads.ts'
import { chosenNetwork } from '../../domain/coils/wire-coils.ts'
import { present } from '../../domain/present.ts'
import { type BranchRun, blockInputs, hasBlock, type PowerRun } from '../../plan/electric/plan-run.ts'
import { TURN_ON_SIZE } from '../../plan/electric/wiring-practice.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure, lengthText, type PaperUnits, runText } from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import { branchKey, conductorsOf, lineOf } from './conductors.ts'
import type { SystemWiring, WiringBattery, WiringBlock, WiringBranch, WiringLine } from './system-wiring-record.ts'
import type { DrawnWiring } from './wiring-diagram.ts'
import { type Conductors, converterLink, converterWords, fuseText, linkLines } from './wiring-links.ts'

const turnOnTexts: Readonly<Record<string, string>> = {
  'remote-line': `turn-on wire ${TURN_ON_SIZE}`,
  relay: `turn-on wire ${TURN_ON_SIZE} through a relay`,
  'accessory-relay': 'relay on the accessory line'
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

const unplanned = (text: string): WiringLine => ({ text })

/** Where the caller has planned the fuse, else the limit it must keep. */
function fusePlaceText({ fuse }: PowerRun, { fuseDistanceM, sheathed }: PlanRequest['supply'], paper: PaperUnits) {
  if (fuseDistanceM !== undefined) {
    return `${lengthText(fuseDistanceM, paper)} from the source${sheathed === true ? ', in a sheath' : ''}`
  }
  return fuse === undefined ? undefined : `within ${lengthText(fuse.placement.idealM, paper)} of the source`
}

/** Behind a block the ground leads belong to the branches. */
function wayBack({ returnBy }: PowerRun, all: Conductors, sensor: boolean): WiringLine {
  const home = sensor ? ' back to the body side of the sensor' : ' back to the battery'
  const behind = returnBy === 'cable' ? home : ' to the body'
  return lineOf(all, 'trunk minus', '', behind) ?? unplanned('to the body: the vehicle’s strap')
}

function secondLines({ name, lead }: NonNullable<PlanCircuit['secondBattery']>, all: Conductors): WiringBattery {
  if (lead === undefined) return { name }
  const behind = lead.returnBy === 'body' ? ' to the ground point' : ' to the returns'
  return {
    name,
    ...present({
      fuse: fuseText(lead),
      positive: lineOf(all, 'second battery'),
      negative: lineOf(all, 'second battery minus', '', behind)
    })
  }
}

function accessoryLines(
  circuit: PlanCircuit,
  { secondBattery: asked }: PlanRequest['supply'],
  all: Conductors
): Pick<SystemWiring, 'secondBattery' | 'link' | 'capacitor'> {
  const { secondBattery, capacitor } = circuit
  const link = secondBattery === undefined ? converterLink(circuit, all) : linkLines(secondBattery, all)
  const bare = asked === undefined ? undefined : { name: `${figure(asked.capacityAh, 0)} A·h` }
  const leads = lineOf(all, 'capacitor')
  return {
    ...present({
      secondBattery: secondBattery === undefined ? bare : secondLines(secondBattery, all),
      link,
      capacitor:
        capacitor === undefined || leads === undefined
          ? undefined
          : { text: `${figure(capacitor.capacitanceF, 1)} F`, leads }
    })
  }
}

function supplyLines({ circuit }: SystemPlan, supply: PlanRequest['supply'], paper: PaperUnits): SupplyLines {
  const { trunk } = circuit
  const all = conductorsOf({ circuit }, paper)
  const devices = {
    battery: [`${figure(supply.systemVoltageV, 1)} V`, ...(circuit.batterySensor === true ? ['sensor on −'] : [])],
    ...accessoryLines(circuit, supply, all)
  }
  const positive = lineOf(all, 'trunk')
  if (trunk === undefined || positive === undefined) {
    const returnBy = supply.return.kind === 'cable' ? 'cable' : 'body'
    const text = `no cable found, ${runText(supply.positiveLengthM, paper)}`
    return { ...devices, positive: unplanned(text), negative: unplanned('no cable found'), returnBy }
  }
  return {
    ...devices,
    ...present({ fuse: fuseText(trunk), fusePlace: fusePlaceText(trunk, supply, paper) }),
    positive,
    ...(trunk.endFuse === undefined ? {} : { fusedAtEnd: true }),
    negative: wayBack(trunk, all, circuit.batterySensor === true),
    returnBy: trunk.returnBy
  }
}

function branchLines(run: BranchRun | undefined, all: Conductors, returns: string): WiringBranch {
  const none = unplanned('no branch cable found')
  if (run === undefined) return { positive: none, negative: none }
  const behind = run.returnBy === 'body' ? ' to the body' : ` to the ${returns}`
  return {
    ...present({ fuse: fuseText(run) }),
    positive: lineOf(all, branchKey(run.amplifier)) ?? none,
    negative: lineOf(all, `${branchKey(run.amplifier)} minus`, '', behind) ?? none
  }
}

function blockOf(circuit: PlanCircuit, all: Conductors): WiringBlock | undefined {
  const { amplifiers, branches } = circuit
  if (amplifiers.length < 2 && branches.length === 0) return undefined
  const between = hasBlock(circuit) ? undefined : circuit.converter
  const linesOf = (name: string | undefined) =>
    branchLines(
      branches.find(({ amplifier }) => amplifier === name),
      all,
      between === undefined ? 'returns' : 'minus of the converter'
    )
  return {
    title: between === undefined ? 'Block' : 'Converter',
    lines:
      between === undefined ? [`${blockInputs(circuit)} in, ${amplifiers.length} out`] : converterWords(between, all),
    bass: linesOf(amplifiers[0]),
    others: amplifiers.slice(1).map(amplifier => ({ amplifier, ...linesOf(amplifier) }))
  }
}

type SourceLines = Pick<SystemWiring, 'source' | 'signal' | 'signalEnd' | 'turnOn'>

function sourceLines({ parts, circuit }: SystemPlan, all: Conductors): SourceLines {
  const { signalLead, turnOnRelay } = circuit
  const signal = resultOf(parts.signal)
  const turnOn = signal?.turnOn === undefined ? undefined : turnOnTexts[signal.turnOn.method]
  const feed = turnOnRelay === undefined ? '' : `, its feed behind ${turnOnRelay.fuseA} A`
  const number = lineOf(all, 'turn-on')?.number
  const source =
    signal?.input === undefined ? 'source' : signalLead.kind === 'screened' ? 'line output' : 'loudspeaker output'
  return {
    source,
    signal: lineOf(all, 'signal') ?? unplanned(signalLead.name),
    ...present({
      signalEnd: signalLead.converter ? 'line-output converter, screened cable to the amplifier' : undefined,
      turnOn: turnOn === undefined ? undefined : { ...present({ number }), text: `${turnOn}${feed}` }
    })
  }
}

function drivenLines({ circuit }: SystemPlan, all: Conductors): Pick<SystemWiring, 'speakerWire' | 'insideWire'> {
  const outputs = circuit.speakerWire?.count ?? 1
  const each = outputs === 1 ? '' : ', one for each output'
  return {
    speakerWire: lineOf(all, 'loudspeaker', '', each) ?? unplanned('no loudspeaker wire sized'),
    ...present({ insideWire: lineOf(all, 'inside', '', ' inside') })
  }
}

/** @returns none for a plan without an amplifier that fits */
export function wiringOf(plan: SystemPlan, request: PlanRequest, paper: PaperUnits): SystemWiring | undefined {
  const { parts, circuit } = plan
  const { driver, driverCount } = request
  const best = resultOf(parts.matching)?.best
  if (best === undefined) return undefined
  const signal = resultOf(parts.signal)
  const wiring = resultOf(parts.wiring)
  const all = conductorsOf(plan, paper)
  const block = blockOf(circuit, all)
  return {
    ...supplyLines(plan, request.supply, paper),
    ...present({ block }),
    amplifier: [
      best.amplifier,
      `${figure(best.loadOhm, 2)} Ω${best.bridged ? ', bridged' : ''}`,
      ...(signal === undefined ? [] : [`gain to ${figure(signal.gain.meterVoltageV, 1)} V RMS`])
    ],
    ...drivenLines(plan, all),
    load: `${figure(best.loadOhm, 2)} Ω`,
    driverCount,
    joints: [
      ...(driver.name === undefined ? [] : [`Drivers: ${driver.name}.`]),
      `${best.join.slice(0, 1).toUpperCase()}${best.join.slice(1)}.`,
      ...(wiring?.chosen?.steps ?? [])
    ].slice(0, MOST_JOINTS),
    ...sourceLines(plan, all),
    notDrawn: circuit.notPlanned.map(({ text }) => text)
  }
}

export function coilsOf({ parts: { wiring } }: SystemPlan): DrawnWiring | undefined {
  const request = wiring.done ? wiring.request : undefined
  const load = request === undefined ? undefined : chosenNetwork(request)
  if (request === undefined || load === undefined) return undefined
  const { driverCount, coilsPerDriver } = request
  return { network: load.network, driverCount, coilsPerDriver, loadOhm: ohmNumber(load), join: load.join }
}
