/** The plan in the few kilobytes that the screen of a phone needs. */
import { cautionBriefs } from '../../../contract/cautions/briefs.ts'
import { CompactPlanBody } from '../../../contract/systems/plan-compact.ts'
import type { PlanCover } from '../../../contract/systems/plan-cover.ts'
import { type Caution, gravestFirst } from '../../../domain/caution.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import type { SystemPlan } from '../../../plan/plan-system.ts'
import type { Calculation } from '../../wire/answer/calculation.ts'
import { type Digits, jsonWriter } from '../../wire/answer/json-writer.ts'
import { presentedPlan } from './presented-plan.ts'

const write = jsonWriter(CompactPlanBody)

/** As on the first page: a `stop` whole, what is peculiar to this design with its figures, the others in their brief form. */
function cautionLine({ code, level, message }: Caution, { pageOne }: PlanCover) {
  const first = pageOne.find(each => each.code === code)?.sentence
  return { code, level, message: level === 'stop' ? message : (first ?? cautionBriefs[code] ?? message) }
}

interface Citing {
  readonly digits: Digits
  readonly calculation: Calculation
}

export function compactPlan({ result, cautions }: Outcome<SystemPlan>, { digits, calculation }: Citing): string {
  const { name, cover, billOfMaterials, buildOrder, commissioning } = result
  return write(
    {
      ...present({ name }),
      sentence: cover.sentence,
      summary: presentedPlan(result).summary,
      cautions: gravestFirst(cautions).map(each => cautionLine(each, cover)),
      buy: billOfMaterials
        .filter(({ needed }) => needed)
        .map(({ id, item, quantity, unit }) => ({ id, item, quantity, unit })),
      steps: [...(buildOrder?.steps ?? []), ...commissioning].map(({ number, title }) => ({ number, title })),
      calculation
    },
    digits
  )
}
