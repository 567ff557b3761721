/** Cautions of the systems of a part, each once, with its place; designs share most of them. */
import type { SearchPart, TriedSystem } from '../../../contract/systems/design-part.ts'
import type { Caution } from '../../../domain/caution.ts'
import { present } from '../../../domain/present.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'

type PartCaution = SearchPart['cautions'][number]

/** Figures by name in a list: their names end in units of their own, which travel as they stand. */
function toPart({ code, level, message, at, figures }: Caution): PartCaution {
  const listed = figures && Object.entries(figures).map(([name, value]) => ({ name, value }))
  return sixDigitsThroughout({ code, level, message, ...present({ at, figures: listed }) })
}

export function fromPart({ code, level, message, at, figures }: PartCaution): Caution {
  const named = figures && Object.fromEntries(figures.map(({ name, value }) => [name, value]))
  return { code: code as Caution['code'], level, message, ...present({ at, figures: named }) }
}

interface Warned {
  readonly system: TriedSystem
  readonly cautions: readonly Caution[]
}

export function numberedCautions(warned: readonly Warned[]): Pick<SearchPart, 'tried' | 'cautions'> {
  const places = new Map<string, number>()
  const cautions: PartCaution[] = []
  const place = (caution: Caution) => {
    const told = toPart(caution)
    const key = JSON.stringify(told)
    const known = places.get(key) ?? cautions.push(told) - 1
    places.set(key, known)
    return known
  }
  const tried = warned.map(({ system, cautions: those }) => ({ ...system, cautions: those.map(place) }))
  return { tried, cautions }
}
