/** The four currents of each amplifier and of all together. */

import type {
  AmplifierCurrents,
  AmplifierOnSupply,
  Currents,
  SizingCurrents
} from '../../../contract/supply/supply-current.ts'
import { present } from '../../present.ts'
import { twelves } from '../../twelves.ts'
import { type AmplifierDraw, inputPower, plausiblePower } from './amplifier-draw.ts'
import { loadDefaults } from './defaults.ts'
import { suitsSupply } from './voltage-class.ts'

/** Ripple of a sine output without storage, i = I·(1 − cos 2ωt): peak 2·I, RMS √1.5·I. @check 50 A → 100 A, 61.237 A */
export function rippleOf(meanA: number): Pick<Currents, 'peakNoStorageA' | 'rippleRmsA'> {
  return { peakNoStorageA: 2 * meanA, rippleRmsA: Math.sqrt(1.5) * meanA }
}

/**
 * Share of the rated output and input left at a supply voltage when the rails follow it.
 *
 * @source derived: power goes with the square of the rail voltage
 * @check  14.4 → 12.6 V: 76.56 %
 */
export function unregulatedShare(supplyV: number, ratedV: number): number {
  return (supplyV / ratedV) ** 2
}

/**
 * Supply voltage at which an amplifier draws most [V]: a regulated one at the lowest, the nominal voltage; one whose rails
 * follow the supply, I = Pin·V/Vrated², at the highest, the charging voltage of 14.4 V per 12 V.
 *
 * @source derived from the two laws of input power; 14.4 V as the usual charging voltage common practice, no source
 * @check  at 12 V: regulated 12 V, unregulated 14.4 V; at 24 V: 24 and 28.8 V
 */
function thirstiestVoltage(regulated: boolean, systemVoltageV: number): number {
  if (regulated) return systemVoltageV
  return Math.max(systemVoltageV, loadDefaults.chargingVPer12V.value * twelves(systemVoltageV))
}

function sizingOf(draw: AmplifierDraw, systemVoltageV: number): AmplifierCurrents['sizing'] {
  const voltageV = thirstiestVoltage(draw.regulated, systemVoltageV)
  const { fullSineA, heavyA } = currentsOf(draw, voltageV)
  return { voltageV, fullSineA, heavyA }
}

function currentsOf(draw: AmplifierDraw, systemVoltageV: number): Currents {
  const scale = draw.regulated ? 1 : unregulatedShare(systemVoltageV, draw.ratedVoltageV)
  const at = (share: number) => (inputPower(draw, share) * scale) / systemVoltageV
  const fullSineA = at(1)
  return {
    quiescentA: Math.min(draw.quiescentW / systemVoltageV, fullSineA),
    averageA: at(loadDefaults.averageDuty.value),
    heavyA: at(loadDefaults.heavyDuty.value),
    fullSineA,
    ...rippleOf(fullSineA)
  }
}

export function amplifierCurrents(
  amplifier: AmplifierOnSupply,
  draw: AmplifierDraw,
  systemVoltageV: number
): AmplifierCurrents {
  const currents = currentsOf(draw, systemVoltageV)
  const left = suitsSupply(amplifier, systemVoltageV) ? unregulatedShare(systemVoltageV, draw.ratedVoltageV) : 1
  const fusesA = amplifier.onboardFusesA
  const output = draw.powerW * (draw.regulated ? 1 : left)
  return {
    ...present({ name: amplifier.name }),
    class: draw.class,
    powerW: draw.powerW,
    ...present({ claimedPowerW: draw.claimedW }),
    efficiency: draw.efficiency,
    inputPowerW: currents.fullSineA * systemVoltageV,
    unregulatedPowerW: draw.powerW * left,
    ...currents,
    sizing: sizingOf(draw, systemVoltageV),
    averageHeatW: currents.averageA * systemVoltageV - output * loadDefaults.averageDuty.value,
    fullSineHeatW: currents.fullSineA * systemVoltageV - output,
    ...(fusesA === undefined
      ? {}
      : {
          onboardFuseSumA: fusesA.reduce((sum, ratingA) => sum + ratingA, 0),
          plausiblePowerW: plausiblePower(draw.efficiency, draw.ratedVoltageV, fusesA)
        })
  }
}

const summed = ['quiescentA', 'averageA', 'heavyA', 'fullSineA', 'peakNoStorageA', 'rippleRmsA'] as const

export function totalCurrents(parts: readonly Currents[]): Currents {
  const sum = (key: (typeof summed)[number]) => parts.reduce((running, part) => running + part[key], 0)
  return {
    quiescentA: sum('quiescentA'),
    averageA: sum('averageA'),
    heavyA: sum('heavyA'),
    fullSineA: sum('fullSineA'),
    peakNoStorageA: sum('peakNoStorageA'),
    rippleRmsA: sum('rippleRmsA')
  }
}

/** Each amplifier at its own thirstiest voltage, added up: no single state of the car, but no state draws more. */
export function totalSizing(amplifiers: readonly AmplifierCurrents[]): SizingCurrents {
  return {
    fullSineA: amplifiers.reduce((sum, { sizing }) => sum + sizing.fullSineA, 0),
    heavyA: amplifiers.reduce((sum, { sizing }) => sum + sizing.heavyA, 0)
  }
}
