/** How far the planned box can be driven, what each way of going further costs, and what moves when it is changed a little. */
import Type, { type Static } from 'typebox'
import { limitNames } from '../enclosures/words.ts'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { driveWays, whatIfs } from './words.ts'

const levelDb = Type.Array(quantity('dB', 'Level'), {
  description: 'At 25, 31.5, 40, 50 and 63 Hz where the figures of the plan are counted, held back by the limits'
})

const ReachedLimit = component('ReachedLimit', 'A limit of the parts, and what reaches it without a high-pass.', {
  limit: choice('Which limit', limitNames),
  powerW: quantity('W', 'Power of all outputs that reaches it, the crossover set'),
  atHz: quantity('Hz', 'Where in the programme it is reached')
})

const DriveWay = component('DriveWay', 'A way to keep every limit, and what it costs.', {
  way: choice(
    '`as-planned`; `less-power` without a high-pass; `higher-filter` at all the power the parts bear; `smaller-box` that bears all of it without a high-pass',
    driveWays
  ),
  powerW: quantity('W', 'Power of all outputs the gain is set for'),
  highPassHz: Type.Optional(quantity('Hz', 'Corner of the high-pass, second order; absent: none')),
  netVolumeL: Type.Optional(quantity('L', 'Net volume, where it is another')),
  levelDb,
  againstPlanDb: quantity('dB', 'Mean of these levels against the plan; negative: quieter')
})

export const PlanHeadroomBody = component('PlanHeadroom', 'What the limits of the parts cost.', {
  text: Type.String({ description: 'The same in a sentence or two' }),
  limits: Type.Array(ref(ReachedLimit), { description: 'The first reached first' }),
  ways: Type.Array(ref(DriveWay), { description: 'The plan first' })
})
export interface PlanHeadroom extends Si<Static<typeof PlanHeadroomBody>> {}

const WhatIfRow = component('WhatIfRow', 'The planned box with one figure changed, all else as it is set.', {
  change: choice(
    '`volume`: the same port on a larger or smaller box; `tuning`: a longer or shorter port; `power`: the gain',
    whatIfs
  ),
  factor: quantity('1', 'The figure over the planned one'),
  netVolumeL: quantity('L', 'Net volume'),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning')),
  levelDb,
  againstPlanDb: quantity('dB', 'Mean of these levels against the plan'),
  f3Hz: Type.Optional(quantity('Hz', 'Half power')),
  heldPowerW: quantity('W', 'Power of all outputs up to which every limit is kept, the filters as they are set'),
  coneOfXmax: Type.Optional(quantity('1', 'Largest excursion over Xmax')),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Largest air speed in the port, peak'))
})

export const PlanWhatIfBody = Type.Array(ref(WhatIfRow), {
  description:
    'The planned box, then each figure a tenth down and up: closed forms beside the planned figures, so that a row says what moves'
})
export type PlanWhatIf = readonly WhatIf[]
interface WhatIf extends Si<Static<typeof WhatIfRow>> {}
