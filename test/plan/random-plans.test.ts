/** What must hold for every plan, over seeded random ones; RANDOM_PLANS=500 runs more of them. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { madeItems } from '../../src/contract/systems/words.ts'
import { DesignError } from '../../src/domain/design-error.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem as planned } from '../../src/plan/plan-system.ts'
import { changed, type Leaf, leavesOf, nameOf, trialsOf } from '../support/leaves.ts'
import { joinFaults } from '../support/plan-joins.ts'
import { randomPlan } from '../support/random-plans.ts'
import { safetyFaults } from '../support/safety-faults.ts'

const COUNT = Number(process.env.RANDOM_PLANS ?? 25)
const FIRST_SEED = Number(process.env.RANDOM_PLANS_FROM ?? 4100)
const seeds = Array.from({ length: COUNT }, (_, index) => FIRST_SEED + index)
const MINUTES = 60_000

interface Said {
  readonly code: string
  readonly level: string
  readonly message: string
}
// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any

const valid = requestValidator().compile(planSystem.body)
const answerTo = (request: unknown): Answer =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))

const partsOf = ({ result }: Answer) => Object.entries<Answer>(result.parts)
const stopsOf = (cautions: readonly Said[]) =>
  cautions.filter(({ level }) => level === 'stop').map(({ code, message }) => `${code}: ${message}`)

/** Read from the parts alone: a port within its limits in a box whose bodies all clear each other. */
function fits({ result: { parts } }: Answer): boolean {
  const portFits = parts.port === undefined || (parts.port.done && parts.port.answer.result.fits)
  return portFits && parts.box.done && parts.box.answer.result.clearances.every((row: Answer) => row.passes)
}

function faultsOf(request: ReturnType<typeof randomPlan>, answer: Answer): readonly string[] {
  const { summary, parts, billOfMaterials, buildOrder, commissioning } = answer.result
  const faults: string[] = []
  const wrong = (text: string) => faults.push(`seed of ${request.name}: ${text}`)
  const top = stopsOf(answer.cautions)
  for (const [name, part] of partsOf(answer))
    for (const stop of stopsOf(part.answer?.cautions ?? [])) if (!top.includes(stop)) wrong(`${name} hides ${stop}`)
  if (top.length > 0 !== (summary.verdict === 'stop')) wrong(`${top.length} stops, verdict ${summary.verdict}`)
  const undone = partsOf(answer).filter(([, part]) => !part.done)
  if (undone.length > 0 && !/^(incomplete|stop)$/.test(summary.verdict)) wrong(`parts undone, ${summary.verdict}`)
  if (/^(incomplete|stop)$/.test(summary.verdict) && summary.reasons.length === 0) wrong('no reason is given')
  if (fits(answer)) return faults
  if (!/^(incomplete|stop)$/.test(summary.verdict)) wrong(`does not fit, yet ${summary.verdict}`)
  if (billOfMaterials.length > 0 || buildOrder !== undefined || commissioning.length > 0 || parts.sheets.done)
    wrong('bought, cut, built or switched on although it does not fit')
  return faults
}

const elsewhere: readonly string[] = madeItems

/** Bill and steps are joined both ways: bought and used, used and bought; every step once, none before what it needs. */
function workFaults({ result: { billOfMaterials, buildOrder, commissioning } }: Answer): readonly string[] {
  if (buildOrder === undefined) return []
  const bought = new Set<string>(billOfMaterials.map(({ part }: Answer) => part))
  const used = new Set<string>([...buildOrder.steps, ...commissioning].flatMap(({ uses = [] }: Answer) => uses))
  const place = new Map<string, number>(buildOrder.steps.map(({ id, number }: Answer) => [id, number]))
  return [
    ...[...bought].filter(part => !used.has(part)).map(part => `${part} is bought and no step uses it`),
    ...[...used]
      .filter(part => !(bought.has(part) || elsewhere.includes(part)))
      .map(part => `${part} is used and not bought`),
    ...buildOrder.steps.flatMap(({ id, number, needs }: Answer) =>
      needs
        .filter((need: string) => (place.get(need) ?? Number.POSITIVE_INFINITY) >= number)
        .map((need: string) => `${id} comes before ${need}`)
    )
  ]
}

