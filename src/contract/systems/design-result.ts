/** What a search answers, on the wire: designs in order, what is unbeaten, and why the others were dropped. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { choice, count, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { PartBody } from './design-part.ts'
import { WeightsBody } from './design-search.ts'
import {
  CountBody,
  DesignFiguresBody,
  ReadingBody,
  RejectedBody,
  RelaxationBody,
  systemFields,
  UnbeatenBody
} from './design-system.ts'
import { PlanBody } from './plan-request.ts'
import { designGoals, MOST_SHOWN, MOST_WEIGHED } from './words.ts'

const Points = component('DesignPoints', 'What each figure adds to the score.', {
  level: quantity('dB', 'By level'),
  reach: quantity('dB', 'By f3'),
  box: quantity('dB', 'By the size of the box'),
  price: Type.Optional(quantity('dB', 'By price')),
  current: quantity('dB', 'By current')
})

const DesignBody = component('Design', 'A system that was built in figures and keeps every limit.', {
  rank: count('Place in the order, 1 the best', 1, MOST_SHOWN),
  ...systemFields,
  score: quantity('dB', 'Weighted sum of the points; only differences mean something'),
  points: ref(Points),
  figures: ref(DesignFiguresBody),
  unbeaten: Type.Boolean({ description: 'Whether no other system is foreseen to be as good in every figure' }),
  tightest: Type.Optional(ref(ReadingBody, 'The limit with the least to spare')),
  cautions: Type.Array(ref(CautionBody), { description: 'Cautions that not every design shares' }),
  plan: ref(PlanBody, 'What /v1/plans takes to plan this design')
})

export interface Design extends Si<Static<typeof DesignBody>> {}

export const SearchResultBody = component('DesignSearchResult', 'Designs in order, and why the others were dropped.', {
  weighed: count('Systems weighed: drivers × counts × amplifiers × kinds', 0, MOST_WEIGHED),
  rankedCount: count('Of them those that keep every limit, as built or as foreseen', 0, MOST_WEIGHED),
  rejectedCount: count('Of them dropped', 0, MOST_WEIGHED),
  levelHz: quantity('Hz', 'Where the level was compared'),
  goal: choice('What each box was made for', designGoals),
  weights: ref(WeightsBody),
  designs: Type.Array(ref(DesignBody), { description: 'The best first' }),
  unbeatenCount: count('Systems that no other is foreseen to equal in every figure', 0, MOST_WEIGHED),
  unbeaten: Type.Array(ref(UnbeatenBody), { description: 'The first of them, the best first' }),
  rejected: Type.Array(ref(RejectedBody), { description: 'By reason, the nearest to its limit first' }),
  rejectedBy: Type.Array(ref(CountBody), { description: 'All rejections by their reason' }),
  relaxation: Type.Optional(ref(RelaxationBody, 'Only where limits leave nothing')),
  part: Type.Optional(ref(PartBody, 'Only with `shard`: what /v1/designs/merge takes'))
})
