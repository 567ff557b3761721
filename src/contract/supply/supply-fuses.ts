/** Request and answer of rating a fuse. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { systemVoltageV } from './electrical.ts'
import { batterySourceFields, ChosenFuse, fuseTypeList, loadOnFuseFields, ProtectedCable, policy } from './fuse.ts'

const FuseSource = component('FuseSource', 'The battery behind the fuse and the way to it.', {
  ...batterySourceFields,
  leadOhm: Type.Optional(
    quantity('Ω', 'Everything between battery and fuse, out and back: for a fuse at a distribution block', {
      from: 0,
      to: 1
    })
  )
})
const ratings = (description: string) => list(description, quantity('A', 'Rating', { above: 0, to: 1000 }), 1, 16)
export const FuseRequest = component('FuseRequest', 'A load behind a cable that wants a fuse.', {
  currentA: quantity('A', 'Full-sine current of the load', { above: 0, to: 5000 }),
  ...loadOnFuseFields,
  systemVoltageV,
  cable: ref(ProtectedCable),
  alsoProtects: Type.Optional(list('Further cables before the next fuse', ref(ProtectedCable), 1, 16)),
  types: Type.Optional(fuseTypeList),
  policy: Type.Optional(policy),
  makerFuseA: Type.Optional(quantity('A', 'External fuse the amplifier’s maker states', { above: 0, to: 1000 })),
  onboardFusesA: Type.Optional(ratings('Fuses on the amplifier itself')),
  source: Type.Optional(ref(FuseSource)),
  distanceMm: Type.Optional(
    quantity('mm', 'Planned length of conductor between source and fuse', { from: 0, to: 20_000 })
  ),
  sheathed: Type.Optional(Type.Boolean({ description: 'That piece lies in a conduit or sheath all the way' })),
  linksTwoBatteries: Type.Optional(Type.Boolean({ description: 'The cable links two batteries' })),
  branchFusesA: Type.Optional(ratings('Branch fuses behind this one, for selectivity')),
  overcurrentA: Type.Optional(quantity('A', 'Overcurrent to give the operating times of', { above: 0, to: 100_000 }))
})
export interface FuseRequest extends Si<Static<typeof FuseRequest>> {}

const FuseBounds = component('FuseBounds', 'Between what the rating lies.', {
  loadA: quantity('A', 'Full-sine current'),
  thermalA: quantity('A', 'Least rating that carries dense bass in these surroundings'),
  lowestA: quantity('A', 'The greater of the two'),
  highestA: quantity('A', 'What the weakest protected cable allows')
})
const FusedCable = component('FusedCable', 'A protected cable and what it allows.', {
  designation: Type.String({ description: 'Size with its series' }),
  ampacityA: quantity('A', 'Current it may carry for good here'),
  highestFuseA: quantity('A', 'Largest fuse by the policy')
})
const FuseTimeBand = component('FuseTimeBand', 'Operating times at an overcurrent.', {
  percent: quantity('%', 'Overcurrent over rating'),
  minimumS: Type.Optional(quantity('s', 'Opens no sooner; absent where not given')),
  maximumS: Type.Optional(quantity('s', 'Opens no later; absent where it may never open'))
})
export interface TimeBand extends Si<Static<typeof FuseTimeBand>> {}
export interface TimePoint extends Si<Static<typeof FuseTimeBand>> {}

const FuseSelectivity = component('FuseSelectivity', 'This fuse over a branch fuse.', {
  branchRatingA: quantity('A', 'Branch rating'),
  ratio: quantity('1', 'Main over branch'),
  selective: Type.Boolean({ description: 'A fault behind the branch leaves the main fuse whole' })
})
export interface Selectivity extends Si<Static<typeof FuseSelectivity>> {}

export const FuseResult = component('FuseResult', 'The fuse and the reasons.', {
  fuse: ref(ChosenFuse),
  bounds: ref(FuseBounds),
  cables: list('Cables it protects, the first of the request first', ref(FusedCable), 1, 17),
  prospectiveA: quantity(
    'A',
    'Most that may flow into a dead short right behind the fuse: strongest battery, cold fuse, way to the fuse'
  ),
  timeCurrent: Type.Optional(ref(FuseTimeBand)),
  selectivity: Type.Optional(list('Over each branch fuse', ref(FuseSelectivity), 1, 16))
})
export interface FuseAnswer extends Si<Static<typeof FuseResult>> {}
