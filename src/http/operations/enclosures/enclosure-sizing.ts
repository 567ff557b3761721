/** POST /v1/enclosures/sizing */
import { EnclosureSizingRequest, SizingResultBody } from '../../../contract/enclosures/enclosure-sizing.ts'
import { sizeEnclosure as compute } from '../../../domain/enclosure/sizing/size-enclosure.ts'
import { defineOperation } from '../../wire/operation.ts'
import { twelveInch } from '../drivers/twelve-inch.ts'
import { sizingLaws } from './enclosure-laws.ts'

export const sizeEnclosure = defineOperation({
  path: '/v1/enclosures/sizing',
  operationId: 'sizeEnclosure',
  tag: 'Enclosures',
  heavy: true,
  summary: 'Boxes that suit a driver, what each gives and costs',
  description:
    'Solves the published alignments for the driver in its circuit and the losses at hand, not off a lossless table: closed boxes by Qtc, vented families, passive radiators by mass and compliance, fourth-order band-passes by their edges, sixth-order ones by a search for their edges. Each candidate is then heard through the same network as /v1/enclosures/response, and says in words what it is good at, what it costs in space, whether it suits and why. A volume or tuning asked for is judged as it is.',
  body: EnclosureSizingRequest,
  result: SizingResultBody,
  costMs: () => 1.2,
  laws: sizingLaws,
  compute,
  examples: {
    closedAndVented: {
      summary: 'A 12 in driver, 70 L of space',
      request: { driver: twelveInch, drivers: { count: 1 }, source: { seriesOhm: 0.05 }, space: { netVolumeL: 70 } }
    },
    asked: {
      summary: 'The same driver in 50 L tuned to 31 Hz, walls lined',
      request: {
        driver: twelveInch,
        kinds: ['vented'],
        wanted: { netVolumeL: 50, tuningHz: 31 },
        losses: { leakQ: 10 },
        lining: { amount: 'walls' }
      }
    },
    otherKinds: {
      summary: 'Passive radiators, and a band-pass from 40 to 100 Hz',
      request: {
        driver: twelveInch,
        kinds: ['passive-radiator', 'band-pass-4'],
        wanted: { lowHz: 40, highHz: 100 },
        passiveRadiators: { count: 2, areaCm2: 490, complianceMmPerN: 0.4, qm: 10 }
      }
    }
  }
})
