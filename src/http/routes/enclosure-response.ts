/** POST /v1/enclosures/response */
import Type from 'typebox'
import { computeResponse as compute } from '../../domain/enclosure/compute-response.ts'
import { defineOperation } from '../operation.ts'
import { AirBody } from '../schemas/air.ts'
import { component, ref } from '../schemas/component.ts'
import { DriverBody } from '../schemas/driver.ts'
import { DriversBody, EnclosureBody, SourceBody } from '../schemas/enclosure.ts'
import { frequenciesHz } from '../schemas/frequencies.ts'
import { ResponseResultBody } from '../schemas/response.ts'

const Body = component('EnclosureResponseRequest', 'An enclosure, its drivers and what feeds them.', {
  driver: ref(DriverBody),
  drivers: Type.Optional(ref(DriversBody)),
  enclosure: ref(EnclosureBody),
  source: ref(SourceBody),
  air: Type.Optional(ref(AirBody)),
  frequenciesHz: Type.Optional(frequenciesHz)
})

const twelveInch = {
  fsHz: 29,
  qms: 5.8,
  qes: 0.44,
  vasL: 58,
  sdCm2: 490,
  reOhm: 3.4,
  leMh: 1.6,
  xmaxMm: 14,
  powerW: 600
}

export const computeResponse = defineOperation({
  path: '/v1/enclosures/response',
  operationId: 'computeResponse',
  tag: 'Enclosures',
  summary: 'Curves and figures of one enclosure',
  description:
    'Solves the acoustic network of the enclosure at each frequency. Level, excursion, air speed, impedance and group delay come from one solution; peaks, dips and half-power frequencies are refined and do not depend on the frequencies asked for. A loss Q that is absent means no such loss.',
  body: Body,
  result: ResponseResultBody,
  compute,
  examples: {
    vented: {
      summary: 'A vented box with a leak, 400 W',
      request: {
        driver: twelveInch,
        drivers: { count: 1, inSeries: 1 },
        enclosure: {
          kind: 'vented',
          rear: { netVolumeL: 62, leakQ: 7, port: { count: 1, areaCm2: 110, lengthMm: 290, lossQ: 60 } }
        },
        source: { powerW: 400, loadOhm: 4, seriesOhm: 0.03 },
        frequenciesHz: [20, 25, 31.5, 40, 50, 63, 80, 100]
      }
    },
    closed: {
      summary: 'The same driver in a closed box, given by its mechanical set',
      request: {
        driver: { mmsG: 168, cmsMmPerN: 0.18, rmsKgPerS: 5.3, blTm: 15.2, sdCm2: 490, reOhm: 3.4, leMh: 1.6 },
        enclosure: { kind: 'closed', rear: { netVolumeL: 32, absorptionQ: 30 } },
        source: { voltageV: 2.83 },
        air: { temperatureC: 35, pressurePa: 95_000 },
        frequenciesHz: { fromHz: 20, toHz: 160, points: 7 }
      }
    },
    bandPass: {
      summary: 'Two drivers in a series-tuned sixth-order band-pass',
      request: {
        driver: twelveInch,
        drivers: { count: 2, inSeries: 2 },
        enclosure: {
          kind: 'band-pass-6-series',
          rear: { netVolumeL: 90, leakQ: 12, port: { count: 1, areaCm2: 150, lengthMm: 250, endFactor: 1.7 } },
          front: { netVolumeL: 55, leakQ: 12, port: { count: 2, areaCm2: 120, lengthMm: 160 } }
        },
        source: { voltageV: 40 },
        frequenciesHz: [20, 28, 40, 56, 80, 112]
      }
    }
  }
})
