/** Rows of a comparison: figures in the units of a person, changes with their sign. */
import type { ComparedFigures, Comparison, FigureChanges } from '../../contract/enclosures/comparison.ts'
import type { ComparedFigure, ComparedParameter } from '../../contract/enclosures/words.ts'
import { figure, significant } from '../draw/number-text.ts'

const parameterNames: Readonly<Record<ComparedParameter, string>> = {
  driver: 'driver',
  drivers: 'number or wiring of the drivers',
  enclosure: 'kind of enclosure',
  'rear-volume': 'volume',
  'rear-port': 'port',
  'rear-passive-radiators': 'passive radiators',
  'rear-losses': 'leak and absorption',
  'front-volume': 'volume in front of the cone',
  'front-port': 'port in front of the cone',
  'front-passive-radiators': 'passive radiators in front of the cone',
  'front-losses': 'leak and absorption in front of the cone',
  source: 'power and source',
  filters: 'filters'
}

type Show = (figures: ComparedFigures) => number | undefined

const inMs = (seconds: number) => seconds * 1000
const rows: Readonly<Record<Exclude<ComparedFigure, 'levels' | 'most-levels'>, readonly [name: string, show: Show]>> = {
  'half-power': ['half power, Hz', ({ f3Hz }) => f3Hz],
  tuning: ['tuning, Hz', ({ tuningHz }) => tuningHz],
  qtc: ['Qtc', ({ qtc }) => qtc],
  'net-volume': ['net air, L', ({ netVolumeM3 }) => netVolumeM3 && netVolumeM3 * 1000],
  voltage: ['source, V', ({ voltageV }) => voltageV],
  'cone-excursion': ['largest travel, mm', ({ coneExcursionM }) => coneExcursionM * 1000],
  'port-air-speed': ['air in the port, m/s', ({ portAirSpeedMPerS }) => portAirSpeedMPerS],
  'group-delay': ['longest delay, ms', ({ groupDelayS }) => inMs(groupDelayS)],
  impedance: ['least impedance, Ω', ({ impedanceOhm }) => impedanceOhm]
}

const shown = (value: number | undefined) => (value === undefined ? '–' : significant(value))

function levelRows(
  { comparedHz, designs }: Comparison,
  figureName: 'levels' | 'most-levels'
): readonly (readonly string[])[] {
  const words = figureName === 'levels' ? 'level' : 'most within limits'
  return comparedHz.map((hz, at) => [
    `${words} at ${hz} Hz, dB`,
    ...designs.map(({ figures: { levelsDb, mostLevelsDb } }) => {
      const level = figureName === 'levels' ? levelsDb[at] : mostLevelsDb?.[at]
      return level === undefined ? '–' : figure(level, 1)
    })
  ])
}

/** Only what differs: a row a figure, a column a design. */
export const differingRows = (comparison: Comparison): readonly (readonly string[])[] =>
  comparison.differing.flatMap(name => {
    if (name === 'levels' || name === 'most-levels') return levelRows(comparison, name)
    const [words, show] = rows[name]
    return [[words, ...comparison.designs.map(({ figures }) => shown(show(figures)))]]
  })

/** One decimal always: a column of changes is read downwards. */
function signed(change: number | undefined): string {
  if (change === undefined) return '–'
  const text = Math.abs(change).toFixed(1)
  return text === '0.0' ? text : `${change > 0 ? '+' : '−'}${text}`
}

const changeCells = ({ levelsDb, f3Hz, coneExcursionM, portAirSpeedMPerS }: FigureChanges): readonly string[] => [
  ...levelsDb.map(change => signed(change)),
  signed(f3Hz),
  signed(coneExcursionM * 1000),
  signed(portAirSpeedMPerS)
]

export const causeHeadings = ({ comparedHz }: Comparison): readonly string[] => [
  'Alone',
  ...comparedHz.map(hz => `${hz} Hz`),
  'f3, Hz',
  'mm',
  'm/s'
]

/** What each parameter does alone, what is left where they act through each other, and all of it. */
export function causeRows({
  causes,
  togetherDb,
  change
}: Comparison['differences'][number]): readonly (readonly string[])[] {
  const alone = causes.flatMap(({ parameter, change: own, lastDb }) => {
    const name = parameterNames[parameter]
    const first = [name, ...(own === undefined ? Array.from({ length: 8 }, () => '–') : changeCells(own))]
    return lastDb === undefined || causes.length < 2
      ? [first]
      : [first, [`${name}, last of all`, ...lastDb.map(dB => signed(dB)), '', '', '']]
  })
  const left = ['through each other', ...togetherDb.map(leftDb => signed(leftDb)), '', '', '']
  return [...alone, ...(causes.length > 1 ? [left] : []), ['all together', ...changeCells(change)]]
}
