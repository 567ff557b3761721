/** Designs side by side: request and answer. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { CabinBody } from '../acoustics/cabin.ts'
import { DriverBody } from '../drivers/driver.ts'
import { component, ref } from '../field/component.ts'
import { choice, label, list, quantity, some } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { DriversBody, EnclosureBody, SourceBody } from './enclosure.ts'
import { filterChain } from './filter.ts'
import { curve, frequenciesHz, someCurve } from './frequencies.ts'
import { LimitsBody } from './limits.ts'
import { comparedFigures, comparedParameters } from './words.ts'

const ComparedDesignBody = component('ComparedDesign', 'One of several designs, as a response takes it.', {
  name: label('What it is called here; no two alike', 60),
  driver: ref(DriverBody),
  drivers: Type.Optional(ref(DriversBody)),
  enclosure: ref(EnclosureBody),
  source: ref(SourceBody),
  filters: Type.Optional(filterChain),
  limits: Type.Optional(ref(LimitsBody))
})

export const DesignComparison = component('DesignComparison', 'Designs in the same air and the same car.', {
  designs: list('The first is what the others are measured against', ref(ComparedDesignBody), 2, 8),
  air: Type.Optional(ref(AirBody)),
  cabin: Type.Optional(ref(CabinBody)),
  frequenciesHz: Type.Optional(frequenciesHz)
})

const MARKS = 'at 25, 31.5, 40, 50 and 63 Hz'
const marked = (description: string) => list(description, Type.Number({ description: 'Value [dB]' }), 5, 5)

const ComparedCurvesBody = component('ComparedCurves', 'Curves of one design over `frequencyHz` of the answer.', {
  levelDb: curve('dB', 'Level at the seat with a cabin, else at 1 m in half space'),
  mostLevelDb: Type.Optional(
    curve('dB', 'With limits: level of the largest sine that keeps to all, in the same place')
  ),
  coneExcursionMm: curve('mm', 'Excursion of one cone, one way, peak'),
  portAirSpeedMPerS: someCurve('m/s', 'Air speed in the faster of its ports, peak'),
  groupDelayMs: curve('ms', 'Group delay, without travel time'),
  impedanceOhm: curve('Ω', 'Modulus of the impedance')
})
export interface ComparedCurves extends Si<Static<typeof ComparedCurvesBody>> {}

const figureFields = {
  levelsDb: marked(`Level ${MARKS}, at the seat with a cabin, else at 1 m in half space`),
  mostLevelsDb: Type.Optional(marked(`With limits: the most that keeps to all of them, ${MARKS}`)),
  f3Hz: some('Hz', 'Half power, as the response gives it'),
  tuningHz: some('Hz', 'Tuning of the rear chamber'),
  qtc: some('1', 'Closed box: total Q'),
  netVolumeL: some('L', 'Net air of all chambers'),
  voltageV: quantity('V', 'Source voltage, RMS'),
  coneExcursionMm: quantity('mm', 'Largest excursion between 20 and 120 Hz, one way, peak'),
  portAirSpeedMPerS: some('m/s', 'Largest air speed between 20 and 120 Hz, peak'),
  groupDelayMs: quantity('ms', 'Longest group delay between 20 and 120 Hz'),
  impedanceOhm: quantity('Ω', 'Least impedance between 20 and 120 Hz')
}
const ComparedFiguresBody = component('ComparedFigures', 'What designs are compared by.', figureFields)
export interface ComparedFigures extends Si<Static<typeof ComparedFiguresBody>> {}

const changeFields = {
  levelsDb: marked(`Change of the level ${MARKS}`),
  f3Hz: some('Hz', 'Change of half power'),
  coneExcursionMm: quantity('mm', 'Change of the largest excursion'),
  portAirSpeedMPerS: some('m/s', 'Change of the largest air speed'),
  groupDelayMs: quantity('ms', 'Change of the longest delay')
}
const FigureChangesBody = component('FigureChanges', 'Figures less those of the first design.', changeFields)
export interface FigureChanges extends Si<Static<typeof FigureChangesBody>> {}

const CauseBody = component('DesignCause', 'What one parameter does when it alone goes into the first design.', {
  parameter: choice('Which', comparedParameters),
  change: Type.Optional(ref(FigureChangesBody, 'Absent where the first design cannot take it')),
  lastDb: Type.Optional(
    marked(
      `The same as the last of all changes: level ${MARKS} of the other design less that of it with this parameter of the first`
    )
  ),
  refusal: Type.Optional(Type.String({ description: 'Why it cannot' }))
})

const DifferenceBody = component('DesignDifference', 'One design against the first.', {
  name: Type.String({ description: 'Name of the design' }),
  change: ref(FigureChangesBody),
  causes: list('One for each parameter that differs', ref(CauseBody), 0, comparedParameters.length),
  togetherDb: marked(
    `What is left of the change of level ${MARKS} when the single ones are taken off: they do not add up`
  )
})

const DesignCurvesBody = component('DesignSideBySide', 'One design with its curves and figures.', {
  name: Type.String({ description: 'Name of the design' }),
  curves: ref(ComparedCurvesBody),
  figures: ref(ComparedFiguresBody)
})

export const ComparisonBody = component('DesignComparisonResult', 'Designs side by side.', {
  place: choice('Where levels are heard', ['seat', 'half-space']),
  frequencyHz: curve('Hz', 'Frequencies of all curves'),
  comparedHz: list('Frequencies of the five levels', Type.Number({ description: 'Frequency [Hz]' }), 5, 5),
  designs: list('In the order of the request', ref(DesignCurvesBody), 2, 8),
  differing: list(
    'Figures in which any two differ by more than a tenth of a decibel or half a percent',
    choice('Figure', comparedFigures),
    0,
    comparedFigures.length
  ),
  differences: list('Each other design against the first', ref(DifferenceBody), 1, 7)
})
export interface Comparison extends Si<Static<typeof ComparisonBody>> {}
export interface ComparisonRequest extends Si<Static<typeof DesignComparison>> {}
