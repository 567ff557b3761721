/** A load of constant power behind a resistance: its voltage falls, so its current rises, until there is no steady state. */

/**
 * Voltage at the load, the stable upper root of P = V·(Vs − V)/R.
 *
 *   V = (Vs + √(Vs² − 4·P·R))/2
 *
 * @param sourceV  Vs [V] > 0; @param powerW  P [W] ≥ 0; @param loopOhm  R [Ω] ≥ 0, once out and once back
 * @returns V [V] ≥ Vs/2, or undefined where no steady state exists (P > Vs²/(4·R))
 * @validity Steady state. The lower root is unstable and is never returned.
 * @source derived
 * @check  13.8 V, 1176.47 W, 20 mΩ → 11.8072 V; 12 V, 1764.7 W, 30 mΩ → none; R = 0 → Vs
 */
export function voltageAtConstantPower(sourceV: number, powerW: number, loopOhm: number): number | undefined {
  const root = sourceV * sourceV - 4 * powerW * loopOhm
  return root < 0 ? undefined : (sourceV + Math.sqrt(root)) / 2
}

/**
 * Largest power a source can drive through a loop, Vs²/(4·R) [W]; undefined without resistance.
 *
 * @source derived: the power of V·(Vs − V)/R is largest at V = Vs/2
 * @check  13.8 V, 20 mΩ → 2380.5 W
 */
export function largestPower(sourceV: number, loopOhm: number): number | undefined {
  return loopOhm > 0 ? (sourceV * sourceV) / (4 * loopOhm) : undefined
}
