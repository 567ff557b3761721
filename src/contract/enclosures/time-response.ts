/** Schemas of the response in time. */
import Type, { type Static } from 'typebox'
import { component } from '../field/component.ts'
import { count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const MOST_MOMENTS = 4000

export const TimeResponseRequestBody = component('TimeResponseRequest', 'Asks for the step and impulse response.', {
  durationMs: Type.Optional(quantity('ms', 'How long to follow it', { from: 1, to: 10_000 })),
  points: Type.Optional(count('Moments, equally spaced, the first at zero', 2, MOST_MOMENTS))
})
export interface TimeResponseRequest extends Si<Static<typeof TimeResponseRequestBody>> {}

const course = (unit: string, description: string) =>
  list(description, Type.Number({ description: `Value [${unit}]` }), 2, MOST_MOMENTS)

export const TimeResponseBody = component(
  'TimeResponse',
  'Sound pressure after a step and an impulse of the source, over the pressure of the plateau (high-pass kinds) or of the highest level (others). Arrays of equal length.',
  {
    timeMs: course('ms', 'Moments'),
    stepRatio: course('1', 'Pressure after a step of the source'),
    impulsePerS: course('1/s', 'Pressure after an impulse, without the impulse itself at zero'),
    jumpRatio: quantity('1', 'What the step response jumps to at once; 0 behind an inductance'),
    peakRatio: quantity('1', 'Largest value of the step response'),
    peakTimeMs: quantity('ms', 'When it is reached'),
    overshootRatio: quantity('1', 'Largest swing to the other side after the peak, over the peak'),
    settlingTimeMs: Type.Optional(
      quantity(
        'ms',
        'From here on the step response stays within 5 % of its peak. Absent: not within the time followed'
      )
    )
  }
)
export interface TimeResponse extends Si<Static<typeof TimeResponseBody>> {}
