/** Which field of a schema a caller most likely meant by a name it does not have. */

/** Beyond this a name is no slip of the hand. */
const LONGEST = 60
/** Letters that may be wrong, missing or too many. */
const MOST_SLIPS = 2
const SHORTEST = 3

/** Levenshtein distance, one row at a time. */
function slipsBetween(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, column) => column)
  for (const [index, letter] of [...one].entries()) {
    const next = [index + 1]
    for (let column = 1; column <= other.length; column++) {
      const swapped = (row[column - 1] ?? 0) + (letter === other[column - 1] ? 0 : 1)
      next.push(Math.min(swapped, (row[column] ?? 0) + 1, (next[column - 1] ?? 0) + 1))
    }
    row = next
  }
  return row[other.length] ?? 0
}

/**
 * @param names  of the schema
 * @returns the one that differs by two letters at most, else the shortest that holds the given name or lies in it
 * @source V. I. Levenshtein, "Binary codes capable of correcting deletions, insertions, and reversals", Soviet Physics Doklady 10 (1966) (from memory)
 * @check  `lengthM` among `positiveLengthM`, `return` → `positiveLengthM`; `fsHZ` among `fsHz` → `fsHz`
 */
export function nearestName(given: string, names: readonly string[]): string | undefined {
  if (given.length < SHORTEST || given.length > LONGEST) return undefined
  const low = given.toLowerCase()
  const slips = names.map(name => ({ name, count: slipsBetween(low, name.toLowerCase()) }))
  const close = slips.filter(({ count }) => count <= MOST_SLIPS).toSorted((a, b) => a.count - b.count)[0]
  if (close !== undefined) return close.name
  const holds = (name: string) => name.length >= SHORTEST && (name.includes(low) || low.includes(name))
  return names.filter(name => holds(name.toLowerCase())).toSorted((a, b) => a.length - b.length)[0]
}
