/** What would mend a failed electrical limit: a patch on the request, and what planning again with it gives. */
import Type, { type Static } from 'typebox'
import { cautionCodes } from '../cautions/catalogue.ts'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { batteryChemistries, conductors, insulationMaterials } from '../supply/words.ts'
import { remedyCosts, remedyIds } from './words.ts'

const gone = Type.Optional(Type.Null({ description: 'Taken out' }))
const figure = (unit: string, description: string) => Type.Optional(quantity(unit, description))

const ReturnPatch = component('ReturnPatch', 'The way back, as a return cable or with a measured body.', {
  kind: choice('Kind of return', ['cable', 'chassis']),
  lengthM: figure('m', 'Return cable'),
  leadLengthM: gone,
  body: gone,
  resistanceOhm: Type.Optional(
    Type.Unsafe<number | null>({ description: 'Measured body, or taken out', type: ['number', 'null'] })
  )
})
const SecondPatch = component('SecondBatteryPatch', 'A second battery.', {
  arrangement: choice('How it is tied', ['isolated']),
  capacityAh: quantity('A·h', 'Capacity'),
  chemistry: choice('Kind', batteryChemistries)
})
const SupplyPatch = component('SupplyPatch', 'Fields of the supply.', {
  insulationC: figure('°C', 'Class printed on the insulation'),
  insulationMaterial: Type.Optional(choice('What it is made of', insulationMaterials)),
  runs: Type.Optional(Type.Integer({ description: 'Cables side by side' })),
  conductor: Type.Optional(choice('Metal', conductors)),
  dropLimitPercent: figure('%', 'Largest drop, of nominal voltage'),
  return: Type.Optional(ref(ReturnPatch)),
  secondBattery: Type.Optional(ref(SecondPatch)),
  converter: Type.Optional(
    component('ConverterPatch', 'A converter before the amplifiers.', {
      ratedA: figure('A', 'Its output; chosen where absent')
    })
  ),
  charging: Type.Optional(component('ChargingPatch', 'The charging system.', { ratedA: quantity('A', 'Rated output') }))
})
const CoilsPatch = component('CoilsPatch', 'Another version of the driver.', {
  coils: component('CoilPatch', 'Its coils.', { ratedOhm: quantity('Ω', 'Rated impedance of one coil') })
})
const SignalPatch = component('SignalPatch', 'Another gain.', { gainPowerW: quantity('W', 'RMS power of all outputs') })
const AmplifierPatch = component('AmplifierPatch', 'Two channels in a bridge, where its sheet allows that.', {
  channels: Type.Integer({ description: 'Channels' }),
  minimumBridgedOhm: quantity('Ω', 'Lowest load of the pair')
})
const RemedyPatchBody = component('RemedyPatch', 'JSON Merge Patch (RFC 7396) on the request of the plan.', {
  supply: Type.Optional(ref(SupplyPatch)),
  driver: Type.Optional(ref(CoilsPatch)),
  signal: Type.Optional(ref(SignalPatch)),
  amplifier: Type.Optional(ref(AmplifierPatch))
})
export interface RemedyPatch extends Si<Static<typeof RemedyPatchBody>> {}

const Brings = component('RemedyFigures', 'Figures of the supply side; absent where there is none.', {
  fullSineV: figure('V', 'Least at an amplifier, full sine, driving'),
  heavyV: figure('V', 'Least at an amplifier, dense bass, engine idling'),
  cable: Type.Optional(Type.String({ description: 'Main cable' })),
  powerW: figure('W', 'RMS power of the drivers at the gain that is set')
})
export interface RemedyFigures extends Si<Static<typeof Brings>> {}

export const PlanRemedyBody = component(
  'PlanRemedy',
  'A change that mends or eases a limit, worked out by planning again.',
  {
    id: choice('Which change', remedyIds),
    cost: choice('What it costs, the least first', remedyCosts),
    text: Type.String({ description: 'What to do and what it brings' }),
    cures: Type.Array(choice('Code', cautionCodes), {
      description: 'Cautions that are gone with it, or no longer as grave'
    }),
    before: ref(Brings),
    after: ref(Brings),
    patch: ref(RemedyPatchBody)
  }
)
export interface PlanRemedy extends Si<Static<typeof PlanRemedyBody>> {}
