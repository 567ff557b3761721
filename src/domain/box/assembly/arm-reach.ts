/** What a hand still reaches when the box is closed: through the holes of its drivers, past all that stands inside. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Point3 } from '../../../contract/boxes/panel.ts'
import { dot, minus, plus, unit, type Vector3 } from '../../../numeric/geometry/convex-distance.ts'
import { type Caution, caution } from '../../caution.ts'
import { listed, say } from '../../say.ts'
import type { BoxTask } from '../request/box-task.ts'
import { type Face, moved, onFace } from '../shell/face.ts'
import { panelSaid } from '../shell/panel-words.ts'
import { type Body, boardBody } from '../solids/bodies.ts'
import { solidsOverlap } from '../solids/body-pairs.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import type { MountedDriver, MountedTube } from '../solids/mounting.ts'
import { drum, toDirection, toVector } from '../solids/solids.ts'
import { braceBodies } from '../stiffness/brace-parts.ts'
import type { PlacedBraces } from '../stiffness/brace-plan.ts'

/**
 * A forearm in a sleeve and its fingers by their radius, how far they get, and how near to a thing they have to come [m].
 * Common practice, no source.
 */
const arm = { radiusM: 0.045, fingersM: 0.02, reachM: 0.6, nearM: 0.03 } as const

type Reach = BoxLayout['assembly']['reach'][number]

/** A thing, and the points one of which a hand has to come near to. */
interface Target {
  readonly part: string
  readonly points: readonly Vector3[]
}

/** A hole that its driver leaves in a face. */
interface Entry {
  readonly through: string
  readonly face: Face
  readonly at: Point3
  readonly radiusM: number
}

const isDriver = (each: { readonly kind: string }): each is MountedDriver => each.kind === 'driver'

/** Through a front that is screwed on the holes in the divider are reached as well. */
function entriesOf({ mounted }: FittedBox, isOpen: boolean): readonly Entry[] {
  return mounted
    .filter(isDriver)
    .flatMap(({ label, face, at, driver }) =>
      face.name === 'divider' && !isOpen
        ? []
        : [{ through: label, face, at, radiusM: (driver.cutOutDiameterM ?? 0) / 2 }]
    )
}

/** Round the tube, where it leaves its panel: there it is sealed. */
function seamOf({ label, face, centre, outerDiameterM }: MountedTube): Target {
  const offM = outerDiameterM / 2 + arm.nearM
  const points = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1]
  ].map(([u = 0, v = 0]) => {
    const beside = onFace(face.place, { uM: centre.uM + u * offM, vM: centre.vM + v * offM })
    return toVector(moved(beside, face.inwards, face.thicknessM + arm.nearM))
  })
  return { part: label, points }
}

/** Before the flange of a driver that stands between two chambers. */
function flangeOf({ label, face, at, driver }: MountedDriver): Target {
  const outM = driver.mount === 'reversed' ? face.thicknessM + arm.nearM : -arm.nearM
  return { part: label, points: [toVector(moved(at, face.inwards, outM))] }
}

/** Before the rear of what is a block or a cup. */
function rearOf({ name, pieces, inwards, shape }: Body): Target {
  const [piece] = pieces
  const way = inwards ?? (shape?.kind === 'block' ? shape.halves.at(-1)?.along : undefined)
  if (piece === undefined || way === undefined) return { part: name, points: [] }
  const { middle, support } = piece.solid
  const deepM = dot(minus(support(way), middle), way)
  return { part: name, points: [plus(middle, way, deepM + arm.nearM)] }
}

/** What stands before the divider lies open where the front is screwed on. */
function targetsOf({ mounted }: FittedBox, bodies: readonly Body[], isOpen: boolean): readonly Target[] {
  const isAhead = ({ port }: MountedTube) => isOpen && port.chamber === 'front'
  return [
    ...mounted.flatMap(each => (each.kind === 'tube' && !isAhead(each) ? [seamOf(each)] : [])),
    ...mounted.filter(isDriver).flatMap(each => (each.face.name === 'divider' && !isOpen ? [flangeOf(each)] : [])),
    ...bodies.filter(({ kind }) => kind === 'cup' || kind === 'amplifier').map(rearOf)
  ]
}

/**
 * How far an arm reaches in straight through a hole to a point; none where it is too far, the hole too narrow for its slant, or
 * something in the way.
 *
 *   the arm passes where  (t/2)·tan θ + r/cos θ ≤ R
 *
 * @source derived: a cylinder aslant through a hole of radius R in a board of thickness t
 * @check  R 70 mm, r 45 mm, t 18 mm → up to 43.1°
 */
function armIn(entry: Pick<Entry, 'face' | 'at' | 'radiusM'>, point: Vector3, inTheWay: readonly Body[]) {
  const { face, at, radiusM } = entry
  const inwards = toDirection(face.inwards)
  const hole = toVector(moved(at, face.inwards, face.thicknessM / 2))
  const straight = minus(point, hole)
  const along = unit(straight)
  const lengthM = Math.sqrt(dot(straight, straight))
  if (along === undefined || lengthM > arm.reachM) return undefined
  const cosine = dot(along, inwards)
  if (cosine <= 0) return undefined
  const aslantM = (face.thicknessM / 2) * Math.sqrt(Math.max(0, 1 / cosine ** 2 - 1)) + arm.radiusM / cosine
  if (aslantM > radiusM) return undefined
  const solid = drum({ centre: hole, along, radius: arm.radiusM }, { centre: point, along, radius: arm.fingersM })
  const isHit = inTheWay.some(({ pieces }) => pieces.some(piece => solidsOverlap(piece.solid, solid)))
  return isHit ? undefined : lengthM
}

interface Contents {
  readonly standing: { readonly bodies: readonly Body[] }
  readonly braces: PlacedBraces
}

/** Nothing is said of a box without a driver's hole to reach in by, unless a driver is shut in between two chambers. */
export function reachIn(built: FittedBox, resolved: BoxTask, { standing, braces }: Contents): readonly Reach[] {
  const isOpen = resolved.request.divider?.screwedFront === true
  const entries = entriesOf(built, isOpen)
  const isShut = (part: string) => built.mounted.some(each => isDriver(each) && each.label === part)
  const targets = targetsOf(built, standing.bodies, isOpen).filter(({ part }) => entries.length > 0 || isShut(part))
  if (targets.length === 0) return []
  const outside = new Set(entries.map(({ through }) => through))
  const things = standing.bodies.filter(({ name }) => !outside.has(name))
  const inside = [...things, ...braceBodies(braces, built.inside, resolved)]
  const walls = built.panels.filter(({ wall }) => wall !== 'inside')
  const boards = walls.map(panel => ({ wall: panel.wall, body: boardBody(panel) }))
  return targets.map(({ part, points }) => {
    const others = inside.filter(({ name }) => name !== part)
    for (const { through, ...entry } of entries) {
      const own = walls.find(({ place }) => place === entry.face.place)?.wall
      const inTheWay = [...boards.flatMap(({ wall, body }) => (wall === own ? [] : [body])), ...others]
      const lengths = points.flatMap(point => armIn(entry, point, inTheWay) ?? [])
      if (lengths.length > 0) return { part, through, lengthM: Math.min(...lengths) }
    }
    return { part }
  })
}

export function reachCautions(reach: readonly Reach[]): readonly Caution[] {
  const shut = reach.flatMap(({ part, through }) => (through === undefined ? [panelSaid(part)] : []))
  return shut.length === 0 ? [] : [caution('out-of-reach', say('out-of-reach', { parts: listed(shut) }))]
}
