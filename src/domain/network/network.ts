/**
 * The acoustic network every enclosure is made of: chambers are nodes, everything else lies between two nodes.
 * Pressures in Pa, volume flows in m³/s, phasors RMS, time factor e^{+jωt}.
 */
import type { Driver } from '../driver/driver.ts'

/** Index of a chamber, or one of the two places of constant pressure. */
export type Place = number
/** Where the listener is: every flow into it radiates. */
export const OUTSIDE: Place = -1
/** The other half space of an infinite baffle: nothing that flows there is heard. */
export const BEHIND: Place = -2

/** Air compliance with an absorption resistance in series. */
export interface Chamber {
  readonly complianceM3PerPa: number
  readonly absorptionPaSPerM3: number
}

/** Equal resistance, mass and stiffness in series, `count` times in parallel: a port, a passive radiator or a leak. */
export interface Branch {
  readonly from: Place
  readonly to: Place
  readonly count: number
  readonly resistancePaSPerM3: number
  readonly massKgPerM4: number
  readonly stiffnessPaPerM3: number
}

/** Equal drivers that share both sides; `inSeries` of them in each string, the strings in parallel. */
export interface DriverGroup {
  readonly front: Place
  readonly rear: Place
  readonly driver: Driver
  readonly count: number
  readonly inSeries: number
  /** −1: wired against the others. */
  readonly polarity: 1 | -1
}

/** How the terminals of several groups are joined. */
export type Connection = 'parallel' | 'series'

export interface Network {
  readonly chambers: readonly Chamber[]
  readonly branches: readonly Branch[]
  readonly drivers: readonly DriverGroup[]
  readonly connection: Connection
}
