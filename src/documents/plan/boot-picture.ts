/** The picture on the first page: the box in its boot, seen from the tailgate, with its sizes and what stays free. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { CutOut } from '../../contract/boxes/panel.ts'
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import { told } from '../../domain/say.ts'
import {
  depth,
  dot,
  isInside,
  type Oblique,
  openings,
  type Placed,
  placedBoards,
  points,
  projectionOf,
  rim,
  type Spot,
  sawnEnds,
  spotOf,
  view
} from '../box/oblique.ts'
import { dimension, lengthText, type Reader, shortUnit } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'

type Space = NonNullable<PlanCover['asked']>['space']

const sheet = { width: 360, height: 210, left: 34, right: 14, top: 16, bottom: 40 } as const
const TEXT = 10

interface Boot {
  readonly widthM: number
  readonly heightM: number
  readonly depthM: number
}

/** A side that was not given is as large as the box. */
const bootOf = ({ widthM, heightM, depthM, boxWidthM, boxHeightM, boxDepthM }: Space): Boot => ({
  widthM: widthM ?? boxWidthM,
  heightM: heightM ?? boxHeightM,
  depthM: depthM ?? boxDepthM
})

const face = (spots: readonly Spot[], fill: string, className: string, width = 0.8) =>
  element('polygon', {
    points: points(spots),
    fill,
    class: className,
    stroke: width === 0 ? undefined : ink.text,
    'stroke-width': width === 0 ? undefined : width,
    'stroke-linejoin': 'round'
  })

/** Floor and seat back with its seams; near edges are left out, they would cross the box. */
function bootFigure(at: Oblique, { widthM, heightM, depthM }: Boot): string {
  const spot = (x: number, y: number, z: number) => spotOf(at, { x, y, z })
  const floor = [spot(0, 0, 0), spot(widthM, 0, 0), spot(widthM, depthM, 0), spot(0, depthM, 0)]
  const back = [spot(0, depthM, 0), spot(widthM, depthM, 0), spot(widthM, depthM, heightM), spot(0, depthM, heightM)]
  const seams = [1, 2, 3, 4, 5].map(part => {
    const [low, high] = [spot((part * widthM) / 6, depthM, 0), spot((part * widthM) / 6, depthM, heightM)]
    return element('line', { x1: low.x, y1: low.y, x2: high.x, y2: high.y, stroke: ink.hatch, class: 'hatch' })
  })
  return [face(floor, ink.wood, 'floor', 0), face(back, ink.paper, 'seat', 0.5), ...seams].join('')
}

/** Flange, surround, cone and cap by the cut-out alone; the shares are of the picture only. */
function driverRings(board: Placed, at: Oblique, hole: CutOut): string {
  const project = projectionOf(at)
  const { diameterM = 0 } = hole
  return (
    [
      [1.1, ink.driver, 'driver'],
      [0.9, ink.mouth, 'mouth'],
      [0.76, ink.driver, 'driver'],
      [0.26, ink.mouth, 'mouth']
    ] as const
  )
    .map(([share, fill, className]) => {
      const ring = rim({ ...hole, diameterM: share * diameterM }).map(point => project(board, point))
      return face(ring, fill, className, 0)
    })
    .join('')
}

function boardFace(board: Placed, at: Oblique): string {
  const project = projectionOf(at)
  const aside = Math.abs(board.out.x) > 0.5
  const shell = face(
    board.panel.outline.map(point => project(board, point)),
    aside ? ink.shade : ink.wood,
    aside ? 'shade' : 'wood',
    1
  )
  const holes = openings(board.panel).map(hole =>
    hole.purpose === 'driver'
      ? driverRings(board, at, hole)
      : face(
          rim(hole).map(point => project(board, point)),
          hole.purpose === 'port' ? ink.driver : ink.mouth,
          hole.purpose === 'port' ? 'driver' : 'mouth',
          0
        )
  )
  return shell + holes.join('')
}

/** A line with ticks at its ends and its figure beside it. */
function measure(
  from: Spot,
  to: Spot,
  text: string,
  place: { readonly dx?: number; readonly dy?: number; turn?: number }
) {
  const upright = Math.abs(to.x - from.x) < 1
  const tick = (spot: Spot) =>
    element('line', {
      x1: spot.x - (upright ? 3 : 0),
      x2: spot.x + (upright ? 3 : 0),
      y1: spot.y - (upright ? 0 : 3),
      y2: spot.y + (upright ? 0 : 3),
      stroke: ink.text,
      class: 'ink-line'
    })
  const line = element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: ink.text, class: 'ink-line' })
  const [x, y] = [(from.x + to.x) / 2 + (place.dx ?? 0), (from.y + to.y) / 2 + (place.dy ?? 0)]
  const turn = place.turn === undefined ? {} : { turn: place.turn }
  return (
    line + tick(from) + tick(to) + textAt(x, y, text, { size: TEXT, anchor: 'middle', className: 'ink size', ...turn })
  )
}

