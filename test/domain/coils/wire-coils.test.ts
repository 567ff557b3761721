import { describe, expect, it } from 'vitest'
import type { CoilWiringRequest } from '../../../src/contract/coils/coil-wiring.ts'
import { divisors } from '../../../src/domain/coils/arrangements.ts'
import { wireCoils } from '../../../src/domain/coils/wire-coils.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

const balancedOhm = (request: CoilWiringRequest) =>
  wireCoils(request)
    .result.loads.filter(load => load.balanced)
    .map(load => load.ohm)

function refusal(request: CoilWiringRequest): DesignError {
  try {
    wireCoils(request)
  } catch (error) {
    if (error instanceof DesignError) return error
    throw error
  }
  throw new Error('was not refused')
}

const codes = (request: CoilWiringRequest) => wireCoils(request).cautions.map(({ code }) => code)

describe('coil wiring', () => {
  // Balanced loads by hand: s coils in series, n/s strings. Derived; the same table stands in every textbook on the subject.
  for (const [driverCount, coilsPerDriver, coilOhm, expected] of [
    [1, 2, 2, [1, 4]],
    [1, 2, 4, [2, 8]],
    [2, 1, 4, [2, 8]],
    [2, 2, 2, [0.5, 2, 8]],
    [2, 2, 4, [1, 4, 16]],
    [3, 2, 2, [1 / 3, 4 / 3, 3, 12]],
    [3, 2, 4, [2 / 3, 8 / 3, 6, 24]],
    [4, 2, 2, [0.25, 1, 4, 16]],
    [4, 2, 4, [0.5, 2, 8, 32]],
    [3, 1, 4, [4 / 3, 12]],
    [5, 1, 2, [0.4, 10]]
  ] as const) {
    it(`joins ${driverCount} × ${coilsPerDriver} coils of ${coilOhm} Ω evenly to ${expected.map(ohm => ohm.toPrecision(3))} Ω`, () => {
      const found = balancedOhm({ driverCount, coilsPerDriver, coilOhm })
      expect(found).toHaveLength(expected.length)
      for (const [index, ohm] of expected.entries()) expect(found[index]).toBeCloseTo(ohm, 12)
    })
  }

  it('finds s²/n of the coil for every divisor s of up to 64 coils, each with a network that presents it', () => {
    for (const [driverCount, coilsPerDriver] of [
      [16, 4],
      [12, 2],
      [5, 3],
      [7, 4]
    ] as const) {
      const n = driverCount * coilsPerDriver
      const { loads } = wireCoils({ driverCount, coilsPerDriver, coilOhm: 4 }).result
      expect(loads.map(load => load.ohm)).toEqual(divisors(n).map(s => (4 * s * s) / n))
      expect(loads.every(load => load.balanced)).toBe(true)
    }
  })

  it('divides 800 W among two coils and two drivers', () => {
    const { result } = wireCoils({ driverCount: 2, coilsPerDriver: 1, coilOhm: 4, totalPowerW: 800 })
    expect(result).toMatchObject({ coilPowerW: 400, driverPowerW: 400, networkCount: 2, distinctLoadCount: 2 })
  })

  it('lists for one to six coils exactly the loads that sums and parallels of smaller ones make (second path)', () => {
    type Fraction = readonly [number, number]
    const lowest = ([a, b]: Fraction): string => {
      const divisor = (x: number, y: number): number => (y === 0 ? x : divisor(y, x % y))
      return `${a / divisor(a, b)}/${b / divisor(a, b)}`
    }
    const known: Map<string, Fraction>[] = [new Map(), new Map([['1/1', [1, 1]]])]
    for (let n = 1; n <= 6; n++) {
      const found = known[n] ?? new Map<string, Fraction>()
      for (let k = 1; k <= n / 2; k++) {
        for (const [a, b] of known[k]?.values() ?? []) {
          for (const [c, d] of known[n - k]?.values() ?? []) {
            const series: Fraction = [a * d + c * b, b * d]
            const parallel: Fraction = [a * c, a * d + c * b]
            for (const each of [series, parallel]) found.set(lowest(each), each)
          }
        }
      }
      known[n] = found
      const { loads } = wireCoils({ driverCount: n, coilsPerDriver: 1, coilOhm: 3.7 }).result
      expect(loads.map(({ ratio }) => ratio).sort()).toEqual([...found.keys()].sort())
      const ohms = loads.map(({ ohm }) => ohm)
      expect(ohms).toEqual([...ohms].sort((x, y) => x - y))
    }
  })

  it('names unequal shares: 4 Ω in series with two in parallel burns 2/3 in one coil (hand calculation)', () => {
    const { loads } = wireCoils({ driverCount: 3, coilsPerDriver: 1, coilOhm: 4, totalPowerW: 600 }).result
    const load = loads.find(({ ratio }) => ratio === '3/2')
    expect(load).toMatchObject({ ohm: 6, balanced: false, hottestCoilPowerW: 400 })
    expect(load?.shares?.map(share => share.toFixed(4))).toEqual(['0.6667', '0.1667', '0.1667'])
  })

  it('shares between unlike coils by their resistance', () => {
    const { result, cautions } = wireCoils({ driverCount: 2, coilsPerDriver: 1, coilsOhm: [4, 2], totalPowerW: 300 })
    expect(result.loads.map(({ ohm, hottestCoilPowerW }) => [ohm, hottestCoilPowerW])).toEqual([
      [4 / 3, 200],
      [6, 200]
    ])
    expect(result.arrangements).toBeUndefined()
    expect(cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(['unlike-coils', 'unequal-power']))
  })

  it('finds the rare balance of unlike coils: 2 Ω with two of 8 Ω in parallel behind it takes a third each', () => {
    // I²·2 = (I/2)²·8 for each of the two, by hand.
    const { result } = wireCoils({ driverCount: 3, coilsPerDriver: 1, coilsOhm: [2, 8, 8] })
    expect(result.loads.find(({ ohm }) => ohm === 6)).toMatchObject({ balanced: true })
    expect(result.chosen?.ohm).toBe(6)
  })

  it('never chooses a load below the limit, and takes the lowest without a target', () => {
    for (const minimumOhm of [0.5, 1, 1.01, 2, 3.9, 4, 9, 15]) {
      const { result } = wireCoils({ driverCount: 2, coilsPerDriver: 2, coilOhm: 4, minimumOhm })
      const expected = [1, 4, 16].find(ohm => ohm >= minimumOhm)
      expect(result.chosen?.ohm).toBe(expected)
      expect(result.lowestAllowedOhm).toBe(expected)
      expect(result.loads.every(load => load.allowed === load.ohm >= minimumOhm)).toBe(true)
    }
  })

  it('halves the load for each channel of a bridged pair: channels for 2 Ω need 4 Ω', () => {
    const request = { driverCount: 2, coilsPerDriver: 2, coilOhm: 4, channelMinimumOhm: 2 }
    expect(wireCoils(request).result).toMatchObject({ lowestLoadOhm: 4, lowestAllowedOhm: 4 })
    expect(wireCoils({ ...request, channelMinimumOhm: 2.01 }).result.lowestAllowedOhm).toBe(16)
    expect(wireCoils({ ...request, minimumOhm: 5 }).result.lowestLoadOhm).toBe(5)
  })

  it('takes the nearest in ratio, not in ohms: to 2.9 Ω it is 1 Ω or 8 Ω by a factor', () => {
    const request = { driverCount: 2, coilsPerDriver: 1, targetOhm: 2.9 }
    // Loads 1 and 4: 2.9/1 = 2.9, 4/2.9 = 1.38.
    expect(wireCoils({ ...request, coilOhm: 2 }).result.nearestOhm).toBe(4)
    // Loads 2 and 8, target 3.9: 1.95 against 2.05; target 4.1: 2.05 against 1.95.
    expect(wireCoils({ ...request, coilOhm: 4, targetOhm: 3.9 }).result.nearestOhm).toBe(2)
    expect(wireCoils({ ...request, coilOhm: 4, targetOhm: 4.1 }).result.nearestOhm).toBe(8)
  })

  it('stops when no load is allowed, and still says what there is', () => {
    const { result, cautions } = wireCoils({ driverCount: 1, coilsPerDriver: 1, coilOhm: 2, minimumOhm: 4 })
    expect(result.chosen).toBeUndefined()
    expect(result.lowestAllowedOhm).toBeUndefined()
    expect(result.loads).toHaveLength(1)
    expect(cautions).toContainEqual(
      expect.objectContaining({ code: 'no-allowed-load', level: 'stop', figures: { highestOhm: 2, minimumOhm: 4 } })
    )
  })

  it('warns of the dip, of coils left open, of drivers in series and of a missed target', () => {
    const two = { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }
    expect(codes({ ...two, minimumOhm: 2 })).toContain('impedance-dip')
    expect(codes({ ...two, minimumOhm: 1.6 })).not.toContain('impedance-dip')
    expect(codes(two)).not.toContain('all-coils-driven')
    expect(codes({ ...two, coilsPerDriver: 2 })).toContain('all-coils-driven')
    expect(codes({ ...two, targetOhm: 8 })).toEqual(['drivers-in-series'])
    expect(codes({ ...two, targetOhm: 2 })).toEqual([])
    expect(codes({ ...two, targetOhm: 3 })).toContain('target-off')
  })

  it('echoes the target it had to assume', () => {
    expect(wireCoils({ driverCount: 2, coilsPerDriver: 2, coilOhm: 2 }).assumed).toEqual([
      expect.objectContaining({ field: 'targetOhm', value: 2 })
    ])
  })

  it('joins each terminal exactly once and keeps plus towards the amplifier', () => {
    const { chosen } = wireCoils({ driverCount: 3, coilsPerDriver: 2, coilOhm: 4, targetOhm: 6 }).result
    const terminals = chosen?.joints.flatMap(joint => joint.terminals) ?? []
    expect(terminals).toHaveLength(12)
    expect(new Set(terminals).size).toBe(12)
    expect(chosen?.joints.find(joint => joint.name === 'amplifier +')?.terminals.every(t => t.endsWith('+'))).toBe(true)
    expect(chosen?.joints.find(joint => joint.name === 'amplifier -')?.terminals.every(t => t.endsWith('-'))).toBe(true)
  })

  it('joins direct-current resistances like the ratings: 2 × 1.7 Ω in series, two such in parallel, 1.7 Ω (hand calculation)', () => {
    const request = { driverCount: 2, coilsPerDriver: 2, coilOhm: 2, targetOhm: 2, coilReOhm: 1.7 }
    const { chosen } = wireCoils(request).result
    expect(chosen?.reOhm).toBeCloseTo(1.7, 12)
    expect(wireCoils({ ...request, targetOhm: 8 }).result.chosen?.reOhm).toBeCloseTo(4 * 1.7, 12)
    expect(chosen?.steps.some(text => text.includes('1.7 Ω and the resistance of the meter leads'))).toBe(true)
    const { cable } = wireCoils({ ...request, totalPowerW: 100, cable: { lengthM: 2 } }).result
    expect(cable?.qesFactor).toBeCloseTo(1 + (cable?.loopOhm ?? 0) / 1.7, 12)
    expect(refusal({ driverCount: 2, coilsPerDriver: 1, coilsOhm: [4, 2], coilReOhm: 3 }).faults[0]?.field).toBe(
      'coilReOhm'
    )
  })

  it('refuses what does not determine the coils', () => {
    expect(refusal({ driverCount: 1, coilsPerDriver: 1 }).code).toBe('missing-input')
    const both = refusal({ driverCount: 1, coilsPerDriver: 1, coilOhm: 4, coilsOhm: [4] })
    expect([both.code, both.faults[0]?.field]).toEqual(['conflicting-input', 'coilsOhm'])
    expect(refusal({ driverCount: 2, coilsPerDriver: 1, coilsOhm: [4] }).code).toBe('conflicting-input')
    expect(refusal({ driverCount: 7, coilsPerDriver: 1, coilsOhm: [4, 4, 4, 4, 4, 4, 2] }).code).toBe('out-of-range')
    expect(refusal({ driverCount: 1, coilsPerDriver: 1, coilOhm: 0 }).code).toBe('not-positive')
  })

  it('takes seven like coils from a list as well', () => {
    const request = { driverCount: 7, coilsPerDriver: 1, coilsOhm: [4, 4, 4, 4, 4, 4, 4] }
    expect(balancedOhm(request)).toEqual([4 / 7, 28])
  })
})

