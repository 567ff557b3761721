/** The quick half-power search of a tolerance run against the refined figures of a response, over random systems of every kind. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { quickHalfPower } from '../../../src/domain/enclosure/model/half-power.ts'
import { responseSystem } from '../../../src/domain/enclosure/model/response-system.ts'
import { responseScalars } from '../../../src/domain/enclosure/response/scalars.ts'
import { draws, randomSystem } from '../../support/random-systems.ts'

const kinds = [
  'infinite-baffle',
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series',
  'isobaric'
] as const

describe('half-power frequencies found quickly', () => {
  for (const kind of kinds) {
    it(`are those of the refined search: 40 random systems, ${kind}`, () => {
      const draw = draws(20261125)
      let compared = 0
      for (let round = 0; round < 40; round++) {
        const system = responseSystem(randomSystem(kind, draw), assumptions())
        const { f3Hz, f3UpperHz } = responseScalars(system)
        const quick = quickHalfPower(system)
        if (f3Hz === undefined || f3Hz < 3.2) continue
        compared++
        expect(Math.abs((quick.f3Hz ?? 0) / f3Hz - 1), `${round}: ${quick.f3Hz} for ${f3Hz}`).toBeLessThan(1e-6)
        if (f3UpperHz !== undefined && f3UpperHz < 590) {
          expect(Math.abs((quick.f3UpperHz ?? 0) / f3UpperHz - 1), `${round}: upper`).toBeLessThan(1e-6)
        }
      }
      expect(compared).toBeGreaterThan(20)
    })
  }
})
