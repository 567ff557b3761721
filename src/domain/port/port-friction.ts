/** What the walls and ends of a port take from the flow: for the response of the box it is built into. */
import type { PortMouth } from '../../contract/ports/words.ts'
import type { Air } from '../air/air.ts'
import type { PortShape } from './port-shape.ts'

/** Viscosity of air at 20 °C [Pa·s]; it hardly depends on pressure. From memory. */
const VISCOSITY_PA_S = 1.81e-5
/** K of the jets at both ends: sharp 0.5 in and 1.0 out, well rounded 0.05 in and about 0.45 out (handbook values, from memory). */
const jets: Readonly<Record<PortMouth, number>> = { sharp: 1.5, flared: 0.5 }
/** K of a length of one hydraulic diameter, and of a mitred right-angle bend (handbook values, from memory). */
const WALL_FRICTION = 0.02
const MITRED_BEND = 1.1

/** Wetted length around one port [m]. */
function perimeterM({ widthM, depthM }: PortShape): number {
  return widthM === undefined ? Math.PI * depthM : 2 * (widthM + depthM)
}

/**
 * Hydraulic diameter of one port.
 *
 *   d = 4·S/P
 *
 * @source textbook of pipe flow, from memory
 * @check  856 × 15 mm → 29.5 mm; a round port: its diameter
 */
export function hydraulicDiameterM(shape: PortShape): number {
  return (4 * shape.areaM2) / perimeterM(shape)
}

/**
 * Loss factor of the quasi-steady flow: Δp = ½ρK v|v|.
 *
 *   K = K_ends + 0.02·L/d + 1.1·bends
 *
 * @param lengthM  L [m], physical
 * @validity ±30 %: steady values, used for a flow to and fro
 * @source handbooks of pipe fittings, from memory
 * @check  587 mm of 856 × 15 mm, sharp → 1.898
 */
export function lossFactor(shape: PortShape, lengthM: number, mouth: PortMouth, bends: number): number {
  return jets[mouth] + (WALL_FRICTION * Math.max(0, lengthM)) / hydraulicDiameterM(shape) + MITRED_BEND * bends
}

/**
 * Q of the friction of a thin laminar layer along the walls, at the tuning.
 *
 *   R = √(ωρμ/2)·P·L/S²,  Q = ωρ·Leff/(S·R) = (Leff/L)·(S/P)·√(2ωρ/μ)
 *
 * @validity layer thin against the height: √(2μ/ωρ) is 0.4 mm in the bass; low speed, turbulence is in {@link lossFactor}
 * @source Kinsler et al., "Fundamentals of Acoustics", from memory
 * @check  856 × 15 mm at 24 Hz, ends left out → 33; a tube of 0.1 m at 32 Hz with its ends → about 160
 */
export function wallFrictionQ(
  shape: PortShape,
  lengthM: number,
  effectiveLengthM: number,
  tuningHz: number,
  { densityKgPerM3 }: Air
): number {
  const layer = Math.sqrt((4 * Math.PI * tuningHz * densityKgPerM3) / VISCOSITY_PA_S)
  // No port is shorter than its walls are thick; a length of nothing has no friction to speak of.
  return (effectiveLengthM / Math.max(lengthM, 0.01)) * (shape.areaM2 / perimeterM(shape)) * layer
}
