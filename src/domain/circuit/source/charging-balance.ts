/** Whether the alternator, or the converter of a car without one, keeps up with the music. */

import type { Said } from '../../../contract/sentences/form/template.ts'
import type { ChargingBalance, ChargingRequest } from '../../../contract/supply/supply-current.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { shareAtShaft } from './alternator-curve.ts'
import { supplyDefaults } from './defaults.ts'

/** @throws DesignError `conflicting-input` for what this source of current does not use */
function requireUsed(request: ChargingRequest, at: string): void {
  const { kind, idleA, idleFraction, idleShaftHz } = request
  const refuse = (fields: readonly (keyof ChargingRequest)[], detail: Said) => {
    const [first, ...others] = fields
      .filter(field => request[field] !== undefined)
      .map(field => ({ field: `${at}${field}`, detail }))
    if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
  }
  if (kind === 'converter') {
    const ofAlternators = ['idleA', 'idleFraction', 'idleShaftHz', 'drivingShaftHz', 'hotFactor'] as const
    refuse(ofAlternators, say('refused.a-converter-gives-the-same-at'))
  }
  if (idleShaftHz !== undefined) refuse(['idleA', 'idleFraction'], say('refused.idle-output-twice'))
  if (idleA !== undefined && idleFraction !== undefined) {
    refuse(['idleFraction'], say('refused.give-the-output-at-idle-in'))
  }
}

function available(request: ChargingRequest, assumed: Assumptions, at: string): { idle: number; cruise: number } {
  requireUsed(request, at)
  if (request.kind === 'converter') return { idle: request.ratedA, cruise: request.ratedA }
  const hot = assumed.take(request.hotFactor, `${at}hotFactor`, supplyDefaults.hotFactor)
  const { ratedA, idleA, idleFraction, idleShaftHz, drivingShaftHz } = request
  const share = () =>
    idleShaftHz === undefined
      ? assumed.take(idleFraction, `${at}idleFraction`, supplyDefaults.idleFraction)
      : shareAtShaft(idleShaftHz)
  const driving = drivingShaftHz === undefined ? 1 : shareAtShaft(drivingShaftHz)
  return { idle: (idleA ?? ratedA * share()) * hot, cruise: ratedA * driving * hot }
}

/**
 * Charging balance.
 *
 *   available = I_rated·idle_fraction·hot (idle) or I_rated·hot (cruise), or I_rated·s(n)·hot by the speed of the shaft;  surplus = available − I_base − I_audio
 *
 * @param averageA  music at 1/8 of rated output [A]; @param heavyA  at 1/3 [A]
 * @returns available and surplus currents [A]; a negative surplus comes out of the battery
 * @validity Long-term means; batteries and capacitors do not change them.
 * @source ISO 8854 rating line (from memory); fractions common practice, no source
 * @check  120 A, base 35 A, audio 30 A → idle 51 A, −14 A; cruise 102 A, +37 A
 */
export function chargingBalance(
  request: ChargingRequest,
  averageA: number,
  heavyA: number,
  assumed: Assumptions,
  at: string
): ChargingBalance {
  const { idle, cruise } = available(request, assumed, at)
  const baseLoadA = assumed.take(request.baseLoadA, `${at}baseLoadA`, supplyDefaults.baseLoadA)
  return {
    idleAvailableA: idle,
    cruiseAvailableA: cruise,
    baseLoadA,
    idleAverageSurplusA: idle - baseLoadA - averageA,
    idleHeavySurplusA: idle - baseLoadA - heavyA,
    cruiseAverageSurplusA: cruise - baseLoadA - averageA,
    cruiseHeavySurplusA: cruise - baseLoadA - heavyA
  }
}
