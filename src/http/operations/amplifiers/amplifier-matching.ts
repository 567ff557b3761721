/** POST /v1/amplifiers/matching */
import { AmplifierMatchRequest, AmplifierMatchResult } from '../../../contract/amplifiers/amplifier-matching.ts'
import { matchAmplifier as compute } from '../../../domain/amplifier/match-amplifier.ts'
import { defineOperation } from '../../wire/operation.ts'
import { matchingLaws } from './matching-laws.ts'

export const matchAmplifier = defineOperation({
  path: '/v1/amplifiers/matching',
  operationId: 'matchAmplifier',
  tag: 'Coils and amplifier',
  summary: 'Whether amplifier and drivers fit, and at which load',
  description:
    'Continuous RMS power of the amplifier against that of the drivers at every load they can be wired to, on one output or spread over several, single or bridged. Power is taken as published for the load and never scaled to a lower one; above the rated loads it is bounded by the voltage reached there. Two powers at one load, bridged figures of one channel, peak, maximum and total figures are refused with the reason.',
  body: AmplifierMatchRequest,
  result: AmplifierMatchResult,
  costMs: ({ otherAmplifiers = [] }) => 0.13 + 0.04 * otherAmplifiers.length,
  laws: matchingLaws,
  compute,
  examples: {
    monoBlock: {
      summary: 'A mono-block and one driver with two coils',
      request: {
        amplifier: {
          ratings: [
            { loadOhm: 4, powerW: 320 },
            { loadOhm: 2, powerW: 540 },
            { loadOhm: 1, powerW: 820 }
          ],
          minimumOhm: 1,
          channels: 1,
          class: 'D',
          onboardFusesA: [40, 40]
        },
        driver: { powerW: 500, coils: 2, coilOhm: 4 },
        driverCount: 1,
        cable: { lengthM: 2.5 }
      }
    },
    bridgedPair: {
      summary: 'Two drivers on a bridged pair, against a mono-block for each',
      request: {
        amplifier: {
          name: 'four-channel',
          ratings: [
            { loadOhm: 4, powerW: 100 },
            { loadOhm: 2, powerW: 160 }
          ],
          minimumOhm: 2,
          channels: 4
        },
        otherAmplifiers: [
          { name: 'small mono-block', ratings: [{ loadOhm: 4, powerW: 260 }], minimumOhm: 2, channels: 1 }
        ],
        amplifierCount: 2,
        driver: { powerW: 250, coils: 1, coilOhm: 4 },
        driverCount: 2
      }
    }
  }
})
