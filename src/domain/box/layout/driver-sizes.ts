/** Sizes of a driver that no board can take. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import { DesignError } from '../../design-error.ts'
import { driverFixing } from '../solids/driver-fixing.ts'
import { boardsOf } from './displaced.ts'

interface Boards {
  readonly thicknessM: number
  readonly frontLayers: number
}

/** Wood that stays under a rebate [m]; common practice, no source. */
const UNDER_REBATE_M = 6e-3

const mm = (metres: number) => `${Number((metres * 1e3).toFixed(1))} mm`

function screwFault(driver: BoxDriver, field: string): DesignError | undefined {
  const { screwCircleDiameterM: circle, cutOutDiameterM, flangeDiameterM, massKg } = driver
  if (circle === undefined) return undefined
  const { pilotM } = driverFixing(massKg)
  const at = { field: `${field}.screwCircleDiameterM`, value: circle, unit: 'm' }
  if (cutOutDiameterM !== undefined && circle <= cutOutDiameterM + pilotM) {
    const minimum = cutOutDiameterM + pilotM
    const detail = `The screws on ${mm(circle)} find no wood: their pilots of ${mm(pilotM)} break into the hole of ${mm(cutOutDiameterM)}.`
    return new DesignError('conflicting-input', { ...at, minimum, detail })
  }
  if (flangeDiameterM !== undefined && circle >= flangeDiameterM - pilotM) {
    const maximum = flangeDiameterM - pilotM
    const detail = `The screws on ${mm(circle)} miss the flange of ${mm(flangeDiameterM)}.`
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
    detail: `A flange of ${mm(flangeDiameterM)} falls through a hole of ${mm(cutOutDiameterM)}.`
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
    detail: `A rebate of ${mm(rebateDepthM)} leaves too little of the board: at most ${mm(Math.max(0, maximum))}, so that ${mm(UNDER_REBATE_M)} stay under the flange.`
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
