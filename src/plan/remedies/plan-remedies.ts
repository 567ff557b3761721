/** Remedies for what the supply of a plan is short of: each tried by planning again, the cure first, then the cheap. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanRemedy, RemedyFigures } from '../../contract/systems/remedies.ts'
import { remedyCosts } from '../../contract/systems/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { inDigits } from '../../domain/digits.ts'
import { type Item, listed, say, worded } from '../../domain/say.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { RunPart } from '../request/part.ts'
import type { Candidate } from './cable-candidates.ts'
import { candidates } from './candidates.ts'
import { remedyDefaults } from './defaults.ts'
import { type ElectricOutcome, electricOutcome, outcomeOf, type PlannedElectrics } from './electric-outcome.ts'
import { mergePatch } from './merge-patch.ts'

type Tried = Candidate & { readonly after: ElectricOutcome }

function curesOf(before: ElectricOutcome, after: ElectricOutcome): readonly CautionCode[] {
  return [...before.problems].flatMap(([code, grave]) => ((after.problems.get(code) ?? 0) < grave ? [code] : []))
}

const gain = (before: number | undefined, after: number | undefined) => (after ?? 0) - (before ?? 0)

/** What it costs in power, or gives. */
function powerText({ powerW: was = 0 }: RemedyFigures, { powerW: is }: RemedyFigures): readonly Said[] {
  if (is === undefined || Math.abs(is - was) < remedyDefaults.samePowerShare.value * is) return []
  const instead = was === 0 ? [] : say('answer.in-place-of-w', { was: inDigits(was, 3) })
  return [say('answer.power-at-the-gain', { is: inDigits(is, 3), instead })]
}

function bringsText({ figures: before }: ElectricOutcome, { figures: after }: ElectricOutcome): Item | readonly [] {
  const volts = (was: number | undefined, is: number | undefined, when: Said) => {
    if (is === undefined || (was !== undefined && Math.abs(is - was) < remedyDefaults.worthV.value)) return []
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
    ...powerText(before, after),
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
    patch
  }
}

/** Volts that fall at both levels are no remedy, whatever they cure on paper; these are not meant to raise them. */
function sinks({ id, after: { figures: is } }: Tried, { figures: was }: ElectricOutcome): boolean {
  if (id === 'converter' || id === 'smaller-size' || id === 'bridging') return false
  const worthV = remedyDefaults.worthV.value
  return gain(was.fullSineV, is.fullSineV) < -worthV && gain(was.heavyV, is.heavyV) < -worthV
}

/** Whether it cures something and makes nothing worse, or gives volts or a thinner cable; a next size is no second cable. */
function helps(change: Tried, before: ElectricOutcome): boolean {
  const { id, after } = change
  if (!before.joined) return after.joined
  const worse = [...after.problems].some(([code, grave]) => grave > (before.problems.get(code) ?? 0) && grave > 1)
  const doubled = id === 'next-size' && after.runs !== before.runs
  if (worse || doubled || !after.joined || sinks(change, before)) return false
  const [was, is] = [before.figures, after.figures]
  const cured = curesOf(before, after).length > 0
  const { lessPower, worthV, thinner: thinnerBy, stronger: strongerBy } = remedyDefaults
  if ((is.powerW ?? 0) < lessPower.value * (was.powerW ?? 0)) return cured
  const volts = gain(was.fullSineV, is.fullSineV) > worthV.value || gain(was.heavyV, is.heavyV) > worthV.value
  const thinner = (after.sectionM2 ?? 0) < thinnerBy.value * (before.sectionM2 ?? 0)
  const stronger = before.weak && (is.powerW ?? 0) > strongerBy.value * (was.powerW ?? 0)
  return cured || volts || thinner || stronger
}

function tried(request: PlanRequest, candidate: Candidate, run: RunPart): readonly Tried[] {
  try {
    return [{ ...candidate, after: electricOutcome(mergePatch(request, candidate.patch), run) }]
  } catch (error) {
    if (error instanceof DesignError) return []
    throw error
  }
}

/** Weight of what is cured: the gravest first. */
function weight({ cures }: PlanRemedy, { problems }: ElectricOutcome): number {
  const codes = [...problems.keys()]
  return cures.reduce((sum, code) => sum + (problems.get(code) ?? 0) ** 2 / (1 + codes.indexOf(code)), 0)
}

/** A box that was searched holds a gain that no other electric side changes. */
function atItsGain(request: PlanRequest, joined: JoinedDrivers | undefined): PlanRequest {
  if (joined?.gainPowerW === undefined) return request
  return mergePatch(request, { signal: { gainPowerW: joined.powerW } })
}

/**
 * @param run  of the plan whose remedies these are
 * @param planned  what the plan itself came to; worked out where absent
 * @returns nothing for a plan that is short of nothing and just misses nothing
 */
export function planRemedies(request: PlanRequest, run: RunPart, planned?: PlannedElectrics): readonly PlanRemedy[] {
  const asked = atItsGain(request, planned?.joined)
  const before = planned === undefined ? electricOutcome(asked, run) : outcomeOf(asked, planned)
  return candidates(asked, before)
    .flatMap(each => tried(asked, each, run))
    .filter(each => helps(each, before))
    .map(each => remedyOf(each, before))
    .toSorted(
      (one, other) =>
        weight(other, before) - weight(one, before) ||
        remedyCosts.indexOf(one.cost) - remedyCosts.indexOf(other.cost) ||
        gain(other.before.heavyV, other.after.heavyV) - gain(one.before.heavyV, one.after.heavyV)
    )
}
