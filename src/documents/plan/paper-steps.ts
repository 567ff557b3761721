/** The steps of a plan as page and paper show them: day by day, each with what prevents harm, short and whole. */
import { cautionBriefs } from '../../contract/cautions/briefs.ts'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { durationText } from '../draw/number-text.ts'
import type { PlanPaper } from './plan-paper.ts'

export interface PaperStep {
  readonly number: number
  readonly id: string
  readonly title: string
  readonly time?: string
  readonly warnings: readonly string[]
  readonly readings: readonly string[]
  readonly how: readonly string[]
  readonly tools: readonly string[]
  readonly uses?: readonly string[]
  readonly cautions: readonly CautionCode[]
}

interface Barriers {
  /** In sight: warnings of the step, short forms of its cautions, and what has no short form. */
  readonly short: readonly string[]
  /** What a short form stands for, where it is said whole. */
  readonly whole: readonly string[]
}

const ended = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`)

export function barriersOf({ stepCautions }: PlanPaper, { id, cautions, warnings }: PaperStep): Barriers {
  const given = new Set([...stepCautions.values()].flat().map(({ code }) => code))
  const briefs = cautions.filter(code => given.has(code)).flatMap(code => cautionBriefs[code] ?? [])
  const here = stepCautions.get(id) ?? []
  const unshortened = here.filter(({ code }) => cautionBriefs[code] === undefined)
  return {
    short: [...new Set([...warnings, ...briefs, ...unshortened.map(({ message }) => message)])].map(ended),
    whole: here.filter(({ code }) => cautionBriefs[code] !== undefined).map(({ message }) => message)
  }
}

type BuildStep = NonNullable<PlanPaper['buildOrder']>['steps'][number]

const paperStep = (
  { actions, checks, minutes, cureMinutes, ...step }: BuildStep,
  { restraint }: PlanPaper
): PaperStep => ({
  ...step,
  time: `${durationText(minutes)}${cureMinutes > 0 ? `, then ${durationText(cureMinutes)}` : ''}`,
  readings: checks,
  // How the box is held stands where it is fastened.
  how: step.cautions.includes('box-restraint') ? [...actions, ...(restraint?.advice ?? [])] : actions
})

interface PaperDay {
  readonly day: number
  readonly steps: readonly PaperStep[]
}

/** The steps of some places, day by day; days without any are left out. */
export function daysOf(plan: PlanPaper, places: readonly BuildStep['place'][]): readonly PaperDay[] {
  const { steps = [], days = [] } = plan.buildOrder ?? {}
  const here = steps.filter(({ place }) => places.includes(place))
  return days
    .map(({ day, steps: ids }) => ({
      day,
      steps: here.filter(({ id }) => ids.includes(id)).map(step => paperStep(step, plan))
    }))
    .filter(({ steps: some }) => some.length > 0)
}

export const firstSteps = ({ commissioning }: PlanPaper): readonly PaperStep[] =>
  commissioning.map(({ text, passIf, ...step }) => ({
    ...step,
    warnings: [],
    readings: [passIf],
    how: [text],
    tools: []
  }))
