/** POST /v1/designs/drivers */
import { DriverRegionBody, DriverRegionResultBody } from '../../../contract/systems/driver-region.ts'
import { regionPage } from '../../../documents/region/region-page.ts'
import { regionText } from '../../../documents/region/region-text.ts'
import { regionOfDrivers as compute } from '../../../plan/designer/region/driver-region.ts'
import { defineOperation } from '../../wire/operation.ts'
import { regionLaws } from './system-laws.ts'

export const regionOfDrivers = defineOperation({
  path: '/v1/designs/drivers',
  operationId: 'regionOfDrivers',
  tag: 'Plans',
  summary: 'Which drivers would suit',
  description:
    'For who has a wish, a space and an amplifier and no driver yet: the widest ranges of resonance, Q and compliance volume within which a driver of a size gives away little, for a look at a shelf. A box was laid out for the best driver and for those at the corners. By `Accept`: `text/html` (a page for a phone in front of the shelf), `text/plain`, or `application/json`.',
  body: DriverRegionBody,
  result: DriverRegionResultBody,
  costMs: () => 1000,
  laws: regionLaws,
  compute,
  heavy: true,
  forms: [
    {
      mediaType: 'text/html',
      description: 'A page with the ranges, the boxes built for them and what was assumed; no script, nothing fetched',
      render: ({ result }, _request, { language = 'en' }) => regionPage(result, language)
    },
    {
      mediaType: 'text/plain',
      description: 'The same as text of 80 columns',
      render: ({ result }, _request, { language = 'en' }) => regionText(result, language)
    }
  ],
  examples: {
    'ten-inch': {
      summary: 'One driver of 25 cm on 400 W in an estate car, for every day',
      request: {
        driverCount: 1,
        nominalDiameterMm: 250,
        powerW: 400,
        board: { material: 'mdf', thicknessMm: 18 },
        space: { widthMm: 900, heightMm: 420, depthMm: 420 },
        cabin: { lengthM: 2.9 }
      }
    }
  }
})
