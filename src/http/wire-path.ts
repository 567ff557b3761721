/** From a path of SI names, as the domain speaks of its input or result, to a JSON pointer on the wire. */
import { type JsonSchema, resolve } from './schemas/component.ts'
import { siField } from './wire-units.ts'

export interface WirePath {
  /** RFC 6901 pointer to the deepest part of the path that the schema knows. */
  readonly pointer: string
  readonly perSi: number
}

const escaped = (token: string) => token.replaceAll('~', '~0').replaceAll('/', '~1')

interface Step {
  readonly token: string
  readonly schema: JsonSchema
  readonly perSi: number
}

function step(schema: JsonSchema, name: string, perSi: number): Step | undefined {
  const here = resolve(schema)
  if (/^\d+$/.test(name) && here.items !== undefined) return { token: name, schema: here.items, perSi }
  for (const [wireName, inner] of Object.entries(here.properties ?? {})) {
    const field = siField(wireName)
    if (field.name === name) return { token: wireName, schema: inner, perSi: field.perSi }
  }
  for (const branch of here.oneOf ?? here.anyOf ?? []) {
    const found = step(branch, name, perSi)
    if (found !== undefined) return found
  }
  return undefined
}

/** `enclosure.rear.netVolumeM3` → `/enclosure/rear/netVolumeL` with 1000 litres a cubic metre. */
export function wirePath(schema: JsonSchema, field: string): WirePath {
  let here: Step = { token: '', schema, perSi: 1 }
  let pointer = ''
  for (const name of field === '' ? [] : field.split(/[.[\]]+/).filter(Boolean)) {
    const next = step(here.schema, name, here.perSi)
    if (next === undefined) return { pointer, perSi: 1 }
    pointer += `/${escaped(next.token)}`
    here = next
  }
  return { pointer, perSi: here.perSi }
}
