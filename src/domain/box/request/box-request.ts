/** What may be asked of `layOutBox`, in SI. */
import type { FaceName } from '../../../contract/boxes/words.ts'

/** A place on the outer face of a panel, in the panel's own frame. */
export interface PlaceOnPanel {
  readonly uM: number
  readonly vM: number
}

export interface RoundPort {
  readonly kind: 'round'
  readonly count?: number
  readonly innerDiameterM: number
  readonly outerDiameterM?: number
  /** From the outer face of the baffle to the inner mouth, along the centre line. */
  readonly lengthM?: number
  /** Instead of a length: the tuning it shall give with the air of the box. */
  readonly tuningHz?: number
  /** Sum of the two end factors for that tuning. */
  readonly endFactor?: number
  /** The part behind the inner face of the baffle, instead of the whole length. */
  readonly insideLengthM?: number
  /** Radius of the centre line of an elbow; a straight tube when absent. */
  readonly elbowRadiusM?: number
  /** To which both mouths open, within the length. */
  readonly flareRadiusM?: number
  readonly flangeDiameterM?: number
  readonly flangeThicknessM?: number
  readonly face?: FaceName
  readonly centres?: readonly PlaceOnPanel[]
  /** `rear` by default; `front` for the port of the front chamber of a band-pass box. */
  readonly chamber?: 'rear' | 'front'
}

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
  /** Wall the slot starts on; it folds up the back and on under the lid as its length needs. */
  readonly along?: 'bottom' | 'top' | 'left' | 'right'
  readonly chamber?: 'rear' | 'front'
}
export type BoxPort = RoundPort | SlotPort
