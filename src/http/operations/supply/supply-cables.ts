/** POST /v1/supply/cables */
import { CableRequest, CableResult } from '../../../contract/supply/supply-cables.ts'
import { chooseCable as compute } from '../../../domain/circuit/choice/choose-cable.ts'
import { defineOperation } from '../../wire/operation.ts'
import { cableLaws } from './feeder-laws.ts'

export const supplyCables = defineOperation({
  path: '/v1/supply/cables',
  operationId: 'chooseCable',
  tag: 'Supply',
  summary: 'Smallest cable for a feeder, with its fuse',
  description:
    'Fuse first, then the smallest size that passes voltage drop, ampacity at ambient and bundle, fuse rating and short-circuit withstand. Says which limit governed and which limits every other size fails; parallel runs where nothing fits.',
  body: CableRequest,
  result: CableResult,
  costMs: () => 0.2,
  laws: cableLaws,
  compute,
  examples: {
    thousandWatts: {
      summary: '1000 W of class D at 12 V over 6 m, chassis return',
      request: {
        loadPowerW: 1176.5,
        systemVoltageV: 12,
        positiveLengthM: 6,
        return: { kind: 'chassis', leadLengthM: 0.5 },
        conductor: 'copper',
        gaugeSystem: 'awg',
        insulationC: 105,
        ambientC: 50
      }
    },
    unknownMetalMetric: {
      summary: 'Metric cable of unknown metal in a van, next amplifier planned',
      request: {
        currentA: 57,
        systemVoltageV: 12,
        positiveLengthM: 5,
        return: { kind: 'cable', lengthM: 5 },
        conductor: 'unknown',
        gaugeSystem: 'mm2',
        spaces: ['cabin', 'boot'],
        futureLoadPowerW: 400
      }
    }
  }
})
