/** Lines of what stands against a panel, with the screws that go in there: dashed, seen through the board. */
import type { Panel, PanelMark } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import { type Drawn, drawnDisc, drawnLine, type PlacedText, type Spot } from '../draw/clear-texts.ts'
import { dimension, lengthText, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt, textWidth } from '../draw/svg.ts'
import { line, type PanelExtent, type PanelFrame, stroke, toX, toY } from './dimension-lines.ts'

export const marksOn = ({ copies }: Panel): readonly PanelMark[] => copies?.[0]?.marks ?? []

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

/** Shares of the strip at which its name is tried; the middle belongs to the notes of the edge. */
const tryShares = [0.27, 0.73, 0.12, 0.88, 0.5]

/** Along the strip, on the side of the middle of the panel first; beside a strip shorter than its name. */
function nameOf(mark: PanelMark, frame: PanelFrame, centre: Spot): PlacedText {
  const text = `${panelName(mark.part, frame.paper)}${placeText(mark, frame)}`
  const style = { size: line.small, colour: ink.quiet, className: 'quiet' }
  const { a, b, across } = onPaper(mark, frame, centre)
  const half = textWidth(text, line.small) / 2
  const off = (mark.widthM / 2) * frame.perM + 1.7
  if (Math.hypot(b.x - a.x, b.y - a.y) < 2 * half) {
    const aside = Math.abs(across.x) > 0.5 ? off + half : 0
    const places = [1, -1].flatMap(sign =>
      [0.5, 0.1, 0.9].map(share => ({
        x: a.x + share * (b.x - a.x) + sign * aside * Math.sign(across.x),
        y: a.y + share * (b.y - a.y) + (aside === 0 ? sign * across.y * off : 0),
        turn: 0
      }))
    )
    return { text, style, places }
  }
  const turn = uprightTurn(a, b)
  const places = [1, -1].flatMap(sign =>
    tryShares.map(share => ({
      x: a.x + share * (b.x - a.x) + sign * across.x * off,
      y: a.y + share * (b.y - a.y) + sign * across.y * off,
      turn
    }))
  )
  return { text, style, places }
}

/** Direction of a line on paper as a text is read along it [°]. */
export function uprightTurn(a: Spot, b: Spot): number {
  const angle = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI
  return angle > 90 || angle <= -90 ? angle + 180 : angle
}

/** The long sides of a strip on paper, from the one towards the middle of the panel. */
function sidesOf(mark: PanelMark, frame: PanelFrame, centre: Spot): readonly (readonly [Spot, Spot])[] {
  const { a, b, across } = onPaper(mark, frame, centre)
  const half = (mark.widthM / 2) * frame.perM
  const moved = (spot: Spot, sign: number) => ({
    x: spot.x + sign * half * across.x,
    y: spot.y + sign * half * across.y
  })
  return [1, -1].map(sign => [moved(a, sign), moved(b, sign)] as const)
}

function strip(mark: PanelMark, frame: PanelFrame, centre: Spot): string {
  const [[a, b], [d, c]] = sidesOf(mark, frame, centre) as [readonly [Spot, Spot], readonly [Spot, Spot]]
  return element('polygon', {
    points: [a, b, c, d].map(({ x, y }) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' '),
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

const middleOf = ({ uM, vM }: PanelExtent, frame: PanelFrame): Spot => ({
  x: toX(uM / 2, frame),
  y: toY(vM / 2, frame)
})

/** Strips and screws; their names stand where nothing else does. */
export function panelMarks(panel: Panel, frame: PanelFrame, extent: PanelExtent): string {
  const centre = middleOf(extent, frame)
  return marksOn(panel)
    .map(mark => strip(mark, frame, centre) + mark.screws.map(at => screw(at, frame)).join(''))
    .join('')
}

export const markNames = (panel: Panel, frame: PanelFrame, extent: PanelExtent): readonly PlacedText[] =>
  marksOn(panel).map(mark => nameOf(mark, frame, middleOf(extent, frame)))

/** What names and notes keep clear of. */
export const drawnMarks = (panel: Panel, frame: PanelFrame, extent: PanelExtent): readonly Drawn[] =>
  marksOn(panel).flatMap(mark => [
    ...sidesOf(mark, frame, middleOf(extent, frame)).map(([a, b]) => drawnLine(a, b)),
    ...mark.screws.map(({ uM, vM }) => drawnDisc({ x: toX(uM, frame), y: toY(vM, frame) }, ARM))
  ])

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
