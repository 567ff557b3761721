/** Of a box that is only tried: the few figures that decide, each the same as in the whole response. */

import type { Protection } from '../../../contract/enclosures/large-signal.ts'
import { assumptions } from '../../assume.ts'
import { cabinGain } from '../../cabin/cabin-gain.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { drivePeaks } from '../limits/drive-peaks.ts'
import { programmeGrid } from '../limits/large-signal.ts'
import { protectionOf, radiatorCornerHz } from '../limits/protection.ts'
import type { ResponseRequest } from '../model/request.ts'
import { responseSystem, solveGrid } from '../model/response-system.ts'
import { chamberPressure } from '../response/curves.ts'
import { frequenciesOf } from '../response/frequencies.ts'
import { atOneVolt } from '../response/response-at-one-volt.ts'

export interface ConeNeeds {
  readonly limits: {
    readonly atDrive: { readonly coneExcursionOfXmax?: number }
    readonly protection?: Protection
  }
  /** Of the high-pass that holds the passive radiators, where they need one. */
  readonly radiatorCornerHz?: number
}

const bare = <Result>(result: Result): Outcome<Result> => ({
  result,
  cautions: [],
  assumed: [],
  sources: [],
  basis: []
})

/**
 * How far the cone goes at the drive given, and the high-pass that holds it.
 *
 * @param request  of a preset, `limits` in it
 * @throws DesignError where the whole response refuses system, cabin or programme
 */
export function coneNeeds(request: ResponseRequest): Outcome<ConeNeeds> {
  const assume = assumptions()
  const system = responseSystem(request, assume)
  const { cabin, limits = {} } = request
  if (cabin !== undefined) cabinGain(cabin, system.air.soundSpeedMPerS, new Float64Array(0), assume)
  const drive = atOneVolt(system, programmeGrid(limits, assume))
  const { coneExcursionOfXmax } = drivePeaks(system, drive)
  const { xmaxM } = system.driver
  const protection = xmaxM === undefined ? undefined : protectionOf(system, xmaxM)
  const { passiveRadiatorXmaxM: travelM } = limits
  const [radiators] = drive.radiators
  const cornerHz =
    radiators === undefined || travelM === undefined
      ? undefined
      : radiatorCornerHz(drive.frequenciesHz, radiators.perVolt, system.voltageV, travelM)
  return bare({
    limits: { atDrive: present({ coneExcursionOfXmax }), ...present({ protection }) },
    ...present({ radiatorCornerHz: cornerHz })
  })
}

/** The highest RMS pressure in the rear chamber over the frequencies asked for [Pa]; 0 where there is none. */
export function highestChamberPressurePa(request: ResponseRequest): Outcome<number> {
  const assume = assumptions()
  const system = responseSystem(request, assume)
  const solution = solveGrid(system, frequenciesOf(request, assume))
  return bare(Math.max(...(chamberPressure(system, solution, 'rear') ?? [0])))
}
