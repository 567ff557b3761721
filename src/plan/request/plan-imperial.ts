/** A plan on paper in sixteenths is built in sixteenths: sizes on that grid, so that printed sums add up. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { INCH_M } from '../../domain/constants.ts'
import { inDecimals } from '../../domain/digits.ts'

/** Outer sizes lie on sixteenths; a board of whole thirty-seconds keeps inner ones there, since two of them come off. */
const SIXTEENTH_M = INCH_M / 16
const THIRTY_SECOND_M = INCH_M / 32
/** Half a tenth of a millimetre is no other board. */
const SAME_M = 5e-5

const isInSixteenths = ({ paper }: Pick<PlanRequest, 'paper'>) =>
  paper?.units === 'imperial' && (paper.inches ?? 'sixteenths') === 'sixteenths'

interface Saw {
  /** What it is set by; the millimetre of the layout where it is absent. */
  readonly sawStepM?: number
}

export const sawStep = (request: Pick<PlanRequest, 'paper'>): Saw =>
  isInSixteenths(request) ? { sawStepM: SIXTEENTH_M } : {}

/** To the step of the saw. */
export function onSawStep({ sawStepM: stepM = 1e-3 }: Saw, lengthM: number): number {
  return Math.round(Math.round(lengthM / stepM) * stepM * 1e9) / 1e9
}

/** The board in whole thirty-seconds, and the sheet of a market that sells 4 × 8 feet. */
export function resolvedBoard(
  request: Pick<PlanRequest, 'paper' | 'board'>,
  assumed: Assumptions
): PlanRequest['board'] {
  const { board } = request
  if (!isInSixteenths(request)) return board
  const parts = Math.round(board.thicknessM / THIRTY_SECOND_M)
  const thicknessM = parts * THIRTY_SECOND_M
  if (Math.abs(thicknessM - board.thicknessM) > SAME_M) {
    const why = `${inDecimals(board.thicknessM * 1e3, 1)} mm is taken as ${parts}/32 in, so that sums in inches add up`
    assumed.or(undefined, 'board.thicknessM', thicknessM, why)
  }
  const sheet = board.sheet ?? { lengthM: 96 * INCH_M, widthM: 48 * INCH_M }
  if (board.sheet === undefined) {
    assumed.or(undefined, 'board.sheet.lengthM', sheet.lengthM, 'sheets of 4 × 8 ft, as that market sells them')
  }
  return { ...board, thicknessM, sheet }
}
