/** How the chief figures of a signal set-up were reached. */
import type { Basis } from '../outcome.ts'
import type { GainSetting } from './gain-setting.ts'
import type { InputLevel } from './source-level.ts'

function loadingBasis({ loadingDb, inputOhm, outputOhm }: InputLevel): readonly Basis[] {
  if (loadingDb === undefined || inputOhm === undefined || outputOhm === undefined) return []
  return [
    {
      quantity: 'input.loadingDb',
      formula: '20*log10(Zin/(Zin+Zout))',
      inputs: [
        { symbol: 'Zin', value: inputOhm, unit: 'Ω' },
        { symbol: 'Zout', value: outputOhm, unit: 'Ω' }
      ],
      value: loadingDb,
      unit: 'dB',
      source: 'ohms-law'
    }
  ]
}

function converterBasis({ converterDb, levelV, sourceV }: InputLevel): readonly Basis[] {
  if (converterDb === undefined) return []
  return [
    {
      quantity: 'input.converterDb',
      formula: '20*log10(Vin/Vs)',
      inputs: [
        { symbol: 'Vin', value: levelV, unit: 'V' },
        { symbol: 'Vs', value: sourceV, unit: 'V' }
      ],
      value: converterDb,
      unit: 'dB',
      source: 'ohms-law'
    }
  ]
}

function voltageGainBasis({ voltageGainDb, targetVoltageV }: GainSetting, { levelV }: InputLevel): readonly Basis[] {
  if (voltageGainDb === undefined) return []
  return [
    {
      quantity: 'gain.voltageGainDb',
      formula: '20*log10(V/Vin)',
      inputs: [
        { symbol: 'V', value: targetVoltageV, unit: 'V' },
        { symbol: 'Vin', value: levelV, unit: 'V' }
      ],
      value: voltageGainDb,
      unit: 'dB',
      source: 'ohms-law'
    }
  ]
}

export function signalBasis(gain: GainSetting, input: InputLevel | undefined): readonly Basis[] {
  return [
    {
      quantity: 'gain.targetVoltageV',
      formula: 'sqrt(P*Z)',
      inputs: [
        { symbol: 'P', value: gain.powerW, unit: 'W' },
        { symbol: 'Z', value: gain.loadOhm, unit: 'Ω' }
      ],
      value: gain.targetVoltageV,
      unit: 'V',
      source: 'ohms-law'
    },
    {
      quantity: 'gain.meterVoltageV',
      formula: 'min(V, V*10^((L-b+o)/20))',
      inputs: [
        { symbol: 'V', value: gain.targetVoltageV, unit: 'V' },
        { symbol: 'L', value: gain.toneLevelDb, unit: 'dB' },
        { symbol: 'b', value: gain.boostDb, unit: 'dB' },
        { symbol: 'o', value: gain.quietRecordingDb, unit: 'dB' }
      ],
      value: gain.meterVoltageV,
      unit: 'V',
      source: 'gain-practice'
    },
    ...(input === undefined ? [] : [...loadingBasis(input), ...converterBasis(input), ...voltageGainBasis(gain, input)])
  ]
}
