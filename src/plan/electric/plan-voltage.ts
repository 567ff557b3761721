/** An amplifier of another voltage class stops a plan also where no current could be worked out. */

import type { Caution } from '../../domain/caution.ts'
import { voltageClassCautions } from '../../domain/circuit/load/voltage-class.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import type { CurrentPart } from './plan-supply.ts'

export function planVoltageCautions(
  { bass, amplifierV, supply }: SupplyBrief,
  current: CurrentPart
): readonly Caution[] {
  if (current.done) return []
  return [bass, ...(supply.otherAmplifiers ?? [])].flatMap(each =>
    voltageClassCautions(each, amplifierV, undefined, '')
  )
}
