/** Dangers of switching on, testing, listening and driving. */

import { say } from '../../domain/say.ts'
import { burnsFuel, type Hazard } from './hazard.ts'

const electric: readonly Hazard[] = [
  {
    id: 'fire-drill',
    harm: 'fire',
    steps: ['fuse-last', 'to-owner'],
    barrier: say('danger.extinguisher-in-reach-somebody-within-call'),
    proof: say('danger.everybody-there-knows-where-the-main'),
    hands: 'second-person',
    caution: 'fire-drill'
  },
  {
    id: 'amplifier-heat',
    harm: 'fire',
    steps: ['mount-amplifier', 'warm-check'],
    barrier: say('danger.free-air-on-every-side-nothing'),
    proof: say('danger.after-a-quarter-of-an-hour'),
    hands: 'maker',
    caution: 'amplifier-heat'
  },
  {
    id: 'touch-voltage',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('output-touch-voltage'),
    steps: ['speakers-off', 'bridge-halves', 'clipping'],
    barrier: say('danger.probes-clipped-on-with-the-amplifier'),
    proof: say('danger.no-bare-metal-shows'),
    hands: 'maker',
    caution: 'output-touch-voltage'
  },
  {
    id: 'probe-ground',
    harm: 'damage',
    steps: ['clipping'],
    barrier: say('danger.no-ground-clip-on-a-loudspeaker'),
    proof: say('danger.two-probes-and-their-difference-or'),
    hands: 'maker',
    caution: 'probe-ground'
  },
  {
    id: 'test-resistor',
    harm: 'injury',
    steps: ['clipping'],
    barrier: say('danger.the-resistor-and-the-watts-of'),
    proof: say('danger.it-is-cold-enough-to-touch'),
    hands: 'maker',
    basis: say('danger.power-voltage-resistance-derived')
  },
  {
    id: 'safety-circuit-tap',
    harm: 'death',
    peculiar: true,
    when: ({ found }) => found.has('accessory-turn-on'),
    steps: ['lay-turn-on'],
    barrier: say('danger.a-fuse-of-its-own-a'),
    proof: say('danger.no-circuit-of-airbags-brakes-steering'),
    hands: 'maker',
    caution: 'accessory-turn-on'
  },
  {
    id: 'bridge-tied',
    harm: 'damage',
    when: ({ found, speakerLevel }) => speakerLevel && found.has('bridge-tied-source'),
    steps: ['tap-speaker-level', 'speaker-level-lead'],
    barrier: say('danger.neither-core-to-ground-a-differential'),
    proof: say('danger.each-core-is-open-to-the'),
    hands: 'maker',
    caution: 'bridge-tied-source'
  },
  {
    id: 'meter-current',
    harm: 'injury',
    steps: ['parked-current'],
    barrier: say('danger.a-clamp-meter-or-millivolts-across'),
    proof: say('danger.the-leads-of-the-meter-are'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'parked-drain',
    harm: 'damage',
    steps: ['parked-current'],
    barrier: say('danger.a-turn-on-that-goes-off'),
    proof: say('danger.the-reading-of-the-step'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'radio-noise',
    harm: 'law',
    steps: ['noise'],
    barrier: say('danger.an-amplifier-with-the-approval-mark'),
    proof: say('danger.radio-and-key-work-as-before'),
    hands: 'maker',
    basis: say('danger.un-r10-from-memory')
  }
]

const people: readonly Hazard[] = [
  {
    id: 'exhaust',
    harm: 'death',
    when: burnsFuel,
    steps: ['relay-check', 'charger-check', 'running', 'speakers-off', 'plus-drop', 'noise', 'warm-check'],
    barrier: say('danger.engine-running-only-in-the-open'),
    proof: say('danger.it-stands-outside-before-the-key'),
    hands: 'maker',
    caution: 'engine-running'
  },
  {
    id: 'engine-parts',
    harm: 'injury',
    when: burnsFuel,
    steps: ['speakers-off', 'running', 'plus-drop', 'ground-drop'],
    barrier: say('danger.leads-sleeves-and-hair-away-from'),
    proof: say('danger.every-lead-lies-outside-the-reach'),
    hands: 'maker',
    caution: 'engine-parts'
  },
  {
    id: 'children',
    harm: 'lasting-harm',
    steps: ['start-safe'],
    barrier: say('danger.no-child-and-no-animal-in'),
    proof: say('danger.seen-before-each-test'),
    hands: 'maker',
    basis: say('danger.limits-of-noise-are-for-adults')
  },
  {
    id: 'hearing',
    harm: 'lasting-harm',
    peculiar: true,
    steps: ['speakers-on', 'acoustic-polarity', 'level', 'warm-check', 'plus-drop', 'ground-drop'],
    barrier: say('danger.read-from-outside-ear-protection-a'),
    proof: say('danger.a-level-meter-at-the-seat'),
    hands: 'maker',
    caution: 'hearing-exposure'
  },
  {
    id: 'hearing-extreme',
    harm: 'lasting-harm',
    peculiar: true,
    when: ({ found }) => found.has('hearing-extreme'),
    steps: ['speakers-on', 'level', 'warm-check', 'plus-drop', 'ground-drop'],
    barrier: say('danger.nobody-inside-at-full-level'),
    proof: say('danger.doors-shut-everybody-out'),
    hands: 'maker',
    caution: 'hearing-extreme'
  },
  {
    id: 'loose-tone',
    harm: 'damage',
    steps: ['speakers-off'],
    barrier: say('danger.full-level-tones-only-with-the'),
    proof: say('danger.the-cable-is-off-and-insulated'),
    hands: 'maker',
    basis: say('danger.heat-in-a-coil-under-a')
  },
  {
    id: 'coil-smell',
    harm: 'fire',
    steps: ['warm-check'],
    barrier: say('danger.off-at-the-first-smell-of'),
    proof: say('danger.smelled-at-the-box'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'hot-case',
    harm: 'injury',
    steps: ['warm-check'],
    barrier: say('danger.the-back-of-a-hand-brought'),
    proof: say('danger.it-can-stay-there'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'driving',
    harm: 'death',
    steps: ['first-drive'],
    barrier: say('danger.sirens-and-horns-heard-hands-off'),
    proof: say('danger.a-horn-is-heard-with-music'),
    hands: 'maker',
    basis: say('danger.local-law')
  },
  {
    id: 'licensed-work',
    harm: 'law',
    steps: ['read-handbook', 'to-owner'],
    barrier: say('danger.inspection-insurer-and-warranty-asked-licens'),
    proof: say('danger.their-answers-lie-with-the-plan'),
    hands: 'trained-person',
    caution: 'licensed-work'
  }
]

export const testHazards: readonly Hazard[] = [...electric, ...people]
