/** Switching the whole system on for the first time: the supply side before the fuse goes in, then the signal side. */
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import type { CapacitorEffect } from '../../contract/supply/supply-current.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import { resistorText, waitText } from '../../domain/circuit/source/capacitor-cautions.ts'
import { converterSteps, dropSteps, fuseLast, running, tieSteps } from './commissioning-power.ts'
import { type CommissioningStep, titles, type UnnumberedStep } from './first-start.ts'
import { startWork } from './first-start-work.ts'
import { handOver } from './hand-over.ts'

const noShort: UnnumberedStep = {
  id: 'no-short',
  text: 'Fuse out, amplifier leads joined: measure from the amplifier end of the positive cable to the body.',
  passIf:
    'The reading rises beyond 1 kΩ once the amplifier’s capacitors have charged from the meter; a steady few ohms is a short.',
  cautions: []
}

/** No screen, no core to ground: a short of either core would load the output stage of the source. */
const speakerLead: UnnumberedStep = {
  id: 'speaker-level-lead',
  text: 'Source off, the twisted signal pairs off the amplifier or its converter: measure each core to the body, and the cores of each pair to those of the other.',
  passIf:
    'No core shows less than 1 kΩ to the body or to the other pair; within a pair there are a few ohms of loudspeaker, or nothing where it is disconnected.',
  cautions: ['bridge-tied-source']
}

function cableSeen({ trunk, branches }: PlanCircuit): UnnumberedStep {
  const sizes = [...new Set([trunk, ...branches].flatMap(run => (run === undefined ? [] : [run.designation])))]
  const what = sizes.length === 0 ? 'the cable' : `the ${sizes.join(', ')} ${sizes.length === 1 ? 'cable' : 'cables'}`
  const along = (trunk?.runs ?? 1) > 1 ? `, all ${trunk?.runs} that lie side by side` : ''
  return {
    id: 'cable-seen',
    text: `Look along ${what}${along} from end to end: grommet in every metal wall, clear of heat, pedals, seat rails and sharp edges, clamped.`,
    passIf: 'No bare metal touches it and it cannot move or chafe.',
    cautions: ['bulkhead-grommet', 'cable-routing']
  }
}

const trimBack: UnnumberedStep = {
  id: 'trim-back',
  text: 'Put the trim back clip by clip, from your photographs; no cable under the cover of an airbag.',
  passIf: 'No clip is left over, no cable shows.',
  cautions: []
}

const batteryOn: UnnumberedStep = {
  id: 'battery-on',
  text: 'Connect the battery again, negative last, face turned away. The main fuse stays out.',
  passIf: 'Warning lamps go out as they did before; nothing else happens.',
  cautions: ['battery-gas']
}

/** The empty fuse holder is where the resistor goes: between battery and capacitor. */
function precharge(
  { prechargeOhm, prechargePeakW, prechargeDoneS }: CapacitorEffect,
  { converter }: PlanCircuit
): readonly UnnumberedStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  const holder =
    converter === undefined
      ? 'the empty fuse holder'
      : 'the empty fuse holder behind the converter, the main fuse in for this,'
  return [
    {
      id: 'precharge',
      text: `Hold the resistor (${resistorText(prechargeOhm, prechargePeakW)}) across ${holder} with insulated clips for about ${waitText(prechargeDoneS)}; it gets hot.`,
      passIf: 'Less than 1 V across the resistor; only then the fuse.',
      uses: ['charging-resistor'],
      cautions: ['capacitor-charge']
    }
  ]
}

/** For whoever works on it next. */
function discharge({ prechargeOhm, prechargePeakW }: CapacitorEffect): readonly UnnumberedStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined) return []
  return [
    {
      id: 'discharge',
      text: `Before any later work on the supply: main fuse out, negative terminal off, then the resistor (${resistorText(prechargeOhm, prechargePeakW)}) across the two terminals of the capacitor. Tie it up beside the capacitor.`,
      passIf: 'Less than 1 V across the capacitor before a hand or a tool goes near it.',
      uses: ['charging-resistor'],
      cautions: ['capacitor-discharge']
    }
  ]
}

function stepsOf(
  circuit: PlanCircuit,
  signal: readonly SignalStep[],
  readings: readonly PlanReading[],
  capacitor?: CapacitorEffect
): readonly UnnumberedStep[] {
  if (circuit.trunk === undefined) return signal
  return [
    cableSeen(circuit),
    noShort,
    ...(circuit.signalLead.kind === 'twisted-pair' ? [speakerLead] : []),
    trimBack,
    batteryOn,
    ...converterSteps(circuit),
    ...(capacitor === undefined ? [] : precharge(capacitor, circuit)),
    fuseLast(circuit),
    ...tieSteps(circuit),
    running,
    ...signal,
    ...dropSteps(circuit, readings),
    ...handOver,
    ...(capacitor === undefined ? [] : discharge(capacitor))
  ]
}

/**
 * Order is part of the meaning: nothing is live before everything is joined, the fuse goes in last, the drop under load is
 * measured when the gain stands, and how to undo it comes after all.
 *
 * @param first  number of the first of them
 */
export function commissioning(first: number, ...facts: Parameters<typeof stepsOf>): readonly CommissioningStep[] {
  return stepsOf(...facts).map((step, index) => ({
    ...step,
    ...startWork[step.id],
    number: first + index,
    title: titles[step.id]
  }))
}
