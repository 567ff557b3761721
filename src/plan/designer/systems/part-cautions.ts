/** Cautions of the systems of a part, each once, with its place; designs share most of them. */
import { type CautionCode, cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { SearchPart, TriedSystem } from '../../../contract/systems/design-part.ts'
import { type Caution, caution } from '../../../domain/caution.ts'
import { present } from '../../../domain/present.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'

type PartCaution = SearchPart['cautions'][number]

/** Sentences and figures by name travel as they stand: their names end in units of their own. */
function toPart({ code, level, said, at, figures }: Caution): PartCaution {
  const listed = figures && Object.entries(figures).map(([name, value]) => ({ name, value }))
  return {
    code,
    level,
    sentence: JSON.stringify(said.message),
    ...sixDigitsThroughout(present({ at, figures: listed }))
  }
}

const isCode = (code: string): code is CautionCode => Object.hasOwn(cautionCatalogue, code)

/** @returns none where it says nothing that the catalogue knows: somebody has changed it on the way */
export function fromPart({ code, level, sentence, at, figures }: PartCaution): Caution | undefined {
  if (!isCode(code)) return undefined
  const named = figures && Object.fromEntries(figures.map(({ name, value }) => [name, value]))
  try {
    return caution(code, JSON.parse(sentence) as Said, { level, ...present({ at, figures: named }) })
  } catch {
    return undefined
  }
}

interface Warned {
  readonly system: TriedSystem
  readonly cautions: readonly Caution[]
}

export function numberedCautions(warned: readonly Warned[]): Pick<SearchPart, 'tried' | 'cautions'> {
  const places = new Map<string, number>()
  const cautions: PartCaution[] = []
  const place = (each: Caution) => {
    const told = toPart(each)
    const key = JSON.stringify(told)
    const known = places.get(key) ?? cautions.push(told) - 1
    places.set(key, known)
    return known
  }
  const tried = warned.map(({ system, cautions: those }) => ({ ...system, cautions: those.map(place) }))
  return { tried, cautions }
}
