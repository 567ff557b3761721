/** A validated request in SI: keys renamed and numbers scaled by the suffix of their wire names. */
import { type Si, siField } from '../../../contract/field/wire-units.ts'

function convert(value: unknown, perSi: number): unknown {
  if (typeof value === 'number') return perSi === 1 ? value : value / perSi
  if (Array.isArray(value)) return value.map(item => convert(item, perSi))
  if (typeof value !== 'object' || value === null) return value
  const object = value as Readonly<Record<string, unknown>>
  const converted: Record<string, unknown> = {}
  // No name is `__proto__`: the reader of bodies refuses it.
  for (const name of Object.keys(object)) {
    const field = siField(name)
    converted[field.name] = convert(object[name], field.perSi)
  }
  return converted
}

export function toSi<Wire>(body: Wire): Si<Wire> {
  return convert(body, 1) as Si<Wire>
}
