/** Dangers of wood, glue and paint, and of a driver on the bench. */

import { say } from '../../domain/say.ts'
import { safetyDefaults } from './defaults.ts'
import type { Hazard } from './hazard.ts'

const saws = ['cut-panels', 'saw-bevels', 'cut-holes', 'braces']

const machines: readonly Hazard[] = [
  {
    id: 'wood-dust',
    harm: 'illness',
    steps: ['set-up-bench', ...saws, 'sand'],
    barrier: say('danger.extraction-at-the-tool-a-p3'),
    proof: say('danger.no-dust-shows-in-the-beam'),
    hands: 'maker',
    caution: 'wood-dust'
  },
  {
    id: 'turning-blade',
    harm: 'injury',
    steps: saws,
    barrier: say('danger.board-and-rail-clamped-both-hands'),
    proof: say('danger.nothing-has-to-be-held-by'),
    hands: 'maker',
    caution: 'turning-blade'
  },
  {
    id: 'narrow-strip',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('narrow-strip'),
    steps: ['cut-panels', 'order-panels'],
    barrier: say('danger.a-push-stick-or-the-strip'),
    proof: say('danger.no-hand-comes-nearer-than-150'),
    hands: 'maker',
    caution: 'narrow-strip'
  },
  {
    id: 'loose-disc',
    harm: 'injury',
    steps: ['cut-holes'],
    barrier: say('danger.the-disc-screwed-to-waste-wood'),
    proof: say('danger.it-stays-where-it-is-when'),
    hands: 'maker',
    caution: 'loose-disc'
  },
  {
    id: 'eyes-and-ears',
    harm: 'lasting-harm',
    steps: ['set-up-bench', ...saws],
    barrier: say('danger.goggles-and-muffs'),
    proof: say('danger.worn-before-the-switch'),
    hands: 'maker',
    caution: 'eyes-and-ears'
  },
  {
    id: 'mains-tools',
    harm: 'death',
    steps: ['set-up-bench'],
    barrier: say('danger.a-residual-current-device-of-30'),
    proof: say('danger.its-test-button-trips-it'),
    hands: 'maker',
    caution: 'mains-tools'
  }
]

const gluesAndPaint: readonly Hazard[] = [
  {
    id: 'solvent-fire',
    harm: 'fire',
    steps: ['colour-port', 'line-walls', 'cover'],
    barrier: say('danger.outdoors-no-flame-no-switch-no'),
    proof: say('danger.the-drying-time-of-the-can'),
    hands: 'maker',
    caution: 'solvent-vapour'
  },
  {
    id: 'solvent-breath',
    harm: 'illness',
    steps: ['colour-port', 'line-walls', 'cover'],
    barrier: say('danger.moving-air-a-mask-against-organic'),
    proof: say('danger.no-smell-inside-the-mask'),
    hands: 'maker',
    caution: 'solvent-vapour'
  },
  {
    id: 'sharp-knife',
    harm: 'injury',
    steps: ['line-walls', 'cover'],
    barrier: say('danger.a-fresh-blade-away-from-the'),
    proof: say('danger.the-blade-cuts-in-one-stroke'),
    hands: 'maker',
    caution: 'sharp-knife'
  },
  {
    id: 'acid-sealant',
    harm: 'damage',
    steps: ['seal-seams'],
    barrier: say('danger.neutral-cure-or-acrylic-sealant'),
    proof: say('danger.it-does-not-smell-of-vinegar'),
    hands: 'maker',
    caution: 'acid-sealant'
  },
  {
    id: 'vapour-and-foam',
    harm: 'damage',
    steps: ['fit-driver'],
    barrier: say('danger.drivers-go-in-when-everything-has'),
    proof: say('danger.the-box-smells-of-nothing'),
    hands: 'maker',
    caution: 'vapour-and-foam'
  }
]

const boxTests: readonly Hazard[] = [
  {
    id: 'compressed-air',
    harm: 'injury',
    steps: ['leak-test'],
    barrier: say('danger.blown-by-mouth'),
    proof: say('danger.no-compressor-in-the-room-is'),
    hands: 'maker',
    caution: 'compressed-air'
  },
  {
    id: 'strong-magnet',
    harm: 'injury',
    when: ({ driverMassKg = 0 }) => driverMassKg > safetyDefaults.strongMagnetKg.value,
    steps: ['fit-driver'],
    barrier: say('danger.set-down-face-up-on-wood'),
    proof: say('danger.the-bench-is-cleared-before-the'),
    hands: 'maker',
    caution: 'strong-magnet'
  },
  {
    id: 'single-cell',
    harm: 'damage',
    steps: ['polarity', 'cone-polarity'],
    barrier: say('danger.one-cell-of-1-5-v'),
    proof: say('danger.the-cone-jumps-and-comes-back'),
    hands: 'maker',
    basis: say('danger.derived-12-v-on-2-would')
  },
  {
    id: 'sweep-level',
    harm: 'lasting-harm',
    steps: ['listen'],
    barrier: say('danger.low-level-begun-above-the-tuning'),
    proof: say('danger.the-cone-moves-less-than-2'),
    hands: 'maker',
    caution: 'sweep-level'
  }
]

export const benchHazards: readonly Hazard[] = [...machines, ...gluesAndPaint, ...boxTests]
