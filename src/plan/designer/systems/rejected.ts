/** Those that were dropped, in order: by reason, the nearest to its limit first. */
import type { RejectedDesign } from '../../../contract/systems/design-system.ts'
import { rejectionRules } from '../../../contract/systems/words.ts'
import type { Question } from './question.ts'
import { byNames } from './rank.ts'

/** Beyond its bound, as a share of it. */
const beyondShare = ({ beyond = 0, bound = 1 }: RejectedDesign) => beyond / Math.max(Math.abs(bound), 1e-9)

const inTurn = (a: RejectedDesign, b: RejectedDesign) =>
  rejectionRules.indexOf(a.rule) - rejectionRules.indexOf(b.rule) || beyondShare(a) - beyondShare(b) || byNames(a, b)

/** As many as are shown. */
export function firstRejected(rejected: readonly RejectedDesign[], { show }: Question): readonly RejectedDesign[] {
  return rejected.toSorted(inTurn).slice(0, show)
}
