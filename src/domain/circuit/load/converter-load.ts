/** A converter between the vehicle and amplifiers of another voltage: its rating, and what it takes of the vehicle. */

import type {
  ConverterLoad,
  ConverterRequest,
  Currents,
  SizingCurrents
} from '../../../contract/supply/supply-current.ts'
import type { Assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { DesignError } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { converterInputA } from './converter-input.ts'
import { converterDefaults } from './defaults.ts'
import { nominalVoltage } from './voltage-class.ts'

/** What the amplifiers behind it are made for [V]. */
export function amplifierVoltage(systemVoltageV: number, converter: ConverterRequest | undefined): number {
  if (converter === undefined) return systemVoltageV
  return nominalVoltage(converter.outputV ?? converterDefaults.outputV.value)
}

/** @throws DesignError `conflicting-input` for a converter from one voltage to the same */
function requireStep(systemVoltageV: number, nominalV: number, at: string): void {
  if (nominalVoltage(systemVoltageV) !== nominalV) return
  throw new DesignError('conflicting-input', {
    field: at,
    detail: say('refused.the-vehicle-has-v-and-the', { systemVoltageV })
  })
}

/** @throws DesignError `conflicting-input` for a converter that stops, or is destroyed, at the voltage of the vehicle */
function requireInput(systemVoltageV: number, { lowestInputV = 0, highestInputV = Infinity }: ConverterRequest): void {
  if (systemVoltageV < lowestInputV)
    throw new DesignError('conflicting-input', {
      field: 'converter.lowestInputV',
      value: lowestInputV,
      maximum: systemVoltageV,
      unit: 'V'
    })
  if (systemVoltageV > highestInputV)
    throw new DesignError('conflicting-input', {
      field: 'converter.highestInputV',
      value: highestInputV,
      minimum: systemVoltageV,
      unit: 'V'
    })
}

/** The next rating that is sold above the full sine; the largest where none is. */
function ratingFor(fullSineA: number): number {
  const { value: ratingsA } = converterDefaults.ratingsA
  return ratingsA.find(ratedA => ratedA >= fullSineA) ?? Math.max(...ratingsA)
}

/**
 * @param currents  of the amplifiers at their own nominal voltage
 * @throws DesignError `conflicting-input`
 * @validity regulated amplifiers; losses at any load by one efficiency, what it takes idle beside them
 */
export function converterLoad(
  asked: ConverterRequest,
  currents: Currents,
  { fullSineA: sizedA }: SizingCurrents,
  systemVoltageV: number,
  assumed: Assumptions
): ConverterLoad {
  const at = 'converter'
  const usual = converterDefaults
  const nominalV = amplifierVoltage(systemVoltageV, asked)
  requireStep(systemVoltageV, nominalV, at)
  requireInput(systemVoltageV, asked)
  const outputV = assumed.take(asked.outputV, `${at}.outputV`, usual.outputV)
  const efficiency = assumed.take(asked.efficiency, `${at}.efficiency`, usual.efficiency)
  const ratedA = assumed.work(asked.ratedA, `${at}.ratedA`, ratingFor(sizedA), usual.ratedA)
  const inputA = (outputW: number) =>
    converterInputA({ outputW, efficiency, idleW: usual.idleW.value, inputV: systemVoltageV })
  return {
    nominalV,
    outputV,
    ratedA,
    efficiency,
    ratedInputA: inputA(ratedA * outputV),
    averageInputA: inputA(currents.averageA * nominalV),
    heavyInputA: inputA(currents.heavyA * nominalV),
    fullSineInputA: inputA(currents.fullSineA * nominalV)
  }
}

/** Of a rating that is given; the one chosen here is the next above, or there is none. */
export function converterRatingCautions(
  { nominalV, outputV, ratedA }: ConverterLoad,
  { heavyA, fullSineA }: Currents
): readonly Caution[] {
  const most = (fullSineA * nominalV) / outputV
  if (most <= ratedA) return []
  const heavy = (heavyA * nominalV) / outputV
  const message = say('converter-too-small', {
    mostA: toDigits(most),
    outputV: toDigits(outputV),
    ratedA: toDigits(ratedA),
    heavy: heavy > ratedA ? say('converter-too-small.heavy', { heavyA: toDigits(heavy) }) : []
  })
  const level = heavy > ratedA ? 'stop' : 'care'
  return [caution('converter-too-small', message, { at: 'converter', level, figures: { ratedA, fullSineA: most } })]
}
