/** The joints that are soldered, measured with a meter: the nodes solved by Kirchhoff’s law give the load that was promised. */
import { describe, expect, it } from 'vitest'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { wireCoils } from '../../../src/domain/coils/wire-coils.ts'

interface Joint {
  readonly name: string
  readonly terminals: readonly string[]
}

/** Resistance between the first two joints, each coil one resistor of 1 between the joints its ends lie in. */
function measured(joints: readonly Joint[]): number {
  const ends = new Map<string, number[]>()
  joints.forEach(({ terminals }, joint) => {
    for (const terminal of terminals) {
      const coil = terminal.replace(/ [+−-]$/, '')
      ends.set(coil, [...(ends.get(coil) ?? []), joint])
    }
  })
  const n = joints.length
  const rows = Array.from({ length: n }, () => Array<number>(n + 1).fill(0))
  for (const [coil, [from = -1, to = -1, more]] of ends) {
    expect(more, `${coil} has two ends`).toBeUndefined()
    expect(to, `${coil} has two ends`).toBeGreaterThanOrEqual(0)
    for (const [a, b] of [
      [from, to],
      [to, from]
    ] as const) {
      const row = rows[a] as number[]
      row[a] = (row[a] ?? 0) + 1
      row[b] = (row[b] ?? 0) - 1
    }
  }
  // one ampere into joint 0, joint 1 at nought
  ;(rows[0] as number[])[n] = 1
  rows[1] = Array.from({ length: n + 1 }, (_, k) => Number(k === 1))
  for (let i = 0; i < n; i++) {
    const pivot = rows.findIndex((row, at) => at >= i && Math.abs(row[i] ?? 0) > 1e-9)
    const [one, other] = [rows[i] as number[], rows[pivot] as number[]]
    rows[i] = other
    rows[pivot] = one
    for (let k = 0; k < n; k++) {
      if (k === i) continue
      const share = ((rows[k] as number[])[i] ?? 0) / (other[i] as number)
      rows[k] = (rows[k] as number[]).map((value, at) => value - share * (other[at] ?? 0))
    }
  }
  return (rows[0]?.[n] ?? 0) / (rows[0]?.[0] ?? 1)
}

describe('joints', () => {
  for (const [driverCount, coils] of [
    [1, 2],
    [2, 2],
    [3, 1],
    [4, 2],
    [2, 4]
  ] as const)
    it(`of ${driverCount} × ${coils} coils measure what the chosen wiring promises`, () => {
      let promised = 0
      for (const minimumOhm of [0.5, 1, 2, 4, 8]) {
        const { chosen } = wireCoils({ driverCount, coilsPerDriver: coils, coilOhm: 4, minimumOhm }).result
        if (chosen === undefined) continue
        promised++
        expect(4 * measured(chosen.joints)).toBeCloseTo(chosen.ohm, 9)
      }
      expect(promised).toBeGreaterThan(1)
    })

  it('of the best match measure its load, whatever the amplifier bears', () => {
    let promised = 0
    for (const minimumOhm of [1, 2, 4])
      for (const [driverCount, coils, coilOhm] of [
        [1, 2, 4],
        [2, 2, 2],
        [4, 1, 4],
        [2, 1, 4]
      ] as const) {
        const ratings = [1, 2, 4, 8]
          .filter(ohm => ohm >= minimumOhm)
          .map(loadOhm => ({ loadOhm, powerW: 800 / loadOhm }))
        const amplifier = { ratings, minimumOhm, channels: 2 }
        const { best, wiring } = matchAmplifier({
          amplifier,
          driver: { powerW: 300, coils, coilOhm },
          driverCount
        }).result
        if (best === undefined || wiring === undefined) continue
        promised++
        expect(coilOhm * measured(wiring.joints)).toBeCloseTo(best.loadOhm, 9)
      }
    expect(promised).toBeGreaterThan(8)
  })

  it('of one amplifier’s power share it: a coil of n alike takes 1/n', () => {
    const { loads } = wireCoils({ driverCount: 2, coilsPerDriver: 2, coilOhm: 4, totalPowerW: 1000 }).result
    for (const { balanced, coilPowerW, hottestCoilPowerW = 0, shares } of loads)
      if (balanced) expect(coilPowerW).toBeCloseTo(250, 9)
      else expect(hottestCoilPowerW).toBeCloseTo(1000 * Math.max(...(shares ?? [])), 9)
  })
})
