/** Where battens stand on a face: evenly over its longer side, moved past what stands there, short of the corners. */
import { plus, type Vector3, vector } from '../../../numeric/geometry/convex-distance.ts'
import { edgeLine, interiorAngle, type Point2, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { contains, rayLength } from '../../../numeric/geometry/polygon-distance.ts'
import { insetPolygon } from '../../../numeric/geometry/polygon-inset.ts'
import { inBox } from '../shell/shell-panels.ts'
import type { Body } from '../solids/bodies.ts'
import { overlaps } from '../solids/body-pairs.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { block, toVector } from '../solids/solids.ts'
import { crossingReach, type FreeFace, type Span, slotWalls, spansOf, takesBattens } from './free-face.ts'

export const BATTEN_HEIGHT_M = 60e-3
/** Play between a batten and the next wall or batten [m]. */
const PLAY_M = 5e-3
/** A shorter one is not worth its glue [m]. */
const SHORTEST_M = 0.1
/** Steps in which a batten gives way, and how far, as a share of its even distance. */
const GIVE_STEP_M = 10e-3
const GIVE_SHARE = 0.4

export interface Batten {
  /** From the start of its span over the side that is divided, to its middle [m]. */
  readonly placeM: number
  /** Its ends over the other side [m]. */
  readonly fromM: number
  readonly toM: number
  /** The side it runs along in full [m]. */
  readonly sideM: number
  readonly block: BattenBlock
}

/** A batten as a block in the box: halves along it, across it, and away from its face. */
interface BattenBlock {
  readonly middle: Vector3
  readonly halves: readonly { readonly along: Vector3; readonly half: number }[]
}

export interface SpanBattens {
  readonly span: Span
  readonly battens: readonly Batten[]
}

/** A line of a span on which a batten may lie, and its place in the box. */
interface Lie {
  readonly from: number
  readonly to: number
  /** A point of the inner face at a distance along the batten. */
  readonly at: (along: number) => Vector3
  readonly along: Vector3
  readonly across: Vector3
  readonly inwards: Vector3
}

interface FaceSite {
  readonly built: FittedBox
  readonly face: FreeFace
  readonly thicknessM: number
}

/** How far what stands before a wall keeps battens of its neighbours away: a batten of its own, or a slot. */
function keptFrom({ port }: FittedBox, covered: readonly number[], wall: number): number {
  const slotM = port?.kind === 'slot' && covered.includes(wall) ? port.space.heightM + port.space.wallM : 0
  return Math.max(BATTEN_HEIGHT_M, slotM) + PLAY_M
}

/** From a corner along a wall to where nothing of its neighbour stands any more, at the foot and at the top of a batten. */
function setBack(angleRad: number, keptM: number): number {
  if (angleRad >= Math.PI) return PLAY_M
  return Math.max(keptM / Math.tan(angleRad / 2), keptM / Math.sin(angleRad))
}

function axisVectors(built: FittedBox) {
  const { shell } = built.inside
  const point = ({ x, y }: Point2, along: number) => toVector(inBox(shell.axis, { x, y }, along))
  const flat = ({ x, y }: Point2) => point({ x, y }, 0)
  return { shell, point, flat, axis: shell.axis === 'x' ? vector(1, 0, 0) : vector(0, 0, 1) }
}

function lieOnWall({ built, face, thicknessM }: FaceSite, span: Span, place: number): Lie {
  const wall = face.wall as number
  const { inner } = built.inside
  const n = inner.length
  const { shell, point, flat, axis } = axisVectors(built)
  const line = edgeLine(inner, wall)
  const foot = (across: number) => ({ x: line.at.x + line.along.x * across, y: line.at.y + line.along.y * across })
  const start = shell.caps.low.thicknessM + span.from
  const inwards = flat({ x: -line.along.y, y: line.along.x })
  if (face.acrossM >= span.length) {
    const reach = crossingReach(built)
    const end = (isCap: boolean, reachM: number) =>
      isCap ? Math.max(BATTEN_HEIGHT_M, reachM) + PLAY_M : thicknessM / 2
    return {
      from: end(span.from < 1e-9, reach.low),
      to: span.length - end(span.from + span.length > face.alongM - 1e-9, reach.high),
      at: along => point(foot(place), start + along),
      along: axis,
      across: flat(line.along),
      inwards
    }
  }
  const covered = slotWalls(built)
  const kept = (other: number) => keptFrom(built, covered, ((other % n) + n) % n)
  return {
    from: setBack(interiorAngle(inner, wall), kept(wall - 1)),
    to: face.acrossM - setBack(interiorAngle(inner, wall + 1), kept(wall + 1)),
    at: along => point(foot(along), start + place),
    along: flat(line.along),
    across: axis,
    inwards
  }
}

/** Along a line through a polygon, the stretch that holds its middle. */
function chord(polygon: Polygon, middle: Point2, along: Point2): readonly [number, number] | undefined {
  if (!contains(polygon, middle)) return undefined
  return [-rayLength(polygon, middle, { x: -along.x, y: -along.y }), rayLength(polygon, middle, along)]
}

function lieOnCap({ built, face, thicknessM }: FaceSite, place: number): Lie | undefined {
  const { inner } = built.inside
  const { shell, point, flat, axis } = axisVectors(built)
  const covered = slotWalls(built)
  const inset = insetPolygon(
    inner,
    inner.map((_, wall) => keptFrom(built, covered, wall))
  )
  if ('failure' in inset) return undefined
  const corner = { x: Math.min(...inner.map(({ x }) => x)), y: Math.min(...inner.map(({ y }) => y)) }
  const runsX = face.acrossM >= face.alongM
  const side = runsX ? face.alongM : face.acrossM
  const along = runsX ? { x: 1, y: 0 } : { x: 0, y: 1 }
  const across = runsX ? { x: 0, y: 1 } : { x: 1, y: 0 }
  const at = (p: number, s: number): Point2 =>
    runsX ? { x: corner.x + s, y: corner.y + p } : { x: corner.x + p, y: corner.y + s }
  const chords = [-0.5, 0.5].map(share => chord(inset.polygon, at(place + share * thicknessM, side / 2), along))
  const [one, other] = chords
  if (one === undefined || other === undefined) return undefined
  const low = face.wall === 'low'
  const level = low ? shell.caps.low.thicknessM : shell.lengthM - shell.caps.high.thicknessM
  return {
    from: side / 2 + Math.max(one[0], other[0]),
    to: side / 2 + Math.min(one[1], other[1]),
    at: s => point(at(place, s), level),
    along: flat(along),
    across: flat(across),
    inwards: plus(vector(0, 0, 0), axis, low ? 1 : -1)
  }
}

function battenAt(site: FaceSite, span: Span, place: number): Batten | undefined {
  const { face, thicknessM } = site
  const lie = typeof face.wall === 'number' ? lieOnWall(site, span, place) : lieOnCap(site, place)
  if (lie === undefined || lie.to - lie.from < SHORTEST_M) return undefined
  const middle = plus(lie.at((lie.from + lie.to) / 2), lie.inwards, BATTEN_HEIGHT_M / 2)
  const halves = [
    { along: lie.along, half: (lie.to - lie.from) / 2 },
    { along: lie.across, half: thicknessM / 2 },
    { along: lie.inwards, half: BATTEN_HEIGHT_M / 2 }
  ]
  const sideM = Math.min(span.length, face.acrossM)
  return { placeM: place, fromM: lie.from, toM: lie.to, sideM, block: { middle, halves } }
}

export const battenBody = ({ block: { middle, halves } }: Batten, name: string): Body => ({
  name,
  kind: 'batten',
  pieces: [{ solid: block(middle, halves) }]
})

/** One batten at its even place, or as near to it as the others let it stand. */
function givingWay(site: FaceSite, span: Span, even: number, giveM: number, others: readonly Body[]) {
  const { face } = site
  const steps = Math.floor(giveM / GIVE_STEP_M)
  for (let i = 0; i <= 2 * steps; i++) {
    const shift = (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * GIVE_STEP_M
    const batten = battenAt(site, span, even + shift)
    if (batten === undefined) continue
    if (others.length === 0) return batten
    const body = battenBody(batten, face.name)
    if (!others.some(other => overlaps(body, other))) return batten
  }
  return undefined
}

/**
 * Battens of a face, span by span; a span too short for them stays bare.
 *
 * @param others  bodies they have to stand clear of
 * @returns none where one of them finds no place
 */
export function placeBattens(
  site: FaceSite,
  count: number,
  others: readonly Body[]
): readonly SpanBattens[] | undefined {
  const { face } = site
  if (count === 0) return spansOf(face).map(span => ({ span, battens: [] }))
  const found: SpanBattens[] = []
  for (const span of spansOf(face)) {
    const dividedM = Math.max(span.length, face.acrossM)
    const gap = dividedM / (count + 1)
    const evenOnes = Array.from({ length: count }, (_, k) => gap * (k + 1))
    if (!takesBattens(face, span) || evenOnes.some(even => battenAt(site, span, even) === undefined)) {
      found.push({ span, battens: [] })
      continue
    }
    const battens = evenOnes.map(even => givingWay(site, span, even, GIVE_SHARE * gap, others))
    if (battens.some(each => each === undefined)) return undefined
    found.push({ span, battens: battens.filter(each => each !== undefined) })
  }
  return found
}

export const battenLengthM = ({ fromM, toM }: Batten) => toM - fromM

/** Share of a sine over the whole side that a batten with free ends takes part in: 1 from end to end. */
export function bendingShare({ fromM, toM, sideM }: Batten): number {
  const wave = (at: number) => Math.sin((2 * Math.PI * at) / sideM) / (2 * Math.PI)
  return (toM - fromM) / sideM - (wave(toM) - wave(fromM))
}
