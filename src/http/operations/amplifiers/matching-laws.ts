/** What always holds when amplifiers are matched to drivers. */
import type { Static } from 'typebox'
import type { AmplifierMatchRequest, AmplifierMatchResult } from '../../../contract/amplifiers/amplifier-matching.ts'
import { difference, firstBroken, isNear, type Law, reorderedLists } from '../../wire/law.ts'

type Matched = Static<typeof AmplifierMatchResult>

const named = ({ options }: Matched) =>
  options.map(({ bridged, outputs, loadOhm, verdict, totalPowerW }) => ({
    bridged,
    outputs,
    loadOhm,
    verdict,
    totalPowerW
  }))

export const matchingLaws: readonly Law<Static<typeof AmplifierMatchRequest>, Matched>[] = [
  {
    id: 'order-of-amplifiers-never-matters',
    sentence: 'The order of the other amplifiers changes no option and no choice.',
    varied: reorderedLists('otherAmplifiers'),
    staysAnswered: true,
    broken: (first, second) => difference(named(first.result), named(second.result))
  },
  {
    id: 'gain-is-power-into-the-load',
    sentence: 'The voltage of the gain, squared, is its power times its load.',
    broken: ({ result: { gain } }) =>
      gain === undefined || isNear(gain.targetVoltageV ** 2, gain.powerW * gain.loadOhm, 3e-5)
        ? undefined
        : `${gain.targetVoltageV} V against ${gain.powerW} W into ${gain.loadOhm} Ω`
  },
  {
    id: 'powers-are-shared-out',
    sentence: 'The drivers of an option take its whole power, in equal shares.',
    broken: ({ request: { driverCount }, result: { options } }) =>
      firstBroken(options, ({ totalPowerW, driverPowerW }) =>
        totalPowerW === undefined || driverPowerW === undefined || isNear(driverPowerW * driverCount, totalPowerW, 2e-5)
          ? undefined
          : `${driverCount} × ${driverPowerW} W is not ${totalPowerW} W`
      )
  }
]
