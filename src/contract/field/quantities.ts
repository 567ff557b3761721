/** A number with its unit and bounds, for request and result schemas. The field's name carries the unit, see wire-units. */
import Type, { type TInteger, type TNumber, type TSchema } from 'typebox'

interface Bounds {
  readonly above?: number
  readonly from?: number
  readonly to?: number
}

function keywords({ above, from, to }: Bounds) {
  return {
    ...(above === undefined ? {} : { exclusiveMinimum: above }),
    ...(from === undefined ? {} : { minimum: from }),
    ...(to === undefined ? {} : { maximum: to })
  }
}

/** `quantity('L', 'Net air volume', { above: 0, to: 5000 })`; the unit of a pure number is '1'. */
export function quantity(unit: string, description: string, bounds: Bounds = {}): TNumber {
  return Type.Number({ description: `${description} [${unit}]`, ...keywords(bounds) })
}

/** One that an answer may lack. */
export const some = (unit: string, description: string) => Type.Optional(quantity(unit, description))

export function count(description: string, from: number, to: number): TInteger {
  return Type.Integer({ description, minimum: from, maximum: to })
}

/** Text the caller may use as a name; control characters are refused. */
export function label(description: string, maxLength = 120) {
  return Type.String({ description, minLength: 1, maxLength, pattern: '^[^\\u0000-\\u001f\\u007f-\\u009f]*$' })
}

export function choice<const Values extends readonly string[]>(description: string, values: Values) {
  return Type.Unsafe<Values[number]>({ type: 'string', enum: [...values], description })
}

export function list<Schema extends TSchema>(description: string, items: Schema, minItems: number, maxItems: number) {
  return Type.Array(items, { description, minItems, maxItems })
}
