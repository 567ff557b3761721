/** Words that requests and answers of this resource choose from. */
export const vasAirs = ['reference', 'request'] as const
export type VasAir = (typeof vasAirs)[number]
export const coilConnections = ['one-coil', 'series', 'parallel', 'series-parallel'] as const
export type CoilConnection = (typeof coilConnections)[number]
