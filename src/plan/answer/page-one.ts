/** Which cautions open a plan, and at which part the others stand that belong to no step. */
import { acousticCautions } from '../../contract/cautions/acoustic.ts'
import { amplifierCautions } from '../../contract/cautions/amplifier.ts'
import { boxCautions } from '../../contract/cautions/box.ts'
import { cautionBriefs } from '../../contract/cautions/briefs.ts'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { conductorCautions } from '../../contract/cautions/conductor.ts'
import { driverCautions } from '../../contract/cautions/driver.ts'
import { electricalCautions } from '../../contract/cautions/electrical.ts'
import { loadCautions } from '../../contract/cautions/load.ts'
import { wholePlanCautions } from '../../contract/cautions/plan.ts'
import { safetyCautions } from '../../contract/cautions/safety.ts'
import { signalCautions } from '../../contract/cautions/signal.ts'
import { workshopCautions } from '../../contract/cautions/workshop.ts'
import type { FirstCaution } from '../../contract/systems/plan-cover.ts'
import type { PlanChapter } from '../../contract/systems/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { present } from '../../domain/present.ts'

export const MOST_ON_PAGE_ONE = 7

/** Ours: what can hurt a person, then what can burn, then what can break, then what disappoints. */
const gravestRooms: readonly (readonly [PlanChapter, object])[] = [
  ['wire', safetyCautions],
  ['wire', loadCautions],
  ['build', workshopCautions],
  ['wire', electricalCautions],
  ['wire', conductorCautions],
  ['wire', amplifierCautions],
  ['see', acousticCautions],
  ['cut', boxCautions],
  ['switch-on', signalCautions],
  ['see', driverCautions],
  ['see', wholePlanCautions]
]

const roomOf = (code: CautionCode) => gravestRooms.findIndex(([, room]) => code in room)

/** The part of the paper a caution belongs to that no step names. */
export const chapterOf = (code: CautionCode): PlanChapter => gravestRooms[roomOf(code)]?.[0] ?? 'see'

/** Said of every plan alike, whatever its figures. */
const general: readonly CautionCode[] = ['wood-dust']

const isPeculiar = ({ code, level, figures }: Caution) =>
  level === 'care' && figures !== undefined && !general.includes(code)

/** The first sentence of a caution; the full stop of a figure ends none. */
const firstSentence = (message: string) => /^.*?[.!?](?=\s+[A-Z]|$)/s.exec(message)?.[0] ?? message

interface NumberedStep {
  readonly number: number
  readonly cautions: readonly CautionCode[]
}

/**
 * Cautions that carry figures of this design, those that can hurt first, and licensed work always, at the end, whole.
 *
 * @param said  what the verdict gives as its reasons already: a `stop`, a wish that was not kept
 * @returns each code once, at most seven
 */
export function pageOne(
  cautions: readonly Caution[],
  steps: readonly NumberedStep[],
  said: readonly string[]
): readonly FirstCaution[] {
  const found = new Map(
    cautions
      .filter(each => isPeculiar(each) && !said.includes(each.message) && cautionBriefs[each.code] !== undefined)
      .toSorted((a, b) => roomOf(a.code) - roomOf(b.code))
      .map(each => [each.code, each] as const)
  )
  const chosen = [...found.values()].slice(0, MOST_ON_PAGE_ONE - 1)
  const licensed = cautions.filter(({ code }) => code === 'licensed-work')
  return [...chosen, ...licensed].map(({ code, message }) => ({
    code,
    clause: cautionBriefs[code] ?? code,
    sentence: code === 'licensed-work' ? message : firstSentence(message),
    ...present({ step: steps.find(each => each.cautions.includes(code))?.number })
  }))
}