/** What was asked beside what the parts say was built; 1.1 % and 2.1 %, a digit beyond the rule. */
function unsaid({ enclosure = {} }: Answer, { result: { parts }, cautions }: Answer): readonly string[] {
  if (!parts.response.done) return []
  const { tuningHz, qtc } = parts.response.answer.result.scalars
  const { netL } = parts.box.answer.result.volume
  const away = (asked: number | undefined, built: number | undefined, by: number) =>
    asked !== undefined && (built === undefined || Math.abs(built / asked - 1) > by)
  const broken = [
    ...(away(enclosure.tuningHz, tuningHz, 0.011) ? [`tuning ${enclosure.tuningHz}, built ${tuningHz}`] : []),
    ...(away(enclosure.netVolumeL, netL, 0.011) ? [`volume ${enclosure.netVolumeL}, built ${netL}`] : []),
    ...(away(enclosure.qtc, qtc, 0.021) ? [`Qtc ${enclosure.qtc}, built ${qtc}`] : [])
  ]
  const said = cautions.filter(({ code }: Said) => code === 'not-as-asked').length
  return said >= broken.length ? [] : broken
}

describe('random plans', () => {
  const tally: Record<string, number> = {}

  it(
    `show every stop of their parts, buy nothing that does not fit and say what was not built (${COUNT} of them)`,
    () => {
      const faults = seeds.flatMap(seed => {
        const request = randomPlan(seed)
        expect(valid(request), JSON.stringify(valid.errors)).toBe(true)
        const answer = answerTo(request)
        const verdict = answer.result.summary.verdict
        tally[verdict] = (tally[verdict] ?? 0) + 1
        tally[fits(answer) ? 'fits' : 'does not fit'] = (tally[fits(answer) ? 'fits' : 'does not fit'] ?? 0) + 1
        const si = toSi(request) as PlanRequest
        const told = [
          ...unsaid(request, answer),
          ...workFaults(answer),
          ...safetyFaults(answer),
          ...joinFaults(si, planned(si).result)
        ]
        return [...faultsOf(request, answer), ...told.map(text => `seed ${seed}: ${text}`)]
      })
      if (process.env.RANDOM_PLANS !== undefined) console.log(JSON.stringify(tally), faults.length)
      expect(faults).toEqual([])
    },
    COUNT * MINUTES
  )
})

/** The answer without what merely repeats the request. */
function substance(request: unknown): string {
  try {
    const answer = answerTo(request)
    for (const [, part] of partsOf(answer)) delete part.request
    return JSON.stringify(answer)
  } catch (error) {
    if (error instanceof DesignError) return `refused: ${error.message}`
    throw error
  }
}

/** Undefined where no other valid value is known for the leaf: tags of a union. */
function works(request: unknown, before: string, leaf: Leaf): boolean | undefined {
  const others = trialsOf(leaf)
    .map(value => changed(request, leaf.path, value))
    .filter(other => valid(other) === true)
  return others.length === 0 ? undefined : others.some(other => substance(other) !== before)
}

/** Closed boxes are the quickest to plan; they come first, so that dear ones are asked only for what is their own. */
const cheapFirst = (a: Answer, b: Answer) =>
  Number(a.enclosure?.kind !== 'closed') - Number(b.enclosure?.kind !== 'closed')

/**
 * Fields that speak only beyond a threshold which few random plans reach. Their effect is held elsewhere: the height of a motor
 * in the pairs of bodies of a box, the least voltage of an input in the ranges of the signal.
 */
const thresholds: readonly string[] = ['driver/mounting/magnetHeightMm', 'signal/input/lowestV']

describe('every field of a random plan', () => {
  it(
    'changes the answer, or is refused, when it is changed: in one of the plans that hold it',
    () => {
      const trialCount = new Map<string, number>()
      const dead = new Set<string>()
      const alive = new Set<string>()
      for (const request of seeds.map(randomPlan).toSorted(cheapFirst)) {
        const due = leavesOf(request).filter(
          leaf => !alive.has(nameOf(leaf)) && (trialCount.get(nameOf(leaf)) ?? 0) < 4
        )
        if (due.length === 0) continue
        const before = substance(request)
        for (const leaf of due) {
          const name = nameOf(leaf)
          if (alive.has(name)) continue
          trialCount.set(name, (trialCount.get(name) ?? 0) + 1)
          const effect = works(request, before, leaf)
          if (effect === true) alive.add(name)
          else if (effect === false) dead.add(name)
        }
      }
      expect([...dead].filter(name => !alive.has(name) && !thresholds.includes(name))).toEqual([])
      expect(alive.size).toBeGreaterThan(70)
    },
    COUNT * MINUTES
  )
})
