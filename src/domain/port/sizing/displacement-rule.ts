/** Port area from what the cones sweep, without a computation of the network. */

/**
 * Area at which displacement-limited drive stays near 5 % of the speed of sound.
 *
 *   S ≥ 0.8·fB·VD
 *
 * @param tuningHz  fB [Hz] > 0
 * @param sweptVolumeM3  VD = N·Sd·Xmax, one way, peak [m³] > 0
 * @returns total area [m²]
 * @validity With that area the network gives 17 to 24 m/s for QB3 and B4 boxes, 30 to 36 m/s for C4.
 * @source Small, "Vented-box loudspeaker systems" part II, JAES 21(6), 1973, from memory
 * @check  30 Hz, 0.58 L → 139 cm²
 */
export function displacementRuleAreaM2(tuningHz: number, sweptVolumeM3: number): number {
  return 0.8 * tuningHz * sweptVolumeM3
}

/** Air speed the rule stands for, as a share of the speed of sound (Small 1973, from memory). */
export const RULE_SPEED_SHARE = 0.05
