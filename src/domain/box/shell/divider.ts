/** The board between the two chambers of a band-pass box, parallel to the front. */
import {
  alongLine,
  bounds,
  edgeLine,
  type Line,
  leftPart,
  type Point2,
  type Polygon,
  signedArea,
  vertex
} from '../../../numeric/geometry/polygon.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { type Face, type Inside, onFace, profilePoint } from './face.ts'
import { clearLength } from './shell.ts'
import { type BarePanel, boardAlong, sectionEnds } from './shell-panels.ts'

export interface BuiltDivider {
  /** Clear from the inner face of the front to the board [m]. */
  readonly fromFrontM: number
  readonly panel: BarePanel
  readonly frontGrossM3: number
  readonly rearGrossM3: number
  readonly boardM3: number
  /** Profile of the board and of the chambers before and behind it. */
  readonly parts: Parts
}

interface Parts {
  readonly front: Polygon
  readonly board: Polygon
  readonly rear: Polygon
}

/** Parts of the inner outline before, in and behind a board at a distance from the inner face of the front. */
function parts({ inner }: Inside, front: number, fromFrontM: number, thicknessM: number): Parts {
  const near = edgeLine(inner, front, fromFrontM)
  const far = edgeLine(inner, front, fromFrontM + thicknessM)
  const behindNear = leftPart(inner, near)
  return {
    front: leftPart(inner, turned(near)),
    board: leftPart(behindNear, turned(far)),
    rear: leftPart(behindNear, far)
  }
}

/** The same line, its other side to the left. */
const turned = ({ at, along }: Line): Line => ({ at, along: { x: -along.x, y: -along.y } })

const frontOf = ({ shell }: Inside) => shell.walls.findIndex(({ role }) => role === 'front')

function dividerPanel(
  inside: Inside,
  front: number,
  fromFrontM: number,
  thicknessM: number,
  board: Polygon
): BarePanel {
  const { inner, shell } = inside
  const line = edgeLine(inner, front)
  const onEdge = (inwards: number) => {
    const level = edgeLine(inner, front, inwards)
    const hits = board
      .map((_, i) => vertex(board, i))
      .filter(
        point => Math.abs(alongLine({ at: level.at, along: { x: -level.along.y, y: level.along.x } }, point)) < 1e-9
      )
      .map(point => ({ point, along: alongLine(line, point) }))
      .toSorted((a, b) => a.along - b.along)
    return [hits[0]?.point ?? level.at, hits[hits.length - 1]?.point ?? level.at] as const
  }
  const [nearLow, nearHigh] = onEdge(fromFrontM)
  const [farLow, farHigh] = onEdge(fromFrontM + thicknessM)
  const ends = sectionEnds(line, [nearLow, nearHigh, farHigh, farLow], thicknessM)
  const length = clearLength(shell)
  return {
    name: 'divider',
    role: 'divider',
    wall: 'inside',
    layer: 0,
    thicknessM,
    ...boardAlong(shell.axis, { line, inwards: fromFrontM, ends, from: shell.caps.low.thicknessM, length }),
    volumeM3: signedArea(board) * length
  }
}

/** @throws DesignError `no-solution` when a chamber would be less than a board deep */
export function dividerAt(inside: Inside, fromFrontM: number, thicknessM: number): BuiltDivider {
  const front = frontOf(inside)
  const cut = parts(inside, front, fromFrontM, thicknessM)
  const depth = Math.max(...inside.inner.map(point => depthOf(inside, front, point)))
  if (fromFrontM < thicknessM || fromFrontM + 2 * thicknessM > depth) {
    throw new DesignError('no-solution', {
      field: 'divider',
      value: fromFrontM,
      minimum: thicknessM,
      maximum: Math.max(0, depth - 2 * thicknessM),
      unit: 'm',
      detail: say('refused.the-divider-finds-no-place-the', { depthMm: Math.round(depth * 1e3) })
    })
  }
  const clear = clearLength(inside.shell)
  return {
    fromFrontM,
    panel: dividerPanel(inside, front, fromFrontM, thicknessM, cut.board),
    frontGrossM3: signedArea(cut.front) * clear,
    rearGrossM3: signedArea(cut.rear) * clear,
    boardM3: signedArea(cut.board) * clear,
    parts: cut
  }
}

function depthOf({ inner }: Inside, front: number, point: Point2): number {
  const { at, along } = edgeLine(inner, front)
  return (point.y - at.y) * along.x - (point.x - at.x) * along.y
}

/** Where the divider stands so that the front chamber holds a gross volume; by bisection. */
export function dividerFor(inside: Inside, frontGrossM3: number, thicknessM: number): BuiltDivider {
  const front = frontOf(inside)
  const { width, height } = bounds(inside.inner)
  let [low, high] = [0, width + height]
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    const area = signedArea(leftPart(inside.inner, turned(edgeLine(inside.inner, front, middle))))
    if (area * clearLength(inside.shell) < frontGrossM3) low = middle
    else high = middle
  }
  return dividerAt(inside, high, thicknessM)
}

/** The chamber in which a point of the profile lies, as an inside of its own; the whole inside of a box of one chamber. */
export function chamberAt(inside: Inside, divider: BuiltDivider | undefined, point: Point2): Inside {
  if (divider === undefined) return inside
  const isAhead = depthOf(inside, frontOf(inside), point) < divider.fromFrontM
  return { ...inside, inner: isAhead ? divider.parts.front : divider.parts.rear }
}

/**
 * A face whose clear part is that before or behind the divider; the whole one where the divider does not meet it.
 *
 * @param clearFromM  what a front chamber keeps bare behind the front
 */
export function faceOfChamber(
  inside: Inside,
  divider: BuiltDivider,
  face: Face,
  chamber: 'front' | 'rear',
  clearFromM = 0
): Face {
  const front = frontOf(inside)
  const depthAt = (uM: number, vM: number) =>
    depthOf(inside, front, profilePoint(inside.shell.axis, onFace(face.place, { uM, vM })))
  const [none, u, v] = [depthAt(0, 0), depthAt(1, 0), depthAt(0, 1)]
  const [du, dv] = [u - none, v - none]
  const length = Math.hypot(du, dv)
  if (length < 1e-9) return face
  const way = { x: du / length, y: dv / length }
  const cut = (atM: number, turn: 1 | -1): Line => {
    const off = (atM - none) / length
    return { at: { x: way.x * off, y: way.y * off }, along: { x: -turn * way.y, y: turn * way.x } }
  }
  const { fromFrontM, panel } = divider
  if (chamber === 'rear') return { ...face, clear: leftPart(face.clear, cut(fromFrontM + panel.thicknessM, -1)) }
  return { ...face, clear: leftPart(leftPart(face.clear, cut(fromFrontM, 1)), cut(clearFromM, -1)) }
}
