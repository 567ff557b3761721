/** Every balanced way of putting like drivers on the outputs of an amplifier, and how its power fits them. */
import type { MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { MatchVerdict } from '../../contract/amplifiers/words.ts'
import { numberOf, product, rational, rationalOf } from '../../numeric/rational.ts'
import { disproved } from '../circuit/load/amplifier-draw.ts'
import { arrangementWith, divisors, joinText } from '../coils/arrangements.ts'
import { inDigits } from '../digits.ts'
import { type OutputPower, outputPower, type ResolvedAmplifier, ratingsText } from './amplifier-sheet.ts'

/** Amplifier power over the sum of the drivers' ratings. Common practice, no source: equal is the aim, this much is accepted. */
export const powerBand = { lowest: 0.75, highest: 1.5 } as const

export interface DriverSheet {
  readonly powerW: number
  readonly coils: number
  readonly coilOhm: number
}

/** One way of wiring, before its power is looked up. */
interface Layout {
  readonly outputs: number
  readonly bridged: boolean
  /** Coils in series between the terminals of one output. */
  readonly inSeries: number
}

function verdictOf(ratio: number): MatchVerdict {
  if (ratio < powerBand.lowest) return 'under-powered'
  return ratio > powerBand.highest ? 'over-powered' : 'good'
}

function goodAdvice(ratio: number): string {
  const percent = Math.round(100 * ratio)
  if (ratio > 1.01)
    return `${percent} % of the drivers' rating: set the gain to the drivers' power, not to the amplifier's.`
  if (ratio >= 0.99) return 'The amplifier gives what the drivers take: set the gain to it, without an allowance.'
  return `${percent} % of the drivers' rating: set the gain without an allowance, so that loud passages do not clip.`
}

function advice(verdict: MatchVerdict, ratio: number): string {
  if (verdict === 'good') return goodAdvice(ratio)
  if (verdict === 'over-powered') {
    return `${inDigits(ratio)} times the drivers' rating: usable only with the gain set to the drivers' power and a protective high-pass; a slip of the gain overheats the coils.`
  }
  // A square wave has twice the power of the sine with the same peak.
  return 2 * ratio <= 1
    ? `${Math.round(100 * ratio)} % of the drivers' rating: quiet for these drivers, yet even a fully clipped output stays within their heat rating. Clipping still sounds bad: set the gain without an allowance.`
    : `${Math.round(100 * ratio)} % of the drivers' rating: turned up until it clips, the output approaches a square wave of twice the power and can overheat the coils. Set the gain without an allowance.`
}

function unknown(loadOhm: number, bridged: boolean, amplifier: ResolvedAmplifier) {
  return {
    verdict: 'power-unknown' as const,
    advice: `No continuous power is published for ${inDigits(loadOhm)} Ω${bridged ? ' bridged' : ''} or a load below it that is allowed (published: ${ratingsText(amplifier.sheet)}). It is not scaled to a lower load: ask the maker.`
  }
}

function origin({ powerFrom, ratedOhm = 0, ratedPowerW = 0 }: OutputPower, outputPowerW: number): string {
  if (powerFrom !== 'voltage-bound') return ''
  return `At least ${inDigits(outputPowerW)} W, by the voltage of ${inDigits(ratedPowerW)} W at ${inDigits(ratedOhm)} Ω. `
}

/** The fuses on board feed all outputs of an amplifier together. */
function believed({ believableW = Infinity }: ResolvedAmplifier, outputW: number, outputs: number, needed: number) {
  const mostW = (believableW * needed) / outputs
  return disproved(outputW, mostW) ? mostW : outputW
}

function powered(
  amplifier: ResolvedAmplifier,
  driver: DriverSheet,
  { outputs, bridged }: Layout,
  drivers: number,
  loadOhm: number,
  amplifiersNeeded: number
) {
  const output = outputPower(amplifier, loadOhm, bridged)
  if (output === undefined) return unknown(loadOhm, bridged, amplifier)
  const { powerW: claimedPowerW, ...from } = output
  const outputPowerW = believed(amplifier, claimedPowerW, outputs, amplifiersNeeded)
  const driverPowerW = outputPowerW / drivers
  const powerRatio = driverPowerW / driver.powerW
  const verdict = verdictOf(powerRatio)
  return {
    verdict,
    advice: `${origin(output, outputPowerW)}${advice(verdict, powerRatio)}`,
    outputPowerW,
    ...from,
    ...(outputPowerW === claimedPowerW ? {} : { claimedPowerW }),
    totalPowerW: outputPowerW * outputs,
    driverPowerW,
    coilPowerW: driverPowerW / driver.coils,
    powerRatio
  }
}

function optionOf(
  amplifier: ResolvedAmplifier,
  name: string,
  driver: DriverSheet,
  driverCount: number,
  layout: Layout
): MatchOption {
  const { outputs, bridged, inSeries } = layout
  const { sheet, channels, lowestBridgedOhm } = amplifier
  const driversPerOutput = driverCount / outputs
  const coils = driversPerOutput * driver.coils
  const loadOhm = numberOf(product(rationalOf(driver.coilOhm), rational(BigInt(inSeries * inSeries), BigInt(coils))))
  const lowestOhm = bridged ? lowestBridgedOhm : amplifier.lowestOhm
  const amplifiersNeeded = Math.ceil(outputs / (bridged ? Math.floor(channels / 2) : channels))
  const fit =
    loadOhm < lowestOhm
      ? {
          verdict: 'below-minimum' as const,
          advice: `${inDigits(loadOhm)} Ω lies below the ${inDigits(lowestOhm)} Ω this output may drive: not to be wired.`
        }
      : powered(amplifier, driver, layout, driversPerOutput, loadOhm, amplifiersNeeded)
  return {
    amplifier: name,
    bridged,
    outputs,
    driversPerOutput,
    amplifiersNeeded,
    loadOhm,
    lowestOhm,
    join: joinText(arrangementWith(inSeries, driversPerOutput, driver.coils), driversPerOutput),
    ...fit,
    ...(sheet.price === undefined ? {} : { price: sheet.price * amplifiersNeeded }),
    ...(sheet.footprintM2 === undefined ? {} : { footprintM2: sheet.footprintM2 * amplifiersNeeded })
  }
}

/** All drivers on one output, or spread evenly over several, down to one output a driver; each group joined every balanced way. */
export function matchOptions(
  amplifier: ResolvedAmplifier,
  name: string,
  driver: DriverSheet,
  driverCount: number
): readonly MatchOption[] {
  const modes = amplifier.channels < 2 ? [false] : [false, true]
  return divisors(driverCount).flatMap(outputs =>
    modes.flatMap(bridged =>
      divisors((driverCount / outputs) * driver.coils).map(inSeries =>
        optionOf(amplifier, name, driver, driverCount, { outputs, bridged, inSeries })
      )
    )
  )
}
