/** Where formulas break: lossless at the tuning, no inductance, extreme Q, the lowest frequencies, and the limits of the kinds. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { EnclosureRequest, SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { responseSystem } from '../../../src/domain/enclosure/model/response-system.ts'

const driver = { fsHz: 31, qms: 4.7, qes: 0.43, vasM3: 0.066, sdM2: 0.047, reOhm: 3.3 }
const ask = (enclosure: EnclosureRequest, more: Partial<SystemRequest> = {}): SystemRequest => ({
  driver,
  enclosure,
  source: { voltageV: 5 },
  ...more
})
const curvesAt = (request: SystemRequest, frequenciesHz: readonly number[]) =>
  computeResponse({ ...request, frequenciesHz }).result.curves
const far = [4, 9, 17, 25, 31, 40, 62, 90, 150, 280]

const port = { areaM2: 0.009, lengthM: 0.28 }
const ventedBox: EnclosureRequest = { kind: 'vented', rear: { netVolumeM3: 0.06, port } }
const unit = { areaM2: 0.06, massKg: 0.4, complianceMPerN: 4e-4 }
const radiatorBox: EnclosureRequest = { kind: 'passive-radiator', rear: { netVolumeM3: 0.05, passiveRadiators: unit } }

/** Largest difference of two sets of curves: decibels, and shares of impedance and excursion. */
function largestDifference(one: SystemRequest, other: SystemRequest): number {
  const [a, b] = [curvesAt(one, far), curvesAt(other, far)]
  return Math.max(
    ...far.flatMap((_, k) => [
      Math.abs((a.levelDb[k] as number) - (b.levelDb[k] as number)) / 8.7,
      Math.abs((a.impedanceOhm[k] as number) / (b.impedanceOhm[k] as number) - 1),
      Math.abs((a.coneExcursionM[k] as number) / (b.coneExcursionM[k] as number) - 1)
    ])
  )
}

describe('lossless, exactly at the tuning', () => {
  it('a port holds the cone still and shows the coil alone', () => {
    const tuning = responseSystem(ask(ventedBox), assumptions()).chambers.rear?.lossHz as number
    const { coneExcursionM, impedanceOhm, levelDb, groupDelayS } = curvesAt(ask(ventedBox), [tuning])
    expect(coneExcursionM[0]).toBeLessThan(1e-14)
    expect(impedanceOhm[0]).toBeCloseTo(driver.reOhm, 12)
    expect(levelDb[0]).toBeGreaterThan(80)
    expect(Number.isFinite(groupDelayS[0])).toBe(true)
  })

  it('a passive radiator is a short at its own resonance: silence, and the driver as if in free air', () => {
    const resonance = 1 / (2 * Math.PI * Math.sqrt(unit.massKg * unit.complianceMPerN))
    const curves = curvesAt(ask(radiatorBox), [resonance])
    expect(curves.levelDb[0]).toBeLessThan(-100)
    const open = curvesAt(ask({ kind: 'infinite-baffle' }), [resonance])
    expect(curves.coneExcursionM[0]).toBeCloseTo(open.coneExcursionM[0] as number, 12)
    expect(curves.impedanceOhm[0]).toBeCloseTo(open.impedanceOhm[0] as number, 9)
    // All the cone pushes goes through the radiator.
    const pushed = (curves.coneExcursionM[0] as number) * driver.sdM2
    expect((curves.passiveRadiatorExcursionM?.[0] as number) * unit.areaM2).toBeCloseTo(pushed, 9)
  })

  it('stays finite for every kind, extreme Q, no inductance and the lowest frequencies', () => {
    const rear = { netVolumeM3: 0.05, port }
    const front = { netVolumeM3: 0.03, port: { areaM2: 0.012, lengthM: 0.15 } }
    const enclosures: readonly EnclosureRequest[] = [
      { kind: 'infinite-baffle' },
      { kind: 'closed', rear: { netVolumeM3: 0.03 } },
      ventedBox,
      radiatorBox,
      { kind: 'band-pass-4', rear: { netVolumeM3: 0.03 }, front },
      { kind: 'band-pass-6-parallel', rear, front },
      { kind: 'band-pass-6-series', rear, front }
    ]
    for (const enclosure of enclosures) {
      for (const q of [0.05, 1000]) {
        const system = ask(enclosure, { driver: { ...driver, qms: q, qes: q } })
        const { result } = computeResponse({ ...system, frequenciesHz: [0.1, 0.5, 1, 5, 20_000] })
        const numbers = JSON.stringify(result, (_, value) => (Number.isNaN(value) ? 'NaN' : value))
        expect(numbers).not.toMatch(/NaN|null|Infinity/)
      }
    }
  })
})

describe('slopes far below', () => {
  const slope = (enclosure: EnclosureRequest) => {
    const { levelDb } = curvesAt(ask(enclosure), [0.1, 0.2])
    return (levelDb[1] as number) - (levelDb[0] as number)
  }
  it('12 dB an octave closed, 24 vented, through a leak as well: the leak radiates', () => {
    expect(slope({ kind: 'closed', rear: { netVolumeM3: 0.03 } })).toBeCloseTo(40 * Math.log10(2), 2)
    expect(slope(ventedBox)).toBeCloseTo(80 * Math.log10(2), 2)
    expect(slope({ kind: 'vented', rear: { netVolumeM3: 0.06, port, leakQ: 7 } })).toBeCloseTo(80 * Math.log10(2), 2)
  })
})

