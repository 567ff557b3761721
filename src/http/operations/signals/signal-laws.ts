/** What always holds for the signal path and the gain. */
import type { Static } from 'typebox'
import type { SignalSetupResultBody } from '../../../contract/signals/signal-result.ts'
import type { SignalSetupRequest } from '../../../contract/signals/signal-setup.ts'
import { difference, isNear, type Law, reordered } from '../../wire/law.ts'

export const signalLaws: readonly Law<Static<typeof SignalSetupRequest>, Static<typeof SignalSetupResultBody>>[] = [
  {
    id: 'gain-is-power-into-the-load',
    sentence: 'The voltage of the gain, squared, is its power times its load.',
    broken: ({ result: { gain } }) =>
      isNear(gain.targetVoltageV ** 2, gain.powerW * gain.loadOhm, 3e-5)
        ? undefined
        : `${gain.targetVoltageV} V against ${gain.powerW} W into ${gain.loadOhm} Ω`
  },
  {
    id: 'order-of-loads-never-matters',
    sentence: 'The order of the loads on the turn-on lead never matters.',
    varied: ({ request }, chance) => {
      const loadsA = reordered(request.turnOn?.loadsA, chance)
      return loadsA && request.turnOn && { ...request, turnOn: { ...request.turnOn, loadsA } }
    },
    staysAnswered: true,
    broken: (first, second) => difference(first.result, second.result)
  }
]
