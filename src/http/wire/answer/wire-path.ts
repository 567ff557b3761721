/** From a path of SI names, as the domain speaks of its input or result, to a JSON pointer on the wire. */
import { type JsonSchema, resolve } from '../../../contract/field/component.ts'
import { siField } from '../../../contract/field/wire-units.ts'

interface WirePath {
  /** RFC 6901 pointer to the deepest part of the path that the schema knows. */
  readonly pointer: string
  readonly perSi: number
}

const escaped = (token: string) => token.replaceAll('~', '~0').replaceAll('/', '~1')

interface Step {
  readonly pointer: string
  readonly schema: JsonSchema
  readonly perSi: number
}

/** Every way on from here: the branches of a union may know the same name and differ further down. */
function steps({ pointer, schema, perSi }: Step, name: string): readonly Step[] {
  const here = resolve(schema)
  if (/^\d+$/.test(name) && here.items !== undefined) {
    return [{ pointer: `${pointer}/${name}`, schema: here.items, perSi }]
  }
  const own = Object.entries(here.properties ?? {}).flatMap(([wireName, inner]) => {
    const field = siField(wireName)
    if (field.name !== name) return []
    return [{ pointer: `${pointer}/${escaped(wireName)}`, schema: inner, perSi: field.perSi }]
  })
  const branches = here.oneOf ?? here.anyOf ?? []
  return own.length > 0 ? own : branches.flatMap(branch => steps({ pointer, schema: branch, perSi }, name))
}

/** A schema is asked for few paths, but lists have indexes: what does not fit is worked out again. */
const MOST_KEPT = 4_096
const kept = new WeakMap<JsonSchema, Map<string, WirePath>>()

/** As {@link worked}, remembered. */
export function wirePath(schema: JsonSchema, field: string): WirePath {
  const paths = kept.get(schema) ?? new Map<string, WirePath>()
  kept.set(schema, paths)
  const known = paths.get(field)
  if (known !== undefined) return known
  const found = worked(schema, field)
  if (paths.size < MOST_KEPT) paths.set(field, found)
  return found
}

/** `enclosure.rear.netVolumeM3` → `/enclosure/rear/netVolumeL` with 1000 litres a cubic metre. */
function worked(schema: JsonSchema, field: string): WirePath {
  let here: readonly Step[] = [{ pointer: '', schema, perSi: 1 }]
  for (const name of field === '' ? [] : field.split(/[.[\]]+/).filter(Boolean)) {
    const next = here.flatMap(step => steps(step, name))
    if (next.length === 0) return { pointer: here[0]?.pointer ?? '', perSi: 1 }
    here = next
  }
  const [{ pointer, perSi } = { pointer: '', perSi: 1 }] = here
  return { pointer, perSi }
}
