/** What always holds for voice coils joined to one load. */
import type { Static } from 'typebox'
import type { CoilWiringRequest, CoilWiringResult } from '../../../contract/coils/coil-wiring.ts'
import { difference, firstBroken, isAtMost, isNear, type Law, reorderedLists, unbalanced } from '../../wire/law.ts'

type Coils = Static<typeof CoilWiringRequest>

const coilsOf = ({ coilsOhm, coilOhm = 0, driverCount, coilsPerDriver }: Coils) =>
  coilsOhm ?? Array.from({ length: driverCount * coilsPerDriver }, () => coilOhm)

export const coilLaws: readonly Law<Coils, Static<typeof CoilWiringResult>>[] = [
  {
    id: 'loads-between-parallel-and-series',
    sentence: 'No load is below all coils in parallel or above all in series.',
    broken: ({ request, result: { loads } }) => {
      const coils = coilsOf(request)
      const series = coils.reduce((sum, ohm) => sum + ohm, 0)
      const parallel = 1 / coils.reduce((sum, ohm) => sum + 1 / ohm, 0)
      return firstBroken(loads, ({ ohm }) =>
        isAtMost(parallel, ohm) && isAtMost(ohm, series) ? undefined : `${ohm} Ω outside ${parallel} to ${series} Ω`
      )
    }
  },
  {
    id: 'shares-make-the-whole',
    sentence: 'The shares of the coils of a network add up to the whole power.',
    broken: ({ result: { loads } }) =>
      firstBroken(loads, ({ shares }) => (shares === undefined ? undefined : unbalanced('shares', 1, shares)))
  },
  {
    id: 'order-of-coils-never-matters',
    sentence: 'The order of unlike coils changes no load.',
    varied: reorderedLists('coilsOhm'),
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) =>
      difference(
        { loads: first.loads.map(({ ohm }) => ohm), nearest: first.nearestOhm, chosen: first.chosen?.ohm },
        { loads: second.loads.map(({ ohm }) => ohm), nearest: second.nearestOhm, chosen: second.chosen?.ohm }
      )
  },
  {
    id: 'twice-the-coils-twice-the-loads',
    sentence: 'Coils of twice the impedance present twice every load.',
    varied: ({ request }) => {
      const { coilOhm, coilsOhm, driverCount, coilsPerDriver } = request
      const twice = (ohm: number) => ohm * 2
      if (Math.max(coilOhm ?? 0, ...(coilsOhm ?? [])) > 40) return undefined
      return {
        driverCount,
        coilsPerDriver,
        ...(coilOhm !== undefined && { coilOhm: twice(coilOhm) }),
        ...(coilsOhm && { coilsOhm: coilsOhm.map(twice) })
      }
    },
    broken: ({ result: first }, { result: second }) =>
      first.loads.length !== second.loads.length
        ? `${first.loads.length} loads against ${second.loads.length}`
        : firstBroken(first.loads, ({ ohm }, place) =>
            isNear(ohm * 2, second.loads[place]?.ohm ?? 0) ? undefined : `${ohm} Ω and ${second.loads[place]?.ohm} Ω`
          )
  },
  {
    id: 'chosen-load-is-allowed',
    sentence: 'The load to wire is never below the limit of the output.',
    broken: ({ result: { chosen, lowestLoadOhm = 0 } }) =>
      chosen === undefined || isAtMost(lowestLoadOhm, chosen.ohm)
        ? undefined
        : `${chosen.ohm} Ω below ${lowestLoadOhm} Ω`
  }
]
