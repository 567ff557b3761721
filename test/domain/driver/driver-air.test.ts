/** The air around a driver: the part of it that moves with the cone, and the part that Vas is measured in. */
import { describe, expect, it } from 'vitest'
import { completeDriverParameters } from '../../../src/domain/driver/complete-driver-parameters.ts'
import { freeConeAirLoadKg } from '../../../src/domain/driver/sheet/air-load.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { sizeEnclosure } from '../../../src/domain/enclosure/sizing/size-enclosure.ts'

describe('the air load of a free cone', () => {
  /**
   * Lamb, Hydrodynamics, 1932, art. 114 (from memory): an oblate spheroid of semi-axes a, a, c that moves along c drags
   * (4/3)·π·ρ·a²·c·γ/(2 − γ), γ = (2/e³)·(e − √(1−e²)·asin e), e² = 1 − c²/a². A disc is its limit.
   */
  it('is what a very flat spheroid drags along', () => {
    const [density, a, flat] = [1.2041, 0.124, 1e-5]
    const e = Math.sqrt(1 - flat ** 2)
    const gamma = (2 / e ** 3) * (e - flat * Math.asin(e))
    const dragged = ((4 / 3) * Math.PI * density * a ** 3 * flat * gamma) / (2 - gamma)
    expect(freeConeAirLoadKg(Math.PI * a ** 2, density) / dragged).toBeCloseTo(1, 4)
  })

  it('comes near the rule 0.575·Sd^1.5 (common practice, no source)', () => {
    expect(freeConeAirLoadKg(0.049, 1.2041) / (0.575 * 0.049 ** 1.5)).toBeCloseTo(1, 2)
  })
})

describe('one driver by two sheets, 79.5 kPa', () => {
  const [sdM2, mmsKg, cmsMPerN, rmsKgPerS, blTm, reOhm] = [0.0485, 0.168, 0.000162, 6.1, 15.2, 3.5]
  const omega = 1 / Math.sqrt(mmsKg * cmsMPerN)
  const mechanical = { sdM2, mmsKg, cmsMPerN, rmsKgPerS, blTm, reOhm }
  /** Vas = γ·p·Sd²·Cms in air at sea level; the service's own ρc² there is 1.2041·343.21². */
  const small = {
    sdM2,
    reOhm,
    fsHz: omega / (2 * Math.PI),
    qms: (omega * mmsKg) / rmsKgPerS,
    qes: (omega * mmsKg * reOhm) / blTm ** 2,
    vasM3: 1.2041 * 343.21 ** 2 * sdM2 ** 2 * cmsMPerN
  }
  const air = { temperatureC: 20, pressurePa: 79_500 }
  const netVolumeM3 = 0.032
  const heard = (driver: typeof mechanical | typeof small) =>
    computeResponse({
      driver,
      enclosure: { kind: 'closed', rear: { netVolumeM3 } },
      source: { voltageV: 2.83 },
      frequenciesHz: [20, 45, 100],
      air
    })

  it('has one resonance in its box: fc = √((1/Cms + ρc²·Sd²/V)/Mms)/2π', () => {
    const stiffnessPa = 1.2041 * 343.21 ** 2 * (79_500 / 101_325)
    const fcHz = Math.sqrt((1 / cmsMPerN + (stiffnessPa * sdM2 ** 2) / netVolumeM3) / mmsKg) / (2 * Math.PI)
    for (const driver of [mechanical, small]) expect(heard(driver).result.scalars.fcHz).toBeCloseTo(fcHz, 6)
  })

  it('sounds the same, and the air taken for Vas is told', () => {
    const [one, other] = [heard(mechanical), heard(small)]
    one.result.curves.levelDb.forEach((level, k) => {
      expect(other.result.curves.levelDb[k]).toBeCloseTo(level, 6)
    })
    expect(other.assumed.map(({ field }) => field)).toContain('driver.vasAir')
    expect(one.assumed.map(({ field }) => field)).not.toContain('driver.vasAir')
    expect([...one.cautions, ...other.cautions]).toEqual([])
  })

  it('gets one box, and one efficiency: η0 = ρ·Bl²·Sd²/(2π·c·Re·Mms²)', () => {
    const volume = (driver: typeof mechanical | typeof small) =>
      sizeEnclosure({ driver, air, kinds: ['closed'] }).result.candidates[0]?.netVolumeM3
    expect(volume(small)).toBeCloseTo(volume(mechanical) as number, 9)
    const density = (1.2041 * 79_500) / 101_325
    const efficiency = (density * blTm ** 2 * sdM2 ** 2) / (2 * Math.PI * 343.21 * reOhm * mmsKg ** 2)
    for (const driver of [mechanical, small]) {
      const { figures } = completeDriverParameters({ driver, air }).result
      expect(figures.efficiencyPercent / (100 * efficiency)).toBeCloseTo(1, 9)
    }
  })

  it('may have its Vas stated for the air of the request', () => {
    const here = { ...small, vasM3: (small.vasM3 * 79_500) / 101_325, vasAir: 'request' as const }
    expect(heard(here).result.scalars.fcHz).toBeCloseTo(heard(small).result.scalars.fcHz ?? 0, 9)
  })

  it('has its Vas in the air of the request where density and speed of sound are stated', () => {
    const stated = { densityKgPerM3: (1.2041 * 79_500) / 101_325, soundSpeedMPerS: 343.21 }
    const at = (driver: typeof small) =>
      computeResponse({
        driver,
        enclosure: { kind: 'closed', rear: { netVolumeM3 } },
        source: { voltageV: 2.83 },
        frequenciesHz: [45],
        air: stated
      })
    const answer = at({ ...small, vasM3: (small.vasM3 * 79_500) / 101_325 })
    expect(answer.result.scalars.fcHz).toBeCloseTo(heard(small).result.scalars.fcHz ?? 0, 9)
    expect(answer.assumed).toContainEqual(expect.objectContaining({ field: 'driver.vasAir', value: 'request' }))
  })
})
