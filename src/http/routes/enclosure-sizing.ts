/** POST /v1/enclosures/sizing */
import Type from 'typebox'
import { liningAmounts } from '../../domain/enclosure/lining.ts'
import { sizeEnclosure as compute } from '../../domain/enclosure/size-enclosure.ts'
import { sizedKinds } from '../../domain/enclosure/sizing.ts'
import { twelveInch } from '../examples/twelve-inch.ts'
import { defineOperation } from '../operation.ts'
import { AirBody } from '../schemas/air.ts'
import { component, ref } from '../schemas/component.ts'
import { DriverBody } from '../schemas/driver.ts'
import { DriversBody } from '../schemas/enclosure.ts'
import { SizingResultBody } from '../schemas/enclosure-sizing.ts'
import { choice, count, list, quantity } from '../schemas/quantities.ts'

const lossQ = (description: string) => Type.Optional(quantity('1', description, { from: 0.5, to: 1e6 }))

const Wanted = component('SizingWanted', 'What the box should come out as; whatever is absent is chosen.', {
  qtc: Type.Optional(list('Total Q of closed boxes to offer', quantity('1', 'Qtc', { from: 0.3, to: 3 }), 1, 8)),
  netVolumeL: Type.Optional(quantity('L', 'A volume to be judged as it is', { from: 0.5, to: 5000 })),
  tuningHz: Type.Optional(quantity('Hz', 'A tuning to be judged as it is', { from: 8, to: 200 })),
  lowHz: Type.Optional(quantity('Hz', 'Lower half-power edge of a band-pass', { from: 8, to: 500 })),
  highHz: Type.Optional(quantity('Hz', 'Upper half-power edge of a band-pass', { from: 8, to: 1000 }))
})

const Space = component('SizingSpace', 'Room there is.', {
  netVolumeL: quantity('L', 'Largest air volume', { from: 0.5, to: 5000 })
})

const Losses = component('SizingLosses', 'Losses of the box, each a Q at its tuning or resonance.', {
  leakQ: lossQ('Leakage; 7 is assumed for opened boxes, none for closed ones'),
  absorptionQ: lossQ('Absorption in the air and its lining'),
  portQ: lossQ('Friction in the port')
})

const Lining = component('SizingLining', 'Fibre in the box.', {
  amount: choice('`bare`, `walls` lined, or `filled`', liningAmounts),
  volumeFactor: Type.Optional(
    quantity('1', 'Apparent over actual volume; isothermal air sets the bound', { from: 1, to: 1.4 })
  )
})

const Radiators = component('SizingPassiveRadiators', 'Passive radiators at hand; what is absent is chosen.', {
  count: Type.Optional(count('Units', 1, 16)),
  areaCm2: Type.Optional(quantity('cm²', 'Effective area of one', { from: 10, to: 5000 })),
  complianceMmPerN: Type.Optional(quantity('mm/N', 'Compliance of one', { from: 0.005, to: 20 })),
  qm: lossQ('Mechanical Q of one in free air')
})

const Source = component('SizingSource', 'What lies before the drivers.', {
  seriesOhm: Type.Optional(quantity('Ω', 'Resistance of amplifier and cable before the drivers', { from: 0, to: 100 }))
})

const Body = component('EnclosureSizingRequest', 'A driver looking for its box.', {
  driver: ref(DriverBody),
  drivers: Type.Optional(ref(DriversBody)),
  source: Type.Optional(ref(Source)),
  air: Type.Optional(ref(AirBody)),
  kinds: Type.Optional(
    Type.Array(choice('Kind', sizedKinds), {
      description: 'Kinds to weigh; closed and vented when absent',
      minItems: 1,
      maxItems: 6,
      uniqueItems: true
    })
  ),
  wanted: Type.Optional(ref(Wanted)),
  space: Type.Optional(ref(Space)),
  losses: Type.Optional(ref(Losses)),
  lining: Type.Optional(ref(Lining)),
  passiveRadiators: Type.Optional(ref(Radiators))
})

export const sizeEnclosure = defineOperation({
  path: '/v1/enclosures/sizing',
  operationId: 'sizeEnclosure',
  tag: 'Enclosures',
  heavy: true,
  summary: 'Boxes that suit a driver, what each gives and costs',
  description:
    'Solves the published alignments for the driver in its circuit and the losses at hand, not off a lossless table: closed boxes by Qtc, vented families, passive radiators by mass and compliance, fourth-order band-passes by their edges, sixth-order ones by a search for their edges. Each candidate is then heard through the same network as /v1/enclosures/response, and says in words what it is good at, what it costs in space, whether it suits and why. A volume or tuning asked for is judged as it is.',
  body: Body,
  result: SizingResultBody,
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
