/** Rows of a comparison: figures in the units of a person, changes with their sign. */
import type { ComparedFigures, Comparison, FigureChanges } from '../../contract/enclosures/comparison.ts'
import type { ComparedFigure } from '../../contract/enclosures/words.ts'
import { type Language, told } from '../../domain/say.ts'
import { figure, significant } from '../draw/number-text.ts'

type Show = (figures: ComparedFigures) => number | undefined

const inMs = (seconds: number) => seconds * 1000
const shows: Readonly<Record<Exclude<ComparedFigure, 'levels' | 'most-levels'>, Show>> = {
  'half-power': ({ f3Hz }) => f3Hz,
  tuning: ({ tuningHz }) => tuningHz,
  qtc: ({ qtc }) => qtc,
  'net-volume': ({ netVolumeM3 }) => netVolumeM3 && netVolumeM3 * 1000,
  voltage: ({ voltageV }) => voltageV,
  'cone-excursion': ({ coneExcursionM }) => coneExcursionM * 1000,
  'port-air-speed': ({ portAirSpeedMPerS }) => portAirSpeedMPerS,
  'group-delay': ({ groupDelayS }) => inMs(groupDelayS),
  impedance: ({ impedanceOhm }) => impedanceOhm
}

function levelRows(
  { comparedHz, designs }: Comparison,
  figureName: 'levels' | 'most-levels',
  language: Language
): readonly (readonly string[])[] {
  return comparedHz.map((hz, at) => [
    told(language, `compare.row.${figureName}`, { frequency: figure(hz, 1, { language }) }),
    ...designs.map(({ figures: { levelsDb, mostLevelsDb } }) => {
      const level = figureName === 'levels' ? levelsDb[at] : mostLevelsDb?.[at]
      return level === undefined ? '–' : figure(level, 1, { language })
    })
  ])
}

/** Only what differs: a row a figure, a column a design. */
export const differingRows = (comparison: Comparison, language: Language): readonly (readonly string[])[] =>
  comparison.differing.flatMap(name => {
    if (name === 'levels' || name === 'most-levels') return levelRows(comparison, name, language)
    const shown = (value: number | undefined) => (value === undefined ? '–' : significant(value, 3, { language }))
    return [
      [told(language, `compare.row.${name}`), ...comparison.designs.map(({ figures }) => shown(shows[name](figures)))]
    ]
  })

/** One decimal always: a column of changes is read downwards. */
function signed(change: number | undefined, { decimalMark }: Language): string {
  if (change === undefined) return '–'
  const text = Math.abs(change).toFixed(1)
  return (text === '0.0' ? text : `${change > 0 ? '+' : '−'}${text}`).replace('.', decimalMark)
}

const changeCells = (
  { levelsDb, f3Hz, coneExcursionM, portAirSpeedMPerS }: FigureChanges,
  language: Language
): readonly string[] => [
  ...levelsDb.map(change => signed(change, language)),
  signed(f3Hz, language),
  signed(coneExcursionM * 1000, language),
  signed(portAirSpeedMPerS, language)
]

export const causeHeadings = ({ comparedHz }: Comparison, language: Language): readonly string[] => [
  told(language, 'compare.alone'),
  ...comparedHz.map(hz => `${figure(hz, 1, { language })} Hz`),
  'f3, Hz',
  'mm',
  'm/s'
]

/** What each parameter does alone, what is left where they act through each other, and all of it. */
export function causeRows(
  { causes, togetherDb, change }: Comparison['differences'][number],
  language: Language
): readonly (readonly string[])[] {
  const alone = causes.flatMap(({ parameter, change: own, lastDb }) => {
    const name = told(language, `compare.parameter.${parameter}`)
    const cells = own === undefined ? Array.from({ length: 8 }, () => '–') : changeCells(own, language)
    return lastDb === undefined || causes.length < 2
      ? [[name, ...cells]]
      : [
          [name, ...cells],
          [told(language, 'compare.last', { name }), ...lastDb.map(dB => signed(dB, language)), '', '', '']
        ]
  })
  const through = told(language, 'compare.through-each-other')
  const left = [through, ...togetherDb.map(leftDb => signed(leftDb, language)), '', '', '']
  const all = [told(language, 'compare.all-together'), ...changeCells(change, language)]
  return [...alone, ...(causes.length > 1 ? [left] : []), all]
}
