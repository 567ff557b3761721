/** Sizes of a driver that no board can take. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import { DesignError } from '../../design-error.ts'
import { toMm } from '../../digits.ts'
import { say } from '../../say.ts'
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
    const detail = say('refused.the-screws-on-find-no-wood', {
      circleMm: toMm(circle, 1),
      pilotMm: toMm(pilotM, 1),
      cutOutDiameterMm: toMm(cutOutDiameterM, 1)
    })
    return new DesignError('conflicting-input', { ...at, minimum, detail })
  }
  if (flangeDiameterM !== undefined && circle >= flangeDiameterM - pilotM) {
    const maximum = flangeDiameterM - pilotM
    const detail = say('refused.the-screws-on-miss-the-flange', {
      circleMm: toMm(circle, 1),
      flangeDiameterMm: toMm(flangeDiameterM, 1)
    })
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
    detail: say('refused.a-flange-of-falls-through-a', {
      flangeDiameterMm: toMm(flangeDiameterM, 1),
      cutOutDiameterMm: toMm(cutOutDiameterM, 1)
    })
  })
}

/** A rebate is sunk into the outermost board alone. */
function rebateFault(driver: BoxDriver, field: string, boards: Boards): DesignError | undefined {
  const { rebateDepthM, flangeDiameterM } = driver
  if (rebateDepthM === undefined) return undefined
  if (flangeDiameterM === undefined) {
    const detail = say('refused.a-rebate-is-as-wide-as')
    return new DesignError('missing-input', { field: `${field}.flangeDiameterM`, detail })
  }
  const maximum = Math.min(boards.thicknessM, boardsOf(driver, boards) - UNDER_REBATE_M)
  if (rebateDepthM <= maximum + 1e-9) return undefined
  return new DesignError('out-of-range', {
    field: `${field}.rebateDepthM`,
    value: rebateDepthM,
    maximum,
    unit: 'm',
    detail: say('refused.a-rebate-of-leaves-too-little', {
      rebateDepthMm: toMm(rebateDepthM, 1),
      maximumMm: toMm(Math.max(0, maximum), 1),
      underRebateMm: toMm(UNDER_REBATE_M, 1)
    })
  })
}

const motorFields = ['magnetDiameterM', 'magnetHeightM', 'voiceCoilDiameterM', 'ventDiameterM'] as const

/** What a cone without a motor has not. */
function passiveFault(driver: BoxDriver, field: string): DesignError | undefined {
  if (driver.kind !== 'passive-radiator') return undefined
  const name = motorFields.find(each => driver[each] !== undefined)
  if (name === undefined) return undefined
  const detail = say('refused.a-passive-radiator-has-no-motor')
  return new DesignError('conflicting-input', { field: `${field}.${name}`, detail })
}

/** @throws DesignError `conflicting-input`, `missing-input`, `out-of-range` */
export function checkDrivers(drivers: readonly BoxDriver[], boards: Boards): void {
  for (const [i, driver] of drivers.entries()) {
    const field = `drivers[${i}]`
    const fault =
      screwFault(driver, field) ??
      flangeFault(driver, field) ??
      rebateFault(driver, field, boards) ??
      passiveFault(driver, field)
    if (fault !== undefined) throw fault
  }
}
