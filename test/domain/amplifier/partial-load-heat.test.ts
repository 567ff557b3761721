/** Heat of an amplifier whose gain stays far below its rating, and what its damping factor adds to the cable. */
import { describe, it } from 'vitest'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { wireCoils } from '../../../src/domain/coils/wire-coils.ts'
import { expectPrinted } from '../../support/printed.ts'

const large = (amplifierClass: 'D' | 'AB') => ({
  ratings: [{ loadOhm: 4, powerW: 2400 }],
  minimumOhm: 2,
  channels: 1,
  class: amplifierClass,
  efficiency: amplifierClass === 'D' ? 0.85 : 0.6,
  quiescentW: 15
})
const heat = (amplifierClass: 'D' | 'AB') =>
  matchAmplifier({
    amplifier: large(amplifierClass),
    driver: { powerW: 300, coils: 1, coilOhm: 4 },
    driverCount: 1
  }).result.heat

describe('heat far below rating', () => {
  it('keeps the idle draw of class D: 15 + (2823.5 − 15)/8 − 300 = 66.1 W, not the 52.9 W of 0.85', () => {
    expectPrinted(heat('D')?.fullSineW ?? 0, '66.07')
    // 1/8 of 300 W is 1/64 of the rating: 15 + 2808.5/64 − 37.5
    expectPrinted(heat('D')?.averageW ?? 0, '21.38')
  })

  it('follows the square root of class AB: 15 + 3985·√(1/8) − 300 = 1124 W, not the 200 W of 0.6', () => {
    expectPrinted(heat('AB')?.fullSineW ?? 0, '1124')
    expectPrinted(heat('AB')?.averageW ?? 0, '475.6') // 15 + 3985/8 − 37.5
  })
})

describe('a stated damping factor', () => {
  it('counts as source resistance: 4 Ω over 50 is 80 mΩ beside 80.6 mΩ of cable, Qes rises by 5.02 % on 3.2 Ω', () => {
    const cable = { lengthM: 3, designation: '16 AWG', reOhm: 3.2, qes: 0.5 }
    const of = (more: object) =>
      wireCoils({ driverCount: 1, coilsPerDriver: 1, coilOhm: 4, totalPowerW: 100, cable: { ...cable, ...more } })
        .result.cable
    expectPrinted(of({})?.sourceSeriesOhm ?? 0, '0.08063')
    expectPrinted(of({ amplifierDampingFactor: 50 })?.sourceSeriesOhm ?? 0, '0.16063')
    expectPrinted(of({ amplifierDampingFactor: 50 })?.qesFactor ?? 0, '1.0502')
    expectPrinted(of({ amplifierDampingFactor: 50 })?.qes ?? 0, '0.5251')
  })
})
