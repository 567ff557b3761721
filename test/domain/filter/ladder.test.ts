/** Filters against LC ladders in a circuit simulator: element values of handbooks know nothing of poles and Q. */
import { describe, expect, it } from 'vitest'
import type { Filter } from '../../../src/contract/enclosures/filter.ts'
import { filterSections } from '../../../src/domain/filter/filter-sections.ts'
import { chainTransfer } from '../../../src/domain/filter/filter-transfer.ts'
import type { Netlist } from '../../support/netlist/netlist.ts'
import { type Reading, simulate } from '../../support/netlist/simulate.ts'

const cornerHz = 40
const omega = 2 * Math.PI * cornerHz
const range = { fromHz: 5, toHz: 205, points: 41 }
const frequencies = Array.from({ length: range.points }, (_, k) => 5 + 5 * k)

/** Butterworth between equal resistances: g_k = 2 sin((2k − 1)π/2n) (any handbook; from memory). */
const butterworth = (order: number) =>
  Array.from({ length: order }, (_, k) => 2 * Math.sin(((2 * k + 1) * Math.PI) / (2 * order)))

/** Maximally flat delay between equal resistances, half-power corner 1 (Zverev 1967; from memory). */
const bessel: Readonly<Record<number, readonly number[]>> = {
  2: [0.5755, 2.1478],
  3: [0.3374, 0.9705, 2.2034],
  4: [0.2334, 0.6725, 1.0815, 2.2404],
  5: [0.1743, 0.5072, 0.804, 1.111, 2.2582]
}

/** A ladder of 1 Ω that starts with a shunt; a high-pass has each element as its dual at 1/g. Half the voltage arrives. */
function ladder(tag: string, values: readonly number[], kind: 'high-pass' | 'low-pass'): Netlist {
  const high = kind === 'high-pass'
  const lines = [`V${tag} ${tag}in 0 dc 0 ac 2`, `R${tag}s ${tag}in ${tag}0 1`]
  let node = 0
  for (const [k, g] of values.entries()) {
    const shunt = k % 2 === 0
    const value = (high ? 1 / g : g) / omega
    const letter = shunt === high ? 'L' : 'C'
    const to = shunt ? '0' : `${tag}${node + 1}`
    lines.push(`${letter}${tag}${k} ${tag}${node} ${to} ${value}`)
    if (!shunt) node += 1
  }
  lines.push(`R${tag}l ${tag}${node} 0 1`)
  const probes = { current: `V${tag}`, radiated: `V${tag}`, velocities: [], openings: {}, chambers: {} }
  return { lines, probes: { ...probes, terminal: `${tag}${node}` } }
}

function worst(read: Reading, { probes }: Netlist, filters: readonly Filter[]): number {
  const sections = filterSections(filters, 'filters')
  const theirs = read(probes.terminal)
  return Math.max(
    ...frequencies.map((frequency, k) => {
      const ours = chainTransfer(sections, frequency)
      const their = theirs[k] as { re: number; im: number }
      return Math.hypot(ours.re - their.re, ours.im - their.im) / Math.max(Math.hypot(their.re, their.im), 1e-4)
    })
  )
}

describe('filters against ladders in ngspice', () => {
  for (const kind of ['low-pass', 'high-pass'] as const) {
    it(`are Butterworth ${kind}es of order 2 to 7, in magnitude and phase`, async () => {
      const orders = [2, 3, 4, 5, 6, 7]
      const nets = orders.map(order => ladder(`b${order}${kind[0]}`, butterworth(order), kind))
      const read = await simulate(nets, range)
      for (const [k, order] of orders.entries()) {
        expect(worst(read, nets[k] as Netlist, [{ kind, family: 'butterworth', order, cornerHz }])).toBeLessThan(1e-6)
      }
    })

    it(`are Bessel ${kind}es with half power at the corner, within the digits of the table`, async () => {
      const orders = [2, 3, 4, 5]
      const nets = orders.map(order => ladder(`t${order}${kind[0]}`, bessel[order] as readonly number[], kind))
      const read = await simulate(nets, range)
      for (const [k, order] of orders.entries()) {
        expect(worst(read, nets[k] as Netlist, [{ kind, family: 'bessel', order, cornerHz }])).toBeLessThan(2e-3)
      }
    })
  }
})
