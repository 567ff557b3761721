/** What the car adds at the seat: the pressure-vessel model, or a curve that was measured in it. */
import type { Cabin, CabinModel, MeasuredTransfer } from '../../contract/acoustics/cabin.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import type { Assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import { DesignError } from '../design-error.ts'
import { fixed } from '../digits.ts'
import { explain } from '../formula.ts'
import { say } from '../say.ts'
import { cabinDefaults } from './defaults.ts'
import { cabinCorner, cabinMode } from './formulas.ts'
import {
  lowestModeHz,
  type PressureVessel,
  pressureVesselCornerHz,
  pressureVesselGainDb,
  REFERENCE_DISTANCE_M
} from './pressure-vessel.ts'

export interface CabinGain {
  readonly model: CabinModel
  readonly gainDb: Float64Array
  readonly cautions: readonly Caution[]
  readonly sources: readonly SourceId[]
  readonly basis: readonly Basis[]
}

/**
 * Linear in decibel over the logarithm of the frequency, ends held.
 *
 * @source derived: linear interpolation
 * @check  18 dB at 10 Hz and 6 dB at 40 Hz → 12 dB at 20 Hz
 */
export function measuredGainDb({ frequencyHz, gainDb }: MeasuredTransfer, at: number): number {
  const above = frequencyHz.findIndex(frequency => frequency >= at)
  const last = gainDb.length - 1
  if (above === 0) return gainDb[0] ?? 0
  if (above < 0) return gainDb[last] ?? 0
  const [f0 = at, f1 = at] = [frequencyHz[above - 1], frequencyHz[above]]
  const [g0 = 0, g1 = 0] = [gainDb[above - 1], gainDb[above]]
  return g0 + ((g1 - g0) * Math.log(at / f0)) / Math.log(f1 / f0)
}

/** @throws DesignError `conflicting-input` */
function requireSoundCurve({ frequencyHz, gainDb }: MeasuredTransfer): void {
  if (frequencyHz.length !== gainDb.length) {
    const detail = say('refused.the-measured-curve-has-frequencies-and', {
      frequencyHz: frequencyHz.length,
      gainDb: gainDb.length
    })
    throw new DesignError('conflicting-input', { field: 'cabin.measured.gainDb', detail })
  }
  const fault = frequencyHz.findIndex((frequency, index) => index > 0 && frequency <= (frequencyHz[index - 1] ?? 0))
  if (fault > 0) {
    const detail = say('refused.the-frequencies-of-the-measured-curve', { fault: fault + 1 })
    throw new DesignError('conflicting-input', { field: `cabin.measured.frequencyHz[${fault}]`, detail })
  }
}

function fromMeasurement(cabin: Cabin, measured: MeasuredTransfer, frequenciesHz: Float64Array): CabinGain {
  const modelFields = ['volumeM3', 'lengthM', 'cornerQ', 'leakCornerHz', 'leakQ'] as const
  const given = modelFields.filter(field => cabin[field] !== undefined)
  const [first] = given
  if (first !== undefined) {
    const detail = say('refused.a-measured-curve-takes-the-place')
    throw new DesignError('conflicting-input', { field: `cabin.${first}`, detail })
  }
  requireSoundCurve(measured)
  const lowest = measured.frequencyHz[0] ?? 0
  const highest = measured.frequencyHz.at(-1) ?? 0
  const outside = frequenciesHz.some(frequency => frequency < lowest || frequency > highest)
  const message = say('cabin-curve-held', { lowestHz: lowest, highestHz: highest })
  const place = { at: 'cabin.measured.frequencyHz', figures: { measuredFromHz: lowest, measuredToHz: highest } }
  return {
    model: { model: 'measured', uncertaintyDb: 0 },
    gainDb: frequenciesHz.map(frequency => measuredGainDb(measured, frequency)),
    cautions: outside ? [caution('cabin-curve-held', message, place)] : [],
    sources: ['stratman-1992'],
    basis: []
  }
}

