/** Whole circuits against a simulator's figures, closed forms, and a simulator run here with the load ramped up. */
import { Simulation } from 'eecircuit-engine'
import { describe, expect, it } from 'vitest'
import type { Element } from '../../../src/domain/circuit/points/element.ts'
import { solvePoints, sustainableShare } from '../../../src/domain/circuit/points/solve-points.ts'
import { seeded } from '../../support/random-requests.ts'
import { networks } from './networks.ts'

const between = (voltages: ReadonlyMap<string, number> | undefined, a: string, b: string) =>
  (voltages?.get(a) ?? Number.NaN) - (voltages?.get(b) ?? Number.NaN)

describe('the state reached from silence', () => {
  for (const { name, reference, elements, volts } of networks) {
    it(`of ${name}`, () => {
      const voltages = solvePoints(elements, reference)
      for (const [a, b, expected] of volts) {
        expect(Math.abs(between(voltages, a, b) - expected), `${a} ${b}`).toBeLessThan(5e-4)
      }
    })
  }

  it('is the closed form of one source and one load', () => {
    const random = seeded(11)
    for (let turn = 0; turn < 300; turn++) {
      const [emfV, ohm, share] = [10 + 20 * random(), 0.002 + 0.05 * random(), 0.05 + 1.9 * random()]
      const powerW = (share * emfV ** 2) / (4 * ohm)
      const voltages = solvePoints(one(emfV, ohm, powerW), 'm')
      if (share > 1) expect(voltages).toBeUndefined()
      else expect(voltages?.get('x')).toBeCloseTo((emfV / 2) * (1 + Math.sqrt(1 - share)), 6)
    }
  })

  it('says how much of the load would still stand: E²/(4·P·R)', () => {
    expect(sustainableShare(one(12.4, 0.02, 2100), 'm')).toBeCloseTo(0.91524, 3)
  })

  it('steps right to where a second battery begins to help, not towards it bit by bit', () => {
    let asked = 0
    const load = {
      kind: 'power' as const,
      get powerW() {
        asked++
        return 2600
      }
    }
    const battery = (emfV: number, givingOhm: number) => ({ kind: 'battery' as const, emfV, givingOhm, takingOhm: 0.2 })
    const voltages = solvePoints(
      [
        { id: 'first', from: 'a', to: 'm', law: battery(12.6, 0.006) },
        { id: 'alternator', from: 'a', to: 'm', law: { kind: 'regulated', setV: 14.2, slopeOhm: 0.002, limitA: 60 } },
        { id: 'run', from: 'a', to: 'x', law: { kind: 'conductor', ohm: 0.008 } },
        { id: 'second', from: 'y', to: 'm', law: battery(9, 0.02) },
        { id: 'lead', from: 'y', to: 'x', law: { kind: 'conductor', ohm: 0.01 } },
        { id: 'load', from: 'x', to: 'm', law: load }
      ],
      'm'
    )
    // by hand: 12.96 V behind 14 mΩ beside 9 V behind 30 mΩ are 11.7 V behind 9.54545 mΩ; 87 readings before
    expect(voltages?.get('x')).toBeCloseTo((11.7 + Math.sqrt(11.7 ** 2 - (4 * 2600 * 0.42) / 44)) / 2, 4)
    expect(asked).toBeLessThan(60)
  })

  it('leaves out what has no supply and nothing else', () => {
    const lone: Element = { id: 'lone', from: 'far', to: 'm', law: { kind: 'power', powerW: 100 } }
    const voltages = solvePoints([...one(12.6, 0.01, 100), lone], 'm')
    expect(voltages?.has('far')).toBe(false)
    expect(voltages?.get('x')).toBeCloseTo(12.52, 2)
  })
})

function one(emfV: number, ohm: number, powerW: number): readonly Element[] {
  return [
    { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV, givingOhm: 0.4 * ohm, takingOhm: 0.2 } },
    { id: 'run', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.6 * ohm } },
    { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW } }
  ]
}

/** The simulator's own words for an element; loads rise over eight seconds. */
function line({ id, from, to, law }: Element, node: (point: string) => string): readonly string[] {
  const [a, b] = [node(from), node(to)]
  const u = `V(${a},${b})`
  switch (law.kind) {
    case 'conductor':
      return [`R${id} ${a} ${b} ${law.ohm}`]
    case 'battery':
      return [
        `B${id} ${a} ${b} I=(${u}<${law.emfV}) ? (${u}-${law.emfV})/${law.givingOhm} : (${u}-${law.emfV})/${law.takingOhm}`
      ]
    case 'regulated':
      return [`B${id} ${a} ${b} I=-min(${law.limitA},max(0,(${law.setV}-${u})/${law.slopeOhm}))`]
    case 'power':
      return [`B${id} ${a} ${b} I=min(1,time/8)*${law.powerW}/max(${u},0.5)`]
    case 'current':
      return [`B${id} ${a} ${b} I=min(1,time/8)*${law.currentA}`]
  }
}

describe('the same network in a circuit simulator', () => {
  it('ends at the same voltages', async () => {
    const simulation = new Simulation()
    await simulation.start()
    for (const { name, reference, elements } of networks) {
      const points = [...new Set(elements.flatMap(({ from, to }) => [from, to]))].filter(point => point !== reference)
      const node = (point: string) => (point === reference ? '0' : `p${points.indexOf(point)}`)
      simulation.setNetList(
        [
          name,
          ...elements.flatMap((element, index) => line({ ...element, id: `e${index}` }, node)),
          ...points.map((point, index) => `C${index} ${node(point)} 0 5m`),
          ...points.map(point => `.save v(${node(point)})`),
          '.options reltol=1e-6 abstol=1e-9',
          '.tran 0.02 9',
          '.end'
        ].join('\n')
      )
      const { dataType, data } = await simulation.runSim()
      if (dataType !== 'real') throw new Error(`no transient of ${name}: ${simulation.getError().join('; ')}`)
      const voltages = solvePoints(elements, reference)
      for (const point of points) {
        const last = data.find(({ name: of }) => of.toLowerCase() === `v(${node(point)})`)?.values.at(-1)
        expect(Math.abs((last ?? Number.NaN) - (voltages?.get(point) ?? Number.NaN)), `${name} ${point}`).toBeLessThan(
          1e-3
        )
      }
    }
  }, 60_000)
})
