/** What a port loses to the jets at its ends when the air moves fast. */

/**
 * First-harmonic resistance of a quasi-steady jet loss Δp = ½ρK v|v| for a sine of the given peak speed.
 *
 *   R = (4/3π)·ρ·K·v̂/S
 *
 * @param peakSpeedMPerS  mean over the area, peak
 * @param lossFactor      K, inlet and exit together: about 1 to 1.5 sharp, 0.2 to 0.5 with generous flares
 * @returns [Pa·s/m³] of one port
 * @validity air moved to and fro by more than the port's radius (2πf·r/v̂ < 1); below that it is an upper estimate
 * @source derived from the loss of a steady jet; compare Ingard & Ising, JASA 42, 1967 (from memory)
 * @check  ρ 1.2041, S 78.5398 cm², K 1.5, 17 m/s → 1659.2 Pa·s/m³
 */
export function jetResistance(
  densityKgPerM3: number,
  areaM2: number,
  lossFactor: number,
  peakSpeedMPerS: number
): number {
  return (4 * densityKgPerM3 * lossFactor * peakSpeedMPerS) / (3 * Math.PI * areaM2)
}
