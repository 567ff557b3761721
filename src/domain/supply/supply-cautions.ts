/** Cautions on amplifiers, charging and battery, each with the figures that triggered it. */
import { type Caution, type CautionCode, caution, cautionCatalogue } from '../caution.ts'
import { twelves } from '../fuse/battery-source.ts'
import { type AmplifierDraw, type AmplifierOnSupply, plausiblePower } from './amplifier-draw.ts'
import type { ChargingBalance } from './charging-balance.ts'
import type { EngineOff } from './engine-off.ts'
import { classDraws, supplyJudgement } from './supply-judgement.ts'

/** A caution whose text needs no figures. */
export function say(code: CautionCode, at?: string): Caution {
  return caution(code, cautionCatalogue[code].meaning, at === undefined ? {} : { at })
}

const one = (value: number) => value.toFixed(1)
const whole = (value: number) => value.toFixed(0)

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

export function amplifierCautions(
  amplifier: AmplifierOnSupply,
  draw: AmplifierDraw,
  systemVoltageV: number,
  at: string
): readonly Caution[] {
  const { onboardFusesA, standbyA = 0 } = amplifier
  const believable =
    onboardFusesA === undefined
      ? Number.POSITIVE_INFINITY
      : plausiblePower(draw.efficiency, draw.ratedVoltageV, onboardFusesA)
  const ratedW = draw.powerW
  const rating = caution(
    'rating-implausible',
    `${whole(ratedW)} W is claimed, but ${whole(believable)} W is all its on-board fuses pass at ${one(draw.ratedVoltageV)} V with efficiency ${draw.efficiency.toFixed(2)}.`,
    { at, figures: { claimedW: ratedW, plausibleW: Math.min(believable, Number.MAX_VALUE) } }
  )
  const drain = caution(
    'parasitic-drain',
    `${(standbyA * 1000).toFixed(1)} mA flow while switched off; 1 mA is the aim.`,
    {
      at,
      figures: { standbyMa: standbyA * 1000 }
    }
  )
  const nominal = 12 * twelves(systemVoltageV)
  const above = caution(
    'sizing-above-nominal',
    `Currents are given at ${systemVoltageV} V; at nominal ${nominal} V a regulated amplifier draws ${one((systemVoltageV / nominal - 1) * 100)} % more.`,
    {
      at: 'systemVoltageV',
      figures: { systemVoltageV, nominalV: nominal }
    }
  )
  return [
    ...(ratedW > believable ? [rating] : []),
    ...efficiencyCaution(amplifier, draw, at),
    ...(standbyA > supplyJudgement.standbyLimitA ? [drain] : []),
    ...(draw.regulationKnown
      ? []
      : [caution('supply-type-unknown', cautionCatalogue['supply-type-unknown'].meaning, { at })]),
    ...(at === 'amplifiers[0]' && systemVoltageV > nominal ? [above] : [])
  ]
}

export function chargingCautions(balance: ChargingBalance, kind: 'alternator' | 'converter'): readonly Caution[] {
  const { idleAverageSurplusA: idle, cruiseAverageSurplusA: cruise, cruiseHeavySurplusA: heavy } = balance
  const at = 'charging'
  const source = kind === 'alternator' ? 'alternator' : 'converter'
  return [
    ...(cruise < 0
      ? [
          caution(
            'charge-deficit-cruise',
            `Driving with ordinary music leaves ${one(-cruise)} A short: ${one(balance.cruiseAvailableA)} A come from the ${source}. Fit a larger one; batteries and capacitors do not mend a mean deficit.`,
            {
              at,
              figures: { surplusA: cruise, availableA: balance.cruiseAvailableA }
            }
          )
        ]
      : []),
    ...(idle < 0
      ? [
          caution(
            'charge-deficit-idle',
            `At idle with ordinary music ${one(-idle)} A come out of the battery: ${one(balance.idleAvailableA)} A are available, the vehicle takes ${one(balance.baseLoadA)} A.`,
            {
              at,
              figures: { surplusA: idle, availableA: balance.idleAvailableA, baseLoadA: balance.baseLoadA }
            }
          )
        ]
      : []),
    ...(heavy < 0 && cruise >= 0
      ? [
          caution('charge-deficit-heavy', `With dense bass even driving leaves ${one(-heavy)} A short.`, {
            at,
            figures: { surplusA: heavy }
          })
        ]
      : []),
    ...(kind === 'converter' ? [say('high-voltage-orange', at)] : [])
  ]
}

export function engineOffCaution(off: EngineOff): Caution {
  return caution(
    'engine-off-time',
    `With the engine off the battery lasts about ${one(off.usableHours)} h at ${one(off.currentA)} A before its usable share is gone (${one(off.hoursToEmpty)} h to empty).`,
    { at: 'battery', figures: { usableHours: off.usableHours, hoursToEmpty: off.hoursToEmpty, currentA: off.currentA } }
  )
}
