/** What the given drive does at its worst frequency, and how far it could go before anything is exceeded. */

import type { DrivePeaks, ProgrammeLimit } from '../../../contract/enclosures/large-signal.ts'
import type { LimitName } from '../../../contract/enclosures/words.ts'
import { chainGain } from '../../filter/filter-transfer.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import type { UnitDrive } from '../response/response-at-one-volt.ts'
import type { Governing } from './governing-limit.ts'

interface Worst {
  readonly value: number
  readonly frequencyHz: number
}

function worstOf(drive: UnitDrive, curves: readonly (readonly number[])[], voltageV: number): Worst | undefined {
  let found: Worst | undefined
  for (const perVolt of curves) {
    for (const [k, value] of perVolt.entries()) {
      if (found !== undefined && value * voltageV <= found.value) continue
      found = { value: value * voltageV, frequencyHz: drive.frequenciesHz[k] as number }
    }
  }
  return found
}

/** @param drive  of the system with its filters, over the range of the programme */
export function drivePeaks(system: ResponseSystem, drive: UnitDrive): DrivePeaks {
  const none = { value: 0, frequencyHz: 0 }
  const cone = worstOf(drive, [drive.coneM], system.voltageV) ?? none
  const current = worstOf(drive, [drive.currentA], system.voltageV) ?? none
  const perVolt = ({ perVolt: curve }: { readonly perVolt: readonly number[] }) => curve
  const radiator = worstOf(drive, drive.radiators.map(perVolt), system.voltageV)
  const port = worstOf(drive, drive.ports.map(perVolt), system.voltageV)
  const { xmaxM } = system.driver
  return {
    coneExcursionM: cone.value,
    coneExcursionHz: cone.frequencyHz,
    ...(xmaxM === undefined ? {} : { coneExcursionOfXmax: cone.value / xmaxM }),
    ...(radiator && { passiveRadiatorExcursionM: radiator.value, passiveRadiatorExcursionHz: radiator.frequencyHz }),
    ...(port && { portAirSpeedMPerS: port.value, portAirSpeedHz: port.frequencyHz }),
    currentA: current.value,
    currentHz: current.frequencyHz
  }
}

/**
 * The drive at which the first limit is reached anywhere in the programme.
 *
 *   V = min over f of V_max(f)/|H(f)|
 *
 * @param governing  of the system without its filters, over the same frequencies
 */
export function programmeLimit(
  system: ResponseSystem,
  frequenciesHz: Float64Array,
  governing: Governing
): ProgrammeLimit {
  let best = { voltageV: Number.POSITIVE_INFINITY, at: 0 }
  for (const [at, frequency] of frequenciesHz.entries()) {
    const voltageV = Math.min(1e6, (governing.voltageV[at] as number) / chainGain(system.filters, frequency))
    if (voltageV < best.voltageV) best = { voltageV, at }
  }
  const { voltageV, at } = best
  return {
    voltageV,
    powerW: voltageV ** 2 / system.groupOhm,
    limit: governing.limit[at] as LimitName,
    atHz: frequenciesHz[at] as number
  }
}