describe('limits of the kinds', () => {
  it('a huge closed box is an infinite baffle', () => {
    const huge = ask({ kind: 'closed', rear: { netVolumeM3: 1e6 } })
    expect(largestDifference(huge, ask({ kind: 'infinite-baffle' }))).toBeLessThan(1e-6)
  })

  it('a blocked port is a closed box, in vented and band-pass boxes alike', () => {
    const blocked = { areaM2: 1e-12, lengthM: 100, endFactor: 0 }
    const closed = ask({ kind: 'closed', rear: { netVolumeM3: 0.06 } })
    expect(largestDifference(ask({ kind: 'vented', rear: { netVolumeM3: 0.06, port: blocked } }), closed)).toBeLessThan(
      1e-6
    )
    const front = { netVolumeM3: 0.03, port }
    const six = ask({ kind: 'band-pass-6-parallel', rear: { netVolumeM3: 0.06, port: blocked }, front })
    const four = ask({ kind: 'band-pass-4', rear: { netVolumeM3: 0.06 }, front })
    expect(largestDifference(six, four)).toBeLessThan(1e-6)
  })

  it('a limp passive radiator of equal mass is a port', () => {
    const { branch } = responseSystem(ask(ventedBox), assumptions()).ports[0] as { branch: { massKgPerM4: number } }
    const limp = { areaM2: 0.05, massKg: branch.massKgPerM4 * 0.05 ** 2, complianceMPerN: 1e6 }
    const box = ask({ kind: 'passive-radiator', rear: { netVolumeM3: 0.06, passiveRadiators: limp } })
    expect(largestDifference(box, ask(ventedBox))).toBeLessThan(1e-5)
  })

  it('four drivers, two in series, in four times the box with four ports: the same but 12 dB louder for twice the voltage', () => {
    const four = ask(
      { kind: 'vented', rear: { netVolumeM3: 0.24, port: { ...port, count: 4 } } },
      { drivers: { count: 4, inSeries: 2 }, source: { voltageV: 10 } }
    )
    const [a, b] = [curvesAt(four, far), curvesAt(ask(ventedBox), far)]
    far.forEach((_, k) => {
      expect((a.levelDb[k] as number) - (b.levelDb[k] as number)).toBeCloseTo(20 * Math.log10(4), 9)
      expect((a.coneExcursionM[k] as number) / (b.coneExcursionM[k] as number)).toBeCloseTo(1, 9)
      expect((a.impedanceOhm[k] as number) / (b.impedanceOhm[k] as number)).toBeCloseTo(1, 9)
      expect((a.rearPortAirSpeedMPerS?.[k] as number) / (b.rearPortAirSpeedMPerS?.[k] as number)).toBeCloseTo(1, 9)
    })
  })

  it('an isobaric pair around next to no air is one driver of twice the mass and half the Vas (driverWiring)', () => {
    for (const [connection, ohms] of [
      ['parallel', 0.5],
      ['series', 2]
    ] as const) {
      const pair = ask(
        { kind: 'closed', rear: { netVolumeM3: 0.03 } },
        { drivers: { count: 2, isobaric: { couplingVolumeM3: 1e-9, connection } } }
      )
      const one = ask(
        { kind: 'closed', rear: { netVolumeM3: 0.03 } },
        { driver: { ...driver, vasM3: driver.vasM3 / 2, reOhm: driver.reOhm * ohms } }
      )
      expect(largestDifference(pair, one)).toBeLessThan(1e-5)
      const [two, alone] = [pair, one].map(
        request => computeResponse({ ...request, frequenciesHz: far }).result.scalars
      )
      for (const name of ['fcHz', 'qtc', 'alpha', 'referenceLevelDb', 'f3Hz'] as const) {
        expect((two?.[name] as number) / (alone?.[name] as number), name).toBeCloseTo(1, 5)
      }
    }
  })

  it('scaling every frequency by 1.7 and every volume by 3 leaves the shape of the curves', () => {
    const [up, wide] = [1.7, 3]
    const scaled = ask(
      {
        kind: 'vented',
        rear: {
          netVolumeM3: 0.06 * wide,
          leakQ: 7,
          port: { areaM2: 0.01 * wide, endFactor: 0, lengthM: 0.3 / up ** 2 }
        }
      },
      { driver: { ...driver, fsHz: driver.fsHz * up, vasM3: driver.vasM3 * wide } }
    )
    const plain = ask({
      kind: 'vented',
      rear: { netVolumeM3: 0.06, leakQ: 7, port: { areaM2: 0.01, endFactor: 0, lengthM: 0.3 } }
    })
    const [a, b] = [
      curvesAt(
        scaled,
        far.map(f => f * up)
      ),
      curvesAt(plain, far)
    ]
    const lift = (a.levelDb[0] as number) - (b.levelDb[0] as number)
    far.forEach((_, k) => {
      expect((a.levelDb[k] as number) - (b.levelDb[k] as number)).toBeCloseTo(lift, 9)
      expect(a.impedanceOhm[k]).toBeCloseTo(b.impedanceOhm[k] as number, 9)
      expect((a.groupDelayS[k] as number) * up).toBeCloseTo(b.groupDelayS[k] as number, 9)
    })
  })

  it('a custom network of the same parts is the preset', () => {
    const front = { netVolumeM3: 0.03, port: { areaM2: 0.012, lengthM: 0.15 } }
    const preset = ask({ kind: 'band-pass-6-series', rear: { netVolumeM3: 0.05, port }, front })
    const custom = ask({
      kind: 'custom',
      chambers: [
        { name: 'inner', netVolumeM3: 0.05 },
        { name: 'outer', netVolumeM3: 0.03 }
      ],
      ports: [
        { name: 'inner port', from: 'inner', to: 'outer', ...port },
        { name: 'mouth', from: 'outer', to: 'outside', ...front.port }
      ],
      driverGroups: [{ name: 'cone', front: 'outer', rear: 'inner' }]
    })
    expect(largestDifference(custom, preset)).toBeLessThan(1e-12)
  })
})
