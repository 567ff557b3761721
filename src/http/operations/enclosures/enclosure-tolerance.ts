/** POST /v1/enclosures/tolerance */
import { EnclosureToleranceRequest } from '../../../contract/enclosures/enclosure-tolerance.ts'
import { NominalBody, type Tolerance, ToleranceResultBody } from '../../../contract/enclosures/tolerance.ts'
import { csvOfColumns } from '../../../documents/draw/csv.ts'
import { computeTolerance as compute } from '../../../domain/enclosure/tolerance/compute-tolerance.ts'
import { curveColumns } from '../../wire/answer/csv-form.ts'
import type { Digits } from '../../wire/answer/json-writer.ts'
import { defineOperation } from '../../wire/operation.ts'
import { toleranceLaws } from './enclosure-laws.ts'

const tenInch = { fsHz: 32, qms: 5.5, qes: 0.5, vasL: 34, sdCm2: 345, reOhm: 3.5, leMh: 1.3, xmaxMm: 13, powerW: 450 }

/** `nominal.levelDb`, then the bands in the order asked for as `p5.levelDb` and so on. */
function bandsCsv({ frequencyHz, nominal, bands }: Tolerance, digits: Digits): string {
  const names = Object.keys(NominalBody.properties)
  return csvOfColumns([
    ...curveColumns({ frequencyHz }, ['frequencyHz'], digits),
    ...curveColumns(nominal, names, digits, 'nominal'),
    ...bands.flatMap(band => curveColumns(band, names, digits, `p${band.percent}`))
  ])
}

export const computeTolerance = defineOperation({
  path: '/v1/enclosures/tolerance',
  operationId: 'computeTolerance',
  tag: 'Enclosures',
  summary: 'Spread of a response over the tolerances of its parts',
  description:
    'Draws systems whose physical parameters (masses, compliances, resistances, dimensions, air temperature) scatter as stated, and gives percentile bands of level, excursion and impedance, the scatter of the chief figures, and the sensitivity of each figure to each parameter. Deterministic for a seed. fs, Q and Vas are never varied apart: they move together through the suspension. `Accept: text/csv` gives the bands alone, a row a frequency.',
  heavy: true,
  body: EnclosureToleranceRequest,
  result: ToleranceResultBody,
  costMs: ({ samples = 200 }) => 5 + 0.2 * samples,
  laws: toleranceLaws,
  compute,
  forms: [
    {
      mediaType: 'text/csv',
      description: 'The bands, a row a frequency: `nominal.levelDb`, `p5.levelDb`, …',
      render: ({ result }, _request, { digits }) => bandsCsv(result, digits)
    }
  ],
  examples: {
    vented: {
      summary: 'A vented box: does it keep its tuning and its excursion?',
      request: {
        driver: tenInch,
        enclosure: {
          kind: 'vented',
          rear: { netVolumeL: 42, leakQ: 8, port: { count: 1, areaCm2: 80, lengthMm: 330 } }
        },
        source: { powerW: 150 },
        filters: [{ kind: 'high-pass', family: 'butterworth', order: 3, cornerHz: 28 }],
        frequenciesHz: [20, 25, 31.5, 40, 50, 63, 80, 100],
        samples: 200,
        seed: 2026
      }
    },
    closed: {
      summary: 'A closed box of two drivers, spreads as the maker states them',
      request: {
        driver: tenInch,
        drivers: { count: 2, inSeries: 1 },
        enclosure: { kind: 'closed', rear: { netVolumeL: 48 } },
        source: { voltageV: 20 },
        air: { temperatureC: 5 },
        frequenciesHz: { fromHz: 20, toHz: 120, points: 6 },
        samples: 150,
        percentiles: [10, 50, 90],
        spread: { cmsPercent: 10, mmsPercent: 2, blPercent: 2.5, rePercent: 2.5, volumePercent: 1, temperatureK: 12 }
      }
    }
  }
})
