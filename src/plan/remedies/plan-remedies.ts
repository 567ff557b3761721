/** Remedies for what the supply of a plan is short of: each tried by planning again, the cure first, then the cheap. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanRemedy } from '../../contract/systems/remedies.ts'
import { remedyCosts } from '../../contract/systems/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { inDigits } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { type Item, listed, say, worded } from '../../domain/say.ts'
import { rememberingParts } from '../request/part.ts'
import { type Candidate, candidates } from './candidates.ts'
import {
  type ElectricOutcome,
  electricOutcome,
  outcomeOf,
  type PlannedElectrics,
  turnedDown,
  wantsVoltage
} from './electric-outcome.ts'
import { mergePatch } from './merge-patch.ts'

/** Less is within what a battery's charge changes from day to day [V]. */
const WORTH_V = 0.05
/** A turn of the gain that is hardly heard. */
const TURN_DOWN_DB = 2

type Tried = Omit<Candidate, 'patch'> & Partial<Pick<Candidate, 'patch'>> & { readonly after: ElectricOutcome }

function curesOf(before: ElectricOutcome, after: ElectricOutcome): readonly CautionCode[] {
  return [...before.problems].flatMap(([code, grave]) => ((after.problems.get(code) ?? 0) < grave ? [code] : []))
}

const gain = (before: number | undefined, after: number | undefined) => (after ?? 0) - (before ?? 0)

function bringsText({ figures: before }: ElectricOutcome, { figures: after }: ElectricOutcome): Item | readonly [] {
  const volts = (was: number | undefined, is: number | undefined, when: Said) => {
    if (is === undefined || (was !== undefined && Math.abs(is - was) < WORTH_V)) return []
    return [
      say('answer.v-2', {
        is: inDigits(is, 4),
        when,
        more: was === undefined ? '' : say('answer.in-place-of-v', { was: inDigits(was, 4) })
      })
    ]
  }
  const size =
    after.cable === undefined || after.cable === before.cable
      ? []
      : [
          say('answer.cable', {
            cable: after.cable,
            instead: before.cable === undefined ? '' : say('answer.instead', { cable: before.cable })
          })
        ]
  const parts = [
    ...size,
    ...volts(before.fullSineV, after.fullSineV, say('answer.at-full-sine-driving')),
    ...volts(before.heavyV, after.heavyV, say('answer.with-dense-bass-engine-idling'))
  ]
  return parts.length === 0 ? say('answer.the-figures-stay') : listed(parts, 'list.clauses')
}

function remedyOf({ id, cost, what, patch, after }: Tried, before: ElectricOutcome): PlanRemedy {
  return {
    id,
    cost,
    ...worded({ text: say('answer.remedy', { what, brings: bringsText(before, after) }) }),
    cures: curesOf(before, after),
    before: before.figures,
    after: after.figures,
    ...present({ patch })
  }
}

/** Whether it cures something and makes nothing worse, or gives volts or a thinner cable. */
function helps({ id, after }: Tried, before: ElectricOutcome): boolean {
  if (!before.joined) return after.joined
  const worse = [...after.problems].some(([code, grave]) => grave > (before.problems.get(code) ?? 0) && grave > 1)
  const [was, is] = [before.figures, after.figures]
  const better =
    gain(was.fullSineV, is.fullSineV) > WORTH_V || gain(was.heavyV, is.heavyV) > WORTH_V || was.cable !== is.cable
  // volts that fall at both levels are no remedy, whatever they cure on paper; behind a converter they are meant to
  const sinks =
    id !== 'converter' && gain(was.fullSineV, is.fullSineV) < -WORTH_V && gain(was.heavyV, is.heavyV) < -WORTH_V
  return !worse && !sinks && (curesOf(before, after).length > 0 || better)
}

function tried(request: PlanRequest, candidate: Candidate): readonly Tried[] {
  try {
    return [{ ...candidate, after: electricOutcome(mergePatch(request, candidate.patch)) }]
  } catch (error) {
    if (error instanceof DesignError) return []
    throw error
  }
}

function quieter(before: ElectricOutcome): readonly Tried[] {
  const after = wantsVoltage(before) ? turnedDown(before, 10 ** (-TURN_DOWN_DB / 10)) : undefined
  if (after === undefined) return []
  const what = say('answer.set-the-gain-db-lower-than', { turnDownDb: TURN_DOWN_DB })
  return [{ id: 'lower-gain', cost: 'setting', what, after }]
}

/** Weight of what is cured: the gravest first. */
function weight({ cures }: PlanRemedy, { problems }: ElectricOutcome): number {
  const codes = [...problems.keys()]
  return cures.reduce((sum, code) => sum + (problems.get(code) ?? 0) ** 2 / (1 + codes.indexOf(code)), 0)
}

/**
 * @param planned  what the plan itself came to; worked out where absent
 * @returns nothing for a plan that is short of nothing
 */
export function planRemedies(request: PlanRequest, planned?: PlannedElectrics): readonly PlanRemedy[] {
  return rememberingParts(() => {
    const before = planned === undefined ? electricOutcome(request) : outcomeOf(planned)
    if (before.joined && before.problems.size === 0) return []
    const all = [...candidates(request, before).flatMap(each => tried(request, each)), ...quieter(before)]
    return all
      .filter(each => helps(each, before))
      .map(each => remedyOf(each, before))
      .toSorted(
        (one, other) =>
          weight(other, before) - weight(one, before) ||
          remedyCosts.indexOf(one.cost) - remedyCosts.indexOf(other.cost) ||
          gain(other.before.heavyV, other.after.heavyV) - gain(one.before.heavyV, one.after.heavyV)
      )
  })
}
