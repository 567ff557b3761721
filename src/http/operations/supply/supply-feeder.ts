/** POST /v1/supply/feeder */
import { FeederRequest, FeederResult } from '../../../contract/supply/supply-feeder.ts'
import { computeFeeder as compute } from '../../../domain/circuit/graph/compute-feeder.ts'
import { defineOperation } from '../../wire/operation.ts'
import { feederLaws } from './feeder-laws.ts'

export const supplyFeeder = defineOperation({
  path: '/v1/supply/feeder',
  operationId: 'computeFeeder',
  tag: 'Supply',
  summary: 'Voltage at every amplifier of a feeder as it is',
  description:
    'Exact steady state of one or several amplifiers behind source, trunk, fuse, block, branches and returns: regulated amplifiers as constant power, unregulated as resistance. Margin to collapse, drop-out, conductor temperatures, heat, and whether a fuse guards every cable.',
  body: FeederRequest,
  result: FeederResult,
  costMs: ({ amplifiers }) => (amplifiers.length === 1 ? 0.1 : 5 + 2.5 * amplifiers.length),
  laws: feederLaws,
  compute,
  examples: {
    oneAmplifier: {
      summary: '1176 W behind 20 mΩ from 13.8 V',
      request: {
        systemVoltageV: 12,
        source: { voltageV: 13.8, resistanceOhm: 0 },
        trunk: { resistanceOhm: 0.02 },
        amplifiers: [{ inputPowerW: 1176.47 }]
      }
    },
    trunkAndBranches: {
      summary: 'Class D for bass and class AB for the doors behind one trunk, alternator with a limit',
      request: {
        systemVoltageV: 12,
        source: {
          voltageV: 14.2,
          resistanceOhm: 0.003,
          currentLimitA: 150,
          baseLoadA: 35,
          battery: { coldCrankingA: 680 }
        },
        trunk: {
          cable: {
            designation: '2/0 AWG',
            conductor: 'copper',
            positiveLengthM: 5,
            insulationC: 105,
            ambientC: 60,
            return: { kind: 'chassis', leadLengthM: 0, resistanceOhm: 0.001 }
          }
        },
        amplifiers: [
          {
            name: 'bass',
            powerW: 800,
            class: 'D',
            regulation: 'regulated',
            branch: {
              cable: {
                designation: '4 AWG',
                conductor: 'copper',
                positiveLengthM: 1,
                insulationC: 105,
                spaces: ['boot'],
                return: { kind: 'cable', lengthM: 0.5 }
              }
            }
          },
          {
            name: 'doors',
            powerW: 400,
            class: 'AB',
            regulation: 'regulated',
            branch: {
              cable: {
                designation: '6 AWG',
                conductor: 'copper',
                positiveLengthM: 1.2,
                insulationC: 105,
                spaces: ['boot'],
                return: { kind: 'cable', lengthM: 0.5 }
              }
            }
          }
        ],
        groundNoise: { sharedOhm: 0.002, signalV: 4 }
      }
    }
  }
})
