/** What the boards are worked with, where the caller does not say, and how exact each way is. */
import type { WorkshopRequest } from '../../contract/systems/plan-request.ts'
import type { WorkWay } from '../../contract/systems/words.ts'
import type { Assumptions } from '../../domain/assume.ts'
import type { Default } from '../../domain/default.ts'
import { type Accuracy, accuracyOf, planDefaults } from './defaults.ts'

export interface Workshop {
  readonly way: WorkWay
}

export function resolvedWorkshop(
  workshop: WorkshopRequest | undefined,
  givenKerfM: number | undefined,
  assumed: Assumptions
): Workshop {
  const way = assumed.take<WorkWay>(workshop?.way, 'workshop.way', planDefaults.workWay)
  const { value, ...rule }: Default<Accuracy> = accuracyOf[way]
  if (value.kerfM !== undefined) assumed.work(givenKerfM, 'board.sheet.kerfM', value.kerfM, rule)
  return { way }
}
