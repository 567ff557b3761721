/** Words that requests and answers of this resource choose from. */
export const powerOrigins = ['published', 'two-channels', 'voltage-bound'] as const
export type PowerFrom = (typeof powerOrigins)[number]
/** The best of the list; several amplifiers and many drivers give hundreds of ways. */
export const MOST_OPTIONS_SHOWN = 60
export const matchVerdicts = ['good', 'under-powered', 'over-powered', 'power-unknown', 'below-minimum'] as const
export type MatchVerdict = (typeof matchVerdicts)[number]
export const ratingKinds = ['rms', 'peak', 'max', 'total'] as const
export type RatingKind = (typeof ratingKinds)[number]

export const rankings = ['power', 'price', 'size'] as const
export type Ranking = (typeof rankings)[number]
