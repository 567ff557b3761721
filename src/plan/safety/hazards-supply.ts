/** Dangers of batteries, cables, fuses and joints. */
import type { Hazard } from './hazard.ts'

const batteries: readonly Hazard[] = [
  {
    id: 'battery-short',
    harm: 'fire',
    steps: ['battery-off', 'fit-fuse-holder', 'battery-on'],
    barrier: 'negative terminal off first and on last, insulated tools, rings off',
    proof: 'the terminal cannot touch its post',
    hands: 'maker',
    caution: 'battery-disconnect'
  },
  {
    id: 'battery-gas',
    harm: 'injury',
    steps: ['mount-second', 'battery-on'],
    barrier: 'goggles, no sparks, moving air; a charger is switched off before its clamps move',
    proof: 'goggles worn before the terminal is touched',
    hands: 'maker',
    caution: 'battery-gas'
  },
  {
    id: 'memories',
    harm: 'damage',
    steps: ['read-handbook', 'battery-off'],
    barrier: 'radio code and what must be taught again noted before',
    proof: 'windows stop at their ends, the radio plays',
    hands: 'maker',
    basis: 'vehicle maker’s handbook'
  },
  {
    id: 'second-source',
    harm: 'fire',
    peculiar: true,
    when: ({ secondBattery }) => secondBattery,
    steps: ['mount-second'],
    barrier: 'a fuse at each end of the link, both negative terminals off before work, held down, vented outside',
    proof: '0 V on every positive lead before work; pulled with twice its weight it moves less than 25 mm',
    hands: 'maker',
    caution: 'second-battery'
  },
  {
    id: 'unlike-batteries',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('unlike-batteries-parallel'),
    steps: ['mount-second'],
    barrier: 'a charging converter between, or batteries of one chemistry',
    proof: 'the labels of both',
    hands: 'maker',
    caution: 'unlike-batteries-parallel'
  },
  {
    id: 'lithium',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('lithium-battery'),
    steps: ['mount-second', 'fit-fuse-holder', 'battery-on'],
    barrier: 'its own management, the charger and the fuse its maker asks, no charge below 0 °C',
    proof: 'the label of the battery',
    hands: 'maker',
    caution: 'lithium-battery'
  },
  {
    id: 'capacitor-charge',
    harm: 'fire',
    peculiar: true,
    steps: ['precharge'],
    barrier: 'charged through the resistor of the plan',
    proof: 'less than 1 V across the resistor before the fuse',
    hands: 'maker',
    caution: 'capacitor-charge'
  },
  {
    id: 'capacitor-discharge',
    harm: 'injury',
    steps: ['discharge'],
    barrier: 'discharged through the same resistor before work',
    proof: 'less than 1 V across it',
    hands: 'maker',
    caution: 'capacitor-discharge'
  },
  {
    id: 'forty-eight',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('forty-eight-volt'),
    steps: ['battery-off', 'fit-fuse-holder'],
    barrier: 'fuses of 58 V or more, covered terminals, the maker’s return',
    proof: 'the marking on the fuse',
    hands: 'trained-person',
    caution: 'forty-eight-volt'
  },
  {
    id: 'high-voltage',
    harm: 'death',
    peculiar: true,
    when: ({ drive }) => drive === 'hybrid' || drive === 'electric',
    steps: ['drive-off', 'open-trim', 'pass-bulkhead', 'mount'],
    barrier: 'a person trained on this vehicle makes it safe before work near orange parts',
    proof: 'the name of that person on the plan',
    hands: 'trained-person',
    caution: 'high-voltage-orange'
  },
  {
    id: 'ready-mode',
    harm: 'injury',
    when: ({ drive }) => drive === 'hybrid' || drive === 'electric',
    steps: ['drive-off', 'speakers-off', 'noise'],
    barrier: 'ready mode off and the key away for work; P, parking brake and nobody in front or behind for tests',
    proof: 'no ready light',
    hands: 'maker',
    caution: 'ready-mode'
  }
]

