/** Schemas of a system at work: the limits, the losses, the protection. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity, some } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { MOST_FREQUENCIES, someCurve } from './frequencies.ts'
import { limitNames } from './words.ts'

const limit = choice(
  'Excursion of a cone or passive radiator, heat in the coil, voltage by the rating, voltage or current of the amplifier, air speed',
  limitNames
)

export const largeSignalCurves = {
  maximumLevelDb: someCurve(
    'dB',
    'With limits: level of the largest sine that keeps to all of them, before the filters'
  ),
  maximumVoltageV: someCurve('V', 'With limits: RMS voltage of that sine at the source'),
  governingLimit: Type.Optional(list('With limits: the limit that sine reaches', limit, 1, MOST_FREQUENCIES)),
  maximumSeatLevelDb: someCurve('dB', 'With limits and a cabin: maximumLevelDb + cabinGainDb'),
  compressedLevelDb: someCurve(
    'dB',
    'With limits: level at the given drive with the losses below and no more than the amplifier swings, an estimate'
  ),
  coilCompressionDb: someCurve('dB', 'With limits: change of level by the warm coil, an estimate'),
  portCompressionDb: someCurve('dB', 'With limits: change of level by the jets in the ports, an estimate (±50 %)')
}

const DrivePeaksBody = component('DrivePeaks', 'The worst of the programme at the given drive, linear.', {
  coneExcursionMm: quantity('mm', 'Excursion of a cone, one way, peak'),
  coneExcursionHz: quantity('Hz', 'Where'),
  coneExcursionOfXmax: some('1', 'That excursion over Xmax'),
  passiveRadiatorExcursionMm: some('mm', 'Excursion of a passive radiator, one way, peak'),
  passiveRadiatorExcursionHz: some('Hz', 'Where'),
  portAirSpeedMPerS: some('m/s', 'Air speed in a port, peak'),
  portAirSpeedHz: some('Hz', 'Where'),
  currentA: quantity('A', 'Current into the drivers, RMS'),
  currentHz: quantity('Hz', 'Where')
})
export interface DrivePeaks extends Si<Static<typeof DrivePeaksBody>> {}

const ProgrammeLimitBody = component('ProgrammeLimit', 'How far the drive can go before the first limit is reached.', {
  voltageV: quantity('V', 'Largest source voltage before the filters at which no frequency passes a limit, RMS'),
  powerW: quantity('W', 'What that voltage gives into the DC resistance of the drivers'),
  limit,
  atHz: quantity('Hz', 'Where that limit is reached')
})
export interface ProgrammeLimit extends Si<Static<typeof ProgrammeLimitBody>> {}

const LimitSegmentBody = component('LimitSegment', 'A stretch of the frequencies over which one limit governs.', {
  limit,
  fromHz: quantity('Hz', 'First frequency'),
  toHz: quantity('Hz', 'Last frequency')
})
export interface LimitSegment extends Si<Static<typeof LimitSegmentBody>> {}

const WarmingBody = component('WarmingMoment', 'The coil some time after switching on.', {
  timeS: quantity('s', 'Time at the given drive'),
  coilC: quantity('°C', 'Temperature of the coil'),
  reOhm: quantity('Ω', 'DC resistance of the drivers as they are joined'),
  compressionDb: quantity('dB', 'Level lost in the mass-controlled band')
})

const HeatingResultBody = component(
  'CoilHeating',
  'The coil at the given drive, for a programme of equal power in every octave: an estimate.',
  {
    coilHeatW: quantity('W', 'Mean heat in one coil once warm'),
    steadyCoilC: quantity('°C', 'Temperature at which it settles; at most 1000'),
    maximumCoilC: quantity('°C', 'What the coil stands'),
    ambientC: quantity('°C', 'Temperature around the driver'),
    metal: choice('What the coil is wound of', ['copper', 'aluminium']),
    coilKPerW: quantity('K/W', 'Thermal resistance from one coil to its magnet'),
    magnetKPerW: quantity('K/W', 'Thermal resistance from the magnet to the air'),
    steadyReOhm: quantity('Ω', 'DC resistance of the drivers as they are joined, once warm'),
    compressionDb: quantity('dB', 'Level lost in the mass-controlled band, once warm'),
    warming: Type.Optional(list('With a time constant: the way there', ref(WarmingBody), 1, 16))
  }
)
export interface CoilHeating extends Si<Static<typeof HeatingResultBody>> {}

const HighPassBody = component('HighPassProtection', 'A Butterworth high-pass that holds the cone.', {
  order: count('Order', 2, 4),
  cornerHz: quantity('Hz', 'Lowest corner that holds the cone within Xmax; a higher one does too'),
  gainAtTuningDb: quantity('dB', 'What it takes at `belowHz`; negative')
})

const ProtectionBody = component(
  'ExcursionProtection',
  'Whether the cone needs a high-pass at the given drive, and which. The filters given are already counted.',
  {
    belowHz: quantity(
      'Hz',
      'Lowest tuning, below which an opening no longer restrains the cone; or the closed resonance'
    ),
    excursionMm: quantity('mm', 'Largest excursion below it, one way, peak'),
    excursionHz: quantity('Hz', 'Where'),
    needed: Type.Boolean({ description: 'Whether that is more than Xmax' }),
    highPass: list('If needed: one for each order that can hold the cone', ref(HighPassBody), 0, 3)
  }
)
export interface Protection extends Si<Static<typeof ProtectionBody>> {}

export const LargeSignalBody = component('LargeSignal', 'The system at work.', {
  atDrive: ref(DrivePeaksBody),
  programme: ref(ProgrammeLimitBody),
  segments: list(
    'Which limit governs where, over the frequencies asked for',
    ref(LimitSegmentBody),
    1,
    MOST_FREQUENCIES
  ),
  heating: Type.Optional(ref(HeatingResultBody)),
  protection: Type.Optional(ref(ProtectionBody))
})
export interface LargeSignal extends Si<Static<typeof LargeSignalBody>> {}
