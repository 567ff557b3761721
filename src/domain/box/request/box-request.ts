/** What may be asked of `layOutBox`, in SI. */

import type { RoundPort } from '../../../contract/boxes/box-hardware.ts'

export interface SlotPort {
  readonly kind: 'slot'
  /** Across the opening; the clear width of the box when absent. */
  readonly widthM?: number
  /** The smaller side of the opening. */
  readonly heightM: number
  /** Along the centre line, from the outer face of the baffle to the inner mouth. */
  readonly lengthM?: number
  /** Instead of a length: the tuning it shall give with the air of the box. */
  readonly tuningHz?: number
  /** Sum of the two end factors for that tuning. */
  readonly endFactor?: number
  /** Board of the slot's own walls; the board of the box when absent. */
  readonly wallThicknessM?: number
  /** To which the board across from its wall is rounded at both mouths, within the length. */
  readonly flareRadiusM?: number
  /** Outer corners of its bends filled to a quarter round. */
  readonly roundCorners?: boolean
  /** Wall the slot starts on; it folds up the back and on under the lid as its length needs. */
  readonly along?: 'bottom' | 'top' | 'left' | 'right'
  readonly chamber?: 'rear' | 'front'
}
export type BoxPort = RoundPort | SlotPort
