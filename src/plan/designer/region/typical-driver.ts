/** Drivers that nobody has yet: of a usual size, told apart by resonance, Q and compliance. */
import type { DriverRequest } from '../../../contract/drivers/driver.ts'
import type { DriverRegionRequest, TypicalDriver } from '../../../contract/systems/driver-region.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { toDigits } from '../../../domain/digits.ts'
import { driverDefaults } from '../../../domain/driver/sheet/defaults.ts'
import { present } from '../../../domain/present.ts'
import { planDefaults } from '../../request/defaults.ts'
import { wayOutDefaults } from '../../ways-out/defaults.ts'
import { regionDefaults } from './defaults.ts'

/** One driver by the three figures that a shelf is looked through for. */
export interface Trio {
  readonly fsHz: number
  readonly qts: number
  readonly vasM3: number
}

export type UsualDriver = (typeof wayOutDefaults.usualDrivers.value)[number]

export function nearestUsual(diameterM: number): UsualDriver {
  const sizes: readonly UsualDriver[] = wayOutDefaults.usualDrivers.value
  const off = ({ nominalM }: UsualDriver) => Math.abs(nominalM - diameterM)
  return sizes.reduce((best, each) => (off(each) < off(best) ? each : best))
}

/**
 * Sd of the piston of a nominal diameter, a twentieth of that piston as travel, all of the power borne.
 *
 * @source common practice, no source; the shares are those of `defaults.ts` and of the sheet of a driver
 * @check  300 mm: d 246 mm, Sd 475 cm², Xmax 12 mm
 */
export function typicalDriver(size: UsualDriver, { powerW, driverCount }: DriverRegionRequest): TypicalDriver {
  const { nominalM, ...mounting } = size
  const pistonM = driverDefaults.pistonDiameterShare.value * nominalM
  const reOhm = driverDefaults.usualResistanceRatio.value * regionDefaults.ratedOhm.value
  return {
    sdM2: toDigits((Math.PI / 4) * pistonM ** 2, 3),
    xmaxM: toDigits(pistonM * planDefaults.portTravelShare.value, 2),
    powerW: powerW / driverCount,
    qms: driverDefaults.usualQms.value,
    reOhm,
    leH: toDigits(reOhm * planDefaults.coilTimeS.value, 2),
    ratedOhm: regionDefaults.ratedOhm.value,
    ...mounting
  }
}

export function driverOfTrio(typical: TypicalDriver, { fsHz, qts, vasM3 }: Trio): DriverRequest {
  const { sdM2, xmaxM, powerW, qms, reOhm, leH } = typical
  return { fsHz, qms, qes: (qms * qts) / (qms - qts), vasM3, sdM2, reOhm, leH, xmaxM, powerW }
}

/** The request of a plan for such a driver, on an amplifier that gives the power; of the vehicle only what a box depends on. */
export function planOfTrio(request: DriverRegionRequest, typical: TypicalDriver, trio: Trio): PlanRequest {
  const { goal, driverCount, powerW, board, space, cabin, finish, air } = request
  const { ratedOhm, flangeDiameterM, cutOutDiameterM, mountingDepthM } = typical
  const loadOhm = ratedOhm / driverCount
  return {
    driver: {
      sheet: driverOfTrio(typical, trio),
      coils: { count: 1, ratedOhm },
      mounting: { flangeDiameterM, cutOutDiameterM, mountingDepthM }
    },
    driverCount,
    amplifier: { ratings: [{ loadOhm, powerW }], minimumOhm: loadOhm },
    enclosure: present({ goal }),
    board,
    car: { space, ...present({ cabin }) },
    supply: {
      systemVoltageV: 12,
      positiveLengthM: regionDefaults.cableM.value,
      return: { kind: 'chassis' },
      conductor: 'copper'
    },
    signal: {},
    ...present({ finish, air })
  }
}
