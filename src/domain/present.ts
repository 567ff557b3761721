/** The fields that have a value: an answer leaves out what it does not know instead of saying `undefined`. */
type Present<T> = {
  readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K]
} & { readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> }

export function present<T extends object>(fields: T): Present<T> {
  const known: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(fields)) if (value !== undefined) known[name] = value
  return known as Present<T>
}
