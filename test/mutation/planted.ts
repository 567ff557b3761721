/**
 * Faults that once lived, or would hurt, each put to the tests that should catch it: `npx tsx test/mutation/planted.ts` prints
 * the catcher of each and fails where one lives. A fault whose place is gone must be rewritten, not dropped.
 */
import { readdirSync } from 'node:fs'
import { bench, isQuick } from './bench.ts'
import { type Fault, joins } from './planted-joins.ts'
import { pairFaults } from './planted-pairs.ts'
import { planFaults } from './planted-plan.ts'
import { readerFaults } from './planted-readers.ts'
import { sourceOf } from './rooms.ts'

const small = /small-terms/
const box = /small-terms|domain\/box\/(?!mesh)/
const supply = /small-terms|domain\/(fuse|cable|supply|circuit)\/(?!solve-points|feeder-simulator)/
const enclosure = /domain\/enclosure\/(large|limit|coil|size|closed|vented)/

/** The twenty of the review as far as it names them, the first ten of which lived. */
const review: readonly Fault[] = [
  [
    'balance of a driver',
    'domain/box/layout/box-mass',
    'DRIVER_BALANCE_SHARE = 0.7',
    'DRIVER_BALANCE_SHARE = 0.4',
    small
  ],
  ['half the lean of a seat', 'domain/box/boot/boot-ranges', '* Math.PI) / 180)', '* Math.PI) / 360)', box],
  ['ring round a vent', 'domain/box/solids/clearances', 'ventDiameterM / 4', 'ventDiameterM / 2', box],
  [
    'three cones for a radiator',
    'domain/port/sizing/ways-out',
    'radiatorAreaM2 = 2 *',
    'radiatorAreaM2 = 3 *',
    /small-terms|domain\/port/
  ],
  ['limits of fs/Qes', 'domain/driver/sheet/defaults', 'value: [50, 100]', 'value: [70, 100]', small],
  [
    'one board at a small box',
    'domain/box/boot/size-limits',
    '2 * t + Math.max(LEAST_INSIDE_M, front',
    't + Math.max(LEAST_INSIDE_M, front',
    box
  ],
  [
    'heavy surplus without the car',
    'domain/circuit/source/charging-balance',
    'idle - baseLoadA - heavyA',
    'idle - heavyA',
    supply
  ],
  [
    'PVC taken for XLPE',
    'domain/circuit/cable/insulation-material',
    "material === 'pvc' || material",
    'insulationC < 90 || material',
    supply
  ],
  [
    'contact shared by the runs',
    'domain/circuit/choice/parallel-runs',
    'task.contactOhm * runs',
    'task.contactOhm',
    supply
  ],
  [
    'standing wave nearer the band',
    'domain/box/stiffness/standing-waves',
    'LEAST_RATIO = 2.5',
    'LEAST_RATIO = 1.5',
    box
  ],
  [
    'hole of a driver not taken off',
    'domain/box/solids/driver-displacement',
    'dm * dm * hm - hole',
    'dm * dm * hm',
    box
  ],
  ['air load of one side', 'domain/driver/sheet/air-load', '(8 / 3)', '(4 / 3)', /domain\/driver/],
  ['A weighting', 'domain/cabin/exposure', 'F4 = 12194.217', 'F4 = 10194.217', /domain\/cabin/],
  [
    'protection above Xmax',
    'domain/enclosure/limits/protection',
    'as number) / xmaxM) ** 2',
    'as number) / (1.2 * xmaxM)) ** 2',
    enclosure
  ],
  [
    'a stronger cable that carries less',
    'domain/circuit/fuse/stronger-cable',
    'ampacityA >= loadA',
    'ampacityA >= 0.9 * loadA',
    supply
  ],
  ['stop at three times Xmax', 'domain/enclosure/answer/cautions', 'DESTRUCTIVE = 2', 'DESTRUCTIVE = 3', enclosure],
  [
    'efficiency bandwidth upside down',
    'domain/driver/complete-driver-parameters',
    'driver.fsHz / driver.qes',
    'driver.fsHz * driver.qes',
    /domain\/driver/
  ]
]

