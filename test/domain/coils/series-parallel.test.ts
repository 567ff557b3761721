import { describe, expect, it } from 'vitest'
import { networkOhm } from '../../../src/domain/coils/coil-network.ts'
import { seriesParallelNetworks } from '../../../src/domain/coils/series-parallel.ts'
import { rational, textOf } from '../../../src/numeric/rational.ts'

/** OEIS A000084 (networks), A048211 (distinct resistances), A006351 (labelled networks): from memory. */
const alike = [1, 2, 4, 10, 24, 66, 180]
const distinct = [1, 2, 4, 9, 22, 53, 131]
const labelled = [1, 2, 8, 52, 472]

describe('series-parallel networks', () => {
  for (const [index, count] of alike.entries()) {
    const coils = index + 1
    it(`of ${coils} like coils number ${count}, with ${distinct[index]} resistances (OEIS A000084, A048211)`, () => {
      const networks = seriesParallelNetworks([coils])
      expect(networks).toHaveLength(count)
      const loads = new Set(networks.map(network => textOf(networkOhm(network, () => rational(1n)))))
      expect(loads.size).toBe(distinct[index])
    })
  }

  for (const [index, count] of labelled.entries()) {
    it(`of ${index + 1} different coils number ${count} (OEIS A006351)`, () => {
      const networks = seriesParallelNetworks(Array.from({ length: index + 1 }, () => 1))
      expect(networks).toHaveLength(count)
      expect(new Set(networks.map(network => JSON.stringify(network))).size).toBe(count)
    })
  }

  it('comes in dual pairs: every resistance R has a network of 1/R', () => {
    const loads = seriesParallelNetworks([6]).map(network => networkOhm(network, () => rational(1n)))
    const texts = new Set(loads.map(textOf))
    for (const { numerator, denominator } of loads) expect(texts).toContain(`${denominator}/${numerator}`)
  })

  it('uses every coil of a mixed set once', () => {
    // Two of one kind and one of another, by hand: a a b: 3 in series, 3 in parallel, aa∥b, ab∥a, (a∥a)b, (a∥b)a.
    expect(seriesParallelNetworks([2, 1])).toHaveLength(6)
  })
})
