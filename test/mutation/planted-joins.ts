/** Faults where two rooms meet: what is computed in one and bought, drawn, read or said in another. */

export type Fault = readonly [what: string, file: string, was: string, now: string, tests: RegExp]

const bill = /^test\/plan\/bill/
const picture = /^test\/documents\/system-wiring/
const readings = /^test\/plan\/readings/
const wire = /^test\/http\/units/

export const joins: readonly Fault[] = [
  ['one way back for two cables', 'plan/bill/bill-power', 'returnLengthM * runs,', 'returnLengthM,', bill],
  ['one cable of two', 'plan/bill/bill-power', 'positiveLengthM * runs,', 'positiveLengthM,', bill],
  [
    'no fuse at the far end',
    'plan/bill/bill-power',
    'endFuse === undefined ? 1 : 2',
    'endFuse === undefined ? 1 : 1',
    bill
  ],
  ['ends of one cable of two', 'plan/bill/bill-power', 'pins: (1 + back) * runs', 'pins: 1 + back', bill],
  ['a wall passed once by two cables', 'plan/bill/bill-power', 'grommetCount * runs', 'grommetCount', bill],
  ['ends of a branch', 'plan/bill/bill-branches', 'pins: body ? 3 : 4', 'pins: body ? 4 : 3', bill],
  ['no fuse in reserve', 'plan/bill/defaults', 'fuseSparePercent: { value: 100', 'fuseSparePercent: { value: 0', bill],
  ['lugs of a fuse holder', 'plan/bill/bill-power', 'fuse === undefined ? 1 : 3', 'fuse === undefined ? 1 : 2', bill],
  ['one end of a signal pair', 'plan/bill/bill-wiring', 'const ends = 2 * count', 'const ends = count', bill],
  ['one screw a cup', 'plan/bill/defaults', 'screwsACup: { value: 4', 'screwsACup: { value: 1', bill],
  ['wire of one output of two', 'plan/bill/bill-wiring', 'speaker.lengthM * speaker.count', 'speaker.lengthM', bill],
  ['inside wire of one driver of two', 'plan/bill/bill-wiring', 'wire.count * wire.lengthM', 'wire.lengthM', bill],
  ['one screw a joint', 'plan/bill/bill-box', 'sum + screwCount, 0)', 'sum + 1, 0)', bill],
  [
    'screws through the front',
    'plan/bill/bill-box',
    '2 * front.thicknessM - billDefaults.pointKeepsM',
    '3 * front.thicknessM - billDefaults.pointKeepsM',
    bill
  ],
  ['fixings of one driver of two', 'plan/bill/bill-box', 'need: count * screwCount', 'need: screwCount', bill],
  ['gasket of one driver of two', 'plan/bill/bill-box', 'need: count * (Math.PI', 'need: (Math.PI', bill],
  ['a square for a fillet', 'plan/bill/bill-box', 'sealantLegM.value ** 2) / 2', 'sealantLegM.value ** 2) / 1', bill],
  ['no fuse on the picture', 'documents/wiring/conductors', 'amperes(fuse?.ratingA)', 'amperes(undefined)', picture],
  [
    'the way there for the way back',
    'documents/wiring/conductors',
    'run: length(returnLengthM',
    'run: length(positiveLengthM',
    picture
  ],
  ['the line of another conductor', 'documents/wiring/conductors', 'number: index + 1', 'number: index', picture],
  ['one core on the picture', 'documents/wiring/conductors', ')}2 × ', ')}1 × ', picture],
  [
    'no second battery in the picture',
    'documents/wiring/conductors',
    "'wire.what.second-battery'), secondBattery?.lead",
    "'wire.what.second-battery'), undefined",
    picture
  ],
  [
    'a turn-on of 12 V in a lorry',
    'plan/readings/silent-readings',
    'SWITCHED_ON_V * twelves(Math.min(...feeding.map(({ nominalV }) => nominalV)))',
    'SWITCHED_ON_V',
    readings
  ],
  ['a ground that is none', 'plan/readings/defaults', 'value: 0.3,', 'value: 3,', readings],
  [
    'a charger that takes',
    'plan/readings/silent-readings',
    "-see.through(['charger'])",
    "see.through(['charger'])",
    readings
  ],
  [
    'amperes for milliamperes',
    'plan/readings/silent-readings',
    '1000 * workDefaults.parkedA',
    '100 * workDefaults.parkedA',
    readings
  ],
  ['dose of 5 dB', 'domain/cabin/exposure', 'EXCHANGE_DB = 3', 'EXCHANGE_DB = 5', /domain\/cabin/],
  ['peak as if it were the mean', 'domain/cabin/exposure', '10 * Math.log10(2) + c', 'c', /domain\/cabin/],
  [
    'hole by its diameter',
    'domain/box/solids/clearances',
    '- cutOutDiameterM / 2',
    '- cutOutDiameterM',
    /domain\/box\/(clearances|bodies|fit|least|box-touched)/
  ],
  [
    'motor by its diameter',
    'domain/box/solids/clearances',
    'room - magnetDiameterM / 2',
    'room - magnetDiameterM / 1',
    /domain\/box\/(clearances|bodies|fit|least)/
  ],
  [
    'drivers pull the box back',
    'domain/box/layout/box-mass',
    "'reversed' ? -1 : 1",
    "'reversed' ? 1 : -1",
    /domain\/(box|small-terms)/
  ],
  [
    'gain beyond the drivers',
    'domain/amplifier/gain-target',
    'Math.min(amplifierW, driversW)',
    'Math.max(amplifierW, driversW)',
    /domain\/(signal|amplifier)/
  ],
  ['filters read in power', 'domain/signal/gain-setting', '10 ** (loss / 20)', '10 ** (loss / 10)', /domain\/signal/],
  [
    'litres for cubic metres',
    'contract/field/wire-units',
    "{ wire: 'L', si: 'M3', perSi: 1e3 }",
    "{ wire: 'L', si: 'M3', perSi: 1e2 }",
    wire
  ],
  [
    'shorter parts of a search lost',
    'plan/designer/systems/join-parts',
    "sumOf(parts, 'weighed')\n",
    'parts[0]?.weighed ?? 0\n',
    /^test\/plan\/designer\/(join|search)/
  ]
]
