/** How the currents were worked out. */

import type {
  ChargingBalance,
  CurrentRequest,
  Currents,
  SupplyCurrent
} from '../../../contract/supply/supply-current.ts'
import { explain } from '../../formula.ts'
import type { Basis } from '../../outcome.ts'
import { currentOfPower, idleSurplus, peakCurrent } from './formulas.ts'

export function currentBasis(
  { systemVoltageV: V }: CurrentRequest,
  { currents, amplifiers, charging }: SupplyCurrent
): readonly Basis[] {
  const Pin = amplifiers.reduce((sum, { inputPowerW }) => sum + inputPowerW, 0)
  const { fullSineA: I, peakNoStorageA } = currents
  return [
    explain(currentOfPower, 'currents.fullSineA', I, { Pin, V }),
    explain(peakCurrent, 'currents.peakNoStorageA', peakNoStorageA, { I }),
    ...(charging === undefined ? [] : [surplusBasis(charging, currents)])
  ]
}

function surplusBasis(
  { idleAvailableA: Iav, baseLoadA: Ibase, idleAverageSurplusA }: ChargingBalance,
  { averageA: Imusic }: Currents
): Basis {
  return explain(idleSurplus, 'charging.idleAverageSurplusA', idleAverageSurplusA, { Iav, Ibase, Imusic })
}
