/** What the amplifiers draw, and what that means for alternator, battery and capacitor. */

import type { SourceId } from '../../../contract/sources/source.ts'
import type {
  BatteryRequest,
  CapacitorEffect,
  ConverterLoad,
  CurrentRequest,
  Currents,
  EngineOff,
  SupplyCurrent
} from '../../../contract/supply/supply-current.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { DesignError } from '../../design-error.ts'
import { fixed } from '../../digits.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { batteryOhm } from '../fuse/battery-source.ts'
import { capacitorEffect, usualPrechargeOhm } from '../source/capacitor.ts'
import { prechargeCautions } from '../source/capacitor-cautions.ts'
import { chargingBalance } from '../source/charging-balance.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { batteryExponent, engineOff } from '../source/engine-off.ts'
import { unlike, unlikeCautions } from '../source/unlike-batteries.ts'
import { amplifierCurrents, totalCurrents, totalSizing } from './amplifier-currents.ts'
import { type AmplifierDraw, amplifierDraw } from './amplifier-draw.ts'
import { amplifierVoltage, converterLoad, converterRatingCautions } from './converter-load.ts'
import { currentBasis } from './current-basis.ts'
import { loadDefaults } from './defaults.ts'
import { driveCautions } from './drive-cautions.ts'
import { amplifierCautions, chargingCautions, engineOffCaution, unregulatedCaution } from './supply-cautions.ts'

type Taken = Pick<Currents, 'averageA' | 'heavyA' | 'fullSineA'>

/** From the batteries and the charging system: what the converter takes, where one stands between. */
const takenOfVehicle = (currents: Currents, converter: ConverterLoad | undefined): Taken =>
  converter === undefined
    ? currents
    : {
        averageA: converter.averageInputA,
        heavyA: converter.heavyInputA,
        fullSineA: converter.fullSineInputA
      }

function listening(request: CurrentRequest, currents: Taken, assumed: Assumptions): EngineOff | undefined {
  const { battery, secondBattery, systemVoltageV } = request
  if (battery === undefined) {
    if (secondBattery === undefined) return undefined
    throw new DesignError('missing-input', {
      field: 'battery',
      detail: say('refused.a-second-battery-needs-the-first')
    })
  }
  const parkedA = assumed.take(battery.parkedLoadA, 'battery.parkedLoadA', loadDefaults.parkedLoadA)
  if (secondBattery?.arrangement === 'isolated') {
    return engineOff(secondBattery, currents.averageA, currents.fullSineA, systemVoltageV, assumed, 'secondBattery.')
  }
  if (secondBattery !== undefined && unlike(battery, secondBattery)) return undefined
  const currentA = currents.averageA + parkedA
  if (secondBattery === undefined)
    return engineOff(battery, currentA, currents.fullSineA, systemVoltageV, assumed, 'battery.')
  const joined = parallelBank(battery, secondBattery, systemVoltageV, assumed)
  return engineOff(joined, currentA, currents.fullSineA, systemVoltageV, assumed, 'battery.')
}

/** Two batteries joined: capacities and conductances add; the first one's exponent and usable share hold for both. */
function parallelBank(
  first: BatteryRequest,
  second: BatteryRequest,
  systemVoltageV: number,
  assumed: Assumptions
): BatteryRequest {
  const conductance =
    1 / batteryOhm(first, systemVoltageV, assumed, 'battery.') +
    1 / batteryOhm(second, systemVoltageV, assumed, 'secondBattery.')
  const ratedHours = assumed.take(first.ratedHours, 'battery.ratedHours', supplyDefaults.ratedHours)
  return {
    capacityAh: first.capacityAh + second.capacityAh,
    ratedHours,
    peukertExponent: batteryExponent(first, ratedHours, assumed, 'battery.'),
    resistanceOhm: 1 / conductance,
    ...present({ usableFraction: first.usableFraction })
  }
}

function holdUp(request: CurrentRequest, currents: Currents, assumed: Assumptions): CapacitorEffect | undefined {
  const { capacitor } = request
  if (capacitor === undefined) return undefined
  const systemVoltageV = amplifierVoltage(request.systemVoltageV, request.converter)
  const inSeries = twelves(systemVoltageV)
  const { capacitorFromVPer12V: from, capacitorToVPer12V: to, prechargeOhm: rule } = supplyDefaults
  const fromV = assumed.work(capacitor.fromV, 'capacitor.fromV', from.value * inSeries, from)
  const toV = assumed.work(capacitor.toV, 'capacitor.toV', to.value * inSeries, to)
  if (toV >= fromV)
    throw new DesignError('conflicting-input', { field: 'capacitor.toV', value: toV, maximum: fromV, unit: 'V' })
  const usualOhm = usualPrechargeOhm(inSeries)
  const prechargeOhm = assumed.work(capacitor.prechargeOhm, 'capacitor.prechargeOhm', usualOhm, rule)
  return capacitorEffect(
    { ...capacitor, prechargeOhm },
    fromV,
    toV,
    currents.fullSineA * systemVoltageV,
    currents.fullSineA
  )
}

