/** Which touches of two boards become joints that are cut, and how deep. */
import type { CutOut, Panel, PanelMark } from '../../../contract/boxes/panel.ts'
import { type Point2, vertex } from '../../../numeric/geometry/polygon.ts'
import type { BoxTask } from '../request/box-task.ts'
import { blankOf, isNotch } from '../shell/board-faces.ts'
import { isShellBoard, isStrip, type Touch } from './board-marks.ts'
import { type Finger, fingersAlong, isStraight, jointDepthM } from './joint-cuts.ts'

export type JointKind = 'groove' | 'rebate' | 'finger'

export interface Joint extends Touch {
  readonly kind: JointKind
  /** That the other board reaches into this one. */
  readonly depthM: number
  readonly fingers: readonly Finger[]
}

export type JointTask = Pick<BoxTask, 'worked' | 'sawStepM' | 'board' | 'request'>

function kindOf({ worked }: JointTask, other: Panel): JointKind | undefined {
  if (isShellBoard(other)) return worked.corners === 'butt' ? undefined : worked.corners
  const standsInside = other.role === 'divider' || (other.role === 'brace' && !isStrip(other))
  return standsInside && worked.inner === 'groove' ? 'groove' : undefined
}

const lengthOf = ({ from, to }: PanelMark) => Math.hypot(to.uM - from.uM, to.vM - from.vM)

const reaches = ({ uM, vM, widthM = 0, heightM = 0 }: CutOut, a: Point2, b: Point2) =>
  Math.abs(uM - (a.x + b.x) / 2) < (widthM + Math.abs(b.x - a.x)) / 2 + 1e-6 &&
  Math.abs(vM - (a.y + b.y) / 2) < (heightM + Math.abs(b.y - a.y)) / 2 + 1e-6

/** Whether an edge meets a face of the shell squarely over its whole length: what is aslant or broken off is butted. */
function isWhole({ mark, edge }: Touch, board: Panel, other: Panel): boolean {
  const [from, to] = [vertex(blankOf(other), edge), vertex(blankOf(other), edge + 1)]
  const isSquare = other.edges.every(each => each.edge !== edge || each.tiltDeg === 0)
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const isNotched = other.cutOuts.some(cut => isNotch(other, cut) && reaches(cut, from, to))
  const isFlat = isShellBoard(board) && mark.face === 'inner' && isStraight(mark)
  return isFlat && isSquare && !isNotched && lengthOf(mark) > length - 1e-6
}

export function jointsOf(parts: readonly Panel[], touches: readonly Touch[], task: JointTask): readonly Joint[] {
  return touches.flatMap((touch): readonly Joint[] => {
    const [board, other] = [parts[touch.board], parts[touch.other]]
    const kind = other && kindOf(task, other)
    if (board === undefined || other === undefined || kind === undefined || !isWhole(touch, board, other)) return []
    const { thicknessM } = board
    if (kind !== 'finger') return [{ ...touch, kind, depthM: jointDepthM(thicknessM, task.sawStepM), fingers: [] }]
    const fingers = fingersAlong(lengthOf(touch.mark), thicknessM)
    return fingers.length === 0 ? [] : [{ ...touch, kind, depthM: thicknessM, fingers }]
  })
}
