/** Joints that are cut into boards: each board that stands in another grows by its tongue, the other gives way. */
import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { CutOut, Panel, PanelMark } from '../../../contract/boxes/panel.ts'
import { bounds, interiorAngle, type Polygon, vertex } from '../../../numeric/geometry/polygon.ts'
import { blankOf } from '../shell/board-faces.ts'
import { type Joint, type JointKind, type JointTask, jointsOf } from './board-joints.ts'
import { touchesOf } from './board-marks.ts'
import type { CutBoards, Tongue } from './grooved-units.ts'
import { commonPart, type Rectangle, stretchOf } from './joint-cuts.ts'
import { grownBlank, movedMark, shiftOf, workedPart } from './worked-part.ts'

interface WorkedBoards {
  readonly panels: readonly Panel[]
  readonly marks: readonly (readonly PanelMark[])[]
  /** For the order of assembly. */
  readonly cut: CutBoards
}

/** How far each edge of a part is moved outwards. */
const growthOf = ({ outline }: Panel, own: readonly Joint[]): readonly number[] =>
  outline.map((_, edge) => own.find(joint => joint.edge === edge)?.depthM ?? 0)

/**
 * How far the tongue of an edge goes on past its ends, where those of its neighbours grow as well.
 *
 *   e = max over s = 0, d of (d' + s·cos α)/sin α
 *
 * @source derived: where the edge d' outside the neighbour meets the tongue of depth d, at an inner angle α
 */
function pastEnds(part: Panel, edge: number, growth: readonly number[]): readonly [number, number] {
  const blank = blankOf(part)
  const count = blank.length
  const own = growth[edge] ?? 0
  const past = (corner: number, neighbour: number) => {
    const angle = interiorAngle(blank, corner % count)
    const other = growth[(neighbour + count) % count] ?? 0
    if (Math.abs(Math.sin(angle)) < 1e-9) return 0
    return Math.max(...[0, own].map(depth => (other + depth * Math.cos(angle)) / Math.sin(angle)))
  }
  return [past(edge, edge - 1), past(edge + 1, edge + 1)]
}

const isWithin = (inner: Rectangle, outer: Rectangle) => {
  const common = commonPart(inner, outer)
  return common !== undefined && common.widthM * common.heightM > inner.widthM * inner.heightM - 1e-10
}

/** A strip for a tongue, drawn on round its corners as far as there is wood that nothing else has taken. */
function pocketOf({ mark }: Joint, past: readonly [number, number], wood: Rectangle, taken: readonly Rectangle[]) {
  const ends = [
    { share: 0, way: (far: number) => [far, 0] as const, far: past[0] },
    { share: 1, way: (far: number) => [0, far] as const, far: past[1] }
  ].map(({ share, way, far }) => {
    if (far <= 0) return far
    const end = commonPart(stretchOf(mark, [share, share], way(far)), wood)
    if (end === undefined || taken.some(each => isWithin(end, each))) return 0
    return (end.widthM * end.heightM) / mark.widthM
  })
  return stretchOf(mark, [0, 1], [ends[0] ?? 0, ends[1] ?? 0])
}

const cutOf = (purpose: JointKind, label: string, at: Rectangle): CutOut => ({
  kind: 'rectangle',
  purpose,
  label,
  ...at
})

/** In the board that bears the joint. */
function cutsInBoard(joint: Joint, at: Rectangle): readonly CutOut[] {
  const { kind, mark, depthM: rebateDepthM } = joint
  if (kind !== 'finger') return [{ ...cutOf(kind, mark.part, at), face: 'inner', rebateDepthM }]
  return joint.fingers
    .filter(({ isTongue }) => isTongue)
    .map(({ from, to }) => cutOf(kind, mark.part, stretchOf(mark, [from, to], [0, 0])))
}

/** In the board that stands there: what the other keeps between its tongues, with the corners at its ends. */
function cutsBetween(
  part: Panel,
  { edge, depthM, fingers }: Joint,
  board: string,
  past: readonly [number, number]
): readonly CutOut[] {
  const [a, b] = [vertex(blankOf(part), edge), vertex(blankOf(part), edge + 1)]
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const aside = ({ x, y }: typeof a): PanelPoint => ({
    uM: x + ((b.y - a.y) / length) * (depthM / 2),
    vM: y - ((b.x - a.x) / length) * (depthM / 2)
  })
  const strip = { from: aside(a), to: aside(b), widthM: depthM }
  return fingers
    .filter(({ isTongue }) => !isTongue)
    .map(({ from, to }) =>
      cutOf('finger', board, stretchOf(strip, [from, to], [from === 0 ? past[0] : 0, to === 1 ? past[1] : 0]))
    )
}

const boxRound = (polygon: Polygon): Rectangle => {
  const { left, low, width, height } = bounds(polygon)
  return { uM: left + width / 2, vM: low + height / 2, widthM: width, heightM: height }
}

