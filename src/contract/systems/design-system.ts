/** A system of a search in figures, on the wire: foreseen in closed form, built, or dropped and why. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { LimitsBody } from './design-search.ts'
import { designLimitNames, MOST_WEIGHED, rejectionRules, searchedKinds } from './words.ts'

const foreseenFields = {
  price: Type.Optional(quantity('1', 'Drivers and amplifier; absent where one has no price')),
  loadOhm: quantity('Ω', 'Load on each output'),
  powerW: quantity('W', 'Continuous power of all outputs together after the gain is set'),
  fullSineA: quantity('A', 'Current at full sine'),
  averageA: quantity('A', 'Current on average with music'),
  netVolumeL: quantity('L', 'Air in the box'),
  outerVolumeL: quantity('L', 'Space the box takes'),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning of a vented box')),
  f3Hz: quantity('Hz', 'Half power'),
  levelDb: quantity('dB', 'Level at levelHz, held back where a limit of the parts would be passed there'),
  excursionOfXmax: quantity('1', 'Largest excursion over Xmax'),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Largest air speed in the port, peak'))
}

export const DesignFiguresBody = component(
  'DesignFigures',
  'The figures a design is judged by, at the voltage the gain is set to.',
  {
    ...foreseenFields,
    massKg: quantity('kg', 'Box with its drivers'),
    coneExcursionMm: quantity('mm', 'Largest excursion, peak, one way')
  }
)
export interface DesignFigures extends Si<Static<typeof DesignFiguresBody>> {}

export const ForeseenBody = component(
  'ForeseenFigures',
  'In closed form, before a box is laid out: sizes and f3 good to a tenth, the level without jets and heat, up to 2 dB.',
  {
    ...foreseenFields,
    excursionOfXmax: Type.Optional(foreseenFields.excursionOfXmax)
  }
)
export interface ForeseenFigures extends Si<Static<typeof ForeseenBody>> {}

export const systemFields = {
  driver: Type.String({ description: 'Name of the driver', maxLength: 40 }),
  driverCount: count('Drivers', 1, 4),
  amplifier: Type.String({ description: 'Name of the amplifier', maxLength: 40 }),
  kind: choice('Kind of box', searchedKinds)
}

const ruleText =
  '`match`: no published power at a load they present; `supply`: no cable or fuse; `enclosure`: no box for the goal; `stop-caution`: must not be built; else the first limit that is broken'

const rejectionFields = {
  rule: choice(ruleText, rejectionRules),
  detail: Type.String({ description: 'Why, with figures', maxLength: 2000 }),
  value: Type.Optional(quantity('1', 'The figure that breaks the limit, in `unit`')),
  bound: Type.Optional(quantity('1', 'The limit, in `unit`')),
  unit: Type.Optional(Type.String({ description: 'Unit of the figure', maxLength: 10 })),
  beyond: Type.Optional(quantity('1', 'By how much the limit is broken, in `unit`'))
}

export const ReadingBody = component('LimitReading', 'A figure beside its limit.', {
  limit: choice('Which limit', designLimitNames),
  value: quantity('1', 'The figure, in `unit`'),
  bound: quantity('1', 'The limit, in `unit`'),
  unit: Type.String({ description: 'Unit of both; `1` for a pure number or a price', maxLength: 10 }),
  left: quantity('1', 'What is left up to the limit, in `unit`')
})
export interface LimitReading extends Si<Static<typeof ReadingBody>> {}

export const RejectedBody = component('RejectedDesign', 'A system that was dropped, and why.', {
  ...systemFields,
  ...rejectionFields,
  figures: Type.Optional(ref(ForeseenBody, 'Of the box that came nearest'))
})
export interface RejectedDesign extends Si<Static<typeof RejectedBody>> {}

export const UnbeatenBody = component(
  'UnbeatenSystem',
  'A system of which no other is foreseen to be as good in every figure.',
  {
    ...systemFields,
    figures: ref(ForeseenBody)
  }
)
export interface UnbeatenSystem extends Si<Static<typeof UnbeatenBody>> {}

export const CountBody = component('RejectionCount', 'How many systems one reason dropped.', {
  rule: choice('Reason', rejectionRules),
  count: count('Systems', 1, MOST_WEIGHED)
})

export const RelaxationBody = component(
  'SearchRelaxation',
  'The least that has to be given way for one system to be left.',
  {
    ...systemFields,
    figures: ref(DesignFiguresBody, 'Of the system as it was built in figures'),
    gives: list('Each limit that gives way, beside the figure it has to reach', ref(ReadingBody), 0, 20),
    patch: Type.Object(
      { limits: ref(LimitsBody, 'Only the bounds that change') },
      { description: 'JSON Merge Patch (RFC 7396) onto the request', additionalProperties: false }
    )
  }
)
export interface SearchRelaxation extends Si<Static<typeof RelaxationBody>> {}
