/** What each amplifier of a feeder asks for, as the solver takes it. */

import type { FeederAmplifier, FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { amplifierDraw, inputPower } from '../load/amplifier-draw.ts'
import { loadDefaults } from '../load/defaults.ts'
import type { FeederLoad } from './shared-trunk.ts'

export interface LoadTask {
  readonly load: FeederLoad
  /** Largest current at full sine, whatever level is asked for, at nominal voltage or unregulated at that of the source: what fuses are rated by [A]. */
  readonly nominalA: number
}

const shares = { 'full-sine': 1, heavy: loadDefaults.heavyDuty.value, average: loadDefaults.averageDuty.value } as const

function direct(amplifier: FeederAmplifier, systemVoltageV: number, at: string): LoadTask | undefined {
  const { inputPowerW, currentA, powerW, ratings } = amplifier
  const given = [inputPowerW, currentA, powerW ?? ratings].filter(value => value !== undefined)
  if (given.length > 1) {
    throw new DesignError('conflicting-input', {
      field: `${at}inputPowerW`,
      detail: say('refused.give-the-power-drawn-the-current')
    })
  }
  if (inputPowerW !== undefined) {
    const drawn = inputPowerW + (amplifier.extraPowerW ?? 0)
    return { load: { kind: 'power', amount: drawn }, nominalA: drawn / systemVoltageV }
  }
  return currentA === undefined ? undefined : { load: { kind: 'current', amount: currentA }, nominalA: currentA }
}

/** @throws DesignError of the amplifier; `conflicting-input` for two statements of the load */
export function resolveLoad(
  amplifier: FeederAmplifier,
  request: FeederRequest,
  assumed: Assumptions,
  at: string
): LoadTask {
  const { systemVoltageV, level = 'full-sine' } = request
  const stated = direct(amplifier, systemVoltageV, at)
  if (stated !== undefined) return stated
  const { extraPowerW = 0 } = amplifier
  // a draw stated apart replaces the default idle draw, which the rated efficiency would otherwise contain
  const sheet = extraPowerW > 0 && amplifier.quiescentW === undefined ? { ...amplifier, quiescentW: 0 } : amplifier
  const draw = amplifierDraw(sheet, systemVoltageV, assumed, at)
  const drawnW = inputPower(draw, shares[level]) + extraPowerW
  const fullW = inputPower(draw, 1) + extraPowerW
  if (draw.regulated) return { load: { kind: 'power', amount: drawnW }, nominalA: fullW / systemVoltageV }
  const square = draw.ratedVoltageV ** 2
  // without regulation the current rises with the supply
  const highestV = Math.max(systemVoltageV, request.source.voltageV)
  return { load: { kind: 'resistance', amount: square / drawnW }, nominalA: (highestV * fullW) / square }
}
