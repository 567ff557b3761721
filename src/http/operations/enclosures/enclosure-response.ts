/** POST /v1/enclosures/response */
import { EnclosureResponseRequest } from '../../../contract/enclosures/enclosure-response.ts'
import type { Response } from '../../../contract/enclosures/response.ts'
import { CurvesBody, PartCurveBody, ResponseResultBody } from '../../../contract/enclosures/response.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { chartBook } from '../../../documents/charts/chart-book.ts'
import { csvOfColumns } from '../../../documents/draw/csv.ts'
import { computeResponse as compute } from '../../../domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../../domain/enclosure/model/request.ts'
import { languages } from '../../../domain/languages.ts'
import { present } from '../../../domain/present.ts'
import { curveColumns } from '../../wire/answer/csv-form.ts'
import type { Digits } from '../../wire/answer/json-writer.ts'
import { defineOperation } from '../../wire/operation.ts'
import { twelveInch } from '../drivers/twelve-inch.ts'
import { responseLaws } from './enclosure-laws.ts'
import { responseCostMs } from './response-cost.ts'

/** Curves by the names of the answer; those of named parts behind them, as `name.airSpeedMPerS`. */
const curvesCsv = ({ curves, parts = [] }: Response, digits: Digits) =>
  csvOfColumns([
    ...curveColumns(curves, Object.keys(CurvesBody.properties), digits),
    ...parts.flatMap(part => curveColumns(part, Object.keys(PartCurveBody.properties), digits, part.name))
  ])

function charts({ curves, scalars }: Response, { driver, limits }: ResponseRequest, code: LanguageCode = 'en'): string {
  const { tuningHz, f3Hz } = scalars
  const { seatLevelDb } = curves
  const speed = limits?.airSpeedMPerS
  return chartBook(curves, {
    language: languages[code],
    ...present({ xmaxM: driver.xmaxM, airSpeedMPerS: speed, tuningHz, f3Hz, cabinLevelDb: seatLevelDb })
  })
}

export const computeResponse = defineOperation({
  path: '/v1/enclosures/response',
  operationId: 'computeResponse',
  tag: 'Enclosures',
  summary: 'Curves and figures of one enclosure',
  description:
    'Solves the acoustic network of the enclosure at each frequency. Level, excursion, air speed, impedance and group delay come from one solution; peaks, dips and half-power frequencies are refined and do not depend on the frequencies asked for. A loss Q that is absent means no such loss. Filters act on every curve but the impedance. A cabin adds the level at the seat as a curve of its own. `limits`, even empty, adds the largest level and voltage at each frequency with the limit that governs it, the losses of warm coils and fast ports, and the high-pass an unloaded cone needs. `timeResponse`, even empty, adds the step and the impulse response with settling time and overshoot. By `Accept`: `text/csv` (the curves over frequency, one column each under its name in the answer), `image/svg+xml` (the charts), or `application/json` with everything.',
  body: EnclosureResponseRequest,
  result: ResponseResultBody,
  costMs: responseCostMs,
  laws: responseLaws,
  compute,
  forms: [
    {
      mediaType: 'text/csv',
      description: 'The curves, a row a frequency, columns named as in the answer',
      render: ({ result }, _request, { digits }) => curvesCsv(result, digits)
    },
    {
      mediaType: 'image/svg+xml',
      description: 'Charts of level, excursion, air speed, impedance and delay, one below the other',
      render: ({ result }, request, { language }) => charts(result, request, language)
    }
  ],
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
    atWork: {
      summary: 'The same box at full power in a car: filters, the seat, what limits it and what protects it',
      request: {
        driver: twelveInch,
        enclosure: {
          kind: 'vented',
          rear: { netVolumeL: 62, leakQ: 7, port: { count: 2, areaCm2: 110, lengthMm: 640 } }
        },
        source: { powerW: 600, loadOhm: 4, seriesOhm: 0.03 },
        filters: [
          { kind: 'high-pass', family: 'butterworth', order: 4, cornerHz: 27 },
          { kind: 'low-pass', family: 'linkwitz-riley', order: 4, cornerHz: 80 }
        ],
        frequenciesHz: [20, 25, 31.5, 40, 50, 63, 80, 100],
        cabin: { volumeL: 3200, lengthM: 2.6 },
        limits: {
          amplifierPowerW: 600,
          amplifierLoadOhm: 4,
          amplifierCurrentA: 20,
          ratedOhm: 4,
          dutyFactor: 0.2,
          heating: { coilKPerW: 0.22, coilTimeConstantS: 9, magnetKPerW: 0.08, magnetTimeConstantS: 1400 }
        }
      }
    },
    closed: {
      summary: 'The same driver in a closed box, given by its mechanical set',
      request: {
        driver: { mmsG: 168, cmsMmPerN: 0.18, rmsKgPerS: 5.3, blTm: 15.2, sdCm2: 490, reOhm: 3.4, leMh: 1.6 },
        enclosure: { kind: 'closed', rear: { netVolumeL: 32, absorptionQ: 30 } },
        source: { voltageV: 2.83 },
        timeResponse: { durationMs: 60, points: 13 },
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
