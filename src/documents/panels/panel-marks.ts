/** Lines of what stands against a panel, with the screws that go in there: dashed, seen through the board. */
import type { Panel, PanelMark } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import { dimension, lengthText, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt, textWidth } from '../draw/svg.ts'
import { line, type PanelFrame, stroke, toX, toY } from './dimension-lines.ts'

export const marksOn = ({ copies }: Panel): readonly PanelMark[] => copies?.[0]?.marks ?? []

interface Spot {
  readonly x: number
  readonly y: number
}

/** The middle line on paper, and the unit vector across it that points into the panel. */
function onPaper({ from, to }: PanelMark, frame: PanelFrame, centre: Spot) {
  const [a, b] = mapped([from, to], ({ uM, vM }): Spot => ({ x: toX(uM, frame), y: toY(vM, frame) }))
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const across = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length }
  const towards = (centre.x - a.x) * across.x + (centre.y - a.y) * across.y
  return { a, b, across: towards < 0 ? { x: -across.x, y: -across.y } : across }
}

/** Middle of the strip from the left or from below; a leaning one is placed by its ends in the list. */
function placeText({ from, to }: PanelMark, { paper }: PanelFrame): string {
  if (Math.abs(from.uM - to.uM) < 1e-5) return ` ${dimension(from.uM, paper)}→`
  return Math.abs(from.vM - to.vM) < 1e-5 ? ` ${dimension(from.vM, paper)}↑` : ''
}

/** Width of the strips that lie along the edges of a panel [m]; 0 where nothing stands there. */
export function edgeStripM(panel: Panel): number {
  const us = panel.outline.map(({ uM }) => uM)
  const vs = panel.outline.map(({ vM }) => vM)
  const isAtEdge = ({ from, to, widthM }: PanelMark) =>
    [from, to].every(({ vM }) => near(vM, widthM, vs)) || [from, to].every(({ uM }) => near(uM, widthM, us))
  const near = (at: number, widthM: number, ends: readonly number[]) =>
    at - widthM < Math.min(...ends) || at + widthM > Math.max(...ends)
  return Math.max(0, ...marksOn(panel).map(mark => (isAtEdge(mark) ? mark.widthM : 0)))
}

/** Whether a text about a point would run into a hole. */
function meetsHole({ x, y }: Spot, half: number, panel: Panel, frame: PanelFrame): boolean {
  return panel.cutOuts.some(({ uM, vM, diameterM, widthM = 0, heightM = 0 }) => {
    const [dx, dy] = [Math.abs(toX(uM, frame) - x), Math.abs(toY(vM, frame) - y)]
    if (diameterM !== undefined) return Math.hypot(dx, dy) < (diameterM / 2) * frame.perM + half
    return dx < (widthM / 2) * frame.perM + half && dy < (heightM / 2) * frame.perM + half
  })
}

const styleAt = (turn: number) =>
  ({ size: line.small, anchor: 'middle', colour: ink.quiet, className: 'quiet', turn }) as const

/** Shares of the strip at which its name is tried; the middle belongs to the notes of the edge. */
const tryShares = [0.27, 0.73, 0.12, 0.88]

/** Along the strip, on the side of the middle of the panel, or where no hole is; across a strip shorter than its name. */
function label(mark: PanelMark, panel: Panel, frame: PanelFrame, centre: Spot): string {
  const text = `${panelName(mark.part, frame.paper)}${placeText(mark, frame)}`
  const { a, b, across } = onPaper(mark, frame, centre)
  const half = textWidth(text, line.small) / 2
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const off = (mark.widthM / 2) * frame.perM + 1.4
  if (length < 2 * half) {
    const side = Math.abs(across.x) > 0.5 ? (off + half) * Math.sign(across.x) : 0
    return textAt((a.x + b.x) / 2 + side, (a.y + b.y) / 2 + 0.8, text, styleAt(0))
  }
  const spots = [1, -1].flatMap(sign =>
    tryShares.map(share => ({
      x: a.x + share * (b.x - a.x) + sign * across.x * off,
      y: a.y + share * (b.y - a.y) + sign * across.y * off
    }))
  )
  const at = spots.find(spot => !meetsHole(spot, half * 0.7, panel, frame)) ?? (spots[0] as Spot)
  const angle = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI
  const turn = angle > 90 || angle <= -90 ? angle + 180 : angle
  // A text stands on its base line: half its height brings it to the middle of the gap.
  const radians = (turn * Math.PI) / 180
  return textAt(at.x - 0.8 * Math.sin(radians), at.y + 0.8 * Math.cos(radians), text, styleAt(turn))
}

