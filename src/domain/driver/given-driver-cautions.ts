/** The check of a sheet in every operation that takes a driver whose coils are already joined. */
import type { DriverRequest } from '../../contract/drivers/driver.ts'
import type { Air } from '../air/air.ts'
import { assumptions } from '../assume.ts'
import type { Caution } from '../caution.ts'
import { present } from '../present.ts'
import { completeSet } from './sheet/complete-set.ts'
import { judgeSet } from './sheet/judge-set.ts'
import { roundingsOf } from './sheet/printed-rounding.ts'
import { setCautions } from './sheet/sheet-cautions.ts'
import { type PartialSmallSignalSet, smallSignalQuantities } from './sheet/small-signal-quantities.ts'
import { airOfVas } from './vas-air.ts'

/**
 * The same codes and levels as completing the sheet gives for the same figures; none where nothing is odd.
 *
 * @param driver  as given; the redundant figures, which the calculation does not use, are what can contradict it
 * @param air  of the request
 */
export function givenDriverCautions(driver: DriverRequest, air: Air): readonly Caution[] {
  const stated: PartialSmallSignalSet = Object.fromEntries(
    smallSignalQuantities.flatMap(name => (driver[name] === undefined ? [] : [[name, driver[name]]]))
  )
  const sheetAir = airOfVas(driver.vasAir, air, assumptions())
  const { sdM2, xmaxM, leH } = driver
  const judged = judgeSet(
    {
      stated,
      roundings: roundingsOf(stated),
      taken: stated,
      sdM2,
      ...present({ xmaxM, leH })
    },
    sheetAir
  )
  return setCautions(judged, completeSet(stated, sheetAir.stiffnessPa).known)
}
