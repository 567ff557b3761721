/** What the box of a plan is asked to be, on the wire. */
import Type, { type Static } from 'typebox'
import { shellFaces } from '../boxes/words.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { PlanRadiatorsBody } from './plan-radiators.ts'
import { designGoals, goalMeanings, plannedKinds, radiatorFaces } from './words.ts'

export const PlanEnclosureBody = component(
  'PlanEnclosure',
  'What the box should be; whatever is absent is chosen by driver and space.',
  {
    kind: Type.Optional(
      choice(
        '`closed` is tighter and smaller, `vented` louder and reaches lower, `passive-radiator` as low without the length and noise of a port, by those of `passiveRadiators`; `band-pass-4`, only where asked for, plays one band by a port, its cones out of reach behind a screwed front',
        plannedKinds
      )
    ),
    goal: Type.Optional(
      choice(
        `Wish in plain words; volume, tuning and port are then searched for it: ${designGoals.map(goal => `\`${goal}\` ${goalMeanings[goal]}`).join(', ')}. \`everyday\` when neither it nor volume or Qtc is given`,
        designGoals
      )
    ),
    qtc: Type.Optional(quantity('1', 'Total Q wanted of a closed box', { from: 0.3, to: 2 })),
    netVolumeL: Type.Optional(
      quantity('L', 'Net volume wanted; of a band-pass behind the drivers', { from: 1, to: 1000 })
    ),
    frontVolumeL: Type.Optional(quantity('L', 'Of a band-pass: before the drivers', { from: 1, to: 1000 })),
    tuningHz: Type.Optional(quantity('Hz', 'Tuning wanted of port or radiators', { from: 15, to: 100 })),
    portShape: Type.Optional(choice('Shape of the port', ['round', 'slot'])),
    portFace: Type.Optional(
      choice('Face for tubes; the front when absent, in a round well that of the drivers', shellFaces)
    ),
    portAreaCm2: Type.Optional(
      quantity('cm²', 'Clear area wanted of the port; it follows from the air speed when absent', { from: 5, to: 2000 })
    ),
    portFlareMm: Type.Optional(
      quantity('mm', 'Radius to which both mouths of the port open; sharp when absent', { from: 1, to: 60 })
    ),
    airSpeedMPerS: Type.Optional(
      quantity('m/s', 'Highest peak air speed in the port; 17, 25 and 34 are tried in turn when absent', {
        from: 5,
        to: 40
      })
    ),
    radiatorCount: Type.Optional(count('Passive radiators in the box; one and two are tried when absent', 1, 4)),
    radiatorFace: Type.Optional(
      choice(
        'Face for them, or `sides` for half of them on each; one on the front or the right, two on the sides or the front are tried when absent',
        radiatorFaces
      )
    )
  }
)
export interface PlanEnclosure extends Si<Static<typeof PlanEnclosureBody>> {}

/** What the box of a plan is asked to be, and the passive radiators it may have. */
export const boxWishes = {
  enclosure: Type.Optional(ref(PlanEnclosureBody)),
  passiveRadiators: Type.Optional(ref(PlanRadiatorsBody))
}
