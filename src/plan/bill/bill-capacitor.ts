/** The capacitor, and the resistor that charges it first and discharges it before work. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import { resistorText } from '../../domain/circuit/source/capacitor-cautions.ts'
import type { CurrentPart } from '../electric/plan-supply.ts'
import { wiringPieces } from './bill-wiring.ts'

export function capacitorRows(current: CurrentPart): readonly BillRow[] {
  const { capacitor } = current.request ?? {}
  const effect = current.done ? current.outcome.result.capacitor : undefined
  if (capacitor === undefined || effect?.prechargeOhm === undefined || effect.prechargePeakW === undefined) return []
  const { prechargeOhm, prechargePeakW } = effect
  return [
    ...wiringPieces('capacitor', `capacitor ${capacitor.capacitanceF} F with covered terminals`, 1, 'as asked for', {
      capacitanceF: capacitor.capacitanceF
    }),
    ...wiringPieces(
      'charging-resistor',
      `charging resistor ${resistorText(prechargeOhm, prechargePeakW)}, with two insulated clips`,
      1,
      `first charge and discharge of the capacitor; ${prechargePeakW.toPrecision(2)} W at first`,
      { resistanceOhm: prechargeOhm }
    )
  ]
}
