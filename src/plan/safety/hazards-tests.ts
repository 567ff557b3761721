/** Dangers of switching on, testing, listening and driving. */
import { burnsFuel, type Hazard } from './hazard.ts'

const electric: readonly Hazard[] = [
  {
    id: 'fire-drill',
    harm: 'fire',
    steps: ['fuse-last', 'to-owner'],
    barrier: 'extinguisher in reach, somebody within call, way out clear',
    proof: 'everybody there knows where the main fuse is',
    hands: 'second-person',
    caution: 'fire-drill'
  },
  {
    id: 'amplifier-heat',
    harm: 'fire',
    steps: ['mount-amplifier', 'warm-check'],
    barrier: 'free air on every side, nothing over it',
    proof: 'after a quarter of an hour a hand can stay on it',
    hands: 'maker',
    caution: 'amplifier-heat'
  },
  {
    id: 'touch-voltage',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('output-touch-voltage'),
    steps: ['speakers-off', 'bridge-halves', 'clipping'],
    barrier: 'probes clipped on with the amplifier off, joints insulated',
    proof: 'no bare metal shows',
    hands: 'maker',
    caution: 'output-touch-voltage'
  },
  {
    id: 'probe-ground',
    harm: 'damage',
    steps: ['clipping'],
    barrier: 'no ground clip on a loudspeaker terminal',
    proof: 'two probes and their difference, or an instrument on batteries',
    hands: 'maker',
    caution: 'probe-ground'
  },
  {
    id: 'test-resistor',
    harm: 'injury',
    steps: ['clipping'],
    barrier: 'the resistor and the watts of the plan',
    proof: 'it is cold enough to touch after the test',
    hands: 'maker',
    basis: 'power = voltage² ÷ resistance, derived'
  },
  {
    id: 'safety-circuit-tap',
    harm: 'death',
    peculiar: true,
    when: ({ found }) => found.has('accessory-turn-on'),
    steps: ['lay-turn-on'],
    barrier: 'a fuse of its own, a circuit that the handbook frees',
    proof: 'no circuit of airbags, brakes, steering or lamps is touched',
    hands: 'maker',
    caution: 'accessory-turn-on'
  },
  {
    id: 'bridge-tied',
    harm: 'damage',
    when: ({ found, speakerLevel }) => speakerLevel && found.has('bridge-tied-source'),
    steps: ['tap-speaker-level', 'speaker-level-lead'],
    barrier: 'neither core to ground; a differential or isolated input',
    proof: 'each core is open to the body',
    hands: 'maker',
    caution: 'bridge-tied-source'
  },
  {
    id: 'meter-current',
    harm: 'injury',
    steps: ['parked-current'],
    barrier: 'a clamp meter, or millivolts across the fuse; never the current range across a battery',
    proof: 'the leads of the meter are in its voltage sockets',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'parked-drain',
    harm: 'damage',
    steps: ['parked-current'],
    barrier: 'a turn-on that goes off with the source, or a switch',
    proof: 'the reading of the step',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'radio-noise',
    harm: 'law',
    steps: ['noise'],
    barrier: 'an amplifier with the approval mark of your country',
    proof: 'radio and key work as before with music on',
    hands: 'maker',
    basis: 'UN R10 (from memory)'
  }
]

const people: readonly Hazard[] = [
  {
    id: 'exhaust',
    harm: 'death',
    when: burnsFuel,
    steps: ['running', 'speakers-off', 'plus-drop', 'noise', 'warm-check'],
    barrier: 'engine running only in the open; else a charger',
    proof: 'it stands outside before the key is turned',
    hands: 'maker',
    caution: 'engine-running'
  },
  {
    id: 'engine-parts',
    harm: 'injury',
    when: burnsFuel,
    steps: ['speakers-off', 'running', 'plus-drop', 'ground-drop'],
    barrier: 'leads, sleeves and hair away from belts and fan',
    proof: 'every lead lies outside the reach of the fan',
    hands: 'maker',
    caution: 'engine-parts'
  },
  {
    id: 'children',
    harm: 'lasting-harm',
    steps: ['start-safe'],
    barrier: 'no child and no animal in or behind the car',
    proof: 'seen before each test',
    hands: 'maker',
    basis: 'limits of noise are for adults at work: common practice, no source'
  },
  {
    id: 'hearing',
    harm: 'lasting-harm',
    peculiar: true,
    steps: ['speakers-on', 'acoustic-polarity', 'level', 'warm-check', 'plus-drop', 'ground-drop'],
    barrier: 'read from outside, ear protection, a limit of time',
    proof: 'a level meter at the seat',
    hands: 'maker',
    caution: 'hearing-exposure'
  },
  {
    id: 'hearing-extreme',
    harm: 'lasting-harm',
    peculiar: true,
    when: ({ found }) => found.has('hearing-extreme'),
    steps: ['speakers-on', 'level', 'warm-check', 'plus-drop', 'ground-drop'],
    barrier: 'nobody inside at full level',
    proof: 'doors shut, everybody out',
    hands: 'maker',
    caution: 'hearing-extreme'
  },
  {
    id: 'loose-tone',
    harm: 'damage',
    steps: ['speakers-off'],
    barrier: 'full-level tones only with the loudspeaker cable off',
    proof: 'the cable is off and insulated',
    hands: 'maker',
    basis: 'heat in a coil under a steady tone, derived'
  },
  {
    id: 'coil-smell',
    harm: 'fire',
    steps: ['warm-check'],
    barrier: 'off at the first smell of lacquer',
    proof: 'smelled at the box',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'hot-case',
    harm: 'injury',
    steps: ['warm-check'],
    barrier: 'the back of a hand, brought near first',
    proof: 'it can stay there',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'driving',
    harm: 'death',
    steps: ['first-drive'],
    barrier: 'sirens and horns heard, hands off the controls, local rules of noise',
    proof: 'a horn is heard with music on',
    hands: 'maker',
    basis: 'local law'
  },
  {
    id: 'licensed-work',
    harm: 'law',
    steps: ['read-handbook', 'to-owner'],
    barrier: 'inspection, insurer and warranty asked; licensed work left to licensed people',
    proof: 'their answers lie with the plan',
    hands: 'trained-person',
    caution: 'licensed-work'
  }
]

export const testHazards: readonly Hazard[] = [...electric, ...people]
