/** Whether a cable survives a short circuit at its far end until its fuse opens. */

import type { KnownConductor } from '../../../contract/supply/words.ts'
import { present } from '../../present.ts'
import { shortCircuitK, withstandA2s } from '../cable/short-circuit.ts'
import { fuseDefaults } from './defaults.ts'
import type { FuseLink } from './fuse-rating.ts'
import { letThroughA2s } from './fuse-time-current.ts'

export interface CableFault {
  readonly faultA: number
  /** Fault current over fuse rating. */
  readonly multiple: number
  /** Absent where the fuse may not open at this current. */
  readonly letThroughA2s?: number
  readonly withstandA2s: number
  readonly survives: boolean
  readonly clearsQuickly: boolean
}

/**
 * The far-end fault, which stresses a cable most: the lower its current, the longer the fuse takes.
 *
 *   k²·S² ≥ I²·t
 *
 * @param areaM2  S [m²]; @param startC  conductor before the fault; @param endC  what its insulation survives once [°C]
 * @returns verdict with its figures
 * @validity Adiabatic, 0.1 … 5 s; longer times err on the safe side, heat leaves meanwhile.
 * @source IEC 60364-4-43; operating times second-hand
 * @check  16 AWG, k 115, 30 A type C, 180 A: 22 661 ≥ 4860 A²s
 */
export function cableFault(
  fuse: FuseLink,
  faultA: number,
  cable: { readonly areaM2: number; readonly material: KnownConductor; readonly startC: number; readonly endC: number }
): CableFault {
  const letThrough = letThroughA2s(fuse.family.type, fuse.ratingA, faultA)
  const withstand = withstandA2s(shortCircuitK(cable.material, cable.startC, cable.endC), cable.areaM2)
  const multiple = faultA / fuse.ratingA
  return {
    faultA,
    multiple,
    ...present({ letThroughA2s: letThrough }),
    withstandA2s: withstand,
    survives: letThrough !== undefined && letThrough <= withstand,
    clearsQuickly: multiple >= fuseDefaults.clearingMultiple.value
  }
}
