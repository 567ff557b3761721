/** A box with its braces, and a second board on its front where one does not do. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import type { Assumption } from '../../outcome.ts'
import { boxTask } from '../request/box-task.ts'
import { boxDefaults } from '../request/defaults.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import { boxVibration } from '../stiffness/box-vibration.ts'
import { boxPressure, planBraces } from '../stiffness/brace-choice.ts'
import { type BracedTask, joined, noBraces, samePlan } from '../stiffness/brace-plan.ts'
import { boxClearances } from './box-clearances.ts'
import { type BoxContents, boxContents } from './box-contents.ts'
import { boxParts } from './box-parts.ts'
import { type BuiltBox, buildBox } from './build-box.ts'
import { solveSizes } from './solve-sizes.ts'

/** Turns of planning and sizing after which the braces at hand are kept; each turn only adds. */
const MOST_TURNS = 8

const sizesOf = ({ sizes }: BuiltBox) => JSON.stringify(sizes)

/** Braces follow from the sizes and the pressure alone, so the same ones would be found again. */
const asksTheSame = (one: BuiltBox, other: BuiltBox, resolved: BracedTask) =>
  boxPressure(resolved, one.netM3) === boxPressure(resolved, other.netM3) && sizesOf(one) === sizesOf(other)

/** Braces by turns: their volume changes the size of the box, its size what it needs. */
function bracedBox(
  resolved: BracedTask,
  bare: ShellSizes
): { readonly resolved: BracedTask; readonly built: BuiltBox } {
  let turn: { resolved: BracedTask; built: BuiltBox } = { resolved, built: buildBox(resolved, bare) }
  const { bracing, displacement } = resolved.request
  if (bracing === undefined || displacement?.bracesM3 !== undefined) return turn
  for (let count = 0; count < MOST_TURNS; count++) {
    const before = turn.resolved.plan ?? noBraces
    const plan = joined(before, planBraces(turn.built, turn.resolved))
    if (samePlan(before, plan)) break
    const next = { ...resolved, plan }
    const last = turn
    turn = { resolved: next, built: buildBox(next, solveSizes(next)) }
    if (asksTheSame(last.built, turn.built, resolved)) break
  }
  return turn
}

/** A box with its task, and everything that its answers are read from. */
export interface LaidOutBox {
  readonly built: BuiltBox
  readonly resolved: BracedTask
  readonly contents: BoxContents
  /** One by one, before equal parts are gathered. */
  readonly parts: readonly Panel[]
  readonly assumed: readonly Assumption[]
}

function asAsked(request: BoxRequest, assume: Assumptions, bare?: ShellSizes): LaidOutBox {
  const task = boxTask(request, assume)
  const { resolved, built } = bracedBox(task, bare ?? solveSizes(task))
  const contents = boxContents(built, resolved)
  return { built, resolved, contents, parts: boxParts(built, resolved, contents), assumed: assume.list }
}

const frontOf = ({ built, resolved, contents }: LaidOutBox) =>
  boxVibration(built, resolved, contents.braces).faces.find(({ face }) => face === 'front')

const failures = ({ built, resolved, contents }: LaidOutBox) =>
  boxClearances(built, resolved, contents).filter(({ passes }) => !passes).length

/** The same with two boards on its front; none where they leave no room, or another fault. */
function withSecondFront(request: BoxRequest): LaidOutBox | undefined {
  const assume = assumptions()
  try {
    const box = asAsked({ ...request, frontLayers: 2 }, assume)
    assume.note('frontLayers', 2, boxDefaults.secondFront)
    return box
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

/** Whether nobody has said of how many boards the front is, and the box may grow by one. */
const isOpen = ({ frontLayers, bracing, netVolumeM3 }: BoxRequest) =>
  frontLayers === undefined && bracing !== undefined && netVolumeM3 !== undefined

/**
 * Where braces leave a front of one board short, two are taken if that is stiffer and everything still clears.
 *
 * @param bare  sizes of the box without its braces, where they have been solved already
 */
export function laidOut(request: BoxRequest, bare?: ShellSizes): LaidOutBox {
  const single = asAsked(request, assumptions(), bare)
  const front = isOpen(request) ? frontOf(single) : undefined
  if (front === undefined || front.passes) return single
  const double = withSecondFront(request)
  const isStiffer = (frontOf(double ?? single)?.builtHz ?? 0) > front.builtHz
  return double !== undefined && isStiffer && failures(double) <= failures(single) ? double : single
}
