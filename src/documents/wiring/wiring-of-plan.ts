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
import type { SystemWiring, WiringBattery, WiringBlock, WiringBranch, WiringLink } from './system-wiring-layout.ts'
import type { DrawnWiring } from './wiring-diagram.ts'

const turnOnTexts: Readonly<Record<string, string>> = {
  'remote-line': `turn-on wire ${TURN_ON_SIZE}`,
  relay: `turn-on wire ${TURN_ON_SIZE} through a relay`,
  'accessory-relay': 'relay on the accessory line'
}

/** Most sentences on how the coils are joined. */
const MOST_JOINTS = 12

type Converter = NonNullable<PlanCircuit['converter']>
type SupplyLines = Pick<
  SystemWiring,
  | 'battery'
  | 'secondBattery'
  | 'link'
  | 'fusedAtEnd'
  | 'capacitor'
  | 'runs'
  | 'fuse'
  | 'fusePlace'
  | 'positive'
  | 'negative'
  | 'returnBy'
>

const times = (count: number) => (count === 1 ? '' : `${count} × `)
const fuseText = ({ runs, fuse }: PowerRun) =>
  fuse === undefined ? undefined : `${times(runs)}${fuse.ratingA} A, ${fuse.form}`

/** Where the caller has planned the fuse, else the limit it must keep. */
function fusePlaceText({ fuse }: PowerRun, { fuseDistanceM, sheathed }: PlanRequest['supply'], paper: PaperUnits) {
  if (fuseDistanceM !== undefined) {
    return `${lengthText(fuseDistanceM, paper)} from the source${sheathed === true ? ', in a sheath' : ''}`
  }
  return fuse === undefined ? undefined : `within ${lengthText(fuse.placement.idealM, paper)} of the source`
}

function wayBack({ designation, runs, returnBy, returnLengthM }: PowerRun, shared: boolean, paper: PaperUnits): string {
  const size = `${times(runs)}${designation}, ${runText(returnLengthM, paper)}`
  if (returnBy === 'cable') return `${size} back to the battery`
  return shared ? 'to the body: the vehicle’s strap' : `${size} to the body`
}

function secondLines(second: NonNullable<PlanCircuit['secondBattery']>, paper: PaperUnits): WiringBattery {
  const { name, lead } = second
  if (lead === undefined) return { name }
  const { designation, positiveLengthM, returnLengthM, returnBy } = lead
  const fuse = fuseText(lead)
  return {
    name,
    ...present({ fuse }),
    positive: `${designation}, ${runText(positiveLengthM, paper)}`,
    negative: `${designation}, ${runText(returnLengthM, paper)} ${returnBy === 'body' ? 'to the ground point' : 'to the returns'}`
  }
}

const backWords = ({ returnBy }: PowerRun) => (returnBy === 'body' ? '− to body' : '− returns')

/** The cable that leaves a charger or converter, and its fuse. */
const leadWords = ({ fuse, designation, positiveLengthM }: PowerRun, paper: PaperUnits): Pick<WiringLink, 'fuse'> =>
  fuse === undefined ? {} : { fuse: [`${fuse.ratingA} A`, designation, runText(positiveLengthM, paper)] }

function linkLines(
  { link, relayA, charger }: NonNullable<PlanCircuit['secondBattery']>,
  paper: PaperUnits
): WiringLink | undefined {
  if (link === 'relay') return { title: 'Relay', lines: [`${relayA} A`] }
  if (charger === undefined) return undefined
  return {
    title: 'Charger',
    lines: [`${figure(charger.ratedA, 0)} A`, backWords(charger.lead)],
    ...leadWords(charger.lead, paper)
  }
}

/** Before the block; in its place it is drawn there. */
function converterLink(converter: Converter | undefined, paper: PaperUnits): WiringLink | undefined {
  if (converter?.lead === undefined) return undefined
  return { title: 'Converter', lines: converterWords(converter, paper), ...leadWords(converter.lead, paper) }
}

function accessoryLines(
  { secondBattery, capacitor, converter }: PlanCircuit,
  { secondBattery: asked }: PlanRequest['supply'],
  paper: PaperUnits
): Pick<SystemWiring, 'secondBattery' | 'link' | 'capacitor'> {
  const link = secondBattery === undefined ? converterLink(converter, paper) : linkLines(secondBattery, paper)
  const bare = asked === undefined ? undefined : { name: `${figure(asked.capacityAh, 0)} A·h` }
  return {
    ...present({ secondBattery: secondBattery === undefined ? bare : secondLines(secondBattery, paper), link }),
    ...(capacitor === undefined
      ? {}
      : {
          capacitor: [`${figure(capacitor.capacitanceF, 1)} F, ${capacitor.designation}`]
        })
  }
}

