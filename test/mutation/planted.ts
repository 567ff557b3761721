/**
 * Faults that once lived, or would hurt, each put to the tests that should catch it: `npx tsx test/mutation/planted.ts` prints
 * the catcher of each and fails where one lives. A fault whose place is gone must be rewritten, not dropped.
 */
import { inner } from '../inner-files.ts'
import { bench } from './bench.ts'
import { sourceOf } from './rooms.ts'

type Fault = readonly [what: string, file: string, was: string, now: string, tests: RegExp]

const small = /small-terms/
const box = /small-terms|domain\/box\/(?!mesh)/
const supply = /small-terms|domain\/(fuse|cable|supply|circuit)\/(?!solve-points|feeder-simulator)/
const enclosure = /domain\/enclosure\/(large|limit|coil|size|closed|vented)/

/** The twenty of the review as far as it names them, the first ten of which lived. */
const review: readonly Fault[] = [
  ['balance of a driver', 'box/layout/box-mass', 'DRIVER_BALANCE_SHARE = 0.7', 'DRIVER_BALANCE_SHARE = 0.4', small],
  ['half the lean of a seat', 'box/boot/boot-ranges', '* Math.PI) / 180)', '* Math.PI) / 360)', box],
  ['ring round a vent', 'box/solids/clearances', 'ventDiameterM / 4', 'ventDiameterM / 2', box],
  [
    'three cones for a radiator',
    'port/sizing/ways-out',
    'radiatorAreaM2 = 2 *',
    'radiatorAreaM2 = 3 *',
    /small-terms|domain\/port/
  ],
  ['limits of fs/Qes', 'driver/sheet/defaults', 'value: [50, 100]', 'value: [70, 100]', small],
  [
    'one board at a small box',
    'box/boot/size-limits',
    '2 * t + Math.max(LEAST_INSIDE_M, front',
    't + Math.max(LEAST_INSIDE_M, front',
    box
  ],
  [
    'heavy surplus without the car',
    'circuit/source/charging-balance',
    'idle - baseLoadA - heavyA',
    'idle - heavyA',
    supply
  ],
  [
    'PVC taken for XLPE',
    'circuit/cable/insulation-material',
    "material === 'pvc' || material",
    'insulationC < 90 || material',
    supply
  ],
  ['contact shared by the runs', 'circuit/choice/parallel-runs', 'task.contactOhm * runs', 'task.contactOhm', supply],
  ['standing wave nearer the band', 'box/stiffness/standing-waves', 'LEAST_RATIO = 2.5', 'LEAST_RATIO = 1.5', box],
  ['hole of a driver not taken off', 'box/solids/driver-displacement', 'dm * dm * hm - hole', 'dm * dm * hm', box],
  ['air load of one side', 'driver/sheet/air-load', '(8 / 3)', '(4 / 3)', /domain\/driver/],
  ['A weighting', 'cabin/exposure', 'F4 = 12194.217', 'F4 = 10194.217', /domain\/cabin/],
  [
    'protection above Xmax',
    'enclosure/limits/protection',
    'as number) / xmaxM) ** 2',
    'as number) / (1.2 * xmaxM)) ** 2',
    enclosure
  ],
  [
    'a stronger cable that carries less',
    'circuit/fuse/stronger-cable',
    'ampacityA >= loadA',
    'ampacityA >= 0.9 * loadA',
    supply
  ],
  ['stop at three times Xmax', 'enclosure/answer/cautions', 'DESTRUCTIVE = 2', 'DESTRUCTIVE = 3', enclosure],
  [
    'efficiency bandwidth upside down',
    'driver/complete-driver-parameters',
    'driver.fsHz / driver.qes',
    'driver.fsHz * driver.qes',
    /domain\/driver/
  ]
]

