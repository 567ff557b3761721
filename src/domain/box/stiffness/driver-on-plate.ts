/** A plate that carries a driver on a circle of screws. */
import { besselJ0 } from '../../../numeric/bessel-j0.ts'
import { type Plate, supportedFrequency } from './plate.ts'

export interface RingMass {
  readonly massKg: number
  /** Radius of the screw circle [m]. */
  readonly radiusM: number
  /** Its centre, from a corner along x and y [m]. */
  readonly xM: number
  readonly yM: number
}

/**
 * How far the ring of screws takes part in the fundamental of a supported plate: 1 at the middle of the plate with no radius.
 *
 *   φ = sin(πx/a)·sin(πy/b)·J0(πR·sqrt(1/a² + 1/b²))
 *
 * @source derived: mean of an eigenfunction of the Laplacian over a circle
 * @check  364 × 604 mm, R 150 mm in the middle → 0.505384
 */
export function ringShare({ xM: a, yM: b }: Pick<Plate, 'xM' | 'yM'>, ring: Omit<RingMass, 'massKg'>): number {
  const k = Math.PI * Math.hypot(1 / a, 1 / b)
  return Math.sin((Math.PI * ring.xM) / a) * Math.sin((Math.PI * ring.yM) / b) * besselJ0(k * ring.radiusM)
}

/**
 *   f = f_supported / sqrt(1 + Σ m·φ²/(ρh·a·b/4))
 *
 * @validity ±30 %: the stiffness lost to the hole and that of the basket are left out.
 * @source derived: added mass on the mode of the bare plate
 * @check  9 kg, R 150, on 364 × 604 × 18 mm MDF: 148.5 → 73 Hz
 */
export function frequencyWithDrivers(plate: Plate, rings: readonly RingMass[]): number {
  const modal = (plate.massPerAreaKgPerM2 * plate.xM * plate.yM) / 4
  const added = rings.reduce((sum, ring) => sum + ring.massKg * ringShare(plate, ring) ** 2, 0)
  return supportedFrequency(plate) / Math.sqrt(1 + added / modal)
}
