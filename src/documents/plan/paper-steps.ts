/** The steps of a plan as page and paper show them: day by day, each with what prevents harm, short and whole. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { startStages, type WorkItem } from '../../contract/systems/words.ts'
import { briefOf, type Language, spoken, told } from '../../domain/say.ts'
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
  readonly uses?: readonly WorkItem[]
  readonly cautions: readonly CautionCode[]
}

interface Barriers {
  /** In sight: warnings of the step, short forms of its cautions, and what has no short form. */
  readonly short: readonly string[]
  /** What a short form stands for, where it is said whole. */
  readonly whole: readonly string[]
  /** All of it once: the whole where it is said here, else the short form. */
  readonly once: readonly string[]
}

const ended = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`)

export function barriersOf({ stepCautions, language }: PlanPaper, { id, cautions, warnings }: PaperStep): Barriers {
  const given = new Set([...stepCautions.values()].flat().map(({ code }) => code))
  const here = stepCautions.get(id) ?? []
  const briefsOf = (codes: readonly CautionCode[]) =>
    codes.flatMap(code => briefOf(code) ?? []).map(brief => spoken(brief, language))
  const said = new Set(here.map(({ code }) => code))
  const named = cautions.filter(code => given.has(code))
  const elsewhere = briefsOf(named.filter(code => !said.has(code)))
  const unshortened = here.filter(({ code }) => briefOf(code) === undefined).map(({ message }) => message)
  const sentences = (texts: readonly string[]) => [...new Set(texts)].map(ended)
  return {
    short: sentences([...warnings, ...briefsOf(named), ...unshortened]),
    whole: here.filter(({ code }) => briefOf(code) !== undefined).map(({ message }) => message),
    once: sentences([...warnings, ...elsewhere, ...here.map(({ message }) => message)])
  }
}

type BuildStep = NonNullable<PlanPaper['buildOrder']>['steps'][number]

function paperStep({ actions, checks, minutes, cureMinutes, ...step }: BuildStep, language: Language): PaperStep {
  const work = durationText(minutes, { language })
  const cure = durationText(cureMinutes, { language })
  const time = cureMinutes > 0 ? told(language, 'paper.step-time', { work, cure }) : work
  return { ...step, time, readings: checks, how: actions }
}

/** What is done on one day at some places, or in one stretch of switching on. */
export interface PaperStretch {
  readonly title: string
  readonly minutes: number
  readonly steps: readonly PaperStep[]
}

const minutesOf = (steps: readonly { readonly minutes: number }[]) =>
  steps.reduce((sum, { minutes }) => sum + minutes, 0)

/** The steps of some places, day by day; days without any are left out. */
export function daysOf(plan: PlanPaper, places: readonly BuildStep['place'][]): readonly PaperStretch[] {
  const { steps = [], days = [] } = plan.buildOrder ?? {}
  const here = steps.filter(({ place }) => places.includes(place))
  return days
    .map(({ day, steps: ids }) => {
      const mine = here.filter(({ id }) => ids.includes(id))
      return {
        title: told(plan.language, 'paper.day', { number: day }),
        minutes: minutesOf(mine),
        steps: mine.map(step => paperStep(step, plan.language))
      }
    })
    .filter(({ steps: some }) => some.length > 0)
}

/** Switching on, stretch by stretch. */
export const stagesOf = ({ commissioning, language }: PlanPaper): readonly PaperStretch[] =>
  startStages
    .map(stage => {
      const mine = commissioning.filter(step => step.stage === stage)
      const steps = mine.map(({ text, passIf, minutes, ...step }) => ({
        ...step,
        time: durationText(minutes, { language }),
        warnings: [],
        readings: [passIf],
        how: [text]
      }))
      return { title: told(language, `paper.stage.${stage}`), minutes: minutesOf(mine), steps }
    })
    .filter(({ steps }) => steps.length > 0)
