/** GET /v1/reference/cables and /v1/reference/fuses */
import Type from 'typebox'
import { component, ref } from '../../contract/field/component.ts'
import { choice, label, list, quantity } from '../../contract/field/quantities.ts'
import { sourceIds } from '../../contract/sources/source.ts'
import { fuseTypes, gaugeSystems } from '../../contract/supply/words.ts'
import { assumptions } from '../../domain/assume.ts'
import { tableAmpacity } from '../../domain/circuit/cable/ampacity.ts'
import { ampacity33Cfr183425 } from '../../domain/circuit/cable/ampacity-33-cfr-183-425.ts'
import { flexibleCordsBs7671 } from '../../domain/circuit/cable/ampacity-bs-7671.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { conductorLaw, conductorOhmPerM } from '../../domain/circuit/cable/conductor-resistance.ts'
import { iec60228Class5 } from '../../domain/circuit/cable/metric-resistance-tables.ts'
import { saeJ1127Areas } from '../../domain/circuit/cable/sae-j1127-areas.ts'
import { fuseFamilies } from '../../domain/circuit/fuse/fuse-families-iso-8820.ts'
import { say, worded } from '../../domain/say.ts'

const Ampacity = component('CableAmpacity', 'Allowable current of one insulation class, single conductor at 30 °C.', {
  insulationC: quantity('°C', 'Insulation class'),
  ampacityA: quantity('A', 'Allowable current')
})

const CableRow = component('CableRow', 'One cable size of one series.', {
  designation: label('Designation with its series'),
  gaugeSystem: choice('Series; AWG, SAE and mm² are different sizes', gaugeSystems),
  areaMm2: quantity('mm²', 'Conducting section; of a metric size the nominal one'),
  ohmPerM: quantity('Ω/m', 'Copper at 20 °C, strands included'),
  ampacities: list('By insulation class; empty outside the table', ref(Ampacity), 0, 20)
})

const law = conductorLaw({ conductor: 'copper' }, assumptions())

function cableRow(designation: string, gaugeSystem: (typeof gaugeSystems)[number]) {
  const size = cableSize(designation, gaugeSystem, 'designation')
  const ampacities = ampacity33Cfr183425.insulationC.flatMap(insulationC => {
    const ampacityA = tableAmpacity(size.areaM2, insulationC)
    return ampacityA === undefined ? [] : [{ insulationC, ampacityA }]
  })
  const ohmPerM = conductorOhmPerM(size, law, 20)
  return { designation: size.designation, gaugeSystem, areaM2: size.areaM2, ohmPerM, ampacities }
}

export const cableTable = {
  name: 'cables',
  summary: 'Cable sizes with section, resistance and allowable current',
  description:
    'Allowable currents are those of a US federal regulation (boats) at 30 °C; a size between its rows is interpolated and rounded down, one below them is that of a cord. Ambient, bundling and metal lower them, see /v1/supply/cables.',
  row: CableRow,
  rows: [
    ...ampacity33Cfr183425.rows.map(([gauge]) => cableRow(gauge, 'awg')),
    ...saeJ1127Areas.rows.map(([gauge]) => cableRow(gauge, 'sae')),
    ...iec60228Class5.rows.map(([mm2]) => cableRow(String(mm2), 'mm2'))
  ],
  sources: [
    ampacity33Cfr183425.source,
    flexibleCordsBs7671.source,
    saeJ1127Areas.source,
    iec60228Class5.source,
    law.source
  ]
}

export const fuseTable = {
  name: 'fuses',
  summary: 'Fuse-links for road vehicles by family',
  description:
    'Ratings as standardised; a rating of another series is no standard one. Never above the breaking capacity.',
  row: component('FuseFamilyRow', 'One family of fuse-links.', {
    type: choice('Type, as in a result', fuseTypes),
    form: label('What it looks like'),
    standard: label('Standard and type'),
    voltagesV: list('Rated voltages made [V]', quantity('V', 'Rated voltage'), 1, 10),
    breakingA: quantity('A', 'Breaking capacity'),
    ratingsA: list('Ratings [A], ascending', quantity('A', 'Rating'), 1, 40),
    source: choice('Id of the source', sourceIds),
    status: Type.String({ description: 'What of it was read and what recalled' })
  }),
  rows: fuseFamilies.map(family => ({ ...family, ...worded({ form: say(`fuse-form.${family.type}`) }) })),
  sources: [...new Set(fuseFamilies.map(({ source }) => source))]
}
