/** Three hundred random systems of every kind against ngspice on a netlist of their own. */
import { afterAll, describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import type { SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { responseSystem, solveGrid } from '../../../src/domain/enclosure/model/response-system.ts'
import { branchFlow } from '../../../src/domain/network/branch-flow.ts'
import type { ComplexColumn } from '../../../src/numeric/linear/complex-column.ts'
import { type Netlist, netlistOf } from '../../support/netlist/netlist.ts'
import { type Complex, type Reading, simulate } from '../../support/netlist/simulate.ts'
import { draws, randomSystem, type SystemKind } from '../../support/random-systems.ts'

const systemsOf: Readonly<Record<SystemKind, number>> = {
  'infinite-baffle': 15,
  closed: 30,
  vented: 45,
  'passive-radiator': 40,
  'band-pass-4': 40,
  'band-pass-6-parallel': 40,
  'band-pass-6-series': 40,
  isobaric: 25,
  custom: 25
}

/** Demanded: 0.01 dB of level, 0.05 % of impedance, 0.05 % of excursion; air speeds and pressures as the excursion. */
const allowed = { levelDb: 0.01, phaseDeg: 0.06, impedance: 5e-4, excursion: 5e-4, flow: 5e-4, pressure: 5e-4 }
type Worst = Record<keyof typeof allowed, number>
const worstOf = new Map<SystemKind, Worst>()

const size = ({ re, im }: Complex) => Math.hypot(re, im)
const at = (column: ComplexColumn, k: number): Complex => ({ re: column.re[k] as number, im: column.im[k] as number })
const over = (a: Complex, b: Complex): Complex => {
  const square = b.re ** 2 + b.im ** 2
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square }
}
/** |a − b| over |b|, where b is not lost against the largest value of its curve or symmetry makes it nothing. */
function curveApart(ours: readonly Complex[], theirs: readonly Complex[], nothing: number): number {
  const least = Math.max(nothing, 1e-6 * Math.max(...theirs.map(size)))
  return Math.max(
    ...ours.map(({ re, im }, k) => {
      const their = theirs[k] as Complex
      return Math.hypot(re - their.re, im - their.im) / Math.max(size(their), least)
    })
  )
}
/** For one volt: far below whatever moves, flows or presses. */
const NOTHING = { ohm: 1e-6, speed: 1e-8, flow: 1e-9, pressure: 1e-4 }

function deviations(
  request: SystemRequest,
  { probes }: Netlist,
  read: Reading,
  frequenciesHz: readonly number[]
): Worst {
  const system = responseSystem(request, assumptions())
  const solution = solveGrid(system, frequenciesHz)
  const column = (values: ComplexColumn) => frequenciesHz.map((_, k) => at(values, k))
  const turned = read(probes.current).map(({ re, im }) => ({ re: -re, im: -im }))
  const theirOhm = read(probes.terminal).map((voltage, k) => over(voltage, turned[k] as Complex))
  const ourOhm = column(solution.terminal).map((voltage, k) => over(voltage, at(solution.current, k)))
  const theirFlow = read(probes.radiated)
  const ratio = column(solution.radiated).flatMap((flow, k) => {
    const their = theirFlow[k] as Complex
    return size(their) < NOTHING.flow && size(flow) < NOTHING.flow ? [] : [over(flow, their)]
  })
  const openings = [...system.ports, ...system.radiators]
  return {
    levelDb: Math.max(0, ...ratio.map(value => Math.abs(20 * Math.log10(size(value))))),
    phaseDeg: Math.max(0, ...ratio.map(({ re, im }) => Math.abs(Math.atan2(im, re)) * (180 / Math.PI))),
    impedance: curveApart(ourOhm, theirOhm, NOTHING.ohm),
    excursion: Math.max(
      ...solution.velocities.map((velocity, group) =>
        curveApart(column(velocity), read(probes.velocities[group] as string), NOTHING.speed)
      )
    ),
    flow: Math.max(
      0,
      ...openings.map(({ name, branch, count }) => {
        const ours = [...branchFlow(solution, branch)].map(flow => ({ re: flow / count, im: 0 }))
        const theirs = read(probes.openings[name] as string).map(flow => ({ re: size(flow), im: 0 }))
        return curveApart(ours, theirs, NOTHING.flow)
      })
    ),
    pressure: Math.max(
      0,
      ...system.chamberNames.map((name, node) =>
        curveApart(
          column(solution.pressures[node] as ComplexColumn),
          read(probes.chambers[name] as string),
          NOTHING.pressure
        )
      )
    )
  }
}

describe('every kind against a circuit simulator', () => {
  for (const [kind, count] of Object.entries(systemsOf) as [SystemKind, number][]) {
    it(`${kind}: ${count} random systems`, async () => {
      const draw = draws(20_251_125 + kind.length)
      const requests = Array.from({ length: count }, () => randomSystem(kind, draw))
      const air = (request: SystemRequest) => ({
        rho: request.air?.densityKgPerM3 as number,
        c: request.air?.soundSpeedMPerS as number
      })
      const netlists = requests.map((request, index) => netlistOf(request, air(request), `s${index}`))
      const range = { fromHz: draw.between(8, 20), toHz: draw.between(120, 250), points: 7 }
      const read = await simulate(netlists, range)
      const frequenciesHz = Array.from(
        { length: range.points },
        (_, k) => range.fromHz + ((range.toHz - range.fromHz) * k) / (range.points - 1)
      )
      const found = requests.map((request, index) =>
        deviations(request, netlists[index] as Netlist, read, frequenciesHz)
      )
      const names = Object.keys(allowed) as (keyof Worst)[]
      worstOf.set(
        kind,
        Object.fromEntries(names.map(name => [name, Math.max(...found.map(worst => worst[name]))])) as Worst
      )
      for (const [index, worst] of found.entries()) {
        for (const name of names) {
          expect(worst[name], `${name} of ${JSON.stringify(requests[index])}`).toBeLessThan(allowed[name])
        }
      }
    })
  }

  afterAll(() => {
    const rows = [...worstOf].map(([kind, worst]) => {
      const figures = Object.entries(worst).map(([name, value]) => `${name} ${value.toExponential(1)}`)
      return `${kind.padEnd(21)} ${figures.join('  ')}`
    })
    console.log(`Worst deviation from the circuit simulator, per kind:\n${rows.join('\n')}`)
  })
})
