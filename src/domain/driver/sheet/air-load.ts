/** The air a cone carries with it while its resonance is measured. */

/**
 * Air load of a cone that stands free, both sides together: part of Mms, not of the bare mass Mmd. A sheet's fs is measured
 * so; a baffle doubles the load of each side, 2·(8/3)·ρ·a³ in all.
 *
 *   2·(4/3)·ρ·a³,  a = √(Sd/π)
 *
 * @param sdM2  [m²] > 0
 * @param densityKgPerM3  [kg/m³] > 0
 * @returns [kg]
 * @validity A flat rigid disc, long wavelengths; a real cone and its frame differ by a tenth or so.
 * @source Beranek & Mellow, "Acoustics: Sound Fields and Transducers", 2012; Lamb, "Hydrodynamics", 1932, art. 102; from memory
 * @check  a 0.124 m, ρ 1.2041 → 0.006122 kg; the oblate spheroid of vanishing thickness gives the same
 */
export function freeConeAirLoadKg(sdM2: number, densityKgPerM3: number): number {
  return (8 / 3) * densityKgPerM3 * Math.sqrt(sdM2 / Math.PI) ** 3
}
