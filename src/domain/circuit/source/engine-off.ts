/** How long the battery plays with the engine off, and how far it sags. */

import type { BatteryRequest, EngineOff } from '../../../contract/supply/supply-current.ts'
import type { BatteryChemistry } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { batteryOhm, restVoltage } from '../fuse/battery-source.ts'
import { supplyDefaults } from './defaults.ts'
import { usualExponent } from './peukert.ts'

const RESERVE_A = 25

/**
 * Peukert exponent from two ratings.
 *
 *   n = ln(H/t)/ln(25/(C/H)),  t = reserve minutes/60
 *
 * @param capacityAh  C at H hours; @param ratedHours  H; @param reserveMinutes  minutes at 25 A
 * @returns n, or undefined where the two ratings fix none (C/H ≥ 25 A or t ≥ H)
 * @validity 40 … 250 Ah, about 1 … 100 A, 25 °C.
 * @source a battery monitor's manual prints exponents that this recomputes
 * @check  86 Ah, 167 min → 1.12; 70 Ah, 130 min → 1.13; 130 Ah, 225 min → 1.24; 225 Ah, 500 min → 1.10
 */
export function peukertExponent(capacityAh: number, ratedHours: number, reserveMinutes: number): number | undefined {
  const hours = reserveMinutes / 60
  const ratedA = capacityAh / ratedHours
  if (hours >= ratedHours || ratedA >= RESERVE_A) return undefined
  return Math.log(ratedHours / hours) / Math.log(RESERVE_A / ratedA)
}

/**
 * Time to empty at a constant current.
 *
 *   t = H·(C/(I·H))^n
 *
 * @returns [h]
 * @source Peukert's law
 * @check  70 Ah, 20 h, n 1.13, 15 A → 3.8623 h
 */
export function peukertHours(capacityAh: number, ratedHours: number, exponent: number, currentA: number): number {
  return ratedHours * (capacityAh / (currentA * ratedHours)) ** exponent
}

/** The exponent of a battery: stated, from its reserve minutes, or usual for its kind. @throws DesignError `conflicting-input` */
export function batteryExponent(battery: BatteryRequest, ratedHours: number, assumed: Assumptions, at: string): number {
  if (battery.peukertExponent !== undefined) return battery.peukertExponent
  if (battery.reserveMinutes === undefined) {
    const chemistry = assumed.take<BatteryChemistry>(battery.chemistry, `${at}chemistry`, supplyDefaults.chemistry)
    const why = `usual exponent of ${chemistry} batteries; give reserveMinutes for this one’s`
    return assumed.work(undefined, `${at}peukertExponent`, usualExponent[chemistry], { why, source: 'practice' })
  }
  const exponent = peukertExponent(battery.capacityAh, ratedHours, battery.reserveMinutes)
  if (exponent !== undefined && exponent >= 1 && exponent <= 2) return exponent
  throw new DesignError('conflicting-input', {
    field: `${at}reserveMinutes`,
    value: battery.reserveMinutes,
    detail: say('refused.min-at-25-a-and-ah', {
      reserveMinutesMin: battery.reserveMinutes,
      capacityAh: battery.capacityAh,
      ratedHours
    })
  })
}

/**
 * Listening time with the engine off at a constant current, and the sag it brings.
 *
 * @param currentA  music and parked load together [A] > 0
 * @returns hours and sags; usable hours are the fraction of the time to empty
 * @source Peukert's law; half discharge of a starting battery is common practice
 * @check  70 Ah, n 1.13, 15 A → 3.86 h, to one half 1.93 h; 100 A through 10 mΩ sags 1.0 V
 */
export function engineOff(
  battery: BatteryRequest,
  currentA: number,
  fullSineA: number,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string
): EngineOff {
  const ratedHours = assumed.take(battery.ratedHours, `${at}ratedHours`, supplyDefaults.ratedHours)
  const exponent = batteryExponent(battery, ratedHours, assumed, at)
  const usable = battery.chemistry === 'lithium' ? supplyDefaults.usableLithium : supplyDefaults.usableFraction
  const fraction = assumed.take(battery.usableFraction, `${at}usableFraction`, usable)
  const ohm = batteryOhm(battery, systemVoltageV, assumed, at)
  const hoursToEmpty = peukertHours(battery.capacityAh, ratedHours, exponent, currentA)
  return {
    currentA,
    peukertExponent: exponent,
    hoursToEmpty,
    usableHours: hoursToEmpty * fraction,
    restV: restVoltage(systemVoltageV, battery.chemistry),
    sagV: currentA * ohm,
    fullSineSagV: fullSineA * ohm
  }
}
