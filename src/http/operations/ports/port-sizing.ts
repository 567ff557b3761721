/** POST /v1/ports/sizing */
import { PortSizingRequest, PortSizingResultBody } from '../../../contract/ports/port-sizing.ts'
import { sizePort as compute } from '../../../domain/port/sizing/size-port.ts'
import { defineOperation } from '../../wire/operation.ts'
import { twelveInch } from '../drivers/twelve-inch.ts'
import { portLaws } from './port-laws.ts'

export const sizePort = defineOperation({
  path: '/v1/ports/sizing',
  operationId: 'sizePort',
  tag: 'Enclosures',
  summary: 'Area, count and length of a port, its air speed, and whether it fits',
  description:
    'The flow at full drive, weighed with the filters before the amplifier, comes from the acoustic network; area from the air-speed limit, length from the tuning with the ends as they stand. Each port says its speed at the tuning and at worst, its first resonance as a pipe and its length by the other way of counting ends. Where none fits, the answer lists what would, computed. A port given whole tells its tuning.',
  body: PortSizingRequest,
  result: PortSizingResultBody,
  costMs: ({ driver }) => (driver === undefined ? 0.08 : 0.65),
  laws: portLaws,
  compute,
  examples: {
    round: {
      summary: 'Flared round ports for 55 L at 31 Hz, 400 W',
      request: {
        netVolumeL: 55,
        tuningHz: 31,
        driver: twelveInch,
        source: { powerW: 400, loadOhm: 4 },
        mouth: 'flared',
        port: { kind: 'round', flareRadiusMm: 25 },
        space: { straightMm: 420 }
      }
    },
    slot: {
      summary: 'A full-width slot with one bend',
      request: {
        netVolumeL: 55,
        tuningHz: 31,
        driver: twelveInch,
        source: { powerW: 250, loadOhm: 4 },
        port: { kind: 'slot', widthMm: 404, walls: 'full-width', chamberHeightMm: 324 },
        bends: 1,
        space: { straightMm: 340, bentMm: 620 }
      }
    },
    tuningOfPort: {
      summary: 'The tuning of two tubes of 75 mm, 180 mm long',
      request: { netVolumeL: 40, port: { kind: 'round', count: 2, diameterMm: 75, lengthMm: 180 }, sweptVolumeL: 0.4 }
    }
  }
})
