/** The charts of a plan: level on the first page, travel and air in the port where a reader looks what holds it back. */
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import { type Language, told } from '../../domain/say.ts'
import { figure, significant } from '../draw/number-text.ts'
import type { FindingChart } from './finding-chart.ts'
import { type ChartCurves, roundUp } from './response-charts.ts'

/** Level axes span as much in every plan, so that two plans can be laid side by side. */
const LEVEL_SPAN_DB = 50

export interface PlanCurves extends ChartCurves {
  readonly seatLevelDb?: readonly number[]
}

type Chart = (cover: PlanCover, curves: PlanCurves, language: Language) => FindingChart | undefined

/** Figures of a chart as its reader writes them. */
const figuresIn = (language: Language) => ({
  whole: (value: number) => figure(value, 0, { language }),
  two: (value: number) => significant(value, 2, { language }),
  three: (value: number) => significant(value, 3, { language })
})

export const levelChart: Chart = ({ band }, { frequencyHz, levelDb, seatLevelDb }, language) => {
  if (band === undefined) return undefined
  const { whole, two } = figuresIn(language)
  const { finding, fromHz, toHz, loudestDb, loudestHz, uncertaintyDb } = band
  const top = Math.ceil((loudestDb + (uncertaintyDb ?? 2)) / 10) * 10
  const edgeDb = loudestDb - 6
  const spread = uncertaintyDb === undefined || uncertaintyDb === 0 ? {} : { spread: uncertaintyDb }
  const note = 'spread' in spread ? told(language, 'chart.level-note-spread') : told(language, 'chart.level-note')
  const loudest = told(language, 'chart.db-at', { level: whole(loudestDb), frequency: whole(loudestHz) })
  const besides = { values: levelDb, name: told(language, 'chart.without-car') }
  return {
    language,
    id: 'chart-level',
    title: finding,
    note,
    frequencyHz,
    values: seatLevelDb ?? levelDb,
    ...(seatLevelDb === undefined ? {} : { beside: [besides] }),
    ...spread,
    range: [top - LEVEL_SPAN_DB, top],
    step: 10,
    dots: [
      { hz: loudestHz, value: loudestDb, text: loudest },
      { hz: fromHz, value: edgeDb, text: `${two(fromHz)} Hz` },
      { hz: toHz, value: edgeDb, text: `${two(toHz)} Hz` }
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

/** Excursion of something that moves, its limit and its peak. */
function excursionChart(
  id: string,
  valuesM: readonly number[],
  { finding, peakM, peakHz, limitM }: NonNullable<PlanCover['travel']>,
  frequencyHz: readonly number[],
  language: Language
): FindingChart {
  const { whole, three } = figuresIn(language)
  const [peak, limit] = [peakM * 1000, limitM === undefined ? undefined : limitM * 1000]
  const at = { peak: three(peak), frequency: whole(peakHz) }
  return {
    language,
    id,
    title: finding,
    note:
      limit === undefined
        ? told(language, 'chart.travel-note', at)
        : told(language, 'chart.travel-note-of', { ...at, limit: three(limit) }),
    frequencyHz,
    values: valuesM.map(value => value * 1000),
    ...upTo(Math.max(peak * 1.15, (limit ?? 0) * 1.25)),
    ...(limit === undefined
      ? {}
      : { limit: { at: limit, words: told(language, 'chart.beyond-travel', { limit: three(limit) }) } }),
    dots: [{ hz: peakHz, value: peak, text: `${three(peak)} mm` }].filter(({ hz }) => hz > 16),
    heightPx: 140
  }
}

const travelChart: Chart = ({ travel }, curves, language) =>
  travel && excursionChart('chart-travel', curves.coneExcursionM, travel, curves.frequencyHz, language)

const radiatorChart: Chart = ({ radiators }, curves, language) =>
  radiators &&
  curves.passiveRadiatorExcursionM &&
  excursionChart('chart-radiators', curves.passiveRadiatorExcursionM, radiators, curves.frequencyHz, language)

const portAirChart: Chart = ({ portAir }, { frequencyHz, rearPortAirSpeedMPerS: values }, language) => {
  if (portAir === undefined || values === undefined) return undefined
  const { finding, peakMPerS, peakHz, quietMPerS, limitMPerS } = portAir
  const { whole, three } = figuresIn(language)
  return {
    language,
    id: 'chart-port-air',
    title: finding,
    note: told(language, 'chart.air-note', { peak: three(peakMPerS), frequency: whole(peakHz) }),
    frequencyHz,
    values,
    ...upTo(Math.max(peakMPerS * 1.15, limitMPerS * 1.2)),
    limit: { at: limitMPerS, words: told(language, 'chart.beyond-air', { limit: three(limitMPerS) }) },
    wish: { at: quietMPerS, words: told(language, 'chart.quiet-below', { limit: three(quietMPerS) }) },
    dots: [{ hz: peakHz, value: peakMPerS, text: `${three(peakMPerS)} m/s` }].filter(({ hz }) => hz > 16),
    heightPx: 140
  }
}

/** What holds the system back: travel of cones and passive radiators, air in the port. */
export const limitCharts = (cover: PlanCover, curves: PlanCurves, language: Language): readonly FindingChart[] =>
  [travelChart, portAirChart, radiatorChart].flatMap(chart => chart(cover, curves, language) ?? [])
