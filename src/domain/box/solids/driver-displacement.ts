/** What a driver takes from the air of its box, estimated from its outline. */

interface DriverOutline {
  readonly sdM2: number
  readonly mountingDepthM: number
  readonly magnetDiameterM: number
  readonly magnetHeightM: number
  readonly cutOutDiameterM: number
  /** A quarter of the cone diameter when absent. */
  readonly voiceCoilDiameterM?: number
  /** All layers of the baffle [m]. */
  readonly baffleM: number
}

/** Share of the depth above the magnet that the cone hollow takes, and what the basket adds to the magnet. */
const CONE_DEPTH_SHARE = 0.5
const BASKET_FACTOR = 1.05
const COIL_SHARE = 0.25

/**
 * Body of revolution behind the plane of the flange.
 *
 *   V_front = π/12·h·(dc² + dc·dv + dv²)   h = (M − hm)/2, dc = 2·sqrt(Sd/π)
 *   V_hole  = π/4·dcut²·tf
 *   in front of the box:   V = max(0, V_front + 1.05·π/4·dm²·hm − V_hole)
 *   magnet outside:        V = −(V_front + V_hole)
 *
 * @param outline  sizes [m] > 0, Sd [m²] > 0, baffle thickness [m]
 * @returns [m³]; negative for a reversed driver, whose cone hollow adds air
 * @validity ±30 %: the shares 1/2, 1/4 and 5 % are estimates.
 * @source derived: frustum and cylinder; shares are an engineering choice of this service
 * @check  Sd 480 cm², depth 165, magnet 200 × 60, cut-out 282, baffle 18 mm → 1.96 L
 */
export function driverDisplacement(outline: DriverOutline, mount: 'front' | 'reversed'): number {
  const { sdM2, mountingDepthM, magnetDiameterM: dm, magnetHeightM: hm, cutOutDiameterM: dcut, baffleM: tf } = outline
  const dc = 2 * Math.sqrt(sdM2 / Math.PI)
  const dv = outline.voiceCoilDiameterM ?? COIL_SHARE * dc
  const h = CONE_DEPTH_SHARE * Math.max(0, mountingDepthM - hm)
  const front = (Math.PI / 12) * h * (dc * dc + dc * dv + dv * dv)
  const hole = (Math.PI / 4) * dcut * dcut * tf
  if (mount === 'reversed') return -(front + hole)
  return Math.max(0, front + BASKET_FACTOR * (Math.PI / 4) * dm * dm * hm - hole)
}
