/** Dangers in and under the vehicle: lifting, holding, drilling, airbags, what must stay within reach. */

import { say } from '../../domain/say.ts'
import { burnsFuel, type Hazard } from './hazard.ts'

const holding: readonly Hazard[] = [
  {
    id: 'lift-box',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('heavy-box'),
    steps: ['load-box'],
    barrier: say('danger.as-many-people-as-its-mass'),
    proof: say('danger.nobody-holds-it-at-the-length'),
    hands: 'several-people',
    caution: 'heavy-box'
  },
  {
    id: 'crash-hold',
    harm: 'death',
    peculiar: true,
    steps: ['mount', 'held'],
    barrier: say('danger.bolts-through-load-plates-into-body'),
    proof: say('danger.pushed-and-pulled-in-all-directions'),
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'lashing-eye',
    harm: 'death',
    steps: ['mount'],
    barrier: say('danger.the-weaker-of-strap-and-eye'),
    proof: say('danger.the-figure-is-noted-before-the'),
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'forbidden-anchor',
    harm: 'death',
    steps: ['mount'],
    barrier: say('danger.no-bolt-and-no-ring-of'),
    proof: say('danger.each-of-them-is-as-the'),
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'forbidden-ground-bolt',
    harm: 'death',
    steps: ['make-ground'],
    barrier: say('danger.no-bolt-and-no-ring-of'),
    proof: say('danger.each-of-them-is-as-the'),
    hands: 'maker',
    basis: say('danger.vehicle-maker-s-handbook')
  },
  {
    id: 'seat-back',
    harm: 'death',
    steps: ['mount'],
    barrier: say('danger.the-seat-back-locked-leaning-on'),
    proof: say('danger.the-red-mark-of-its-latch'),
    hands: 'maker',
    basis: say('danger.un-r17-annex-9-seat-backs')
  },
  {
    id: 'amplifier-hold',
    harm: 'death',
    steps: ['mount-amplifier', 'mount-second', 'mount-capacitor', 'held'],
    barrier: say('danger.through-bolts-and-washers-into-what'),
    proof: say('danger.it-cannot-be-moved-by-hand'),
    hands: 'maker',
    caution: 'amplifier-restraint'
  },
  {
    id: 'boot-access',
    harm: 'death',
    steps: ['empty-boot', 'load-box', 'held'],
    barrier: say('danger.release-of-the-tailgate-vents-hatches'),
    proof: say('danger.each-line-of-the-list-from'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  }
]

const bodyWork: readonly Hazard[] = [
  {
    id: 'blind-drilling',
    harm: 'death',
    steps: ['pass-bulkhead', 'mount-amplifier', 'mount-second', 'mount'],
    barrier: say('danger.seen-from-both-sides-a-depth'),
    proof: say('danger.the-free-depth-behind-each-mark'),
    hands: 'maker',
    caution: 'blind-drilling'
  },
  {
    id: 'fuel-vapour',
    harm: 'fire',
    when: burnsFuel,
    steps: ['pass-bulkhead', 'mount-amplifier', 'mount'],
    barrier: say('danger.no-drilling-near-tank-filler-hoses'),
    proof: say('danger.no-smell-of-fuel'),
    hands: 'maker',
    caution: 'fuel-vapour'
  },
  {
    id: 'under-car',
    harm: 'death',
    steps: ['mount'],
    barrier: say('danger.ramps-or-stands-on-level-ground'),
    proof: say('danger.shaken-by-hand-it-does-not'),
    hands: 'second-person',
    caution: 'under-car'
  },
  {
    id: 'airbag-loom',
    harm: 'death',
    steps: ['battery-off', 'open-trim', 'lay-power-cable', 'lay-signal', 'tap-speaker-level', 'trim-back'],
    barrier: say('danger.battery-off-the-wait-of-the'),
    proof: say('danger.the-lamp-of-the-airbags-goes'),
    hands: 'trained-person',
    caution: 'airbag-looms'
  },
  {
    id: 'airbag-path',
    harm: 'death',
    steps: ['lay-power-cable', 'mount-amplifier', 'mount', 'trim-back'],
    barrier: say('danger.nothing-before-or-on-the-covers'),
    proof: say('danger.each-cover-of-an-airbag-opens'),
    hands: 'maker',
    caution: 'airbag-path'
  },
  {
    id: 'seat-plug',
    harm: 'death',
    steps: ['mount-amplifier'],
    barrier: say('danger.no-amplifier-under-a-seat-whose'),
    proof: say('danger.no-plug-of-a-seat-was'),
    hands: 'trained-person',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'rolling-away',
    harm: 'injury',
    steps: ['park-safe'],
    barrier: say('danger.level-ground-parking-brake-chocks'),
    proof: say('danger.pushed-by-hand-it-does-not'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'locked-out',
    harm: 'damage',
    steps: ['park-safe'],
    barrier: say('danger.tailgate-and-a-window-stay-open'),
    proof: say('danger.the-boot-can-be-reached-without'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'water',
    harm: 'damage',
    steps: ['mount-amplifier'],
    barrier: say('danger.off-the-lowest-point-of-the'),
    proof: say('danger.the-place-is-dry-after-rain'),
    hands: 'maker',
    basis: say('danger.common-practice-no-source')
  },
  {
    id: 'untold-vehicle',
    harm: 'death',
    steps: ['read-handbook'],
    barrier: say('danger.gas-tank-mains-on-board-battery'),
    proof: say('danger.what-was-found-stands-in-the'),
    hands: 'maker',
    basis: say('danger.vehicle-maker-s-handbook')
  }
]

export const vehicleHazards: readonly Hazard[] = [...holding, ...bodyWork]
