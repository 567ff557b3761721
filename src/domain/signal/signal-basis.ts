/** How the chief figures of a signal set-up were reached. */
import type { Basis } from '../outcome.ts'
import type { GainSetting } from './set-up-signal.ts'
import type { InputLevel } from './source-level.ts'

function inputBasis(gain: GainSetting, input: InputLevel): readonly Basis[] {
  const level = { symbol: 'Vin', value: input.levelV, unit: 'V' }
  const source = { symbol: 'Vs', value: input.sourceV, unit: 'V' }
  const basis: Basis[] = []
  if (input.loadingDb !== undefined && input.inputOhm !== undefined && input.outputOhm !== undefined) {
    basis.push({
      quantity: 'input.loadingDb',
      formula: '20*log10(Zin/(Zin+Zout))',
      inputs: [
        { symbol: 'Zin', value: input.inputOhm, unit: 'Ω' },
        { symbol: 'Zout', value: input.outputOhm, unit: 'Ω' }
      ],
      value: input.loadingDb,
      unit: 'dB',
      source: 'ohms-law'
    })
  }
  if (input.converterDb !== undefined) {
    basis.push({
      quantity: 'input.converterDb',
      formula: '20*log10(Vin/Vs)',
      inputs: [level, source],
      value: input.converterDb,
      unit: 'dB',
      source: 'ohms-law'
    })
  }
  if (gain.voltageGainDb !== undefined) {
    basis.push({
      quantity: 'gain.voltageGainDb',
      formula: '20*log10(V/Vin)',
      inputs: [{ symbol: 'V', value: gain.targetVoltageV, unit: 'V' }, level],
      value: gain.voltageGainDb,
      unit: 'dB',
      source: 'ohms-law'
    })
  }
  return basis
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
        { symbol: 'o', value: gain.overlapDb, unit: 'dB' }
      ],
      value: gain.meterVoltageV,
      unit: 'V',
      source: 'gain-practice'
    },
    ...(input === undefined ? [] : inputBasis(gain, input))
  ]
}
