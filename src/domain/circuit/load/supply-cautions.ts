/** Cautions on amplifiers, charging and battery, each with the figures that triggered it. */
import { type CautionCode, cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type {
  AmplifierCurrents,
  AmplifierOnSupply,
  ChargingBalance,
  EngineOff
} from '../../../contract/supply/supply-current.ts'
import { type Caution, caution } from '../../caution.ts'
import { twelves } from '../../twelves.ts'
import { classDraws, supplyJudgement } from '../source/supply-judgement.ts'
import { type AmplifierDraw, inputPower } from './amplifier-draw.ts'
import { claimCautions } from './claim-cautions.ts'
import { voltageClassCautions } from './voltage-class.ts'

/** A caution whose text needs no figures. */
export function say(code: CautionCode, at?: string): Caution {
  return caution(code, cautionCatalogue[code].meaning, at === undefined ? {} : { at })
}

const one = (value: number) => value.toFixed(1)

function efficiencyCaution(amplifier: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const stated = amplifier.efficiency !== undefined || amplifier.inputCurrentA !== undefined
  const { lowest, highest } = classDraws[draw.class]
  if (!stated || (draw.efficiency <= highest && draw.efficiency >= lowest / 2)) return []
  return [
    caution(
      'efficiency-implausible',
      `Efficiency ${draw.efficiency.toFixed(2)} lies outside ${lowest} to ${highest}, which class ${draw.class} amplifiers reach at rated output; check at which load and output it was measured.`,
      { at, figures: { efficiency: draw.efficiency, lowest, highest } }
    )
  ]
}

/** What an amplifier draws while it is switched off. */
export function drainCaution({ standbyA = 0 }: Pick<AmplifierOnSupply, 'standbyA'>, at: string): readonly Caution[] {
  if (standbyA <= supplyJudgement.standbyLimitA) return []
  const standbyMa = standbyA * 1000
  const message = `${standbyMa.toFixed(1)} mA flow while switched off; 1 mA is the aim.`
  return [caution('parasitic-drain', message, { at, figures: { standbyMa } })]
}

function aboveNominalCaution(systemVoltageV: number): readonly Caution[] {
  const nominalV = 12 * twelves(systemVoltageV)
  if (systemVoltageV <= nominalV) return []
  return [
    caution(
      'sizing-above-nominal',
      `Currents are given at ${systemVoltageV} V; at nominal ${nominalV} V a regulated amplifier draws ${one((systemVoltageV / nominalV - 1) * 100)} % more.`,
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
    ...(draw.regulationKnown ? [] : [say('supply-type-unknown', at)]),
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
      `${name ?? 'The amplifier'} does not regulate, so it draws most while the battery is being charged: ${one(sizingA)} A at ${one(voltageV)} V against ${one(fullSineA)} A at nominal voltage. Fuse and cable follow the ${one(sizingA)} A.`,
      { at, figures: { sizingA, voltageV, nominalA: fullSineA } }
    )
  ]
}

function cruiseCaution({ cruiseAverageSurplusA, cruiseAvailableA }: ChargingBalance, source: string): Caution {
  return caution(
    'charge-deficit-cruise',
    `Driving with ordinary music leaves ${one(-cruiseAverageSurplusA)} A short: ${one(cruiseAvailableA)} A come from the ${source}. Fit a larger one; batteries and capacitors do not mend a mean deficit.`,
    { at: 'charging', figures: { surplusA: cruiseAverageSurplusA, availableA: cruiseAvailableA } }
  )
}

function idleCaution({ idleAverageSurplusA, idleAvailableA, baseLoadA }: ChargingBalance): Caution {
  return caution(
    'charge-deficit-idle',
    `At idle with ordinary music ${one(-idleAverageSurplusA)} A come out of the battery: ${one(idleAvailableA)} A are available, the vehicle takes ${one(baseLoadA)} A.`,
    { at: 'charging', figures: { surplusA: idleAverageSurplusA, availableA: idleAvailableA, baseLoadA } }
  )
}

function heavyCaution({ cruiseHeavySurplusA: surplusA }: ChargingBalance): Caution {
  const message = `With dense bass even driving leaves ${one(-surplusA)} A short.`
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
    `With the engine off the battery lasts about ${one(off.usableHours)} h at ${one(off.currentA)} A before its usable share is gone (${one(off.hoursToEmpty)} h to empty).`,
    { at: 'battery', figures: { usableHours: off.usableHours, hoursToEmpty: off.hoursToEmpty, currentA: off.currentA } }
  )
}
