/** What an amplifier's data sheet says, and the power it gives into a load: published, or not known. */

import type { AmplifierRating, AmplifierSheet } from '../../contract/amplifiers/amplifier-matching.ts'
import type { PowerFrom } from '../../contract/amplifiers/words.ts'
import type { Assumptions } from '../assume.ts'
import { present } from '../present.ts'
import { amplifierDefaults } from './defaults.ts'
import { powerAtSameVoltage } from './formulas.ts'
import { believablePower } from './heat.ts'
import { lowestBridged, requireOneStory, SAME_LOAD } from './rating-contradictions.ts'

export interface ResolvedAmplifier {
  readonly sheet: AmplifierSheet
  readonly channels: number
  readonly lowestOhm: number
  readonly lowestBridgedOhm: number
  /** The most that the fuses on board let all channels together give [W], where they are known. */
  readonly believableW?: number
}

export interface OutputPower {
  readonly powerW: number
  readonly powerFrom: PowerFrom
  /** Of a bound: the rating whose voltage it takes. */
  readonly ratedOhm?: number
  readonly ratedPowerW?: number
}

/**
 * @param at  path of the amplifier in the request, ending in a dot
 * @throws DesignError `conflicting-input` of ratings that exclude each other
 */
export function resolveAmplifier(sheet: AmplifierSheet, assumed: Assumptions, at: string): ResolvedAmplifier {
  requireOneStory(sheet, at)
  const bridges = sheet.minimumBridgedOhm !== undefined || sheet.ratings.some(({ bridged }) => bridged === true)
  assumed.take(sheet.ratingKind, `${at}ratingKind`, amplifierDefaults.ratingKind)
  const usualChannels = bridges ? amplifierDefaults.channelsOfBridge : amplifierDefaults.channels
  const channels = assumed.take<number>(sheet.channels, `${at}channels`, usualChannels)
  const lowestBridgedOhm =
    channels < 2
      ? (sheet.minimumBridgedOhm ?? 2 * sheet.minimumOhm)
      : assumed.work(
          sheet.minimumBridgedOhm,
          `${at}minimumBridgedOhm`,
          2 * sheet.minimumOhm,
          amplifierDefaults.minimumBridgedOhm
        )
  const believableW = believablePower(sheet, assumed, at)
  return {
    sheet,
    channels,
    lowestOhm: sheet.minimumOhm,
    lowestBridgedOhm: lowestBridged(sheet, lowestBridgedOhm),
    ...present({ believableW })
  }
}

function published({ ratings }: AmplifierSheet, loadOhm: number, bridged: boolean): number | undefined {
  const found = ratings.find(
    rating => (rating.bridged ?? false) === bridged && Math.abs(rating.loadOhm / loadOhm - 1) <= SAME_LOAD
  )
  return found?.powerW
}

/** What one output is rated for: a bridged pair also by its channels, each at half the load with half the power. */
function ratingsOf({ ratings }: AmplifierSheet, bridged: boolean): readonly AmplifierRating[] {
  if (!bridged) return ratings.filter(rating => rating.bridged !== true)
  const channels = ratings.filter(rating => rating.bridged !== true)
  const pairs = channels.map(({ loadOhm, powerW }) => ({ loadOhm: 2 * loadOhm, powerW: 2 * powerW, bridged: true }))
  return [...ratings.filter(rating => rating.bridged === true), ...pairs]
}

/**
 * The least power at a load above every one that is rated near it.
 *
 *   P(Z) ≥ P(Zr)·Zr/Z  for the nearest rated Zr below Z
 *
 * @returns undefined without a rating at an allowed load below
 * @validity A lower bound for the output: the voltage reached at Zr is reached at Z, where the supply sags less. The draw is
 * at most that of the rating. Never downwards: current limit and heat bend that way.
 * @source derived: P = V²/Z with the same voltage
 * @check  600 W at 4 Ω → at least 300 W at 8 Ω
 */
function boundAbove(amplifier: ResolvedAmplifier, loadOhm: number, bridged: boolean): OutputPower | undefined {
  const { sheet, lowestOhm, lowestBridgedOhm } = amplifier
  const lowest = (bridged ? lowestBridgedOhm : lowestOhm) * (1 - SAME_LOAD)
  const below = ratingsOf(sheet, bridged).filter(rating => rating.loadOhm >= lowest && rating.loadOhm < loadOhm)
  const [nearest] = below.toSorted((a, b) => b.loadOhm - a.loadOhm)
  if (nearest === undefined) return undefined
  const { loadOhm: ratedOhm, powerW: ratedPowerW } = nearest
  const powerW = powerAtSameVoltage.of({ Pr: ratedPowerW, Zr: ratedOhm, Z: loadOhm })
  return { powerW, powerFrom: 'voltage-bound', ratedOhm, ratedPowerW }
}

/**
 * Power into one output at a load, from the data sheet. No power is scaled to a lower load: supply, current limit and heat
 * bend the 1/Z law in a way that only the maker has measured. Above a rated load there is a lower bound.
 *
 *   bridged, when only channels are published:  P(Z) = 2·P_channel(Z/2)
 *
 * @returns undefined when nothing follows from the sheet for this load
 * @source derived: each channel of a bridged pair drives half the load with half the voltage
 * @check  a channel of 300 W at 2 Ω → a bridged pair of 600 W at 4 Ω
 */
export function outputPower(amplifier: ResolvedAmplifier, loadOhm: number, bridged: boolean): OutputPower | undefined {
  const { sheet } = amplifier
  const direct = published(sheet, loadOhm, bridged)
  if (direct !== undefined) return { powerW: direct, powerFrom: 'published' }
  const channel = bridged ? published(sheet, loadOhm / 2, false) : undefined
  if (channel !== undefined) return { powerW: 2 * channel, powerFrom: 'two-channels' }
  return boundAbove(amplifier, loadOhm, bridged)
}

/** The most all channels together are claimed to give [W]. */
export function claimedPower({ sheet, channels }: ResolvedAmplifier): number {
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
