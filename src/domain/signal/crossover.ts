/** Corner frequencies around the subwoofer's band, and the test tone that fits between them. */

import type { PassFilter } from '../../contract/enclosures/filter.ts'
import type { Corner, Crossover } from '../../contract/signals/signal-result.ts'
import type { CornerRequest, CrossoverRequest } from '../../contract/signals/signal-setup.ts'
import type { Assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { toDigits } from '../digits.ts'
import { filterDefaults } from '../filter/defaults.ts'
import { filterSections } from '../filter/filter-sections.ts'
import { chainGain } from '../filter/filter-transfer.ts'
import { say } from '../say.ts'
import { signalDefaults } from './defaults.ts'

function orderOf(given: CornerRequest | undefined, field: string, assumed: Assumptions): number {
  return assumed.take(given?.order, `${field}.order`, signalDefaults.order)
}

function lowPassOf({ lowPass, acoustic }: CrossoverRequest, assumed: Assumptions): Corner {
  const order = orderOf(lowPass, 'filters.lowPass', assumed)
  if (lowPass !== undefined) return { cornerHz: lowPass.cornerHz, order, why: 'as given' }
  if (acoustic?.mainsLowHz !== undefined) {
    const cornerHz = Math.min(Math.max(acoustic.mainsLowHz, 50), 120)
    return {
      cornerHz,
      order,
      why: 'where the front speakers begin, held between 50 and 120 Hz: below it stays hidden, above it tells where the box stands'
    }
  }
  const cornerHz = assumed.take<number>(undefined, 'filters.lowPass.cornerHz', filterDefaults.lowPassHz)
  return { cornerHz, order, why: filterDefaults.lowPassHz.why }
}

function highPassOf({ highPass, acoustic }: CrossoverRequest, assumed: Assumptions): Corner | undefined {
  if (highPass !== undefined) {
    return { cornerHz: highPass.cornerHz, order: orderOf(highPass, 'filters.highPass', assumed), why: 'as given' }
  }
  const { tuningHz, excursionLimitHz } = acoustic ?? {}
  if (excursionLimitHz !== undefined) {
    const why = 'below this the cone passes its limit at the target power, as the response shows'
    return { cornerHz: excursionLimitHz, order: orderOf(undefined, 'filters.highPass', assumed), why }
  }
  if (tuningHz === undefined) return undefined
  const { highPassOfTuning } = filterDefaults
  const cornerHz = highPassOfTuning.value * tuningHz
  assumed.note('filters.highPass.cornerHz', cornerHz, highPassOfTuning)
  return { cornerHz, order: orderOf(undefined, 'filters.highPass', assumed), why: highPassOfTuning.why }
}

/** @throws DesignError `conflicting-input` when the corners leave no band */
export function crossover(request: CrossoverRequest, assumed: Assumptions): Crossover {
  const lowPass = lowPassOf(request, assumed)
  const highPass = highPassOf(request, assumed)
  if (highPass !== undefined && highPass.cornerHz * signalDefaults.narrowestBand.value > lowPass.cornerHz) {
    throw new DesignError('conflicting-input', {
      field: request.highPass === undefined ? 'filters.acoustic' : 'filters.highPass.cornerHz',
      value: highPass.cornerHz,
      unit: 'Hz',
      maximum: lowPass.cornerHz / signalDefaults.narrowestBand.value,
      detail: say('refused.a-high-pass-at-hz-and', {
        cornerHz: toDigits(highPass.cornerHz),
        otherCornerHz: toDigits(lowPass.cornerHz)
      })
    })
  }
  return highPass === undefined ? { lowPass } : { lowPass, highPass }
}

/**
 * 50 Hz where it lies half an octave inside the corners, else the middle of the band.
 *
 * @source common practice, no source
 * @check  corners at 20 and 60 Hz → √(20·60) = 34.64 Hz
 */
export function toneFrequency({ lowPass, highPass }: Crossover): number {
  const toneHz = signalDefaults.toneHz.value
  const toneRoom = signalDefaults.toneRoom.value
  const highest = lowPass.cornerHz / toneRoom
  const lowest = (highPass?.cornerHz ?? 0) * toneRoom
  if (toneHz >= lowest && toneHz <= highest) return toneHz
  return highPass === undefined ? Math.min(toneHz, highest) : Math.sqrt(lowPass.cornerHz * highPass.cornerHz)
}

/**
 * What Butterworth filters left in the way take from the tone [dB], at most 0.
 *
 * @source see filterSections
 * @check  order 4 at its corner → −3.0103 dB
 */
export function filterLossDb({ lowPass, highPass }: Crossover, toneHz: number): number {
  const filters: readonly PassFilter[] = [
    { kind: 'low-pass', family: 'butterworth', order: lowPass.order, cornerHz: lowPass.cornerHz },
    ...(highPass === undefined
      ? []
      : [{ kind: 'high-pass', family: 'butterworth', order: highPass.order, cornerHz: highPass.cornerHz } as const])
  ]
  return 20 * Math.log10(chainGain(filterSections(filters, 'filters'), toneHz))
}
