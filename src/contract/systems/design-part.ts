/** One part of a search that was split: all that the other parts need to be joined with it, on the wire. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { count, list } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { SearchBody, ShardBody } from './design-search.ts'
import {
  CountBody,
  DesignFiguresBody,
  ForeseenBody,
  RejectedBody,
  RelaxationBody,
  systemFields,
  UnbeatenBody
} from './design-system.ts'
import { PlanEnclosureBody } from './plan-enclosure.ts'
import { MOST_SHARDS, MOST_UNBEATEN, MOST_WEIGHED } from './words.ts'

const FigureBody = component('PartFigure', 'A figure of a caution.', {
  name: Type.String({ description: 'Name, which ends in the unit', maxLength: 60 }),
  value: Type.Number({ description: 'The figure' })
})
const PartCautionBody = component('PartCaution', 'A caution of a design of the part.', {
  code: Type.String({ description: 'Code of the caution', maxLength: 60 }),
  level: CautionBody.properties.level,
  sentence: Type.String({ description: 'The sentence with its values, as JSON', maxLength: 4000 }),
  at: Type.Optional(Type.String({ description: 'Path in the request', maxLength: 200 })),
  figures: Type.Optional(list('The figures that triggered it', ref(FigureBody), 0, 40))
})

const TriedSystem = component('TriedSystem', 'A system that was built in figures: a design, or why it is none.', {
  ...systemFields,
  foreseen: ref(ForeseenBody, 'By which it was taken in turn'),
  enclosure: Type.Optional(ref(PlanEnclosureBody)),
  figures: Type.Optional(ref(DesignFiguresBody)),
  cautions: list('Places in the cautions of the part', count('Place', 0, 499), 0, 200),
  rejection: Type.Optional(ref(RejectedBody, 'Why it is no design'))
})
export interface TriedSystem extends Si<Static<typeof TriedSystem>> {}

const NearBody = component('NearSystem', 'A system that comes near to the limits, and what would let it in.', {
  ...systemFields,
  foreseen: ref(ForeseenBody, 'By which it was taken in turn'),
  beyond: Type.Number({ description: 'Beyond the limit it breaks most, as a share of it [1]' }),
  found: Type.Optional(ref(RelaxationBody, 'Absent where it cannot be built'))
})

export const PartBody = component('SearchPart', 'One part of a search; joined with the others by /v1/designs/merge.', {
  shard: ref(ShardBody),
  fingerprint: Type.String({ description: 'Of the request; parts of another are refused', pattern: '^[0-9a-f]{16}$' }),
  weighed: count('Systems weighed', 0, MOST_WEIGHED),
  standing: count('Of them those that are foreseen to keep every limit', 0, MOST_WEIGHED),
  dropped: list('The others by their reason', ref(CountBody), 0, 40),
  tried: list('What was built in figures, in turn', ref(TriedSystem), 0, 200),
  cautions: list('What they are warned of, each once', ref(PartCautionBody), 0, 500),
  unbeaten: list('What no other system of the part is foreseen to equal', ref(UnbeatenBody), 0, MOST_UNBEATEN),
  rejected: list('The first of those dropped', ref(RejectedBody), 0, 50),
  relaxations: list('Where nothing stands: what comes nearest, in turn', ref(NearBody), 0, 20)
})
export interface SearchPart extends Si<Static<typeof PartBody>> {}

export const MergeBody = component('DesignMergeRequest', 'A search and all its parts.', {
  request: ref(SearchBody, 'The request that was split; `shard` in it is not read'),
  parts: list('Every part once, in any order', ref(PartBody), 1, MOST_SHARDS)
})
export interface MergeRequest extends Si<Static<typeof MergeBody>> {}
