/** The cable a fuse protects: its size, metal and surroundings, resolved from what the caller says. */

import type { CableRequest } from '../../../contract/supply/fuse.ts'
import type { Conductor, FusePolicy, KnownConductor } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { type Ampacity, ampacity, type Surroundings } from '../cable/ampacity.ts'
import { type CableSize, cableSize } from '../cable/cable-size.ts'
import { knownConductor } from '../cable/conductor-materials.ts'
import { cableDefaults } from '../cable/defaults.ts'
import { fuseDefaults } from './defaults.ts'

/** Of several spaces that the run passes the hottest decides. */
export type SurroundingsRequest = Pick<CableRequest, 'insulationC' | 'ambientC' | 'spaces' | 'bundledConductors'>

/** Insulation, ambient and bundling, each default echoed. `at` ends in a dot or is empty. */
export function surroundings(request: SurroundingsRequest, assumed: Assumptions, at: string): Surroundings {
  const { ambientCabinC, ambientEngineBayC, insulationC, bundledConductors } = cableDefaults
  const cool = request.spaces !== undefined && !request.spaces.includes('engine-bay')
  const ambient = cool ? ambientCabinC : ambientEngineBayC
  return {
    insulationC: assumed.take(request.insulationC, `${at}insulationC`, insulationC),
    ambientC: assumed.take(request.ambientC, `${at}ambientC`, ambient),
    bundledConductors: assumed.take(request.bundledConductors, `${at}bundledConductors`, bundledConductors)
  }
}

export interface ProtectedCable {
  readonly size: CableSize
  readonly material: KnownConductor
  readonly compositionUnknown: boolean
  readonly surroundings: Surroundings
  readonly ampacity: Ampacity
  readonly ampacityA: number
  /** Largest fuse the policy allows [A]. */
  readonly highestFuseA: number
}

/**
 * Largest fuse on a cable.
 *
 *   strict: In ≤ Iz;  cfr-150: In ≤ 1.5·Table 5 value, circuits under 50 V
 *
 * @source strict: our default; 33 CFR 183.455(c)(1) (read)
 * @check  8 AWG, 105 °C at 30 °C: strict 80 A, 150 % 120 A
 */
export function highestFuse(policy: FusePolicy, carries: Ampacity, systemVoltageV: number): number {
  const { ampacityA = 0, tableA = 0, metalFactor } = carries
  if (policy === 'strict' || systemVoltageV >= fuseDefaults.cfrPolicyBelowV.value) return ampacityA
  return fuseDefaults.cfrPolicyFactor.value * tableA * metalFactor
}

/** @throws DesignError `unknown-designation`, `missing-input`, `out-of-range`, `insulation-below-ambient` */
export function protectedCable(
  request: CableRequest,
  policy: FusePolicy,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string
): ProtectedCable {
  const size = cableSize(request.designation, request.gaugeSystem, `${at}designation`)
  const conductor = assumed.take<Conductor>(request.conductor, `${at}conductor`, cableDefaults.conductor)
  const material = knownConductor(conductor)
  const around = surroundings(request, assumed, at)
  const carries = ampacity(size, material, around, at)
  if (carries.ampacityA === undefined) {
    throw new DesignError('out-of-range', {
      field: `${at}designation`,
      value: request.designation,
      detail: say('refused.lies-outside-the-ampacity-table-18', { designation: size.designation })
    })
  }
  return {
    size,
    material,
    compositionUnknown: conductor === 'unknown',
    surroundings: around,
    ampacity: carries,
    ampacityA: carries.ampacityA,
    highestFuseA: highestFuse(policy, carries, systemVoltageV)
  }
}

export function compositionCaution(at: string, designation: string | undefined): Caution {
  const named = designation ?? say('cable.the')
  return caution('composition-unknown', say('composition-unknown', { designation: named }), {
    at,
    figures: { resistanceRatio: 1.59, ampacityRatio: 0.793 }
  })
}