describe('coils of five impedances', () => {
  const request = { driverCount: 5, coilsPerDriver: 1, coilsOhm: [4, 14, 2, 4.7, 0.9] }

  /** Second way: every split of a set in two, joined in series or in parallel; a set of n coils has all its networks among them. */
  function everyOhm(coilsOhm: readonly number[]): readonly number[] {
    if (coilsOhm.length === 1) return coilsOhm
    const [first = 0, ...others] = coilsOhm
    const found = new Map<string, number>()
    for (let bits = 0; bits < 2 ** others.length - 1; bits++) {
      const here = others.filter((_, i) => bits & (1 << i))
      const there = others.filter((_, i) => !(bits & (1 << i)))
      for (const a of everyOhm([first, ...here])) {
        for (const b of everyOhm(there)) {
          for (const ohm of [a + b, (a * b) / (a + b)]) found.set(ohm.toPrecision(12), ohm)
        }
      }
    }
    return [...found.values()]
  }
  const all = everyOhm(request.coilsOhm)
  const nearest = (loads: readonly number[], target: number) =>
    loads.reduce((a, b) => (Math.abs(Math.log(b / target)) < Math.abs(Math.log(a / target)) ? b : a))

  it('looks at every load, also at those that are not shown', () => {
    const { result } = wireCoils({ ...request, minimumOhm: 1, targetOhm: 0.45 })
    expect(result.distinctLoadCount).toBe(all.length)
    expect(result.loads.length).toBeLessThan(all.length)
    expect(result.nearestOhm).toBeCloseTo(nearest(all, 0.45), 9)
    expect(result.lowestAllowedOhm).toBeCloseTo(Math.min(...all.filter(ohm => ohm >= 1)), 9)
  })

  it('calls the most even load by that name, and names the nearest beside it', () => {
    const { result, cautions } = wireCoils({ ...request, minimumOhm: 1, targetOhm: 0.45 })
    const off = cautions.find(({ code }) => code === 'target-off')
    const allowed = nearest(
      all.filter(ohm => ohm >= 1),
      0.45
    )
    expect(off?.figures?.nearestOhm).toBeCloseTo(allowed, 9)
    expect(result.chosen?.ohm).toBeGreaterThan(allowed)
    expect(off?.message).toMatch(
      /^The most even load that can be used, .* the nearest, .* shares the power less evenly\.$/
    )
  })

  it('finds the one load above a limit that none of the shown reaches', () => {
    // All in series: 25.6 Ω, whose coil of 14 Ω takes 14/25.6 of the power.
    const { result } = wireCoils({ ...request, minimumOhm: 25 })
    expect(result.chosen?.ohm).toBeCloseTo(25.6, 9)
    const below = wireCoils({ ...request, minimumOhm: 26 }).cautions.find(({ code }) => code === 'no-allowed-load')
    expect(below?.figures?.highestOhm).toBeCloseTo(25.6, 9)
  })
})
