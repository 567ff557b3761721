/** A plan on paper in sixteenths is built in sixteenths: sizes on that grid, so that printed sums add up. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { INCH_M } from '../../domain/constants.ts'
import { inDecimals } from '../../domain/digits.ts'
import { mapped } from '../../numeric/tuple.ts'
import { planDefaults } from './defaults.ts'

const FOOT_M = 12 * INCH_M

const isInSixteenths = ({ paper }: Pick<PlanRequest, 'paper'>) =>
  paper?.units === 'imperial' && (paper.inches ?? 'sixteenths') === 'sixteenths'

interface Saw {
  /** What it is set by; the millimetre of the layout where it is absent. */
  readonly sawStepM?: number
}

export const sawStep = (request: Pick<PlanRequest, 'paper'>): Saw =>
  isInSixteenths(request) ? { sawStepM: planDefaults.sawStepIn.value * INCH_M } : {}

/** To the step of the saw. */
export function onSawStep({ sawStepM: stepM = planDefaults.sawStepM.value }: Saw, lengthM: number): number {
  return Math.round(Math.round(lengthM / stepM) * stepM * 1e9) / 1e9
}

/** The board in whole thirty-seconds, and the sheet of a market that sells 4 × 8 feet. */
export function resolvedBoard(
  request: Pick<PlanRequest, 'paper' | 'board'>,
  assumed: Assumptions
): PlanRequest['board'] {
  const { board } = request
  if (!isInSixteenths(request)) return board
  const { boardStepIn, sameBoardM, inchesAddUp, sheetFt } = planDefaults
  const parts = Math.round(board.thicknessM / (boardStepIn.value * INCH_M))
  const thicknessM = parts * boardStepIn.value * INCH_M
  if (Math.abs(thicknessM - board.thicknessM) > sameBoardM.value) {
    const taken = `${inDecimals(board.thicknessM * 1e3, 1)} mm is taken as ${parts}/32 in`
    assumed.note('board.thicknessM', thicknessM, { ...inchesAddUp, why: `${taken}, ${inchesAddUp.why}` })
  }
  const [lengthM, widthM] = mapped(sheetFt.value, feet => feet * FOOT_M)
  const sheet = board.sheet ?? { lengthM, widthM }
  if (board.sheet === undefined) assumed.note('board.sheet.lengthM', lengthM, sheetFt)
  return { ...board, thicknessM, sheet }
}
