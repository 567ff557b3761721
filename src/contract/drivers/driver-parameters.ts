/** A driver’s data sheet as a request, and the completed set. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { asPrinted, SD_CM2_BOUNDS, vasAir } from './driver.ts'
import { coilConnections } from './words.ts'

/** Wide bounds on purpose: a slip of unit has to reach the service before it can be named. */

export const DriverSheet = component(
  'DriverSheet',
  'What a data sheet says of one driver; whatever is absent is worked out.',
  {
    fsHz: Type.Optional(quantity('Hz', 'Free-air resonance', { from: 1, to: 2000 })),
    qms: Type.Optional(quantity('1', 'Mechanical Q', { from: 0.05, to: 200 })),
    qes: Type.Optional(quantity('1', 'Electrical Q', { from: 0.02, to: 50 })),
    qts: Type.Optional(quantity('1', 'Total Q', { from: 0.02, to: 50 })),
    vasL: Type.Optional(quantity('L', 'Air volume as compliant as the suspension', { from: 1e-4, to: 20_000 })),
    vasAir,
    sdCm2: Type.Optional(quantity('cm²', 'Effective area of the cone', SD_CM2_BOUNDS)),
    reOhm: Type.Optional(quantity('Ω', 'Direct-current resistance of the coil', { from: 0.02, to: 200 })),
    blTm: Type.Optional(quantity('T·m', 'Force factor', { from: 0.1, to: 500 })),
    mmsG: Type.Optional(quantity('g', 'Moving mass with its air load', { from: 1e-3, to: 50_000 })),
    mmdG: Type.Optional(quantity('g', 'Moving mass without air load, in place of Mms', { from: 1e-3, to: 50_000 })),
    cmsMmPerN: Type.Optional(quantity('mm/N', 'Compliance of the suspension', { from: 1e-6, to: 10_000 })),
    rmsKgPerS: Type.Optional(quantity('kg/s', 'Mechanical resistance', { from: 0.001, to: 50_000 })),
    leMh: Type.Optional(quantity('mH', 'Coil inductance', { from: 0, to: 50_000 })),
    leParallelOhm: Type.Optional(quantity('Ω', 'Resistance across the inductance', { above: 0, to: 10_000 })),
    ...asPrinted,
    ratedImpedanceOhm: Type.Optional(quantity('Ω', 'Rated impedance', { from: 0.1, to: 200 })),
    nominalDiameterMm: Type.Optional(
      quantity('mm', 'Nominal diameter (12 in is 305 mm); used where Sd is absent', { from: 50, to: 1000 })
    ),
    level1WDb: Type.Optional(quantity('dB', 'Printed sensitivity at 1 W, 1 m', { from: 40, to: 130 })),
    level2V83Db: Type.Optional(quantity('dB', 'Printed sensitivity at 2.83 V, 1 m', { from: 40, to: 130 }))
  }
)
export interface DriverSheet extends Si<Static<typeof DriverSheet>> {}

export const SheetCoils = component(
  'SheetCoils',
  'The voice coils of the driver and the connection the sheet speaks of.',
  {
    count: Type.Unsafe<1 | 2 | 4>({ type: 'integer', enum: [1, 2, 4], description: 'Voice coils of the driver' }),
    statedFor: Type.Optional(choice('Connection that Bl, Q and Le of the sheet belong to', coilConnections)),
    resistanceStatedFor: Type.Optional(choice('Connection that Re of the sheet belongs to', coilConnections)),
    wanted: Type.Optional(choice('Connection the answer is for', coilConnections))
  }
)
export interface SheetCoils extends Si<Static<typeof SheetCoils>> {}
export const DriverParametersRequest = component(
  'DriverParametersRequest',
  'A data sheet to be completed and checked.',
  {
    driver: ref(DriverSheet),
    coils: Type.Optional(ref(SheetCoils)),
    air: Type.Optional(ref(AirBody))
  }
)
export interface DriverParametersRequest extends Si<Static<typeof DriverParametersRequest>> {}
export const CompletedDriver = component(
  'CompletedDriver',
  'The full small-signal set in the wanted coil connection.',
  {
    vasAir,
    fsHz: quantity('Hz', 'Free-air resonance'),
    qms: quantity('1', 'Mechanical Q'),
    qes: quantity('1', 'Electrical Q'),
    qts: quantity('1', 'Total Q'),
    vasL: quantity('L', 'Air volume as compliant as the suspension'),
    sdCm2: quantity('cm²', 'Effective area of the cone'),
    reOhm: quantity('Ω', 'Direct-current resistance of the coil'),
    blTm: quantity('T·m', 'Force factor'),
    mmsG: quantity('g', 'Moving mass with its air load'),
    cmsMmPerN: quantity('mm/N', 'Compliance of the suspension'),
    rmsKgPerS: quantity('kg/s', 'Mechanical resistance'),
    leMh: Type.Optional(quantity('mH', 'Coil inductance')),
    leParallelOhm: Type.Optional(quantity('Ω', 'Resistance across the inductance')),
    ...asPrinted
  }
)
export interface CompletedDriver extends Si<Static<typeof CompletedDriver>> {}

