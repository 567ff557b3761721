/** Why a plan takes the box it takes, and the boxes it could take instead. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { PlanEnclosureBody } from './plan-enclosure.ts'
import { designGoals, earPlaces, plannedKinds } from './words.ts'

export const SystemFiguresBody = component(
  'SystemFigures',
  'What a box is and does, at the voltage the gain is set to.',
  {
    kind: choice('Kind of box', plannedKinds),
    netVolumeL: quantity('L', 'Air in the box; of a band-pass behind the drivers'),
    frontVolumeL: Type.Optional(quantity('L', 'Air before the drivers of a band-pass')),
    outerVolumeL: quantity('L', 'Space the box takes'),
    massKg: quantity('kg', 'Box with its drivers'),
    gainPowerW: quantity('W', 'Power of all outputs that the gain is set for'),
    tuningHz: Type.Optional(quantity('Hz', 'Tuning of port or radiators')),
    f3Hz: Type.Optional(quantity('Hz', 'Half power')),
    levelDb: Type.Array(quantity('dB', 'Level'), {
      description: 'At 25, 31.5, 40, 50 and 63 Hz, held back where a limit of the parts would be passed'
    }),
    heardAt: choice('Where the level is counted', earPlaces),
    groupDelayMs: quantity('ms', 'Longest group delay at those frequencies'),
    airSpeedMPerS: Type.Optional(quantity('m/s', 'Largest air speed in the port, peak')),
    price: Type.Optional(
      quantity('1', 'Drivers, amplifier and whole sheets, those that have a price; absent where nothing has one')
    )
  }
)
export interface SystemFigures extends Si<Static<typeof SystemFiguresBody>> {}

const ChoicePatch = component('BoxPatch', 'JSON Merge Patch (RFC 7396) onto the request of the plan.', {
  enclosure: Type.Object(
    {
      kind: PlanEnclosureBody.properties.kind,
      goal: Type.Null({ description: 'Takes the wish out: the box is given' }),
      netVolumeL: PlanEnclosureBody.properties.netVolumeL,
      frontVolumeL: PlanEnclosureBody.properties.frontVolumeL,
      tuningHz: PlanEnclosureBody.properties.tuningHz,
      portShape: PlanEnclosureBody.properties.portShape,
      portFace: PlanEnclosureBody.properties.portFace,
      portAreaCm2: PlanEnclosureBody.properties.portAreaCm2,
      portFlareMm: PlanEnclosureBody.properties.portFlareMm,
      airSpeedMPerS: PlanEnclosureBody.properties.airSpeedMPerS,
      radiatorCount: PlanEnclosureBody.properties.radiatorCount,
      radiatorFace: PlanEnclosureBody.properties.radiatorFace
    },
    { additionalProperties: false }
  ),
  signal: Type.Optional(
    Type.Object(
      { gainPowerW: quantity('W', 'Power the gain is set for, where the box holds less than the parts bear') },
      { additionalProperties: false }
    )
  )
})

const AlternativeBody = component('PlanAlternative', 'Another box for the same drivers and space.', {
  goal: choice('The wish it is best for', designGoals),
  figures: ref(SystemFiguresBody),
  gains: Type.Array(Type.String(), { description: 'What it does better than the planned box' }),
  givesUp: Type.Array(Type.String(), { description: 'What it does worse' }),
  patch: ref(ChoicePatch, 'The request with this patch plans it, to the last digit')
})
export interface PlanAlternative extends Si<Static<typeof AlternativeBody>> {}

export const PlanChoiceBody = component('PlanChoice', 'Why this box, and what else could stand there.', {
  goal: choice('The wish the box was searched for', designGoals),
  figures: ref(SystemFiguresBody, 'Of the box that is planned'),
  alternatives: Type.Array(ref(AlternativeBody), {
    description: 'None worse on all counts than another, far enough apart to be a choice'
  })
})
export interface PlanChoice extends Si<Static<typeof PlanChoiceBody>> {}

const size = (what: string) => Type.Optional(quantity('mm', what))
const SpacePatch = component('PlanSpacePatch', 'More room for the box.', {
  widthMm: size('Width'),
  heightMm: size('Height'),
  depthMm: size('Depth'),
  coveringMm: size('Carpet')
})
const CarPatch = component('PlanCarPatch', 'Of the vehicle only the room for the box.', { space: ref(SpacePatch) })
const FacePatch = component('PlanFacePatch', 'Of the drivers only the face they are on.', {
  mounting: ref(
    component('PlanMountingPatch', 'Of their mounting only that.', {
      face: Type.Unsafe<'top' | null>({
        type: ['string', 'null'],
        enum: ['top', null],
        description: 'The top; or takes out the face asked for'
      })
    })
  )
})
const FinishPatch = component('PlanFinishPatch', 'A box without carpet.', { covered: Type.Boolean() })
const WayOutPatch = component('WayOutPatch', 'JSON Merge Patch (RFC 7396) onto the request of the plan.', {
  driverCount: Type.Optional(Type.Integer({ description: 'Drivers in the box' })),
  driver: Type.Optional(ref(FacePatch)),
  enclosure: Type.Optional(Type.Null({ description: 'Takes out what the box was asked to be' })),
  car: Type.Optional(ref(CarPatch)),
  finish: Type.Optional(ref(FinishPatch))
})

const WayOutBody = component(
  'PlanWayOut',
  'A change with which there is a box to build; it was planned before it is offered.',
  {
    change: Type.String({ description: 'What to change' }),
    builds: Type.String({ description: 'What is built then, how loud and how large' }),
    figures: Type.Optional(
      ref(
        SystemFiguresBody,
        'Of what is built then; absent where a leaflet gives the box and nothing is known of its sound'
      )
    ),
    patch: ref(WayOutPatch)
  }
)

const LargestDriver = component('LargestDriver', 'The largest usual driver for which the space holds a box.', {
  nominalMm: quantity('mm', 'Nominal size'),
  flangeDiameterMm: quantity('mm', 'Flange as it usually is'),
  mountingDepthMm: quantity('mm', 'Mounting depth as it usually is')
})

export const PlanWaysOutBody = component('PlanWaysOut', 'Where no box fits: what would make one fit.', {
  changes: Type.Array(ref(WayOutBody), {
    description: 'First what costs the least: level less what the wish takes for room'
  }),
  largestDriver: Type.Optional(ref(LargestDriver))
})
export interface PlanWaysOut extends Si<Static<typeof PlanWaysOutBody>> {}
export type PlanChange = PlanWaysOut['changes'][number]
