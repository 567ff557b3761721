/** What a search for a design asks and answers, on the wire. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { component, ref } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import {
  PlanAmplifierBody,
  PlanBoardBody,
  PlanBody,
  PlanCarBody,
  PlanDriverBody,
  PlanFinishBody,
  PlanSignalBody,
  PlanSupplyBody
} from './plan-request.ts'
import { designLimitNames, MOST_WEIGHED, plannedKinds, portShapes, rankings, rejectionRules } from './words.ts'

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

const Limits = component('DesignLimits', 'What a design must keep; whatever is absent is no limit.', {
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
const Weights = component('DesignWeights', 'What each figure counts in the score.', weightFields)
const WeightWish = component('DesignWeightWish', 'Weights in place of those that rankBy gives.', {
  level: Type.Optional(weightFields.level),
  reach: Type.Optional(weightFields.reach),
  box: Type.Optional(weightFields.box),
  price: Type.Optional(weightFields.price),
  current: Type.Optional(weightFields.current)
})

export const SearchBody = component(
  'DesignSearchRequest',
  `Candidates, the car, its supply and the limits. Drivers × counts × amplifiers × kinds may be at most ${MOST_WEIGHED}, a third of that under a leaning seat (\`seatSlopeDeg\`), half with more than two blocks (\`keepOuts\`).`,
  {
    drivers: list('Drivers to choose from', ref(Driver), 1, 12),
    driverCounts: Type.Optional(
      list('How many drivers to try; 1 and 2 when absent', count('Drivers in one box', 1, 4), 1, 4)
    ),
    amplifiers: list('Amplifiers to choose from', ref(Amplifier), 1, 12),
    kinds: Type.Optional(list('Kinds of box to try; both when absent', choice('Kind', plannedKinds), 1, 2)),
    port: Type.Optional(ref(PortWish)),
    board: ref(PlanBoardBody),
    car: ref(PlanCarBody),
    supply: ref(PlanSupplyBody),
    signal: Type.Optional(ref(PlanSignalBody)),
    finish: Type.Optional(ref(PlanFinishBody)),
    air: Type.Optional(ref(AirBody)),
    limits: Type.Optional(ref(Limits)),
    rankBy: Type.Optional(
      choice(
        '`balance` weighs all alike; any other lets that figure decide: `level` at levelHz, `reach` the lowest f3, `box` the smallest box, `price`, `current`',
        rankings
      )
    ),
    weights: Type.Optional(ref(WeightWish)),
    levelHz: Type.Optional(quantity('Hz', 'Where the level is compared', { from: 20, to: 100 })),
    show: Type.Optional(count('Most designs, and most rejections, in the answer', 1, MOST_WEIGHED))
  }
)
export interface SearchRequest extends Si<Static<typeof SearchBody>> {}

const Figures = component('DesignFigures', 'The figures a design is judged by, at the voltage the gain is set to.', {
  price: Type.Optional(quantity('1', 'Drivers and amplifier; absent where one has no price')),
  loadOhm: quantity('Ω', 'Load on each output'),
  powerW: quantity('W', 'Continuous power of all outputs together after the gain is set'),
  fullSineA: quantity('A', 'Current at full sine'),
  averageA: quantity('A', 'Current on average with music'),
  netVolumeL: quantity('L', 'Air in the box'),
  outerVolumeL: quantity('L', 'Space the box takes'),
  massKg: quantity('kg', 'Box with its drivers'),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning of a vented box')),
  f3Hz: quantity('Hz', 'Half power'),
  levelDb: quantity('dB', 'Level at levelHz, held back where a limit of the parts would be passed there'),
  coneExcursionMm: quantity('mm', 'Largest excursion, peak, one way'),
  excursionOfXmax: quantity('1', 'That over Xmax'),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Largest air speed in the port, peak'))
})

const Reading = component('LimitReading', 'A figure beside its limit.', {
  limit: choice('Which limit', designLimitNames),
  value: quantity('1', 'The figure, in `unit`'),
  bound: quantity('1', 'The limit, in `unit`'),
  unit: Type.String({ description: 'Unit of both; `1` for a pure number or a price' }),
  left: quantity('1', 'What is left up to the limit, in `unit`')
})

const Points = component('DesignPoints', 'What each figure adds to the score.', {
  level: quantity('dB', 'By level'),
  reach: quantity('dB', 'By f3'),
  box: quantity('dB', 'By the size of the box'),
  price: Type.Optional(quantity('dB', 'By price')),
  current: quantity('dB', 'By current')
})

const systemFields = {
  driver: Type.String({ description: 'Name of the driver' }),
  driverCount: count('Drivers', 1, 4),
  amplifier: Type.String({ description: 'Name of the amplifier' }),
  kind: choice('Kind of box', plannedKinds)
}

const DesignBody = component('Design', 'A system that keeps every limit.', {
  rank: count('Place in the order, 1 the best', 1, MOST_WEIGHED),
  ...systemFields,
  alignment: Type.String({ description: 'Alignment of the box, the best of those that suit' }),
  score: quantity('dB', 'Weighted sum of the points; only differences mean something'),
  points: ref(Points),
  figures: ref(Figures),
  tightest: Type.Optional(ref(Reading, 'The limit with the least to spare')),
  cautions: Type.Array(ref(CautionBody), { description: 'Cautions that not every design shares' }),
  plan: ref(PlanBody, 'What /v1/plans takes to plan this design')
})

const ruleText =
  '`match`: no published power at a load the drivers present; `driver-data`; `supply`: no cable or fuse; `space`; `enclosure`: no alignment suits; `response`; `signal`; `stop-caution`: must not be built; else the limit that is broken most'

const RejectedBody = component('RejectedDesign', 'A system that was dropped, and why.', {
  ...systemFields,
  rule: choice(ruleText, rejectionRules),
  detail: Type.String({ description: 'Why, with figures' }),
  value: Type.Optional(quantity('1', 'The figure that breaks the limit, in `unit`')),
  bound: Type.Optional(quantity('1', 'The limit, in `unit`')),
  unit: Type.Optional(Type.String({ description: 'Unit of the figure' })),
  beyond: Type.Optional(quantity('1', 'By how much the limit is broken, in `unit`')),
  figures: Type.Optional(ref(Figures, 'Of the alignment that came nearest'))
})

const CountBody = component('RejectionCount', 'How many systems one reason dropped.', {
  rule: choice(ruleText, rejectionRules),
  count: count('Systems', 1, MOST_WEIGHED)
})

export const SearchResultBody = component('DesignSearchResult', 'Designs in order, and why the others were dropped.', {
  weighed: count('Systems weighed: drivers × counts × amplifiers × kinds', 1, MOST_WEIGHED),
  rankedCount: count('Of them designs', 0, MOST_WEIGHED),
  rejectedCount: count('Of them dropped', 0, MOST_WEIGHED),
  levelHz: quantity('Hz', 'Where the level was compared'),
  weights: ref(Weights),
  designs: Type.Array(ref(DesignBody), { description: 'The best first' }),
  rejected: Type.Array(ref(RejectedBody), { description: 'By reason, at most `show` of them' }),
  rejectedBy: Type.Array(ref(CountBody), { description: 'All rejections by their reason' })
})
