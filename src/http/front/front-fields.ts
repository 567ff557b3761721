/** The fields of the front door: a short name for the address, plain words, the mark on a data sheet, and where it goes in the request. */
import { boardIds, paperUnits } from '../../contract/boxes/words.ts'
import { amplifierClasses, batteryChemistries } from '../../contract/supply/words.ts'
import { designGoals } from '../../contract/systems/words.ts'
import type { SentenceId } from '../../domain/say.ts'

type Named<Kind extends string> = SentenceId extends infer Id
  ? Id extends `front.${Kind}.${infer Name}`
    ? Name
    : never
  : never

/** The fields there are, by their names in the address. */
type FieldName = Named<'label'>

export interface FrontField {
  /** In the address; letters and digits. */
  readonly name: FieldName
  /** Of the request, on the wire, `a.0.b` for the first of a list. Two, where one choice gives both. */
  readonly path: string
  /** What the example has. */
  readonly example: string
  /** The same as a rule in inches shows it, for a size that the visitor measures; what a sheet states is written as it stands there. */
  readonly inches?: string
  /** Anything else is refused. */
  readonly choices?: readonly string[]
  /** Goes into the request whenever the field is filled in. */
  readonly also?: Readonly<Record<string, number | string>>
  /** Folded: for who knows what they want. */
  readonly folded?: true
}

interface FrontGroup {
  readonly id: Named<'title'>
  readonly fields: readonly FrontField[]
}

const counted = ['1', '2', '3', '4']
/** Coils of one driver and the rated impedance of each. */
export const coilChoices: readonly string[] = ['1x2', '1x4', '1x8', '2x1', '2x2', '2x4']

const field = (
  name: FieldName,
  path: string,
  example: string,
  more: Pick<FrontField, 'inches' | 'choices' | 'also' | 'folded'> = {}
): FrontField => ({ name, path, example, ...more })

export const frontGroups: readonly FrontGroup[] = [
  {
    id: 'driver',
    fields: [
      field('fs', 'driver.sheet.fsHz', '29.5'),
      field('qms', 'driver.sheet.qms', '5.4'),
      field('qes', 'driver.sheet.qes', '0.47'),
      field('vas', 'driver.sheet.vasL', '62'),
      field('sd', 'driver.sheet.sdCm2', '490'),
      field('re', 'driver.sheet.reOhm', '3.4'),
      field('xmax', 'driver.sheet.xmaxMm', '14'),
      field('rms', 'driver.sheet.powerW', '450'),
      field('coils', 'driver.coils', '2x2', { choices: coilChoices }),
      field('hole', 'driver.mounting.cutOutDiameterMm', '282', { inches: '11 1/8' }),
      field('deep', 'driver.mounting.mountingDepthMm', '158', { inches: '6 1/4' }),
      field('drivers', 'driverCount', '1', { choices: counted })
    ]
  },
  {
    id: 'amplifier',
    fields: [
      field('at4', 'amplifier.ratings.0.powerW', '420', {
        also: { 'amplifier.ratings.0.loadOhm': 4 }
      }),
      field('at2', 'amplifier.ratings.1.powerW', '700', {
        also: { 'amplifier.ratings.1.loadOhm': 2 }
      }),
      field('at1', 'amplifier.ratings.2.powerW', '1000', {
        also: { 'amplifier.ratings.2.loadOhm': 1 }
      }),
      field('least', 'amplifier.minimumOhm', '1'),
      field('class', 'amplifier.class', 'D', {
        choices: amplifierClasses
      }),
      field('fuses', 'amplifier.onboardFusesA.0', '100')
    ]
  },
  {
    id: 'boot',
    fields: [
      field('width', 'car.space.widthMm', '980', { inches: '38 1/2' }),
      field('height', 'car.space.heightMm', '460', { inches: '18' }),
      field('depth', 'car.space.depthMm', '520', { inches: '20 1/2' }),
      field('cabin', 'car.cabin.lengthM', '2.9', { inches: '9 1/2' })
    ]
  },
  {
    id: 'supply',
    fields: [
      field('cable', 'supply.positiveLengthM', '5.5', { inches: '18' }),
      field('battery', 'supply.battery.capacityAh', '70'),
      field('kind', 'supply.battery.chemistry', 'agm', {
        choices: batteryChemistries
      }),
      field('alternator', 'supply.charging.ratedA', '140', {
        also: { 'supply.charging.kind': 'alternator' }
      })
    ]
  },
  {
    id: 'wish',
    fields: [
      field('goal', 'enclosure.goal', 'everyday', {
        choices: designGoals
      }),
      field('volume', 'enclosure.netVolumeL', '', { inches: '', folded: true }),
      field('tuning', 'enclosure.tuningHz', '', { folded: true }),
      field('board', 'board.material', 'mdf', { choices: boardIds, folded: true }),
      field('thick', 'board.thicknessMm', '18', { inches: '23/32', folded: true }),
      field('units', 'paper.units', 'metric', {
        choices: paperUnits,
        folded: true
      }),
      field('name', 'name', 'A bass box', { folded: true })
    ]
  }
]

export const frontFields: readonly FrontField[] = frontGroups.flatMap(({ fields }) => fields)

/** How the sizes of the form are measured, by the word for it in the address. */
export const frontRules = ['mm', 'inch'] as const
export type FrontRule = (typeof frontRules)[number]
/** Its name in the address; millimetres where absent. */
export const RULE = 'rule'

/** What the form says once for every plan it asks for. */
export const alwaysAsked = {
  'supply.systemVoltageV': 12,
  'supply.return.kind': 'chassis',
  'amplifier.channels': 1
} as const
