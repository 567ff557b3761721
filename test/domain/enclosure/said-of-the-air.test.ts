/** What a response says of the air in its chambers: losses nobody stated, a spring driven too far, a chamber too small. */
import { describe, expect, it } from 'vitest'
import type { DriversRequest } from '../../../src/contract/enclosures/enclosure.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { EnclosureRequest, ResponseRequest } from '../../../src/domain/enclosure/model/request.ts'
import { draws } from '../../support/random-systems.ts'

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
const stiffnessPa = 1.2041 * 343.2 ** 2
const driver = { fsHz: 28, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.049, reOhm: 3.4, xmaxM: 0.014 }

const ask = (enclosure: EnclosureRequest, request: Partial<ResponseRequest> = {}) =>
  computeResponse({ driver, enclosure, air, source: { voltageV: 1 }, frequenciesHz: [20, 34, 60], ...request })
const codes = ({ cautions }: ReturnType<typeof ask>) => cautions.map(({ code }) => code)

/** A port of the mass that tunes so much air to so many hertz. */
function tuned(netVolumeM3: number, tuningHz: number) {
  const areaM2 = 0.012
  return { areaM2, lengthM: (areaM2 * 343.2 ** 2) / (netVolumeM3 * (2 * Math.PI * tuningHz) ** 2), endFactor: 0 }
}

describe('losses that nobody stated', () => {
  it('are echoed, each where it would stand', () => {
    const port = tuned(0.05, 34)
    const fields = (enclosure: EnclosureRequest) =>
      ask(enclosure).assumed.flatMap(({ field, value }) => (value === 'none' ? [field] : []))
    expect(fields({ kind: 'vented', rear: { netVolumeM3: 0.05, port } })).toEqual([
      'enclosure.rear.leakQ',
      'enclosure.rear.absorptionQ',
      'enclosure.rear.port.lossQ'
    ])
    expect(fields({ kind: 'closed', rear: { netVolumeM3: 0.05, leakQ: 20 } })).toEqual(['enclosure.rear.absorptionQ'])
    const unit = { areaM2: 0.05, massKg: 0.3, complianceMPerN: 3e-4 }
    const lossy = { netVolumeM3: 0.02, leakQ: 10, absorptionQ: 50 }
    expect(fields({ kind: 'band-pass-4', rear: lossy, front: { ...lossy, passiveRadiators: unit } })).toEqual([
      'enclosure.front.passiveRadiators.qm'
    ])
    expect(
      fields({
        kind: 'custom',
        chambers: [{ name: 'room', netVolumeM3: 0.05 }],
        ports: [{ name: 'tube', from: 'room', to: 'outside', ...port }],
        driverGroups: [{ name: 'cone', front: 'outside', rear: 'room' }]
      })
    ).toEqual(['enclosure.chambers[0].leakQ', 'enclosure.chambers[0].absorptionQ', 'enclosure.ports[0].lossQ'])
  })

  /**
   * At the tuning, chamber and port resonate and only the leak R = QL/(ωC) is left behind the cone: p = Bl·E/Re/Sd without it,
   * and less by |Zm + Bl²/Re + Sd²R|/(Sd²R) with it; what is radiated is ωC·p. In small-signal terms, with h = fB/fs and
   * Sd²R = (Vas/V)·QL/(h)·k/ω of the suspension, the three share the factor ωs·Mms.
   */
  function byHandDb(volumeM3: number, h: number, leakQ: number) {
    const ofLeak = ((driver.vasM3 / volumeM3) * leakQ) / h
    const damping = 1 / driver.qms + 1 / driver.qes
    return 20 * Math.log10(Math.hypot(damping + ofLeak, h - 1 / h) / ofLeak)
  }

  it('make an opened box too loud at its tuning, by as much as the caution says', () => {
    const enclosure = { kind: 'vented', rear: { netVolumeM3: 0.05, port: tuned(0.05, 34) } } as const
    const found = ask(enclosure).cautions.find(({ code }) => code === 'chamber-taken-as-tight')
    expect(found?.at).toBe('enclosure.rear.leakQ')
    expect(found?.level).toBe('note')
    expect(found?.figures?.louderDb).toBeCloseTo(byHandDb(0.05, 34 / 28, 7), 2)
    expect(found?.figures?.tuningHz).toBeCloseTo(34, 6)
    expect(codes(ask({ ...enclosure, rear: { ...enclosure.rear, leakQ: 1000 } }))).not.toContain(
      'chamber-taken-as-tight'
    )
    expect(codes(ask({ kind: 'closed', rear: { netVolumeM3: 0.05 } }))).not.toContain('chamber-taken-as-tight')
  })
})

