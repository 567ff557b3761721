/** Fuses at every source end and what they let through, on random vehicles and against enumeration. */
import { describe, expect, it } from 'vitest'
import { bareSources } from '../../../src/domain/circuit/points/bare-sources.ts'
import { type Feed, largestFlowA, type Way } from '../../../src/domain/circuit/points/largest-flow.ts'
import { seeded } from '../../support/random-requests.ts'

const CASES = 10_000

/** Two 150 A runs to a block, a battery behind 300 A beside it, a lead behind 225 A. */
const block: readonly Way[] = [
  { from: 's1', to: 'a', limitA: 150 },
  { from: 'a', to: 'block', limitA: Infinity },
  { from: 's1', to: 'b', limitA: 150 },
  { from: 'b', to: 'block', limitA: Infinity },
  { from: 's2', to: 'c', limitA: 300 },
  { from: 'c', to: 'block', limitA: Infinity },
  { from: 'block', to: 'd', limitA: 225 },
  { from: 'd', to: 'amp', limitA: Infinity }
]
const [s, s1, s2] = ['s', 's1', 's2'].map(point => ({ point, limitA: Infinity })) as [Feed, Feed, Feed]
const without = (from: string, to: string) => block.filter(way => way.from !== from || way.to !== to)

describe('largest flow', () => {
  it('is seen from both ends', () => {
    const first = without('a', 'block')
    expect(largestFlowA(first, [s1, s2], 'a')).toBe(150)
    expect(largestFlowA(first, [s1, s2], 'block')).toBe(450)
    expect(largestFlowA(without('c', 'block'), [s1, s2], 'block')).toBe(300)
    expect(largestFlowA(without('d', 'amp'), [s1, s2], 'd')).toBe(225)
    expect(largestFlowA(without('d', 'amp'), [s1, s2], 'amp')).toBe(0)
  })

  it('has no limit where no fuse stands', () => {
    expect(largestFlowA([{ from: 's', to: 'x', limitA: Infinity }], [s], 'x')).toBe(Infinity)
    expect(largestFlowA([], [s], 's')).toBe(Infinity)
  })

  it('turns a way round when the shortest path took it the wrong way: 30 A leave s, 30 A can', () => {
    const way = (points: string, limitA: number) =>
      [...points].slice(1).map((to, index): Way => ({ from: points[index] ?? '', to, limitA }))
    const ways = [...way('spqx', 10), ...way('sdefq', 20), ...way('pabcx', 20)]
    expect(largestFlowA(ways, [s], 'x')).toBe(30)
  })

  it('takes from a converter what it gives at most', () => {
    const converter = { point: 'out', limitA: 70 }
    const ways = [{ from: 'out', to: 'x', limitA: Infinity }]
    expect(largestFlowA(ways, [converter], 'x')).toBe(70)
    expect(largestFlowA(ways, [converter], 'out')).toBe(70)
    expect(largestFlowA([{ from: 'out', to: 'x', limitA: 60 }], [converter, s], 'x')).toBe(60)
  })

  it('is the smallest cut, by trying every cut', () => {
    const random = seeded(5)
    for (let turn = 0; turn < 200; turn++) {
      const points = ['s', 'p', 'q', 'r', 'x']
      const ways = Array.from({ length: 7 }, () => ({
        from: points[Math.floor(5 * random())] ?? 's',
        to: points[Math.floor(5 * random())] ?? 'x',
        limitA: Math.ceil(100 * random())
      })).filter(({ from, to }) => from !== to)
      const cuts = Array.from({ length: 8 }, (_, bits) => {
        const near = new Set(['s', ...['p', 'q', 'r'].filter((_, index) => (bits >> index) & 1)])
        return ways.reduce((sum, way) => (near.has(way.from) !== near.has(way.to) ? sum + way.limitA : sum), 0)
      })
      expect(largestFlowA(ways, [s], 'x')).toBe(Math.min(...cuts))
    }
  })
})

/** A tree of cables over 1 to 4 batteries, each behind a fuse next to its post. */
function vehicle(random: () => number) {
  const batteries = 1 + Math.floor(4 * random())
  const sources = Array.from({ length: batteries }, (_, index) => ({ id: `b${index}`, plus: `post${index}` }))
  const nodes = Array.from({ length: 1 + Math.floor(6 * random()) }, (_, index) => `n${index}`)
  const pick = () => nodes[Math.floor(nodes.length * random())] ?? 'n0'
  const tree = nodes.slice(1).map((to, index) => ({
    from: nodes[Math.floor((index + 1) * random())] ?? 'n0',
    to,
    lengthM: 0.2 + 6 * random()
  }))
  const ends = sources.map(() => pick())
  return {
    sources,
    ends,
    tails: sources.map(({ plus }, i) => ({ from: plus, to: `t${i}`, lengthM: 0.4 * random() })),
    tree,
    loads: [pick()]
  }
}

describe('a fuse at every source', () => {
  it('is found wherever there is one, and missed wherever one is taken away', () => {
    const random = seeded(77)
    for (let turn = 0; turn < CASES; turn++) {
      const { sources, ends, tails, tree, loads } = vehicle(random)
      // the fuse from each tail to its end parts the graph: it is no unfused way
      expect(bareSources({ sources, unfused: [...tails, ...tree], loads }, 0.45)).toEqual([])
      const bare = Math.floor(sources.length * random())
      const wire = { from: `t${bare}`, to: ends[bare] ?? '', lengthM: 0.5 }
      const found = bareSources({ sources, unfused: [...tails, ...tree, wire], loads }, 0.45)
      expect(found).toEqual([`b${bare}`])
    }
  })

  it('may not be too far away, and a battery that joins behind it needs its own', () => {
    const sources = [{ id: 'one', plus: 's' }]
    const tail = (lengthM: number) => [{ from: 's', to: 'a', lengthM }]
    expect(bareSources({ sources, unfused: tail(0.15), loads: ['x'] }, 0.45)).toEqual([])
    expect(bareSources({ sources, unfused: tail(1.4), loads: ['x'] }, 0.45)).toEqual(['one'])
    // along the conductor from the post: 33 CFR 183.455(b); tails of parallel cables each count for themselves
    const beside = Array.from({ length: 8 }, (_, index) => ({ from: 's', to: `a${index}`, lengthM: 0.11 }))
    expect(bareSources({ sources, unfused: beside, loads: ['x'] }, 0.45)).toEqual([])
    const behind = [...tail(0.3), { from: 'b', to: 'a', lengthM: 0.3 }]
    expect(bareSources({ sources, unfused: behind, loads: ['x'] }, 0.45)).toEqual(['one'])
    const unfused = [...tail(0.15), { from: 'b', to: 'x', lengthM: 5 }, { from: 't', to: 'x', lengthM: 0.7 }]
    expect(bareSources({ sources: [...sources, { id: 'two', plus: 't' }], unfused, loads: ['x'] }, 0.45)).toEqual([
      'two'
    ])
  })
})
