/** A vehicle of forty elements: two batteries, two cables side by side fused at both ends, a relay, three amplifiers behind a block, and what switches them on. */
import type { CircuitRequest } from '../../src/contract/supply/supply-circuit.ts'
import type { Random } from './random-requests.ts'

const between = (random: Random, low: number, high: number) => low + (high - low) * random()

type Ends = readonly [string, string]
const cabled = (id: string, [from, to]: Ends, designation: string, lengthM: number) => ({
  ...{ id, from, to, designation, lengthM },
  ...{ insulationC: 105, ambientC: 40 }
})
const fused = (id: string, [from, to]: Ends, ratingA: number) => ({
  ...{ id, from, to, ratingA },
  type: 'marine-strip' as const
})

/** Tail, fuse, cable, and a fuse at its far end. */
const run = (random: Random, name: string) => ({
  fuses: [
    fused(`${name} fuse`, [`${name} before`, `${name} behind`], 150),
    fused(`${name} end fuse`, [`${name} end`, 'join'], 150)
  ],
  cables: [
    cabled(`${name} tail`, ['battery plus', `${name} before`], '1/0 AWG', between(random, 0.1, 0.3)),
    cabled(name, [`${name} behind`, `${name} end`], '1/0 AWG', between(random, 4, 6.5))
  ]
})

const branch = (random: Random, index: number) => ({
  fuses: [fused(`branch ${index} fuse`, ['block', `branch ${index} behind`], 100)],
  cables: [
    cabled(`branch ${index}`, [`branch ${index} behind`, `plus ${index}`], '2 AWG', between(random, 0.5, 1.5)),
    cabled(`ground ${index}`, [`minus ${index}`, 'ground point'], '2 AWG', between(random, 0.3, 0.6))
  ]
})

const link = (id: string, [from, to]: Ends, resistanceOhm: number) => ({ id, from, to, resistanceOhm })

export function fortyElements(random: Random): CircuitRequest {
  const three = [1, 2, 3]
  const laid = [...['run 1', 'run 2'].map(name => run(random, name)), ...three.map(index => branch(random, index))]
  const thin = (id: string, ends: Ends, lengthM: number) => cabled(id, ends, '0.75 mm²', lengthM)
  return {
    systemVoltageV: 12,
    batteries: [
      { id: 'battery', plus: 'battery plus', minus: 'battery minus', chemistry: 'agm', coldCrankingA: 800 },
      { id: 'second', plus: 'second plus', minus: 'second minus', chemistry: 'agm', coldCrankingA: 850 }
    ],
    alternators: [
      {
        id: 'alternator',
        plus: 'alternator plus',
        minus: 'engine',
        setV: between(random, 13.8, 14.6),
        idleA: 90,
        drivingA: 180
      }
    ],
    fuses: [...laid.flatMap(({ fuses }) => fuses), fused('second fuse', ['second plus', 'second behind'], 250)],
    cables: [
      ...laid.flatMap(({ cables }) => cables),
      cabled('relay piece', ['relay', 'block'], '4/0 AWG', 0.2),
      cabled('second lead', ['second behind', 'block'], '2/0 AWG', between(random, 0.3, 0.8)),
      cabled('second return', ['second minus', 'ground point'], '2/0 AWG', 0.5),
      thin('turn-on wire', ['output', 'input 1'], between(random, 4, 6)),
      thin('jumper 1', ['input 1', 'input 2'], 1),
      thin('jumper 2', ['input 2', 'input 3'], 1)
    ],
    links: [
      { ...link('isolating relay', ['join', 'relay'], 0.0003), opensWithoutEngine: true },
      link('charging cable', ['alternator plus', 'battery plus'], 0.0008),
      link('engine strap', ['engine', 'front'], between(random, 0.0002, 0.0008)),
      link('battery sensor', ['front', 'battery minus'], 0.0001),
      link('body', ['ground point', 'front'], between(random, 0.0004, 0.002)),
      { ...link('switched output', ['battery plus', 'output'], 2), limitA: 0.25 }
    ],
    amplifiers: three.map(index => ({
      ...{
        id: `amplifier ${index}`,
        plus: `plus ${index}`,
        minus: `minus ${index}`,
        class: 'D',
        regulation: 'regulated'
      },
      powerW: between(random, 300, 800)
    })),
    accessories: [
      { id: 'vehicle', plus: 'battery plus', minus: 'front', currentA: between(random, 20, 45), parkedA: 2 },
      ...three.map(index => ({
        id: `turn-on ${index}`,
        ...{ plus: `input ${index}`, minus: `minus ${index}`, currentA: 0.05, parkedA: 0.05 }
      }))
    ]
  }
}