const cables: readonly Hazard[] = [
  {
    id: 'cable-chafe',
    harm: 'fire',
    steps: ['pass-bulkhead', 'lay-power-cable', 'cable-seen'],
    barrier: 'a grommet at each edge of metal, clips along the way',
    proof: 'no bare metal touches the cable',
    hands: 'maker',
    caution: 'bulkhead-grommet'
  },
  {
    id: 'pedals',
    harm: 'death',
    steps: ['survey-route', 'lay-power-cable', 'cable-seen'],
    barrier: 'no cable near pedals, steering and seat rails',
    proof: 'pedals and seats go their whole way and move no cable',
    hands: 'maker',
    caution: 'cable-routing'
  },
  {
    id: 'fuse-at-source',
    harm: 'fire',
    steps: ['fit-fuse-holder'],
    barrier: 'the fuse within the distance of the plan',
    proof: 'measured along the cable',
    hands: 'maker',
    basis: '33 CFR 183.455 (read, boats); the longer usual limit is common practice'
  },
  {
    id: 'fuse-last',
    harm: 'fire',
    steps: ['fit-fuse-holder', 'connect-amplifier', 'fuse-last'],
    barrier: 'every fuse out until the test for a short is passed',
    proof: 'a reading beyond 1 kΩ',
    hands: 'maker',
    caution: 'fuse-last'
  },
  {
    id: 'breaking-capacity',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('breaking-capacity'),
    steps: ['fuse-last'],
    barrier: 'a fuse that breaks what the battery can give',
    proof: 'the marking on the fuse',
    hands: 'maker',
    caution: 'breaking-capacity'
  },
  {
    id: 'wrong-spare',
    harm: 'fire',
    steps: ['label', 'to-owner'],
    barrier: 'spares of the same rating only',
    proof: 'the rating stands beside the holder',
    hands: 'maker',
    basis: 'the fuse protects the cable: derived'
  },
  {
    id: 'hot-joint',
    harm: 'fire',
    steps: ['crimp-lugs', 'connect-amplifier', 'warm-check', 'first-drive'],
    barrier: 'the die of the size, pull test, torque',
    proof: 'nothing moves under the pull of both hands; a joint is no warmer than its cable',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'aluminium-joint',
    harm: 'fire',
    peculiar: true,
    when: ({ conductor = 'copper' }) => conductor !== 'copper' && conductor !== 'unknown',
    steps: ['crimp-lugs'],
    barrier: 'lugs for aluminium, with their paste',
    proof: 'the mark on the lug',
    hands: 'maker',
    caution: 'aluminium-joint'
  },
  {
    id: 'body-no-return',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('chassis-no-return'),
    steps: ['make-ground'],
    barrier: 'a return cable of the size of the positive one',
    proof: 'the plan asked for again with it',
    hands: 'maker',
    caution: 'chassis-no-return'
  },
  {
    id: 'voltage-class',
    harm: 'fire',
    peculiar: true,
    when: ({ found }) => found.has('amplifier-voltage-class'),
    steps: ['check-parts', 'connect-amplifier'],
    barrier: 'an amplifier of the class of the vehicle, or a converter between',
    proof: 'the label of the amplifier',
    hands: 'maker',
    caution: 'amplifier-voltage-class'
  },
  {
    id: 'sensor-past',
    harm: 'damage',
    steps: ['lay-return', 'make-ground'],
    barrier: 'every ground on the body side of a battery sensor',
    proof: 'nothing but the sensor is on the negative post',
    hands: 'maker',
    basis: 'vehicle maker’s handbook'
  },
  {
    id: 'hot-air',
    harm: 'fire',
    steps: ['crimp-lugs', 'tap-speaker-level'],
    barrier: 'no hot air and no flame at battery, fuel and adhesive',
    proof: 'nothing near smells warm',
    hands: 'maker',
    caution: 'hot-air'
  }
]

export const supplyHazards: readonly Hazard[] = [...batteries, ...cables]
