/** Brings a computed plan onto paper: which figures, curves, drawings and lists it has to show. */
import { sources as sourceCatalogue } from '../../contract/sources/source.ts'
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { tuningIn } from '../../domain/enclosure/response/tuning-in.ts'
import type { Assumption, Outcome } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { placedCautions } from '../../plan/answer/step-cautions.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import type { Part } from '../../plan/request/part.ts'
import type { ChartLimits } from '../charts/response-charts.ts'
import { figure, type Reader, significant } from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import { conductorsOf } from '../wiring/conductors.ts'
import { coilsOf, wiringOf } from '../wiring/wiring-of-plan.ts'
import { otherBoxes, waysToFit } from './paper-choice.ts'
import { boxFacts, greatFigures, powerFacts, soundFacts, supplyFacts } from './paper-facts.ts'
import type { PaperAssumption, PlanPaper } from './plan-paper.ts'
import { readingCard } from './reading-rows.ts'
import { whatIfTable } from './what-if-rows.ts'

function limitsOf({ parts }: SystemPlan, { language }: Reader): ChartLimits {
  const response = resultOf(parts.response)
  const driver = resultOf(parts.driver)?.driver
  const speed = parts.port?.request?.airSpeedLimitMPerS
  const best = resultOf(parts.matching)?.best
  return {
    language,
    ...present({ xmaxM: driver?.xmaxM }),
    ...present({ airSpeedMPerS: speed }),
    ...present({
      minimumOhm: best?.lowestOhm,
      tuningHz: response && tuningIn(response.scalars),
      f3Hz: response?.scalars.f3Hz,
      cabinLevelDb: response?.curves.seatLevelDb
    })
  }
}

/** What the plan and its parts assumed: each once, with the part that was first to, since one name can mean two things. */
function assumptionsOf(parts: SystemPlan['parts'], own: readonly Assumption[]): PlanPaper['assumed'] {
  const ofParts = Object.entries<Part<unknown, unknown> | undefined>({ ...parts }).flatMap(([name, part]) =>
    part?.done ? part.outcome.assumed.map(entry => ({ ...entry, part: name })) : []
  )
  const found = new Map<string, PaperAssumption>()
  for (const entry of [...own, ...ofParts]) {
    const key = JSON.stringify([entry.field, entry.value, entry.why])
    if (!found.has(key)) found.set(key, entry)
  }
  return [...found.values()]
}

/** What to measure at the end, beside what the plan expects. */
function cardOf({ parts, commissioning, readings }: SystemPlan, paper: Reader): PlanPaper['card'] {
  const scalars = resultOf(parts.response)?.scalars
  const gain = resultOf(parts.signal)?.gain
  const { language } = paper
  const at = (id: string) => commissioning.find(step => step.id === id)?.number
  const row = (what: string, planned: string | undefined, step: number | undefined) =>
    planned === undefined || step === undefined ? [] : [{ what, how: '', planned, step, otherwise: '' }]
  const two = (value: number) => significant(value, 2, paper)
  const [first, second] = (scalars?.impedancePeaks ?? []).map(({ frequencyHz }) => two(frequencyHz))
  const least = scalars === undefined || tuningIn(scalars) === undefined ? undefined : scalars.impedanceMinima[0]
  return [
    ...row(
      told(language, 'paper.check.impedance-peaks'),
      first && `${second === undefined ? first : told(language, 'paper.check.and', { first, second })} Hz`,
      at('speaker-resistance')
    ),
    ...row(
      told(language, 'paper.check.impedance-least'),
      least && told(language, 'paper.check.at', { value: `${two(least.ohm)} Ω`, frequency: two(least.frequencyHz) }),
      at('speaker-resistance')
    ),
    ...row(
      told(language, 'paper.check.terminals'),
      gain &&
        told(language, 'paper.check.at', {
          value: `${figure(gain.meterVoltageV, 1, paper)} V`,
          frequency: figure(gain.toneHz, 0, paper)
        }),
      at('gain')
    ),
    ...readingCard(readings, commissioning, paper)
  ]
}

/** What the first page says whole is not said again further down. */
function notOnCover(atChapters: PlanPaper['chapterCautions'], { pageOne }: PlanCover): PlanPaper['chapterCautions'] {
  const said = new Set(pageOne.map(({ sentence }) => sentence))
  return new Map(
    [...atChapters].map(([chapter, cautions]) => [chapter, cautions.filter(({ message }) => !said.has(message))])
  )
}

/** So many of what was tried stand on the first page where nothing fits. */
const SHOWN_MISSES = 3

/** @param request  for what the plan does not repeat: lengths, return path, names */
export function paperOfPlan(
  { result: plan, cautions, assumed, sources }: Outcome<SystemPlan>,
  request: PlanRequest,
  paper: Reader
): PlanPaper {
  const fits = plan.buildOrder !== undefined
  const curves = fits ? resultOf(plan.parts.response)?.curves : undefined
  const box = fits ? resultOf(plan.parts.box) : undefined
  const figures = fits ? greatFigures(plan, request, paper) : []
  const tried = plan.tried.map(({ name, why }) => ({ name, why }))
  const missed = figures.length > 0 ? 0 : SHOWN_MISSES
  const cutPlan = resultOf(plan.parts.sheets)
  const wiring = wiringOf(plan, request, paper)
  const coils = coilsOf(plan, paper)
  const reasons = plan.summary.reasons.map(({ detail }) => detail)
  const placed = placedCautions(cautions, [...(plan.buildOrder?.steps ?? []), ...plan.commissioning], reasons)
  return {
    language: paper.language,
    title: plan.name ?? told(paper.language, 'paper.title'),
    verdict: plan.summary.verdict,
    lines: plan.summary.lines,
    reasons,
    cover: plan.cover,
    figures,
    stepCautions: placed.atSteps,
    chapterCautions: notOnCover(placed.atChapters, plan.cover),
    nearest: tried.slice(0, missed),
    tried: tried.slice(missed),
    ways: waysToFit(plan, paper),
    others: fits ? otherBoxes(plan, paper) : [],
    ...present({ headroom: plan.headroom?.text }),
    whatIf: whatIfTable(plan, paper),
    conductors: conductorsOf(plan, paper),
    card: cardOf(plan, paper),
    facts: [
      ...(fits ? [boxFacts(plan, paper), soundFacts(plan, paper)] : []),
      powerFacts(plan, paper),
      supplyFacts(plan, paper)
    ].filter(({ rows }) => rows.length > 0),
    ...(curves === undefined ? {} : { curves, limits: limitsOf(plan, paper) }),
    ...present({ box, cutPlan, wiring, coils }),
    bill: plan.billOfMaterials.map(({ sold, ...row }) => ({ ...row, ...sold })),
    ...present({ buildOrder: plan.buildOrder, restraint: plan.restraint }),
    commissioning: plan.commissioning,
    remedies: plan.remedies.map(({ text }) => text),
    assumed: assumptionsOf(plan.parts, assumed),
    sources: [...new Set(sources)].sort().map(id => ({ id, ...sourceCatalogue[id] }))
  }
}
