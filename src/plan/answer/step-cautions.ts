/** Where a caution is said whole, once: at the first step it belongs to, or in the part of the paper it is about. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { PlanChapter } from '../../contract/systems/words.ts'
import { type Caution, catalogued } from '../../domain/caution.ts'
import { chapterOf } from './page-one.ts'

interface CarefulStep {
  readonly id: string
  readonly cautions: readonly CautionCode[]
}

interface PlacedCautions {
  /** By the id of the step. */
  readonly atSteps: ReadonlyMap<string, readonly Caution[]>
  /** What belongs to no step, by the part of the paper. */
  readonly atChapters: ReadonlyMap<PlanChapter, readonly Caution[]>
}

function grouped<Key>(cautions: readonly Caution[], keyOf: (each: Caution) => Key | undefined) {
  const groups = new Map<Key, Caution[]>()
  for (const each of cautions) {
    const key = keyOf(each)
    if (key !== undefined) groups.set(key, [...(groups.get(key) ?? []), each])
  }
  return groups
}

/**
 * Each caution whole in one place. What the verdict says as its reasons stands there, licensed work on the first page.
 *
 * @param steps  all steps in the order they are done; their ids differ
 * @param reasons  of the verdict
 */
export function placedCautions(
  cautions: readonly Caution[],
  steps: readonly CarefulStep[],
  reasons: readonly string[]
): PlacedCautions {
  const firstStep = new Map<CautionCode, string>()
  for (const { id, cautions: codes } of steps)
    for (const code of codes) if (!firstStep.has(code)) firstStep.set(code, id)
  const placed = cautions.filter(({ code, message }) => code !== 'licensed-work' && !reasons.includes(message))
  const stepOf = ({ code, level }: Caution) => (level === 'stop' ? undefined : firstStep.get(code))
  return {
    atSteps: grouped(placed, stepOf),
    atChapters: grouped(placed, each => (stepOf(each) === undefined ? chapterOf(each.code) : undefined))
  }
}

/** Cautions that only depend on figures: a plan without the danger does not speak of it. */
const onlyWhenFound: readonly CautionCode[] = [
  'narrow-strip',
  'seams-out-of-reach',
  'heavy-box',
  'hearing-extreme',
  'fuse-too-far',
  'accessory-turn-on',
  'output-touch-voltage'
]

/** With those that steps name and no part gave, in the words of the catalogue. */
export function withStepCautions(cautions: readonly Caution[], steps: readonly CarefulStep[]): readonly Caution[] {
  const said = new Set<CautionCode>([...cautions.map(({ code }) => code), ...onlyWhenFound])
  const missing = new Set(steps.flatMap(step => step.cautions.filter(code => !said.has(code))))
  return [...cautions, ...[...missing].map(code => catalogued(code))]
}
