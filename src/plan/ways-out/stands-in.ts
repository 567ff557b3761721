/** Whether any box stands in the space of a request, in closed form. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { standsAny } from '../designer/room/stands-any.ts'
import { wantedKind } from '../enclosure/goal-designs.ts'
import { radiatorPlaces } from '../enclosure/parts/plan-radiators.ts'
import { spaceQuestion } from '../enclosure/parts/plan-shell.ts'
import { boxBrief } from '../request/box-brief.ts'
import { partRunner } from '../request/part.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'

export function standsIn(request: PlanRequest): boolean {
  const brief = boxBrief(resolvedPlan(request, assumptions(), partRunner()))
  const { enclosure, space, radiators } = brief
  const kind = wantedKind(enclosure, radiators !== undefined)
  const asked = { strategy: space.strategy, ...enclosure, kind }
  if (kind === 'band-pass-4') return standsAny(spaceQuestion(brief), { strategy: space.strategy, kind: 'closed' })
  if (kind !== 'passive-radiator') return standsAny(spaceQuestion(brief), asked)
  const tight = { ...asked, kind: 'closed' as const }
  return radiatorPlaces(brief).some(place => standsAny(spaceQuestion(brief, place), tight))
}
