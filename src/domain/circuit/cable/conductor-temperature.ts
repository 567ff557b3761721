/** Estimate of a conductor's temperature from the heat it makes and the heat it loses. Printed beside results, never a limit. */

import { bracketedRoot } from '../../../numeric/bracketed-root.ts'
import { CELSIUS_ZERO_K } from '../../constants.ts'
import { cableDefaults } from './defaults.ts'

/** Stefan-Boltzmann constant [W/(m²·K⁴)], exact SI 2019, rounded to its printed digits. */
const SIGMA = 5.670374419e-8
const PRANDTL = 0.71
const GRAVITY = 9.80665
/** Thermal resistivity of PVC [K·m/W], IEC 60287-2-1; cross-linked PE would be 3.5 and run a little cooler. */
const PVC_K_M_PER_W = 5
/** Above this no plastic insulation is left; the estimate stops here [°C]. */
const HOTTEST_C = 400
/** Insulation wall [m] up to a conductor area [m²]; ISO 6722 thick wall, from memory. */
const walls = [
  [1.1e-6, 0.6e-3],
  [2.6e-6, 0.7e-3],
  [6.5e-6, 0.8e-3],
  [18e-6, 1e-3],
  [40e-6, 1.3e-3],
  [75e-6, 1.5e-3],
  [Number.POSITIVE_INFINITY, 1.6e-3]
] as const

export interface CableInAir {
  readonly areaM2: number
  /** Conductor resistance at 20 °C [Ω/m]. */
  readonly ohmPerM20: number
  readonly perK: number
  readonly ambientC: number
  readonly wallM?: number
}

/** Insulation wall of a conductor area [m]. @source ISO 6722 thick wall, from memory */
function wallOf(areaM2: number): number {
  return walls.find(([upTo]) => areaM2 <= upTo)?.[1] ?? 1.6e-3
}

interface Round {
  readonly innerM: number
  readonly outerM: number
}

export function diameters({ areaM2, wallM }: CableInAir): Round {
  const innerM = Math.sqrt((4 * areaM2) / (cableDefaults.fillFactor.value * Math.PI))
  return { innerM, outerM: innerM + 2 * (wallM ?? wallOf(areaM2)) }
}

/** Heat a metre of cable loses at a surface temperature [W/m]: free convection and radiation. */
function heatLoss(outerM: number, surfaceK: number, ambientK: number): number {
  const film = (surfaceK + ambientK) / 2
  const conductivity = 0.0241 * (film / CELSIUS_ZERO_K) ** 0.81
  const viscosity = 1.327e-5 * (film / CELSIUS_ZERO_K) ** 1.81
  const rise = surfaceK - ambientK
  const rayleigh = (((GRAVITY / film) * rise * outerM ** 3) / viscosity ** 2) * PRANDTL
  const nusselt = (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / PRANDTL) ** (9 / 16)) ** (8 / 27)) ** 2
  const convection = ((nusselt * conductivity) / outerM) * rise
  const radiation = cableDefaults.emissivity.value * SIGMA * (surfaceK ** 4 - ambientK ** 4)
  return Math.PI * outerM * (convection + radiation)
}

/** Heat lost when the conductor, not the surface, has a temperature [W/m]. */
export function heatLossAtConductor(cable: CableInAir, conductorC: number): number {
  const { innerM, outerM } = diameters(cable)
  const ambientK = cable.ambientC + CELSIUS_ZERO_K
  const wallKMPerW = wallResistance({ innerM, outerM })
  const excess = (surfaceK: number) => {
    const q = heatLoss(outerM, surfaceK, ambientK)
    return surfaceK + q * wallKMPerW - (conductorC + CELSIUS_ZERO_K)
  }
  return heatLoss(outerM, surfaceBetween(excess, ambientK, conductorC + CELSIUS_ZERO_K), ambientK)
}

/** Of kelvins: a ten-thousandth of what any digit shows. */
const SAME_SURFACE = 1e-13

/** The surface at which a balance that only grows comes out. */
function surfaceBetween(excess: (surfaceK: number) => number, lowK: number, highK: number): number {
  const [atLow, atHigh] = [excess(lowK), excess(highK)]
  if (atLow >= 0) return lowK
  return atHigh <= 0 ? highK : bracketedRoot(excess, lowK, highK, atLow, atHigh, SAME_SURFACE)
}

const ohmPerMAt = (cable: CableInAir, conductorC: number) => cable.ohmPerM20 * (1 + cable.perK * (conductorC - 20))

/**
 * Current that holds a conductor at a temperature.
 *
 *   I²·r20·(1 + α·(Tc − 20)) = π·D·(h·(Ts − Ta) + ε·σ·(Ts⁴ − Ta⁴)) = q,  Tc − Ts = q·ρth·ln(D/d)/(2π)
 *
 * @param cable  area 0.5 … 110 mm², ambient [°C] below conductorC
 * @returns [A]
 * @validity One cable in still air, Tc 40 … 125 °C; in foam, carpet or a loom it is hotter.
 * @source Churchill and Chu, Int. J. Heat Mass Transfer 18, 1975, p. 1049 (from memory); ρth IEC 60287-2-1
 * @check  4 AWG, 105 °C in 30 °C, wall 1.3 mm → 170.6 A (Table 5: 160)
 */
export function currentForTemperature(cable: CableInAir, conductorC: number): number {
  if (conductorC <= cable.ambientC) return 0
  return Math.sqrt(heatLossAtConductor(cable, conductorC) / ohmPerMAt(cable, conductorC))
}

/** Resistance of the insulation to heat over a metre of cable [K·m/W]. */
function wallResistance({ innerM, outerM }: Round): number {
  return (PVC_K_M_PER_W * Math.log(outerM / innerM)) / (2 * Math.PI)
}

/**
 * Temperature a current holds a conductor at; inverse of {@link currentForTemperature}.
 *
 * The conductor is q·W hotter than its surface and its resistance linear in that, so the heat made is known from the
 * surface alone, q = I²·r20·(1 + α·(Ts − 20))/(1 − I²·r20·α·W), and one search over the surface is enough.
 *
 * @returns [°C], at most {@link HOTTEST_C}
 * @check  50 A, 4 AWG, 30 °C, wall 1.3 mm → 37.3 °C; 29 A, 2.5 mm², wall 0.47 mm → 67.6 °C
 */
export function conductorTemperature(cable: CableInAir, currentA: number): number {
  const round = diameters(cable)
  const wall = wallResistance(round)
  const heat20 = currentA * currentA * cable.ohmPerM20
  const feedback = 1 - heat20 * cable.perK * wall
  if (heat20 === 0) return cable.ambientC
  if (feedback <= 0) return HOTTEST_C
  const ambientK = cable.ambientC + CELSIUS_ZERO_K
  const made = (surfaceK: number) => (heat20 * (1 + cable.perK * (surfaceK - CELSIUS_ZERO_K - 20))) / feedback
  const excess = (surfaceK: number) => heatLoss(round.outerM, surfaceK, ambientK) - made(surfaceK)
  const hottestK = HOTTEST_C + CELSIUS_ZERO_K
  if (excess(hottestK) <= 0) return HOTTEST_C
  const surfaceK = surfaceBetween(excess, ambientK, hottestK)
  return Math.min(HOTTEST_C, surfaceK - CELSIUS_ZERO_K + made(surfaceK) * wall)
}
