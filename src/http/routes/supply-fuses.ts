/** POST /v1/supply/fuses */
import Type from 'typebox'
import { rateFuse as compute } from '../../domain/fuse/rate-fuse.ts'
import { defineOperation } from '../operation.ts'
import { component, ref } from '../schemas/component.ts'
import { systemVoltageV } from '../schemas/electrical.ts'
import {
  batterySourceFields,
  ChosenFuse,
  fuseTypeList,
  loadOnFuseFields,
  ProtectedCable,
  policy
} from '../schemas/fuse.ts'
import { list, quantity } from '../schemas/quantities.ts'

const Source = component('FuseSource', 'The battery behind the fuse and the way to it.', {
  ...batterySourceFields,
  leadOhm: Type.Optional(
    quantity('Ω', 'Everything between battery and fuse, out and back: for a fuse at a distribution block', {
      from: 0,
      to: 1
    })
  )
})

const ratings = (description: string) => list(description, quantity('A', 'Rating', { above: 0, to: 1000 }), 1, 16)

const Body = component('FuseRequest', 'A load behind a cable that wants a fuse.', {
  currentA: quantity('A', 'Full-sine current of the load', { above: 0, to: 5000 }),
  ...loadOnFuseFields,
  systemVoltageV,
  cable: ref(ProtectedCable),
  alsoProtects: Type.Optional(list('Further cables before the next fuse', ref(ProtectedCable), 1, 16)),
  types: Type.Optional(fuseTypeList),
  policy: Type.Optional(policy),
  makerFuseA: Type.Optional(quantity('A', 'External fuse the amplifier’s maker states', { above: 0, to: 1000 })),
  onboardFusesA: Type.Optional(ratings('Fuses on the amplifier itself')),
  source: Type.Optional(ref(Source)),
  distanceMm: Type.Optional(
    quantity('mm', 'Planned length of conductor between source and fuse', { from: 0, to: 20_000 })
  ),
  sheathed: Type.Optional(Type.Boolean({ description: 'That piece lies in a conduit or sheath all the way' })),
  linksTwoBatteries: Type.Optional(Type.Boolean({ description: 'The cable links two batteries' })),
  branchFusesA: Type.Optional(ratings('Branch fuses behind this one, for selectivity')),
  overcurrentA: Type.Optional(quantity('A', 'Overcurrent to give the operating times of', { above: 0, to: 100_000 }))
})

const Bounds = component('FuseBounds', 'Between what the rating lies.', {
  loadA: quantity('A', 'Full-sine current'),
  thermalA: quantity('A', 'Least rating that carries dense bass in these surroundings'),
  lowestA: quantity('A', 'The greater of the two'),
  highestA: quantity('A', 'What the weakest protected cable allows')
})
const CableShare = component('FusedCable', 'A protected cable and what it allows.', {
  designation: Type.String({ description: 'Size with its series' }),
  ampacityA: quantity('A', 'Current it may carry for good here'),
  highestFuseA: quantity('A', 'Largest fuse by the policy')
})
const TimeBand = component('FuseTimeBand', 'Operating times at an overcurrent.', {
  percent: quantity('%', 'Overcurrent over rating'),
  minimumS: Type.Optional(quantity('s', 'Opens no sooner; absent where not given')),
  maximumS: Type.Optional(quantity('s', 'Opens no later; absent where it may never open'))
})
const Selectivity = component('FuseSelectivity', 'This fuse over a branch fuse.', {
  branchRatingA: quantity('A', 'Branch rating'),
  ratio: quantity('1', 'Main over branch'),
  selective: Type.Boolean({ description: 'A fault behind the branch leaves the main fuse whole' })
})

const Result = component('FuseResult', 'The fuse and the reasons.', {
  fuse: ref(ChosenFuse),
  bounds: ref(Bounds),
  cables: list('Cables it protects, the first of the request first', ref(CableShare), 1, 17),
  prospectiveA: quantity(
    'A',
    'Most that may flow into a dead short right behind the fuse: strongest battery, cold fuse, way to the fuse'
  ),
  timeCurrent: Type.Optional(ref(TimeBand)),
  selectivity: Type.Optional(list('Over each branch fuse', ref(Selectivity), 1, 16))
})

export const supplyFuses = defineOperation({
  path: '/v1/supply/fuses',
  operationId: 'rateFuse',
  tag: 'Supply',
  summary: 'Fuse rating, family and place for a cable',
  description:
    'The next standard rating above the load that the cable still carries, of a family that breaks the fault at this voltage; its place, operating times and selectivity. Refused where no rating lies between load and cable, with the size that would do.',
  body: Body,
  result: Result,
  compute,
  examples: {
    mainFuse: {
      summary: '63 A through 4 AWG, 105 °C insulation, 50 °C surroundings',
      request: {
        currentA: 63,
        cable: { designation: '4 AWG', insulationC: 105, ambientC: 50 },
        systemVoltageV: 12,
        distanceMm: 300,
        overcurrentA: 100
      }
    },
    mainOverBranches: {
      summary: 'Main fuse of a trunk to two branches, the maker of one amplifier asking for more',
      request: {
        currentA: 133.99,
        cable: { designation: '1/0 AWG', conductor: 'copper', insulationC: 105, ambientC: 50 },
        systemVoltageV: 12,
        branchFusesA: [80, 60],
        makerFuseA: 250,
        source: { coldCrankingA: 680 }
      }
    }
  }
})
