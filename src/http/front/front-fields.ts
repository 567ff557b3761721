/** The fields of the front door: a short name for the address, plain words, the mark on a data sheet, and where it goes in the request. */
import { boardIds, paperUnits } from '../../contract/boxes/words.ts'
import { amplifierClasses, type BatteryChemistry, batteryChemistries } from '../../contract/supply/words.ts'
import { designGoals } from '../../contract/systems/words.ts'

export interface FrontField {
  /** In the address; letters and digits. */
  readonly name: string
  /** Of the request, on the wire, `a.0.b` for the first of a list. Two, where one choice gives both. */
  readonly path: string
  readonly label: string
  /** Where it stands on a sheet, or how to measure it. */
  readonly mark: string
  /** What the example has. */
  readonly example: string
  /** Value and words; anything else is refused. */
  readonly choices?: readonly (readonly [value: string, words: string])[]
  /** Goes into the request whenever the field is filled in. */
  readonly also?: Readonly<Record<string, number | string>>
  /** Folded: for who knows what they want. */
  readonly folded?: true
}

interface FrontGroup {
  readonly id: string
  readonly title: string
  readonly line: string
  readonly fields: readonly FrontField[]
}

const words = (values: readonly string[], first = '') => values.map(value => [value, `${first}${value}`] as const)
const counted = [1, 2, 3, 4].map(count => [String(count), String(count)] as const)
/** Coils of one driver and the rated impedance of each. */
export const coilChoices = [
  ['1x2', '1 × 2 Ω'],
  ['1x4', '1 × 4 Ω'],
  ['1x8', '1 × 8 Ω'],
  ['2x1', '2 × 1 Ω'],
  ['2x2', '2 × 2 Ω'],
  ['2x4', '2 × 4 Ω']
] as const

const batteryWords: Readonly<Record<BatteryChemistry, string>> = {
  flooded: 'flooded, with caps',
  agm: 'AGM',
  gel: 'gel',
  lithium: 'lithium'
}

const goalWords: Readonly<Record<(typeof designGoals)[number], string>> = {
  everyday: 'For every day: even from low to high, no surprises',
  low: 'As low as possible: gives up some loudness',
  loud: 'As loud as possible: gives up the lowest notes',
  tight: 'Tight: a closed box, short notes stay short',
  small: 'As small as possible: keeps room in the boot'
}

const unitWords: Readonly<Record<(typeof paperUnits)[number], string>> = {
  metric: 'millimetres',
  imperial: 'inches and pounds'
}

type More = Pick<FrontField, 'choices' | 'also' | 'folded'>
const field = (
  name: string,
  path: string,
  label: string,
  mark: string,
  example: string,
  more: More = {}
): FrontField => ({
  name,
  path,
  label,
  mark,
  example,
  ...more
})

