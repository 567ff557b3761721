/** Schemas of a response: curves of equal length, and the figures it is judged by. */
import Type, { type Static } from 'typebox'
import { CabinModelBody } from '../acoustics/cabin.ts'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity, some } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { curve, someCurve } from './frequencies.ts'
import { LargeSignalBody, largeSignalCurves } from './large-signal.ts'
import { TimeResponseBody } from './time-response.ts'

export const CurvesBody = component('ResponseCurves', 'Curves over frequency, arrays of equal length.', {
  frequencyHz: curve('Hz', 'Frequencies'),
  levelDb: curve('dB', 'Level re 20 µPa at 1 m in half space: cone, ports, radiators and leaks with their phases'),
  phaseDeg: curve('°', 'Phase of the sound pressure against the source, without travel time'),
  groupDelayMs: curve('ms', 'Group delay, without travel time'),
  coneExcursionMm: curve('mm', 'Excursion of one cone, one way, peak; of the first group where there are several'),
  coneVelocityMPerS: curve('m/s', 'Velocity of one cone, RMS'),
  impedanceOhm: curve('Ω', 'Modulus of the impedance at the terminals of the drivers'),
  impedancePhaseDeg: curve('°', 'Phase of that impedance; positive: inductive'),
  currentA: curve('A', 'Current into the drivers, RMS'),
  apparentPowerVa: curve('VA', 'Voltage at the terminals times current'),
  rearChamberPressurePa: someCurve('Pa', 'Sound pressure in the rear chamber, RMS'),
  frontChamberPressurePa: someCurve('Pa', 'Sound pressure in the front chamber, RMS'),
  rearPortAirSpeedMPerS: someCurve('m/s', 'Air speed in a port of the rear chamber, peak, mean over its area'),
  frontPortAirSpeedMPerS: someCurve('m/s', 'Air speed in a port of the front chamber, peak, mean over its area'),
  passiveRadiatorExcursionMm: someCurve('mm', 'Excursion of a passive radiator of the rear chamber, one way, peak'),
  frontPassiveRadiatorExcursionMm: someCurve('mm', 'The same for the front chamber'),
  filterGainDb: someCurve('dB', 'What the filters alone do; already in every other curve'),
  filterPhaseDeg: someCurve('°', 'Phase of the filters alone'),
  filterGroupDelayMs: someCurve('ms', 'Group delay of the filters alone'),
  cabinGainDb: someCurve('dB', 'With a cabin: level at the seat over half space at 1 m; not in `levelDb`'),
  seatLevelDb: someCurve('dB', 'With a cabin: level at the seat, levelDb + cabinGainDb'),
  ...largeSignalCurves
})

const ImpedanceExtremeBody = component('ImpedanceExtreme', 'A peak or dip of the impedance.', {
  frequencyHz: quantity('Hz', 'Where it lies'),
  ohm: quantity('Ω', 'Modulus there')
})

const ExcursionExtremeBody = component('ExcursionExtreme', 'A peak or dip of the excursion.', {
  frequencyHz: quantity('Hz', 'Where it lies'),
  excursionMm: quantity('mm', 'Excursion there, one way, peak')
})

const PortLengthsBody = component(
  'PortLengthsForTuning',
  'Physical length that gives the same tuning with the same count, area and volume, by the situation of the two ends.',
  {
    flangedFreeMm: quantity('mm', 'One end flush with a panel, one free'),
    bothFlangedMm: quantity('mm', 'Both ends flush'),
    bothFreeMm: quantity('mm', 'Both ends free')
  }
)
export interface PortLengths extends Si<Static<typeof PortLengthsBody>> {}

