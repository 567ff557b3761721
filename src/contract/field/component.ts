/** Schemas with a name in the contract: each is written once and referred to everywhere else. */
import Type, { type Static, type TObject, type TProperties, type TSchema, type TUnsafe } from 'typebox'

/** What a schema may hold, read without its library; what the library makes is one as it is. */
export interface JsonSchema extends TSchema {
  readonly '~unsafe'?: unknown
  readonly $id?: string
  readonly $ref?: string
  readonly type?: string
  readonly description?: string
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly items?: JsonSchema
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
  readonly exclusiveMaximum?: number
  readonly minItems?: number
  readonly maxItems?: number
  readonly maxLength?: number
  readonly 'x-known-values'?: readonly string[]
  readonly oneOf?: readonly JsonSchema[]
  readonly anyOf?: readonly JsonSchema[]
  readonly allOf?: readonly JsonSchema[]
  readonly discriminator?: { readonly propertyName: string }
  readonly additionalProperties?: boolean | JsonSchema
}

const components = new Map<string, TSchema>()

/** A closed object under a contract-wide name. */
export function component<Properties extends TProperties>(
  name: string,
  description: string,
  properties: Properties
): TObject<Properties> {
  const schema = Type.Object(properties, { $id: name, description, additionalProperties: false })
  register(name, schema)
  return schema
}

/** A named union whose branches are told apart by a constant property, so that a fault is reported for the branch meant. */
export function byTag<Branches extends readonly TSchema[]>(
  name: string,
  description: string,
  tag: string,
  branches: readonly [...Branches]
): TUnsafe<Static<Branches[number]>> {
  const schema = Type.Unsafe<Static<Branches[number]>>({
    $id: name,
    description,
    type: 'object',
    required: [tag],
    discriminator: { propertyName: tag },
    oneOf: branches.map(branch => ({ $ref: `${idOf(branch)}#` }))
  })
  register(name, schema)
  return schema
}

function register(name: string, schema: TSchema): void {
  if (components.has(name)) throw new TypeError(`component ${name} is defined twice`)
  components.set(name, schema)
}

function idOf(schema: TSchema): string {
  const { $id }: JsonSchema = schema
  if ($id === undefined) throw new TypeError('only a named component can be referred to')
  return $id
}

/** A reference to a component; with a description of its role where its own says too little. */
export function ref<Schema extends TSchema>(schema: Schema, description?: string): TUnsafe<Static<Schema>> {
  const target = { $ref: `${idOf(schema)}#` }
  return Type.Unsafe<Static<Schema>>(description === undefined ? target : { allOf: [target], description })
}

export function namedComponents(): readonly TSchema[] {
  return [...components.values()]
}

/** Follows a reference, also one wrapped with a description. */
export function resolve(schema: JsonSchema): JsonSchema {
  const target = schema.$ref ?? (schema.allOf?.length === 1 ? schema.allOf[0]?.$ref : undefined)
  if (target === undefined) return schema
  const found = components.get(target.replace(/#$/, ''))
  if (found === undefined) throw new TypeError(`no component ${target}`)
  return found
}

/** Every reading of a schema: itself, or the branches of its union. */
export function branchesOf(schema: JsonSchema): readonly JsonSchema[] {
  const here = resolve(schema)
  const branches = here.oneOf ?? here.anyOf
  return branches === undefined ? [here] : branches.flatMap(branchesOf)
}
