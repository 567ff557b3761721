/** What one design is compared by: its curves in one place, and the figures taken from them. */
import type { ComparedCurves, ComparedFigures, FigureChanges } from '../../../contract/enclosures/comparison.ts'
import type { Response } from '../../../contract/enclosures/response.ts'
import type { ComparedFigure } from '../../../contract/enclosures/words.ts'
import { present } from '../../present.ts'
import { computeResponse } from '../answer/compute-response.ts'
import type { EnclosureRequest, ResponseRequest } from '../model/request.ts'
import { COMPARED_HZ, comparisonDefaults } from './defaults.ts'

/** The faster of two ports at each frequency. */
function airSpeed({ rearPortAirSpeedMPerS: rear, frontPortAirSpeedMPerS: front }: Response['curves']) {
  if (rear === undefined || front === undefined) return rear ?? front
  return rear.map((speed, at) => Math.max(speed, front[at] as number))
}

export const comparedCurves = ({ curves }: Response): ComparedCurves => ({
  levelDb: curves.seatLevelDb ?? curves.levelDb,
  coneExcursionM: curves.coneExcursionM,
  groupDelayS: curves.groupDelayS,
  impedanceOhm: curves.impedanceOhm,
  ...present({
    mostLevelDb: curves.maximumSeatLevelDb ?? curves.maximumLevelDb,
    portAirSpeedMPerS: airSpeed(curves)
  })
})

/** Of what the answer names itself; a custom enclosure has its chambers in a list. */
function netVolumeM3(enclosure: EnclosureRequest): number | undefined {
  const chambers = enclosure.kind === 'custom' ? (enclosure.chambers ?? []) : [enclosure.rear, enclosure.front]
  const volumes = chambers.flatMap(each => (each === undefined ? [] : [each.netVolumeM3]))
  return volumes.length === 0 ? undefined : volumes.reduce((sum, each) => sum + each, 0)
}

function gridHz(): readonly number[] {
  const { fromHz, toHz, points } = comparisonDefaults
  const band = Array.from(
    { length: points.value },
    (_, at) => fromHz.value * (toHz.value / fromHz.value) ** (at / (points.value - 1))
  )
  return [...band, ...COMPARED_HZ].toSorted((a, b) => a - b)
}

/** @throws DesignError as the response does */
export function designFigures(request: ResponseRequest): ComparedFigures {
  const { timeResponse: _, ...heard } = request
  const frequenciesHz = gridHz()
  const { result } = computeResponse({ ...heard, frequenciesHz })
  const atMarks = (curve: readonly number[]) => COMPARED_HZ.map(hz => curve[frequenciesHz.indexOf(hz)] as number)
  const { levelDb, mostLevelDb, coneExcursionM, portAirSpeedMPerS, groupDelayS, impedanceOhm } = comparedCurves(result)
  const { f3Hz, tuningHz, qtc, voltageV } = result.scalars
  return {
    levelsDb: atMarks(levelDb),
    voltageV,
    coneExcursionM: Math.max(...coneExcursionM),
    groupDelayS: Math.max(...groupDelayS),
    impedanceOhm: Math.min(...impedanceOhm),
    ...present({
      mostLevelsDb: mostLevelDb && atMarks(mostLevelDb),
      f3Hz,
      tuningHz,
      qtc,
      netVolumeM3: netVolumeM3(request.enclosure),
      portAirSpeedMPerS: portAirSpeedMPerS && Math.max(...portAirSpeedMPerS)
    })
  }
}

const less = (one: number | undefined, other: number | undefined) =>
  one === undefined || other === undefined ? undefined : one - other

export const differenceOf = (one: readonly number[], other: readonly number[]): readonly number[] =>
  one.map((value, at) => value - (other[at] as number))

/** Figures of a design less those of another. @check  identity: a design against itself changes nothing */
export const figureChanges = (of: ComparedFigures, against: ComparedFigures): FigureChanges => ({
  levelsDb: differenceOf(of.levelsDb, against.levelsDb),
  coneExcursionM: of.coneExcursionM - against.coneExcursionM,
  groupDelayS: of.groupDelayS - against.groupDelayS,
  ...present({
    f3Hz: less(of.f3Hz, against.f3Hz),
    portAirSpeedMPerS: less(of.portAirSpeedMPerS, against.portAirSpeedMPerS)
  })
})

type Row = (figures: ComparedFigures) => number | readonly number[] | undefined

/** In the order in which a table shows them. */
const figureRows: Readonly<Record<ComparedFigure, Row>> = {
  levels: ({ levelsDb }) => levelsDb,
  'most-levels': ({ mostLevelsDb }) => mostLevelsDb,
  'half-power': ({ f3Hz }) => f3Hz,
  tuning: ({ tuningHz }) => tuningHz,
  qtc: ({ qtc }) => qtc,
  'net-volume': ({ netVolumeM3: volumeM3 }) => volumeM3,
  voltage: ({ voltageV }) => voltageV,
  'cone-excursion': ({ coneExcursionM }) => coneExcursionM,
  'port-air-speed': ({ portAirSpeedMPerS }) => portAirSpeedMPerS,
  'group-delay': ({ groupDelayS }) => groupDelayS,
  impedance: ({ impedanceOhm }) => impedanceOhm
}

function apart(one: number | readonly number[] | undefined, other: number | readonly number[] | undefined): boolean {
  if (one === undefined || other === undefined) return one !== other
  if (typeof one === 'number' || typeof other === 'number') {
    const [first, second] = [Number(one), Number(other)]
    return Math.abs(first - second) > comparisonDefaults.share.value * Math.max(Math.abs(first), Math.abs(second))
  }
  return differenceOf(one, other).some(changeDb => Math.abs(changeDb) > comparisonDefaults.levelDb.value)
}

/** Whether any two of the designs differ in this figure. */
export const differsIn = (figure: ComparedFigure, designs: readonly ComparedFigures[]): boolean =>
  designs.some((one, at) =>
    designs.slice(at + 1).some(other => apart(figureRows[figure](one), figureRows[figure](other)))
  )
