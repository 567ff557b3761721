/** Sections of a chain of filters, and the poles they are made of. */

/** H(s) = (b₀ + b₁s + b₂s²)/(a₀ + a₁s + a₂s²) with s = j·f/cornerHz. */
export interface FilterSection {
  readonly cornerHz: number
  readonly numerator: readonly [number, number, number]
  readonly denominator: readonly [number, number, number]
}

/** A pole pair of a low-pass whose corner is 1: place and Q; a single real pole has no Q. */
export interface PrototypePole {
  readonly corner: number
  readonly q?: number
}