describe('the spring of the air', () => {
  /** Continuity: what a tight chamber gives up is what the cone sweeps, found here from the excursion. */
  it('is said to stiffen where the cones take more than 8 % of a tight chamber, with the share', () => {
    const draw = draws(8)
    let told = 0
    for (let round = 0; round < 40; round++) {
      const netVolumeM3 = draw.between(0.006, 0.06)
      const drivers = draw.pick<DriversRequest>([{ count: 1 }, { count: 2 }, { isobaric: { couplingVolumeM3: 0.003 } }])
      const request = {
        drivers,
        source: { voltageV: draw.between(30, 260) },
        frequenciesHz: { fromHz: 10, toHz: 100, points: 60 }
      }
      const answer = ask({ kind: 'closed', rear: { netVolumeM3 } }, request)
      const inner = answer.result.parts?.find(({ name }) => name === 'inner')?.excursionM
      const faces = drivers.count === 2 ? 2 : 1
      const swing = (Math.max(...(inner ?? answer.result.curves.coneExcursionM)) * driver.sdM2 * faces) / netVolumeM3
      const found = answer.cautions.find(({ code, at }) => code === 'air-spring-stiffens' && at === 'enclosure.rear')
      expect(found !== undefined).toBe(swing > 0.08)
      if (found === undefined) continue
      told++
      expect(found.level).toBe(swing > 0.16 ? 'care' : 'note')
      expect((found.figures?.sharePercent ?? 0) / (100 * swing)).toBeCloseTo(1, 2)
      // (γ + 1)/4 of the share, γ 1.4: 8 % is 4.8 % of second harmonic.
      expect((found.figures?.harmonicPercent ?? 0) / (60 * swing)).toBeCloseTo(1, 2)
    }
    expect(told).toBeGreaterThan(5)
    expect(told).toBeLessThan(35)
  })

  it('is looked at behind the filters and within the programme where limits are asked for', () => {
    const enclosure = { kind: 'closed', rear: { netVolumeM3: 0.012 } } as const
    const loud = { source: { voltageV: 150 }, limits: {} }
    expect(codes(ask(enclosure, loud))).toContain('air-spring-stiffens')
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 4, cornerHz: 150 }] as const
    expect(codes(ask(enclosure, { ...loud, filters }))).not.toContain('air-spring-stiffens')
  })

  it('is also that of a chamber of a custom enclosure', () => {
    const found = ask(
      {
        kind: 'custom',
        chambers: [{ name: 'back', netVolumeM3: 0.008 }],
        driverGroups: [{ name: 'cone', front: 'outside', rear: 'back' }]
      },
      { source: { voltageV: 150 } }
    ).cautions.find(({ code }) => code === 'air-spring-stiffens')
    expect(found?.message).toContain('back')
    expect(found?.at).toBe('enclosure')
  })

  it('has the pressure of the swing: 10 % of ρc² is 14.2 kPa peak, 10.0 kPa RMS', () => {
    expect((0.1 * stiffnessPa) / Math.SQRT2 / 1e3).toBeCloseTo(10, 1)
    const answer = ask({ kind: 'closed', rear: { netVolumeM3: 0.012 } }, { source: { voltageV: 150 } })
    const found = answer.cautions.find(({ code }) => code === 'air-spring-stiffens')
    const { sharePercent = 0, pressureKpa = 0 } = found?.figures ?? {}
    expect(pressureKpa / ((sharePercent / 100) * (stiffnessPa / Math.SQRT2 / 1e3))).toBeCloseTo(1, 2)
  })
})

describe('a chamber too small for its drivers', () => {
  it('is told: 0.05 L behind a 12 inch cone, and anything below six times Sd·Xmax, 4.116 L here', () => {
    expect(6 * 490 * 1.4).toBeCloseTo(4116, 9)
    const told = (netVolumeM3: number, drivers: DriversRequest = {}) =>
      codes(ask({ kind: 'closed', rear: { netVolumeM3 } }, { drivers })).includes('chamber-too-small')
    expect(told(0.000_05)).toBe(true)
    expect(told(0.004)).toBe(true)
    expect(told(0.0042)).toBe(false)
    expect(told(0.0042, { count: 2 })).toBe(true)
    // A pair shows one face, and the air between its cones moves with both.
    expect(told(0.0042, { isobaric: { couplingVolumeM3: 0.001 } })).toBe(false)
  })

  it('is told without an Xmax by the room that the cones themselves take, 0.1·Sd^1.5: 1.08 L here', () => {
    expect(0.1 * 0.049 ** 1.5).toBeCloseTo(0.001_08, 5)
    const { xmaxM: _, ...shy } = driver
    const told = (netVolumeM3: number) =>
      codes(ask({ kind: 'closed', rear: { netVolumeM3 } }, { driver: shy })).includes('chamber-too-small')
    expect(told(0.001)).toBe(true)
    expect(told(0.0011)).toBe(false)
  })
})

describe('a chamber smaller than its cones', () => {
  it('is told with its litres and with the least: six times what a cone of 490 cm² sweeps in 14 mm, 4.116 L', () => {
    const told = ask({ kind: 'closed', rear: { netVolumeM3: 0.002 } }).cautions.find(
      ({ code }) => code === 'chamber-too-small'
    )
    expect(told?.figures).toEqual({ volumeL: 2, leastL: 4.12 })
    expect(told?.message).toContain('4.12 L')
  })
})
