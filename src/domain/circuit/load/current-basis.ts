/** How the currents were worked out. */
import type {
  ChargingBalance,
  CurrentRequest,
  Currents,
  SupplyCurrent
} from '../../../contract/supply/supply-current.ts'
import type { Basis } from '../../outcome.ts'

export function currentBasis(
  { systemVoltageV }: CurrentRequest,
  { currents, amplifiers, charging }: SupplyCurrent
): readonly Basis[] {
  const voltage = { symbol: 'V', value: systemVoltageV, unit: 'V' }
  const inputW = amplifiers.reduce((sum, { inputPowerW }) => sum + inputPowerW, 0)
  const input = { symbol: 'Pin', value: inputW, unit: 'W' }
  return [
    {
      quantity: 'currents.fullSineA',
      formula: 'Pin/V',
      inputs: [input, voltage],
      value: currents.fullSineA,
      unit: 'A',
      source: 'class-efficiency'
    },
    {
      quantity: 'currents.peakNoStorageA',
      formula: '2*I',
      inputs: [{ symbol: 'I', value: currents.fullSineA, unit: 'A' }],
      value: currents.peakNoStorageA,
      unit: 'A',
      source: 'class-b-theory'
    },
    ...(charging === undefined ? [] : [surplusBasis(charging, currents)])
  ]
}

function surplusBasis(
  { idleAvailableA, baseLoadA, idleAverageSurplusA }: ChargingBalance,
  { averageA }: Currents
): Basis {
  return {
    quantity: 'charging.idleAverageSurplusA',
    formula: 'Iav-Ibase-Imusic',
    inputs: [
      { symbol: 'Iav', value: idleAvailableA, unit: 'A' },
      { symbol: 'Ibase', value: baseLoadA, unit: 'A' },
      { symbol: 'Imusic', value: averageA, unit: 'A' }
    ],
    value: idleAverageSurplusA,
    unit: 'A',
    source: 'iso-8854'
  }
}
