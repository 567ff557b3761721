/** POST /v1/supply/current */
import { SupplyCurrentRequest, SupplyCurrentResult } from '../../../contract/supply/supply-current.ts'
import { supplyCurrent as compute } from '../../../domain/circuit/load/supply-current.ts'
import { defineOperation } from '../../wire/operation.ts'
import { currentLaws } from './current-laws.ts'

export const supplyCurrent = defineOperation({
  path: '/v1/supply/current',
  operationId: 'computeCurrent',
  tag: 'Supply',
  summary: 'Currents of the amplifiers, charging balance, engine-off time',
  description:
    'Quiescent, average, heavy and full-sine current by the partial-load law of each amplifier’s class, at nominal voltage. With the charging system, battery or capacitor described also what they make of it.',
  body: SupplyCurrentRequest,
  result: SupplyCurrentResult,
  costMs: ({ amplifiers }) => 0.02 + 0.02 * amplifiers.length,
  laws: currentLaws,
  compute,
  examples: {
    oneClassD: {
      summary: 'One class D amplifier, 640 W at 12 V',
      request: { amplifiers: [{ powerW: 640, class: 'D', onboardFusesA: [30, 35] }], systemVoltageV: 12 }
    },
    twoAmplifiersInAnEstate: {
      summary: 'Class D for bass and class AB for the doors, with alternator, battery and capacitor',
      request: {
        amplifiers: [
          { name: 'bass', powerW: 800, class: 'D', regulation: 'regulated', onboardFusesA: [40, 40] },
          { name: 'doors', powerW: 400, class: 'AB', regulation: 'unregulated', ratedVoltageV: 14.4 }
        ],
        systemVoltageV: 12,
        charging: { kind: 'alternator', ratedA: 120, baseLoadA: 35 },
        battery: { capacityAh: 70, reserveMinutes: 130, chemistry: 'agm', coldCrankingA: 680 },
        capacitor: { capacitanceF: 1, esrOhm: 0.002, sourceOhm: 0.02, prechargeOhm: 30 }
      }
    }
  }
})