function cornerOf(cabin: Cabin, soundSpeedMPerS: number): number {
  if (cabin.volumeM3 !== undefined) return pressureVesselCornerHz(cabin.volumeM3, soundSpeedMPerS)
  if (cabin.lengthM !== undefined) return lowestModeHz(cabin.lengthM, soundSpeedMPerS)
  const detail = say('refused.a-cabin-needs-its-volume-its')
  throw new DesignError('missing-input', { field: 'cabin', detail })
}

function vesselOf(cabin: Cabin, cornerHz: number, assume: Assumptions): PressureVessel {
  const { cornerQ, leakQ, leakCornerHz, maximumGainDb } = cabinDefaults
  const capped = cornerHz / 10 ** (maximumGainDb.value / 40)
  const leak = capped > leakCornerHz.value ? { ...maximumGainDb, value: capped, unit: 'Hz' } : leakCornerHz
  return {
    cornerHz,
    cornerQ: assume.take(cabin.cornerQ, 'cabin.cornerQ', cornerQ),
    leakQ: assume.take(cabin.leakQ, 'cabin.leakQ', leakQ),
    leakCornerHz: assume.take(cabin.leakCornerHz, 'cabin.leakCornerHz', leak)
  }
}

function modelCautions(vessel: PressureVessel, modeHz: number | undefined, highestHz: number): readonly Caution[] {
  const uncertaintyDb = cabinDefaults.uncertaintyDb.value
  const doubt = caution('cabin-model', say('cabin-model', { uncertaintyDb }), {
    at: 'cabin',
    figures: { uncertaintyDb, cornerHz: vessel.cornerHz, leakCornerHz: vessel.leakCornerHz }
  })
  const limitHz = modeHz ?? vessel.cornerHz
  if (highestHz <= limitHz) return [doubt]
  const message = say('cabin-modes', { uncertaintyDb, limitHz: fixed(limitHz, 0) })
  return [caution('cabin-modes', message, { at: 'cabin', figures: { uncertaintyDb, limitHz, highestHz } })]
}

function cornerBasis({ volumeM3: V, lengthM: L = 0 }: Cabin, c: number, cornerHz: number): Basis {
  const quantity = 'cabin.cornerHz'
  if (V === undefined) return explain(cabinMode, quantity, cornerHz, { c, L })
  return explain(cabinCorner, quantity, cornerHz, { c, r: REFERENCE_DISTANCE_M, V })
}

/**
 * Gain at the seat over half space at 1 m, for each frequency.
 *
 * @throws DesignError `missing-input`, `conflicting-input`
 */
export function cabinGain(
  cabin: Cabin,
  soundSpeedMPerS: number,
  frequenciesHz: Float64Array,
  assume: Assumptions
): CabinGain {
  if (cabin.measured !== undefined) return fromMeasurement(cabin, cabin.measured, frequenciesHz)
  const cornerHz = cornerOf(cabin, soundSpeedMPerS)
  const vessel = vesselOf(cabin, cornerHz, assume)
  if (vessel.leakCornerHz >= cornerHz) {
    const detail = say('refused.the-leak-corner-must-lie-below', { cornerHz: fixed(cornerHz, 1) })
    const bound = { value: vessel.leakCornerHz, maximum: cornerHz, unit: 'Hz', detail }
    throw new DesignError('out-of-range', { field: 'cabin.leakCornerHz', ...bound })
  }
  const modeHz = cabin.lengthM === undefined ? undefined : lowestModeHz(cabin.lengthM, soundSpeedMPerS)
  const highestHz = frequenciesHz.reduce((highest, frequency) => Math.max(highest, frequency), 0)
  const uncertaintyDb = cabinDefaults.uncertaintyDb.value
  const mode = modeHz === undefined ? {} : { lowestModeHz: modeHz }
  return {
    model: { model: 'pressure-vessel', cornerHz, leakCornerHz: vessel.leakCornerHz, ...mode, uncertaintyDb },
    gainDb: frequenciesHz.map(frequency => pressureVesselGainDb(vessel, frequency)),
    cautions: modelCautions(vessel, modeHz, highestHz),
    sources: ['cabin-corner', 'morse-ingard-1968', 'cabin-shelf'],
    basis: [cornerBasis(cabin, soundSpeedMPerS, cornerHz)]
  }
}
