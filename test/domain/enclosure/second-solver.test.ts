/** Eight enclosures against the figures of a separate program. */
import { describe, expect, it } from 'vitest'
import type { DriversRequest, PortRequest } from '../../../src/contract/enclosures/enclosure.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import type { EnclosureRequest } from '../../../src/domain/enclosure/model/request.ts'
import { responseSystem, solveGrid } from '../../../src/domain/enclosure/model/response-system.ts'
import { responseCurves } from '../../../src/domain/enclosure/response/curves.ts'
import { secondSolverDriver, secondSolverRows } from '../../published/second-solver.ts'

const SPEED = 343.2
const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: SPEED }

/** A port of 79 cm² without end correction for the tuning. */
function port(netVolumeM3: number, tuningHz: number): PortRequest {
  const areaM2 = 0.0079
  return { areaM2, endFactor: 0, lengthM: (areaM2 * SPEED ** 2) / ((2 * Math.PI * tuningHz) ** 2 * netVolumeM3) }
}

/** Passive radiators by their compliance relative to the box and their own resonance. */
function radiator(netVolumeM3: number, delta: number, resonanceHz: number, qm: number) {
  const areaM2 = 0.06
  const complianceMPerN = (delta * netVolumeM3) / (air.densityKgPerM3 * SPEED ** 2 * areaM2 ** 2)
  return { areaM2, complianceMPerN, massKg: 1 / ((2 * Math.PI * resonanceHz) ** 2 * complianceMPerN), qm }
}

const bandPass6 = (kind: 'band-pass-6-parallel' | 'band-pass-6-series'): EnclosureRequest => ({
  kind,
  rear: { netVolumeM3: 0.05, port: port(0.05, 28) },
  front: { netVolumeM3: 0.025, port: port(0.025, 60) }
})

type Row = keyof typeof secondSolverRows
const enclosures: Readonly<Record<Row, EnclosureRequest>> = {
  'REG-IB': { kind: 'infinite-baffle' },
  'REG-CB': { kind: 'closed', rear: { netVolumeM3: 0.03 } },
  'REG-VB': { kind: 'vented', rear: { netVolumeM3: 0.05, leakQ: 7, port: port(0.05, 32) } },
  'REG-PR': { kind: 'passive-radiator', rear: { netVolumeM3: 0.05, passiveRadiators: radiator(0.05, 2, 20, 8) } },
  'REG-BP4': {
    kind: 'band-pass-4',
    rear: { netVolumeM3: 0.025 },
    front: { netVolumeM3: 0.02, port: port(0.02, 55) }
  },
  'REG-BP6P': bandPass6('band-pass-6-parallel'),
  'REG-BP6S': bandPass6('band-pass-6-series'),
  'REG-ISO': { kind: 'closed', rear: { netVolumeM3: 0.03 } }
}
const pair: DriversRequest = { count: 2, isobaric: { couplingVolumeM3: 0.004 } }

describe('a separate program', () => {
  for (const [name, rows] of Object.entries(secondSolverRows) as [Row, readonly (readonly number[])[]][]) {
    it(`${name}: level, group delay, excursion and impedance`, () => {
      const system = responseSystem(
        {
          driver: secondSolverDriver,
          ...(name === 'REG-ISO' ? { drivers: pair } : {}),
          enclosure: enclosures[name],
          source: { voltageV: 2.83 },
          air
        },
        assumptions()
      )
      const frequencies = rows.map(([frequency]) => frequency as number)
      const curves = responseCurves(system, solveGrid(system, frequencies), frequencies)
      rows.forEach(([frequency, level, delayMs, excursionMm, ohm], k) => {
        const near = (actual: number | undefined, expected: number | undefined, what: string) => {
          const allowed = 5.5e-5 * Math.abs(expected as number)
          expect(
            Math.abs((actual as number) - (expected as number)),
            `${what} at ${frequency} Hz: ${actual} for ${expected}`
          ).toBeLessThanOrEqual(allowed)
        }
        near(curves.levelDb[k], level, 'level')
        near((curves.groupDelayS[k] as number) * 1e3, delayMs, 'delay')
        near((curves.coneExcursionM[k] as number) * 1e3, excursionMm, 'excursion')
        near(curves.impedanceOhm[k], ohm, 'impedance')
      })
    })
  }
})
