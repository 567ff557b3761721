/** What a meter may show where no sum of doubts tells it. */
import type { DefaultTable } from '../../domain/default.ts'

export const readingDefaults = {
  poorJointOhm: { value: 0.0005, unit: 'Ω', why: 'a joint that is to be remade', source: 'practice' },
  idleTimes: { value: 3, unit: '1', why: 'a guess by class: half to three times of it is no fault', source: 'ours' },
  idleSpareA: { value: 1, unit: 'A', why: 'what other consumers of the block draw beside it', source: 'ours' },
  leastLossMv: {
    value: 20,
    unit: 'mV',
    why: 'contacts of the clips; less is no fault whatever is expected',
    source: 'practice'
  },
  continuityOhm: {
    value: 0.3,
    unit: 'Ω',
    why: 'a lead and its contacts through the wires of a hand meter',
    source: 'practice'
  },
  chargerTimes: { value: 1.05, unit: '1', why: 'a charger gives a little more than its rating', source: 'practice' }
} as const satisfies DefaultTable
