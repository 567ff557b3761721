/** The charts of a plan: level on the first page, travel and air in the port where a reader looks what holds it back. */
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import { figure, significant } from '../draw/number-text.ts'
import type { FindingChart } from './finding-chart.ts'
import { type ChartCurves, roundUp } from './response-charts.ts'

/** Level axes span as much in every plan, so that two plans can be laid side by side. */
const LEVEL_SPAN_DB = 50

export interface PlanCurves extends ChartCurves {
  readonly seatLevelDb?: readonly number[]
}

type Chart = (cover: PlanCover, curves: PlanCurves) => FindingChart | undefined

const whole = (value: number) => figure(value, 0)

export const levelChart: Chart = ({ band }, { frequencyHz, levelDb, seatLevelDb }) => {
  if (band === undefined) return undefined
  const { finding, fromHz, toHz, loudestDb, loudestHz, uncertaintyDb } = band
  const top = Math.ceil((loudestDb + (uncertaintyDb ?? 2)) / 10) * 10
  const edgeDb = loudestDb - 6
  const spread = uncertaintyDb === undefined || uncertaintyDb === 0 ? {} : { spread: uncertaintyDb }
  const note =
    'spread' in spread
      ? `dB at the gain of this plan. Pale: how far a model of the car can be off.`
      : 'dB at the gain of this plan.'
  return {
    id: 'chart-level',
    title: finding,
    note,
    frequencyHz,
    values: seatLevelDb ?? levelDb,
    ...(seatLevelDb === undefined ? {} : { beside: [{ values: levelDb, name: 'box without the car' }] }),
    ...spread,
    range: [top - LEVEL_SPAN_DB, top],
    step: 10,
    dots: [
      { hz: loudestHz, value: loudestDb, text: `${whole(loudestDb)} dB at ${whole(loudestHz)} Hz` },
      { hz: fromHz, value: edgeDb, text: `${significant(fromHz, 2)} Hz` },
      { hz: toHz, value: edgeDb, text: `${significant(toHz, 2)} Hz` }
    ].filter(({ hz }) => hz > 16 && hz < 160),
    heightPx: 200,
    landmarks: true
  }
}

/** From nought to a round figure above peak and limit, in four or five steps. */
function upTo(most: number): Pick<FindingChart, 'range' | 'step'> {
  const top = roundUp(most)
  const step = [1, 2, 2.5, 5, 10, 20, 25].find(each => top / each <= 5.01) ?? top / 4
  return { range: [0, Math.ceil(top / step) * step], step }
}

export const travelChart: Chart = ({ travel }, { frequencyHz, coneExcursionM }) => {
  if (travel === undefined) return undefined
  const { finding, peakM, peakHz, limitM } = travel
  const [peak, limit] = [peakM * 1000, limitM === undefined ? undefined : limitM * 1000]
  const of = limit === undefined ? '' : ` of ${significant(limit)}`
  return {
    id: 'chart-travel',
    title: finding,
    note: `mm, one way from rest; ${significant(peak)}${of} at ${whole(peakHz)} Hz`,
    frequencyHz,
    values: coneExcursionM.map(value => value * 1000),
    ...upTo(Math.max(peak * 1.15, (limit ?? 0) * 1.25)),
    ...(limit === undefined
      ? {}
      : { limit: { at: limit, words: `beyond ${significant(limit)} mm: out of its range` } }),
    dots: [{ hz: peakHz, value: peak, text: `${significant(peak)} mm` }].filter(({ hz }) => hz > 16),
    heightPx: 140
  }
}

export const portAirChart: Chart = ({ portAir }, { frequencyHz, rearPortAirSpeedMPerS: values }) => {
  if (portAir === undefined || values === undefined) return undefined
  const { finding, peakMPerS, peakHz, quietMPerS, limitMPerS } = portAir
  return {
    id: 'chart-port-air',
    title: finding,
    note: `m/s of air in the port; ${significant(peakMPerS)} at ${whole(peakHz)} Hz`,
    frequencyHz,
    values,
    ...upTo(Math.max(peakMPerS * 1.15, limitMPerS * 1.2)),
    limit: { at: limitMPerS, words: `beyond ${limitMPerS} m/s: not built` },
    wish: { at: quietMPerS, words: `quiet below ${quietMPerS}` },
    dots: [{ hz: peakHz, value: peakMPerS, text: `${significant(peakMPerS)} m/s` }].filter(({ hz }) => hz > 16),
    heightPx: 140
  }
}
