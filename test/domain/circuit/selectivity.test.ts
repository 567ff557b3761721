/** Fuses one behind the other, on random graphs: found by walking every way from every source, and told from the ratio of 1.6 on. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { fuseSeries } from '../../../src/domain/circuit/points/circuit-guards.ts'
import type { CircuitParts } from '../../../src/domain/circuit/points/circuit-parts.ts'
import { seeded } from '../../support/random-requests.ts'

interface Line {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly ratingA?: number
}

interface Graph {
  readonly sources: readonly string[]
  readonly lines: readonly Line[]
}

const ratings = [30, 50, 80, 100, 150, 300] as const

function graph(random: () => number): Graph {
  const points = Array.from({ length: 3 + Math.floor(5 * random()) }, (_, index) => `n${index}`)
  const pick = () => points[Math.floor(points.length * random())] ?? 'n0'
  const line = (id: string, from: string, to: string): Line => {
    const ratingA = ratings[Math.floor(ratings.length * random())] ?? 30
    return { id, from, to, ...(random() < 0.6 ? { ratingA } : {}) }
  }
  const tree = points.slice(1).map((to, index) => {
    const from = points[Math.floor((index + 1) * random())] ?? 'n0'
    // a fuse lies either way round
    return random() < 0.5 ? line(`t${index}`, from, to) : line(`t${index}`, to, from)
  })
  const loops = Array.from({ length: Math.floor(3 * random()) }, (_, index) => line(`l${index}`, pick(), pick()))
  const sources = Array.from({ length: 1 + Math.floor(3 * random()) }, (_, index) => (index === 0 ? 'n0' : pick()))
  return { sources, lines: [...tree, ...loops.filter(({ from, to }) => from !== to)] }
}

/** Whether some walk from a source reaches an end of the second without the first. */
function reachesWithout({ sources, lines }: Graph, first: Line, second: Line): boolean {
  const ends = [second.from, second.to]
  const walk = (at: string, been: readonly string[]): boolean =>
    ends.includes(at) ||
    lines.some(({ id, from, to }) => {
      const next = from === at ? to : to === at ? from : undefined
      return next !== undefined && id !== first.id && !been.includes(next) && walk(next, [...been, next])
    })
  return sources.some(source => walk(source, [source]))
}

const isFuse = ({ ratingA }: Line) => ratingA !== undefined

function found({ sources, lines }: Graph) {
  const request = {
    batteries: sources.map((plus, index) => ({ id: `b${index}`, plus, minus: 'm' })),
    cables: lines.filter(each => !isFuse(each)),
    fuses: lines.filter(isFuse)
  }
  return fuseSeries({ request: request as unknown as CircuitRequest } as CircuitParts)
}

describe('fuses in series on random graphs', () => {
  it('are those that every way from every source passes first, with the ratio of their ratings', () => {
    const random = seeded(13)
    let pairs = 0
    for (let turn = 0; turn < 2000; turn++) {
      const given = graph(random)
      const fuses = given.lines.filter(isFuse)
      const byWalking = fuses.flatMap(first =>
        fuses
          .filter(second => second !== first && !reachesWithout(given, first, second))
          .map(second => `${first.id} ${second.id} ${(first.ratingA ?? 0) / (second.ratingA ?? 1)}`)
      )
      const series = found(given)
      expect(series.map(({ before, behind, ratio }) => `${before} ${behind} ${ratio}`)).toEqual(byWalking)
      pairs += series.length
    }
    // the property says nothing where no pair occurs
    expect(pairs).toBeGreaterThan(500)
  })
})
