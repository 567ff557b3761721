/** POST /v1/designs/compare */
import { ComparisonBody, DesignComparison } from '../../../contract/enclosures/comparison.ts'
import { comparisonSvg } from '../../../documents/comparison/comparison-charts.ts'
import { comparisonPage } from '../../../documents/comparison/comparison-page.ts'
import { compareDesigns as compute } from '../../../domain/enclosure/comparison/compare-designs.ts'
import { languages } from '../../../domain/languages.ts'
import { defineOperation } from '../../wire/operation.ts'
import { twelveInch } from '../drivers/twelve-inch.ts'
import { comparisonLaws } from './comparison-laws.ts'
import { responseCostMs } from './response-cost.ts'

const filters = [{ kind: 'high-pass', family: 'butterworth', order: 4, cornerHz: 27 }] as const
const source = { powerW: 400, loadOhm: 4, seriesOhm: 0.03 }

export const compareDesigns = defineOperation({
  path: '/v1/designs/compare',
  operationId: 'compareDesigns',
  tag: 'Enclosures',
  summary: 'Two to eight designs side by side: what differs, and which parameter does it',
  description:
    'Each design is one that /v1/enclosures/response takes (the `request` of the response in a plan, whose `air`, `cabin` and `frequenciesHz` are then given once for all), in the same air and the same cabin. Curves over each other, figures of each, the names of the figures that differ, and for every other design what each differing parameter does when it alone is put into the first: volume, port, driver, source. Single changes do not add up where parameters act through each other; `togetherDb` is what is left, and `lastDb` says what the parameter does where all the others are changed already. For the derivation of a figure ask the response of that design. By `Accept`: `image/svg+xml` (the curves), `text/html` (a page), or `application/json`.',
  body: DesignComparison,
  result: ComparisonBody,
  costMs: ({ designs, ...place }) =>
    designs.reduce((sum, design) => {
      const marks = responseCostMs({ ...place, ...design, frequenciesHz: { fromHz: 20, toHz: 120, points: 68 } })
      return sum + responseCostMs({ ...place, ...design }) + 9 * marks
    }, 0),
  heavy: true,
  laws: comparisonLaws,
  compute,
  forms: [
    {
      mediaType: 'image/svg+xml',
      description: 'Curves of all designs over each other, a chart a quantity',
      render: ({ result }, _request, { language = 'en' }) => comparisonSvg(result, languages[language])
    },
    {
      mediaType: 'text/html',
      description: 'A page with the table of differences, the curves and the causes; no script, nothing fetched',
      render: ({ result, cautions }, _request, { language = 'en' }) => comparisonPage(result, cautions, language)
    }
  ],
  examples: {
    volumes: {
      summary: 'The same driver in a small and a large vented box, heard in a car',
      request: {
        designs: [
          {
            name: '45 L, 43 Hz',
            driver: twelveInch,
            enclosure: { kind: 'vented', rear: { netVolumeL: 45, leakQ: 7, port: { areaCm2: 110, lengthMm: 310 } } },
            source,
            filters,
            limits: {}
          },
          {
            name: '70 L, 34 Hz',
            driver: twelveInch,
            enclosure: { kind: 'vented', rear: { netVolumeL: 70, leakQ: 7, port: { areaCm2: 110, lengthMm: 330 } } },
            source,
            filters,
            limits: {}
          }
        ],
        cabin: { lengthM: 2.6 },
        frequenciesHz: { fromHz: 16, toHz: 160, points: 12 }
      }
    },
    kinds: {
      summary: 'A closed and a vented box for one driver',
      request: {
        designs: [
          { name: 'closed', driver: twelveInch, enclosure: { kind: 'closed', rear: { netVolumeL: 35 } }, source },
          {
            name: 'vented',
            driver: twelveInch,
            enclosure: { kind: 'vented', rear: { netVolumeL: 62, port: { areaCm2: 110, lengthMm: 290 } } },
            source
          }
        ],
        frequenciesHz: [20, 25, 31.5, 40, 50, 63, 80]
      }
    }
  }
})
