/** The battery as a source: its rest voltage, both ends of its resistance, and what it drives into a short circuit. */

import type { BatterySource } from '../../../contract/supply/fuse.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { batteryOhmAh } from './data-sheets.ts'
import { fuseDefaults } from './defaults.ts'

/** Battery resistance from its cold cranking current [Ω]: (12.6 − 7.2)/CCA for each 12 V; a cold upper bound. @check 600 A → 9 mΩ */
export function batteryOhmFromCranking(coldCrankingA: number): number {
  return (fuseDefaults.batteryRestVPer12V.value - fuseDefaults.crankingEndV.value) / coldCrankingA
}

/** The resistance that a kind and a capacity leave between two ends [Ω per 12 V]; undefined where either is not said. */
function byCapacity({ chemistry, capacityAh }: BatterySource, end: 'lowest' | 'highest'): number | undefined {
  if (chemistry === undefined || chemistry === 'flooded' || capacityAh === undefined) return undefined
  return batteryOhmAh[chemistry][end] / capacityAh
}

/**
 * Highest plausible resistance of a battery bank [Ω], for drop, sag and the clearing of a far fault.
 *
 *   stated; else 5.4 V/CCA; else the upper end by kind and capacity; else the default
 */
export function batteryOhm(battery: BatterySource, systemVoltageV: number, assumed: Assumptions, at: string): number {
  const inSeries = twelves(systemVoltageV)
  if (battery.resistanceOhm === undefined) {
    if (battery.coldCrankingA !== undefined) return inSeries * batteryOhmFromCranking(battery.coldCrankingA)
    const upper = byCapacity(battery, 'highest')
    if (upper !== undefined) {
      const why = `upper end for ${battery.chemistry} of this capacity; measure it or give the maker’s figure`
      return assumed.work(undefined, `${at}resistanceOhm`, inSeries * upper, { why, source: 'ours' })
    }
  }
  const { batteryOhmPer12V: usual } = fuseDefaults
  const ohm = inSeries * usual.value
  return assumed.work(battery.resistanceOhm, `${at}resistanceOhm`, ohm, usual)
}

/** Lower end of the resistance for each 12 V [Ω], where the caller says anything that leads to it. */
function lowerEnd(battery: BatterySource): number | undefined {
  const { coldCrankingA } = battery
  return coldCrankingA === undefined
    ? byCapacity(battery, 'lowest')
    : fuseDefaults.crankingLowestV.value / coldCrankingA
}

/**
 * Lowest plausible resistance of a battery bank [Ω], for what a fuse must break.
 *
 *   stated; else 2 V/CCA; else the lower end by kind and capacity; else 3 mΩ for each 12 V
 *
 * @source our choice between 2 and 5.4 V/CCA; the cold test is at −18 °C and contains polarisation, a warm full battery gives more
 * @check  640 A → 3.125 mΩ; lithium 100 Ah → 0.6 mΩ
 */
export function lowestBatteryOhm(battery: BatterySource, systemVoltageV: number, assumed: Assumptions): number {
  const inSeries = twelves(systemVoltageV)
  const lower = battery.resistanceOhm === undefined ? lowerEnd(battery) : undefined
  if (lower !== undefined) return inSeries * lower
  const { batteryLowestOhmPer12V: usual } = fuseDefaults
  return assumed.work(battery.resistanceOhm, 'source.resistanceOhm', inSeries * usual.value, usual)
}

const restEach = (chemistry: BatterySource['chemistry']) =>
  chemistry === 'lithium' ? fuseDefaults.lithiumRestVPer12V.value : fuseDefaults.batteryRestVPer12V.value

/** Rest voltage of a full battery bank [V], lead where the kind is not said. */
export const restVoltage = (systemVoltageV: number, chemistry?: BatterySource['chemistry']): number =>
  restEach(chemistry) * twelves(systemVoltageV)