/** Fingers are glued and clamped: a screw in one would split it. */
const marksOn = (board: number, joints: readonly Joint[], touches: readonly Joint['mark'][]) =>
  touches.map(mark => {
    const isFingered = joints.some(joint => joint.board === board && joint.kind === 'finger' && joint.mark === mark)
    return isFingered ? { ...mark, screws: [] } : mark
  })

/** Boards of the shell that a groove or a rebate changes; fingers come off along the normal of a board as butts do. */
function boardsByName(panels: readonly Panel[], names: readonly string[], joints: readonly Joint[]) {
  const isCut = (k: number) =>
    joints.some(({ kind, board, other }) => kind !== 'finger' && (board === k || (other === k && kind === 'rebate')))
  return new Map(panels.flatMap((panel, k) => (isCut(k) ? [[names[k] ?? '', panel] as const] : [])))
}

/** Every joint with its pocket, and how far the edges of each part and its blank grow. */
interface Laid {
  readonly joints: readonly (Joint & { readonly at: Rectangle })[]
  readonly growth: readonly (readonly number[])[]
  readonly blanks: readonly Polygon[]
}

function laidJoints(parts: readonly Panel[], joints: readonly Joint[]): Laid {
  const growth = parts.map((part, k) => {
    const own = joints.filter(({ other }) => other === k)
    return growthOf(part, own)
  })
  const blanks = parts.map((part, k) => grownBlank(part, growth[k] ?? []))
  const at = (joint: Joint): Rectangle => {
    const [part, wood] = [parts[joint.other], blanks[joint.board]]
    if (part === undefined || wood === undefined) return stretchOf(joint.mark, [0, 1], [0, 0])
    const others = joints.filter(
      other => other !== joint && other.board === joint.board && other.depthM >= joint.depthM
    )
    const taken = others.map(({ mark }) => stretchOf(mark, [0, 1], [0, 0]))
    return pocketOf(joint, pastEnds(part, joint.edge, growth[joint.other] ?? []), boxRound(wood), taken)
  }
  return { joints: joints.map(joint => ({ ...joint, at: at(joint) })), growth, blanks }
}

/** What is cut into a part, for what stands in it and for what it stands in. */
const cutsOf = (part: Panel, k: number, { joints, growth }: Laid, names: readonly string[]): readonly CutOut[] =>
  joints.flatMap((joint): readonly CutOut[] => {
    if (joint.board === k) return cutsInBoard(joint, joint.at)
    if (joint.other !== k || joint.kind !== 'finger') return []
    return cutsBetween(part, joint, names[joint.board] ?? '', pastEnds(part, joint.edge, growth[k] ?? []))
  })

/** The tongues of grooves, in the frames of the boards as they are cut. */
const tonguesIn = (
  { joints, blanks }: Laid,
  parts: readonly Panel[],
  panels: readonly Panel[],
  names: readonly string[]
): readonly Tongue[] =>
  joints.flatMap(({ kind, board: k, other, at, depthM }): readonly Tongue[] => {
    const [part, board] = [parts[k], panels[k]]
    if (kind !== 'groove' || part === undefined || board === undefined) return []
    const { u, v } = shiftOf(part, blanks[k] ?? [])
    return [{ name: names[other] ?? '', board, at: { ...at, uM: at.uM + u, vM: at.vM + v }, depthM }]
  })

/**
 * The boards as they are cut, and what is marked on each.
 *
 * @param names  of the parts, each its own
 * @validity Edges that meet a wall squarely over their whole length; all others are butted, and a front that comes off.
 * @source derived: a tongue fills what is cut for it, so that neither outer sizes nor air change
 * @check  the boards of a box with grooves, rebates or fingers fill V_ext − V_gross and share no space (mesh kernel)
 */
export function workedBoards(parts: readonly Panel[], names: readonly string[], task: JointTask): WorkedBoards {
  const isLoose = ({ role }: Panel) => role === 'front' && task.request.divider?.screwedFront === true
  const touches = touchesOf(parts, names, isLoose)
  const isHeld = (k: number) => parts.some((part, i) => i === k && !isLoose(part))
  const own = parts.map((_, k) => touches.flatMap(({ board, mark }) => (board === k ? [mark] : [])))
  const held = touches.filter(({ board, other }) => isHeld(board) && isHeld(other))
  const joints = jointsOf(parts, held, task)
  if (joints.length === 0) return { panels: parts, marks: own, cut: { boards: new Map(), tongues: [] } }
  const laid = laidJoints(parts, joints)
  const blankOfPart = (k: number) => laid.blanks[k] ?? []
  const panels = parts.map((part, k) =>
    workedPart(part, blankOfPart(k), cutsOf(part, k, laid, names), task.board.densityKgPerM3)
  )
  return {
    panels,
    marks: parts.map((part, k) => marksOn(k, joints, own[k] ?? []).map(mark => movedMark(mark, part, blankOfPart(k)))),
    cut: { boards: boardsByName(panels, names, joints), tongues: tonguesIn(laid, parts, panels, names) }
  }
}
