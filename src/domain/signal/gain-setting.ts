/** The voltage a meter shall read at the amplifier when its gain stands right, and what the filters in the way take from the tone. */

import type { Crossover, InputLevel } from '../../contract/signals/signal-result.ts'
import type { SignalSetupRequest } from '../../contract/signals/signal-setup.ts'
import {
  type GainTarget,
  gainTarget,
  type MeterReading,
  meterReading,
  setPower,
  voltageGainDb
} from '../amplifier/gain-target.ts'
import type { Assumptions } from '../assume.ts'
import { filterLossDb, toneFrequency } from './crossover.ts'
import { signalDefaults } from './defaults.ts'

export interface GainSetting extends GainTarget, MeterReading {
  readonly toneHz: number
  readonly boostDb: number
  /** What filters left in the way take from the tone, as Butterworth [dB]. */
  readonly filterLossDb: number
  readonly meterVoltageWithFiltersV: number
  /** Voltage gain from the input at full source level to the target [dB]. */
  readonly voltageGainDb?: number
}

export function gainSetting(
  request: SignalSetupRequest,
  filters: Crossover,
  input: InputLevel | undefined,
  assumed: Assumptions
): GainSetting {
  const { amplifier, tone = {}, driversPowerW, gainPowerW } = request
  const bridged = assumed.take<boolean>(amplifier.bridged, 'amplifier.bridged', signalDefaults.bridged)
  const { powerW, limitedBy } = setPower(amplifier.powerW, driversPowerW, gainPowerW)
  const target = gainTarget(powerW, amplifier.loadOhm, bridged)
  const boostDb = assumed.take(tone.boostDb, 'tone.boostDb', signalDefaults.boostDb)
  const toneHz = assumed.work(tone.frequencyHz, 'tone.frequencyHz', toneFrequency(filters), signalDefaults.toneHz)
  const reading = meterReading(target, tone, boostDb, assumed)
  const loss = filterLossDb(filters, toneHz)
  return {
    ...target,
    limitedBy,
    ...reading,
    toneHz,
    boostDb,
    filterLossDb: loss,
    meterVoltageWithFiltersV: reading.meterVoltageV * 10 ** (loss / 20),
    ...(input === undefined ? {} : { voltageGainDb: voltageGainDb(target.targetVoltageV, input.levelV) })
  }
}
