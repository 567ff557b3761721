/** Every balanced way of putting like drivers on the outputs of an amplifier, and how its power fits them. */

import type { MatchDriver, MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { MatchVerdict } from '../../contract/amplifiers/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { numberOf, product, rational, rationalOf } from '../../numeric/rational.ts'
import { disproved } from '../circuit/load/amplifier-draw.ts'
import { arrangementWith, divisors, joinSaid } from '../coils/arrangements.ts'
import { toDigits } from '../digits.ts'
import { present } from '../present.ts'
import { say, type Worded, worded } from '../say.ts'
import { type OutputPower, outputPower, type ResolvedAmplifier, ratingsText } from './amplifier-sheet.ts'

/** Amplifier power over the sum of the drivers' ratings. Common practice, no source: equal is the aim, this much is accepted. */
export const powerBand = { lowest: 0.75, highest: 1.5 } as const

/** An option with the sentences behind its advice and its joints. */
export type AdvisedOption = MatchOption & Worded<{ readonly advice: Said; readonly join: Said }>

export type CoilRating = Pick<MatchDriver, 'powerW' | 'coils' | 'coilOhm'>

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

function goodAdvice(ratio: number): Said {
  const ratioPercent = Math.round(100 * ratio)
  if (ratio > 1.01) return say('match-advice.more', { ratioPercent })
  return ratio >= 0.99 ? say('match-advice.equal') : say('match-advice.less', { ratioPercent })
}

function advice(verdict: MatchVerdict, ratio: number): Said {
  if (verdict === 'good') return goodAdvice(ratio)
  if (verdict === 'over-powered') {
    return say('match-advice.over', { ratioTimes: toDigits(ratio) })
  }
  // A square wave has twice the power of the sine with the same peak.
  return 2 * ratio <= 1
    ? say('match-advice.quiet', { ratioPercent: Math.round(100 * ratio) })
    : say('match-advice.under', { ratioPercent: Math.round(100 * ratio) })
}

function unknown(loadOhm: number, bridged: boolean, amplifier: ResolvedAmplifier) {
  return {
    verdict: 'power-unknown' as const,
    advice: say('match-advice.unknown', {
      loadOhm: toDigits(loadOhm),
      bridged: bridged ? say('bridged') : [],
      ratings: ratingsText(amplifier.sheet)
    })
  }
}

function origin({ powerFrom, ratedOhm = 0, ratedPowerW = 0 }: OutputPower, outputPowerW: number): readonly Said[] {
  if (powerFrom !== 'voltage-bound') return []
  const figures = {
    outputPowerW: toDigits(outputPowerW),
    ratedPowerW: toDigits(ratedPowerW),
    ratedOhm: toDigits(ratedOhm)
  }
  return [say('match-advice.bound', figures)]
}

/** The fuses on board feed all outputs of an amplifier together. */
function believed({ believableW = Infinity }: ResolvedAmplifier, outputW: number, outputs: number, needed: number) {
  const mostW = (believableW * needed) / outputs
  return disproved(outputW, mostW) ? mostW : outputW
}

function powered(
  amplifier: ResolvedAmplifier,
  driver: CoilRating,
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
    advice: say('sentences', { all: [...origin(output, outputPowerW), advice(verdict, powerRatio)] }),
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
  driver: CoilRating,
  driverCount: number,
  layout: Layout
): AdvisedOption {
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
          advice: say('match-advice.below', { loadOhm: toDigits(loadOhm), lowestOhm: toDigits(lowestOhm) })
        }
      : powered(amplifier, driver, layout, driversPerOutput, loadOhm, amplifiersNeeded)
  const join = joinSaid(arrangementWith(inSeries, driversPerOutput, driver.coils), driversPerOutput)
  return {
    amplifier: name,
    bridged,
    outputs,
    driversPerOutput,
    amplifiersNeeded,
    loadOhm,
    lowestOhm,
    ...fit,
    ...worded({ join, advice: fit.advice }),
    ...present({
      price: sheet.price === undefined ? undefined : sheet.price * amplifiersNeeded,
      footprintM2: sheet.footprintM2 === undefined ? undefined : sheet.footprintM2 * amplifiersNeeded
    })
  }
}

/** All drivers on one output, or spread evenly over several, down to one output a driver; each group joined every balanced way. */
export function matchOptions(
  amplifier: ResolvedAmplifier,
  name: string,
  driver: CoilRating,
  driverCount: number
): readonly AdvisedOption[] {
  const modes = amplifier.channels < 2 ? [false] : [false, true]
  return divisors(driverCount).flatMap(outputs =>
    modes.flatMap(bridged =>
      divisors((driverCount / outputs) * driver.coils).map(inSeries =>
        optionOf(amplifier, name, driver, driverCount, { outputs, bridged, inSeries })
      )
    )
  )
}
