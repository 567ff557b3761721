/** Whether any box stands in the space of a request, in closed form. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { standsAny } from '../designer/room/stands-any.ts'
import { wantedKind } from '../enclosure/goal-designs.ts'
import { spaceQuestion } from '../enclosure/parts/plan-shell.ts'
import { boxBrief } from '../request/box-brief.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'

export function standsIn(request: PlanRequest): boolean {
  const brief = boxBrief(resolvedPlan(request, assumptions()))
  const { enclosure, space } = brief
  const asked = { strategy: space.strategy, kind: wantedKind(enclosure), ...enclosure }
  return standsAny(spaceQuestion(brief), asked)
}