const ours: readonly Fault[] = [
  ['fuse at the full load', 'domain/circuit/fuse/defaults', 'value: 0.75', 'value: 0.95', supply],
  ['150 % at 58 V', 'domain/circuit/fuse/defaults', 'value: 50,', 'value: 75,', supply],
  ['selectivity at par', 'domain/circuit/fuse/defaults', 'value: 1.6,', 'value: 1.1,', supply],
  ['a fault of half the clearing', 'domain/circuit/fuse/defaults', 'value: 3,', 'value: 1.5,', supply],
  ['a fuse half a metre off', 'domain/circuit/fuse/defaults', 'value: 0.45,', 'value: 0.9,', supply],
  ['sheathed two metres', 'domain/circuit/fuse/defaults', 'value: 1.016,', 'value: 2,', supply],
  ['a battery too weak to blow', 'domain/circuit/fuse/defaults', 'value: 0.003', 'value: 0.03', supply],
  ['a fuse without drop', 'domain/circuit/fuse/defaults', 'value: 0.09,', 'value: 0.009,', supply],
  ['a cold engine bay', 'domain/circuit/cable/defaults', 'value: 70', 'value: 40', supply],
  ['insulation of a better class', 'domain/circuit/cable/defaults', 'value: 80,', 'value: 105,', supply],
  [
    'contacts counted twice',
    'domain/circuit/choice/parallel-runs',
    'task.contactOhm * runs',
    'task.contactOhm * runs * runs',
    supply
  ],
  [
    'forbidden loads before usable',
    'domain/amplifier/rank-options',
    'usable(a) - usable(b)',
    'usable(b) - usable(a)',
    /domain\/amplifier/
  ],
  [
    'dear before cheap',
    'domain/amplifier/rank-options',
    '(a.price ?? 0) - (b.price ?? 0)',
    '(b.price ?? 0) - (a.price ?? 0)',
    /domain\/amplifier/
  ],
  [
    'more outputs before fewer',
    'domain/amplifier/rank-options',
    'a.outputs - b.outputs',
    'b.outputs - a.outputs',
    /domain\/amplifier/
  ],
  ['metres of section', 'domain/circuit/cable/short-circuit', 'k * areaM2 * 1e6', 'k * areaM2 * 1e5', supply],
  [
    'rubber of 220 °C at any class',
    'domain/circuit/cable/insulation-material',
    'insulationC < 85 ? 200',
    'insulationC < 85 ? 220',
    supply
  ],
  ['one covering of two', 'domain/box/boot/size-limits', 'limit - 2 *', 'limit - 1 *', box],
  [
    'slope of the back board',
    'domain/box/boot/size-limits',
    '1 / Math.cos(theta) - 1',
    '1 / Math.cos(theta) - 0.5',
    box
  ],
  [
    'lower cruise current',
    'domain/circuit/source/charging-balance',
    'cruise - baseLoadA - heavyA',
    'cruise - heavyA',
    supply
  ],
  ['alike sizes', 'domain/box/stiffness/standing-waves', 'LEAST_DIFFERENCE = 0.1', 'LEAST_DIFFERENCE = 0.2', box]
]

const lists = { review, ours, joins, pairs: pairFaults, plan: planFaults, readers: readerFaults }
const asked = Object.values(lists).flat()
const lost = asked.filter(([, room, was]) => sourceOf(`src/${room}.ts`).split(was).length !== 2)
if (lost.length > 0)
  throw new Error(`without their place: ${lost.map(([what, room]) => `${what} in ${room}`).join('; ')}`)
const { failing } = bench()
const files = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .filter(name => name.endsWith('.test.ts'))
  .map(name => `test/${name}`)
  .filter(isQuick)
const askedBy = (tests: RegExp) => files.filter(file => tests.test(file)).map(file => ({ file }))
const sound = await failing(
  files.filter(file => asked.some(([, , , , tests]) => tests.test(file))).map(file => ({ file }))
)
if (sound !== undefined) throw new Error(`fails without a fault: ${sound}`)
let living = 0
for (const [name, list] of Object.entries(lists))
  for (const [what, room, was, now, tests] of list) {
    const file = `src/${room}.ts`
    const by = await failing(
      askedBy(tests),
      file,
      sourceOf(file).replace(was, () => now)
    )
    if (by === undefined) living++
    console.log(`${name} | ${what} | ${by ?? 'LIVES'}`)
  }
console.log(`${asked.length} faults, ${living} live`)
process.exitCode = living === 0 ? 0 : 1
