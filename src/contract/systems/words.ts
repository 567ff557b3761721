/** Words that requests and answers of this resource choose from. */

/** Systems in one call, each kind of box counted: one takes 30 to 90 ms to build. */
export const MOST_WEIGHED = 36
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
export type RejectionRule = (typeof rejectionRules)[number]
export const rankings = ['balance', 'level', 'reach', 'box', 'price', 'current'] as const
export type DesignRanking = (typeof rankings)[number]
export const portShapes = ['round', 'slot'] as const
export const plannedKinds = ['closed', 'vented'] as const
export type PlannedKind = (typeof plannedKinds)[number]
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
export const plannedShapes = ['rectangular', 'wedge'] as const
export const billGroups = ['board', 'joining', 'fittings', 'finish', 'wiring'] as const
export type BillGroup = (typeof billGroups)[number]
