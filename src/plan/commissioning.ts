/** Switching the whole system on for the first time: the supply side before the fuse goes in, then the signal side. */
import type { CautionCode } from '../domain/caution.ts'
import type { SignalStep } from '../domain/signal/commissioning.ts'
import type { CapacitorEffect } from '../domain/supply/capacitor.ts'
import { resistorText, waitText } from '../domain/supply/capacitor-cautions.ts'
import type { CableChoice } from '../domain/supply/choose-cable.ts'

export interface CommissioningStep {
  readonly id: string
  readonly text: string
  readonly passIf: string
  readonly cautions: readonly CautionCode[]
}

const volts = (value: number) => `${value.toPrecision(2)} V`

const batteryOff: CommissioningStep = {
  id: 'battery-off',
  text: 'Take the negative terminal off the battery. Wait as long as the vehicle handbook asks before working near airbag wiring.',
  passIf: 'The negative terminal is off and cannot touch the post.',
  cautions: ['battery-disconnect', 'airbag-looms']
}

const noShort: CommissioningStep = {
  id: 'no-short',
  text: 'Fuse out, amplifier leads joined: measure from the amplifier end of the positive cable to the body.',
  passIf:
    'The reading rises beyond 1 kΩ once the amplifier’s capacitors have charged from the meter; a steady few ohms is a short.',
  cautions: []
}

/** The empty fuse holder is where the resistor goes: between battery and capacitor. */
function precharge({ prechargeOhm, prechargePeakW, prechargeDoneS }: CapacitorEffect): readonly CommissioningStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  return [
    {
      id: 'precharge',
      text: `Hold the resistor (${resistorText(prechargeOhm, prechargePeakW)}) across the empty fuse holder with insulated clips for about ${waitText(prechargeDoneS)}; it gets hot.`,
      passIf: 'Less than 1 V across the resistor; only then the fuse.',
      cautions: ['capacitor-charge']
    }
  ]
}

/** For whoever works on it next. */
function discharge({ prechargeOhm, prechargePeakW }: CapacitorEffect): readonly CommissioningStep[] {
  if (prechargeOhm === undefined || prechargePeakW === undefined) return []
  return [
    {
      id: 'discharge',
      text: `Before any later work on the supply: main fuse out, negative terminal off, then the resistor (${resistorText(prechargeOhm, prechargePeakW)}) across the two terminals of the capacitor. Tie it up beside the capacitor.`,
      passIf: 'Less than 1 V across the capacitor before a hand or a tool goes near it.',
      cautions: ['capacitor-discharge']
    }
  ]
}

/** Order is part of the meaning: nothing is live before everything is joined, and the fuse goes in last. */
function beforePower(
  { cable, fuse, ground }: CableChoice,
  capacitor: CapacitorEffect | undefined
): readonly CommissioningStep[] {
  const size = cable === undefined ? 'the cable' : `the ${cable.designation} cable`
  return [
    batteryOff,
    {
      id: 'cable-seen',
      text: `Look along ${size} from end to end: grommet in every metal wall, clear of heat, pedals, seat rails and sharp edges, clamped.`,
      passIf: 'No bare metal touches it and it cannot move or chafe.',
      cautions: ['bulkhead-grommet', 'cable-routing']
    },
    noShort,
    {
      id: 'battery-on',
      text: 'Connect the battery again, negative last, face turned away. The main fuse stays out.',
      passIf: 'Warning lamps go out as they did before; nothing else happens.',
      cautions: ['battery-gas']
    },
    ...(capacitor === undefined ? [] : precharge(capacitor)),
    {
      id: 'fuse-last',
      text: `Put the ${fuse === undefined ? 'main' : `${fuse.ratingA} A`} fuse in its holder.`,
      passIf: 'No more than a small spark as the amplifier charges; no smell, nothing warm.',
      cautions: ['fuse-last']
    },
    {
      id: 'ground-drop',
      text: 'With music at full level, measure from the amplifier’s ground terminal to the negative post of the battery.',
      passIf: `At most ${volts(ground.acceptanceV)}; more means a joint that must be remade.`,
      cautions: ['amplifier-heat']
    }
  ]
}

/** Supply first; the drop under load is measured when the gain stands, so it comes after; how to undo it, last. */
export function commissioning(
  cable: CableChoice | undefined,
  signal: readonly SignalStep[],
  capacitor?: CapacitorEffect
): readonly CommissioningStep[] {
  const power = cable === undefined ? [] : beforePower(cable, capacitor)
  const underLoad = power.filter(({ id }) => id === 'ground-drop')
  return [
    ...power.filter(({ id }) => id !== 'ground-drop'),
    ...signal,
    ...underLoad,
    ...(capacitor === undefined || cable === undefined ? [] : discharge(capacitor))
  ]
}
