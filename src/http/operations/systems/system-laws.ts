/** What always holds for plans and for a search among designs. */
import type { Static } from 'typebox'
import type { MergeBody } from '../../../contract/systems/design-part.ts'
import type { SearchResultBody } from '../../../contract/systems/design-result.ts'
import type { SearchBody } from '../../../contract/systems/design-search.ts'
import type { DriverRegionBody, DriverRegionResultBody } from '../../../contract/systems/driver-region.ts'
import type { PlanBody } from '../../../contract/systems/plan-request.ts'
import type { DesignRanking } from '../../../contract/systems/words.ts'
import { difference, firstBroken, isAtMost, type Law, reorderedLists, unbalanced } from '../../wire/law.ts'
import type { PlanResultBody } from './plan-result.ts'

type Search = Static<typeof SearchBody>
type Found = Static<typeof SearchResultBody>
type Plan = Static<typeof PlanResultBody>

const nameOf = ({ driver, driverCount, amplifier, kind }: Found['designs'][number] | Found['rejected'][number]) =>
  JSON.stringify([driver, driverCount, amplifier, kind])

const systems = ({ designs }: Found) =>
  designs.map(({ driver, driverCount, amplifier, kind, score, figures }) => ({
    driver,
    driverCount,
    amplifier,
    kind,
    score,
    figures
  }))

/** What decides the order; more is better. */
const worthBy: Readonly<Record<DesignRanking, (design: Found['designs'][number]) => number>> = {
  balance: ({ score }) => score,
  level: ({ figures }) => figures.levelDb,
  reach: ({ figures }) => -figures.f3Hz,
  box: ({ figures }) => -figures.outerVolumeL,
  price: ({ figures }) => -(figures.price ?? 0),
  current: ({ figures }) => -figures.fullSineA
}

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
    sentence: 'No design stands before one that is better in what decides the order.',
    broken: ({ request: { rankBy = 'balance' }, result: { designs } }) => {
      const worth = worthBy[rankBy]
      return firstBroken(designs.slice(1), (design, place) => {
        const before = designs[place]
        return before === undefined || isAtMost(worth(design), worth(before))
          ? undefined
          : `${worth(design)} after ${worth(before)}`
      })
    }
  },
  {
    id: 'no-more-shown-than-found',
    sentence: 'No more designs are shown than are ranked, and none that is shown is dropped.',
    broken: ({ result: { designs, rankedCount, rejected } }) =>
      designs.length > rankedCount
        ? `${designs.length} shown of ${rankedCount}`
        : firstBroken(designs, design =>
            rejected.some(each => nameOf(each) === nameOf(design)) ? `${nameOf(design)} is dropped too` : undefined
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

export const mergeLaws: readonly Law<Static<typeof MergeBody>, Found>[] = [
  {
    id: 'nothing-is-lost-by-joining',
    sentence: 'The whole weighs what its parts weighed.',
    broken: ({ request: { parts }, result: { weighed } }) =>
      unbalanced(
        'weighed',
        weighed,
        parts.map(part => part.weighed)
      )
  },
  {
    id: 'order-of-parts-never-matters',
    sentence: 'The order of the parts never matters.',
    varied: reorderedLists('parts'),
    staysAnswered: true,
    broken: (first, second) => difference(first.result, second.result)
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

type Region = Static<typeof DriverRegionResultBody>

const isWithin = (value: number, from: number, to: number) => isAtMost(from, value) && isAtMost(value, to)

export const regionLaws: readonly Law<Static<typeof DriverRegionBody>, Region>[] = [
  {
    id: 'suited-drivers-lie-in-the-region',
    sentence: 'The best driver and those at the corners lie in the region, and each has its box.',
    broken: ({ result: { best, corners, fsFromHz, fsToHz, qtsFrom, qtsTo, vasFromL, vasToL } }) =>
      firstBroken([best, ...corners], ({ fsHz, qts, vasL, figures }) =>
        isWithin(fsHz, fsFromHz, fsToHz) && isWithin(qts, qtsFrom, qtsTo) && isWithin(vasL, vasFromL, vasToL)
          ? difference(figures.levelDb.length, 5)
          : `${fsHz} Hz, ${qts}, ${vasL} L`
      )
  }
]
