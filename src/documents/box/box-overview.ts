/** The whole box seen from the front right and above: which panel goes where. Panels in front whole, those behind dashed. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { CutOut } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { lengthText, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt, textWidth } from '../draw/svg.ts'
import {
  depth,
  dot,
  isInside,
  openings,
  type Placed,
  type Project,
  placedBoards,
  points,
  projectionOf,
  rim,
  type Spot,
  sawnEnds,
  view
} from './oblique.ts'

const drawn = { width: 320, height: 230, left: 10, top: 10 } as const

function scaleOf({ widthM, heightM, depthM }: BoxLayout['outer']): number {
  return Math.min(drawn.width / (widthM + depth.right * depthM), drawn.height / (heightM + depth.up * depthM))
}

const drawnHeight = (outer: BoxLayout['outer']) => scaleOf(outer) * (outer.heightM + depth.up * outer.depthM)

const projection = (outer: BoxLayout['outer']) =>
  projectionOf({ perM: scaleOf(outer), left: drawn.left, bottom: drawn.top + drawnHeight(outer) })

function hidden(board: Placed, project: Project): string {
  return element('polygon', {
    points: points(board.panel.outline.map(point => project(board, point))),
    fill: 'none',
    stroke: ink.quiet,
    class: 'thin',
    'stroke-width': 0.9,
    'stroke-dasharray': '4 3'
  })
}

const woodFace = (spots: readonly Spot[], width: number) =>
  element('polygon', {
    points: points(spots),
    fill: ink.wood,
    class: 'wood',
    stroke: ink.text,
    'stroke-width': width,
    'stroke-linejoin': 'round'
  })

function outerFace(board: Placed, project: Project): string {
  const holes = openings(board.panel).map(cutOut =>
    element('polygon', {
      points: points(rim(cutOut).map(point => project(board, point))),
      fill: ink.paper,
      class: 'hole',
      stroke: ink.cut,
      'stroke-width': 1.3
    })
  )
  return (
    woodFace(
      board.panel.outline.map(point => project(board, point)),
      1.4
    ) + holes.join('')
  )
}

/** Where the name stands clear of every hole: the first free of several heights, else none. */
function nameAt(board: Placed, project: Project, paper: Reader): string {
  const { outline } = board.panel
  const name = panelName(board.panel.name, paper)
  const us = outline.map(({ uM }) => uM)
  const vs = outline.map(({ vM }) => vM)
  const [left, right, low, high] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)]
  const perM =
    Math.hypot(
      project(board, { uM: right, vM: low }).x - project(board, { uM: left, vM: low }).x,
      project(board, { uM: right, vM: low }).y - project(board, { uM: left, vM: low }).y
    ) /
    (right - left)
  const [half, tall] = [textWidth(name, 12) / 2 / perM, 9 / perM]
  const reach = ({ uM, vM, kind, diameterM = 0, widthM = diameterM, heightM = diameterM }: CutOut) => ({
    u: uM,
    v: vM,
    w: (kind === 'circle' ? diameterM : widthM) / 2,
    h: (kind === 'circle' ? diameterM : heightM) / 2
  })
  const holes = openings(board.panel).map(reach)
  const places = [0.5, 0.9, 0.1, 0.75, 0.25].flatMap(up =>
    [0.5, 0.15, 0.85].map(across => ({ uM: left + across * (right - left), vM: low + up * (high - low) }))
  )
  if (2 * half > right - left) return ''
  const free = places.find(({ uM, vM }) =>
    holes.every(({ u, v, w, h }) => Math.abs(uM - u) > w + half || Math.abs(vM - v) > h + tall)
  )
  if (free === undefined) return ''
  const { x, y } = project(board, free)
  return textAt(x, y + 4, name, { size: 12, anchor: 'middle', bold: true })
}

/** @returns undefined for a box whose panels have no place */
export function boxOverview(box: BoxLayout, id: string, paper: Reader): string | undefined {
  const boards = placedBoards(box)
  if (boards.length < 4) return undefined
  const project = projection(box.outer)
  const shell = boards.filter(board => !isInside(board))
  const front = shell.filter(({ out }) => dot(out, view) > 1e-9)
  const sawn = sawnEnds(shell, project).map(spots => woodFace(spots, 0.8))
  const { widthM, heightM, depthM, topDepthM } = box.outer
  const { language } = paper
  const outside = {
    panels: box.panels.map(({ name }) => panelName(name, paper)).join(', '),
    width: lengthText(widthM, paper),
    height: lengthText(heightM, paper),
    depth: lengthText(depthM, paper)
  }
  const bottom = drawn.top + drawnHeight(box.outer)
  return svgDocument(
    {
      id,
      title: told(language, 'draw.overview'),
      description:
        topDepthM === undefined
          ? told(language, 'draw.overview-words', outside)
          : told(language, 'draw.overview-leaning', { ...outside, top: lengthText(topDepthM, paper) })
    },
    { width: drawn.width + 2 * drawn.left, height: bottom + 10 },
    ...sawn,
    ...front.map(board => outerFace(board, project)),
    ...boards.filter(board => !front.includes(board)).map(board => hidden(board, project)),
    ...front.map(board => nameAt(board, project, paper))
  )
}
