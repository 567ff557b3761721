/** The whole work as a graph: every order the needs allow is a safe one, judged by a second table of states. */
import { describe, expect, it } from 'vitest'
import { workNodes } from '../../src/plan/steps/work-nodes.ts'
import { buildOrder } from '../../src/plan/work/build-order.ts'
import type { BuildNode } from '../../src/plan/work/build-step.ts'
import { randomBox, randomVehicle } from '../support/random-work.ts'
import { workStates } from '../support/work-states.ts'

const SEEDS = Array.from({ length: 120 }, (_, index) => 7300 + index)

const samples = SEEDS.map(seed => workNodes(randomBox(seed), randomVehicle(seed)))

type Needs = ReadonlyMap<string, readonly string[]>

function ancestorsOf(id: string, needs: Needs, seen = new Set<string>()): ReadonlySet<string> {
  for (const need of needs.get(id) ?? [])
    if (needs.has(need) && !seen.has(need)) {
      seen.add(need)
      ancestorsOf(need, needs, seen)
    }
  return seen
}

/** Every order that the needs allow at once, without running any: what a step needs is behind it, what it forbids before it. */
function faultsOf(nodes: readonly Pick<BuildNode, 'id' | 'needs'>[]): readonly string[] {
  const needs: Needs = new Map(nodes.map(node => [node.id, node.needs]))
  const behind = new Map(nodes.map(({ id }) => [id, ancestorsOf(id, needs)]))
  const makers = (wanted: string) => nodes.filter(({ id }) => workStates[id]?.makes === wanted).map(({ id }) => id)
  return nodes.flatMap(({ id }) => {
    const own = workStates[id]
    if (own === undefined) return [`${id} has no state`]
    const unmet = own.needs.filter(wanted => {
      const made = makers(wanted)
      return made.length > 0 && !made.some(maker => behind.get(id)?.has(maker))
    })
    const early = (own.forbids ?? []).filter(banned => makers(banned).some(maker => !behind.get(maker)?.has(id)))
    return [...unmet.map(wanted => `${id} without ${wanted}`), ...early.map(banned => `${id} after ${banned}`)]
  })
}

describe('work graph', () => {
  it('lets no step come before what it needs or after what it must not see, in any order', () => {
    expect([...new Set(samples.flatMap(faultsOf))]).toEqual([])
  })

  it('reaches every step once, none before what it needs: no circle', () => {
    for (const nodes of samples) {
      const { steps } = buildOrder(nodes)
      expect(steps.map(({ id }) => id).toSorted()).toEqual(nodes.map(({ id }) => id).toSorted())
      const place = new Map(steps.map(({ id, number }) => [id, number]))
      for (const { number, needs } of steps) for (const need of needs) expect(place.get(need)).toBeLessThan(number)
    }
  })

  it('has a state for every step that any plan has, and no state beside', () => {
    const ids = new Set(samples.flatMap(nodes => nodes.map(({ id }) => id)))
    expect([...ids].toSorted()).toEqual(Object.keys(workStates).toSorted())
  })

  it('needs only steps that exist', () => {
    const ids = new Set(Object.keys(workStates))
    for (const nodes of samples) for (const { needs } of nodes) for (const need of needs) expect(ids).toContain(need)
  })

  it('takes only what was bought, chosen or made before', () => {
    const made = new Set(['cut-panel', 'brace', 'port-walls', 'shell', 'closed-box', 'finished-box'])
    for (const nodes of samples) {
      const have = new Set<string>()
      for (const { id, uses, makes } of buildOrder(nodes).steps) {
        for (const item of uses) if (made.has(item)) expect(have, `${id} takes ${item}`).toContain(item)
        for (const item of makes) have.add(item)
      }
    }
  })

  it('keeps the vehicle safe first: nothing is drilled, opened or laid while the battery is on', () => {
    for (const nodes of samples) {
      const ids = buildOrder(nodes).steps.map(({ id }) => id)
      for (const late of ['open-trim', 'mount-amplifier', 'mount', 'connect-amplifier'])
        expect(ids.indexOf(late)).toBeGreaterThan(ids.indexOf('battery-off'))
      if (ids.includes('drive-off')) expect(ids.indexOf('drive-off')).toBeLessThan(ids.indexOf('battery-off'))
    }
  })
})

/** Drivers of a heavy box go in when it is fastened, not only loaded: for comfort, no state forbids the other. */
const harmless: readonly string[] = ['fit-driver mount']

describe('the table of states', () => {
  it('notices the loss of any single edge that no other way replaces', () => {
    const edges = new Set(
      samples.flatMap(nodes => nodes.flatMap(({ id, needs }) => needs.map(need => `${id} ${need}`)))
    )
    const unseen = [...edges].filter(edge => {
      const [from = '', to = ''] = edge.split(' ')
      const holding = samples.filter(nodes => {
        const needs: Needs = new Map(nodes.map(node => [node.id, node.needs]))
        if (!needs.get(from)?.includes(to) || !needs.has(to)) return false
        return !(needs.get(from) ?? []).some(other => other !== to && ancestorsOf(other, needs).has(to))
      })
      const without = (nodes: readonly BuildNode[]) =>
        nodes.map(node => (node.id === from ? { ...node, needs: node.needs.filter(need => need !== to) } : node))
      return holding.length > 0 && !holding.some(nodes => faultsOf(without(nodes)).length > 0)
    })
    expect(unseen.toSorted()).toEqual(harmless)
  })
})
