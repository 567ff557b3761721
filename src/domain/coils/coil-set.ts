/** The coils of a request, alike or not, with exact resistances. */
import type { CoilWiringRequest } from '../../contract/coils/coil-wiring.ts'
import { MOST_COILS_LISTED_IN_FULL } from '../../contract/coils/words.ts'
import { numberOf, type Rational, rationalOf } from '../../numeric/rational.ts'
import { DesignError, requirePositive } from '../design-error.ts'
import { say } from '../say.ts'
import type { Coil } from './coil-network.ts'

type CoilSetRequest = Pick<CoilWiringRequest, 'driverCount' | 'coilsPerDriver' | 'coilOhm' | 'coilsOhm'>

export interface CoilSet {
  readonly driverCount: number
  readonly coilsPerDriver: number
  /** In the order of the drivers, each driver's coils together. */
  readonly coils: readonly Coil[]
  readonly ohmOf: (coil: Coil) => Rational
  /** Rated impedance of each coil [Ω] when all are alike. */
  readonly alikeOhm: number | undefined
  /** The same with exact resistance. */
  readonly alike: Rational | undefined
}

function listOfOhm({ driverCount, coilsPerDriver, coilOhm, coilsOhm }: CoilSetRequest): readonly number[] {
  const count = driverCount * coilsPerDriver
  if (coilsOhm === undefined) {
    if (coilOhm === undefined) {
      throw new DesignError('missing-input', {
        field: 'coilOhm',
        detail: say('refused.give-coilohm-when-all-coils-are')
      })
    }
    requirePositive('coilOhm', coilOhm, 'Ω')
    return Array.from({ length: count }, () => coilOhm)
  }
  if (coilOhm !== undefined) {
    throw new DesignError('conflicting-input', {
      field: 'coilsOhm',
      detail: say('refused.give-either-coilohm-or-coilsohm-not')
    })
  }
  if (coilsOhm.length !== count) {
    throw new DesignError('conflicting-input', {
      field: 'coilsOhm',
      detail: say('refused.coilsohm-has-entries-but-drivers-with', {
        coilsOhm: coilsOhm.length,
        driverCount,
        coilsPerDriver,
        count
      })
    })
  }
  for (const [index, ohm] of coilsOhm.entries()) requirePositive(`coilsOhm[${index}]`, ohm, 'Ω')
  return coilsOhm
}

function requireFewEnough(values: readonly number[]): void {
  if (new Set(values).size > 1 && values.length > MOST_COILS_LISTED_IN_FULL) {
    throw new DesignError('out-of-range', {
      field: 'coilsOhm',
      detail: say('refused.unlike-coils-are-worked-out-for', { mostCoilsListedInFull: MOST_COILS_LISTED_IN_FULL })
    })
  }
}

/** @throws DesignError `missing-input`, `conflicting-input`, `not-positive`, `out-of-range` */
export function coilSet(request: CoilSetRequest): CoilSet {
  const { driverCount, coilsPerDriver } = request
  const values = listOfOhm(request)
  requireFewEnough(values)
  const exact = values.map(rationalOf)
  const [first] = exact
  const alike = new Set(values).size === 1 ? first : undefined
  return {
    driverCount,
    coilsPerDriver,
    coils: values.map((_, index) => ({
      driver: Math.floor(index / coilsPerDriver) + 1,
      coil: (index % coilsPerDriver) + 1
    })),
    ohmOf: ({ driver, coil }) => exact[(driver - 1) * coilsPerDriver + coil - 1] ?? rationalOf(0),
    alikeOhm: alike === undefined ? undefined : numberOf(alike),
    alike
  }
}
