/** Random feeders against ngspice: resistors, current sources and behavioural constant-power sources, solved by somebody else. */
import { Simulation } from 'eecircuit-engine'
import { describe, expect, it } from 'vitest'
import type { FeederAmplifier, FeederRequest } from '../../../src/contract/supply/supply-feeder.ts'
import { computeFeeder } from '../../../src/domain/circuit/graph/compute-feeder.ts'

/** mulberry32: the same feeders on every run. */
function stream(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

interface Net {
  readonly request: FeederRequest
  readonly lines: readonly string[]
  readonly nodes: readonly string[]
}

function amplifier(
  random: () => number,
  name: string
): { readonly asked: FeederAmplifier; readonly line: (node: string) => string; readonly ohm: number } {
  const ohm = 0.0005 + 0.006 * random()
  const branch = { resistanceOhm: ohm }
  const kind = Math.floor(3 * random())
  if (kind === 0) {
    const powerW = 50 + 900 * random()
    return { asked: { inputPowerW: powerW, branch }, ohm, line: node => `B${name} ${node} 0 I=${powerW}/V(${node})` }
  }
  if (kind === 1) {
    const currentA = 5 + 60 * random()
    return { asked: { currentA, branch }, ohm, line: node => `I${name} ${node} 0 DC ${currentA}` }
  }
  const [powerW, efficiency, ratedVoltageV] = [50 + 600 * random(), 0.5 + 0.4 * random(), 13 + 2 * random()]
  const loadOhm = ratedVoltageV ** 2 / (powerW / efficiency)
  return {
    asked: { powerW, efficiency, class: 'AB', regulation: 'unregulated', ratedVoltageV, branch },
    ohm,
    line: node => `R${name}l ${node} 0 ${loadOhm}`
  }
}

function net(random: () => number, id: string): Net {
  const count = 1 + Math.floor(5 * random())
  const voltageV = 11.5 + 3 * random()
  const [sourceOhm, trunkOhm] = [0.012 * random(), 0.0005 + 0.008 * random()]
  const loads = Array.from({ length: count }, (_, index) => amplifier(random, `${id}x${index}`))
  return {
    request: {
      systemVoltageV: 12,
      source: { voltageV, resistanceOhm: sourceOhm },
      trunk: { resistanceOhm: trunkOhm },
      amplifiers: loads.map(({ asked }) => asked)
    },
    lines: [
      `V${id} s${id} 0 DC ${voltageV}`,
      `R${id}s s${id} n${id} ${sourceOhm}`,
      `R${id}t n${id} b${id} ${trunkOhm}`,
      ...loads.flatMap(({ ohm, line }, index) => [
        `R${id}b${index} b${id} a${id}x${index} ${ohm}`,
        line(`a${id}x${index}`)
      ]),
      ...['n', 'b'].map(node => `.nodeset v(${node}${id})=${voltageV}`),
      ...loads.map((_, index) => `.nodeset v(a${id}x${index})=${voltageV}`)
    ],
    nodes: [`n${id}`, `b${id}`, ...loads.map((_, index) => `a${id}x${index}`)]
  }
}

/** Operating point of each circuit by itself: one that collapses must not spoil the others. */
async function operatingPoint(simulation: Simulation, { lines, nodes }: Net): Promise<ReadonlyMap<string, number>> {
  simulation.setNetList(
    ['feeder', ...lines, '.options reltol=1e-9 vntol=1e-10 abstol=1e-10 itl1=500', '.op', '.end'].join('\n')
  )
  const result = await simulation.runSim()
  if (result.dataType !== 'real') throw new Error('no operating point')
  const values = new Map(result.data.map(({ name, values: list }) => [name.toLowerCase(), list[0] ?? Number.NaN]))
  return new Map(nodes.map(node => [node, values.get(`v(${node})`) ?? values.get(node) ?? Number.NaN]))
}

describe('feeder against a circuit simulator', () => {
  it('gives the voltages of 60 random feeders of up to five loads within 1 µV', async () => {
    const random = stream(20261125)
    const simulation = new Simulation()
    await simulation.start()
    let compared = 0
    for (let index = 0; compared < 60; index++) {
      const circuit = net(random, `c${index}`)
      const { result } = computeFeeder(circuit.request)
      if (!result.feasible || (result.collapseMargin ?? 99) < 1.05) continue
      const simulated = await operatingPoint(simulation, circuit)
      const [node, block, ...loads] = circuit.nodes.map(name => simulated.get(name) ?? Number.NaN)
      expect(Math.abs((result.nodeVoltageV ?? 0) - (node ?? 0)), `node of ${index}`).toBeLessThan(1e-6)
      expect(Math.abs((result.blockVoltageV ?? 0) - (block ?? 0)), `block of ${index}`).toBeLessThan(1e-6)
      for (const [position, voltageV] of loads.entries()) {
        expect(
          Math.abs((result.amplifiers[position]?.voltageV ?? 0) - voltageV),
          `load ${position} of ${index}`
        ).toBeLessThan(1e-6)
      }
      compared++
    }
  }, 20_000)
})
