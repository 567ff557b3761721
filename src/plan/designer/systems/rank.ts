/** The order of systems: what is asked decides, then the score, then names, so that no order of lists ever shows. */
import type { SearchTurn } from '../../../contract/systems/design-search.ts'
import type { UnbeatenSystem } from '../../../contract/systems/design-system.ts'
import { pointsOf, type ScoredFigures } from '../search-score.ts'
import { systemDefaults } from './defaults.ts'
import type { Question } from './question.ts'

export type System = Pick<UnbeatenSystem, 'driver' | 'driverCount' | 'amplifier' | 'kind'>

export const systemOf = ({ driver, driverCount, amplifier, kind }: System): System => ({
  driver,
  driverCount,
  amplifier,
  kind
})

const textOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)

/** Total: two systems of a search never share all four. */
export const byNames = (a: System, b: System): number =>
  textOrder(a.driver, b.driver) ||
  a.driverCount - b.driverCount ||
  textOrder(a.amplifier, b.amplifier) ||
  textOrder(a.kind, b.kind)

/** Less is better. */
function deciding({ rankBy }: Question, figures: ScoredFigures): number {
  if (rankBy === 'level') return -figures.levelDb
  if (rankBy === 'reach') return figures.f3Hz
  if (rankBy === 'box') return figures.outerVolumeM3
  if (rankBy === 'price') return figures.price ?? 0
  return rankBy === 'current' ? figures.fullSineA : 0
}

/** Where a system of these figures stands, names and sizes aside. */
export const turnOf = (question: Question, figures: ScoredFigures): SearchTurn => ({
  deciding: deciding(question, figures),
  score: pointsOf(figures, question.weights).total
})

export function comesAfter(turn: SearchTurn, until: SearchTurn): boolean {
  const apart = (one: number, other: number) =>
    Math.abs(one - other) > systemDefaults.sameRank.value * (1 + Math.abs(other))
  if (apart(turn.deciding, until.deciding)) return turn.deciding > until.deciding
  return apart(turn.score, until.score) && turn.score < until.score
}

/** The best first, each looked at through `figuresOf`. */
export function ranked<Item extends System>(
  items: readonly Item[],
  question: Question,
  figuresOf: (item: Item) => ScoredFigures
): readonly Item[] {
  return items
    .map(item => {
      const figures = figuresOf(item)
      return { item, figures, ...turnOf(question, figures) }
    })
    .toSorted(
      (a, b) =>
        a.deciding - b.deciding ||
        b.score - a.score ||
        (a.figures.price ?? 0) - (b.figures.price ?? 0) ||
        a.figures.outerVolumeM3 - b.figures.outerVolumeM3 ||
        byNames(a.item, b.item)
    )
    .map(({ item }) => item)
}
