/** Switching the whole system on for the first time: the supply side before the fuse goes in, then the signal side. */
import type { CautionCode } from '../domain/caution.ts'
import type { SignalStep } from '../domain/signal/commissioning.ts'
import type { CableChoice } from '../domain/supply/choose-cable.ts'

export interface CommissioningStep {
  readonly id: string
  readonly text: string
  readonly passIf: string
  readonly cautions: readonly CautionCode[]
}

const millivolts = (value: number) => `${Number((1000 * value).toPrecision(2))} mV`

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

/** Order is part of the meaning: nothing is live before everything is joined, and the fuse goes in last. */
function beforePower({ cable, fuse, ground }: CableChoice): readonly CommissioningStep[] {
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
      id: 'fuse-last',
      text: `Join the battery again, negative last, then put the ${fuse === undefined ? 'main' : `${fuse.ratingA} A`} fuse in its holder.`,
      passIf: 'No spark beyond the charging tick of the amplifier; no smell, nothing warm.',
      cautions: ['fuse-last', 'battery-gas']
    },
    {
      id: 'ground-drop',
      text: 'With dense bass music at full level, measure from the amplifier’s ground terminal to the negative post of the battery.',
      passIf:
        ground.heavy === undefined
          ? 'No warm joint.'
          : `About ${millivolts(ground.heavy.expectedV)} at ${ground.heavy.currentA.toFixed(0)} A, at most ${millivolts(ground.heavy.acceptanceV)}; more means a joint to remake, or a body that conducts worse than the plan took it: measure and plan again.`,
      cautions: ['amplifier-heat']
    }
  ]
}

/** Supply first; the drop under load is measured when the gain stands, so it comes last. */
export function commissioning(
  cable: CableChoice | undefined,
  signal: readonly SignalStep[]
): readonly CommissioningStep[] {
  const power = cable === undefined ? [] : beforePower(cable)
  const underLoad = power.filter(({ id }) => id === 'ground-drop')
  return [...power.filter(({ id }) => id !== 'ground-drop'), ...signal, ...underLoad]
}
