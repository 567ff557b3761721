/** Words that requests and answers of this resource choose from. */

/** Systems in one search, each count and kind of box counted: 200 drivers on 100 amplifiers in two kinds. */
export const MOST_WEIGHED = 40_000
/** Designs that are built and shown, and rejections that are shown, at most. */
export const MOST_SHOWN = 50
/** Unbeaten systems that are kept; steps of what is noticed leave a tenth of it of a full shelf. */
export const MOST_UNBEATEN = 800
/** Parts that a search is split into, at most. */
export const MOST_SHARDS = 64
export const designLimitNames = [
  'price',
  'full-sine-current',
  'average-current',
  'box-size',
  'mass',
  'reach',
  'level',
  'excursion',
  'air-speed'
] as const
export type DesignLimitName = (typeof designLimitNames)[number]
/** What the parts themselves do not allow, before any limit of the caller. */
const hindrances = [
  'match',
  'driver-data',
  'supply',
  'space',
  'enclosure',
  'response',
  'signal',
  'stop-caution'
] as const
export type Hindrance = (typeof hindrances)[number]
export const rejectionRules = [...hindrances, ...designLimitNames] as const
export const rankings = ['balance', 'level', 'reach', 'box', 'price', 'current'] as const
export type DesignRanking = (typeof rankings)[number]
export const portShapes = ['round', 'slot'] as const
export const plannedKinds = ['closed', 'vented', 'passive-radiator', 'band-pass-4'] as const
export type PlannedKind = (typeof plannedKinds)[number]
/** Kinds that a search of systems weighs. */
export const searchedKinds = ['closed', 'vented', 'passive-radiator'] as const satisfies readonly PlannedKind[]
export type SearchedKind = (typeof searchedKinds)[number]
/** Where passive radiators stand: on one face, or half of them on each side, so that their forces cancel. */
export const radiatorFaces = ['front', 'back', 'top', 'bottom', 'left', 'right', 'sides'] as const
export type RadiatorFace = (typeof radiatorFaces)[number]
/** Where a cone lies, and hangs through by its weight. */
export const isFlatFace = (face: RadiatorFace): boolean => face === 'top' || face === 'bottom'
/** What a box is wanted for. */
export const designGoals = ['everyday', 'low', 'loud', 'tight', 'small'] as const
export type DesignGoal = (typeof designGoals)[number]
/** The same in words; in figures it stands in plan/designer/search/goals.ts. */
export const goalMeanings: Readonly<Record<DesignGoal, string>> = {
  everyday: 'even bass from 25 to 63 Hz in a box worth its room',
  low: 'the most that 20 to 31.5 Hz can give',
  loud: 'the most from 25 to 63 Hz',
  tight: 'a closed box that starts and stops quickly',
  small: 'the least room for at most 6 dB less than the loudest'
}
/** Ways to keep within the limits of the parts. */
export const driveWays = ['as-planned', 'less-power', 'higher-filter', 'smaller-box'] as const
export type DriveWay = (typeof driveWays)[number]
/** What is changed a little to see what moves. */
export const whatIfs = ['none', 'volume', 'tuning', 'port-length', 'port-area', 'power'] as const
export type WhatIfChange = (typeof whatIfs)[number]
export const plannedShapes = ['rectangular', 'wedge', 'prism', 'round'] as const
export const billGroups = ['board', 'joining', 'fittings', 'finish', 'wiring'] as const
export type BillGroup = (typeof billGroups)[number]
/** How the boards are worked. */
/** Joints of the boards of a plan, each with those before it but for fingers, which take no grooves beside them. */
export const boardJoints = ['butt', 'groove', 'rebate', 'finger'] as const
export type BoardJoints = (typeof boardJoints)[number]
export const workWays = ['saw-and-router', 'cutting-service', 'jigsaw-and-drill'] as const
export type WorkWay = (typeof workWays)[number]
/** Where a level was calculated: at the seat, or in half space at 1 m because nothing is known of the cabin. */
export const earPlaces = ['seat', 'half-space'] as const
export type EarPlace = (typeof earPlaces)[number]
/** Parts of a plan on paper, in the order of the work. */
const planChapters = ['see', 'buy', 'cut', 'build', 'wire', 'switch-on', 'check'] as const
export type PlanChapter = (typeof planChapters)[number]
/** What a row of the bill is; the steps of the work name the parts they use by these words. */
export const billParts = [
  'driver',
  'amplifier',
  'sheet',
  'panel',
  'wood-screw',
  'layer-screw',
  'glue',
  'sealant',
  'driver-screw',
  't-nut',
  'gasket',
  'port-tube',
  'passive-radiator',
  'radiator-weight',
  'terminal-cup',
  'cup-screw',
  'foot',
  'strap',
  'anchor-bolt',
  'port-paint',
  'lining',
  'lining-adhesive',
  'carpet',
  'carpet-adhesive',
  'edge-sealer',
  'filler',
  'abrasive',
  'inside-wire',
  'receptacle',
  'speaker-wire',
  'turn-on-wire',
  'signal-lead',
  'splice',
  'signal-ferrule',
  'line-converter',
  'power-cable',
  'return-cable',
  'fuse',
  'fuse-holder',
  'ring-lug',
  'power-ferrule',
  'sleeve',
  'grommet',
  'clip',
  'distribution-block',
  'capacitor',
  'charging-resistor',
  'second-battery',
  'battery-tray',
  'second-battery-link',
  'converter',
  'turn-on-relay',
  'turn-on-fuse',
  'amplifier-bolt',
  'ground-bolt',
  'metal-guard',
  'sheath',
  'cable-label'
] as const
export type BillPart = (typeof billParts)[number]
/** What a step takes that the bill does not have: made by an earlier step. */
export const madeItems = ['cut-panel', 'brace', 'port-walls', 'shell', 'closed-box', 'finished-box'] as const
export const workItems = [...billParts, ...madeItems] as const
export type WorkItem = (typeof workItems)[number]
export const remedyIds = [
  'converter',
  'measure-body',
  'bridging',
  'lower-gain',
  'smaller-size',
  'other-insulation',
  'next-size',
  'parallel-runs',
  'full-copper',
  'return-cable',
  'second-battery',
  'stronger-alternator',
  'other-coils'
] as const
export type RemedyId = (typeof remedyIds)[number]
/** In the order of what they cost. */
export const remedyCosts = ['reading', 'setting', 'cable', 'converter', 'battery', 'alternator', 'driver'] as const
export type RemedyCost = (typeof remedyCosts)[number]
/** Where the work goes on. */
/** Stretches of the first switching-on: up to the running engine, the gain without drivers, first sound, proof under load. */
export const startStages = ['power', 'gain', 'sound', 'proof'] as const
export type StartStage = (typeof startStages)[number]
export const workPlaces = ['table', 'bench', 'car'] as const
export type WorkPlace = (typeof workPlaces)[number]
/** The worst a danger can do, the gravest first. */
export const hazardHarms = ['death', 'lasting-harm', 'fire', 'illness', 'injury', 'law', 'damage'] as const
export type HazardHarm = (typeof hazardHarms)[number]
/** Whose work it is. */
export const hazardHands = ['maker', 'second-person', 'several-people', 'trained-person'] as const
export type HazardHands = (typeof hazardHands)[number]
