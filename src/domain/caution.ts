/** Doubt, said beside a result. Refusals are {@link DesignError}; a caution never stops a calculation. */
import { acousticCautions } from './cautions/acoustic.ts'
import { amplifierCautions } from './cautions/amplifier.ts'
import { boxCautions } from './cautions/box.ts'
import { conductorCautions } from './cautions/conductor.ts'
import { driverCautions } from './cautions/driver.ts'
import { electricalCautions } from './cautions/electrical.ts'
import { loadCautions } from './cautions/load.ts'
import { wholePlanCautions } from './cautions/plan.ts'
import { safetyCautions } from './cautions/safety.ts'
import { signalCautions } from './cautions/signal.ts'
import { workshopCautions } from './cautions/workshop.ts'
import type { SourceId } from './source.ts'

/** `note`: know this. `care`: change it or watch it. `stop`: do not build or switch this on. */
export type CautionLevel = 'note' | 'care' | 'stop'

export interface CautionEntry {
  readonly level: CautionLevel
  /** What it means and what to do, for the catalogue; the caution itself carries the figures. */
  readonly meaning: string
  /** Where the threshold comes from: a source in words, or 'common practice, no source'. */
  readonly basis: string
  /** Ids of the published texts that the basis names; a plan that gives the caution lists them. */
  readonly sources?: readonly SourceId[]
}
export type CautionCatalogue = Readonly<Record<string, CautionEntry>>

/** Every caution the service can give; the type, the catalogue resource and the documentation derive from it. */
export const cautionCatalogue = {
  ...acousticCautions,
  ...amplifierCautions,
  ...boxCautions,
  ...conductorCautions,
  ...driverCautions,
  ...electricalCautions,
  ...loadCautions,
  ...wholePlanCautions,
  ...safetyCautions,
  ...signalCautions,
  ...workshopCautions
} as const satisfies CautionCatalogue
export type CautionCode = keyof typeof cautionCatalogue

/** The published texts behind cautions. */
export const cautionSources = (cautions: readonly Caution[]): readonly SourceId[] =>
  cautions.flatMap(({ code }) => (cautionCatalogue[code] as CautionEntry).sources ?? [])

export interface Caution {
  readonly code: CautionCode
  readonly level: CautionLevel
  readonly message: string
  /** Path of the request field the caution is about. */
  readonly at?: string
  /** The figures that triggered it; each name ends in its unit. */
  readonly figures?: Readonly<Record<string, number>>
}

interface CautionPlace {
  readonly at?: string
  readonly figures?: Readonly<Record<string, number>>
  /** Only where one code warrants a different level by degree, e.g. far beyond a limit. */
  readonly level?: CautionLevel
}

export function caution(code: CautionCode, message: string, { at, figures, level }: CautionPlace = {}): Caution {
  return {
    code,
    level: level ?? cautionCatalogue[code].level,
    message,
    ...(at === undefined ? {} : { at }),
    ...(figures === undefined ? {} : { figures })
  }
}
