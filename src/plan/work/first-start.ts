/** A step of the first start, and what it is called in a few words. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { Said, SaidFields } from '../../contract/sentences/form/template.ts'
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import type { BillPart, StartStage } from '../../contract/systems/words.ts'
import { say, worded } from '../../domain/say.ts'

const ownTitles = {
  'cable-seen': say('start.look-along-the-whole-cable'),
  'no-short': say('start.look-for-a-short'),
  'speaker-level-lead': say('start.test-the-signal-lead'),
  'trim-back': say('start.trim-back'),
  'battery-on': say('start.battery-on-main-fuse-out'),
  precharge: say('start.charge-the-capacitor'),
  'fuse-last': say('start.put-the-fuse-in'),
  'relay-check': say('start.try-the-isolating-relay'),
  'charger-check': say('start.try-the-charger'),
  'converter-check': say('start.output-of-the-converter-before-anything'),
  running: say('start.voltages-with-the-engine-running'),
  'plus-drop': say('start.drop-of-the-plus-side'),
  'ground-drop': say('start.drop-of-the-ground'),
  noise: say('start.listen-for-noise'),
  'parked-current': say('start.current-of-the-parked-car'),
  held: say('start.everything-is-held'),
  'to-owner': say('start.hand-it-over'),
  'first-drive': say('start.first-drive'),
  discharge: say('start.before-any-later-work')
} as const

/** The step in a few words, by its id. */
export const titles: Readonly<Record<SignalStep['id'] | keyof typeof ownTitles, Said>> = {
  ...ownTitles,
  'start-safe': say('start.everything-to-its-minimum'),
  'speaker-resistance': say('start.resistance-of-the-loudspeaker-leads'),
  'cone-polarity': say('start.polarity-of-the-cones'),
  'turn-on': say('start.turn-on'),
  'source-level': say('start.level-of-the-source'),
  'speakers-off': say('start.meter-on-speakers-off'),
  gain: say('start.gain-by-meter'),
  'bridge-halves': say('start.halves-of-the-bridge'),
  clipping: say('start.look-for-clipping'),
  'speakers-on': say('start.loudspeaker-leads-on'),
  filters: say('start.filters'),
  'acoustic-polarity': say('start.polarity-at-the-steering-wheel'),
  level: say('start.level-of-the-bass'),
  'warm-check': say('start.warm-check')
}

/** As it is listed; those of the signal side bring their sentences in the answer of their own part. */
export interface UnnumberedStep {
  readonly id: keyof typeof titles
  readonly text: string
  readonly passIf: string
  readonly said?: SaidFields
  /** Rows of the bill it takes, where it takes any. */
  readonly uses?: readonly BillPart[]
  readonly cautions: readonly CautionCode[]
}

type Words = { readonly text: Said; readonly passIf: Said }

/** A step of the vehicle side. */
export const startStep = ({
  text,
  passIf,
  ...step
}: Omit<UnnumberedStep, keyof Words | 'said'> & Words): UnnumberedStep => ({
  ...step,
  ...worded({ text, passIf })
})

export interface CommissioningStep extends UnnumberedStep {
  readonly stage: StartStage
  readonly minutes: number
  readonly tools: readonly string[]
  /** Place in the whole work: the numbers of the build go on. */
  readonly number: number
  readonly title: string
}
