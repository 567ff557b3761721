/** A validated request in SI: keys renamed and numbers scaled by the suffix of their wire names. */
import { type Si, siField } from '../../contract/field/wire-units.ts'

function convert(value: unknown, perSi: number): unknown {
  if (typeof value === 'number') return perSi === 1 ? value : value / perSi
  if (Array.isArray(value)) return value.map(item => convert(item, perSi))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => {
      const field = siField(name)
      return [field.name, convert(inner, field.perSi)]
    })
  )
}

export function toSi<Wire>(body: Wire): Si<Wire> {
  return convert(body, 1) as Si<Wire>
}
