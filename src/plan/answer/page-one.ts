/** Which cautions open a plan, and at which part the others stand that belong to no step. */

import { acousticCautions } from '../../contract/cautions/acoustic.ts'
import { amplifierCautions } from '../../contract/cautions/amplifier.ts'
import { boxCautions } from '../../contract/cautions/box.ts'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { conductorCautions } from '../../contract/cautions/conductor.ts'
import { driverCautions } from '../../contract/cautions/driver.ts'
import { electricalCautions } from '../../contract/cautions/electrical.ts'
import { energyCautions } from '../../contract/cautions/energy.ts'
import { loadCautions } from '../../contract/cautions/load.ts'
import { wholePlanCautions } from '../../contract/cautions/plan.ts'
import { safetyCautions } from '../../contract/cautions/safety.ts'
import { signalCautions } from '../../contract/cautions/signal.ts'
import { workshopCautions } from '../../contract/cautions/workshop.ts'
import type { FirstCaution } from '../../contract/systems/plan-cover.ts'
import type { PlanHazard } from '../../contract/systems/safety.ts'
import { type HazardHarm, hazardHarms, type PlanChapter } from '../../contract/systems/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { present } from '../../domain/present.ts'
import { briefOf, opening, say, worded } from '../../domain/say.ts'
import { answerDefaults } from './defaults.ts'

/** Ours: what can hurt a person, then what can burn, then what can break, then what disappoints. */
const gravestRooms: readonly (readonly [PlanChapter, object])[] = [
  ['wire', safetyCautions],
  ['wire', loadCautions],
  ['build', workshopCautions],
  ['wire', electricalCautions],
  ['wire', energyCautions],
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

interface NumberedStep {
  readonly number: number
  readonly cautions: readonly CautionCode[]
}

/** Of these up to four open the page. */
const graveHarms: readonly HazardHarm[] = ['death', 'lasting-harm', 'fire']

/** Care that the facts or figures of this plan brought: by the register, or by a calculation that no danger names. */
function peculiarOnes(cautions: readonly Caution[], dangers: readonly PlanHazard[]) {
  const harms = new Map<CautionCode, HazardHarm>()
  for (const { caution, harm, peculiar } of dangers)
    if (peculiar && caution !== undefined && !harms.has(caution)) harms.set(caution, harm)
  const general = new Set(
    dangers.flatMap(({ caution, peculiar }) => (peculiar || caution === undefined ? [] : [caution]))
  )
  const harmOf = ({ code }: Caution) => harms.get(code)
  const ofDesign = ({ code, figures }: Caution) => figures !== undefined && !harms.has(code) && !general.has(code)
  const rank = (each: Caution) => hazardHarms.indexOf(harmOf(each) ?? 'damage')
  const told = cautions.filter(({ level, code }) => level === 'care' && briefOf(code) !== undefined)
  const hurting = told.filter(each => harmOf(each) !== undefined).toSorted((a, b) => rank(a) - rank(b))
  const isGrave = (each: Caution) => graveHarms.includes(harmOf(each) ?? 'damage')
  return {
    grave: hurting.filter(isGrave),
    lesser: hurting.filter(each => !isGrave(each)),
    design: told.filter(ofDesign).toSorted((a, b) => roomOf(a.code) - roomOf(b.code))
  }
}

/** Each code once: what can kill or burn, two of what disappoints, then the rest; six in all. */
function openingOf(cautions: readonly Caution[], dangers: readonly PlanHazard[]): readonly Caution[] {
  const { grave, lesser, design } = peculiarOnes(cautions, dangers)
  const places = [
    ...grave.slice(0, answerDefaults.mostGrave.value),
    ...design.slice(0, answerDefaults.fewestOfDesign.value),
    ...grave.slice(answerDefaults.mostGrave.value),
    ...lesser,
    ...design.slice(answerDefaults.fewestOfDesign.value)
  ]
  return [...new Map(places.map(each => [each.code, each])).values()].slice(0, answerDefaults.mostOnPageOne.value - 1)
}

/**
 * What is peculiar to this design, and licensed work always, at the end, whole.
 *
 * @param said  what the verdict gives as its reasons already: a `stop`, a wish that was not kept
 * @returns each code once, at most seven
 */
export function pageOne(
  cautions: readonly Caution[],
  steps: readonly NumberedStep[],
  said: readonly string[],
  dangers: readonly PlanHazard[]
): readonly FirstCaution[] {
  const chosen = openingOf(
    cautions.filter(({ message }) => !said.includes(message)),
    dangers
  )
  const licensed = cautions.filter(({ code }) => code === 'licensed-work')
  return [...chosen, ...licensed].map(({ code, said: { message } }) => ({
    code,
    ...worded({
      clause: briefOf(code) ?? say('code', { code }),
      sentence: code === 'licensed-work' ? message : opening(message)
    }),
    ...present({ step: steps.find(each => each.cautions.includes(code))?.number })
  }))
}