const ours: readonly Fault[] = [
  ['fuse at the full load', 'circuit/fuse/fuse-judgement', 'value: 0.75', 'value: 0.95', supply],
  ['150 % at 58 V', 'circuit/fuse/fuse-judgement', 'cfrPolicyBelowV: 50', 'cfrPolicyBelowV: 75', supply],
  ['selectivity at par', 'circuit/fuse/fuse-judgement', 'selectivityRatio: 1.6', 'selectivityRatio: 1.1', supply],
  [
    'a fault of half the clearing',
    'circuit/fuse/fuse-judgement',
    'clearingMultiple: 3',
    'clearingMultiple: 1.5',
    supply
  ],
  ['a fuse half a metre off', 'circuit/fuse/fuse-judgement', 'usualM: 0.45', 'usualM: 0.9', supply],
  ['sheathed two metres', 'circuit/fuse/fuse-judgement', 'sheathedM: 1.016', 'sheathedM: 2', supply],
  ['a battery too weak to blow', 'circuit/fuse/fuse-judgement', 'value: 0.003', 'value: 0.03', supply],
  ['a fuse without drop', 'circuit/fuse/fuse-judgement', 'fuseDropV: 0.09', 'fuseDropV: 0.009', supply],
  ['a cold engine bay', 'circuit/cable/cable-judgement', 'value: 70', 'value: 40', supply],
  ['insulation of a better class', 'circuit/cable/cable-judgement', 'value: 80,', 'value: 105,', supply],
  [
    'contacts counted twice',
    'circuit/choice/parallel-runs',
    'task.contactOhm * runs',
    'task.contactOhm * runs * runs',
    supply
  ],
  [
    'forbidden loads before usable',
    'amplifier/rank-options',
    'usable(a) - usable(b)',
    'usable(b) - usable(a)',
    /domain\/amplifier/
  ],
  [
    'dear before cheap',
    'amplifier/rank-options',
    '(a.price ?? 0) - (b.price ?? 0)',
    '(b.price ?? 0) - (a.price ?? 0)',
    /domain\/amplifier/
  ],
  [
    'more outputs before fewer',
    'amplifier/rank-options',
    'a.outputs - b.outputs',
    'b.outputs - a.outputs',
    /domain\/amplifier/
  ],
  ['metres of section', 'circuit/cable/short-circuit', 'k * areaM2 * 1e6', 'k * areaM2 * 1e5', supply],
  [
    'rubber of 220 °C at any class',
    'circuit/cable/insulation-material',
    'insulationC < 85 ? 200',
    'insulationC < 85 ? 220',
    supply
  ],
  ['one covering of two', 'box/boot/size-limits', 'limit - 2 *', 'limit - 1 *', box],
  ['slope of the back board', 'box/boot/size-limits', '1 / Math.cos(theta) - 1', '1 / Math.cos(theta) - 0.5', box],
  ['lower cruise current', 'circuit/source/charging-balance', 'cruise - baseLoadA - heavyA', 'cruise - heavyA', supply],
  ['alike sizes', 'box/stiffness/standing-waves', 'LEAST_DIFFERENCE = 0.1', 'LEAST_DIFFERENCE = 0.2', box]
]

const faults = await bench()
const sound = await faults.failing(inner.filter(test => [box, supply, enclosure].some(each => each.test(test))))
if (sound !== undefined) throw new Error(`fails without a fault: ${sound}`)
let living = 0
for (const [list, name] of [
  [review, 'review'],
  [ours, 'ours']
] as const)
  for (const [what, room, was, now, tests] of list) {
    const file = `src/domain/${room}.ts`
    const text = sourceOf(file)
    if (text.split(was).length !== 2) throw new Error(`${what}: "${was}" does not stand once in ${file}`)
    const by = await faults.failing(
      inner.filter(test => tests.test(test)),
      file,
      text.replace(was, () => now)
    )
    if (by === undefined) living++
    console.log(`${name} | ${what} | ${by ?? 'LIVES'}`)
  }
await faults.close()
process.exitCode = living === 0 ? 0 : 1
