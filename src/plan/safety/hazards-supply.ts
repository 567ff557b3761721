/** Dangers of batteries, cables, fuses and joints. */

import { say } from '../../domain/say.ts'
import type { Hazard } from './hazard.ts'

const batteries: readonly Hazard[] = [
  {
    id: 'battery-short',
    harm: 'fire',
    steps: ['battery-off', 'fit-fuse-holder', 'battery-on'],
    barrier: say('danger.negative-terminal-off-first-and-on'),
    proof: say('danger.the-terminal-cannot-touch-its-post'),
    hands: 'maker',
    caution: 'battery-disconnect'
  },
  {
    id: 'battery-gas',
    harm: 'injury',
    steps: ['mount-second', 'battery-on', 'charger-check'],
    barrier: say('danger.goggles-no-sparks-moving-air-a'),
    proof: say('danger.goggles-worn-before-the-terminal-is'),
    hands: 'maker',
    caution: 'battery-gas'
  },
  {
    id: 'memories',
    harm: 'damage',
    steps: ['read-handbook', 'battery-off'],
    barrier: say('danger.radio-code-and-what-must-be'),
    proof: say('danger.windows-stop-at-their-ends-the'),
    hands: 'maker',
    basis: say('danger.vehicle-maker-s-handbook')
  },
  {
    id: 'second-source',
    harm: 'fire',
    peculiar: true,
    when: ({ secondBattery }) => secondBattery,
    steps: ['mount-second'],
    barrier: say('danger.a-fuse-at-each-end-of'),
    proof: say('danger.0-v-on-every-positive-lead'),
    hands: 'maker',
    caution: 'second-battery'
  },
  {
    id: 'unlike-batteries',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('unlike-batteries-parallel'),
    steps: ['mount-second'],
    barrier: say('danger.a-charging-converter-between-or-batteries'),
    proof: say('danger.the-labels-of-both'),
    hands: 'maker',
    caution: 'unlike-batteries-parallel'
  },
  {
    id: 'lithium',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('lithium-battery'),
    steps: ['mount-second', 'fit-fuse-holder', 'battery-on'],
    barrier: say('danger.its-own-management-the-charger-and'),
    proof: say('danger.the-label-of-the-battery'),
    hands: 'maker',
    caution: 'lithium-battery'
  },
  {
    id: 'capacitor-charge',
    harm: 'fire',
    peculiar: true,
    steps: ['precharge'],
    barrier: say('danger.charged-through-the-resistor-of-the'),
    proof: say('danger.less-than-1-v-across-the'),
    hands: 'maker',
    caution: 'capacitor-charge'
  },
  {
    id: 'capacitor-discharge',
    harm: 'injury',
    steps: ['discharge'],
    barrier: say('danger.discharged-through-the-same-resistor-before'),
    proof: say('danger.less-than-1-v-across-it'),
    hands: 'maker',
    caution: 'capacitor-discharge'
  },
  {
    id: 'forty-eight',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('forty-eight-volt'),
    steps: ['battery-off', 'fit-fuse-holder'],
    barrier: say('danger.fuses-of-58-v-or-more'),
    proof: say('danger.the-marking-on-the-fuse'),
    hands: 'trained-person',
    caution: 'forty-eight-volt'
  },
  {
    id: 'high-voltage',
    harm: 'death',
    peculiar: true,
    when: ({ drive }) => drive === 'hybrid' || drive === 'electric',
    steps: ['drive-off', 'open-trim', 'pass-bulkhead', 'mount'],
    barrier: say('danger.a-person-trained-on-this-vehicle'),
    proof: say('danger.the-name-of-that-person-on'),
    hands: 'trained-person',
    caution: 'high-voltage-orange'
  },
  {
    id: 'ready-mode',
    harm: 'injury',
    when: ({ drive }) => drive === 'hybrid' || drive === 'electric',
    steps: ['drive-off', 'running', 'speakers-off', 'plus-drop', 'noise'],
    barrier: say('danger.ready-mode-off-and-the-key'),
    proof: say('danger.no-ready-light'),
    hands: 'maker',
    caution: 'ready-mode'
  }
]

