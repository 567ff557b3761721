/** Which points hang together. */
import { type Element, isLoad } from './element.ts'

/** A line between two points. */
interface Line {
  readonly from: string
  readonly to: string
}

/** Points joined to the first ones over the lines. */
export function reached(first: readonly string[], lines: readonly Line[]): ReadonlySet<string> {
  const next = new Map<string, string[]>()
  const join = (a: string, b: string) => next.set(a, [...(next.get(a) ?? []), b])
  for (const { from, to } of lines) {
    join(from, to)
    join(to, from)
  }
  const found = new Set(first)
  // a set hands out what is added while it is walked
  for (const point of found) for (const neighbour of next.get(point) ?? []) found.add(neighbour)
  return found
}

/** What takes part in a state: everything whose both ends hang on the reference by more than a load. */
export function supplied(elements: readonly Element[], reference: string): readonly Element[] {
  const points = reached(
    [reference],
    elements.filter(({ law }) => !isLoad(law))
  )
  return elements.filter(({ from, to }) => points.has(from) && points.has(to))
}
