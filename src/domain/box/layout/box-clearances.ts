/** All clearances of a box in one pass: things on faces against walls, and every two bodies against each other. */
import type { BoxTask } from '../request/box-task.ts'
import { chamberAt } from '../shell/divider.ts'
import { moved, profilePoint } from '../shell/face.ts'
import type { Body } from '../solids/bodies.ts'
import { wallBodies } from '../solids/bodies.ts'
import { pairGaps } from '../solids/body-pairs.ts'
import { beforeCone, faceGaps, type Gap } from '../solids/clearances.ts'
import type { Mounted } from '../solids/mounting.ts'
import { slotGaps } from '../solids/slot-clearances.ts'
import { cupGaps } from '../solids/terminal-hole.ts'
import { elbowGaps } from '../solids/tube-elbow.ts'
import { braceBodies } from '../stiffness/brace-parts.ts'
import type { BoxContents } from './box-contents.ts'
import type { BuiltBox } from './build-box.ts'

/** The chamber that lies behind the face of a thing. */
const chamberOf =
  ({ inside, divider }: BuiltBox) =>
  (each: Mounted) => {
    const behind = moved(each.at, each.face.inwards, each.face.thicknessM + 1e-6)
    return chamberAt(inside, divider, profilePoint(inside.shell.axis, behind))
  }

/** The chamber that a driver on the divider plays into. */
const before = ({ inside, divider }: BuiltBox, { at, face }: Mounted) =>
  chamberAt(inside, divider, profilePoint(inside.shell.axis, moved(at, face.inwards, -1e-6)))

/** What a pair may be deeper in each other than the row with the better name says [m]. */
const ALIKE_M = 1e-3

/** Said of a pair already by rows with a better name, and no milder. */
function isSaid({ thing, other = thing, availableM }: Gap, rows: readonly Gap[]): boolean {
  const isTold = (what: RegExp) =>
    rows.some(
      row =>
        what.test(row.what) &&
        row.thing.name === thing.name &&
        row.other === undefined &&
        !row.passes &&
        row.availableM < availableM + ALIKE_M
    )
  const isWall = wallNames.some(wall => other.name.startsWith(wall))
  if (isWall || other.name === 'divider') return isTold(/-to-walls?$/)
  return other.name === 'port' && isTold(/-to-slot$/)
}
const wallNames = ['front', 'back', 'top', 'bottom', 'left', 'right', 'wall ']

/** Things on faces against walls, a slot and their holes. */
function faceClearances(built: BuiltBox, { standing }: BoxContents): readonly Gap[] {
  const { mounted } = built
  const chamber = chamberOf(built)
  const bends = mounted.flatMap(each =>
    each.kind === 'tube' && each.port.elbowRadiusM !== undefined ? elbowGaps(chamber(each), each) : []
  )
  const ahead = mounted.flatMap(each =>
    each.kind === 'driver' && each.face.name === 'divider' ? beforeCone(before(built, each), each) : []
  )
  return [...faceGaps(chamber, mounted), ...ahead, ...slotGaps(standing.bodies), ...bends, ...cupGaps(standing.cup)]
}

/** Every two bodies, but for what the rows of the faces say already. */
function otherClearances(
  built: BuiltBox,
  resolved: BoxTask,
  { standing, braces }: BoxContents,
  onFaces: readonly Gap[]
): readonly Gap[] {
  const bodies: readonly Body[] = [
    ...standing.bodies,
    ...braceBodies(braces, built.inside, resolved),
    ...wallBodies(built)
  ]
  return pairGaps(bodies).filter(row => !isSaid(row, onFaces))
}

/** What meets no wall ahead lies outside the box: the row of its hole says so, and this one has no figure. */
const hasFigure = ({ availableM }: Gap) => Number.isFinite(availableM)

export function boxClearances(built: BuiltBox, resolved: BoxTask, contents: BoxContents): readonly Gap[] {
  const onFaces = faceClearances(built, contents)
  return [...onFaces, ...otherClearances(built, resolved, contents, onFaces)].filter(hasFigure)
}

/** Whether any row that fails has less than so much room: the bodies are compared only where the faces do not tell. */
export function isTouched(built: BuiltBox, resolved: BoxTask, contents: BoxContents, lessM: number): boolean {
  const touches = (row: Gap) => hasFigure(row) && !row.passes && row.availableM < lessM
  const onFaces = faceClearances(built, contents)
  return onFaces.some(touches) || otherClearances(built, resolved, contents, onFaces).some(touches)
}
