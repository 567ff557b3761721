/** A chart whose title is its finding, for a page of any width: curves stretch, texts keep their size in pixels. */
import { line } from 'd3-shape'
import { type Language, told } from '../../domain/say.ts'
import { drawn, type Html, html } from '../draw/html.ts'
import { figure } from '../draw/number-text.ts'
import { element, escaped } from '../draw/svg.ts'
import { type ChartLabel, type Placing, placedLabels } from './chart-labels.ts'

interface Line {
  readonly at: number
  readonly words: string
}

export interface FindingChart {
  readonly language: Language
  readonly id: string
  readonly title: string
  /** Quantity, unit and figures. */
  readonly note: string
  readonly frequencyHz: readonly number[]
  readonly values: readonly number[]
  /** Named where others stand beside it. */
  readonly name?: string
  /** Further curves, told apart by dash and colour, each with its name. */
  readonly beside?: readonly { readonly values: readonly number[]; readonly name: string }[]
  /** Half the width of a pale area about the curve. */
  readonly spread?: number
  readonly range: readonly [number, number]
  readonly step: number
  /** Pale beyond it. */
  readonly limit?: Line
  /** Dotted: comfort or wish. */
  readonly wish?: Line
  readonly dots: readonly { readonly hz: number; readonly value: number; readonly text: string }[]
  readonly heightPx: number
  /** Tones that people know, under the axis. */
  readonly landmarks?: boolean
}

const FROM_HZ = 16
const TO_HZ = 160
export const labelledHz = [20, 30, 40, 60, 80, 100]
/** a′ = 440 Hz, equal temperament: 440·2^(−48/12), 440·2^(−41/12); the kick drum is judgement. */
export const landmarks = [
  [27.5, 'chart.mark.piano'],
  [41.2, 'chart.mark.bass'],
  [60, 'chart.mark.kick']
] as const
const WIDTH = 1000

/** Share of the width at which a frequency lies. */
export const across = (hz: number) => Math.log(hz / FROM_HZ) / Math.log(TO_HZ / FROM_HZ)
const percent = (share: number) => `${(share * 100).toFixed(2)}%`
/** From the top of the plot. */
export const upOf = ({ range: [low, high], heightPx }: FindingChart) => {
  return (value: number) => ((high - value) / (high - low)) * heightPx
}

function pathOf(chart: FindingChart, values: readonly number[]): string {
  const up = upOf(chart)
  const spots = chart.frequencyHz.map((hz, at): [number, number] => [across(hz) * WIDTH, up(values[at] ?? Number.NaN)])
  const path = line<[number, number]>()
    .defined(([, y]) => Number.isFinite(y))
    .x(([x]) => Math.round(x * 10) / 10)
    .y(([, y]) => Math.round(Math.max(-900, Math.min(900, y)) * 10) / 10)
  return path(spots) ?? ''
}

function spreadOf(chart: FindingChart): string {
  const { spread, values } = chart
  if (spread === undefined) return ''
  const upper = pathOf(
    chart,
    values.map(value => value + spread)
  )
  const lower = pathOf(
    { ...chart, frequencyHz: chart.frequencyHz.toReversed() },
    values.map(value => value - spread).toReversed()
  )
  return element('path', { d: `${upper}L${lower.slice(1)}Z`, class: 'spread' })
}

const flat = (y: number, className: string) => element('line', { x1: 0, x2: WIDTH, y1: y, y2: y, class: className })

/** What stretches with the page: grid, bands and curves. */
function stretched(chart: FindingChart, ticks: readonly number[]): string {
  const { heightPx, limit, wish, values, beside = [] } = chart
  const up = upOf(chart)
  const vertical = [...labelledHz, 50].map(hz =>
    element('line', { x1: across(hz) * WIDTH, x2: across(hz) * WIDTH, y1: 0, y2: heightPx, class: 'grid' })
  )
  return element(
    'svg',
    {
      viewBox: `0 0 ${WIDTH} ${heightPx}`,
      preserveAspectRatio: 'none',
      width: '100%',
      height: heightPx,
      class: 'stretched'
    },
    limit === undefined
      ? ''
      : element('rect', { x: 0, y: 0, width: WIDTH, height: Math.max(0, up(limit.at)), class: 'beyond' }),
    ...ticks.map(tick => flat(up(tick), 'grid')),
    ...vertical,
    spreadOf(chart),
    ...beside.map((each, index) => element('path', { d: pathOf(chart, each.values), class: `beside beside-${index}` })),
    element('path', { d: pathOf(chart, values), class: 'main' }),
    limit === undefined ? '' : flat(up(limit.at), 'limit'),
    wish === undefined ? '' : flat(up(wish.at), 'wish')
  )
}

