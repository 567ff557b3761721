/** The leaves of a request, and the request with one of them changed. */
export interface Leaf {
  readonly path: readonly (string | number)[]
  readonly value: unknown
}

export function leavesOf(value: unknown, path: readonly (string | number)[] = []): readonly Leaf[] {
  if (Array.isArray(value)) return value.flatMap((each, index) => leavesOf(each, [...path, index]))
  if (typeof value !== 'object' || value === null) return [{ path, value }]
  return Object.entries(value).flatMap(([name, each]) => leavesOf(each, [...path, name]))
}

/** @param value  undefined takes the leaf away */
export function changed(request: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const copy = structuredClone(request)
  // biome-ignore lint/suspicious/noExplicitAny: a path leads through any shape
  let here: any = copy
  for (const step of path.slice(0, -1)) here = here[step]
  const last = path.at(-1) as string | number
  if (value !== undefined) here[last] = value
  else if (Array.isArray(here)) here.splice(Number(last), 1)
  else delete here[last]
  return copy
}

/** Words that may stand in place of others. */
const otherWords: Readonly<Record<string, string>> = {
  steel: 'composite',
  regulated: 'unregulated',
  D: 'AB',
  AB: 'D',
  mdf: 'birch-plywood',
  round: 'slot',
  slot: 'round',
  flooded: 'agm',
  alternator: 'converter'
}

/** What a leaf is tried with: more, less, one more, far more, far less, another word or truth, and taken away. */
export function trialsOf({ value }: Leaf): readonly unknown[] {
  if (typeof value === 'number') return [value * 1.5, value * 0.6, value + 1, value * 4, value * 0.1, undefined]
  if (typeof value === 'boolean') return [!value, undefined]
  const word = otherWords[String(value)]
  return word === undefined ? [undefined] : [word, undefined]
}

/** `/supply/otherAmplifiers/[]/class`: one name for all places of a list. */
export const nameOf = ({ path }: Leaf) => path.map(step => (typeof step === 'number' ? '[]' : step)).join('/')
