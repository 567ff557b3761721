/** The order in which ways of matching are offered. */
import type { MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { Ranking } from '../../contract/amplifiers/words.ts'
import { powerBand } from './match-options.ts'

/** Ratios this close count as equal, so that the lesser reasons get a say. */
const SAME_RATIO = 0.02

type Reason = (a: MatchOption, b: MatchOption) => number

/** What is published comes before what is only bounded. */
function usable({ verdict, powerFrom }: MatchOption): number {
  if (verdict === 'below-minimum') return 3
  if (verdict === 'power-unknown') return 2
  return powerFrom === 'voltage-bound' ? 1 : 0
}
const distance = ({ powerRatio = 1 }: MatchOption) => Math.abs(Math.log(powerRatio))
const inBand = ({ powerRatio }: MatchOption) =>
  powerRatio !== undefined && powerRatio >= powerBand.lowest && powerRatio <= powerBand.highest ? 0 : 1

const byPower: Reason = (a, b) => {
  const steps = (option: MatchOption) => Math.round(distance(option) / SAME_RATIO)
  return steps(a) - steps(b)
}

const wish: Readonly<Record<Ranking, readonly Reason[]>> = {
  power: [byPower],
  price: [(a, b) => inBand(a) - inBand(b), (a, b) => (a.price ?? 0) - (b.price ?? 0), byPower],
  size: [(a, b) => inBand(a) - inBand(b), (a, b) => (a.footprintM2 ?? 0) - (b.footprintM2 ?? 0), byPower]
}

/** Fewer boxes, fewer outputs to set alike, then the higher load: less current, less heat, more damping. */
const lesser: readonly Reason[] = [
  (a, b) => a.amplifiersNeeded - b.amplifiersNeeded,
  (a, b) => a.outputs - b.outputs,
  (a, b) => b.loadOhm - a.loadOhm,
  (a, b) => Number(a.bridged) - Number(b.bridged)
]

/** What is left decides the same however the amplifiers were listed. */
const last: readonly Reason[] = [
  (a, b) => distance(a) - distance(b),
  (a, b) => (a.totalPowerW ?? 0) - (b.totalPowerW ?? 0),
  (a, b) => (a.amplifier < b.amplifier ? -1 : Number(a.amplifier > b.amplifier))
]

/**
 * Usable before unknown before forbidden; what the amplifiers at hand can do before what needs more of them; power closest
 * to the drivers' in ratio (common practice, no source), or price or size among those within the band.
 */
export function ranked<Option extends MatchOption>(
  options: readonly Option[],
  ranking: Ranking,
  amplifierCount: number
): readonly Option[] {
  const atHand: Reason = (a, b) =>
    Number(a.amplifiersNeeded > amplifierCount) - Number(b.amplifiersNeeded > amplifierCount)
  const reasons: readonly Reason[] = [(a, b) => usable(a) - usable(b), atHand, ...wish[ranking], ...lesser, ...last]
  return [...options].sort((a, b) => {
    for (const reason of reasons) {
      const order = reason(a, b)
      if (order !== 0) return order
    }
    return 0
  })
}
