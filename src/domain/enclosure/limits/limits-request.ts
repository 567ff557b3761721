import type { CoilMetal } from './coil-heating.ts'

/** Coil to magnet to air; without it the rise at rated power is assumed. */
export interface HeatingRequest {
  readonly coilKPerW?: number
  readonly coilTimeConstantS?: number
  readonly magnetKPerW?: number
  readonly magnetTimeConstantS?: number
  readonly ambientC?: number
  readonly maximumCoilC?: number
  readonly metal?: CoilMetal
}
