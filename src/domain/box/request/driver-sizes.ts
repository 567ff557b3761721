/** Sizes of a driver that no board can take. */

import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import { DesignError } from '../../design-error.ts'
import { inMm } from '../../digits.ts'
import { type Boards, boardsOf } from './boards-of-face.ts'
import { driverFixing } from './driver-fixing.ts'

/** Wood that stays under a rebate [m]; common practice, no source. */
const UNDER_REBATE_M = 6e-3

function screwFault(driver: BoxDriver, field: string): DesignError | undefined {
  const { screwCircleDiameterM: circle, cutOutDiameterM, flangeDiameterM, massKg } = driver
  if (circle === undefined) return undefined
  const { pilotM } = driverFixing(massKg)
  const at = { field: `${field}.screwCircleDiameterM`, value: circle, unit: 'm' }
  if (cutOutDiameterM !== undefined && circle <= cutOutDiameterM + pilotM) {
    const minimum = cutOutDiameterM + pilotM
    const detail = `The screws on ${inMm(circle, 1)} find no wood: their pilots of ${inMm(pilotM, 1)} break into the hole of ${inMm(cutOutDiameterM, 1)}.`
    return new DesignError('conflicting-input', { ...at, minimum, detail })
  }
  if (flangeDiameterM !== undefined && circle >= flangeDiameterM - pilotM) {
    const maximum = flangeDiameterM - pilotM
    const detail = `The screws on ${inMm(circle, 1)} miss the flange of ${inMm(flangeDiameterM, 1)}.`
    return new DesignError('conflicting-input', { ...at, maximum, detail })
  }
  return undefined
}

function flangeFault({ cutOutDiameterM, flangeDiameterM }: BoxDriver, field: string): DesignError | undefined {
  if (cutOutDiameterM === undefined || flangeDiameterM === undefined || flangeDiameterM > cutOutDiameterM)
    return undefined
  return new DesignError('conflicting-input', {
    field: `${field}.flangeDiameterM`,
    value: flangeDiameterM,
    minimum: cutOutDiameterM,
    unit: 'm',
    detail: `A flange of ${inMm(flangeDiameterM, 1)} falls through a hole of ${inMm(cutOutDiameterM, 1)}.`
  })
}

/** A rebate is sunk into the outermost board alone. */
function rebateFault(driver: BoxDriver, field: string, boards: Boards): DesignError | undefined {
  const { rebateDepthM, flangeDiameterM } = driver
  if (rebateDepthM === undefined) return undefined
  if (flangeDiameterM === undefined) {
    const detail = 'A rebate is as wide as the flange: give its diameter.'
    return new DesignError('missing-input', { field: `${field}.flangeDiameterM`, detail })
  }
  const maximum = Math.min(boards.thicknessM, boardsOf(driver, boards) - UNDER_REBATE_M)
  if (rebateDepthM <= maximum + 1e-9) return undefined
  return new DesignError('out-of-range', {
    field: `${field}.rebateDepthM`,
    value: rebateDepthM,
    maximum,
    unit: 'm',
    detail: `A rebate of ${inMm(rebateDepthM, 1)} leaves too little of the board: at most ${inMm(Math.max(0, maximum), 1)}, so that ${inMm(UNDER_REBATE_M, 1)} stay under the flange.`
  })
}

/** @throws DesignError `conflicting-input`, `missing-input`, `out-of-range` */
export function checkDrivers(drivers: readonly BoxDriver[], boards: Boards): void {
  for (const [i, driver] of drivers.entries()) {
    const field = `drivers[${i}]`
    const fault = screwFault(driver, field) ?? flangeFault(driver, field) ?? rebateFault(driver, field, boards)
    if (fault !== undefined) throw fault
  }
}
