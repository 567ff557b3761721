/** A step of the first start, and what it is called in a few words. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import type { BillPart, StartStage } from '../../contract/systems/words.ts'

const ownTitles = {
  'cable-seen': 'Look along the whole cable',
  'no-short': 'Look for a short',
  'speaker-level-lead': 'Test the signal lead',
  'trim-back': 'Trim back',
  'battery-on': 'Battery on, main fuse out',
  precharge: 'Charge the capacitor',
  'fuse-last': 'Put the fuse in',
  'relay-check': 'Try the isolating relay',
  'charger-check': 'Try the charger',
  'converter-check': 'Output of the converter, before anything hangs on it',
  running: 'Voltages with the engine running',
  'plus-drop': 'Drop of the plus side',
  'ground-drop': 'Drop of the ground',
  noise: 'Listen for noise',
  'parked-current': 'Current of the parked car',
  held: 'Everything is held',
  'to-owner': 'Hand it over',
  'first-drive': 'First drive',
  discharge: 'Before any later work'
} as const

/** The step in a few words, by its id. */
export const titles: Readonly<Record<SignalStep['id'] | keyof typeof ownTitles, string>> = {
  ...ownTitles,
  'start-safe': 'Everything to its minimum',
  'speaker-resistance': 'Resistance of the loudspeaker leads',
  'cone-polarity': 'Polarity of the cones',
  'turn-on': 'Turn-on',
  'source-level': 'Level of the source',
  'speakers-off': 'Meter on, speakers off',
  gain: 'Gain by meter',
  'bridge-halves': 'Halves of the bridge',
  clipping: 'Look for clipping',
  'speakers-on': 'Loudspeaker leads on',
  filters: 'Filters',
  'acoustic-polarity': 'Polarity at the steering wheel',
  level: 'Level of the bass',
  'warm-check': 'Warm check'
}

/** As it is listed. */
export interface UnnumberedStep {
  readonly id: keyof typeof titles
  readonly text: string
  readonly passIf: string
  /** Rows of the bill it takes, where it takes any. */
  readonly uses?: readonly BillPart[]
  readonly cautions: readonly CautionCode[]
}

export interface CommissioningStep extends UnnumberedStep {
  readonly stage: StartStage
  readonly minutes: number
  readonly tools: readonly string[]
  /** Place in the whole work: the numbers of the build go on. */
  readonly number: number
  readonly title: string
}
