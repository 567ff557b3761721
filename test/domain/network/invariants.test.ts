/** What must hold for any network, whatever the enclosure: continuity, energy, reciprocity, linearity, analytic slopes. */
import { describe, expect, it } from 'vitest'
import type { SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { OUTSIDE } from '../../../src/domain/network/network.ts'
import type { ComplexColumn } from '../../../src/numeric/linear/complex-column.ts'
import { add, apart, type Complex, complex, conjugate, divide, multiply, scale, size } from '../../support/complex.ts'
import { draws, randomSystem, type SystemKind } from '../../support/random-systems.ts'
import { type Solved, solved } from '../../support/solved.ts'

const kinds: readonly SystemKind[] = [
  'infinite-baffle',
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series',
  'isobaric',
  'custom'
]
const frequenciesHz = [4, 11, 23, 37, 52, 81, 140, 290]
const each = (check: (request: SystemRequest, seed: number) => void) => {
  for (const kind of kinds) {
    it(kind, () => {
      const draw = draws(77 + kind.length)
      for (let n = 0; n < 12; n++) check(randomSystem(kind, draw), n)
    })
  }
}

/** Explicit sum over cones, ports, radiators and leaks that end outside, and its largest term. */
function explicitFlow({ system, solution, at, flow }: Solved, k: number) {
  const terms: Complex[] = []
  system.network.drivers.forEach(({ front, rear, driver, count }, group) => {
    const swept = scale(at(solution.velocities[group] as ComplexColumn, k), driver.sdM2 * count)
    if (front === OUTSIDE) terms.push(swept)
    if (rear === OUTSIDE) terms.push(scale(swept, -1))
  })
  for (const branch of system.network.branches) {
    if (branch.to === OUTSIDE) terms.push(flow(branch, k))
    if (branch.from === OUTSIDE) terms.push(scale(flow(branch, k), -1))
  }
  return { sum: add(...terms), largest: Math.max(0, ...terms.map(size)) }
}

describe('continuity: what radiates is the sum over cones, ports, radiators and leaks', () => {
  each(request => {
    const run = solved(request, frequenciesHz)
    frequenciesHz.forEach((_, k) => {
      const { sum, largest } = explicitFlow(run, k)
      const ours = run.at(run.solution.radiated, k)
      expect(size(add(ours, scale(sum, -1)))).toBeLessThanOrEqual(1e-10 * largest)
    })
  })
})

/** Σ of what turns to heat: coils, suspensions, absorption, friction and leaks. */
function losses({ system, solution, at, pressure, flow }: Solved, k: number): number {
  const { chambers, branches, drivers } = system.network
  const omega = solution.omegas[k] as number
  const coils = drivers.map(({ driver, count, front, rear }, group) => {
    const u = at(solution.velocities[group] as ComplexColumn, k)
    const zm = complex(driver.rmsKgPerS, omega * driver.mmsKg - 1 / (omega * driver.cmsMPerN))
    const delta = add(pressure(front, k), scale(pressure(rear, k), -1))
    const current = scale(add(multiply(zm, u), scale(delta, driver.sdM2)), 1 / driver.blTm)
    return count * (size(current) ** 2 * driver.coil.reOhm + size(u) ** 2 * driver.rmsKgPerS)
  })
  const air = chambers.map(({ complianceM3PerPa: c, absorptionPaSPerM3: r }, node) => {
    const through = divide(pressure(node, k), complex(r, -1 / (omega * c)))
    return r * size(through) ** 2
  })
  const friction = branches.map(branch => (branch.resistancePaSPerM3 / branch.count) * size(flow(branch, k)) ** 2)
  return [...coils, ...air, ...friction].reduce((sum, watts) => sum + watts, 0)
}

describe('energy: the power that enters is the heat in coils, suspensions, air and leaks', () => {
  for (const kind of kinds) {
    it(kind, () => {
      const draw = draws(99 + kind.length)
      for (let n = 0; n < 12; n++) {
        const request = randomSystem(kind, draw)
        const {
          leH,
          leParallelOhm: _,
          le2H: __,
          le2ParallelOhm: ___,
          leFactor: ____,
          leExponent: _____,
          ...driver
        } = request.driver
        const run = solved({ ...request, driver: { ...driver, ...(leH === undefined ? {} : { leH }) } }, frequenciesHz)
        frequenciesHz.forEach((_, k) => {
          const entering = multiply(run.at(run.solution.terminal, k), conjugate(run.at(run.solution.current, k))).re
          expect(losses(run, k) / entering).toBeCloseTo(1, 9)
        })
      }
    })
  }
})

describe('reciprocity: two rooms seen from each other', () => {
  it('pushes as much air pressure into B from A as into A from B', () => {
    const draw = draws(5)
    for (let n = 0; n < 20; n++) {
      const { between } = draw
      const enclosure = (front: string) => ({
        kind: 'custom' as const,
        chambers: ['a', 'b', 'c'].map(name => ({ name, netVolumeM3: between(0.02, 0.1) })),
        ports: [
          { name: 'ab', from: 'a', to: 'b', areaM2: between(0.004, 0.02), lengthM: between(0.1, 0.4) },
          { name: 'bc', from: 'b', to: 'c', areaM2: between(0.004, 0.02), lengthM: between(0.1, 0.4) },
          { name: 'out', from: 'c', to: 'outside', areaM2: between(0.004, 0.02), lengthM: between(0.1, 0.4) }
        ],
        driverGroups: [{ name: 'drive', front, rear: 'outside' }]
      })
      const shape = enclosure('a')
      const request: SystemRequest = {
        driver: { fsHz: 30, qms: 4, qes: 0.5, vasM3: 0.05, sdM2: 0.04, reOhm: 3 },
        enclosure: shape,
        source: { voltageV: 1 }
      }
      const other: SystemRequest = {
        ...request,
        enclosure: { ...shape, driverGroups: [{ name: 'drive', front: 'c', rear: 'outside' }] }
      }
      const [one, two] = [solved(request, frequenciesHz), solved(other, frequenciesHz)]
      frequenciesHz.forEach((_, k) => {
        // Transfer impedance: pressure there over the flow that makes it here.
        const swept = (run: Solved) => scale(run.at(run.solution.velocities[0] as ComplexColumn, k), 0.04)
        const fromA = divide(one.pressure(2, k), swept(one))
        const fromC = divide(two.pressure(0, k), swept(two))
        expect(apart(fromA, fromC)).toBeLessThan(1e-9)
      })
    }
  })
})

describe('slopes: the derivative of the solve is the derivative', () => {
  each(request => {
    for (const frequency of [17, 44, 130]) {
      const step = 1e-4
      const run = solved(request, [frequency * (1 - step), frequency, frequency * (1 + step)])
      const width = 2 * step * (run.solution.omegas[1] as number)
      const columns = [
        run.solution.radiated,
        run.solution.current,
        ...run.solution.velocities,
        ...run.solution.pressures
      ]
      for (const column of columns) {
        const difference = scale(add(run.at(column, 2), scale(run.at(column, 0), -1)), 1 / width)
        const analytic = complex(column.dre[1] as number, column.dim[1] as number)
        const natural = size(run.at(column, 1)) / (run.solution.omegas[1] as number)
        expect(size(add(analytic, scale(difference, -1)))).toBeLessThanOrEqual(2e-4 * Math.max(size(analytic), natural))
      }
    }
  })
})
