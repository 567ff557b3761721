/** Schemas of a chosen fuse, shared by the cable and fuse resources. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import {
  batteryChemistries,
  conductors,
  fusePolicies,
  fuseTypes,
  gaugeSystems,
  insulationMaterials,
  runSpaces
} from './words.ts'

export const insulationFields = {
  insulationC: Type.Optional(quantity('°C', 'Temperature class printed on the insulation', { from: 60, to: 250 })),
  ambientC: Type.Optional(quantity('°C', 'Hottest surroundings along the run', { from: -40, to: 200 })),
  spaces: Type.Optional(
    list(
      'Spaces the run passes; the hottest gives the ambient when ambientC is left out',
      choice('Space', runSpaces),
      1,
      3
    )
  ),
  bundledConductors: Type.Optional(
    Type.Integer({
      description: 'Current-carrying power conductors in the same loom, this one included',
      minimum: 1,
      maximum: 100
    })
  )
}

export const insulationMaterial = choice(
  'What the insulation is made of; sets what it survives in a short circuit, which its class does not: PVC 160 °C, XLPE (cross-linked polyethylene) and EPR 250 °C, rubber 200 to 220 °C, silicone 350 °C',
  insulationMaterials
)

export const runs = count(
  'Equal cables side by side, each with a fuse of its own; when absent one, or the fewest that do where none does alone',
  1,
  4
)

export const loadOnFuseFields = {
  heavyCurrentA: Type.Optional(
    quantity('A', 'Current of dense bass music (1/3 of rated output), for the heating of the fuse', {
      above: 0,
      to: 10_000
    })
  ),
  continuousTone: Type.Optional(
    Type.Boolean({ description: 'Test tones or sustained notes: the fuse is held to the full sine for good' })
  ),
  loadRatio: Type.Optional(quantity('1', 'Continuous load over fuse rating', { from: 0.3, to: 1 })),
  fuseAmbientC: Type.Optional(quantity('°C', 'Surroundings of the fuse', { from: -40, to: 125 }))
}

export const designation = Type.String({
  description: 'Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series',
  minLength: 1,
  maxLength: 16
})

export const gaugeSystem = choice('Series of the size; AWG, SAE and mm² are different sizes', gaugeSystems)
export const fuseTypeList = list('Fuse families allowed', choice('Family', fuseTypes), 1, 9)
export const policy = choice(
  '`strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V',
  fusePolicies
)

export const ProtectedCable = component('ProtectedCable', 'A cable a fuse protects.', {
  designation,
  gaugeSystem: Type.Optional(gaugeSystem),
  conductor: Type.Optional(choice('Metal of the conductor', conductors)),
  ...insulationFields
})
export interface CableRequest extends Si<Static<typeof ProtectedCable>> {}

export const batterySourceFields = {
  openCircuitV: Type.Optional(quantity('V', 'Open-circuit voltage of the battery', { from: 5, to: 60 })),
  resistanceOhm: Type.Optional(quantity('Ω', 'Internal resistance of the battery', { from: 1e-4, to: 1 })),
  coldCrankingA: Type.Optional(
    quantity('A', 'Cold cranking current, from which both ends of the resistance follow', { from: 10, to: 5000 })
  ),
  chemistry: Type.Optional(
    choice('Kind of battery; with capacityAh in place of the cold cranking current', batteryChemistries)
  ),
  capacityAh: Type.Optional(quantity('A·h', 'Capacity of the bank at 20 h', { from: 1, to: 2000 }))
}
export const BatterySource = component(
  'BatterySource',
  'The battery as a source of fault current.',
  batterySourceFields
)
export interface BatterySource extends Si<Static<typeof BatterySource>> {}

export const Placement = component('FusePlacement', 'Where the fuse sits.', {
  idealMm: quantity('mm', 'Aim: conductor between source and fuse'),
  usualMm: quantity('mm', 'Usual limit in cars'),
  sheathedMm: quantity('mm', 'Limit when that piece lies in a conduit all the way'),
  bothEnds: Type.Boolean({ description: 'A fuse at each end: the cable links two sources' }),
  text: Type.String({ description: 'In words' })
})
export interface Placement extends Si<Static<typeof Placement>> {}

export const ChosenFuse = component('ChosenFuse', 'A fuse-link of a standard family.', {
  ratingA: quantity('A', 'Rated current'),
  type: choice('Family', fuseTypes),
  form: Type.String({ description: 'What it looks like' }),
  standard: Type.String({ description: 'Standard of the family' }),
  voltageV: quantity('V', 'Rated voltage to ask for, at least the system’s class'),
  breakingA: quantity('A', 'Breaking capacity'),
  placement: ref(Placement)
})
export interface ChosenFuse extends Si<Static<typeof ChosenFuse>> {}
