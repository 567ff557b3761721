/** The gain set for less than amplifier and drivers bear, where a box plays lower or louder so. */
import type { JoinedDrivers } from './joined-drivers.ts'

/** A dial and a meter are read to three digits. */
const DIGITS = 3

/** Rounded down, so that what was held stays held. */
function toDial(powerW: number): number {
  const step = 10 ** (Math.floor(Math.log10(powerW)) + 1 - DIGITS)
  return Math.floor(powerW / step + 1e-9) * step
}

/** Gains that differ by less are one. Ours. */
const SAME_GAIN = 0.99

/**
 * Power of all outputs at a voltage, as it is set at a dial.
 *
 *   P = n·V²/R
 *
 * @param voltageV  RMS at each output, above 0
 * @returns none where it is all that amplifier and drivers bear
 */
export function gainPowerAt({ loadOhm, outputs, targetVoltageV }: JoinedDrivers, voltageV: number): number | undefined {
  return voltageV < SAME_GAIN * targetVoltageV ? toDial((outputs * voltageV ** 2) / loadOhm) : undefined
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
