/** Switching the whole system on for the first time: the supply side before the fuse goes in, then the signal side. */
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import type { CableChoice } from '../../contract/supply/supply-cables.ts'
import type { CapacitorEffect } from '../../contract/supply/supply-current.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { resistorText, waitText } from '../../domain/circuit/source/capacitor-cautions.ts'
import { inDigits } from '../../domain/digits.ts'
import { type CommissioningStep, titles, type UnnumberedStep } from './first-start.ts'
import { handOver } from './hand-over.ts'

const millivolts = (value: number) => `${inDigits(1000 * value, 2)} mV`

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
function precharge({ prechargeOhm, prechargePeakW, prechargeDoneS }: CapacitorEffect): readonly UnnumberedStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  return [
    {
      id: 'precharge',
      text: `Hold the resistor (${resistorText(prechargeOhm, prechargePeakW)}) across the empty fuse holder with insulated clips for about ${waitText(prechargeDoneS)}; it gets hot.`,
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

function fuseLast({ trunk, branches }: PlanCircuit): UnnumberedStep {
  const { fuse, runs = 1 } = trunk ?? {}
  const rated = fuse === undefined ? 'main' : `${fuse.ratingA} A`
  const main =
    runs === 1 ? `the ${rated} fuse in its holder` : `a ${rated} fuse in the holder of each of the ${runs} cables`
  const behind = branches.flatMap(({ amplifier, fuse: own }) =>
    own === undefined ? [] : [`${own.ratingA} A for ${amplifier}`]
  )
  const block = behind.length === 0 ? '' : `Put the fuses of the branches in the block: ${behind.join(', ')}. `
  return {
    id: 'fuse-last',
    text: `${block}Put ${main}.`,
    passIf: 'No more than a small spark as the amplifier charges; no smell, nothing warm.',
    uses: fuse === undefined && branches.every(branch => branch.fuse === undefined) ? [] : ['fuse'],
    cautions: ['fuse-last']
  }
}

function groundDrop({ heavy }: CableChoice['ground']): UnnumberedStep {
  return {
    id: 'ground-drop',
    text: 'With dense bass music at full level, measure from the amplifier’s ground terminal to the negative post of the battery.',
    passIf:
      heavy === undefined
        ? 'No warm joint.'
        : `About ${millivolts(heavy.expectedV)} at ${heavy.currentA.toFixed(0)} A, at most ${millivolts(heavy.acceptanceV)}; more means a joint to remake, or a body that conducts worse than the plan took it: measure and plan again.`,
    cautions: ['amplifier-heat']
  }
}

function stepsOf(
  cable: CableChoice | undefined,
  circuit: PlanCircuit,
  signal: readonly SignalStep[],
  capacitor?: CapacitorEffect
): readonly UnnumberedStep[] {
  if (cable === undefined) return signal
  return [
    cableSeen(circuit),
    noShort,
    ...(circuit.signalLead.kind === 'twisted-pair' ? [speakerLead] : []),
    trimBack,
    batteryOn,
    ...(capacitor === undefined ? [] : precharge(capacitor)),
    fuseLast(circuit),
    ...signal,
    groundDrop(cable.ground),
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
  return stepsOf(...facts).map((step, index) => ({ ...step, number: first + index, title: titles[step.id] }))
}
