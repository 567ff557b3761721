/** The air a calculation rests on: density and speed of sound, given or from temperature and pressure. */
import type { AirRequest } from '../../contract/acoustics/air.ts'
import type { Assumptions } from '../assume.ts'
import { CELSIUS_ZERO_K, STANDARD_PRESSURE_PA } from '../constants.ts'
import { DesignError } from '../design-error.ts'
import { say } from '../say.ts'
import { airDefaults } from './defaults.ts'

export interface Air {
  readonly densityKgPerM3: number
  readonly soundSpeedMPerS: number
  /** ρc² [Pa]: the stiffness that turns a volume into a compliance. */
  readonly stiffnessPa: number
  /** Density and speed of sound were stated as such, not worked out from temperature and pressure. */
  readonly stated: boolean
}

const REFERENCE_C = 20
const REFERENCE_K = REFERENCE_C + CELSIUS_ZERO_K
/** Dry air at 20 °C and 101 325 Pa (ISO 2533 constants, from memory). */
const REFERENCE_DENSITY = 1.2041
const REFERENCE_SPEED = 343.21

const air = (densityKgPerM3: number, soundSpeedMPerS: number, stated: boolean): Air => ({
  densityKgPerM3,
  soundSpeedMPerS,
  stiffnessPa: densityKgPerM3 * soundSpeedMPerS ** 2,
  stated
})

/**
 * Dry air as an ideal gas, scaled from 20 °C and 101 325 Pa.
 *
 *   ρ = 1.2041·(p/101325)·(293.15/T)    c = 343.21·√(T/293.15)
 *
 * @param temperatureC  −60 … 90 [°C]
 * @param pressurePa    30 000 … 120 000 [Pa]
 * @validity Dry air; humidity changes c by less than 0.4 % and ρ by less than 1 %.
 * @source ISO 2533:1975 (from memory); ideal gas: ρ ∝ p/T, c ∝ √T (derived)
 * @check  0 °C → 331.3 m/s (ISO 9613-1 form: 331.29); ρc² does not depend on temperature
 */
export function dryAir(temperatureC: number, pressurePa: number): Air {
  const kelvin = temperatureC + CELSIUS_ZERO_K
  return air(
    (REFERENCE_DENSITY * pressurePa * REFERENCE_K) / (STANDARD_PRESSURE_PA * kelvin),
    REFERENCE_SPEED * Math.sqrt(kelvin / REFERENCE_K),
    false
  )
}

export const standardAir: Air = dryAir(REFERENCE_C, STANDARD_PRESSURE_PA)

/** @throws DesignError `conflicting-input`, `missing-input` */
export function airOf(request: AirRequest | undefined, assume: Assumptions): Air {
  const { temperatureC, pressurePa, densityKgPerM3, soundSpeedMPerS } = request ?? {}
  if (densityKgPerM3 === undefined && soundSpeedMPerS === undefined) {
    return dryAir(
      assume.take(temperatureC, 'air.temperatureC', airDefaults.temperatureC),
      assume.take(pressurePa, 'air.pressurePa', airDefaults.pressurePa)
    )
  }
  if (temperatureC !== undefined || pressurePa !== undefined) {
    throw new DesignError('conflicting-input', {
      field: 'air',
      detail: say('refused.give-either-temperature-and-pressure-or')
    })
  }
  if (densityKgPerM3 === undefined || soundSpeedMPerS === undefined) {
    const field = densityKgPerM3 === undefined ? 'air.densityKgPerM3' : 'air.soundSpeedMPerS'
    throw new DesignError('missing-input', { field, detail: say('refused.density-and-speed-of-sound-go') })
  }
  return air(densityKgPerM3, soundSpeedMPerS, true)
}
