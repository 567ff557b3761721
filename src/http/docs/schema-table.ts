/** A schema as a table of fields: name, type with bounds, meaning. */
import type { JsonSchema } from '../../contract/field/component.ts'
import { type Html, html, phrase, table } from '../../documents/draw/html.ts'

export function schemaName(schema: JsonSchema): string | undefined {
  return schema.$ref?.split('/').pop()
}

export function schemaLink(schema: JsonSchema): Html {
  const name = schemaName(schema)
  return name === undefined ? html`${typeOf(schema)}` : html`<a href="#schema-${name}">${name}</a>`
}

function bounds(schema: JsonSchema): string {
  const parts = [
    schema.exclusiveMinimum === undefined ? undefined : `> ${schema.exclusiveMinimum}`,
    schema.minimum === undefined ? undefined : `≥ ${schema.minimum}`,
    schema.exclusiveMaximum === undefined ? undefined : `< ${schema.exclusiveMaximum}`,
    schema.maximum === undefined ? undefined : `≤ ${schema.maximum}`,
    schema.minItems === undefined && schema.maxItems === undefined
      ? undefined
      : `${schema.minItems ?? 0} to ${schema.maxItems ?? '…'} entries`,
    schema.maxLength === undefined ? undefined : `up to ${schema.maxLength} characters`
  ]
  return parts.filter(part => part !== undefined).join(', ')
}

function choices(values: readonly unknown[]): Html {
  const most = 24
  const shown = values.slice(0, most).map((value, at) => html`${at > 0 ? ' ' : ''}<code>${String(value)}</code>`)
  return html`${shown}${values.length > most ? html` and ${values.length - most} more` : undefined}`
}

function typeOf(schema: JsonSchema): Html {
  if (schemaName(schema) !== undefined) return schemaLink(schema)
  if (schema.enum !== undefined) return choices(schema.enum)
  const union = schema.oneOf ?? schema.anyOf
  if (union !== undefined) return html`${union.map((branch, at) => html`${at > 0 ? ' or ' : ''}${typeOf(branch)}`)}`
  if (schema.items !== undefined) return html`list of ${typeOf(schema.items)}<br>${bounds(schema)}`
  const limits = bounds(schema)
  return html`${schema.type ?? 'any'}${limits === '' ? undefined : html`<br>${limits}`}`
}

type Components = Readonly<Record<string, JsonSchema>>

/** A field's own meaning, else that of the object it holds. */
function meaningOf(schema: JsonSchema, components: Components): string {
  const name = schemaName(schema)
  return schema.description ?? (name === undefined ? '' : (components[name]?.description ?? ''))
}

export function fields(schema: JsonSchema, components: Components, title: string): Html {
  const union = schema.oneOf ?? schema.anyOf
  if (union !== undefined) {
    return html`<p>One of, told apart by <code>${schema.discriminator?.propertyName ?? 'type'}</code>: ${typeOf(schema)}</p>`
  }
  const known = schema['x-known-values']
  if (known !== undefined) return html`<p>Text; known today: ${choices(known)}</p>`
  const rows = Object.entries(schema.properties ?? {}).map(([name, inner]) => [
    html`<code>${name}</code>${schema.required?.includes(name) === true ? html` <span class="need">required</span>` : undefined}`,
    typeOf(inner),
    phrase(meaningOf(inner, components))
  ])
  return rows.length === 0
    ? html`<p>${typeOf(schema)}</p>`
    : table(['Field', 'Type and bounds', 'Meaning'], rows, title)
}
