/** What always holds for plans and for a search among designs. */
import type { Static } from 'typebox'
import type { SearchBody, SearchResultBody } from '../../../contract/systems/design-search.ts'
import type { PlanBody } from '../../../contract/systems/plan-request.ts'
import { difference, firstBroken, isAtMost, type Law, reorderedLists, unbalanced } from '../../wire/law.ts'
import type { PlanResultBody } from './plan-result.ts'

type Search = Static<typeof SearchBody>
type Found = Static<typeof SearchResultBody>
type Plan = Static<typeof PlanResultBody>

const systems = ({ designs }: Found) =>
  designs.map(({ driver, driverCount, amplifier, kind, score, figures }) => ({
    ...{ driver, driverCount, amplifier, kind, score, figures }
  }))

export const searchLaws: readonly Law<Search, Found>[] = [
  {
    id: 'every-system-is-told',
    sentence: 'Every system that was weighed is ranked or dropped, and every drop has its reason.',
    broken: ({ result: { weighed, rankedCount, rejectedCount, rejectedBy } }) =>
      unbalanced('weighed', weighed, [rankedCount, rejectedCount]) ??
      unbalanced(
        'dropped',
        rejectedCount,
        rejectedBy.map(({ count }) => count)
      )
  },
  {
    id: 'best-first',
    sentence: 'No design stands before one with a better score.',
    broken: ({ result: { designs } }) =>
      firstBroken(designs.slice(1), ({ score }, place) =>
        isAtMost(score, designs[place]?.score ?? Infinity) ? undefined : `${score} after ${designs[place]?.score}`
      )
  },
  {
    id: 'order-of-lists-never-matters',
    sentence: 'The order of drivers and amplifiers never matters.',
    varied: reorderedLists('drivers', 'amplifiers'),
    staysAnswered: true,
    broken: (first, second) => difference(systems(first.result), systems(second.result))
  }
]

/** The answers of parts are of many kinds; all carry their cautions alike. */
const stopped = ({ parts }: Plan) =>
  Object.entries(parts ?? {}).find(([, part]) =>
    JSON.stringify(part.done ? part.answer : '').includes('"level":"stop"')
  )?.[0]

export const planLaws: readonly Law<Static<typeof PlanBody>, Plan>[] = [
  {
    id: 'no-stop-in-a-ready-plan',
    sentence: 'A plan with a part that must not be built is never ready.',
    broken: ({ result }) => {
      const { verdict } = result.summary
      const part = stopped(result)
      return part === undefined || verdict === 'stop' || verdict === 'incomplete'
        ? undefined
        : `${verdict} although its ${part} carries a stop`
    }
  },
  {
    id: 'steps-in-order',
    sentence: 'A step comes after every step it needs, and the minutes of the steps make the work.',
    broken: ({ result: { buildOrder } }) => {
      const { steps = [], workMinutes = 0 } = buildOrder ?? {}
      return (
        firstBroken(steps, ({ id, needs }, place) => {
          const early = needs.find(need => !steps.slice(0, place).some(step => step.id === need))
          return early && `${id} needs ${early}`
        }) ??
        unbalanced(
          'work',
          workMinutes,
          steps.map(({ minutes }) => minutes)
        )
      )
    }
  }
]
