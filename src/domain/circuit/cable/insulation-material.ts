/** What the insulation is made of decides what it survives once; its temperature class does not. */

import type { InsulationMaterial } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { cableDefaults } from './defaults.ts'

/** Above this section plain PVC stands less: more of it lies on more metal [m²]. */
const LARGE_M2 = 300e-6

/**
 * Conductor temperature that the insulation survives once, for at most 5 s [°C].
 *
 *   PVC 160, above 300 mm² 140; XLPE and EPR 250; rubber 200, from class 85 °C 220; silicone 350
 *
 * @param insulationC  temperature class; @param areaM2  conductor section
 * @validity Cross-linked PVC has no row of its own and is held to that of PVC.
 * @source IEC 60364-4-43 and IEC 60724 (second-hand)
 * @check  PVC of class 105 °C: 160 °C, so k of copper 87.57 A·√s/mm²; XLPE of class 125 °C: 250 °C, 123.46
 */
export function finalTemperatureC(material: InsulationMaterial, insulationC: number, areaM2: number): number {
  if (material === 'pvc' || material === 'cross-linked-pvc') return areaM2 > LARGE_M2 ? 140 : 160
  if (material === 'rubber') return insulationC < 85 ? 200 : 220
  return material === 'silicone' ? 350 : 250
}

/** @throws DesignError `missing-input`, `conflicting-input` where the material does not survive its own class */
export function insulationMaterialOf(
  given: InsulationMaterial | undefined,
  insulationC: number,
  assumed: Assumptions
): InsulationMaterial {
  const material = given ?? 'pvc'
  const standsC = finalTemperatureC(material, insulationC, 0)
  if (insulationC >= standsC) {
    throw new DesignError(given === undefined ? 'missing-input' : 'conflicting-input', {
      field: 'insulationMaterial',
      detail: say('refused.stands-c-once-so-none-is', {
        ask: given === undefined ? say('refused.say-the-insulation') : [],
        material,
        standsC,
        insulationC
      })
    })
  }
  return assumed.take<InsulationMaterial>(given, 'insulationMaterial', cableDefaults.insulationMaterial)
}
