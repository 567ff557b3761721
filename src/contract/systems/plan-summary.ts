/** A plan in a few lines, on the wire: whether to go on, why not, and its chief figures. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const Figures = component('PlanFigures', 'The chief figures of a plan; what a part did not give is absent.', {
  loadOhm: Type.Optional(quantity('Ω', 'Load on each output')),
  powerW: Type.Optional(quantity('W', 'Continuous power of all outputs together after the gain is set')),
  gainV: Type.Optional(quantity('V', 'Voltage to set the gain to, RMS')),
  netVolumeL: Type.Optional(quantity('L', 'Air in the box')),
  widthMm: Type.Optional(quantity('mm', 'Width of the box outside')),
  heightMm: Type.Optional(quantity('mm', 'Height of the box outside')),
  depthMm: Type.Optional(quantity('mm', 'Depth of the box outside, at its bottom')),
  massKg: Type.Optional(quantity('kg', 'Box with its drivers')),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning of a vented box')),
  f3Hz: Type.Optional(quantity('Hz', 'Half power')),
  peakLevelDb: Type.Optional(quantity('dB', 'Highest level in half space at 1 m')),
  coneExcursionMm: Type.Optional(quantity('mm', 'Largest excursion, peak, one way')),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Fastest air in the port, peak')),
  fullSineA: Type.Optional(quantity('A', 'Current at full sine')),
  averageA: Type.Optional(quantity('A', 'Current on average with music')),
  powerCable: Type.Optional(Type.String({ description: 'Size of the cable from the battery' })),
  cableRuns: Type.Optional(Type.Integer({ description: 'Equal cables side by side' })),
  fuseA: Type.Optional(quantity('A', 'Fuse of each of them near the battery'))
})
export interface PlanFigures extends Si<Static<typeof Figures>> {}

const Reason = component('PlanReason', 'Why a plan is not ready.', {
  code: Type.String({
    description: 'Code of a caution or a problem; `no-box-fits`; `waiting`: parts that only wait for another',
    pattern: '^[a-z0-9-]+$'
  }),
  part: Type.Optional(Type.String({ description: 'Name of the part it comes from, where it is one' })),
  pointer: Type.Optional(
    Type.String({ description: 'JSON pointer into the request of the plan, where a field is meant' })
  ),
  detail: Type.String({ description: 'The same for people' })
})

const planVerdicts = ['ready', 'take-care', 'incomplete', 'stop'] as const

export const PlanSummaryBody = component('PlanSummary', 'The plan in a few lines.', {
  verdict: choice(
    '`ready`; `take-care`: read the cautions first; `incomplete`: a part could not be done; `stop`: do not build or switch this on',
    planVerdicts
  ),
  reasons: Type.Array(ref(Reason), { description: 'Why it is stopped or incomplete, the gravest first' }),
  lines: Type.Array(Type.String(), { description: 'What will be built, a sentence a part' }),
  figures: ref(Figures)
})
export interface PlanSummary extends Si<Static<typeof PlanSummaryBody>> {}