function sourcesOf(request: CurrentRequest): readonly SourceId[] {
  return [
    'class-efficiency',
    'idle-power',
    'class-b-theory',
    'iec-60065-eighth',
    'third-power',
    'cta-2006',
    'system-voltages',
    ...(request.charging === undefined ? [] : (['iso-8854', 'alternator-practice'] as const)),
    ...(request.battery === undefined
      ? []
      : (['peukert', 'reserve-capacity', 'cold-cranking', 'battery-practice'] as const)),
    ...(request.capacitor === undefined ? [] : (['capacitor-energy'] as const))
  ]
}

function cautionsOf(
  request: CurrentRequest,
  result: SupplyCurrent,
  draws: readonly AmplifierDraw[]
): readonly Caution[] {
  const { charging, secondBattery, capacitor, systemVoltageV, converter } = request
  const amplifierV = amplifierVoltage(systemVoltageV, converter)
  return [
    ...draws.flatMap((draw, index) =>
      amplifierCautions(request.amplifiers[index] ?? {}, draw, amplifierV, `amplifiers[${index}]`)
    ),
    ...result.amplifiers.flatMap((drawn, index) => unregulatedCaution(drawn, `amplifiers[${index}]`)),
    ...(result.converter === undefined ? [] : converterRatingCautions(result.converter, result.currents)),
    ...(charging === undefined || result.charging === undefined
      ? []
      : chargingCautions(result.charging, charging.kind)),
    ...driveCautions(request.drive),
    ...(result.engineOff === undefined ? [] : [engineOffCaution(result.engineOff)]),
    ...unlikeCautions(request),
    ...(secondBattery === undefined ? [] : [catalogued('second-battery'), catalogued('battery-gas')]),
    ...([request.battery?.chemistry, secondBattery?.chemistry].includes('lithium')
      ? [catalogued('lithium-battery')]
      : []),
    ...(capacitor === undefined || result.capacitor === undefined
      ? []
      : [
          caution(
            'capacitor-no-energy',
            say('capacitor-no-energy', { holdUpMs: fixed(result.capacitor.holdUpS * 1000, 0) }),
            {
              at: 'capacitor',
              figures: { holdUpMs: result.capacitor.holdUpS * 1000, usableJ: result.capacitor.usableJ }
            }
          ),
          ...prechargeCautions(capacitor.capacitanceF, result.capacitor)
        ]),
    ...(systemVoltageV > 36 && request.drive !== 'mild-hybrid' ? [catalogued('forty-eight-volt')] : []),
    catalogued('amplifier-heat')
  ]
}

/**
 * The four currents of a set of amplifiers at nominal voltage, and on request charging balance, engine-off time and hold-up.
 *
 *   I = Pin/V, with Pin by the law of the class at silence, 1/8, 1/3 and full output
 *
 * @param request  at least one amplifier; systemVoltageV the nominal voltage [V]
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`
 * @validity Unclipped output; long-term means.
 * @source class efficiencies common practice; 1/8 of EN 60065 (second-hand), 1/3 common practice
 * @check  640 W, η 0.85, 12 V → 62.7 A; 2560 W at 48 V → 62.7 A
 */
export function supplyCurrent(request: CurrentRequest): Outcome<SupplyCurrent> {
  const assumed = assumptions()
  const amplifierV = amplifierVoltage(request.systemVoltageV, request.converter)
  const draws = request.amplifiers.map((amplifier, index) =>
    amplifierDraw(amplifier, amplifierV, assumed, `amplifiers[${index}].`)
  )
  const amplifiers = draws.map((draw, index) => amplifierCurrents(request.amplifiers[index] ?? {}, draw, amplifierV))
  const currents = totalCurrents(amplifiers)
  const sizing = totalSizing(amplifiers)
  const converter =
    request.converter && converterLoad(request.converter, currents, sizing, request.systemVoltageV, assumed)
  const taken = takenOfVehicle(currents, converter)
  const charging =
    request.charging === undefined
      ? undefined
      : chargingBalance(request.charging, taken.averageA, taken.heavyA, assumed, 'charging.')
  const off = listening(request, taken, assumed)
  const capacitor = holdUp(request, currents, assumed)
  const result: SupplyCurrent = {
    currents,
    sizing,
    amplifiers,
    ...present({ converter, charging, engineOff: off, capacitor })
  }
  return {
    result,
    cautions: cautionsOf(request, result, draws),
    assumed: assumed.list,
    sources: sourcesOf(request),
    basis: currentBasis(request, result)
  }
}
