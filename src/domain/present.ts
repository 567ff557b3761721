/** The fields that have a value: an answer leaves out what it does not know instead of saying `undefined`. */
type Present<T> = {
  readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K]
} & { readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> }

export function present<T extends object>(fields: T): Present<T> {
  const known: Record<string, unknown> = {}
  for (const name in fields) if (fields[name] !== undefined) known[name] = fields[name]
  return known as Present<T>
}
