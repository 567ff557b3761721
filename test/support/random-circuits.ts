/** Random vehicles as circuits, every resistance given: trees and loops, up to three batteries, loads that regulate and loads that do not. */
import type { CircuitRequest } from '../../src/contract/supply/supply-circuit.ts'
import type { Random } from './random-requests.ts'

const between = (random: Random, low: number, high: number) => low + (high - low) * random()

export function randomCircuit(random: Random): CircuitRequest {
  const many = (most: number) => 1 + Math.floor(most * random())
  const nodes = Array.from({ length: 1 + many(5) }, (_, index) => `n${index}`)
  const pick = () => nodes[Math.floor(nodes.length * random())] ?? 'n0'
  const link = (id: string, from: string, to: string, low: number, high: number) => ({
    ...{ id, from, to },
    resistanceOhm: between(random, low, high)
  })
  const batteries = Array.from({ length: many(3) }, (_, index) => ({
    ...{ id: `battery ${index}`, plus: `post ${index}`, minus: index === 0 ? 'm' : `minus ${index}`, chemistry: 'agm' },
    ...{ openCircuitV: between(random, 12.3, 12.9), resistanceOhm: between(random, 0.003, 0.012) },
    chargingOhm: between(random, 0.1, 0.4)
  })) satisfies readonly object[]
  const amplifiers = Array.from({ length: many(4) }, (_, index) => ({
    ...{ id: `amplifier ${index}`, plus: `plus ${index}`, minus: `ground ${index}` },
    ...{ class: random() < 0.7 ? ('D' as const) : ('AB' as const), powerW: between(random, 50, 900) },
    ...{ efficiency: between(random, 0.5, 0.9), quiescentW: between(random, 2, 10) },
    ...{ regulation: random() < 0.7 ? ('regulated' as const) : ('unregulated' as const), ratedVoltageV: 14.4 }
  }))
  const tree = nodes.slice(1).map((to, index) => {
    const from = nodes[Math.floor((index + 1) * random())] ?? 'n0'
    return link(`tree ${index}`, from, to, 0.0005, 0.006)
  })
  const [one, other] = [pick(), pick()]
  return {
    systemVoltageV: 12,
    batteries: batteries as CircuitRequest['batteries'],
    ...(random() < 0.7
      ? {
          alternators: [
            {
              ...{ id: 'alternator', plus: 'post 0', minus: 'engine', setV: between(random, 13.2, 14.8) },
              ...{ idleA: between(random, 30, 90), drivingA: between(random, 80, 180), slopeOhm: 0.002 }
            }
          ]
        }
      : {}),
    fuses: batteries.map((_, index) => ({
      ...{ id: `fuse ${index}`, from: `post ${index}`, to: index === 0 ? 'n0' : pick(), ratingA: 150 },
      resistanceOhm: between(random, 0.0004, 0.0015)
    })),
    links: [
      ...tree,
      ...(one === other ? [] : [link('loop', one, other, 0.001, 0.01)]),
      link('strap', 'engine', 'front', 0.0002, 0.001),
      link('battery strap', 'm', 'front', 0.0002, 0.001),
      link('body', 'front', 'rear', 0.0003, 0.003),
      ...batteries.slice(1).map((_, index) => link(`return ${index + 1}`, `minus ${index + 1}`, 'rear', 0.0003, 0.001)),
      ...amplifiers.flatMap(({ plus, minus }, index) => [
        link(`branch ${index}`, pick(), plus, 0.0005, 0.006),
        link(`lead ${index}`, minus, 'rear', 0.0003, 0.001)
      ])
    ],
    amplifiers,
    accessories: [
      {
        id: 'vehicle',
        plus: 'post 0',
        minus: 'front',
        currentA: between(random, 10, 60),
        parkedA: between(random, 0, 4)
      }
    ]
  }
}
