/** One load as the answer shows it. */
import type { CoilLoadRow } from '../../contract/coils/coil-wiring.ts'
import { numberOf } from '../../numeric/rational.ts'
import { present } from '../present.ts'
import { worded } from '../say.ts'
import { type NetworkLoad, ohmNumber, ratioText } from './coil-loads.ts'
import type { CoilSet } from './coil-set.ts'

function powerOf(load: NetworkLoad, totalPowerW: number | undefined) {
  if (totalPowerW === undefined) return {}
  const hottest = (totalPowerW * load.unevenness) / load.shares.length
  return load.balanced ? { coilPowerW: totalPowerW / load.shares.length } : { hottestCoilPowerW: hottest }
}

export function loadRow(
  set: CoilSet,
  load: NetworkLoad,
  lowestLoadOhm: number | undefined,
  totalPowerW: number | undefined
): CoilLoadRow {
  const ratio = ratioText(set, load.ohm)
  return {
    ohm: ohmNumber(load),
    ...present({ ratio }),
    balanced: load.balanced,
    ...(lowestLoadOhm === undefined ? {} : { allowed: ohmNumber(load) >= lowestLoadOhm }),
    ...worded({ join: load.join }),
    ...powerOf(load, totalPowerW),
    ...(load.balanced ? {} : { shares: load.shares.map(numberOf) })
  }
}
