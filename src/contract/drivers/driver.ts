/** Schema of one driver by its data sheet. */
import Type, { type Static } from 'typebox'
import { component } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { vasAirs } from './words.ts'

const given = (unit: string, description: string, to: number) =>
  Type.Optional(quantity(unit, description, { above: 0, to }))

/** From m² to mm² typed as cm²: a slip of unit has to reach the service before it can be named. */
export const SD_CM2_BOUNDS = { from: 0.001, to: 200_000 } as const

export const vasAir = Type.Optional(
  choice(
    'Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference',
    vasAirs
  )
)

/** What a sheet says of a driver that nothing is worked out of: sheet, completed set and the driver of the acoustics have it alike. */
export const asPrinted = {
  xmaxMm: given('mm', 'Linear excursion, one way, peak', 500),
  powerW: given('W', 'Continuous power rating', 100_000)
}

/** Fields of a driver that matter to its motion and its coil. */
const driverProperties = {
  sdCm2: quantity('cm²', 'Effective piston area', SD_CM2_BOUNDS),
  reOhm: quantity('Ω', 'DC resistance of the coils as they are joined', { from: 0.05, to: 200 }),
  fsHz: given('Hz', 'Free-air resonance', 2000),
  qms: given('1', 'Mechanical Q at resonance', 1000),
  qes: given('1', 'Electrical Q at resonance', 1000),
  qts: given('1', 'Total Q at resonance; stands in for one of the other two', 1000),
  vasL: given('L', 'Air volume of equal compliance, as the sheet prints it', 20_000),
  vasAir,
  mmsG: given('g', 'Moving mass with air load', 20_000),
  cmsMmPerN: given('mm/N', 'Compliance of the suspension', 1000),
  rmsKgPerS: given('kg/s', 'Mechanical resistance', 10_000),
  blTm: given('T·m', 'Force factor of the coils as they are joined', 1000),
  leMh: Type.Optional(quantity('mH', 'Inductance of the coils as they are joined', { from: 0, to: 100 })),
  leParallelOhm: given('Ω', 'Resistance directly across the inductance (lossy coil)', 100_000),
  le2Mh: Type.Optional(quantity('mH', 'Second inductance, in series with the first', { from: 0, to: 100 })),
  le2ParallelOhm: given('Ω', 'Resistance across the second inductance', 100_000),
  leFactor: given('Ω·s^n', 'K of a lossy coil K·(jω)^n, in place of the inductances', 100),
  leExponent: Type.Optional(
    quantity('1', 'n of a lossy coil K·(jω)^n; 0.5 semi-inductance, 1 inductance', { from: 0.3, to: 1 })
  ),
  ...asPrinted
}

export const DriverBody = component(
  'Driver',
  'One driver, its coils already joined. Area and resistance, and either the small-signal set (fs, Vas, two of Qms, Qes, Qts) or the mechanical set (Mms, Cms, Rms, Bl). Where both are given the small-signal set counts and the rest is held against it.',
  driverProperties
)
export interface DriverRequest extends Si<Static<typeof DriverBody>> {}
