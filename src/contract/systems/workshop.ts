/** Bill of materials, order of work and restraint, as the plan answers them. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { billGroups, billParts, workItems, workPlaces, workWays } from './words.ts'

const texts = (description: string) => Type.Array(Type.String(), { description })

const Specification = component('BillSpecification', 'What a shop looks for; only what says something of the row.', {
  designation: Type.Optional(Type.String({ description: 'Size of a conductor with its series, as `4 AWG`' })),
  material: Type.Optional(Type.String({ description: 'Material of a board' })),
  thread: Type.Optional(Type.String({ description: 'Metric thread' })),
  fuseType: Type.Optional(Type.String({ description: 'Form of the fuse' })),
  ratedA: Type.Optional(quantity('A', 'Rated current')),
  diameterMm: Type.Optional(quantity('mm', 'Diameter; of a tube inside')),
  lengthMm: Type.Optional(quantity('mm', 'Length of one piece')),
  widthMm: Type.Optional(quantity('mm', 'Width of one piece')),
  thicknessMm: Type.Optional(quantity('mm', 'Thickness; of a screw that of the boards it stays in')),
  areaMm2: Type.Optional(quantity('mm²', 'Conductor section')),
  capacitanceF: Type.Optional(quantity('F', 'Capacitance')),
  resistanceOhm: Type.Optional(quantity('Ω', 'Resistance')),
  capacityN: Type.Optional(quantity('N', 'Lashing capacity'))
})

const SoldAs = component('SoldAs', 'What the shop of a market in inches calls it, and how it is sold there.', {
  item: Type.Optional(Type.String({ description: 'What to ask for, where it has another name' })),
  quantity: quantity('1', 'How much, in `unit`: the need with its spare, rounded up'),
  unit: Type.String({ description: 'Unit of quantity' })
})

export const BillRowBody = component('BillRow', 'One line of the bill of materials.', {
  id: Type.String({ description: 'Name of the row in this bill: its part, numbered from the second row on' }),
  group: choice('Where the row belongs', billGroups),
  part: choice('What it is; the steps of the work name it so', billParts),
  item: Type.String({ description: 'What to buy, for people' }),
  specification: Type.Optional(ref(Specification)),
  quantity: quantity('1', 'How much to buy, in `unit`: the need with its spare, rounded up'),
  unit: Type.String({ description: 'Unit of quantity and need' }),
  need: quantity('1', 'The need itself, in `unit`'),
  sparePercent: quantity('%', 'Spare added to the need'),
  basis: Type.String({ description: 'How the need was reached' }),
  sold: Type.Optional(ref(SoldAs, 'Where the paper is in inches and the shop sells it otherwise')),
  needed: Type.Boolean({ description: 'False where a builder may do without' }),
  insteadOf: Type.Optional(choice('Bought instead of the rows of this part, not besides', billParts))
})
export const billSpecificationFields = Object.keys(Specification.properties)
export interface BillRow extends Si<Static<typeof BillRowBody>> {}

const BuildStepBody = component('BuildStep', 'One step of the work.', {
  number: Type.Integer({ description: 'Place in the order, from 1' }),
  id: Type.String({ description: 'Name of the step, for `needs`' }),
  title: Type.String({ description: 'The step in a few words' }),
  actions: texts('What to do'),
  needs: texts('Ids of the steps that must be finished, and cured, before'),
  place: choice('`table`: with paper and telephone; `bench`; `car`', workPlaces),
  tools: texts('Tools'),
  substitutes: texts('What does instead, where a tool is missing'),
  uses: Type.Array(choice('Part', workItems), {
    description: 'Parts and materials: rows of the bill, or what an earlier step made'
  }),
  makes: Type.Array(choice('Part', workItems), { description: 'What exists when the step is done' }),
  minutes: quantity('min', 'Work of a careful first build'),
  cureMinutes: quantity('min', 'Waiting before a step that needs this one'),
  checks: texts('What to check before going on'),
  warnings: texts('Dangers of this step'),
  cautions: Type.Array(CautionBody.properties.code, { description: 'Cautions whose place is this step' })
})

const WorkDayBody = component('WorkDay', 'What one pair of hands does on one day of eight hours.', {
  day: Type.Integer({ description: 'From 1' }),
  steps: texts('Ids of the steps begun on it, in this order; what cures goes on through the night'),
  minutes: quantity('min', 'Hands at work')
})
export interface WorkDay extends Si<Static<typeof WorkDayBody>> {}

const BuildWayBody = component('BuildWay', 'One way to work the boards, beside the others.', {
  way: choice('Way', workWays),
  taken: Type.Boolean({ description: 'Whether the steps are written for it' }),
  cutMm: quantity('mm', 'How far a length comes out long or short, with care'),
  holeMm: quantity('mm', 'The same of the edge of a hole'),
  netVolumePercent: quantity('%', 'What such cuts move the air in the box by, at most'),
  tuningPercent: Type.Optional(quantity('%', 'What they move the tuning by, at most')),
  workMinutes: quantity('min', 'Work at the box of a careful first build'),
  tools: texts('Tools for the boards'),
  substitutes: texts('What does instead, where one of them is missing')
})

export interface BuildWay extends Si<Static<typeof BuildWayBody>> {}

export const BuildOrderBody = component('BuildOrder', 'The order of work.', {
  steps: Type.Array(ref(BuildStepBody), { description: 'Steps in order' }),
  workMinutes: quantity('min', 'Work of a careful first build, without waiting'),
  practisedMinutes: quantity('min', 'The same of a practised hand'),
  elapsedMinutes: quantity('min', 'From first to last step with one pair of hands, with waiting'),
  days: Type.Array(ref(WorkDayBody), {
    description:
      'A first build over days: what can go on while something dries goes on; days of mere waiting are left out'
  }),
  practisedDays: Type.Integer({ description: 'Days a practised hand needs for it' }),
  ways: Type.Array(ref(BuildWayBody), { description: 'All ways, with what each takes and how exact it is' }),
  batteryOffDay: Type.Integer({ description: 'The car has no battery from this day until it is switched on' })
})

export const RestraintBody = component('Restraint', 'How hard the box must be held in the car.', {
  massKg: quantity('kg', 'Mass of the box'),
  crashForceN: quantity('N', '20 × mass × 9.8 N, a yardstick taken from seat regulations'),
  drivingForwardN: quantity('N', 'Forward force under hard braking'),
  drivingRearwardN: quantity('N', 'Rearward force'),
  drivingSidewaysN: quantity('N', 'Sideways force in a bend'),
  strapCount: Type.Integer({ description: 'Lashing straps that hold the crash force at these angles' }),
  strapCapacityN: quantity('N', 'Lashing capacity taken for one strap'),
  eyeStrengthN: quantity('N', 'What one lashing eye was taken to hold'),
  strapSlopeDeg: quantity('°', 'Steepest strap, against the floor'),
  strapSpreadDeg: quantity('°', 'Strap farthest aside from the direction of travel'),
  advice: texts('How to fasten it')
})
export interface Restraint extends Si<Static<typeof RestraintBody>> {}