function strip(mark: PanelMark, frame: PanelFrame, centre: Spot): string {
  const { a, b, across } = onPaper(mark, frame, centre)
  const half = (mark.widthM / 2) * frame.perM
  const corner = (spot: Spot, sign: number) =>
    `${(spot.x + sign * half * across.x).toFixed(2)},${(spot.y + sign * half * across.y).toFixed(2)}`
  return element('polygon', {
    points: [corner(a, 1), corner(b, 1), corner(b, -1), corner(a, -1)].join(' '),
    fill: 'none',
    stroke: ink.quiet,
    class: 'thin',
    'stroke-width': 0.22,
    'stroke-dasharray': mark.face === 'inner' ? '1.8 1' : undefined
  })
}

const ARM = 0.9

function screw({ uM, vM }: { readonly uM: number; readonly vM: number }, frame: PanelFrame): string {
  const [x, y] = [toX(uM, frame), toY(vM, frame)]
  return (
    stroke(x - ARM, y - ARM, x + ARM, y + ARM, 0.3, ink.cut, 'centre') +
    stroke(x - ARM, y + ARM, x + ARM, y - ARM, 0.3, ink.cut, 'centre')
  )
}

export function panelMarks(
  panel: Panel,
  frame: PanelFrame,
  extent: { readonly uM: number; readonly vM: number }
): string {
  const centre = { x: toX(extent.uM / 2, frame), y: toY(extent.vM / 2, frame) }
  return marksOn(panel)
    .map(
      mark =>
        strip(mark, frame, centre) +
        label(mark, panel, frame, centre) +
        mark.screws.map(at => screw(at, frame)).join('')
    )
    .join('')
}

const letterOf = (index: number) => String.fromCharCode(97 + (index % 26))

/** For a figure that a list stands beside: strips with a letter each, pilots as dots. */
export function letteredMarks(panel: Panel, frame: PanelFrame): string {
  const corners = panel.outline.map(point => ({ x: toX(point.uM, frame), y: toY(point.vM, frame) }))
  const mean = (pick: (spot: Spot) => number) => corners.reduce((sum, spot) => sum + pick(spot), 0) / corners.length
  const centre = { x: mean(({ x }) => x), y: mean(({ y }) => y) }
  return marksOn(panel)
    .map((mark, index) => {
      const { a, b, across } = onPaper(mark, frame, centre)
      const off = (mark.widthM / 2) * frame.perM + 7
      const [x, y] = [a.x + 0.27 * (b.x - a.x) + across.x * off, a.y + 0.27 * (b.y - a.y) + across.y * off]
      const dots = mark.screws.map(({ uM, vM }) =>
        element('circle', { cx: toX(uM, frame), cy: toY(vM, frame), r: 1.6, fill: ink.cut, class: 'bubble' })
      )
      const letter = { size: 11, anchor: 'middle', colour: ink.quiet, className: 'quiet' } as const
      return strip(mark, frame, centre) + dots.join('') + textAt(x, y + 4, letterOf(index), letter)
    })
    .join('')
}

/** What stands where, a line each, by the letters of the figure. */
export function markTexts(panel: Panel, paper: Reader): readonly string[] {
  const { language } = paper
  return marksOn(panel).map(({ part, face, from, to, screws }, index) => {
    const mark = {
      letter: letterOf(index),
      part: panelName(part, paper),
      side: face === 'inner' ? '' : told(language, 'draw.this-side'),
      held:
        screws.length === 0
          ? told(language, 'draw.glued')
          : told(language, 'draw.screws-count', { count: screws.length })
    }
    if (Math.abs(from.uM - to.uM) < 1e-5) {
      return told(language, 'draw.mark-left', { ...mark, distance: lengthText(from.uM, paper) })
    }
    return Math.abs(from.vM - to.vM) < 1e-5
      ? told(language, 'draw.mark-below', { ...mark, distance: lengthText(from.vM, paper) })
      : told(language, 'draw.mark-leaning', mark)
  })
}
