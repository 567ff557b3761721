/** What an amplifier's data sheet says, and the power it gives into a load: published, or not known. */
import type { Assumptions } from '../assume.ts'
import type { AmplifierEconomy } from './heat.ts'
import type { RatingKind } from './power-rating.ts'

export interface AmplifierRating {
  readonly loadOhm: number
  /** Continuous RMS of one channel, or of the bridged pair [W]. */
  readonly powerW: number
  readonly bridged?: boolean
}

export interface AmplifierSheet extends AmplifierEconomy {
  readonly name?: string
  readonly ratings: readonly AmplifierRating[]
  readonly ratingKind?: RatingKind
  /** Lowest load of one channel [Ω]. */
  readonly minimumOhm: number
  /** Lowest load of a bridged pair [Ω]. */
  readonly minimumBridgedOhm?: number
  readonly channels?: number
  /** In whatever currency the caller compares in. */
  readonly price?: number
  /** Area it takes where it is mounted [m²]. */
  readonly footprintM2?: number
}

export interface SettledAmplifier {
  readonly sheet: AmplifierSheet
  readonly channels: number
  readonly lowestOhm: number
  readonly lowestBridgedOhm: number
}

export interface OutputPower {
  readonly powerW: number
  readonly powerFrom: 'published' | 'two-channels'
}

/** Prints of the same load differ by rounding: 2.67 Ω is 8/3 Ω. */
const SAME_LOAD = 0.01

/** @param at  path of the amplifier in the request, ending in a dot */
export function settleAmplifier(sheet: AmplifierSheet, assumed: Assumptions, at: string): SettledAmplifier {
  const bridges = sheet.minimumBridgedOhm !== undefined || sheet.ratings.some(({ bridged }) => bridged === true)
  assumed.or(
    sheet.ratingKind,
    `${at}ratingKind`,
    'rms',
    'ratings taken as continuous RMS, all channels driven; peak, maximum and total figures cannot be matched'
  )
  const channels = assumed.or(
    sheet.channels,
    `${at}channels`,
    bridges ? 2 : 1,
    bridges ? 'it bridges, so it has at least two channels' : 'no number of channels given: taken as a mono-block'
  )
  const lowestBridgedOhm =
    channels < 2
      ? (sheet.minimumBridgedOhm ?? 2 * sheet.minimumOhm)
      : assumed.or(
          sheet.minimumBridgedOhm,
          `${at}minimumBridgedOhm`,
          2 * sheet.minimumOhm,
          'each channel of a bridged pair sees half the load'
        )
  return { sheet, channels, lowestOhm: sheet.minimumOhm, lowestBridgedOhm }
}

function published({ ratings }: AmplifierSheet, loadOhm: number, bridged: boolean): number | undefined {
  const found = ratings.find(
    rating => (rating.bridged ?? false) === bridged && Math.abs(rating.loadOhm / loadOhm - 1) <= SAME_LOAD
  )
  return found?.powerW
}

/**
 * Power into one output at a load, from the data sheet alone. No power is scaled from one load to another: supply, current
 * limit and heat bend the 1/Z law in a way that only the maker has measured.
 *
 *   bridged, when only channels are published:  P(Z) = 2·P_channel(Z/2)
 *
 * @returns undefined when nothing is published for this load
 * @source derived: each channel of a bridged pair drives half the load with half the voltage
 * @check  a channel of 300 W at 2 Ω → a bridged pair of 600 W at 4 Ω
 */
export function outputPower({ sheet }: SettledAmplifier, loadOhm: number, bridged: boolean): OutputPower | undefined {
  const direct = published(sheet, loadOhm, bridged)
  if (direct !== undefined) return { powerW: direct, powerFrom: 'published' }
  const channel = bridged ? published(sheet, loadOhm / 2, false) : undefined
  return channel === undefined ? undefined : { powerW: 2 * channel, powerFrom: 'two-channels' }
}

/** The most all channels together are claimed to give [W]. */
export function claimedPower({ sheet, channels }: SettledAmplifier): number {
  return Math.max(
    ...sheet.ratings.map(({ powerW, bridged }) => powerW * (bridged === true ? Math.floor(channels / 2) : channels))
  )
}

/** `400 W at 4 Ω, 700 W at 2 Ω bridged`. */
export function ratingsText({ ratings }: AmplifierSheet): string {
  return ratings
    .map(({ loadOhm, powerW, bridged }) => `${powerW} W at ${loadOhm} Ω${bridged === true ? ' bridged' : ''}`)
    .join(', ')
}
