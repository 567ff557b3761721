/** Random systems of every kind, driven to the largest voltage that was named: one limit is reached, none is passed. */
import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { draws, randomSystem } from '../../support/random-systems.ts'

const kinds = [
  'infinite-baffle',
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series',
  'isobaric',
  'custom'
] as const
const frequenciesHz = [12, 25, 45, 90]

describe('the largest drive of random systems', () => {
  for (const kind of kinds) {
    it(`reaches one limit and passes none: ${kind}`, () => {
      const draw = draws(77)
      for (let round = 0; round < 6; round++) {
        const system = randomSystem(kind, draw)
        const driver = { ...system.driver, xmaxM: draw.between(0.004, 0.03), powerW: draw.between(100, 2000) }
        const bounds = {
          amplifierVoltageV: draw.between(10, 80),
          amplifierCurrentA: draw.between(5, 60),
          airSpeedMPerS: draw.between(10, 40),
          passiveRadiatorXmaxM: draw.between(0.004, 0.03)
        }
        const { result } = computeResponse({ ...system, driver, frequenciesHz, limits: bounds })
        const { maximumVoltageV = [], maximumLevelDb = [], governingLimit = [] } = result.curves
        for (const [k, frequency] of frequenciesHz.entries()) {
          const voltageV = maximumVoltageV[k] as number
          const { seriesOhm } = system.source
          const source = { voltageV, ...(seriesOhm === undefined ? {} : { seriesOhm }) }
          const there = computeResponse({ ...system, driver, source, frequenciesHz: [frequency] }).result
          const { curves, parts = [] } = there
          const of = (...lists: readonly (readonly number[] | undefined)[]) =>
            Math.max(0, ...lists.map(list => list?.[0] ?? 0))
          const named = (part: string, name: 'excursionM' | 'airSpeedMPerS') =>
            parts.filter(one => one.part === part).map(one => one[name])
          const ratios: Record<string, number> = {
            'cone-excursion': of(curves.coneExcursionM, ...named('drivers', 'excursionM')) / driver.xmaxM,
            'passive-radiator-excursion':
              of(
                curves.passiveRadiatorExcursionM,
                curves.frontPassiveRadiatorExcursionM,
                ...named('passive-radiator', 'excursionM')
              ) / bounds.passiveRadiatorXmaxM,
            'port-air-speed':
              of(curves.rearPortAirSpeedMPerS, curves.frontPortAirSpeedMPerS, ...named('port', 'airSpeedMPerS')) /
              bounds.airSpeedMPerS,
            'amplifier-voltage': voltageV / bounds.amplifierVoltageV,
            'amplifier-current': of(curves.currentA) / bounds.amplifierCurrentA
          }
          const governing = governingLimit[k] as string
          const worst = Math.max(...Object.values(ratios))
          expect(worst, `${round} ${frequency} Hz ${governing}`).toBeLessThan(1 + 1e-9)
          if (governing in ratios) expect(ratios[governing]).toBeCloseTo(1, 9)
          expect(curves.levelDb[0]).toBeCloseTo(maximumLevelDb[k] as number, 8)
        }
      }
    })
  }
})
