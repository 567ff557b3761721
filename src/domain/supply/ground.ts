/** The way back: size, length and acceptance of the ground, and when the body is no conductor. */
import type { ReturnPath } from './cable-request.ts'
import { supplyJudgement } from './supply-judgement.ts'

export interface Ground {
  readonly kind: 'cable' | 'chassis'
  /** Size of the return lead and of the strap between battery and body: that of the positive run. */
  readonly designation?: string
  readonly leadAtMostM: number
  /** Measured at full sine between the amplifier’s ground terminal and the battery’s negative post. */
  readonly acceptanceV: number
  /** Resistance that would just be accepted at this current. */
  readonly acceptanceOhm: number
  readonly text: string
}

/**
 * Ground of a feeder.
 *
 * @param currentA  full-sine current [A] > 0
 * @returns acceptance 0.1 V with a return cable, 0.2 V through the body
 * @source common practice, no source
 * @check  5 mΩ at 50 A: 0.25 V and 12.5 W, not accepted
 */
export function groundOf(path: ReturnPath, designation: string | undefined, currentA: number): Ground {
  const { groundAcceptanceV, groundLeadM } = supplyJudgement
  const acceptanceV = groundAcceptanceV[path.kind]
  const lead =
    path.kind === 'cable'
      ? 'Return cable of the size of the positive to the battery’s negative post, beside the positive run, no fuse in it.'
      : 'Ground lead of the size of the positive, at most half a metre, to its own bolt on bare body metal, not a seat or belt bolt, locked and sealed against rust; the strap from battery to body carries the amplifier too and gets the same size.'
  return {
    kind: path.kind,
    ...(designation === undefined ? {} : { designation }),
    leadAtMostM: groundLeadM,
    acceptanceV,
    acceptanceOhm: acceptanceV / currentA,
    text: lead
  }
}

/** Fall and heat of a joint: V = I·R, P = I²·R. @check 5 mΩ, 50 A → 0.25 V, 12.5 W */
export function jointLoss(ohm: number, currentA: number): { readonly dropV: number; readonly heatW: number } {
  return { dropV: currentA * ohm, heatW: currentA ** 2 * ohm }
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
