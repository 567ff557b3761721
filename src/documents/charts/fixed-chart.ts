/** A chart with its finding as title for paper, which knows its width: colours as attributes, text of 7 points and more. */
import { line } from 'd3-shape'
import { told } from '../../domain/say.ts'
import { figure } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import { across, type FindingChart, labelledHz, labelsIn, landmarks, ticksOf, upOf } from './finding-chart.ts'

const WIDTH = 340
const LEFT = 28
const TOP = 34
const TEXT = 9.6

const x = (share: number) => LEFT + share * (WIDTH - LEFT - 4)

function curve(
  chart: FindingChart,
  values: readonly number[],
  look: Readonly<Record<string, string | number>>
): string {
  const up = upOf(chart)
  const inside = chart.frequencyHz.flatMap((hz, at): readonly [number, number][] => {
    const [share, y] = [across(hz), up(values[at] ?? Number.NaN)]
    return share < 0 || share > 1 || !(y > -1 && y < chart.heightPx + 1) ? [] : [[x(share), TOP + y]]
  })
  const d = line<[number, number]>()(inside)
  return element('path', { d: d ?? undefined, fill: 'none', ...look })
}

function frame(chart: FindingChart): string {
  const up = upOf(chart)
  const bottom = TOP + chart.heightPx
  const grid = { stroke: ink.grid, 'stroke-width': 0.7 }
  const quiet = { size: TEXT, colour: ink.quiet, className: 'quiet' } as const
  return [
    ...ticksOf(chart).map(tick =>
      element('line', { x1: x(0), x2: x(1), y1: TOP + up(tick), y2: TOP + up(tick), ...grid })
    ),
    ...ticksOf(chart).map(tick =>
      textAt(x(0) - 4, TOP + up(tick) + 3, figure(tick, 1, chart), { ...quiet, anchor: 'end' })
    ),
    ...labelledHz.map(hz => element('line', { x1: x(across(hz)), x2: x(across(hz)), y1: TOP, y2: bottom, ...grid })),
    ...labelledHz.map(hz => textAt(x(across(hz)), bottom + 12, String(hz), { ...quiet, anchor: 'middle' })),
    textAt(x(1), bottom + 12, 'Hz', { ...quiet, anchor: 'end' }),
    ...(chart.landmarks === true
      ? landmarks.map(([hz, id]) =>
          textAt(x(across(hz)), bottom + 24, told(chart.language, id), { ...quiet, anchor: 'middle' })
        )
      : [])
  ].join('')
}

function bounds({ limit, wish, ...chart }: FindingChart): string {
  const up = upOf(chart)
  const at = (value: number, look: Readonly<Record<string, string | number>>) =>
    element('line', {
      x1: x(0),
      x2: x(1),
      y1: TOP + up(value),
      y2: TOP + up(value),
      stroke: ink.limit,
      class: 'limit',
      ...look
    })
  return [
    limit === undefined ? '' : at(limit.at, { 'stroke-width': 1.6 }),
    wish === undefined ? '' : at(wish.at, { 'stroke-width': 1, 'stroke-dasharray': '1.5 3' })
  ].join('')
}

/** @returns an SVG of 340 units in width */
export function fixedChart(chart: FindingChart): string {
  const { id, title, note, values, beside = [], dots, heightPx } = chart
  const up = upOf(chart)
  const labels = labelsIn(chart).map(({ text, share, dx, y, anchor, className }) => {
    const colour = className === 'limit-text' ? ink.limit : className === 'point' ? ink.cut : ink.quiet
    return textAt(x(share) + dx, TOP + y, text, { size: TEXT, anchor, colour, className })
  })
  return svgDocument(
    { id: `${id}-fixed`, title, description: note },
    { width: WIDTH, height: TOP + heightPx + (chart.landmarks === true ? 30 : 18) },
    textAt(0, 12, title, { size: 11.5, bold: true }),
    textAt(0, 25, note.split('. ')[0] ?? note, { size: TEXT, colour: ink.quiet, className: 'quiet' }),
    frame(chart),
    bounds(chart),
    ...beside.map(each =>
      curve(chart, each.values, { stroke: ink.quiet, class: 'beside', 'stroke-width': 1.1, 'stroke-dasharray': '5 3' })
    ),
    curve(chart, values, { stroke: ink.cut, class: 'main', 'stroke-width': 1.8 }),
    ...dots.map(({ hz, value }) =>
      element('circle', { cx: x(across(hz)), cy: TOP + up(value), r: 2.6, fill: ink.cut, class: 'dot' })
    ),
    ...labels
  )
}
