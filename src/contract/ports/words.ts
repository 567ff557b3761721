/** Words that requests and answers of this resource choose from. */
export const endModels = ['convention', 'by-shape'] as const
export type EndModel = (typeof endModels)[number]

export const wayOutChanges = [
  'one-bend',
  'smaller-area',
  'larger-area',
  'fewer-ports',
  'larger-box',
  'higher-tuning',
  'smaller-box-higher-tuning',
  'flared-mouths',
  'less-drive',
  'narrower-slot',
  'passive-radiator'
] as const
export const portMouths = ['sharp', 'flared'] as const
export type PortMouth = (typeof portMouths)[number]
export const slotWalls = ['own', 'one-shared', 'full-width'] as const
export type SlotWalls = (typeof slotWalls)[number]
export const endSituations = ['flanged', 'free'] as const
export type EndSituation = (typeof endSituations)[number]