/** Open-circuit voltage of the bank [V]. */
export function openCircuit(battery: BatterySource, systemVoltageV: number, assumed: Assumptions, at: string): number {
  const { openCircuitV, chemistry } = battery
  const why = `rest voltage of a full battery, ${restEach(chemistry)} V per 12 V`
  const restV = restVoltage(systemVoltageV, chemistry)
  return assumed.work(openCircuitV, `${at}openCircuitV`, restV, { why, source: 'practice' })
}

/**
 * Short-circuit current.
 *
 *   I = Vocv/(Rb + Rloop)
 *
 * @param loopOhm  everything between the source and the fault [Ω] ≥ 0
 * @returns [A]
 * @source Ohm’s law
 * @check  12.6 V, 10 mΩ, 4.99 + 1.8 + 1.0 mΩ → 708.3 A; 12.8 V, 3 mΩ, 0.5 mΩ → 3657 A
 */
export function faultCurrent(openCircuitV: number, sourceOhm: number, loopOhm: number): number {
  return openCircuitV / (sourceOhm + loopOhm)
}

/** Resistance of a fuse-link at its rated current [Ω] when its sheet is not at hand. @check 75 mV at 40 A is 1.875 mΩ, the rule gives 2.25 */
export function fuseOhm(ratingA: number): number {
  return fuseDefaults.fuseDropV.value / ratingA
}

/** The same cold, as a fault meets it [Ω]. @check 40 A → 1.425 mΩ (a data sheet, second-hand: 1.4) */
export function coldFuseOhm(ratingA: number): number {
  return fuseDefaults.coldFuseV.value / ratingA
}

/** What a fuse may have to break: the strongest the battery can be, and the way to the fuse. */
export interface Breaking {
  readonly openCircuitV: number
  /** Battery and the way to the fuse, out and back [Ω]. */
  readonly loopOhm: number
  /** False where the resistance of the battery was not given. */
  readonly stated: boolean
  /** Whether the battery was described at all: by resistance, cold cranking current, or kind and capacity. */
  readonly described: boolean
}

/** @throws DesignError `missing-input` for a capacity from which no resistance follows */
function requireKind(battery: BatterySource): void {
  const { resistanceOhm, coldCrankingA, capacityAh, chemistry } = battery
  if (capacityAh === undefined || resistanceOhm !== undefined || coldCrankingA !== undefined) return
  if (byCapacity(battery, 'lowest') !== undefined) return
  throw new DesignError('missing-input', {
    field: chemistry === undefined ? 'source.chemistry' : 'source.coldCrankingA',
    detail:
      chemistry === undefined
        ? say('refused.a-capacity-says-what-a-battery')
        : say('refused.a-capacity-says-what-a-battery.2')
  })
}

/**
 * Source of the largest fault: highest rest voltage, lowest resistance.
 *
 * @param tailOhm  from the battery to the fuse and back [Ω]; 0 for a fuse on the post
 */
export function strongestSource(
  battery: BatterySource,
  systemVoltageV: number,
  tailOhm: number,
  assumed: Assumptions
): Breaking {
  requireKind(battery)
  const { batteryAboveRestV, lithiumAboveRestV } = fuseDefaults
  const { value: above } = battery.chemistry === 'lithium' ? lithiumAboveRestV : batteryAboveRestV
  const highestV = restVoltage(systemVoltageV) + above * twelves(systemVoltageV)
  return {
    openCircuitV: assumed.work(battery.openCircuitV, 'source.openCircuitV', highestV, fuseDefaults.openCircuitV),
    loopOhm: lowestBatteryOhm(battery, systemVoltageV, assumed) + tailOhm,
    stated: battery.resistanceOhm !== undefined,
    described: battery.resistanceOhm !== undefined || lowerEnd(battery) !== undefined
  }
}

/**
 * Largest current a fuse-link must break: a dead short right behind it, its own cold resistance in the loop.
 *
 * @check  12.8 V, 3 mΩ: 5 A link 889 A, 30 A link 2612 A, 100 A link 3585 A
 */
export function breakingCurrent({ openCircuitV, loopOhm }: Breaking, ratingA: number): number {
  return faultCurrent(openCircuitV, loopOhm, coldFuseOhm(ratingA))
}
