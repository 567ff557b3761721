/** What the boards are worked with, where the caller does not say, and how exact each way is. */
import type { WorkshopRequest } from '../../contract/systems/plan-request.ts'
import type { WorkWay } from '../../contract/systems/words.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { usual } from './plan-usual.ts'

export interface Workshop {
  readonly way: WorkWay
}

interface Accuracy {
  /** A length comes out long or short by as much, with care [m]. */
  readonly cutM: number
  /** The same of the edge of a hole [m]. */
  readonly holeM: number
  /** What lies between the lines of two parts: the cut, and what is planed off [m]; that of a cut plan where absent. */
  readonly kerfM?: number
}

/** Common practice, no source: a saw along a fence or rail; a service by its usual promise; a line sawn beside and planed to. */
export const accuracyOf: Readonly<Record<WorkWay, Accuracy>> = {
  'saw-and-router': { cutM: 0.0005, holeM: 0.0005 },
  'cutting-service': { cutM: 0.001, holeM: 0.0015, kerfM: 0.0045 },
  'jigsaw-and-drill': { cutM: 0.0015, holeM: 0.0015, kerfM: 0.004 }
}

const kerfWhy: Partial<Readonly<Record<WorkWay, string>>> = {
  'cutting-service': 'the blade of a panel saw in a shop, 4 to 5 mm',
  'jigsaw-and-drill': 'two lines with a jigsaw between them, planed to on both sides'
}

export function resolvedWorkshop(
  workshop: WorkshopRequest | undefined,
  givenKerfM: number | undefined,
  assumed: Assumptions
): Workshop {
  const { workWay } = usual
  const way = assumed.or<WorkWay>(workshop?.way, 'workshop.way', workWay.value, workWay.why)
  const { kerfM } = accuracyOf[way]
  if (kerfM !== undefined) assumed.or(givenKerfM, 'board.sheet.kerfM', kerfM, `m: ${kerfWhy[way]}`)
  return { way }
}
