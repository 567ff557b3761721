/** Dangers of wood, glue and paint, and of a driver on the bench. */
import type { Hazard } from './hazard.ts'

/** Above this the magnet of a driver crushes fingers [kg]. Ours. */
const STRONG_MAGNET_KG = 4

const saws = ['cut-panels', 'saw-bevels', 'cut-holes', 'braces']

const machines: readonly Hazard[] = [
  {
    id: 'wood-dust',
    harm: 'illness',
    steps: ['set-up-bench', ...saws, 'sand'],
    barrier: 'extraction at the tool, a P3 (P100) mask, outdoors where it can be',
    proof: 'no dust shows in the beam of a torch beside the mask',
    hands: 'maker',
    caution: 'wood-dust'
  },
  {
    id: 'turning-blade',
    harm: 'injury',
    steps: saws,
    barrier: 'board and rail clamped, both hands on the tool, plug out for every change',
    proof: 'nothing has to be held by hand near the blade',
    hands: 'maker',
    caution: 'turning-blade'
  },
  {
    id: 'narrow-strip',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('narrow-strip'),
    steps: ['cut-panels'],
    barrier: 'a push stick, or the strip sawn from a wider piece under a clamped rail',
    proof: 'no hand comes nearer than 150 mm to the blade',
    hands: 'maker',
    caution: 'narrow-strip'
  },
  {
    id: 'loose-disc',
    harm: 'injury',
    steps: ['cut-holes'],
    barrier: 'the disc screwed to waste wood',
    proof: 'it stays where it is when the last web goes',
    hands: 'maker',
    caution: 'loose-disc'
  },
  {
    id: 'eyes-and-ears',
    harm: 'lasting-harm',
    steps: ['set-up-bench', ...saws],
    barrier: 'goggles and muffs',
    proof: 'worn before the switch',
    hands: 'maker',
    caution: 'eyes-and-ears'
  },
  {
    id: 'mains-tools',
    harm: 'death',
    steps: ['set-up-bench'],
    barrier: 'a residual current device of 30 mA',
    proof: 'its test button trips it',
    hands: 'maker',
    caution: 'mains-tools'
  }
]

const gluesAndPaint: readonly Hazard[] = [
  {
    id: 'solvent-fire',
    harm: 'fire',
    steps: ['colour-port', 'line-walls', 'cover'],
    barrier: 'outdoors, no flame, no switch, no amplifier that is on',
    proof: 'the drying time of the can has passed before anything is closed',
    hands: 'maker',
    caution: 'solvent-vapour'
  },
  {
    id: 'solvent-breath',
    harm: 'illness',
    steps: ['colour-port', 'line-walls', 'cover'],
    barrier: 'moving air, a mask against organic vapour',
    proof: 'no smell inside the mask',
    hands: 'maker',
    caution: 'solvent-vapour'
  },
  {
    id: 'sharp-knife',
    harm: 'injury',
    steps: ['line-walls', 'cover'],
    barrier: 'a fresh blade, away from the hand, on a board',
    proof: 'the blade cuts in one stroke',
    hands: 'maker',
    caution: 'sharp-knife'
  },
  {
    id: 'acid-sealant',
    harm: 'damage',
    steps: ['seal-seams'],
    barrier: 'neutral-cure or acrylic sealant',
    proof: 'it does not smell of vinegar',
    hands: 'maker',
    caution: 'acid-sealant'
  },
  {
    id: 'vapour-and-foam',
    harm: 'damage',
    steps: ['fit-driver'],
    barrier: 'drivers go in when everything has cured',
    proof: 'the box smells of nothing',
    hands: 'maker',
    caution: 'vapour-and-foam'
  }
]

const boxTests: readonly Hazard[] = [
  {
    id: 'compressed-air',
    harm: 'injury',
    steps: ['leak-test'],
    barrier: 'blown by mouth',
    proof: 'no compressor in the room is connected',
    hands: 'maker',
    caution: 'compressed-air'
  },
  {
    id: 'strong-magnet',
    harm: 'injury',
    when: ({ driverMassKg = 0 }) => driverMassKg > STRONG_MAGNET_KG,
    steps: ['fit-driver'],
    barrier: 'set down face up on wood, no steel within reach, nobody with a pacemaker near',
    proof: 'the bench is cleared before the box of the driver is opened',
    hands: 'maker',
    caution: 'strong-magnet'
  },
  {
    id: 'single-cell',
    harm: 'damage',
    steps: ['polarity', 'cone-polarity'],
    barrier: 'one cell of 1.5 V, for an instant',
    proof: 'the cone jumps and comes back',
    hands: 'maker',
    basis: 'derived: 12 V on 2 Ω would be 72 W of direct current'
  },
  {
    id: 'sweep-level',
    harm: 'lasting-harm',
    steps: ['listen'],
    barrier: 'low level, begun above the tuning',
    proof: 'the cone moves less than 2 mm',
    hands: 'maker',
    caution: 'sweep-level'
  }
]

export const benchHazards: readonly Hazard[] = [...machines, ...gluesAndPaint, ...boxTests]
