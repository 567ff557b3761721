/** Schemas of a tolerance run: the spreads that go in, the bands and sensitivities that come out. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { MOST_FREQUENCIES } from './frequencies.ts'
import { figureNames, parameterNames } from './words.ts'

const percent = (what: string) => Type.Optional(quantity('%', `One standard deviation of ${what}`, { from: 0, to: 33 }))

export const SpreadBody = component(
  'Spread',
  'One standard deviation of each physical parameter. fs, Q and Vas follow from these and are never varied apart.',
  {
    rePercent: percent('the DC resistance of the coil'),
    blPercent: percent('the force factor'),
    mmsPercent: percent('the moving mass'),
    cmsPercent: percent('the compliance of the suspension'),
    rmsPercent: percent('the mechanical resistance'),
    sdPercent: percent('the area of the cone'),
    lePercent: percent('the inductance of the coil'),
    volumePercent: percent('the volume of each chamber'),
    portLengthPercent: percent('the length of the ports'),
    portAreaPercent: percent('the area of the ports'),
    radiatorMassPercent: percent('the mass of the passive radiators'),
    radiatorCompliancePercent: percent('their compliance'),
    lossPercent: percent('the loss Qs of each chamber'),
    temperatureK: Type.Optional(quantity('K', 'One standard deviation of the air temperature', { from: 0, to: 30 }))
  }
)
export interface Spread extends Si<Static<typeof SpreadBody>> {}

const values = (unit: string, description: string) =>
  list(description, Type.Number({ description: `Value [${unit}]` }), 1, MOST_FREQUENCIES)
const percentiles = (unit: string) =>
  list('At each percentile asked for, in its order', Type.Number({ description: `Value [${unit}]` }), 1, 9)

const curves = {
  levelDb: values('dB', 'Level re 20 µPa at 1 m in half space'),
  coneExcursionMm: values('mm', 'Excursion of one cone, one way, peak'),
  impedanceOhm: values('Ω', 'Modulus of the impedance')
}

const BandBody = component('ToleranceBand', 'Each value is that percentile of all samples at that frequency.', {
  percent: quantity('%', 'Percentile'),
  ...curves
})
export interface ToleranceBand extends Si<Static<typeof BandBody>> {}
export const NominalBody = component('NominalCurves', 'The curves with every part as printed.', curves)
export interface SampleCurves extends Si<Static<typeof NominalBody>> {}

const FrequencySpreadBody = component('FrequencySpread', 'How a frequency scatters.', {
  nominalHz: quantity('Hz', 'With every part as printed'),
  meanHz: quantity('Hz', 'Mean of the samples'),
  standardDeviationHz: quantity('Hz', 'Standard deviation of the samples'),
  percentilesHz: percentiles('Hz')
})
const PureSpreadBody = component('PureSpread', 'How a pure number scatters.', {
  nominal: quantity('1', 'With every part as printed'),
  mean: quantity('1', 'Mean of the samples'),
  standardDeviation: quantity('1', 'Standard deviation of the samples'),
  percentiles: percentiles('1')
})
const TravelSpreadBody = component('TravelSpread', 'How a travel scatters.', {
  nominalMm: quantity('mm', 'With every part as printed'),
  meanMm: quantity('mm', 'Mean of the samples'),
  standardDeviationMm: quantity('mm', 'Standard deviation of the samples'),
  percentilesMm: percentiles('mm')
})
const SpeedSpreadBody = component('SpeedSpread', 'How a speed scatters.', {
  nominalMPerS: quantity('m/s', 'With every part as printed'),
  meanMPerS: quantity('m/s', 'Mean of the samples'),
  standardDeviationMPerS: quantity('m/s', 'Standard deviation of the samples'),
  percentilesMPerS: percentiles('m/s')
})
const ResistanceSpreadBody = component('ResistanceSpread', 'How an impedance scatters.', {
  nominalOhm: quantity('Ω', 'With every part as printed'),
  meanOhm: quantity('Ω', 'Mean of the samples'),
  standardDeviationOhm: quantity('Ω', 'Standard deviation of the samples'),
  percentilesOhm: percentiles('Ω')
})

const frequency = (description: string) => Type.Optional(ref(FrequencySpreadBody, description))

const FiguresBody = component(
  'ToleranceFigures',
  'How the figures scatter; absent where the system has no such figure.',
  {
    f3: frequency('Lowest half-power frequency'),
    f3Upper: frequency('Band-pass kinds: highest half-power frequency'),
    tuning: frequency('Tuning of the rear chamber'),
    frontTuning: frequency('Tuning of the front chamber'),
    closedResonance: frequency('Resonance of the driver in its closed rear chamber'),
    driverResonance: frequency('fs of the driver'),
    driverTotalQ: Type.Optional(ref(PureSpreadBody, 'Qts of the driver')),
    peakExcursion: Type.Optional(ref(TravelSpreadBody, 'Largest excursion over the frequencies, one way, peak')),
    peakAirSpeed: Type.Optional(ref(SpeedSpreadBody, 'Largest air speed in a port over the frequencies, peak')),
    minimumImpedance: Type.Optional(ref(ResistanceSpreadBody, 'Lowest impedance over the frequencies'))
  }
)
export interface ToleranceFigures extends Si<Static<typeof FiguresBody>> {}

const SensitivityBody = component('Sensitivity', 'What one parameter does to one figure, all others as printed.', {
  figure: choice('The figure', figureNames),
  parameter: choice('The parameter', parameterNames),
  elasticity: quantity('1', 'Relative change of the figure for a relative change of the parameter'),
  standardDeviationPercent: quantity('%', 'Of the parameter; of the absolute temperature'),
  effectPercent: quantity('%', 'Change of the figure for one standard deviation of the parameter'),
  sharePercent: quantity('%', 'Part of the variance of the figure, to first order')
})
export interface Sensitivity extends Si<Static<typeof SensitivityBody>> {}

export const ToleranceResultBody = component('EnclosureTolerance', 'The spread of a response over its tolerances.', {
  seed: quantity('1', 'Seed of the random numbers: the same request with it gives the same answer'),
  samples: quantity('1', 'Number of systems drawn'),
  frequencyHz: values('Hz', 'Frequencies of the curves'),
  nominal: ref(NominalBody),
  bands: list('One a percentile, in the order asked for', ref(BandBody), 1, 9),
  figures: ref(FiguresBody),
  withinXmaxPercent: Type.Optional(quantity('%', 'Share of the samples whose largest excursion keeps to Xmax')),
  sensitivities: list('By figure, the parameter with the greatest share first', ref(SensitivityBody), 0, 400)
})
export interface Tolerance extends Si<Static<typeof ToleranceResultBody>> {}
