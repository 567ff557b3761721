/** The card of readings: what a meter shows at each step of the first switching-on. */
import Type, { type Static } from 'typebox'
import { component } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const text = (description: string) => Type.String({ description })

export const PlanReadingBody = component(
  'PlanReading',
  'One reading, worked out for the state of music and engine in which it is taken.',
  {
    step: text('Id of the step of commissioning it belongs to'),
    what: text('What is measured'),
    probes: text('Where the meter goes'),
    when: text('Music and engine'),
    unit: choice('Unit of the figures', ['V', 'mV', 'A', 'mA', 'mΩ', 'Ω']),
    expected: Type.Optional(quantity('1', 'What the circuit gives, in `unit`; absent where only a limit is known')),
    lowest: Type.Optional(quantity('1', 'Least that still fits the plan, in `unit`')),
    highest: Type.Optional(quantity('1', 'Most that still fits the plan, in `unit`')),
    below: Type.Optional(text('What it means where it reads less')),
    above: Type.Optional(text('What it means where it reads more'))
  }
)
export interface PlanReading extends Si<Static<typeof PlanReadingBody>> {}
