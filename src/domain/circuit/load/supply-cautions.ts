/** Cautions on amplifiers, charging and battery, each with the figures that triggered it. */

import type {
  AmplifierCurrents,
  AmplifierOnSupply,
  ChargingBalance,
  EngineOff
} from '../../../contract/supply/supply-current.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { type AmplifierDraw, inputPower } from './amplifier-draw.ts'
import { claimCautions } from './claim-cautions.ts'
import { classDraws } from './class-draws.ts'
import { loadDefaults } from './defaults.ts'
import { voltageClassCautions } from './voltage-class.ts'

function efficiencyCaution(amplifier: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const stated = amplifier.efficiency !== undefined || amplifier.inputCurrentA !== undefined
  const { lowest, highest } = classDraws[draw.class]
  if (!stated || (draw.efficiency <= highest && draw.efficiency >= lowest / 2)) return []
  return [
    caution(
      'efficiency-implausible',
      say('efficiency-implausible', {
        efficiencyRatio: fixed(draw.efficiency, 2),
        lowestRatio: lowest,
        highestRatio: highest,
        class: draw.class
      }),
      { at, figures: { efficiency: draw.efficiency, lowest, highest } }
    )
  ]
}

/** What an amplifier draws while it is switched off. */
export function drainCaution({ standbyA = 0 }: Pick<AmplifierOnSupply, 'standbyA'>, at: string): readonly Caution[] {
  if (standbyA <= loadDefaults.standbyLimitA.value) return []
  const standbyMa = standbyA * 1000
  const message = say('parasitic-drain', { standbyMa: fixed(standbyMa, 1) })
  return [caution('parasitic-drain', message, { at, figures: { standbyMa } })]
}

function aboveNominalCaution(systemVoltageV: number): readonly Caution[] {
  const nominalV = 12 * twelves(systemVoltageV)
  if (systemVoltageV <= nominalV) return []
  return [
    caution(
      'sizing-above-nominal',
      say('sizing-above-nominal', {
        systemVoltageV,
        nominalV,
        morePercent: toDigits((systemVoltageV / nominalV - 1) * 100)
      }),
      { at: 'systemVoltageV', figures: { systemVoltageV, nominalV } }
    )
  ]
}

export function amplifierCautions(
  amplifier: AmplifierOnSupply,
  draw: AmplifierDraw,
  systemVoltageV: number,
  at: string
): readonly Caution[] {
  return [
    ...voltageClassCautions(amplifier, systemVoltageV, inputPower(draw, 1), `${at}.`),
    ...claimCautions(amplifier, draw, at),
    ...efficiencyCaution(amplifier, draw, at),
    ...drainCaution(amplifier, at),
    ...(draw.regulationKnown ? [] : [catalogued('supply-type-unknown', at)]),
    // One voltage for all amplifiers: said once.
    ...(at === 'amplifiers[0]' ? aboveNominalCaution(systemVoltageV) : [])
  ]
}

/** Said where fuse and cable follow another voltage than the one the currents are given at. */
export function unregulatedCaution(
  { name, sizing: { voltageV, fullSineA: sizingA }, fullSineA }: AmplifierCurrents,
  at: string
): readonly Caution[] {
  if (sizingA <= fullSineA) return []
  return [
    caution(
      'unregulated-sizing',
      say('unregulated-sizing', {
        amplifier: name ?? say('amplifier.the'),
        sizingA: toDigits(sizingA),
        voltageV: toDigits(voltageV),
        fullSineA: toDigits(fullSineA)
      }),
      { at, figures: { sizingA, voltageV, nominalA: fullSineA } }
    )
  ]
}

function cruiseCaution({ cruiseAverageSurplusA, cruiseAvailableA }: ChargingBalance, source: string): Caution {
  return caution(
    'charge-deficit-cruise',
    say('charge-deficit-cruise', {
      shortA: toDigits(-cruiseAverageSurplusA),
      availableA: toDigits(cruiseAvailableA),
      source
    }),
    { at: 'charging', figures: { surplusA: cruiseAverageSurplusA, availableA: cruiseAvailableA } }
  )
}

function idleCaution({ idleAverageSurplusA, idleAvailableA, baseLoadA }: ChargingBalance): Caution {
  return caution(
    'charge-deficit-idle',
    say('charge-deficit-idle', {
      shortA: toDigits(-idleAverageSurplusA),
      availableA: toDigits(idleAvailableA),
      baseLoadA: toDigits(baseLoadA)
    }),
    { at: 'charging', figures: { surplusA: idleAverageSurplusA, availableA: idleAvailableA, baseLoadA } }
  )
}

function heavyCaution({ cruiseHeavySurplusA: surplusA }: ChargingBalance): Caution {
  const message = say('charge-deficit-heavy', { shortA: toDigits(-surplusA) })
  return caution('charge-deficit-heavy', message, { at: 'charging', figures: { surplusA } })
}

export function chargingCautions(balance: ChargingBalance, kind: 'alternator' | 'converter'): readonly Caution[] {
  const { idleAverageSurplusA: idle, cruiseAverageSurplusA: cruise, cruiseHeavySurplusA: heavy } = balance
  return [
    ...(cruise < 0 ? [cruiseCaution(balance, kind)] : []),
    ...(idle < 0 ? [idleCaution(balance)] : []),
    ...(heavy < 0 && cruise >= 0 ? [heavyCaution(balance)] : [])
  ]
}

export function engineOffCaution(off: EngineOff): Caution {
  return caution(
    'engine-off-time',
    say('engine-off-time', {
      usableHours: toDigits(off.usableHours, 2),
      currentA: toDigits(off.currentA),
      emptyHours: toDigits(off.hoursToEmpty, 2)
    }),
    { at: 'battery', figures: { usableHours: off.usableHours, hoursToEmpty: off.hoursToEmpty, currentA: off.currentA } }
  )
}
