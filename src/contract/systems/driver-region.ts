/** Which drivers would suit a wish, a space and a car, for who has none yet; on the wire. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { CabinBody } from '../acoustics/cabin.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { SystemFiguresBody } from './plan-choice.ts'
import { PlanBoardBody, PlanFinishBody } from './plan-request.ts'
import { RoomForBox } from './plan-space.ts'
import { designGoals } from './words.ts'

export const DriverRegionBody = component('DriverRegionRequest', 'A wish, a space and a power, and no driver yet.', {
  goal: Type.Optional(choice('What the box is wanted for; `everyday` when absent', designGoals)),
  driverCount: count('Drivers, all alike, in one box', 1, 4),
  nominalDiameterMm: Type.Optional(
    quantity('mm', 'Size of the drivers, taken as the nearest usual one; the largest that stands when absent', {
      from: 150,
      to: 400
    })
  ),
  powerW: quantity('W', 'Continuous power for all drivers together', { from: 10, to: 20_000 }),
  board: ref(PlanBoardBody),
  space: ref(RoomForBox),
  cabin: Type.Optional(ref(CabinBody)),
  finish: Type.Optional(ref(PlanFinishBody)),
  air: Type.Optional(ref(AirBody))
})
export interface DriverRegionRequest extends Si<Static<typeof DriverRegionBody>> {}

const driverFields = {
  fsHz: quantity('Hz', 'Free-air resonance'),
  qts: quantity('1', 'Total Q'),
  vasL: quantity('L', 'Compliance volume')
}

const SuitedDriver = component('SuitedDriver', 'A driver of the region, and the box that was built for it.', {
  ...driverFields,
  figures: ref(SystemFiguresBody)
})
export interface SuitedDriver extends Si<Static<typeof SuitedDriver>> {}

const Typical = component(
  'TypicalDriver',
  'What else the drivers are taken to be; more travel and more power do no harm.',
  {
    sdCm2: quantity('cm²', 'Area of the cone'),
    xmaxMm: quantity('mm', 'Linear excursion, one way, peak'),
    powerW: quantity('W', 'Continuous rating of one'),
    qms: quantity('1', 'Mechanical Q'),
    reOhm: quantity('Ω', 'Coil resistance of one, coils joined'),
    leMh: quantity('mH', 'Coil inductance'),
    ratedOhm: quantity('Ω', 'Rated impedance of one'),
    flangeDiameterMm: quantity('mm', 'Outer diameter of the flange'),
    cutOutDiameterMm: quantity('mm', 'Diameter of the hole'),
    mountingDepthMm: quantity('mm', 'Depth behind the front')
  }
)
export interface TypicalDriver extends Si<Static<typeof Typical>> {}

export const DriverRegionResultBody = component('DriverRegion', 'Drivers that would suit, for a look at a shelf.', {
  text: Type.String({ description: 'The region in a sentence' }),
  goal: choice('The wish it is for', designGoals),
  nominalMm: quantity('mm', 'Nominal size'),
  fsFromHz: quantity('Hz', 'Least free-air resonance'),
  fsToHz: quantity('Hz', 'Most free-air resonance'),
  qtsFrom: quantity('1', 'Least total Q'),
  qtsTo: quantity('1', 'Most total Q'),
  vasFromL: quantity('L', 'Least compliance volume'),
  vasToL: quantity('L', 'Most compliance volume'),
  toleranceDb: quantity(
    'dB',
    'What a driver at the edge may give away against the best, as the search of a plan weighs boxes'
  ),
  typical: ref(Typical),
  best: ref(SuitedDriver, 'The driver of the region that does best'),
  corners: list('The drivers at the corners, each with the box that was laid out for it', ref(SuitedDriver), 1, 8)
})
export interface DriverRegion extends Si<Static<typeof DriverRegionResultBody>> {}