const ParameterOrigin = component('ParameterOrigin', 'Where a value comes from.', {
  origin: choice('`given` by the sheet, `derived` from it, or `assumed`', ['given', 'derived', 'assumed']),
  rule: Type.Optional(Type.String({ description: 'Formula or reason of a derived or assumed value' }))
})
export interface Origin extends Si<Static<typeof ParameterOrigin>> {}

const OriginRef = ref(ParameterOrigin)

const ParameterOrigins = component('ParameterOrigins', 'Where each value of the set comes from.', {
  fsHz: OriginRef,
  qms: OriginRef,
  qes: OriginRef,
  qts: OriginRef,
  vasL: OriginRef,
  sdCm2: OriginRef,
  reOhm: OriginRef,
  blTm: OriginRef,
  mmsG: OriginRef,
  cmsMmPerN: OriginRef,
  rmsKgPerS: OriginRef
})
const ParameterCheck = component('ParameterCheck', 'A relation that the sheet over-determines, held against it.', {
  identity: choice('Which relation', ['total-q', 'compliance-volume', 'resonance', 'electrical-q', 'mechanical-q']),
  relation: Type.String({ description: 'The relation as printed in the literature' }),
  ratio: quantity('1', 'Value on the sheet over the value the others give'),
  verdict: choice(
    'Beyond what the rounding of the printed digits explains: `agrees` up to 3 %, `note` up to 10 %, `care` up to 25 %, else `stop`',
    ['agrees', 'note', 'care', 'stop']
  ),
  detail: Type.String({ description: 'Both values and what they were reached from' })
})
export interface IdentityCheck extends Si<Static<typeof ParameterCheck>> {}

const MendedParameter = component(
  'MendedParameter',
  'The figure, or the two that changed places, as it would be if the slip had happened; never applied.',
  {
    fsHz: Type.Optional(quantity('Hz', 'fs')),
    qms: Type.Optional(quantity('1', 'Qms')),
    qes: Type.Optional(quantity('1', 'Qes')),
    qts: Type.Optional(quantity('1', 'Qts')),
    vasL: Type.Optional(quantity('L', 'Vas')),
    sdCm2: Type.Optional(quantity('cm²', 'Sd')),
    reOhm: Type.Optional(quantity('Ω', 'Re')),
    blTm: Type.Optional(quantity('T·m', 'Bl')),
    mmsG: Type.Optional(quantity('g', 'Mms')),
    cmsMmPerN: Type.Optional(quantity('mm/N', 'Cms')),
    rmsKgPerS: Type.Optional(quantity('kg/s', 'Rms')),
    xmaxMm: Type.Optional(quantity('mm', 'Xmax')),
    leMh: Type.Optional(quantity('mH', 'Le'))
  }
)
const UnitSlip = component('UnitSlip', 'A slip that would explain what is odd on the sheet.', {
  id: Type.String({ description: 'Name of the slip' }),
  detail: Type.String({ description: 'The slip in words' }),
  mended: ref(MendedParameter)
})
export interface NamedSlip extends Si<Static<typeof UnitSlip>> {}

export const DriverFigures = component('DriverFigures', 'What follows from the set; half space, 1 m.', {
  ebpHz: quantity('Hz', 'Efficiency bandwidth product fs/Qes'),
  efficiencyPercent: quantity('%', 'Reference efficiency'),
  level1WDb: quantity('dB', 'Level for 1 W into Re'),
  level2V83Db: quantity('dB', 'Level at 2.83 V'),
  levelRated1WDb: Type.Optional(quantity('dB', 'Level for 1 W into the rated impedance')),
  impedancePeakOhm: quantity('Ω', 'Modulus at the free-air resonance, inductance left out'),
  sweptVolumeL: Type.Optional(quantity('L', 'Volume the cone sweeps one way, Sd·Xmax')),
  airLoadG: quantity('g', 'Air load on both sides of the cone without a baffle, as fs is measured; part of Mms')
})
export interface DriverFigures extends Si<Static<typeof DriverFigures>> {}

const DriverLeaning = component(
  'DriverLeaning',
  'The kind of box the driver leans to; a rule of thumb, not a computation.',
  {
    kind: choice('Kind', ['closed', 'either', 'vented']),
    why: Type.String({ description: 'The figure and the rule' })
  }
)
export const DriverParametersResult = component(
  'DriverParametersResult',
  'The full set, its origin, and whether the sheet can be believed.',
  {
    driver: ref(CompletedDriver),
    origins: ref(ParameterOrigins),
    checks: list('Relations the sheet over-determines', ref(ParameterCheck), 0, 5),
    slips: list('Slips that would explain what is odd, none applied', ref(UnitSlip), 0, 32),
    figures: ref(DriverFigures),
    leaning: ref(DriverLeaning)
  }
)
export interface DriverParameters extends Si<Static<typeof DriverParametersResult>> {}
