/** All clearances of a box in one pass: things on faces against walls, and every two bodies against each other. */
import type { BoxTask } from '../request/box-task.ts'
import { chamberAt } from '../shell/divider.ts'
import { moved, profilePoint } from '../shell/face.ts'
import type { Body } from '../solids/bodies.ts'
import { wallBodies } from '../solids/bodies.ts'
import { pairClearances } from '../solids/body-pairs.ts'
import { type Clearance, clearanceRows } from '../solids/clearances.ts'
import type { Mounted } from '../solids/mounting.ts'
import { slotClearances } from '../solids/slot-clearances.ts'
import { cupClearances } from '../solids/terminal-hole.ts'
import { elbowClearances } from '../solids/tube-elbow.ts'
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

/** What a pair may be deeper in each other than the row with the better name says [m]. */
const ALIKE_M = 1e-3

/** Said of a pair already by rows with a better name, and no milder. */
function isSaid(row: Clearance, rows: readonly Clearance[]): boolean {
  const [one = '', other = ''] = row.between.split(' and ').map(name => name.split(',')[0])
  const about = (each: Clearance, name: string) =>
    each.between.startsWith(`${name}:`) && !each.passes && each.availableM < row.availableM + ALIKE_M
  const isWall = (name: string) => wallNames.some(wall => name.startsWith(wall))
  if (isWall(other) || other === 'divider') return rows.some(each => about(each, one) && each.between.includes('wall'))
  return other === 'port' && rows.some(each => about(each, one) && each.between.includes('plates of the slot'))
}
const wallNames = ['front', 'back', 'top', 'bottom', 'left', 'right', 'wall ']

/** Things on faces against walls, a slot and their holes. */
function faceClearances(built: BuiltBox, { standing }: BoxContents): readonly Clearance[] {
  const { mounted } = built
  const chamber = chamberOf(built)
  const bends = mounted.flatMap(each =>
    each.kind === 'tube' && each.port.elbowRadiusM !== undefined ? elbowClearances(chamber(each), each) : []
  )
  return [
    ...clearanceRows(chamber, mounted),
    ...slotClearances(standing.bodies),
    ...bends,
    ...cupClearances(standing.cup)
  ]
}

/** Every two bodies, but for what the rows of the faces say already. */
function otherClearances(
  built: BuiltBox,
  resolved: BoxTask,
  { standing, braces }: BoxContents,
  onFaces: readonly Clearance[]
): readonly Clearance[] {
  const bodies: readonly Body[] = [
    ...standing.bodies,
    ...braceBodies(braces, built.inside, resolved),
    ...wallBodies(built)
  ]
  return pairClearances(bodies).filter(row => !isSaid(row, onFaces))
}

/** What meets no wall ahead lies outside the box: the row of its hole says so, and this one has no figure. */
const hasFigure = ({ availableM }: Clearance) => Number.isFinite(availableM)

export function boxClearances(built: BuiltBox, resolved: BoxTask, contents: BoxContents): readonly Clearance[] {
  const onFaces = faceClearances(built, contents)
  return [...onFaces, ...otherClearances(built, resolved, contents, onFaces)].filter(hasFigure)
}

/** Whether any row that fails has less than so much room: the bodies are compared only where the faces do not tell. */
export function isTouched(built: BuiltBox, resolved: BoxTask, contents: BoxContents, lessM: number): boolean {
  const touches = (row: Clearance) => hasFigure(row) && !row.passes && row.availableM < lessM
  const onFaces = faceClearances(built, contents)
  return onFaces.some(touches) || otherClearances(built, resolved, contents, onFaces).some(touches)
}