export const frontGroups: readonly FrontGroup[] = [
  {
    id: 'driver',
    title: 'Driver',
    line: 'The loudspeaker itself. All of this stands on its sheet.',
    fields: [
      field('fs', 'driver.sheet.fsHz', 'Resonance', 'Fs or f0', '29.5'),
      field('qms', 'driver.sheet.qms', 'Mechanical Q', 'Qms', '5.4'),
      field('qes', 'driver.sheet.qes', 'Electrical Q', 'Qes; not Qts', '0.47'),
      field('vas', 'driver.sheet.vasL', 'Air like its spring', 'Vas', '62'),
      field('sd', 'driver.sheet.sdCm2', 'Cone area', 'Sd', '490'),
      field('re', 'driver.sheet.reOhm', 'Resistance', 'Re or DCR', '3.4'),
      field('xmax', 'driver.sheet.xmaxMm', 'Travel, one way', 'Xmax; half, if “peak to peak”', '14'),
      field('rms', 'driver.sheet.powerW', 'Power it stands', 'RMS, never “peak” or “max”', '450'),
      field('coils', 'driver.coils', 'Voice coils', 'on the label, as 2 × 2 Ω', '2x2', { choices: coilChoices }),
      field('hole', 'driver.mounting.cutOutDiameterMm', 'Hole for it', 'cut-out diameter', '282'),
      field('deep', 'driver.mounting.mountingDepthMm', 'Depth behind the panel', 'mounting depth', '158'),
      field('drivers', 'driverCount', 'How many', 'alike, in one box', '1', { choices: counted })
    ]
  },
  {
    id: 'amplifier',
    title: 'Amplifier',
    line: 'Its RMS powers. Leave out what its sheet does not give.',
    fields: [
      field('at4', 'amplifier.ratings.0.powerW', 'Power at 4 Ω', 'RMS', '420', {
        also: { 'amplifier.ratings.0.loadOhm': 4 }
      }),
      field('at2', 'amplifier.ratings.1.powerW', 'Power at 2 Ω', 'RMS', '700', {
        also: { 'amplifier.ratings.1.loadOhm': 2 }
      }),
      field('at1', 'amplifier.ratings.2.powerW', 'Power at 1 Ω', 'RMS', '1000', {
        also: { 'amplifier.ratings.2.loadOhm': 1 }
      }),
      field('least', 'amplifier.minimumOhm', 'Lowest load', 'minimum impedance', '1'),
      field('class', 'amplifier.class', 'Class', 'most bass amplifiers: D', 'D', {
        choices: words(amplifierClasses, 'class ')
      }),
      field('fuses', 'amplifier.onboardFusesA.0', 'Fuses on it', 'added up', '100')
    ]
  },
  {
    id: 'boot',
    title: 'Boot',
    line: 'The free space, trim to trim.',
    fields: [
      field('width', 'car.space.widthMm', 'Width', 'between the side trims', '980'),
      field('height', 'car.space.heightMm', 'Height', 'floor to shelf', '460'),
      field('depth', 'car.space.depthMm', 'Depth', 'seat back to tailgate', '520'),
      field('cabin', 'car.cabin.lengthM', 'Length of the cabin', 'pedals to tailgate', '2.9')
    ]
  },
  {
    id: 'supply',
    title: 'Battery and cable',
    line: 'A 12 V car with a metal body.',
    fields: [
      field('cable', 'supply.positiveLengthM', 'Cable, along its way', 'lay a string', '5.5'),
      field('battery', 'supply.battery.capacityAh', 'Battery', 'on its label', '70'),
      field('kind', 'supply.battery.chemistry', 'Kind of battery', 'on its label', 'agm', {
        choices: batteryChemistries.map(kind => [kind, batteryWords[kind]] as const)
      }),
      field('alternator', 'supply.charging.ratedA', 'Alternator', 'on its plate or in the handbook', '140', {
        also: { 'supply.charging.kind': 'alternator' }
      })
    ]
  },
  {
    id: 'wish',
    title: 'Wish',
    line: 'What matters most?',
    fields: [
      field('goal', 'enclosure.goal', 'The bass should be', '', 'everyday', {
        choices: designGoals.map(goal => [goal, goalWords[goal]] as const)
      }),
      field('volume', 'enclosure.netVolumeL', 'Net volume', 'instead of a wish', '', { folded: true }),
      field('tuning', 'enclosure.tuningHz', 'Tuning', 'instead of a wish', '', { folded: true }),
      field('board', 'board.material', 'Board', 'what the shop has', 'mdf', { choices: words(boardIds), folded: true }),
      field('thick', 'board.thicknessMm', 'Thickness', 'as measured', '18', { folded: true }),
      field('units', 'paper.units', 'Units on paper', 'as your rule is marked', 'metric', {
        choices: paperUnits.map(units => [units, unitWords[units]] as const),
        folded: true
      }),
      field('name', 'name', 'Title of the plan', 'stands on its first page', 'A bass box', { folded: true })
    ]
  }
]

export const frontFields: readonly FrontField[] = frontGroups.flatMap(({ fields }) => fields)

/** What the form says once for every plan it asks for. */
export const alwaysAsked = {
  'supply.systemVoltageV': 12,
  'supply.return.kind': 'chassis',
  'amplifier.channels': 1
} as const
