/** What each group of resources is for, in the order of the job. */
import type { JsonObject } from './json-tree.ts'

const meaningByTag = {
  Drivers: 'Figures of a data sheet: completed, checked, moved between coils.',
  Enclosures: 'Boxes for a driver: sizes, response, limits, and what a batch of drivers does to them.',
  Box: 'From a volume to boards: ports, panels, bracing, sheets, drawings, a model in three dimensions.',
  'Coils and amplifier': 'Loads that coils can present, and the amplifier that suits one.',
  Supply: 'Currents, cables, fuses and the whole circuit from the battery.',
  Signal: 'From the music source to the amplifier: turn-on, filters, gain.',
  Plans: 'The whole job in one call, and the search for a system.',
  Batches: 'Many calls in one.',
  Catalogues: 'What the codes of problems and cautions mean.',
  'Reference tables': 'The published tables that the calculations read.'
} as const

export const tags: readonly JsonObject[] = Object.entries(meaningByTag).map(([name, description]) => ({
  name,
  description
}))
