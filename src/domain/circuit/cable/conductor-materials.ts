/** Resistivity and temperature coefficient of the conductors sold for vehicle wiring. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { Conductor, KnownConductor } from '../../../contract/supply/words.ts'

interface ConductorMaterial {
  readonly name: string
  /** Resistivity at 20 °C as printed [Ω·mm²/m]. */
  readonly ohmMm2PerM: number
  /** Temperature coefficient at 20 °C [1/K]. */
  readonly perK: number
  /** Conductivity, share of annealed copper [% IACS]. */
  readonly iacsPercent: number
  readonly source: SourceId
}

/** 'copper-clad-10' and '-15' hold 10 and 15 % copper by volume around aluminium; their coefficient is taken as aluminium's. */
export const conductorMaterials = {
  copper: { name: 'annealed copper', ohmMm2PerM: 0.0172414, perK: 0.00393, iacsPercent: 100, source: 'iec-60028' },
  aluminium: {
    name: 'electrical aluminium',
    ohmMm2PerM: 0.028264,
    perK: 0.00403,
    iacsPercent: 61,
    source: 'iec-60889'
  },
  'copper-clad-10': {
    name: 'copper-clad aluminium, 10 % copper by volume',
    ohmMm2PerM: 0.027411,
    perK: 0.00403,
    iacsPercent: 62.9,
    source: 'astm-b566'
  },
  'copper-clad-15': {
    name: 'copper-clad aluminium, 15 % copper by volume',
    ohmMm2PerM: 0.026772,
    perK: 0.00403,
    iacsPercent: 64.4,
    source: 'astm-b566'
  }
} as const satisfies Readonly<Record<KnownConductor, ConductorMaterial>>

/** 'unknown' is computed as the poorest conductor usually sold as power cable, 10 % clad. */
const UNKNOWN_COMPUTED_AS = 'copper-clad-10' satisfies KnownConductor

/** The material a stated or unstated composition is computed as. */
export function knownConductor(conductor: Conductor): KnownConductor {
  return conductor === 'unknown' ? UNKNOWN_COMPUTED_AS : conductor
}
