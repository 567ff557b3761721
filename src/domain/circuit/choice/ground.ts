/** The way back: size, length and acceptance of the ground, and when the body is no conductor. */

import type { Ground, GroundReading } from '../../../contract/supply/supply-cables.ts'
import { supplyDefaults } from '../source/defaults.ts'
import type { ReturnPath } from './cable-request.ts'

/** What the way back is made of. */
export interface GroundPath {
  /** Return conductor or ground lead, cold, and at a sustained full sine [Ω]. */
  readonly coldOhm: number
  readonly hotOhm: number
  /** Lugs of that conductor and the body [Ω]. */
  readonly restOhm: number
}

function words(path: ReturnPath): string {
  return path.kind === 'cable'
    ? 'Return cable of the size of the positive to the battery’s negative post, to the body side of a battery sensor where there is one, beside the positive run, no fuse in it.'
    : 'Ground lead of the size of the positive, at most half a metre, to its own bolt on bare body metal, not a seat or belt bolt, locked and sealed against rust; the strap from battery to body carries the amplifier too and gets the same size.'
}

/**
 * Ground of a feeder and the readings of its test.
 *
 *   R = r·L + R_lugs + R_body;  expected I·R cold;  limit 1.3·I·R with the conductor hot
 *
 * The limit follows the design: one figure for all would fail a long return cable that is right and pass a poor body.
 *
 * @param path  undefined where no cable was chosen
 * @param fullSineA  [A] > 0; @param heavyA  dense bass [A] > 0
 * @source Ohm’s law; 30 % over the design for length, area and meter is our choice
 * @check  2 AWG copper, 5 m back, two lugs of 0.2 mΩ: 0.5229 mΩ/m with 2 % for the strands, 3.014 mΩ cold, 301 mV at 100 A
 */
export function groundOf(
  way: ReturnPath,
  designation: string | undefined,
  path: GroundPath | undefined,
  currents: { readonly fullSineA: number; readonly heavyA: number }
): Ground {
  const { groundLeadM, groundTolerance } = supplyDefaults
  const fixed = { kind: way.kind, leadAtMostM: groundLeadM.value, text: words(way) }
  if (path === undefined || designation === undefined) return fixed
  const expectedOhm = path.coldOhm + path.restOhm
  const acceptanceOhm = groundTolerance.value * (path.hotOhm + path.restOhm)
  const reading = (currentA: number): GroundReading => ({
    currentA,
    expectedV: currentA * expectedOhm,
    acceptanceV: currentA * acceptanceOhm
  })
  return {
    ...fixed,
    designation,
    expectedOhm,
    acceptanceOhm,
    fullSine: reading(currents.fullSineA),
    heavy: reading(currents.heavyA)
  }
}

/**
 * Ground-loop noise.
 *
 *   V = I_ripple·R_shared;  level = 20·log10(V/V_signal)
 *
 * @check  10 A through 2 mΩ → 20 mV, −46.02 dB under 4 V
 */
export function groundNoise(
  rippleA: number,
  sharedOhm: number,
  signalV: number
): { readonly noiseV: number; readonly levelDb: number } {
  const noiseV = rippleA * sharedOhm
  return { noiseV, levelDb: 20 * Math.log10(noiseV / signalV) }
}
