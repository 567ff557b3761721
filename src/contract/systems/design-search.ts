/** What a search for a design asks and answers, on the wire. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { PlanRadiatorsBody } from './plan-radiators.ts'
import {
  PlanAmplifierBody,
  PlanBoardBody,
  PlanCarBody,
  PlanDriverBody,
  PlanFinishBody,
  PlanSignalBody,
  PlanSupplyBody
} from './plan-request.ts'
import { designGoals, MOST_SHARDS, MOST_SHOWN, MOST_WEIGHED, portShapes, rankings, searchedKinds } from './words.ts'

const name = label('Name, unlike the others', 40)

const Driver = component('SearchDriver', 'A driver that could be bought. powerW and xmaxMm of its sheet are needed.', {
  ...PlanDriverBody.properties,
  name,
  price: Type.Optional(quantity('1', 'Price of one, in the currency of the amplifiers', { from: 0, to: 1e9 }))
})

const Amplifier = component('SearchAmplifier', 'An amplifier that could be bought.', {
  ...PlanAmplifierBody.properties,
  name
})

export const LimitsBody = component('DesignLimits', 'What a design must keep; whatever is absent is no limit.', {
  pricePerSystem: Type.Optional(
    quantity('1', 'Most that drivers and amplifier may cost together', { from: 0, to: 1e9 })
  ),
  fullSineA: Type.Optional(
    quantity('A', 'Most current at full sine, other amplifiers of the run in it', { above: 0, to: 10_000 })
  ),
  averageA: Type.Optional(quantity('A', 'Most current on average with music', { above: 0, to: 10_000 })),
  outerVolumeL: Type.Optional(quantity('L', 'Most space of the box, outside', { above: 0, to: 10_000 })),
  massKg: Type.Optional(quantity('kg', 'Most mass of the box with its drivers', { above: 0, to: 1000 })),
  f3AtMostHz: Type.Optional(quantity('Hz', 'Half power must lie at or below', { from: 5, to: 1000 })),
  levelAtLeastDb: Type.Optional(
    quantity('dB', 'Least level at levelHz, half space, 1 m, re 20 µPa', { from: 0, to: 200 })
  ),
  excursionOfXmax: Type.Optional(
    quantity('1', 'Most peak excursion one way over Xmax; 1 when absent', { above: 0, to: 5 })
  ),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Most peak air speed in the port', { above: 0, to: 200 }))
})
export interface DesignLimits extends Si<Static<typeof LimitsBody>> {}

const PortWish = component('SearchPort', 'How ports are sized, as in a plan.', {
  shape: Type.Optional(choice('Shape of the port; both are tried when absent', portShapes)),
  airSpeedMPerS: Type.Optional(
    quantity('m/s', 'Peak air speed it is sized for; 17, 25 and 30 are tried in turn when absent', { from: 5, to: 40 })
  )
})

const weight = (what: string) => quantity('1', `Weight of ${what}`, { from: 0, to: 100 })
const weightFields = {
  level: weight('a decibel of level at levelHz'),
  reach: weight('the reach: 30·log10 of f3, nine an octave'),
  box: weight('the box: 10·log10 of its outside volume, three a doubling'),
  price: weight('the price: 10·log10, three a doubling'),
  current: weight('the current at full sine: 10·log10, three a doubling')
}
export const WeightsBody = component('DesignWeights', 'What each figure counts in the score.', weightFields)
const WeightWish = component('DesignWeightWish', 'Weights in place of those that rankBy gives.', {
  level: Type.Optional(weightFields.level),
  reach: Type.Optional(weightFields.reach),
  box: Type.Optional(weightFields.box),
  price: Type.Optional(weightFields.price),
  current: Type.Optional(weightFields.current)
})

export const ShardBody = component('SearchShard', 'One of several equal parts of a search.', {
  index: count('Which part, from 0', 0, MOST_SHARDS - 1),
  of: count('How many parts there are', 1, MOST_SHARDS)
})

const TurnBody = component('SearchTurn', 'A place in the order of a search.', {
  deciding: Type.Number({ description: 'The figure of `rankBy` in SI, less is better; 0 for a balance' }),
  score: Type.Number({ description: 'Sum of the points, which decides next' })
})
export interface SearchTurn extends Static<typeof TurnBody> {}

const AskedShardBody = component('AskedShard', 'One of several equal parts of a search.', {
  ...ShardBody.properties,
  until: Type.Optional(
    ref(
      TurnBody,
      'Where other parts have found as many designs as are shown: what comes after the last of them is not built'
    )
  )
})

export const SearchBody = component(
  'DesignSearchRequest',
  `Candidates, the car, its supply and the limits. Drivers × counts × amplifiers × kinds may be at most ${MOST_WEIGHED}.`,
  {
    drivers: list('Drivers to choose from', ref(Driver), 1, 200),
    driverCounts: Type.Optional(
      list('How many drivers to try; 1 and 2 when absent', count('Drivers in one box', 1, 4), 1, 4)
    ),
    amplifiers: list('Amplifiers to choose from', ref(Amplifier), 1, 100),
    kinds: Type.Optional(
      list(
        'Kinds of box to try; when absent all, those with passive radiators where they are given',
        choice('Kind', searchedKinds),
        1,
        3
      )
    ),
    port: Type.Optional(ref(PortWish)),
    passiveRadiators: Type.Optional(ref(PlanRadiatorsBody, 'At hand for every system')),
    board: ref(PlanBoardBody),
    car: ref(PlanCarBody),
    supply: ref(PlanSupplyBody),
    signal: Type.Optional(ref(PlanSignalBody)),
    finish: Type.Optional(ref(PlanFinishBody)),
    air: Type.Optional(ref(AirBody)),
    limits: Type.Optional(ref(LimitsBody)),
    rankBy: Type.Optional(
      choice(
        '`balance` weighs all alike; any other lets that figure alone decide, and the score only among equals: `level` at levelHz, `reach` the lowest f3, `box` the smallest box, `price`, `current`',
        rankings
      )
    ),
    goal: Type.Optional(
      choice(
        'What each box is made for; when absent it follows rankBy: `loud` for the level, `low` for the reach, `small` for the box, else `everyday`',
        designGoals
      )
    ),
    weights: Type.Optional(ref(WeightWish)),
    levelHz: Type.Optional(quantity('Hz', 'Where the level is compared', { from: 20, to: 100 })),
    show: Type.Optional(count('Most designs, and most of every other list, in the answer', 1, MOST_SHOWN)),
    shard: Type.Optional(ref(AskedShardBody, 'Only this part; /v1/designs/merge joins them'))
  }
)
export interface SearchRequest extends Si<Static<typeof SearchBody>> {}
