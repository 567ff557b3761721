/** POST /v1/ports/sizing */
import Type from 'typebox'
import { endSituations } from '../../domain/port/end-correction.ts'
import { endModels, portMouths, slotWalls } from '../../domain/port/port-sizing.ts'
import { sizePort as compute } from '../../domain/port/size-port.ts'
import { twelveInch } from '../examples/twelve-inch.ts'
import { defineOperation } from '../operation.ts'
import { AirBody } from '../schemas/air.ts'
import { byTag, component, ref } from '../schemas/component.ts'
import { DriverBody } from '../schemas/driver.ts'
import { DriversBody, SourceBody } from '../schemas/enclosure.ts'
import { filterChain } from '../schemas/filter.ts'
import { PortSizingResultBody } from '../schemas/port-sizing.ts'
import { choice, count, quantity } from '../schemas/quantities.ts'

const ports = Type.Optional(count('Equal ports; weighed when absent', 1, 16))
const length = Type.Optional(
  quantity('mm', 'Physical length, to learn the tuning of a port given whole', { from: 1, to: 10_000 })
)

const Round = component('RoundPortWish', 'Round ports; what is absent is chosen.', {
  kind: Type.Literal('round', { description: 'Shape' }),
  count: ports,
  diameterMm: Type.Optional(quantity('mm', 'Clear diameter of one', { from: 10, to: 1000 })),
  lengthMm: length,
  flareRadiusMm: Type.Optional(
    quantity('mm', 'Radius of a rounding at both mouths, part of the length', { from: 0, to: 200 })
  )
})

const Slot = component('SlotPortWish', 'Slots; what is absent is chosen.', {
  kind: Type.Literal('slot', { description: 'Shape' }),
  count: ports,
  widthMm: quantity('mm', 'Clear width of one: the inner width of the box for a full-width slot', {
    from: 20,
    to: 3000
  }),
  heightMm: Type.Optional(quantity('mm', 'Clear height', { from: 5, to: 1000 })),
  lengthMm: length,
  walls: Type.Optional(
    choice(
      '`own` walls all round, `one-shared` with the box, or `full-width`: three of the walls are the box',
      slotWalls
    )
  ),
  chamberHeightMm: Type.Optional(
    quantity('mm', 'Clear height of the box where a full-width slot ends, the slot in it', { from: 20, to: 3000 })
  )
})

const Ends = component('PortEnds', 'How the ends stand.', {
  inner: Type.Optional(choice('Inner end: `flanged` flush in a panel, `free` standing in the box', endSituations)),
  outer: Type.Optional(choice('Outer end', endSituations))
})

const Space = component('PortSpace', 'Room for the port.', {
  straightMm: Type.Optional(
    quantity('mm', 'Longest straight run from the outer face, clearance behind the mouth taken off', {
      from: 10,
      to: 10_000
    })
  ),
  bentMm: Type.Optional(quantity('mm', 'Longest centre line with bends', { from: 10, to: 20_000 }))
})

const Body = component('PortSizingRequest', 'A vented box looking for its port.', {
  netVolumeL: quantity('L', 'Net volume, port and driver taken off', { from: 0.5, to: 5000 }),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning; follows from a port given whole', { from: 5, to: 300 })),
  air: Type.Optional(ref(AirBody)),
  driver: Type.Optional(ref(DriverBody)),
  drivers: Type.Optional(ref(DriversBody)),
  source: Type.Optional(ref(SourceBody, 'Full drive; the rated power of the drivers when absent')),
  filters: Type.Optional(filterChain),
  leakQ: Type.Optional(quantity('1', 'Leak of the box as a Q at the tuning', { from: 0.5, to: 1e6 })),
  sweptVolumeL: Type.Optional(
    quantity('L', 'In place of the driver: area times one-way excursion of all cones', { from: 0.001, to: 100 })
  ),
  peakFlowM3PerS: Type.Optional(quantity('m³/s', 'In place of the driver: peak flow', { from: 1e-5, to: 100 })),
  airSpeedLimitMPerS: Type.Optional(
    quantity(
      'm/s',
      'Peak; 17 for sharp ends, 25 for flares when absent; above 34, 10 % of the speed of sound, none is built',
      { from: 3, to: 60 }
    )
  ),
  mouth: Type.Optional(choice('Ends `sharp`, or `flared` at both sides', portMouths)),
  highPassHz: Type.Optional(
    quantity(
      'Hz',
      'Lowest frequency at which the flow is looked at. Absent: 15 where the filters hold a high-pass, otherwise 0.8 of the tuning',
      { from: 1, to: 300 }
    )
  ),
  lowPassHz: Type.Optional(quantity('Hz', 'Upper end of the range the box plays', { from: 20, to: 500 })),
  port: Type.Optional(
    ref(byTag('PortWish', 'The kind of port, and whatever of its size is fixed.', 'kind', [Round, Slot]))
  ),
  ends: Type.Optional(ref(Ends)),
  endModel: Type.Optional(
    choice(
      '`convention`: 0.85 flanged, 0.613 free, times the radius of equal area. `by-shape`: exact pipe ends, slots by shape and wall.',
      endModels
    )
  ),
  bends: Type.Optional(count('Mitred right-angle bends', 0, 4)),
  space: Type.Optional(ref(Space))
})

export const sizePort = defineOperation({
  path: '/v1/ports/sizing',
  operationId: 'sizePort',
  tag: 'Enclosures',
  summary: 'Area, count and length of a port, its air speed, and whether it fits',
  description:
    'The flow at full drive, weighed with the filters before the amplifier, comes from the acoustic network; area from the air-speed limit, length from the tuning with the ends as they stand. Each port says its speed at the tuning and at worst, its first resonance as a pipe and its length by the other way of counting ends. Where none fits, the answer lists what would, computed. A port given whole tells its tuning.',
  body: Body,
  result: PortSizingResultBody,
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
