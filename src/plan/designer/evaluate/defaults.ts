/** Where what is heard beside the level is judged. */
import type { DefaultTable } from '../../../domain/default.ts'

export const listeningDefaults = {
  delayFromHz: {
    value: 20,
    unit: 'Hz',
    why: 'a delay is counted from here, for counted from higher up boxes tuned below the count would win',
    source: 'ours'
  },
  delayToHz: { value: 80, unit: 'Hz', why: 'and up to where the front loudspeakers take over', source: 'ours' },
  evenFromHz: { value: 31, unit: 'Hz', why: 'below, the car decides how even it is', source: 'ours' },
  evenToHz: { value: 66, unit: 'Hz', why: 'above, the crossover does', source: 'ours' }
} as const satisfies DefaultTable
