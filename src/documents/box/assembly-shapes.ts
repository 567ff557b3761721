/** Boards and round things as an eye far away sees them: faces, sawn edges, holes with their thickness. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { isNotch, notchedFace } from '../../domain/box/shell/board-faces.ts'
import { type BoardFrame, boardFrame, type Disc } from '../../domain/box/solids/solids.ts'
import {
  type Convex,
  cross,
  dot,
  minus,
  plus,
  unit,
  type Vector3,
  vector
} from '../../numeric/geometry/convex-distance.ts'
import type { Point2, Polygon } from '../../numeric/geometry/polygon.ts'
import { ink } from '../draw/paper.ts'
import { element } from '../draw/svg.ts'
import { rim } from './oblique.ts'

export interface Eye {
  /** Towards the eye, to the right and up on paper; unit vectors. */
  readonly towards: Vector3
  readonly right: Vector3
  readonly up: Vector3
}

/** @param towards  not straight up */
export function eyeFrom(towards: Vector3): Eye {
  const eye = unit(towards) as Vector3
  const right = unit(vector(-eye.y, eye.x, 0)) as Vector3
  return { towards: eye, right, up: cross(eye, right) }
}

/** A point of space on paper [mm], y downwards. */
export type OnPaper = (point: Vector3) => Point2

export interface Look {
  readonly fill: string
  readonly edge: string
  readonly hole: string
}
export const woodLook: Look = { fill: ink.wood, edge: ink.hatch, hole: ink.hatch }
export const newLook: Look = { fill: '#c4d9e6', edge: '#a3c1d3', hole: '#8fb0c4' }
export const metalLook: Look = { fill: ink.grid, edge: ink.hatch, hole: ink.quiet }

const path = (loops: readonly (readonly Point2[])[]) =>
  loops.map(loop => `M${loop.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`).join('')

const filled = (loops: readonly (readonly Point2[])[], fill: string, outlined: boolean) =>
  element('path', {
    d: path(loops),
    fill,
    'fill-rule': 'evenodd',
    class: 'wood',
    ...(outlined ? { stroke: ink.text, 'stroke-width': 0.22, 'stroke-linejoin': 'round' } : {})
  })

const loopOf = (cut: CutOut): Polygon => rim(cut).map(({ uM, vM }) => ({ x: uM, y: vM }))

interface Face {
  readonly outline: Polygon
  readonly depthM: number
}

/** The sawn edges that look at the eye, then the face that does, its holes with their walls. */
export function boardShape(panel: Panel, { towards }: Eye, onPaper: OnPaper, look: Look): string {
  const { place, thicknessM } = panel
  if (place === undefined) return ''
  const frame = boardFrame(place)
  const faces: readonly [Face, Face] = [
    { outline: notchedFace(panel, 'outer'), depthM: 0 },
    { outline: notchedFace(panel, 'inner'), depthM: thicknessM }
  ]
  const looksOut = dot(frame.outwards, towards) > 0
  const [near, far] = looksOut ? faces : [faces[1], faces[0]]
  const drawn = ({ depthM }: Face, polygon: Polygon) => polygon.map(point => onPaper(frame.at(point, depthM)))
  const holes = panel.cutOuts
    .filter(cut => cut.rebateDepthM === undefined && !isNotch(panel, cut))
    .map(cut => ({ near: drawn(near, loopOf(cut)), far: drawn(far, loopOf(cut)) }))
  return [
    ...edgeQuads(frame, faces, towards).map(quad => filled([quad.map(onPaper)], look.edge, true)),
    // What lies beyond the near rim is covered by the face that is drawn next.
    ...holes.map(hole => filled([hole.near, hole.far], look.hole, false)),
    filled([drawn(near, near.outline), ...holes.map(hole => hole.near)], look.fill, true)
  ].join('')
}

function edgeQuads(
  frame: BoardFrame,
  [outer, inner]: readonly [Face, Face],
  towards: Vector3
): readonly (readonly Vector3[])[] {
  const count = Math.min(outer.outline.length, inner.outline.length)
  return Array.from({ length: count }, (_, i) => i).flatMap(i => {
    const at = ({ outline, depthM }: Face, k: number) => frame.at(outline[k % outline.length] as Point2, depthM)
    const [a, b, c, d] = [at(outer, i), at(outer, i + 1), at(inner, i + 1), at(inner, i)]
    const normal = cross(minus(b, a), frame.outwards)
    return dot(normal, towards) > 1e-9 ? [[a, b, c, d]] : []
  })
}

const PARTS_OF_TURN = 36

/** A corner cloud's outline on paper. */
function hullOnPaper(points: readonly Point2[]): readonly Point2[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y)
  const half = (ordered: readonly Point2[]) => {
    const chain: Point2[] = []
    for (const point of ordered) {
      for (let last = chain.at(-1), before = chain.at(-2); last && before; last = chain.at(-1), before = chain.at(-2)) {
        if ((last.x - before.x) * (point.y - before.y) - (last.y - before.y) * (point.x - before.x) > 0) break
        chain.pop()
      }
      chain.push(point)
    }
    return chain.slice(0, -1)
  }
  return [...half(sorted), ...half(sorted.toReversed())]
}

/** The shadow of a convex piece, from the points in which it reaches furthest all round the line of sight. */
function shadow(piece: Convex, { right, up }: Eye, onPaper: OnPaper): readonly Point2[] {
  const reached = Array.from({ length: 2 * PARTS_OF_TURN }, (_, i) => {
    const angle = (Math.PI * i) / PARTS_OF_TURN
    const towards = plus(plus(vector(0, 0, 0), right, Math.cos(angle)), up, Math.sin(angle))
    return onPaper(piece.support(towards))
  })
  return hullOnPaper(reached)
}

/** A piece of a driver, a tube, a cup or an amplifier by its shadow. */
export const pieceShape = (piece: Convex, eye: Eye, onPaper: OnPaper, { fill }: Look): string =>
  filled([shadow(piece, eye, onPaper)], fill, true)

/** A disc as it is seen. */
export function discShape({ centre, along, radius }: Disc, { towards }: Eye, onPaper: OnPaper, fill: string): string {
  const aside = unit(cross(along, Math.abs(dot(along, towards)) > 0.999 ? vector(along.y, along.z, along.x) : towards))
  if (aside === undefined) return ''
  const other = cross(along, aside)
  const points = Array.from({ length: 2 * PARTS_OF_TURN }, (_, i) => {
    const angle = (Math.PI * i) / PARTS_OF_TURN
    return onPaper(plus(plus(centre, aside, radius * Math.cos(angle)), other, radius * Math.sin(angle)))
  })
  return filled([points], fill, true)
}
