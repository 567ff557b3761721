/** A picture for each step of assembly: what stands already in wood, what comes in blue, with the way it is moved. */
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BoxSolids } from '../../domain/box/layout/lay-out-box.ts'
import { boardBody } from '../../domain/box/solids/bodies.ts'
import { boardFrame } from '../../domain/box/solids/solids.ts'
import { told } from '../../domain/say.ts'
import { type Convex, dot, plus, type Vector3, vector } from '../../numeric/geometry/convex-distance.ts'
import { mapped } from '../../numeric/tuple.ts'
import { figure, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import { type Drawing, type PaperSize, scaleFor } from '../panels/panel-drawing.ts'
import { mouthsOf } from './assembly-mouths.ts'
import {
  boardShape,
  type Eye,
  eyeFrom,
  metalLook,
  newLook,
  type OnPaper,
  pieceShape,
  woodLook
} from './assembly-shapes.ts'
import { farthestFirst } from './seen-order.ts'

/** Half of an A4 sheet, less its margins. */
const sheet: PaperSize = { width: 134, height: 118 }
const margin = { side: 14, top: 20, below: 20 } as const

interface View {
  readonly eye: Eye
  readonly words: 'front-right' | 'front-left' | 'behind-left'
}

/** Steep enough to look into the open box; the first of them as long as it is open. */
const viewsTurned = (byRad: number): readonly [View, ...View[]] => {
  const eye = (x: number, y: number) => {
    const [cos, sin] = [Math.cos(byRad), Math.sin(byRad)]
    return eyeFrom(vector(x * cos - y * sin, x * sin + y * cos, 0.62))
  }
  return [
    { eye: eye(0.4, -0.72), words: 'front-right' },
    { eye: eye(-0.4, -0.72), words: 'front-left' },
    { eye: eye(-0.4, 0.72), words: 'behind-left' }
  ]
}

/** A wall seen from its edge shows nothing: less than this of its face, and the box is turned a little. Ours. */
const LEAST_SEEN = 0.15
const turnsRad = [0, -0.14, 0.14, -0.26, 0.26]

/** The views in which every upright wall shows some of its face. */
function viewsOf(boards: readonly Panel[]): readonly [View, ...View[]] {
  const walls = boards.flatMap(({ place }) => (place === undefined ? [] : [boardFrame(place).outwards]))
  const showsAll = ([{ eye }]: readonly [View, ...View[]]) =>
    walls.every(outwards => Math.abs(dot(outwards, eye.towards)) >= LEAST_SEEN)
  return turnsRad.map(viewsTurned).find(showsAll) ?? viewsTurned(0)
}

/** Once lid and front are on, the side from which a thing comes. */
function viewOf(views: readonly [View, ...View[]], towards: Vector3, standing: readonly string[]): View {
  const isClosed = ['top', 'front'].every(name => standing.includes(name))
  return (isClosed ? views.find(({ eye }) => dot(towards, eye.towards) < 0) : undefined) ?? views[0]
}

interface Part {
  readonly name: string
  readonly pieces: readonly Convex[]
  readonly draw: (eye: Eye, onPaper: OnPaper, isNew: boolean) => string
}

/** By the names of the steps: the second layer of a board bears a 2. */
function partsOf({ boards, bodies }: BoxSolids): readonly Part[] {
  const shown = boards.flatMap((panel: Panel, i): Part[] => {
    const { place, name } = panel
    if (place === undefined) return []
    const before = boards.slice(0, i).filter(other => other.name === name).length
    return [
      {
        name: before === 0 ? name : `${name} ${before + 1}`,
        pieces: boardBody({ ...panel, place }).pieces.map(({ solid }) => solid),
        draw: (eye, onPaper, isNew) => boardShape(panel, eye, onPaper, isNew ? newLook : woodLook)
      }
    ]
  })
  // Divider and slot are shown as the boards they are; a flange lies before its board and a motor behind it, so each piece counts.
  const things = bodies
    .filter(({ kind }) => kind !== 'divider' && kind !== 'slot')
    .flatMap(body => [
      ...body.pieces.map(
        ({ solid }): Part => ({
          name: body.name,
          pieces: [solid],
          draw: (eye, onPaper, isNew) => pieceShape(solid, eye, onPaper, isNew ? newLook : metalLook)
        })
      ),
      ...mouthsOf(body).map(
        ({ piece, draw }): Part => ({
          name: body.name,
          pieces: [piece],
          draw: (eye, onPaper, isNew) => draw(eye, onPaper, isNew ? newLook : metalLook)
        })
      )
    ])
  return [...shown, ...things]
}

const extent = (pieces: readonly Convex[], along: Vector3) =>
  Math.max(...pieces.map(piece => dot(along, piece.support(along))))
const turned = ({ x, y, z }: Vector3) => vector(-x, -y, -z)

interface Window {
  readonly scale: number
  readonly onPaper: OnPaper
}

/** The whole box at the largest usual scale, the same in every picture. */
function windowOn(eye: Eye, pieces: readonly Convex[]): Window {
  const [left, right] = [-extent(pieces, turned(eye.right)), extent(pieces, eye.right)]
  const [low, high] = [-extent(pieces, turned(eye.up)), extent(pieces, eye.up)]
  const room = { width: sheet.width - 2 * margin.side, height: sheet.height - margin.top - margin.below }
  const scale = scaleFor(right - left, high - low, room)
  const perM = 1000 / scale
  const x = sheet.width / 2 - (perM * (left + right)) / 2
  const y = margin.top + room.height / 2 + (perM * (low + high)) / 2
  return { scale, onPaper: point => ({ x: x + perM * dot(point, eye.right), y: y - perM * dot(point, eye.up) }) }
}

const ARROW_M = 0.12
const GAP_M = 0.015

/** From outside up to the part, along the way it is moved. */
function arrow(pieces: readonly Convex[], towards: Vector3, onPaper: OnPaper): string {
  const middle = pieces.reduce((sum, piece) => plus(sum, piece.middle, 1 / pieces.length), vector(0, 0, 0))
  const behind = extent(pieces, turned(towards)) + dot(middle, towards)
  const [from, to] = mapped([behind + GAP_M + ARROW_M, behind + GAP_M], by => onPaper(plus(middle, towards, -by)))
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  if (length < 1) return ''
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length]
  const head = [
    [to.x, to.y],
    [to.x - 3 * dx - 1.4 * dy, to.y - 3 * dy + 1.4 * dx],
    [to.x - 3 * dx + 1.4 * dy, to.y - 3 * dy - 1.4 * dx]
  ]
  return (
    element('line', {
      x1: from.x,
      y1: from.y,
      x2: to.x,
      y2: to.y,
      stroke: ink.limit,
      class: 'limit-line',
      'stroke-width': 0.8
    }) +
    element('polygon', {
      points: head.map(([x = 0, y = 0]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' '),
      fill: ink.limit,
      class: 'limit'
    })
  )
}

const between = (values: readonly number[]) => ({ least: Math.min(...values), most: Math.max(...values) })

function seen(part: Part, onPaper: OnPaper, eye: Eye) {
  const corners = part.pieces.flatMap(piece =>
    [eye.right, turned(eye.right), eye.up, turned(eye.up)].map(along => onPaper(piece.support(along)))
  )
  const [xs, ys] = [between(corners.map(({ x }) => x)), between(corners.map(({ y }) => y))]
  return { ...part, left: xs.least, right: xs.most, low: ys.least, high: ys.most }
}

/** What stands and what comes, the farthest first. */
function scene(standing: readonly Part[], fresh: readonly Part[], onPaper: OnPaper, eye: Eye): string {
  const all = [...standing, ...fresh].map(part => seen(part, onPaper, eye))
  const names = new Set(fresh.map(({ name }) => name))
  return farthestFirst(all, eye.towards)
    .map(part => part.draw(eye, onPaper, names.has(part.name)))
    .join('')
}

/** In the order of the steps. @param prefix  unique on a page */
export function assemblyDrawings(solids: BoxSolids, prefix: string, reader: Reader): readonly Drawing[] {
  const parts = partsOf(solids)
  const { steps } = solids.layout.assembly
  const all = parts.flatMap(({ pieces }) => pieces)
  const views = viewsOf(solids.boards)
  const named = (names: readonly string[]) => parts.filter(({ name }) => names.includes(name))
  return steps.map((step, index) => {
    const towards = vector(step.towards.x, step.towards.y, step.towards.z)
    const before = steps.slice(0, index).flatMap(({ parts: names }) => names)
    const { eye, words } = viewOf(views, towards, before)
    const { scale, onPaper } = windowOn(eye, all)
    const fresh = named(step.parts)
    const pieces = fresh.flatMap(part => part.pieces)
    const { language } = reader
    const called = step.parts.map(name => panelName(name, reader))
    const title = `${index + 1}  ${called.join(' + ')}`
    const seen = told(language, `draw.view.${words}`)
    const where = { number: index + 1, count: steps.length, seen }
    const foot = told(language, 'draw.step-foot', { ...where, scale: figure(scale, 1, reader) })
    const description = told(language, 'draw.step-words', { ...where, parts: called.join(', ') })
    const svg = svgDocument(
      { id: `${prefix}-assembly-${index + 1}`, title: told(language, 'draw.step-title', { title }), description },
      { ...sheet, unit: 'mm' },
      textAt(4, 8, title, { size: 4.2, bold: true }),
      scene(named(before), fresh, onPaper, eye),
      index === 0 ? '' : arrow(pieces, towards, onPaper),
      textAt(4, sheet.height - 4, foot, { size: 2.6, colour: ink.quiet, className: 'quiet' })
    )
    return { name: title, svg, scale, widthM: sheet.width / 1000, heightM: sheet.height / 1000 }
  })
}
