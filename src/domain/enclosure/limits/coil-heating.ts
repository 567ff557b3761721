/** How warm the coil gets, and what that does to its resistance. */

/** Temperature at which data sheets state the resistance. */
const COLD_C = 20

/**
 * Temperature coefficients at 20 °C [1/K].
 *
 * @source copper: IEC 60028, International standard of resistance for copper, 1925 (from memory); aluminium: handbooks give
 *   0.0039 to 0.0043 (from memory)
 */
export const resistanceCoefficients = { copper: 0.003_93, aluminium: 0.004_03 } as const
export type CoilMetal = keyof typeof resistanceCoefficients

/**
 *   R/R₂₀ = 1 + α(T − 20 °C)
 *
 * @validity −50 … 300 °C
 * @check  copper, 200 °C → 1.7074
 */
export function resistanceRatio(metal: CoilMetal, coilC: number): number {
  return warmRatio(resistanceCoefficients[metal], coilC)
}

/** {@link resistanceRatio} of a temperature coefficient [1/K]. */
export function warmRatio(perK: number, coilC: number): number {
  return 1 + perK * (coilC - COLD_C)
}

/** Coil to magnet, magnet to the air around it; each with the time it needs. */
export interface HeatPath {
  readonly coilKPerW: number
  readonly coilTimeConstantS: number
  readonly magnetKPerW: number
  readonly magnetTimeConstantS: number
}

/** Heat in one coil [W] at a coil temperature [°C], at the drive in question. */
export type CoilHeat = (coilC: number) => number

/** A coil hotter than any adhesive survives; the model stops there. */
const MELTING_C = 1000

/**
 * Temperature at which the heat led away equals the heat made.
 *
 *   T = T_amb + (R_coil + R_magnet)·P(T)
 *
 * The heat of a voltage-driven coil falls as it warms, so the two curves cross once; found by halving.
 *
 * @returns [°C], at most 1000
 * @source derived: steady heat flow through two resistances; the fixed point of resistance and heat
 * @check  constant 100 W, 1.5 K/W, 25 °C → 175 °C
 */
export function steadyCoilC(heat: CoilHeat, { coilKPerW, magnetKPerW }: HeatPath, ambientC: number): number {
  const resistance = coilKPerW + magnetKPerW
  let low = ambientC
  let high = MELTING_C
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    if (ambientC + resistance * heat(middle) > middle) low = middle
    else high = middle
  }
  return (low + high) / 2
}

interface HeatMoment {
  readonly timeS: number
  readonly coilC: number
}

/**
 * Coil temperature at the given times after switching on, from ambient.
 *
 *   τ_c dT_c/dt = R_c P(T_c) − (T_c − T_m)     τ_m dT_m/dt = R_m P(T_c) − (T_m − T_amb)
 *
 * Steps short against the coil's time constant; within a step the heat is held and each stage follows its exponential.
 *
 * @param times  ascending [s]
 * @source two-stage heat path as usual for loudspeakers, common practice; P_c into the magnet taken as the coil's heat (derived)
 * @check  constant heat, magnet path 0 → T_amb + R_c P(1 − e^(−t/τ_c))
 */
export function coilWarming(
  heat: CoilHeat,
  path: HeatPath,
  ambientC: number,
  times: readonly number[]
): readonly HeatMoment[] {
  let coilRise = 0
  let magnetRise = 0
  let now = 0
  return times.map(timeS => {
    while (now < timeS) {
      const early = Math.max(now / 20, path.coilTimeConstantS / 20)
      const step = Math.min(early, timeS - now)
      const power = heat(Math.min(MELTING_C, ambientC + coilRise + magnetRise))
      coilRise += (power * path.coilKPerW - coilRise) * -Math.expm1(-step / path.coilTimeConstantS)
      magnetRise += (power * path.magnetKPerW - magnetRise) * -Math.expm1(-step / path.magnetTimeConstantS)
      now += step
    }
    return { timeS, coilC: Math.min(MELTING_C, ambientC + coilRise + magnetRise) }
  })
}
