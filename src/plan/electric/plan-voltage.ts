/** An amplifier of another voltage class stops a plan also where no current could be worked out. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Caution } from '../../domain/caution.ts'
import { amplifierVoltage } from '../../domain/circuit/load/converter-load.ts'
import { voltageClassCautions } from '../../domain/circuit/load/voltage-class.ts'
import { present } from '../../domain/present.ts'
import { drawSheet } from '../request/plan-amplifier.ts'
import type { CurrentPart } from './plan-supply.ts'

export function planVoltageCautions({ amplifier, supply }: PlanRequest, current: CurrentPart): readonly Caution[] {
  if (current.done) return []
  const { name } = amplifier
  const bass = { ...drawSheet(amplifier), ...present({ name }) }
  return [bass, ...(supply.otherAmplifiers ?? [])].flatMap(each =>
    voltageClassCautions(each, amplifierVoltage(supply.systemVoltageV, supply.converter), undefined, '')
  )
}
