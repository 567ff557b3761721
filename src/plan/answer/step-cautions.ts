/** Where a caution is said: at the first step it belongs to, once; what belongs to none, and every `stop`, ahead of all. */
import { type CautionCode, cautionCatalogue } from '../../contract/cautions/catalogue.ts'
import { type Caution, caution } from '../../domain/caution.ts'

interface CarefulStep {
  readonly id: string
  readonly cautions: readonly CautionCode[]
}

export interface PlacedCautions {
  readonly ahead: readonly Caution[]
  /** By the id of the step. */
  readonly atSteps: ReadonlyMap<string, readonly Caution[]>
}

/** @param steps  all steps in the order they are done; their ids differ */
export function placedCautions(cautions: readonly Caution[], steps: readonly CarefulStep[]): PlacedCautions {
  const firstStep = new Map<CautionCode, string>()
  for (const { id, cautions: codes } of steps)
    for (const code of codes) if (!firstStep.has(code)) firstStep.set(code, id)
  const stepOf = ({ code, level }: Caution) => (level === 'stop' ? undefined : firstStep.get(code))
  const atSteps = new Map<string, Caution[]>()
  for (const each of cautions) {
    const id = stepOf(each)
    if (id !== undefined) atSteps.set(id, [...(atSteps.get(id) ?? []), each])
  }
  return { ahead: cautions.filter(each => stepOf(each) === undefined), atSteps }
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
  return [...cautions, ...[...missing].map(code => caution(code, cautionCatalogue[code].meaning))]
}

/** Ahead of all a list says how much more stands further on. */
export function furtherCautions({ atSteps }: PlacedCautions): string | undefined {
  const count = [...atSteps.values()].reduce((sum, list) => sum + list.length, 0)
  if (count === 0) return undefined
  return count === 1 ? 'One more stands at its step.' : `${count} more stand at their steps.`
}
