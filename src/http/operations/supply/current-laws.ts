/** What always holds for the currents of a supply and for a circuit. */
import type { Static } from 'typebox'
import type { CircuitRequest, CircuitResult } from '../../../contract/supply/supply-circuit.ts'
import type { SupplyCurrentRequest, SupplyCurrentResult } from '../../../contract/supply/supply-current.ts'
import { difference, firstBroken, isAtMost, type Law, reorderedLists, unbalanced } from '../../wire/law.ts'

const levels = ['quiescentA', 'averageA', 'heavyA', 'fullSineA'] as const

export const currentLaws: readonly Law<Static<typeof SupplyCurrentRequest>, Static<typeof SupplyCurrentResult>>[] = [
  {
    id: 'louder-draws-more',
    sentence:
      'Music never draws less than silence, dense bass never less than music, a test tone never less than both.',
    broken: ({ result: { currents } }) =>
      firstBroken(levels.slice(1), (level, place) => {
        const below = levels[place]
        return below === undefined || isAtMost(currents[below], currents[level])
          ? undefined
          : `${below} ${currents[below]} above ${level} ${currents[level]}`
      })
  },
  {
    id: 'currents-are-sums',
    sentence: 'Each current of the supply is the sum over its amplifiers.',
    broken: ({ result: { currents, amplifiers } }) =>
      firstBroken(levels, level =>
        unbalanced(
          level,
          currents[level],
          amplifiers.map(amplifier => amplifier[level])
        )
      )
  },
  {
    id: 'order-of-amplifiers-never-matters',
    sentence: 'The order of the amplifiers never matters.',
    varied: reorderedLists('amplifiers'),
    staysAnswered: true,
    broken: ({ result: { amplifiers: _, ...first } }, { result: { amplifiers: __, ...second } }) =>
      difference(first, second)
  }
]

type Circuit = Static<typeof CircuitRequest>
type State = Static<typeof CircuitResult>['states'][number]

/** A state is settled to a tenth of a microvolt and microampere: less is no difference. */
const SETTLED = 1e-6

/** Rows in the order of their names, which is no order of the request. */
const ordered = ({ points, parts, withoutSupply, ...state }: State) => ({
  ...state,
  points: points.toSorted((one, other) => one.point.localeCompare(other.point)),
  parts: parts.toSorted((one, other) => one.id.localeCompare(other.id)),
  withoutSupply: withoutSupply.toSorted()
})

/** Currents that leave a point, those that arrive as negative ones. */
function flowsOut(request: Circuit, parts: State['parts'], point: string): readonly number[] {
  const through = (id: string) => parts.find(part => part.id === id)?.currentA ?? 0
  const edges = [
    ...[...(request.cables ?? []), ...(request.fuses ?? []), ...(request.links ?? [])],
    ...[...request.amplifiers, ...(request.accessories ?? [])].map(({ id, plus, minus }) => ({
      id,
      from: plus,
      to: minus
    })),
    ...[...request.batteries, ...(request.alternators ?? [])].map(({ id, plus, minus }) => ({
      id,
      from: minus,
      to: plus
    }))
  ]
  return edges.flatMap(({ id, from, to }) => {
    if (from === to) return []
    return from === point ? [through(id)] : to === point ? [-through(id)] : []
  })
}

export const circuitLaws: readonly Law<Circuit, Static<typeof CircuitResult>>[] = [
  {
    id: 'order-of-parts-never-matters',
    sentence: 'The order of amplifiers, cables, fuses and links changes no voltage and no current.',
    varied: reorderedLists('amplifiers', 'cables', 'fuses', 'links'),
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) =>
      difference(first.states.map(ordered), second.states.map(ordered), 1e-4, SETTLED)
  },
  {
    id: 'currents-balance',
    sentence: 'What flows into a point flows out of it (Kirchhoff).',
    broken: ({ request, result: { states } }) =>
      firstBroken(
        // The starter is no row of the answer.
        states.filter(({ stands, level }) => stands && level !== 'cold-start'),
        ({ points, parts }) => {
          const flows = points.map(({ point }) => ({ point, out: flowsOut(request, parts, point) }))
          // A state is settled to a tenth of a microampere, and no better than the largest current allows.
          const leastA = 1e-9 * Math.max(1000, ...flows.flatMap(({ out }) => out.map(Math.abs)))
          return firstBroken(flows, ({ point, out }) => unbalanced(point, 0, out, leastA))
        }
      )
  }
]
