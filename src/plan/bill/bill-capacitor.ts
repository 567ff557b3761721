/** The capacitor, and the resistor that charges it first and discharges it before work. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import { saidResistor } from '../../domain/circuit/source/capacitor-cautions.ts'
import { say } from '../../domain/say.ts'
import type { CurrentPart } from '../electric/plan-supply.ts'
import { wiringPieces } from './bill-wiring.ts'

export function capacitorRows(current: CurrentPart): readonly BillRow[] {
  const { capacitor } = current.request ?? {}
  const effect = current.done ? current.outcome.result.capacitor : undefined
  if (capacitor === undefined || effect?.prechargeOhm === undefined || effect.prechargePeakW === undefined) return []
  const { prechargeOhm, prechargePeakW } = effect
  return [
    ...wiringPieces(
      'capacitor',
      say('bill.capacitor-f-with-covered-terminals', { capacitanceF: capacitor.capacitanceF }),
      1,
      say('bill.as-asked-for'),
      {
        capacitanceF: capacitor.capacitanceF
      }
    ),
    ...wiringPieces(
      'charging-resistor',
      say('bill.charging-resistor-with-two-insulated-clips', { precharge: saidResistor(prechargeOhm, prechargePeakW) }),
      1,
      say('bill.first-charge-and-discharge-of-the', { toPrecision: prechargePeakW.toPrecision(2) }),
      { resistanceOhm: prechargeOhm }
    )
  ]
}
