/** Which of the possible loads to wire. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { Assumptions } from '../assume.ts'
import { toDigits } from '../digits.ts'
import { say } from '../say.ts'
import { type NetworkLoad, ohmNumber, type PossibleLoad } from './coil-loads.ts'
import type { CoilSet } from './coil-set.ts'
import { coilDefaults } from './defaults.ts'

export interface Wanted {
  readonly lowestLoadOhm?: number
  /** The request field that set the limit. */
  readonly limitField?: 'minimumOhm' | 'channelMinimumOhm'
  readonly targetOhm?: number
}

export interface LoadChoice {
  /** The loads worth wiring, ascending: balanced ones, or the most even where unlike coils allow no balance. */
  readonly candidates: readonly PossibleLoad[]
  readonly load: NetworkLoad | undefined
  readonly why: Said
}

/** Nearest in ratio; of two equally near, the lower. */
export function nearestInRatio(loads: readonly PossibleLoad[], targetOhm: number): PossibleLoad | undefined {
  const distance = (load: PossibleLoad) => Math.abs(Math.log(ohmNumber(load) / targetOhm))
  const [first, ...others] = loads
  return others.reduce(
    (best, load) => (best === undefined || distance(load) < distance(best) - 1e-12 ? load : best),
    first
  )
}

function candidatesOf(loads: readonly PossibleLoad[]): readonly PossibleLoad[] {
  const balanced = loads.filter(load => load.balanced)
  return balanced.length > 0 ? balanced : loads
}

/**
 * With a target, the allowed load nearest to it; without, the lowest allowed, which takes most power from the amplifier;
 * with neither, the load nearest to the coil's own rating. Where no network balances, the most even allowed one.
 */
export function chooseLoad(
  set: CoilSet,
  loads: readonly PossibleLoad[],
  { lowestLoadOhm, targetOhm }: Wanted,
  assumed: Assumptions
): LoadChoice {
  const candidates = candidatesOf(loads)
  const allowed = candidates.filter(load => lowestLoadOhm === undefined || ohmNumber(load) >= lowestLoadOhm)
  if (allowed.every(load => !load.balanced)) {
    const evenest = Math.min(...allowed.map(load => load.unevenness))
    const even = allowed.filter(load => load.unevenness <= evenest + 1e-9)
    const load = targetOhm === undefined ? even[0] : nearestInRatio(even, targetOhm)
    return {
      candidates,
      load: load?.made(),
      why: say('coils.why.even')
    }
  }
  if (targetOhm === undefined && lowestLoadOhm !== undefined) {
    return { candidates, load: allowed[0]?.made(), why: say('coils.why.lowest') }
  }
  const target = assumed.work(
    targetOhm,
    'targetOhm',
    set.alikeOhm ?? ohmNumber(allowed[0] as PossibleLoad),
    coilDefaults.targetOhm
  )
  return {
    candidates,
    load: nearestInRatio(allowed, target)?.made(),
    why: say(lowestLoadOhm === undefined ? 'coils.why.nearest' : 'coils.why.nearest-allowed', {
      targetOhm: toDigits(target)
    })
  }
}
