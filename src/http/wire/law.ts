/**
 * What always holds for an operation: about one answer, or about two questions that differ in one thing. The reference page
 * shows the sentences, the adversary (`npm run adversary`) looks for a request that breaks them.
 */
interface Told<Request, Result> {
  readonly request: Request
  readonly result: Result
}

export interface Law<Request = unknown, Result = unknown> {
  readonly id: string
  /** For people who read the documentation. */
  readonly sentence: string
  /**
   * The second question, made from the first and its answer; `undefined` where the first gives no occasion for it.
   * Without this the law is about one answer, and `second` is `first`.
   */
  varied?(first: Told<Request, Result>, chance: () => number): Request | undefined
  /** Whether the second question must be answered because the first was. */
  readonly staysAnswered?: boolean
  /** @returns what is wrong, with its figures; nothing where the law holds */
  broken(first: Told<Request, Result>, second: Told<Request, Result>): string | undefined
}

/** Six digits leave a relative doubt of 5e-6 in each of two figures. */
const SIX_DIGITS = 1.1e-5

export function isNear(one: number, other: number, relative = SIX_DIGITS, absolute = 1e-9): boolean {
  return Math.abs(one - other) <= absolute + relative * Math.max(Math.abs(one), Math.abs(other))
}

/** At most, but for the digits written. */
export const isAtMost = (one: number, other: number, relative = SIX_DIGITS): boolean =>
  one <= other || isNear(one, other, relative)

/**
 * @param absolute  what numbers of any size may differ by
 * @returns where two values differ beyond the digits written, as a path; nothing where they agree
 */
export function difference(
  one: unknown,
  other: unknown,
  relative = SIX_DIGITS,
  absolute?: number,
  path = ''
): string | undefined {
  if (typeof one === 'number' && typeof other === 'number') {
    return isNear(one, other, relative, absolute) ? undefined : `${path}: ${one} against ${other}`
  }
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) {
    return one === other ? undefined : `${path}: ${String(one)} against ${String(other)}`
  }
  const names = [...new Set([...Object.keys(one), ...Object.keys(other)])]
  for (const name of names) {
    const inner = difference(Reflect.get(one, name), Reflect.get(other, name), relative, absolute, `${path}/${name}`)
    if (inner !== undefined) return inner
  }
  return undefined
}

/** The list in another order, by chance; `undefined` where there is no other order. */
export function reordered<Item>(list: readonly Item[] | undefined, chance: () => number): Item[] | undefined {
  if (list === undefined || list.length < 2) return undefined
  const mixed = [...list]
  for (let last = mixed.length - 1; last > 0; last--) {
    const place = Math.floor(chance() * (last + 1))
    const here = mixed[last] as Item
    mixed[last] = mixed[place] as Item
    mixed[place] = here
  }
  return mixed.every((item, place) => item === list[place]) ? [...list].reverse() : mixed
}

/** A variation: the request with these lists in another order, those that have one; none where no list has. */
export const reorderedLists =
  <Request extends object>(...names: readonly (keyof Request)[]) =>
  ({ request }: { readonly request: Request }, chance: () => number): Request | undefined => {
    const moved = names.flatMap(name => {
      const list = request[name]
      const other = Array.isArray(list) ? reordered(list, chance) : undefined
      return other === undefined ? [] : [[name, other] as const]
    })
    return moved.length === 0 ? undefined : { ...request, ...Object.fromEntries(moved) }
  }

/** @returns the first complaint about any of the rows */
export function firstBroken<Row>(
  rows: readonly Row[],
  complaint: (row: Row, place: number) => string | undefined
): string | undefined {
  for (const [place, row] of rows.entries()) {
    const found = complaint(row, place)
    if (found !== undefined) return `${place}: ${found}`
  }
  return undefined
}

/** @returns a complaint where a sum is not the sum of its parts, to the digits written of the largest part */
export function unbalanced(name: string, total: number, parts: readonly number[], least = 1e-9): string | undefined {
  const sum = parts.reduce((whole, part) => whole + part, 0)
  const doubt = 6e-6 * (Math.abs(total) + parts.reduce((whole, part) => whole + Math.abs(part), 0)) + least
  return Math.abs(sum - total) <= doubt ? undefined : `${name}: ${total}, its parts add up to ${sum}`
}