const textSvg = (
  x: string,
  y: number,
  words: string,
  className: string,
  more: Readonly<Record<string, string | number>> = {}
) => element('text', { x, y, class: className, ...more }, escaped(words))

function axes(chart: FindingChart, ticks: readonly number[]): string {
  const { heightPx } = chart
  const up = upOf(chart)
  return [
    ...ticks.map(tick => textSvg('0', up(tick) + 4, figure(tick, 1, chart), 'tick', { dx: -6, 'text-anchor': 'end' })),
    ...labelledHz.map(hz =>
      textSvg(percent(across(hz)), heightPx + 16, String(hz), 'tick', { 'text-anchor': 'middle' })
    ),
    textSvg('100%', heightPx + 16, 'Hz', 'tick', { 'text-anchor': 'end' }),
    ...(chart.landmarks === true
      ? landmarks.map(([hz, id], index) =>
          // The last begins at its tone: on a phone the middle of it would stand in its neighbour.
          textSvg(percent(across(hz)), heightPx + 31, told(chart.language, id), 'tick', {
            'text-anchor': index === 2 ? 'start' : 'middle'
          })
        )
      : [])
  ].join('')
}

/** Names of curves stand along them, one further on than the other. */
const nameAt = (index: number) => 0.12 + 0.11 * index

/** Every text inside the frame where it touches nothing. */
export function labelsIn(chart: FindingChart): ReturnType<typeof placedLabels> {
  const { dots, limit, wish, name, beside = [], heightPx, frequencyHz } = chart
  const up = upOf(chart)
  const curves = [...(name === undefined ? [] : [{ name, values: chart.values }]), ...beside]
  const heights = (drawnCurves: readonly { readonly values: readonly number[] }[], share: number) => {
    const at = frequencyHz.findIndex(hz => across(hz) >= share)
    return at < 0 ? [] : drawnCurves.map(({ values }) => up(values[at] ?? Number.NaN))
  }
  const placing: Placing = {
    heightPx,
    curve: share => heights([chart, ...beside], share),
    lines: [limit, wish].flatMap(each => (each === undefined ? [] : [up(each.at)]))
  }
  const fixed = (each: Line | undefined, lift: number): readonly ChartLabel[] =>
    each === undefined
      ? []
      : [{ text: each.words, share: 1, y: up(each.at) - lift, fixed: true, className: 'limit-text' }]
  return placedLabels(
    [
      ...fixed(limit, 6),
      ...fixed(wish, 5),
      ...dots.map(({ hz, value, text }) => ({ text, share: across(hz), y: up(value), className: 'point' })),
      ...curves.map((each, index) => {
        const share = nameAt(index)
        const className = each.values === chart.values ? 'point' : 'tick'
        return { text: each.name, share, y: heights([each], share)[0] ?? heightPx / 2, className }
      })
    ],
    placing
  )
}

const labelsOf = (chart: FindingChart): string =>
  labelsIn(chart)
    .map(({ text, share, dx, y, anchor, className }) =>
      textSvg(percent(share), y, text, className, { dx, 'text-anchor': anchor })
    )
    .join('')

const dotsOf = (chart: FindingChart) =>
  chart.dots
    .map(({ hz, value }) => element('circle', { cx: percent(across(hz)), cy: upOf(chart)(value), r: 4, class: 'dot' }))
    .join('')

export const ticksOf = ({ range: [low, high], step }: FindingChart): readonly number[] =>
  Array.from({ length: Math.round((high - low) / step) + 1 }, (_, index) => low + index * step)

export function findingChart(chart: FindingChart): Html {
  const { id, title, note, heightPx, landmarks: named } = chart
  const ticks = ticksOf(chart)
  const svg = element(
    'svg',
    {
      width: '100%',
      height: heightPx + (named === true ? 36 : 21),
      role: 'img',
      'aria-labelledby': `${id}-t ${id}-d`,
      class: 'plot'
    },
    element('title', { id: `${id}-t` }, escaped(title)),
    element('desc', { id: `${id}-d` }, escaped(note)),
    stretched(chart, ticks),
    axes(chart, ticks),
    dotsOf(chart),
    labelsOf(chart)
  )
  return html`<figure class="chart"><figcaption><b>${title}</b> <span>${note}</span></figcaption>${drawn(svg)}</figure>`
}
