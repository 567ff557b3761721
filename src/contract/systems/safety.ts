/** The safety case of a plan, on the wire: each danger with what stands against it. */
import Type, { type Static } from 'typebox'
import type { CautionCode } from '../cautions/catalogue.ts'
import { component } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { choice } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { hazardHands, hazardHarms } from './words.ts'

export const HazardBody = component('PlanHazard', 'One danger of the work, and what stands against it.', {
  id: Type.String({ description: 'Name of the danger' }),
  harm: choice('The worst it can do', hazardHarms),
  peculiar: Type.Boolean({ description: 'Brought by what was chosen for this plan, not by the work as such' }),
  barrier: Type.String({ description: 'What keeps it away' }),
  proof: Type.String({ description: 'How one sees that it does' }),
  hands: choice('Whose work it is', hazardHands),
  steps: Type.Array(Type.String(), { description: 'Ids of the steps where it can happen; the first one says it' }),
  caution: Type.Optional(Type.Unsafe<CautionCode>(CautionBody.properties.code)),
  basis: Type.String({ description: 'Where it is known from' })
})
export interface PlanHazard extends Si<Static<typeof HazardBody>> {}
