/** Only the asked parts of a result: a phone need not read what its screen does not show. */

type Members = Readonly<Record<string, unknown>>

/** Comes always: nobody shall read half of a plan without its verdict. */
const ALWAYS = 'summary'

/**
 * @param names  members of the result, or `a.b` for one member of a member; all of it where absent
 * @returns the members in the order of the result
 */
export function chosenParts(result: unknown, names: readonly string[] | undefined): unknown {
  if (names === undefined) return result
  const inside = (name: string) =>
    names.filter(each => each.startsWith(`${name}.`)).map(each => each.slice(name.length + 1))
  const kept = Object.entries(result as Members).flatMap(([name, value]) => {
    if (name === ALWAYS || names.includes(name)) return [[name, value]]
    const inner = new Set(inside(name))
    if (inner.size === 0) return []
    return [[name, Object.fromEntries(Object.entries(value as Members).filter(([each]) => inner.has(each)))]]
  })
  return Object.fromEntries(kept)
}

/** What `?parts=` can name: every member, and every member of the given ones. */
export const partNames = (members: Members, ...opened: readonly (readonly [name: string, inner: Members])[]) => [
  ...Object.keys(members),
  ...opened.flatMap(([name, inner]) => Object.keys(inner).map(each => `${name}.${each}`))
]
