/** Dangers in and under the vehicle: lifting, holding, drilling, airbags, what must stay within reach. */
import { burnsFuel, type Hazard } from './hazard.ts'

const holding: readonly Hazard[] = [
  {
    id: 'lift-box',
    harm: 'injury',
    peculiar: true,
    when: ({ found }) => found.has('heavy-box'),
    steps: ['load-box'],
    barrier: 'as many people as its mass asks, a board over the sill, drivers fitted afterwards where it is heavy',
    proof: 'nobody holds it at the length of an arm',
    hands: 'several-people',
    caution: 'heavy-box'
  },
  {
    id: 'crash-hold',
    harm: 'death',
    peculiar: true,
    steps: ['mount', 'held'],
    barrier: 'bolts through load plates into body structure, or straps counted by angle and eye',
    proof: 'pushed and pulled in all directions it does not move',
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'lashing-eye',
    harm: 'death',
    steps: ['mount'],
    barrier: 'the weaker of strap and eye counts; the figure of the eye from the handbook',
    proof: 'the figure is noted before the straps are bought',
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'forbidden-anchor',
    harm: 'death',
    steps: ['mount', 'make-ground'],
    barrier: 'no bolt and no ring of a seat, a belt or a child seat',
    proof: 'each of them is as the maker left it',
    hands: 'maker',
    caution: 'box-restraint'
  },
  {
    id: 'seat-back',
    harm: 'death',
    steps: ['mount'],
    barrier: 'the seat back locked; leaning on it holds nothing',
    proof: 'the red mark of its latch is hidden',
    hands: 'maker',
    basis: 'UN R17, Annex 9: seat backs are tested with two blocks of 18 kg (from memory)'
  },
  {
    id: 'amplifier-hold',
    harm: 'death',
    steps: ['mount-amplifier', 'mount-second', 'mount-capacitor', 'held'],
    barrier: 'through-bolts and washers into what is bolted to the body',
    proof: 'it cannot be moved by hand',
    hands: 'maker',
    caution: 'amplifier-restraint'
  },
  {
    id: 'boot-access',
    harm: 'death',
    steps: ['empty-boot', 'load-box', 'held'],
    barrier: 'release of the tailgate, vents, hatches, spare wheel, jack, towing eye and rear view stay free',
    proof: 'each line of the list from the empty boot still holds',
    hands: 'maker',
    basis: 'common practice, no source'
  }
]

const bodyWork: readonly Hazard[] = [
  {
    id: 'blind-drilling',
    harm: 'death',
    steps: ['pass-bulkhead', 'mount-amplifier', 'mount-second', 'mount'],
    barrier: 'seen from both sides, a depth stop on the drill',
    proof: 'the free depth behind each mark is noted',
    hands: 'maker',
    caution: 'blind-drilling'
  },
  {
    id: 'fuel-vapour',
    harm: 'fire',
    when: burnsFuel,
    steps: ['pass-bulkhead', 'mount-amplifier', 'mount'],
    barrier: 'no drilling near tank, filler, hoses and vents; gas tanks left to their workshop',
    proof: 'no smell of fuel',
    hands: 'maker',
    caution: 'fuel-vapour'
  },
  {
    id: 'under-car',
    harm: 'death',
    steps: ['mount'],
    barrier: 'ramps or stands on level ground, wheels chocked, somebody within call',
    proof: 'shaken by hand it does not move',
    hands: 'second-person',
    caution: 'under-car'
  },
  {
    id: 'airbag-loom',
    harm: 'death',
    steps: ['battery-off', 'open-trim', 'lay-power-cable', 'lay-signal', 'tap-speaker-level', 'trim-back'],
    barrier: 'battery off, the wait of the handbook, yellow connectors stay closed',
    proof: 'the lamp of the airbags goes out as before',
    hands: 'trained-person',
    caution: 'airbag-looms'
  },
  {
    id: 'airbag-path',
    harm: 'death',
    steps: ['lay-power-cable', 'mount-amplifier', 'mount', 'trim-back'],
    barrier: 'nothing before or on the covers of side and curtain airbags',
    proof: 'each cover of an airbag opens freely',
    hands: 'maker',
    caution: 'airbag-path'
  },
  {
    id: 'seat-plug',
    harm: 'death',
    steps: ['mount-amplifier'],
    barrier: 'no amplifier under a seat whose plug would have to be opened; else a workshop takes the seat out',
    proof: 'no plug of a seat was opened',
    hands: 'trained-person',
    basis: 'common practice, no source'
  },
  {
    id: 'rolling-away',
    harm: 'injury',
    steps: ['park-safe'],
    barrier: 'level ground, parking brake, chocks',
    proof: 'pushed by hand it does not move',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'locked-out',
    harm: 'damage',
    steps: ['park-safe'],
    barrier: 'tailgate and a window stay open, key outside',
    proof: 'the boot can be reached without a key',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'water',
    harm: 'damage',
    steps: ['mount-amplifier'],
    barrier: 'off the lowest point of the boot, drains open',
    proof: 'the place is dry after rain',
    hands: 'maker',
    basis: 'common practice, no source'
  },
  {
    id: 'untold-vehicle',
    harm: 'death',
    steps: ['read-handbook'],
    barrier: 'gas tank, mains on board, battery sensor, 48 V or second battery looked for before anything is opened',
    proof: 'what was found stands in the plan or a workshop is asked',
    hands: 'maker',
    basis: 'vehicle maker’s handbook'
  }
]

export const vehicleHazards: readonly Hazard[] = [...holding, ...bodyWork]
