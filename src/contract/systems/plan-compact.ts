/** What a phone shows of a plan, on the wire: whether to build it, its figures, its cautions, what to buy, what to do. */
import Type from 'typebox'
import { component, ref } from '../field/component.ts'
import { CalculationBody, CautionBody } from '../field/envelope.ts'
import { quantity } from '../field/quantities.ts'
import { PlanSummaryBody } from './plan-summary.ts'

const CautionLine = component(
  'CautionLine',
  'A caution in short: a `stop` whole, what is peculiar to the design with its figures, others in a dozen words.',
  {
    code: CautionBody.properties.code,
    level: CautionBody.properties.level,
    message: CautionBody.properties.message
  }
)

const BuyLine = component('BuyLine', 'A row of the bill that is needed.', {
  id: Type.String({ description: 'Name of the row in the bill' }),
  item: Type.String({ description: 'What to buy' }),
  quantity: quantity('1', 'How much to buy, in `unit`'),
  unit: Type.String({ description: 'Unit of the quantity' })
})

const StepLine = component('StepLine', 'A step of the work by its title.', {
  number: Type.Integer({ description: 'Place in the order, from 1' }),
  title: Type.String({ description: 'The step in a few words' })
})

export const CompactPlanBody = component('CompactPlan', 'A plan on the screen of a phone.', {
  name: Type.Optional(Type.String({ description: 'Title as given' })),
  sentence: Type.String({ description: 'The system in one sentence' }),
  summary: ref(PlanSummaryBody),
  cautions: Type.Array(ref(CautionLine), {
    description: 'Every caution of the plan, the gravest first; nothing is left out here'
  }),
  buy: Type.Array(ref(BuyLine), { description: 'What to buy' }),
  steps: Type.Array(ref(StepLine), { description: 'All steps in order; the whole plan says how each is done' }),
  calculation: ref(CalculationBody)
})
