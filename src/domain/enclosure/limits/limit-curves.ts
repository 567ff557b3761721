/** The largest voltage each limit allows, per frequency, and the level that the lowest of them leaves. */
import type { LimitsRequest } from '../../../contract/enclosures/limits.ts'
import type { LimitName } from '../../../contract/enclosures/words.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { enclosureDefaults } from '../model/defaults.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import type { UnitDrive } from '../response/response-at-one-volt.ts'
import { limitDefaults } from './defaults.ts'
import type { LimitCurve } from './governing-limit.ts'

/** The limits of one system in figures; what is absent does not limit. */
export interface Limits {
  readonly coneM?: number
  readonly radiatorM?: number
  readonly airSpeedMPerS?: number
  /** Heat in all coils together [W], mean. */
  readonly heatW?: number
  /** RMS at the terminals [V]. */
  readonly ratedV?: number
  readonly dutyFactor: number
  readonly amplifierV?: number
  readonly amplifierA?: number
}

function amplifierVoltage(limits: LimitsRequest, groupOhm: number, assume: Assumptions): number | undefined {
  const { amplifierVoltageV, amplifierPowerW, amplifierLoadOhm } = limits
  if (amplifierPowerW === undefined) {
    if (amplifierLoadOhm === undefined) return amplifierVoltageV
    const detail = say('refused.the-load-of-the-amplifier-belongs')
    throw new DesignError('missing-input', { field: 'limits.amplifierPowerW', detail })
  }
  if (amplifierVoltageV !== undefined) {
    const detail = say('refused.the-amplifier-is-given-by-its')
    throw new DesignError('conflicting-input', { field: 'limits.amplifierVoltageV', detail })
  }
  return Math.sqrt(
    amplifierPowerW * assume.work(amplifierLoadOhm, 'limits.amplifierLoadOhm', groupOhm, enclosureDefaults.groupOhm)
  )
}

/**
 * A thermal rating can be read in two ways.
 *
 *   heat in the coil |i|²·Re ≤ P    voltage U ≤ √(P·Z)
 *
 * @source an IEC-type noise rating is U²/Z of a shaped noise (from memory); heat reading derived
 */
function thermal(system: ResponseSystem, request: LimitsRequest, statedOhm: number | undefined, assume: Assumptions) {
  const { driver, driverCount, groupOhm } = system
  if (driver.powerW === undefined) return {}
  const { thermalReading } = limitDefaults
  const reading = assume.take(request.thermalReading, 'limits.thermalReading', thermalReading)
  const heatW = driver.powerW * driverCount
  if (reading === 'coil-heat') return { heatW }
  const load = statedOhm ?? request.amplifierLoadOhm
  const rule = load === undefined ? limitDefaults.ratedOhm : limitDefaults.statedOhm
  const ratedOhm = assume.work(request.ratedOhm, 'limits.ratedOhm', load ?? groupOhm, rule)
  const ratedV = Math.sqrt(heatW * ratedOhm)
  return reading === 'rated-voltage' ? { ratedV } : { heatW, ratedV }
}

const defined = <Key extends string>(key: Key, value: number | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: number }

/**
 * @param statedOhm  load at which the power of the source is stated
 * @throws DesignError `conflicting-input`, `missing-input`
 */
export function limitsOf(
  system: ResponseSystem,
  request: LimitsRequest,
  statedOhm: number | undefined,
  assume: Assumptions
): Limits {
  const { airSpeedMPerS, dutyFactor } = limitDefaults
  return {
    ...defined('coneM', system.driver.xmaxM),
    ...defined('radiatorM', request.passiveRadiatorXmaxM),
    ...(system.ports.length > 0
      ? {
          airSpeedMPerS: assume.take(request.airSpeedMPerS, 'limits.airSpeedMPerS', airSpeedMPerS)
        }
      : {}),
    ...thermal(system, request, statedOhm, assume),
    dutyFactor: assume.take(request.dutyFactor, 'limits.dutyFactor', dutyFactor),
    ...defined('amplifierV', amplifierVoltage(request, system.groupOhm, assume)),
    ...defined('amplifierA', request.amplifierCurrentA)
  }
}

/** No limit is quoted beyond this voltage: nothing moves there, so nothing governs. */
const HIGHEST_V = 1e6

function ratio(limit: number, perVolt: readonly number[]): Float64Array {
  return Float64Array.from(perVolt, value => Math.min(HIGHEST_V, limit / Math.max(value, 1e-300)))
}

/**
 * Voltage of the source at which a sine just reaches each limit.
 *
 *   V = limit/(quantity at 1 V);  heat: V = √(P/(duty·Re))/i₁;  rated voltage: V = √(P·Z/duty)/u₁
 *
 * @source derived: the network is linear
 */
export function limitCurves(system: ResponseSystem, drive: UnitDrive, limits: Limits): readonly LimitCurve[] {
  const { coneM, radiatorM, airSpeedMPerS, heatW, ratedV, dutyFactor, amplifierV, amplifierA } = limits
  const curve = (limit: LimitName, most: number | undefined, perVolt: readonly number[]): LimitCurve[] =>
    most === undefined ? [] : [{ limit, voltageV: ratio(most, perVolt) }]
  const heatA = heatW === undefined ? undefined : Math.sqrt(heatW / (dutyFactor * system.groupOhm))
  const one = drive.coneM.map(() => 1)
  return [
    ...curve('cone-excursion', coneM, drive.coneM),
    ...drive.radiators.flatMap(({ perVolt }) => curve('passive-radiator-excursion', radiatorM, perVolt)),
    ...curve('coil-heat', heatA, drive.currentA),
    ...curve('rated-voltage', ratedV === undefined ? undefined : ratedV / Math.sqrt(dutyFactor), drive.terminalV),
    ...curve('amplifier-voltage', amplifierV, one),
    ...curve('amplifier-current', amplifierA, drive.currentA),
    ...drive.ports.flatMap(({ perVolt }) => curve('port-air-speed', airSpeedMPerS, perVolt))
  ]
}
