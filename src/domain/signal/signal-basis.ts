/** How the chief figures of a signal set-up were reached. */

import type { Basis } from '../../contract/field/envelope.ts'
import type { InputLevel } from '../../contract/signals/signal-result.ts'
import { targetVoltage } from '../amplifier/formulas.ts'
import { explain } from '../formula.ts'
import { converterRatio, loadingLoss, meterReading, voltageGain } from './formulas.ts'
import type { GainSetting } from './gain-setting.ts'

function inputBasis({ loadingDb, inputOhm: Zin, outputOhm: Zout, converterDb, levelV: Vin, sourceV: Vs }: InputLevel) {
  return [
    ...(loadingDb === undefined || Zin === undefined || Zout === undefined
      ? []
      : [explain(loadingLoss, 'input.loadingDb', loadingDb, { Zin, Zout })]),
    ...(converterDb === undefined ? [] : [explain(converterRatio, 'input.converterDb', converterDb, { Vin, Vs })])
  ]
}

export function signalBasis(gain: GainSetting, input: InputLevel | undefined): readonly Basis[] {
  const { targetVoltageV: V, meterVoltageV, voltageGainDb, powerW: P, loadOhm: Z } = gain
  const tone = { V, L: gain.toneLevelDb, b: gain.boostDb, o: gain.quietRecordingDb }
  return [
    explain(targetVoltage, 'gain.targetVoltageV', V, { P, Z }),
    explain(meterReading, 'gain.meterVoltageV', meterVoltageV, tone),
    ...(input === undefined ? [] : inputBasis(input)),
    ...(input === undefined || voltageGainDb === undefined
      ? []
      : [explain(voltageGain, 'gain.voltageGainDb', voltageGainDb, { V, Vin: input.levelV })])
  ]
}
