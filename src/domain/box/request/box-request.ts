/** What may be asked of `layOutBox`, in SI. */
import type { BoardId, BoxShape, FaceName, Strategy } from '../../../contract/boxes/words.ts'
import type { AirRequest } from '../../air/air.ts'
import type { Block } from '../boot/boot-place.ts'

export interface BoardChoice {
  readonly material?: BoardId
  readonly densityKgPerM3?: number
  readonly elasticModulusPa?: number
  /** Across the face grain; the same as along it when absent. */
  readonly acrossModulusPa?: number
  readonly shearModulusPa?: number
  readonly poisson?: number
}

/** A place on the outer face of a panel, in the panel's own frame. */
export interface PlaceOnPanel {
  readonly uM: number
  readonly vM: number
}

export interface BoxDriver {
  readonly label?: string
  readonly count?: number
  readonly cutOutDiameterM?: number
  readonly flangeDiameterM?: number
  /** Outer face of the baffle to the rearmost point of the motor. */
  readonly mountingDepthM?: number
  readonly magnetDiameterM?: number
  readonly magnetHeightM?: number
  readonly voiceCoilDiameterM?: number
  /** Hole through the pole piece; the gap behind it has to let its air out. */
  readonly ventDiameterM?: number
  readonly sdM2?: number
  readonly xmaxM?: number
  /** Volume one driver takes inside the box. */
  readonly displacementM3?: number
  /** `reversed`: magnet outside. */
  readonly mount?: 'front' | 'reversed'
  readonly massKg?: number
  readonly screwCircleDiameterM?: number
  readonly screwCount?: number
  /** Depth of a rebate for the flange. */
  readonly rebateDepthM?: number
  readonly face?: FaceName
  readonly centres?: readonly PlaceOnPanel[]
  /** Ring screwed or glued behind the cut-out. */
  readonly ring?: { readonly outerDiameterM: number; readonly thicknessM: number }
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
  /** Wall the slot starts on; it folds up the back and on under the lid as its length needs. */
  readonly along?: 'bottom' | 'top' | 'left' | 'right'
  readonly chamber?: 'rear' | 'front'
}
export type BoxPort = RoundPort | SlotPort

interface GivenDisplacement {
  readonly driversM3?: number
  readonly portsM3?: number
  readonly bracesM3?: number
  readonly amplifierM3?: number
  readonly terminalM3?: number
  readonly liningM3?: number
  readonly otherM3?: number
}

export interface BoxFittings {
  readonly terminal?: {
    readonly cutOutWidthM?: number
    readonly cutOutHeightM?: number
    readonly cutOutDiameterM?: number
    readonly volumeM3?: number
    readonly face?: FaceName
    readonly centre?: PlaceOnPanel
  }
  readonly amplifier?: {
    readonly widthM: number
    readonly heightM: number
    /** Behind the inner face of the panel it sits on. */
    readonly depthM: number
    readonly massKg?: number
  }
  readonly lining?: {
    readonly thicknessM: number
    readonly densityKgPerM3: number
    readonly fibre: 'polyester' | 'wool' | 'glass' | 'dense'
    /** All inner faces but the front when absent. */
    readonly areaM2?: number
  }
  readonly cleats?: { readonly sideM: number; readonly lengthM: number }
}

/** The space the box may take, covering and play included. */
export interface BoxLimits {
  readonly widthM?: number
  readonly heightM?: number
  readonly depthM?: number
  /** Lean of the seat back from the vertical [°]; takes depth away with height. */
  readonly seatSlopeDeg?: number
  /** Play on every side. */
  readonly clearanceM?: number
  /** Carpet or paint on every face. */
  readonly coveringM?: number
  /** What the box has to pass to get in. */
  readonly opening?: { readonly widthM: number; readonly heightM: number }
  /** Wheel arches and other blocks that stand on the floor of the boot, which is as wide and deep as the limits. */
  readonly keepOuts?: readonly Block[]
}

/** The board between the chambers of a band-pass box, parallel to the front. */
interface DividerWish {
  /** Clear depth of the front chamber, square to the front. */
  readonly fromFrontM?: number
  /** Instead: the net volume of the front chamber. */
  readonly frontNetVolumeM3?: number
}

/** Present: braces are placed until every panel passes. */
interface BracingWish {
  /** Top of the band the box plays. */
  readonly upperHz?: number
  /** Peak pressure inside; that of a closed box at full excursion when absent. */
  readonly pressurePa?: number
}

export interface BoxRequest {
  readonly divider?: DividerWish
  readonly bracing?: BracingWish
  readonly air?: AirRequest
  readonly shape?: BoxShape
  /** Sizes that are fixed; those left out are solved for `netVolumeM3`. */
  readonly outer?: {
    readonly widthM?: number
    readonly heightM?: number
    readonly depthM?: number
    readonly topDepthM?: number
  }
  readonly netVolumeM3?: number
  readonly limits?: BoxLimits
  readonly strategy?: Strategy
  /** Step the saw is set by; solved sizes are whole multiples of it. */
  readonly sawStepM?: number
  readonly slopedFace?: 'front' | 'back'
  readonly slopeDeg?: number
  readonly prism?: {
    readonly footprint: readonly { readonly xM: number; readonly yM: number }[]
    readonly baffleEdge?: number
  }
  readonly thicknessM: number
  readonly frontLayers?: number
  readonly recessM?: number
  readonly board?: BoardChoice
  readonly joints?: { readonly sides?: 'between' | 'over'; readonly corners?: 'butt' | 'mitre' }
  readonly drivers?: readonly BoxDriver[]
  readonly port?: BoxPort
  readonly displacement?: GivenDisplacement
  readonly fittings?: BoxFittings
}
