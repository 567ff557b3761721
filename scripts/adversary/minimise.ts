/** Makes a request smaller for as long as it still does the harm. */

type Step = (root: unknown) => void

const childrenOf = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null ? Object.keys(value) : []

function at(root: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((here, name) => (here as Record<string, unknown>)[name], root)
}

/** Paths of all fields, outer ones first: what goes with them need not be tried. */
function paths(value: unknown, here: readonly string[] = []): readonly (readonly string[])[] {
  return childrenOf(value).flatMap(name => [[...here, name], ...paths(at(value, [name]), [...here, name])])
}

function removal(path: readonly string[]): Step {
  return root => {
    const name = path.at(-1) ?? ''
    const holder = at(root, path.slice(0, -1))
    if (Array.isArray(holder)) holder.splice(Number(name), 1)
    else delete (holder as Record<string, unknown>)[name]
  }
}

/** A number of fewer digits, a text of one letter; nothing where it is as plain already. */
function plainer(path: readonly string[], value: unknown): readonly Step[] {
  const set = (to: unknown): Step => {
    return root => {
      const holder = at(root, path.slice(0, -1)) as Record<string, unknown>
      holder[path.at(-1) ?? ''] = to
    }
  }
  if (typeof value === 'number') {
    return [1, 2, 3]
      .map(digits => Number(value.toPrecision(digits)))
      .filter(round => round !== value)
      .map(set)
  }
  return typeof value === 'string' && value.length > 20 ? [set(value.slice(0, 4))] : []
}

const MOST_TRIES = 400
const MOST_MS = 30_000

export async function minimised(
  request: unknown,
  stillHarms: (request: unknown) => Promise<boolean>
): Promise<unknown> {
  let least = request
  let tries = 0
  let shrunk = true
  const end = performance.now() + MOST_MS
  const tired = () => tries >= MOST_TRIES || performance.now() > end
  const take = async (step: Step) => {
    const smaller: unknown = structuredClone(least)
    step(smaller)
    tries++
    if (!(await stillHarms(smaller))) return false
    least = smaller
    shrunk = true
    return true
  }
  while (shrunk && !tired()) {
    shrunk = false
    for (const path of [...paths(least)].reverse()) {
      if (tired()) break
      const value = at(least, path)
      if (value === undefined || (await take(removal(path)))) continue
      for (const step of plainer(path, value)) if (await take(step)) break
    }
  }
  return least
}
