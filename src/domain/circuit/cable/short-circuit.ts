/** What a conductor survives while a fuse opens: all heat stays in the metal. */
import type { KnownConductor } from '../../../contract/supply/words.ts'

/** K [A·√s/mm²] and β [°C] of IEC 60364-5-54; clad aluminium is not in the standard and takes the aluminium pair. */
export const standardPairs = { copper: { K: 226, beta: 234.5 }, aluminium: { K: 148, beta: 228 } } as const

/**
 * Short-circuit constant of a conductor.
 *
 *   k = K·√ln((β + T1)/(β + T0))
 *
 * @param startC  T0 [°C] before the fault; @param endC  T1 [°C] the insulation survives once, above T0
 * @returns k [A·√s/mm²]
 * @validity 0.1 … 5 s, up to 300 mm².
 * @source IEC 60364-4-43 and 60364-5-54
 * @check  copper 70 → 160 °C: 115; 90 → 250 °C: 143; aluminium 70 → 160 °C: 76
 */
export function shortCircuitK(material: KnownConductor, startC: number, endC: number): number {
  const { K, beta } = material === 'copper' ? standardPairs.copper : standardPairs.aluminium
  return K * Math.sqrt(Math.log((beta + endC) / (beta + startC)))
}

interface AdiabaticMetal {
  /** Heat capacity of the metal by volume [J/(m³·K)]. */
  readonly heatCapacityJPerM3K: number
  readonly resistivityOhmM: number
  readonly perK: number
}

/**
 * The same constant from the metal itself.
 *
 *   k² = Qc/(ρ20·α)·ln((β + T1)/(β + T0)),  β = 1/α − 20
 *
 * @returns k [A·√s/mm²]
 * @source IEC 60364-5-54 annex, the formula behind its K (from memory)
 * @check  Qc 3.45e6, ρ20 1.7241e-8, α 0.00393 → K 226
 */
export function shortCircuitKOfMetal(metal: AdiabaticMetal, startC: number, endC: number): number {
  const beta = 1 / metal.perK - 20
  const K2 = metal.heatCapacityJPerM3K / (metal.resistivityOhmM * metal.perK)
  return Math.sqrt(K2 * Math.log((beta + endC) / (beta + startC))) / 1e6
}

/** Let-through the conductor survives, k²·S² [A²s], for a section [m²]. @check k 115, 1.309 mm² → 22 661 A²s */
export function withstandA2s(k: number, areaM2: number): number {
  return (k * areaM2 * 1e6) ** 2
}

/** Least section [m²] for a current over a time: S = I·√t/k. @check 900 A, 1 s, k 115 → 7.826 mm² */
export function leastAreaForFault(k: number, currentA: number, durationS: number): number {
  return (currentA * Math.sqrt(durationS)) / k / 1e6
}
