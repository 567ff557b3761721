/** The fields of the front door: a short name for the address, plain words, the mark on a data sheet, and where it goes in the request. */
import { boardIds } from '../../contract/boxes/words.ts'
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

export const frontGroups: readonly FrontGroup[] = [
  {
    id: 'driver',
    title: 'Driver',
    line: 'The loudspeaker itself. All of this stands on its sheet.',
    fields: [
      { name: 'fs', path: 'driver.sheet.fsHz', label: 'Resonance', mark: 'Fs or f0', example: '29.5' },
      { name: 'qms', path: 'driver.sheet.qms', label: 'Mechanical Q', mark: 'Qms', example: '5.4' },
      { name: 'qes', path: 'driver.sheet.qes', label: 'Electrical Q', mark: 'Qes; not Qts', example: '0.47' },
      { name: 'vas', path: 'driver.sheet.vasL', label: 'Air like its spring', mark: 'Vas', example: '62' },
      { name: 'sd', path: 'driver.sheet.sdCm2', label: 'Cone area', mark: 'Sd', example: '490' },
      { name: 're', path: 'driver.sheet.reOhm', label: 'Resistance', mark: 'Re or DCR', example: '3.4' },
      {
        name: 'xmax',
        path: 'driver.sheet.xmaxMm',
        label: 'Travel, one way',
        mark: 'Xmax; half, if “peak to peak”',
        example: '14'
      },
      {
        name: 'rms',
        path: 'driver.sheet.powerW',
        label: 'Power it stands',
        mark: 'RMS, never “peak” or “max”',
        example: '450'
      },
      {
        name: 'coils',
        path: 'driver.coils',
        label: 'Voice coils',
        mark: 'on the label, as 2 × 2 Ω',
        example: '2x2',
        choices: coilChoices
      },
      {
        name: 'hole',
        path: 'driver.mounting.cutOutDiameterMm',
        label: 'Hole for it',
        mark: 'cut-out diameter',
        example: '282'
      },
      {
        name: 'deep',
        path: 'driver.mounting.mountingDepthMm',
        label: 'Depth behind the panel',
        mark: 'mounting depth',
        example: '158'
      },
      {
        name: 'drivers',
        path: 'driverCount',
        label: 'How many',
        mark: 'alike, in one box',
        example: '1',
        choices: counted
      }
    ]
  },
  {
    id: 'amplifier',
    title: 'Amplifier',
    line: 'Its RMS powers. Leave out what its sheet does not give.',
    fields: [
      {
        name: 'at4',
        path: 'amplifier.ratings.0.powerW',
        label: 'Power at 4 Ω',
        mark: 'RMS',
        example: '420',
        also: { 'amplifier.ratings.0.loadOhm': 4 }
      },
      {
        name: 'at2',
        path: 'amplifier.ratings.1.powerW',
        label: 'Power at 2 Ω',
        mark: 'RMS',
        example: '700',
        also: { 'amplifier.ratings.1.loadOhm': 2 }
      },
      {
        name: 'at1',
        path: 'amplifier.ratings.2.powerW',
        label: 'Power at 1 Ω',
        mark: 'RMS',
        example: '1000',
        also: { 'amplifier.ratings.2.loadOhm': 1 }
      },
      { name: 'least', path: 'amplifier.minimumOhm', label: 'Lowest load', mark: 'minimum impedance', example: '1' },
      {
        name: 'class',
        path: 'amplifier.class',
        label: 'Class',
        mark: 'most bass amplifiers: D',
        example: 'D',
        choices: words(amplifierClasses, 'class ')
      },
      { name: 'fuses', path: 'amplifier.onboardFusesA.0', label: 'Fuses on it', mark: 'added up', example: '100' }
    ]
  },
  {
    id: 'boot',
    title: 'Boot',
    line: 'The free space, trim to trim.',
    fields: [
      { name: 'width', path: 'car.space.widthMm', label: 'Width', mark: 'between the side trims', example: '980' },
      { name: 'height', path: 'car.space.heightMm', label: 'Height', mark: 'floor to shelf', example: '460' },
      { name: 'depth', path: 'car.space.depthMm', label: 'Depth', mark: 'seat back to tailgate', example: '520' },
      {
        name: 'cabin',
        path: 'car.cabin.lengthM',
        label: 'Length of the cabin',
        mark: 'pedals to tailgate',
        example: '2.9'
      }
    ]
  },
  {
    id: 'supply',
    title: 'Battery and cable',
    line: 'A 12 V car with a metal body.',
    fields: [
      {
        name: 'cable',
        path: 'supply.positiveLengthM',
        label: 'Cable, along its way',
        mark: 'lay a string',
        example: '5.5'
      },
      { name: 'battery', path: 'supply.battery.capacityAh', label: 'Battery', mark: 'on its label', example: '70' },
      {
        name: 'kind',
        path: 'supply.battery.chemistry',
        label: 'Kind of battery',
        mark: 'on its label',
        example: 'agm',
        choices: batteryChemistries.map(kind => [kind, batteryWords[kind]] as const)
      },
      {
        name: 'alternator',
        path: 'supply.charging.ratedA',
        label: 'Alternator',
        mark: 'on its plate or in the handbook',
        example: '140',
        also: { 'supply.charging.kind': 'alternator' }
      }
    ]
  },
  {
    id: 'wish',
    title: 'Wish',
    line: 'What matters most?',
    fields: [
      {
        name: 'goal',
        path: 'enclosure.goal',
        label: 'The bass should be',
        mark: '',
        example: 'everyday',
        choices: designGoals.map(goal => [goal, goalWords[goal]] as const)
      },
      {
        name: 'volume',
        path: 'enclosure.netVolumeL',
        label: 'Net volume',
        mark: 'instead of a wish',
        example: '',
        folded: true
      },
      {
        name: 'tuning',
        path: 'enclosure.tuningHz',
        label: 'Tuning',
        mark: 'instead of a wish',
        example: '',
        folded: true
      },
      {
        name: 'board',
        path: 'board.material',
        label: 'Board',
        mark: 'what the shop has',
        example: 'mdf',
        choices: words(boardIds),
        folded: true
      },
      {
        name: 'thick',
        path: 'board.thicknessMm',
        label: 'Thickness',
        mark: 'as measured',
        example: '18',
        folded: true
      },
      {
        name: 'name',
        path: 'name',
        label: 'Title of the plan',
        mark: 'stands on its first page',
        example: 'A bass box',
        folded: true
      }
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