const ScalarsBody = component('ResponseScalars', 'Figures of a response, refined between the frequencies asked for.', {
  voltageV: quantity('V', 'Source voltage, RMS'),
  referenceLevelDb: some('dB', 'High-pass kinds: level of the mass-controlled plateau, inductance left out'),
  f3Hz: some(
    'Hz',
    'Lowest frequency at which the level rises through half power: of the plateau, or of the peak of a band-pass. Absent: never'
  ),
  f3UpperHz: some('Hz', 'Band-pass kinds: highest frequency at which the level falls through half power'),
  peakLevelDb: quantity('dB', 'Highest level between 3 and 600 Hz'),
  peakLevelHz: quantity('Hz', 'Where the level is highest'),
  upwardCrossings: some('1', 'Band-pass kinds: how often the level rises through half power'),
  downwardCrossings: some('1', 'Band-pass kinds: how often it falls through it'),
  tuningHz: some('Hz', 'Tuning of the rear chamber with its opening'),
  frontTuningHz: some('Hz', 'Tuning of the front chamber with its opening'),
  tuningRatio: some('1', 'tuningHz over fs'),
  fcHz: some('Hz', 'Closed box: resonance of the driver in the box'),
  qtc: some('1', 'Closed box: total Q with the source resistance, without inductance and box losses'),
  qec: some('1', 'Closed box: electrical Q without the source resistance'),
  qmc: some('1', 'Closed box: mechanical Q without box losses'),
  alpha: some('1', 'Compliance ratio of the rear chamber, N·Vas/V'),
  frontAlpha: some('1', 'Compliance ratio of the front chamber'),
  portEffectiveLengthMm: some('mm', 'Length of a rear port with its end corrections'),
  frontPortEffectiveLengthMm: some('mm', 'Length of a front port with its end corrections'),
  portLengths: Type.Optional(ref(PortLengthsBody)),
  frontPortLengths: Type.Optional(ref(PortLengthsBody)),
  passiveRadiatorResonanceHz: some('Hz', 'Resonance of a rear passive radiator alone'),
  passiveRadiatorVasL: some('L', 'Air volume as compliant as all rear passive radiators'),
  frontPassiveRadiatorResonanceHz: some('Hz', 'Resonance of a front passive radiator alone'),
  frontPassiveRadiatorVasL: some('L', 'Air volume as compliant as all front passive radiators'),
  impedancePeaks: list('Peaks of the impedance, 3 to 400 Hz, ascending', ref(ImpedanceExtremeBody), 0, 64),
  impedanceMinima: list('Dips of the impedance, 3 to 400 Hz, ascending', ref(ImpedanceExtremeBody), 0, 64),
  excursionPeaks: list('Peaks of the excursion, 5 to 400 Hz, ascending', ref(ExcursionExtremeBody), 0, 64),
  excursionMinima: list('Dips of the excursion, 5 to 400 Hz, ascending', ref(ExcursionExtremeBody), 0, 64)
})
export interface ResponseScalars extends Si<Static<typeof ScalarsBody>> {}

export const PartCurveBody = component('PartCurve', 'A named part of the enclosure with its curve.', {
  part: choice('What it is', ['chamber', 'port', 'passive-radiator', 'drivers']),
  name: Type.String({ description: 'Name in the request; of isobaric pairs `outer`, `inner` and `coupling`' }),
  pressurePa: someCurve('Pa', 'Chambers: sound pressure, RMS'),
  airSpeedMPerS: someCurve('m/s', 'Ports: air speed, peak'),
  excursionMm: someCurve('mm', 'Drivers and passive radiators: excursion of one, one way, peak')
})
export interface PartCurve extends Si<Static<typeof PartCurveBody>> {}

export const ResponseResultBody = component('EnclosureResponse', 'The response of one enclosure.', {
  curves: ref(CurvesBody),
  scalars: ref(ScalarsBody),
  cabin: Type.Optional(ref(CabinModelBody)),
  limits: Type.Optional(ref(LargeSignalBody)),
  timeResponse: Type.Optional(ref(TimeResponseBody)),
  parts: Type.Optional(list('Custom enclosures and isobaric pairs: every named part', ref(PartCurveBody), 1, 64))
})
export interface Response extends Si<Static<typeof ResponseResultBody>> {}