function sizes(at: Oblique, boot: Boot, { boxWidthM, boxHeightM }: Space, deepM: number, paper: Reader): string {
  const spot = (x: number, y: number, z: number) => spotOf(at, { x, y, z })
  const base = spot(0, 0, 0).y + 9
  const [left, right, end] = [spot(0, deepM, 0).x, spot(boxWidthM, deepM, 0).x, spot(boot.widthM, deepM, 0).x]
  const foot = spot(0, deepM, 0).y
  const freeM = boot.widthM - boxWidthM
  const shift = spot(0, 0, 0).x - left
  const across = measure({ x: left + shift, y: base }, { x: right + shift, y: base }, lengthText(boxWidthM, paper), {
    dy: 13
  })
  const room =
    freeM > 0.08
      ? measure(
          { x: right + shift, y: base },
          { x: end + shift, y: base },
          told(paper.language, 'draw.free', { size: dimension(freeM, paper) }),
          {
            dy: 13
          }
        )
      : ''
  const high = measure(
    { x: left - 9, y: foot },
    { x: left - 9, y: spot(0, deepM, boxHeightM).y },
    lengthText(boxHeightM, paper),
    { dx: -5, turn: -90 }
  )
  return across + room + high
}

/** Letters of the legend that a phone has room for, where its text stands largest. */
const LONGEST_LEGEND = 46
const LEGEND_LINE = 14

/** In one line, or with what follows its semicolon below: fractions of an inch are long. */
const legendLines = (legend: string): readonly string[] =>
  [...legend].length > LONGEST_LEGEND ? legend.split(/(?<=;) /) : [legend]

function legendFigure(lines: readonly string[]): string {
  return lines
    .map((line, index) =>
      textAt(sheet.width / 2, sheet.height - 6 + index * LEGEND_LINE, line, {
        size: TEXT,
        anchor: 'middle',
        colour: ink.quiet,
        className: 'quiet size'
      })
    )
    .join('')
}

/** @returns undefined for a box whose panels have no place */
export function bootPicture(box: BoxLayout, space: Space, paper: Reader, id = 'boot'): string | undefined {
  const boards = placedBoards(box)
  if (boards.length < 4) return undefined
  const boot = bootOf(space)
  const perM = Math.min(
    (sheet.width - sheet.left - sheet.right) / (boot.widthM + depth.right * boot.depthM),
    (sheet.height - sheet.top - sheet.bottom) / (boot.heightM + depth.up * boot.depthM)
  )
  const at: Oblique = { perM, left: sheet.left, bottom: sheet.height - sheet.bottom }
  // Pushed against the seat back, at the left.
  const deepM = boot.depthM - space.boxDepthM
  const { x: left, y: bottom } = spotOf(at, { x: space.coveringM, y: deepM + space.coveringM, z: space.coveringM })
  const inBoot: Oblique = { perM, left, bottom }
  const shell = boards.filter(board => !isInside(board))
  const ends = sawnEnds(shell, projectionOf(inBoot))
  const shown = shell
    .filter(board => dot(board.out, view) > 1e-9)
    .toSorted((a, b) => a.out.y - b.out.y)
    .reverse()
  const whole = [space.boxWidthM, space.boxHeightM, space.boxDepthM].map(size => dimension(size, paper)).join(' × ')
  const inside = [boot.widthM, boot.heightM, boot.depthM].map(size => dimension(size, paper)).join(' × ')
  const room = `${inside} ${shortUnit(paper)}`
  const { language } = paper
  const legend = legendLines(told(language, 'draw.boot-legend', { depth: lengthText(space.boxDepthM, paper), room }))
  return svgDocument(
    { id, title: told(language, 'draw.boot'), description: told(language, 'draw.boot-words', { whole, room }) },
    { width: sheet.width, height: sheet.height + (legend.length - 1) * LEGEND_LINE },
    bootFigure(at, boot),
    ...ends.map(spots => face(spots, ink.wood, 'wood', 0.6)),
    ...shown.map(board => boardFace(board, inBoot)),
    sizes(at, boot, space, deepM, paper),
    legendFigure(legend)
  )
}