const cables: readonly Hazard[] = [
  {
    id: 'cable-chafe',
    harm: 'fire',
    steps: ['pass-bulkhead', 'lay-power-cable', 'cable-seen'],
    barrier: say('danger.a-grommet-at-each-edge-of'),
    proof: say('danger.no-bare-metal-touches-the-cable'),
    hands: 'maker',
    caution: 'bulkhead-grommet'
  },
  {
    id: 'pedals',
    harm: 'death',
    steps: ['survey-route', 'lay-power-cable', 'cable-seen'],
    barrier: say('danger.no-cable-near-pedals-steering-and'),
    proof: say('danger.pedals-and-seats-go-their-whole'),
    hands: 'maker',
    caution: 'cable-routing'
  },
  {
    id: 'fuse-at-source',
    harm: 'fire',
    steps: ['fit-fuse-holder'],
    barrier: say('danger.the-fuse-within-the-distance-of'),
    proof: say('danger.measured-along-the-cable'),
    hands: 'maker',
    basis: say('danger.33-cfr-183-455-read-boats')
  },
  {
    id: 'fuse-last',
    harm: 'fire',
    steps: ['fit-fuse-holder', 'connect-amplifier', 'fuse-last'],
    barrier: say('danger.every-fuse-out-until-the-test'),
    proof: say('danger.a-reading-beyond-1-k'),
    hands: 'maker',
    caution: 'fuse-last'
  },
  {
    id: 'breaking-capacity',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('breaking-capacity'),
    steps: ['fuse-last'],
    barrier: say('danger.a-fuse-that-breaks-what-the'),
    proof: say('danger.the-marking-on-the-fuse'),
    hands: 'maker',
    caution: 'breaking-capacity'
  },
  {
    id: 'wrong-spare',
    harm: 'fire',
    steps: ['label', 'to-owner'],
    barrier: say('danger.spares-of-the-same-rating-only'),
    proof: say('danger.the-rating-stands-beside-the-holder'),
    hands: 'maker',
    basis: say('danger.the-fuse-protects-the-cable-derived')
  },
  {
    id: 'hot-joint',
    harm: 'fire',
    steps: ['crimp-lugs', 'connect-amplifier', 'warm-check', 'first-drive'],
    barrier: say('danger.the-die-of-the-size-pull'),
    proof: say('danger.nothing-moves-under-the-pull-of'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'aluminium-joint',
    harm: 'fire',
    peculiar: true,
    when: ({ conductor = 'copper' }) => conductor !== 'copper' && conductor !== 'unknown',
    steps: ['crimp-lugs'],
    barrier: say('danger.lugs-for-aluminium-with-their-paste'),
    proof: say('danger.the-mark-on-the-lug'),
    hands: 'maker',
    caution: 'aluminium-joint'
  },
  {
    id: 'body-no-return',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('chassis-no-return'),
    steps: ['make-ground'],
    barrier: say('danger.a-return-cable-of-the-size'),
    proof: say('danger.the-plan-asked-for-again-with'),
    hands: 'maker',
    caution: 'chassis-no-return'
  },
  {
    id: 'voltage-class',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('amplifier-voltage-class'),
    steps: ['check-parts', 'connect-amplifier'],
    barrier: say('danger.an-amplifier-of-the-class-of'),
    proof: say('danger.the-label-of-the-amplifier'),
    hands: 'maker',
    caution: 'amplifier-voltage-class'
  },
  {
    id: 'sensor-past',
    harm: 'damage',
    steps: ['lay-return', 'make-ground'],
    barrier: say('danger.every-ground-on-the-body-side'),
    proof: say('danger.nothing-but-the-sensor-is-on'),
    hands: 'maker',
    basis: say('danger.vehicle-maker-s-handbook')
  },
  {
    id: 'hot-air',
    harm: 'fire',
    steps: ['crimp-lugs', 'tap-speaker-level'],
    barrier: say('danger.no-hot-air-and-no-flame'),
    proof: say('danger.nothing-near-smells-warm'),
    hands: 'maker',
    caution: 'hot-air'
  }
]

export const supplyHazards: readonly Hazard[] = [...batteries, ...cables]
