/** Resistance of a cable per metre, from its table or from its metal, at the conductor's temperature. */

import type { SourceId } from '../../../contract/sources/source.ts'
import type { CableChoiceRequest } from '../../../contract/supply/supply-cables.ts'
import type { Conductor, KnownConductor } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { present } from '../../present.ts'
import type { CableSize } from './cable-size.ts'
import { conductorMaterials, knownConductor } from './conductor-materials.ts'
import { cableDefaults } from './defaults.ts'
import {
  iec60228Class2Aluminium,
  iec60228Class5,
  iso6722Copper,
  type ResistanceTable,
  tabulatedOhmPerM
} from './metric-resistance-tables.ts'

/** What a request may say about the metal; everything that is left out is a default. */
export type ConductorRequest = Pick<
  CableChoiceRequest,
  'conductor' | 'metricResistance' | 'resistivityOhmM' | 'temperatureCoefficientPerK' | 'strandingFactor'
>

export interface ConductorLaw {
  readonly material: KnownConductor
  readonly compositionUnknown: boolean
  /** Resistivity at 20 °C [Ω·m]. */
  readonly resistivityOhmM: number
  readonly perK: number
  readonly strandingFactor: number
  /** Tables tried first for a metric size. */
  readonly table?: ResistanceTable
  readonly source: SourceId
}

function metricTable(request: ConductorRequest, material: KnownConductor): ResistanceTable | undefined {
  if (request.resistivityOhmM !== undefined || request.metricResistance === 'nominal-area') return undefined
  if (material === 'aluminium') return iec60228Class2Aluminium
  if (material !== 'copper') return undefined
  return request.metricResistance === 'iso-6722-1' ? iso6722Copper : iec60228Class5
}

/** Settles the metal; `at` is the path of the request object the fields stand in, '' or ending in a dot. */
export function conductorLaw(request: ConductorRequest, assumed: Assumptions, at = ''): ConductorLaw {
  const conductor = assumed.take<Conductor>(request.conductor, `${at}conductor`, cableDefaults.conductor)
  const material = knownConductor(conductor)
  const metal = conductorMaterials[material]
  const table = metricTable(request, material)
  return {
    material,
    compositionUnknown: conductor === 'unknown',
    resistivityOhmM: request.resistivityOhmM ?? metal.ohmMm2PerM / 1e6,
    perK: request.temperatureCoefficientPerK ?? metal.perK,
    strandingFactor: assumed.take(request.strandingFactor, `${at}strandingFactor`, cableDefaults.strandingFactor),
    ...present({ table }),
    source: metal.source
  }
}

/**
 * Resistance of one metre of conductor.
 *
 *   r(T) = r20·(1 + α·(T − 20)),  r20 = ρ20·s/A, or the tabulated maximum of a metric size
 *
 * @param size  area A [m²] > 0
 * @param law  resistivity ρ20 [Ω·m], α [1/K], stranding factor s ≥ 1
 * @param temperatureC  T of the conductor [°C], −60 … 250
 * @returns [Ω/m]
 * @validity Direct current and bass frequencies; skin depth in copper is 4.7 mm at 200 Hz.
 * @source ASTM B258 and IEC 60028 (AWG, SAE), IEC 60228 or ISO 6722-1 (metric); stranding: NFPA 70 Chapter 9 Table 8
 * @check  4 AWG copper at 20 °C → 0.8315 mΩ/m; at 75 °C 0.308 Ω per 1000 ft
 */
export function conductorOhmPerM(size: CableSize, law: ConductorLaw, temperatureC: number): number {
  const tabulated =
    law.table === undefined || size.mm2 === undefined ? undefined : tabulatedOhmPerM(law.table, size.mm2)
  const at20C = tabulated ?? (law.resistivityOhmM * law.strandingFactor) / size.areaM2
  return at20C * (1 + law.perK * (temperatureC - 20))
}

/**
 * The area that would have this resistance per metre [m²], by the metal alone; inverse of {@link conductorOhmPerM}.
 *
 * @source derived: the law of resistance solved for the area
 */
export function areaForOhmPerM(ohmPerM: number, law: ConductorLaw, temperatureC: number): number {
  return (law.resistivityOhmM * law.strandingFactor * (1 + law.perK * (temperatureC - 20))) / ohmPerM
}
