/** Filters and equalisers before the amplifier, as a caller describes them. */
import type { FilterFamily } from '../../contract/enclosures/words.ts'

export interface PassFilter {
  readonly kind: 'high-pass' | 'low-pass'
  readonly family: FilterFamily
  /** 1 … 8; even for Linkwitz-Riley, 2 for a chosen Q. */
  readonly order: number
  readonly cornerHz: number
  /** Only with the family `chosen-q`. */
  readonly q?: number
}

export interface ShelfFilter {
  readonly kind: 'low-shelf' | 'high-shelf'
  /** Half of the gain in decibel is reached here. */
  readonly cornerHz: number
  readonly gainDb: number
  readonly q?: number
}

export interface PeakingFilter {
  readonly kind: 'peaking'
  readonly centreHz: number
  readonly gainDb: number
  readonly q: number
}

export type Filter = PassFilter | ShelfFilter | PeakingFilter

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
