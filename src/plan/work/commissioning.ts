/** Switching the whole system on for the first time: the supply side before the fuse goes in, then the signal side. */
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import type { CapacitorEffect } from '../../contract/supply/supply-current.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import { saidResistor, saidWait } from '../../domain/circuit/source/capacitor-cautions.ts'
import { listed, say, worded } from '../../domain/say.ts'
import { converterSteps, dropSteps, fuseLast, running, tieSteps } from './commissioning-power.ts'
import { type CommissioningStep, startStep, titles, type UnnumberedStep } from './first-start.ts'
import { startWork } from './first-start-work.ts'
import { handOver } from './hand-over.ts'

const noShort = startStep({
  id: 'no-short',
  text: say('start.fuse-out-amplifier-leads-joined-measure'),
  passIf: say('start.the-reading-rises-beyond-1-k'),
  cautions: []
})

/** No screen, no core to ground: a short of either core would load the output stage of the source. */
const speakerLead = startStep({
  id: 'speaker-level-lead',
  text: say('start.source-off-the-twisted-signal-pairs'),
  passIf: say('start.no-core-shows-less-than-1'),
  cautions: ['bridge-tied-source']
})

function cableSeen({ trunk, branches }: PlanCircuit): UnnumberedStep {
  const sizes = [...new Set([trunk, ...branches].flatMap(run => (run === undefined ? [] : [run.designation])))]
  const what =
    sizes.length === 0
      ? say('start.the-cable')
      : say('start.the-cables', { cableCount: sizes.length, sizes: listed(sizes) })
  const along = (trunk?.runs ?? 1) > 1 ? say('start.all-that-lie-side-by-side', { runs: trunk?.runs ?? 1 }) : ''
  return startStep({
    id: 'cable-seen',
    text: say('start.look-along-from-end-to-end', { what, along }),
    passIf: say('start.no-bare-metal-touches-it-and'),
    cautions: ['bulkhead-grommet', 'cable-routing']
  })
}

const trimBack = startStep({
  id: 'trim-back',
  text: say('start.put-the-trim-back-clip-by'),
  passIf: say('start.no-clip-is-left-over-no'),
  cautions: []
})

const batteryOn = startStep({
  id: 'battery-on',
  text: say('start.connect-the-battery-again-negative-last'),
  passIf: say('start.warning-lamps-go-out-as-they'),
  cautions: ['battery-gas']
})

/** The empty fuse holder is where the resistor goes: between battery and capacitor. */
function precharge(
  { prechargeOhm, prechargePeakW, prechargeDoneS }: CapacitorEffect,
  { converter }: PlanCircuit
): readonly UnnumberedStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  const holder =
    converter === undefined ? say('start.the-empty-fuse-holder') : say('start.the-empty-fuse-holder-behind-the')
  return [
    startStep({
      id: 'precharge',
      text: say('start.hold-the-resistor-across-with-insulated', {
        precharge: saidResistor(prechargeOhm, prechargePeakW),
        holder,
        prechargeDone: saidWait(prechargeDoneS)
      }),
      passIf: say('start.less-than-1-v-across-the'),
      uses: ['charging-resistor'],
      cautions: ['capacitor-charge']
    })
  ]
}

/** For whoever works on it next. */
function discharge({ prechargeOhm, prechargePeakW }: CapacitorEffect): readonly UnnumberedStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined) return []
  return [
    startStep({
      id: 'discharge',
      text: say('start.before-any-later-work-on-the', { precharge: saidResistor(prechargeOhm, prechargePeakW) }),
      passIf: say('start.less-than-1-v-across-the-2'),
      uses: ['charging-resistor'],
      cautions: ['capacitor-discharge']
    })
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
  return stepsOf(...facts).map((step, index) => {
    const { tools, ...work } = startWork[step.id]
    const { said, ...words } = worded({ title: titles[step.id], tools })
    return { ...step, ...work, ...words, said: { ...step.said, ...said }, number: first + index }
  })
}
