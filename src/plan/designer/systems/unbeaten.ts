/** Of many systems those that no other equals in every figure. */
import type { UnbeatenSystem } from '../../../contract/systems/design-system.ts'
import { MOST_UNBEATEN } from '../../../contract/systems/words.ts'
import { drawn } from '../search-score.ts'
import { systemDefaults } from './defaults.ts'
import { byNames } from './rank.ts'

interface Counted {
  readonly entry: UnbeatenSystem
  /** Of each figure, in steps; less is better. */
  readonly steps: readonly number[]
}

function counted(entry: UnbeatenSystem): Counted {
  const { levelDb, f3Hz, outerVolumeM3, fullSineA, price = 0 } = entry.figures
  const steps = [
    -Math.floor(levelDb / systemDefaults.levelStepDb.value),
    Math.ceil(Math.log2(f3Hz) / systemDefaults.reachStepOctaves.value),
    Math.ceil(Math.log2(outerVolumeM3) / systemDefaults.roomStepOctaves.value),
    Math.ceil(Math.log2(drawn(fullSineA)) / systemDefaults.currentStepOctaves.value),
    price
  ]
  return { entry, steps }
}

/** Whether one is as good in every figure; equals give way to the first by name. Transitive, so parts can be joined. */
function beats(a: Counted, b: Counted): boolean {
  let better = false
  for (let k = 0; k < a.steps.length; k++) {
    const [mine, other] = [a.steps[k] as number, b.steps[k] as number]
    if (mine > other) return false
    if (mine < other) better = true
  }
  return better || byNames(a.entry, b.entry) < 0
}

const sum = ({ steps }: Counted) => steps.reduce((total, each) => total + each, 0)

/** @returns those that stand, by name; of joined parts the same as of the whole, but for more than are kept */
export function unbeaten(entries: readonly UnbeatenSystem[]): readonly UnbeatenSystem[] {
  const standing: Counted[] = []
  // who beats another has a smaller sum, or an equal one and the earlier name: whoever stands is never beaten later
  const inTurn = entries.map(counted).toSorted((a, b) => sum(a) - sum(b) || byNames(a.entry, b.entry))
  for (const each of inTurn) if (!standing.some(other => beats(other, each))) standing.push(each)
  return standing
    .map(({ entry }) => entry)
    .toSorted(byNames)
    .slice(0, MOST_UNBEATEN)
}
