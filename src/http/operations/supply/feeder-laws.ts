/** What always holds for cables, fuses and feeders. */
import type { Static } from 'typebox'
import type { CableRequest, CableResult } from '../../../contract/supply/supply-cables.ts'
import type { FeederRequest, FeederResult } from '../../../contract/supply/supply-feeder.ts'
import type { FuseRequest, FuseResult } from '../../../contract/supply/supply-fuses.ts'
import { difference, firstBroken, isAtMost, isNear, type Law, reorderedLists, unbalanced } from '../../wire/law.ts'

const longer = (lengthM: number, chance: () => number) => Math.min(50, lengthM * (1 + chance()) + 0.01)
/** A drop of the whole source is refused, however it is asked for. */
const looser = (percent: number, chance: () => number) => Math.max(percent, Math.min(99, percent * (1 + chance())))

export const cableLaws: readonly Law<Static<typeof CableRequest>, Static<typeof CableResult>>[] = [
  {
    id: 'larger-cable-drops-less',
    sentence: 'Of two sizes the larger never drops more, loses more heat or carries less.',
    broken: ({ result: { candidates } }) =>
      firstBroken(candidates.slice(1), (larger, place) => {
        const smaller = candidates[place]
        if (smaller === undefined || larger.areaMm2 < smaller.areaMm2) return 'the sizes are not in order'
        const { dropV = 0, lossW = 0, ampacityA = Infinity } = larger
        const drops = smaller.dropV === undefined || isAtMost(dropV, smaller.dropV)
        const loses = smaller.lossW === undefined || isAtMost(lossW, smaller.lossW)
        const carries = isAtMost(smaller.ampacityA ?? 0, ampacityA)
        return drops && loses && carries ? undefined : `${larger.designation} is worse than ${smaller.designation}`
      })
  },
  {
    id: 'drop-is-current-times-loop',
    sentence: 'The drop of a size is its current times its loop resistance.',
    broken: ({ result: { candidates } }) =>
      firstBroken(candidates, ({ dropV, currentA, loopOhm }) =>
        dropV === undefined || currentA === undefined || isNear(dropV, currentA * loopOhm, 2e-5)
          ? undefined
          : `${currentA} A × ${loopOhm} Ω is not ${dropV} V`
      )
  },
  {
    id: 'longer-run-drops-more',
    sentence: 'A longer run never drops less in the same size.',
    varied: ({ request }, chance) => ({ ...request, positiveLengthM: longer(request.positiveLengthM, chance) }),
    broken: (first, second) =>
      firstBroken(first.result.candidates, ({ designation, dropV }) => {
        const after = second.result.candidates.find(row => row.designation === designation)
        return dropV === undefined || after?.dropV === undefined || isAtMost(dropV, after.dropV)
          ? undefined
          : `${designation} drops ${dropV} V, and ${after.dropV} V when longer`
      })
  },
  {
    id: 'looser-drop-limit-never-costs',
    sentence: 'A looser limit of the drop never asks for a larger cable.',
    varied: ({ request }, chance) =>
      request.dropLimitPercent === undefined || request.dropLimitV !== undefined
        ? undefined
        : { ...request, dropLimitPercent: looser(request.dropLimitPercent, chance) },
    staysAnswered: true,
    broken: ({ result: { cable: before } }, { result: { cable: after } }) =>
      before === undefined || (after !== undefined && isAtMost(after.areaMm2, before.areaMm2))
        ? undefined
        : `${before.designation}, with the looser limit ${after?.designation ?? 'none'}`
  },
  {
    id: 'order-of-sizes-never-matters',
    sentence: 'The order in which sizes and spaces are listed never matters.',
    varied: reorderedLists('sizes', 'spaces'),
    staysAnswered: true,
    broken: (first, second) => difference(first.result, second.result)
  },
  {
    id: 'chosen-size-passes',
    sentence:
      'The size that is chosen is the first that fails no limit; cables side by side that are asked for are chosen together.',
    broken: ({ request: { runs = 1 }, result: { cable, candidates } }) => {
      if (runs > 1) return undefined
      const first = candidates.find(({ fails }) => fails.length === 0)
      return cable?.designation === first?.designation
        ? undefined
        : `${cable?.designation} is chosen, ${first?.designation} is the first that passes`
    }
  }
]

export const fuseLaws: readonly Law<Static<typeof FuseRequest>, Static<typeof FuseResult>>[] = [
  {
    id: 'fuse-within-its-bounds',
    sentence: 'The fuse is never above the highest rating its cables allow.',
    broken: ({ result: { fuse, bounds, cables } }) => {
      const least = Math.min(...cables.map(({ highestFuseA }) => highestFuseA))
      if (!isAtMost(fuse.ratingA, bounds.highestA)) return `${fuse.ratingA} A above the bound of ${bounds.highestA} A`
      return isAtMost(fuse.ratingA, least) ? undefined : `${fuse.ratingA} A on a cable for ${least} A at most`
    }
  },
  {
    id: 'order-of-cables-never-matters',
    sentence: 'The order of the other cables, of the fuses on board and of the branches never changes the fuse.',
    varied: reorderedLists('alsoProtects', 'branchFusesA', 'onboardFusesA'),
    staysAnswered: true,
    broken: (first, second) =>
      difference([first.result.fuse, first.result.bounds], [second.result.fuse, second.result.bounds])
  }
]

export const feederLaws: readonly Law<Static<typeof FeederRequest>, Static<typeof FeederResult>>[] = [
  {
    id: 'order-of-amplifiers-never-matters',
    sentence: 'The order of the amplifiers changes no voltage and no current.',
    varied: ({ request }) =>
      request.amplifiers.length < 2 ? undefined : { ...request, amplifiers: [...request.amplifiers].reverse() },
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) => {
      const rows = [...second.amplifiers].reverse()
      const figures = ({ feasible, voltageV, currentA, inputPowerW }: (typeof rows)[number]) => ({
        feasible,
        voltageV,
        currentA,
        inputPowerW
      })
      const whole = ({ feasible, mode, totalCurrentA, nodeVoltageV, lossW }: typeof first) => ({
        feasible,
        mode,
        totalCurrentA,
        nodeVoltageV,
        lossW
      })
      return (
        difference(whole(first), whole(second), 1e-4) ??
        difference(first.amplifiers.map(figures), rows.map(figures), 1e-4)
      )
    }
  },
  {
    id: 'currents-meet',
    sentence: 'The currents of the amplifiers add up to the current of the feeder.',
    broken: ({ result: { totalCurrentA, amplifiers } }) =>
      totalCurrentA === undefined
        ? undefined
        : unbalanced(
            'total',
            totalCurrentA,
            amplifiers.map(({ currentA = 0 }) => currentA)
          )
  },
  {
    id: 'longer-trunk-leaves-less',
    sentence: 'A longer trunk never leaves more voltage at the block.',
    varied: ({ request }, chance) => {
      const { trunk } = request
      if (trunk?.cable === undefined) return undefined
      const cable = { ...trunk.cable, positiveLengthM: longer(trunk.cable.positiveLengthM, chance) }
      return { ...request, trunk: { ...trunk, cable } }
    },
    broken: ({ result: first }, { result: second }) => {
      if (!second.feasible) return undefined
      if (!first.feasible) return 'the longer trunk feeds what the shorter does not'
      const { blockVoltageV: before = Infinity } = first
      const { blockVoltageV: after = -Infinity } = second
      return first.mode !== second.mode || isAtMost(after, before, 1e-4)
        ? undefined
        : `${before} V, with the longer trunk ${after} V`
    }
  }
]
