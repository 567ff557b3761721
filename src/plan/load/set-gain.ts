/** The gain set for less than amplifier and drivers bear, where a box plays lower or louder so. */

import { gainDefaults } from './defaults.ts'
import type { JoinedDrivers } from './joined-drivers.ts'

/** Rounded down, so that what was held stays held. */
function toDial(powerW: number): number {
  const step = 10 ** (Math.floor(Math.log10(powerW)) + 1 - gainDefaults.dialDigits.value)
  return Math.floor(powerW / step + 1e-9) * step
}

/**
 * Power of all outputs at a voltage, as it is set at a dial.
 *
 *   P = n·V²/R
 *
 * @param voltageV  RMS at each output, above 0
 * @returns none where it is all that amplifier and drivers bear
 */
export function gainPowerAt({ loadOhm, outputs, targetVoltageV }: JoinedDrivers, voltageV: number): number | undefined {
  return voltageV < gainDefaults.sameGain.value * targetVoltageV
    ? toDial((outputs * voltageV ** 2) / loadOhm)
    : undefined
}

/**
 * The same drivers with the gain set for a power.
 *
 *   V = √(P·R/n)
 *
 * @param powerW  of all outputs; unchanged where absent or more than is borne
 */
export function withGainFor(joined: JoinedDrivers, powerW: number | undefined): JoinedDrivers {
  if (powerW === undefined || powerW >= joined.powerW) return joined
  const perOutputW = powerW / joined.outputs
  return { ...joined, powerW, targetVoltageV: Math.sqrt(perOutputW * joined.loadOhm), gainPowerW: perOutputW }
}
