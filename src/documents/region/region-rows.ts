/** A region of drivers as rows: what to look for on a shelf, what was built for it, what was taken for granted. */
import type { DriverRegion, SuitedDriver } from '../../contract/systems/driver-region.ts'
import { toDigits } from '../../domain/digits.ts'
import { COMPARED_HZ } from '../../domain/enclosure/comparison/defaults.ts'
import { type Language, told } from '../../domain/say.ts'
import { figure, significant } from '../draw/number-text.ts'

export interface RegionTable {
  readonly headings: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

const litres = (volumeM3: number, language: Language) => significant(volumeM3 * 1000, 3, { language })
const millimetres = (lengthM: number, language: Language) => figure(lengthM * 1000, 0, { language })

/** The ranges, and what more of does no harm. */
export function lookForTable(region: DriverRegion, language: Language): RegionTable {
  const { fsFromHz, fsToHz, qtsFrom, qtsTo, vasFromM3, vasToM3, typical } = region
  const shown = (value: number) => significant(value, 3, { language })
  return {
    headings: [told(language, 'region.figure'), told(language, 'region.from'), told(language, 'region.to')],
    rows: [
      [told(language, 'region.resonance'), shown(fsFromHz), shown(fsToHz)],
      [told(language, 'region.total-q'), shown(qtsFrom), shown(qtsTo)],
      [told(language, 'region.compliance'), litres(vasFromM3, language), litres(vasToM3, language)],
      [told(language, 'region.travel'), millimetres(typical.xmaxM, language), ''],
      [told(language, 'region.power'), shown(typical.powerW), '']
    ]
  }
}

function builtRow({ fsHz, qts, vasM3, figures }: SuitedDriver, language: Language): readonly string[] {
  const driver = [figure(fsHz, 0, { language }), figure(qts, 2, { language }), litres(vasM3, language)].join(' / ')
  const { tuningHz, netVolumeM3 } = figures
  const netVolumeL = toDigits(netVolumeM3 * 1000, 3)
  return [
    driver,
    tuningHz === undefined
      ? told(language, 'region.closed', { netVolumeL })
      : told(language, 'region.vented', { netVolumeL, tuningHz: toDigits(tuningHz, 3) }),
    litres(figures.outerVolumeM3, language),
    ...figures.levelDb.map(level => figure(level, 1, { language }))
  ]
}

export function builtTable({ best, corners }: DriverRegion, language: Language): RegionTable {
  return {
    headings: [
      told(language, 'region.driver'),
      told(language, 'region.box'),
      told(language, 'region.room'),
      ...COMPARED_HZ.map(hz => figure(hz, 1, { language }))
    ],
    rows: [best, ...corners].map(each => builtRow(each, language))
  }
}

export function takenRows({ typical }: DriverRegion, language: Language): readonly (readonly string[])[] {
  const shown = (value: number) => significant(value, 3, { language })
  return [
    [told(language, 'region.piston'), shown(typical.sdM2 * 1e4)],
    [told(language, 'region.mechanical-q'), shown(typical.qms)],
    [told(language, 'region.coil'), shown(typical.reOhm)],
    [told(language, 'region.rated'), shown(typical.ratedOhm)],
    [told(language, 'region.inductance'), shown(typical.leH * 1000)],
    [told(language, 'region.flange'), millimetres(typical.flangeDiameterM, language)],
    [told(language, 'region.hole'), millimetres(typical.cutOutDiameterM, language)],
    [told(language, 'region.depth'), millimetres(typical.mountingDepthM, language)]
  ]
}

/** The sentences round the tables. */
export function regionTexts({ goal, toleranceDb, best, text }: DriverRegion, language: Language) {
  const heard = best.figures.heardAt === 'seat' ? 'answer.at-the-seat' : 'answer.in-half-space'
  return {
    title: told(language, 'region.title'),
    region: text,
    wish: told(language, 'region.wish', { goal: told(language, `paper.goal.${goal}`) }),
    lookFor: told(language, 'region.look-for'),
    together: told(language, 'region.together', { toleranceDb }),
    built: told(language, 'region.built'),
    builtText: told(language, 'region.built-text', { heard: told(language, heard) }),
    taken: told(language, 'region.taken'),
    next: told(language, 'region.next')
  }
}
