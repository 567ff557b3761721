/** Request of a tolerance run. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { systemFields } from './enclosure-response.ts'
import { SpreadBody } from './tolerance.ts'

export const EnclosureToleranceRequest = component(
  'EnclosureToleranceRequest',
  'A response, and how far its parts may differ.',
  {
    ...systemFields,
    samples: Type.Optional(
      count(
        'Systems to draw; times (frequencies + 128) at most 912 000, less with more than two chambers. Absent: 500',
        20,
        4000
      )
    ),
    seed: Type.Optional(count('Seed of the random numbers. Absent: 1', 0, Number.MAX_SAFE_INTEGER)),
    percentiles: Type.Optional(
      list('Percentiles of the bands. Absent: 5, 50, 95', quantity('%', 'A percentile', { from: 0, to: 100 }), 1, 9)
    ),
    spread: Type.Optional(ref(SpreadBody))
  }
)
export interface EnclosureToleranceRequest extends Si<Static<typeof EnclosureToleranceRequest>> {}