function supplyLines({ circuit }: SystemPlan, { supply }: PlanRequest, paper: PaperUnits): SupplyLines {
  const { trunk, amplifiers, branches } = circuit
  const { systemVoltageV, positiveLengthM } = supply
  const devices = {
    battery: `${figure(systemVoltageV, 1)} V`,
    ...accessoryLines(circuit, supply, paper)
  }
  if (trunk === undefined) {
    const returnBy = supply.return.kind === 'cable' ? 'cable' : 'body'
    const text = `no cable found, ${runText(positiveLengthM, paper)}`
    return { ...devices, runs: 1, positive: text, negative: 'no cable found', returnBy }
  }
  const fuse = fuseText(trunk)
  const fusePlace = fusePlaceText(trunk, supply, paper)
  return {
    ...devices,
    runs: trunk.runs,
    ...present({ fuse, fusePlace }),
    positive: `${times(trunk.runs)}${trunk.designation}, ${runText(trunk.positiveLengthM, paper)}`,
    ...(trunk.endFuse === undefined ? {} : { fusedAtEnd: true }),
    negative: wayBack(trunk, amplifiers.length > 1 || branches.length > 0, paper),
    returnBy: trunk.returnBy
  }
}

function branchLines(run: BranchRun | undefined, paper: PaperUnits): WiringBranch {
  if (run === undefined) return { positive: 'no branch cable found', negative: 'no branch cable found' }
  const { designation, positiveLengthM, returnLengthM, returnBy } = run
  const fuse = fuseText(run)
  return {
    ...present({ fuse }),
    positive: `${designation}, ${runText(positiveLengthM, paper)}`,
    negative: `${designation}, ${runText(returnLengthM, paper)}${returnBy === 'body' ? ' to the body' : ''}`
  }
}

/** Volts in and out, amperes, and where its minus goes. */
const converterWords = (
  { inputV, nominalV, ratedA, ground, lead }: Converter,
  paper: PaperUnits
): readonly string[] => [
  `${figure(inputV, 0)} to ${figure(nominalV, 0)} V`,
  `${figure(ratedA, 0)} A`,
  ...(ground === undefined
    ? [lead === undefined ? '− below' : backWords(lead)]
    : ['− to body by', `${ground.designation}, ${runText(ground.lengthM, paper)}`])
]

function blockOf(circuit: PlanCircuit, paper: PaperUnits): WiringBlock | undefined {
  const { amplifiers, branches } = circuit
  if (amplifiers.length < 2 && branches.length === 0) return undefined
  const between = hasBlock(circuit) ? undefined : circuit.converter
  const linesOf = (name: string | undefined) =>
    branchLines(
      branches.find(({ amplifier }) => amplifier === name),
      paper
    )
  return {
    title: between === undefined ? 'Block' : 'Converter',
    ways:
      between === undefined
        ? [`${blockInputs(circuit)} in`, `${amplifiers.length} out`]
        : converterWords(between, paper),
    bass: linesOf(amplifiers[0]),
    others: amplifiers.slice(1).map(amplifier => ({ amplifier, ...linesOf(amplifier) }))
  }
}

type SourceLines = Pick<SystemWiring, 'source' | 'signal' | 'signalEnd' | 'turnOn'>

function sourceLines({ parts, circuit: { signalLead, turnOnRelay } }: SystemPlan, paper: PaperUnits): SourceLines {
  const signal = resultOf(parts.signal)
  const turnOn = signal?.turnOn === undefined ? undefined : turnOnTexts[signal.turnOn.method]
  const { kind, name, count, lengthM, converter } = signalLead
  const source = signal?.input === undefined ? 'source' : kind === 'screened' ? 'line output' : 'loudspeaker output'
  return {
    source,
    signal: `${times(count)}${name}, ${runText(lengthM, paper)}`,
    ...(converter ? { signalEnd: 'line-output converter, screened cable to the amplifier' } : {}),
    ...(turnOn === undefined
      ? {}
      : { turnOn: turnOnRelay === undefined ? turnOn : `${turnOn}, its feed behind ${turnOnRelay.fuseA} A` })
  }
}

function speakerWireText({ speakerWire }: PlanCircuit, paper: PaperUnits): string {
  if (speakerWire === undefined) return 'no loudspeaker wire sized'
  const { designation, lengthM, count } = speakerWire
  return `${count === 1 ? '' : `on each of ${count} outputs `}2 × ${designation}, ${runText(lengthM, paper)}`
}

/** @returns none for a plan without an amplifier that fits */
export function wiringOf(plan: SystemPlan, request: PlanRequest, paper: PaperUnits): SystemWiring | undefined {
  const { parts, circuit } = plan
  const { driver, driverCount } = request
  const best = resultOf(parts.matching)?.best
  if (best === undefined) return undefined
  const signal = resultOf(parts.signal)
  const wiring = resultOf(parts.wiring)
  const block = blockOf(circuit, paper)
  return {
    ...supplyLines(plan, request, paper),
    ...present({ block }),
    amplifier: [
      best.amplifier,
      `${figure(best.loadOhm, 2)} Ω${best.bridged ? ', bridged' : ''}`,
      ...(signal === undefined ? [] : [`gain to ${figure(signal.gain.meterVoltageV, 1)} V RMS`])
    ],
    speakerWire: speakerWireText(circuit, paper),
    load: `${figure(best.loadOhm, 2)} Ω`,
    driverCount,
    joints: [
      ...(driver.name === undefined ? [] : [`Drivers: ${driver.name}.`]),
      `${best.join.slice(0, 1).toUpperCase()}${best.join.slice(1)}.`,
      ...(wiring?.chosen?.steps ?? [])
    ].slice(0, MOST_JOINTS),
    ...sourceLines(plan, paper),
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
