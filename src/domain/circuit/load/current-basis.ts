/** How the currents were worked out. */

import type { Basis } from '../../../contract/field/envelope.ts'
import type { ChargingBalance, CurrentRequest, SupplyCurrent } from '../../../contract/supply/supply-current.ts'
import { explain } from '../../formula.ts'
import { amplifierVoltage } from './converter-load.ts'
import { currentOfPower, idleSurplus, peakCurrent } from './formulas.ts'

export function currentBasis(
  { systemVoltageV, converter }: CurrentRequest,
  { currents, amplifiers, charging, converter: between }: SupplyCurrent
): readonly Basis[] {
  const V = amplifierVoltage(systemVoltageV, converter)
  const Pin = amplifiers.reduce((sum, { inputPowerW }) => sum + inputPowerW, 0)
  const { fullSineA: I, peakNoStorageA } = currents
  return [
    explain(currentOfPower, 'currents.fullSineA', I, { Pin, V }),
    explain(peakCurrent, 'currents.peakNoStorageA', peakNoStorageA, { I }),
    ...(charging === undefined ? [] : [surplusBasis(charging, between?.averageInputA ?? currents.averageA)])
  ]
}

function surplusBasis(
  { idleAvailableA: Iav, baseLoadA: Ibase, idleAverageSurplusA }: ChargingBalance,
  Imusic: number
): Basis {
  return explain(idleSurplus, 'charging.idleAverageSurplusA', idleAverageSurplusA, { Iav, Ibase, Imusic })
}
