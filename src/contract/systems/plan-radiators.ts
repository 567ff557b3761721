/** Passive radiators at hand for the box of a plan, on the wire. */
import Type, { type Static } from 'typebox'
import { BoxDriverBody } from '../boxes/box-hardware.ts'
import { component, ref } from '../field/component.ts'
import { label, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const RadiatorSheetBody = component(
  'PassiveRadiatorSheet',
  'What a data sheet says of one passive radiator as it is delivered. Compliance, free resonance or Vas: one of them at least.',
  {
    areaCm2: quantity('cm²', 'Effective area', { from: 20, to: 5000 }),
    massG: quantity('g', 'Moving mass with its air load, nothing added', { from: 1, to: 20_000 }),
    complianceMmPerN: Type.Optional(quantity('mm/N', 'Compliance', { from: 0.005, to: 20 })),
    fsHz: Type.Optional(quantity('Hz', 'Free-air resonance, nothing added', { from: 2, to: 100 })),
    vasL: Type.Optional(quantity('L', 'Air volume as compliant as the suspension', { from: 0.1, to: 5000 })),
    qm: Type.Optional(
      quantity('1', 'Mechanical Q in free air, nothing added; no loss when absent', { from: 0.5, to: 100 })
    ),
    xmaxMm: quantity('mm', 'Travel, one way, peak', { from: 1, to: 100 }),
    mostAddedG: Type.Optional(
      quantity('g', 'Most that its maker allows to be added to one; twice its own mass when absent', {
        from: 0,
        to: 20_000
      })
    )
  }
)
export interface RadiatorSheet extends Si<Static<typeof RadiatorSheetBody>> {}

const { rebateDepthMm, screwCircleDiameterMm, screwCount, massKg, displacementL } = BoxDriverBody.properties
const RadiatorMountingBody = component('PassiveRadiatorMounting', 'Sizes of one passive radiator, for the box.', {
  cutOutDiameterMm: quantity('mm', 'Hole', { from: 40, to: 1000 }),
  flangeDiameterMm: quantity('mm', 'Outer diameter', { from: 40, to: 1100 }),
  mountingDepthMm: quantity('mm', 'Outer face of its board to its rear, at rest', { from: 10, to: 1000 }),
  massKg,
  displacementL,
  screwCircleDiameterMm,
  screwCount,
  rebateDepthMm
})

export const PlanRadiatorsBody = component(
  'PlanPassiveRadiators',
  'Passive radiators at hand, all alike. Boxes with them are planned and compared beside the others.',
  {
    name: Type.Optional(label('Name', 40)),
    sheet: ref(RadiatorSheetBody),
    mounting: ref(RadiatorMountingBody)
  }
)
export interface PlanRadiators extends Si<Static<typeof PlanRadiatorsBody>> {}
