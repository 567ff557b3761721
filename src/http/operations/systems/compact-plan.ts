/** The plan in the few kilobytes that the screen of a phone needs. */
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { CompactPlanBody } from '../../../contract/systems/plan-compact.ts'
import type { PlanCover } from '../../../contract/systems/plan-cover.ts'
import { type Caution, gravestFirst } from '../../../domain/caution.ts'
import { languages } from '../../../domain/languages.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import { briefOf, spoken } from '../../../domain/say.ts'
import type { SystemPlan } from '../../../plan/plan-system.ts'
import type { Calculation } from '../../wire/answer/calculation.ts'
import { type Digits, jsonWriter } from '../../wire/answer/json-writer.ts'
import { presentedPlan } from './presented-plan.ts'

const write = jsonWriter(CompactPlanBody)

/** As on the first page: a `stop` whole, what is peculiar to this design with its figures, the others in their brief form. */
function cautionLine({ code, level, message }: Caution, { pageOne }: PlanCover, language: LanguageCode) {
  const first = pageOne.find(each => each.code === code)?.sentence
  const brief = briefOf(code)
  const short = first ?? (brief && spoken(brief, languages[language]))
  return { code, level, message: level === 'stop' ? message : (short ?? message) }
}

interface Citing {
  readonly digits: Digits
  readonly calculation: Calculation
  readonly language?: LanguageCode
}

export function compactPlan({ result, cautions }: Outcome<SystemPlan>, citing: Citing): string {
  const { digits, calculation, language = 'en' } = citing
  const { name, cover, billOfMaterials, buildOrder, commissioning } = result
  return write(
    {
      ...present({ name }),
      sentence: cover.sentence,
      summary: presentedPlan(result, language).summary,
      cautions: gravestFirst(cautions).map(each => cautionLine(each, cover, language)),
      buy: billOfMaterials
        .filter(({ needed }) => needed)
        .map(({ id, item, quantity, unit }) => ({ id, item, quantity, unit })),
      steps: [...(buildOrder?.steps ?? []), ...commissioning].map(({ number, title }) => ({ number, title })),
      calculation
    },
    digits
  )
}
