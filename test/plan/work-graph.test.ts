/** The whole work as a graph: every order the needs allow is a safe one, judged by a second table of states. */
import { describe, expect, it } from 'vitest'
import type { VehicleFacts } from '../../src/plan/steps/vehicle-facts.ts'
import { workNodes } from '../../src/plan/steps/work-nodes.ts'
import { type BuildFacts, buildFacts } from '../../src/plan/work/build-facts.ts'
import { buildOrder } from '../../src/plan/work/build-order.ts'
import type { BuildNode } from '../../src/plan/work/build-step.ts'
import { inventedBox } from '../support/invented-box.ts'
import { draws } from '../support/random-systems.ts'
import { workStates } from '../support/work-states.ts'

const SEEDS = Array.from({ length: 120 }, (_, index) => 7300 + index)

function randomBox(seed: number): BuildFacts {
  const draw = draws(seed)
  const facts = buildFacts(inventedBox, {
    way: 'saw-and-router',
    sheetCount: 1,
    lined: false,
    covered: false,
    driverCount: 1,
    innerWire: true
  })
  return {
    ...facts,
    port: draw.pick(['none', 'round', 'slot']),
    braceCount: draw.pick([0, 1, 3]),
    frontLayers: draw.pick([1, 2]),
    way: draw.pick(['saw-and-router', 'cutting-service', 'jigsaw-and-drill']),
    bevels: draw.pick([[], [{ angleDeg: 12.5, panels: ['front'] }]]),
    rebated: draw.pick([true, false]),
    lined: draw.pick([true, false]),
    covered: draw.pick([true, false]),
    heavy: draw.pick([true, false]),
    carriedKg: draw.whole(8, 60),
    ...draw.pick([{}, { fixing: 'wood-screw' as const }, { fixing: 'machine-screw' as const }]),
    ...draw.pick([{}, {}, { port: 'none' as const, radiators }, { port: 'round' as const, screwedFront: true }])
  }
}

const radiators = {
  count: 2,
  face: 'sides',
  addedKg: 0.16,
  massKg: 0.34,
  resonanceHz: 11.6,
  travelM: 0.022
} as const

const fuse = {
  ratingA: 80,
  type: 'SF30',
  form: 'strip',
  standard: 'ISO 8820-5',
  voltageV: 32,
  breakingA: 2000,
  placement: { idealM: 0.175, usualM: 0.45, sheathedM: 1, bothEnds: false, text: '' }
} as const

const converter = { inputV: 24, nominalV: 12, outputV: 13.6, ratedA: 70, ratedInputA: 45 }

function randomVehicle(seed: number): VehicleFacts {
  const draw = draws(seed + 50_000)
  const returnBy = draw.pick(['body', 'cable'] as const)
  const run = { designation: '4 AWG', runs: draw.pick([1, 2]), positiveLengthM: 5, returnBy, returnLengthM: 0.5 }
  const trunk = draw.pick([undefined, run, { ...run, fuse }, { ...run, fuse }])
  const twisted = draw.pick([true, false])
  const drive = draw.pick([undefined, 'combustion', 'mild-hybrid', 'hybrid', 'electric'] as const)
  return {
    circuit: {
      amplifiers: ['bass'],
      ...(trunk === undefined ? {} : { trunk }),
      branches:
        trunk === undefined
          ? []
          : draw.pick([
              [],
              [
                { ...run, amplifier: 'bass' },
                { ...run, amplifier: 'doors' }
              ]
            ]),
      ...draw.pick([{}, { speakerWire: { designation: '14 AWG', areaM2: 2e-6, lengthM: 2, count: 1, currentA: 10 } }]),
      signalLead: {
        kind: twisted ? 'twisted-pair' : 'screened',
        name: 'lead',
        lengthM: 5,
        count: 1,
        converter: twisted,
        turnOnLengthM: 5
      },
      ...draw.pick([
        {},
        { secondBattery: { name: '95 A·h, agm', link: 'relay' as const, relayA: 300, lead: { ...run, fuse } } },
        { secondBattery: { name: '95 A·h, lithium', link: 'joined' as const } },
        ...(trunk === undefined ? [] : [{ converter }])
      ]),
      notPlanned: []
    },
    ...(drive === undefined ? {} : { drive }),
    capacitor: draw.pick([true, false]),
    ...draw.pick([{}, { turnOn: { method: 'signal-sensing', why: '', loadA: 0 } as const }]),
    lugCount: 4,
    sheathed: draw.pick([true, false]),
    ...(trunk !== undefined && 'fuse' in trunk ? { fuseTailM: 0.25 } : {})
  }
}

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
