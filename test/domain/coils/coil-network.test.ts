import fc from 'fast-check'
import { lusolve, matrix } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { arrangementsOf, networkOf } from '../../../src/domain/coils/arrangements.ts'
import {
  type Coil,
  type CoilNetwork,
  joined,
  leavesOf,
  networkOhm,
  powerShares
} from '../../../src/domain/coils/coil-network.ts'
import { jointsOf } from '../../../src/domain/coils/joints.ts'
import { numberOf, rational, rationalOf, sum, textOf } from '../../../src/numeric/rational.ts'

const coil = (driver: number): CoilNetwork<Coil> => ({ join: 'coil', leaf: { driver, coil: 1 } })
const ohms = (values: readonly number[]) => (leaf: Coil) => rationalOf(values[leaf.driver - 1] ?? 0)

interface Wired {
  readonly network: CoilNetwork<Coil>
  readonly values: readonly number[]
}

/** A random tree over n coils of random resistance. */
const wired: fc.Arbitrary<Wired> = fc
  .record({
    values: fc.array(fc.integer({ min: 5, max: 160 }), { minLength: 1, maxLength: 10 }),
    choices: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.boolean()), { minLength: 10, maxLength: 10 })
  })
  .map(({ values, choices }) => {
    const parts = values.map((_, index) => coil(index + 1))
    for (const [first, second, series] of choices) {
      if (parts.length === 1) break
      const [a] = parts.splice(first % parts.length, 1)
      const [b] = parts.splice(second % parts.length, 1)
      if (a !== undefined && b !== undefined) parts.push(joined(series ? 'series' : 'parallel', [a, b]))
    }
    return { network: joined('series', parts), values: values.map(value => value / 10) }
  })

/** Nodal analysis of the joints, by the LU solver of a general library: knows nothing of series and parallel. */
function nodal({ network, values }: Wired): { readonly ohm: number; readonly shares: readonly number[] } {
  const joints = jointsOf(network)
  const nodeOf = new Map<string, number>()
  for (const [node, joint] of joints.entries()) {
    for (const { driver, side } of joint.terminals) nodeOf.set(`${driver}${side}`, node)
  }
  const g = joints.map(() => joints.map(() => 0))
  const add = (row: number, column: number, value: number) => {
    const line = g[row]
    if (line !== undefined) line[column] = (line[column] ?? 0) + value
  }
  const ends = values.map((_, index) => [nodeOf.get(`${index + 1}+`) ?? -1, nodeOf.get(`${index + 1}-`) ?? -1] as const)
  for (const [index, [from, to]] of ends.entries()) {
    const conductance = 1 / (values[index] ?? 1)
    add(from, from, conductance)
    add(to, to, conductance)
    add(from, to, -conductance)
    add(to, from, -conductance)
  }
  // One ampere into node 0, node 1 at zero.
  const kept = g.map((row, index) => (index === 1 ? row.map((_, column) => (column === 1 ? 1 : 0)) : row))
  const solved = lusolve(
    matrix(kept),
    joints.map((_, index) => (index === 0 ? 1 : 0))
  ) as unknown as {
    toArray(): number[][]
  }
  const volts = solved.toArray().map(([value = Number.NaN]) => value)
  const ohm = volts[0] ?? Number.NaN
  const shares = ends.map(
    ([from, to], index) => ((volts[from] ?? 0) - (volts[to] ?? 0)) ** 2 / (values[index] ?? 1) / ohm
  )
  return { ohm, shares }
}

describe('coil networks', () => {
  it('of 4 Ω and 2 Ω: parallel 1.333 Ω with 1/3 and 2/3, series 6 Ω with 2/3 and 1/3 (hand calculation)', () => {
    const parallel = joined('parallel', [coil(1), coil(2)])
    expect(textOf(networkOhm(parallel, ohms([4, 2])))).toBe('4/3')
    expect(powerShares(parallel, ohms([4, 2])).map(textOf)).toEqual(['1/3', '2/3'])
    const series = joined('series', [coil(1), coil(2)])
    expect(textOf(networkOhm(series, ohms([4, 2])))).toBe('6/1')
    expect(powerShares(series, ohms([4, 2])).map(textOf)).toEqual(['2/3', '1/3'])
  })

  it('of one 4 Ω in series with two parallel: 6 Ω with 2/3, 1/6, 1/6 (hand calculation)', () => {
    const network = joined('series', [coil(1), joined('parallel', [coil(2), coil(3)])])
    expect(textOf(networkOhm(network, ohms([4, 4, 4])))).toBe('6/1')
    expect(powerShares(network, ohms([4, 4, 4])).map(textOf)).toEqual(['2/3', '1/6', '1/6'])
  })

  it('loses no power: the shares of any network add up to exactly 1', () => {
    fc.assert(
      fc.property(wired, ({ network, values }) => {
        expect(textOf(sum(powerShares(network, ohms(values))))).toBe('1/1')
      }),
      { seed: 3, numRuns: 300 }
    )
  })

  it('agrees with nodal analysis of its joints in resistance and in every share', () => {
    fc.assert(
      fc.property(wired, each => {
        const expected = nodal(each)
        const ohm = numberOf(networkOhm(each.network, ohms(each.values)))
        expect(Math.abs(ohm / expected.ohm - 1)).toBeLessThan(1e-9)
        const shares = powerShares(each.network, ohms(each.values))
        for (const [index, { driver }] of leavesOf(each.network).entries()) {
          expect(numberOf(shares[index] ?? rational(0n))).toBeCloseTo(expected.shares[driver - 1] ?? Number.NaN, 9)
        }
      }),
      { seed: 4, numRuns: 200 }
    )
  })

  it('gives every coil of every usual arrangement the same power and uses every coil once', () => {
    for (let drivers = 1; drivers <= 8; drivers++) {
      for (let coils = 1; coils <= 4; coils++) {
        for (const arrangement of arrangementsOf(drivers, coils)) {
          const network = networkOf(arrangement, drivers, coils)
          const shares = powerShares(network, () => rational(1n)).map(textOf)
          expect(new Set(shares)).toEqual(new Set([textOf(rational(1n, BigInt(drivers * coils)))]))
          expect(new Set(leavesOf(network).map(leaf => `${leaf.driver} ${leaf.coil}`)).size).toBe(drivers * coils)
        }
      }
    }
  })
})
