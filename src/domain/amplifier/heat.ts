/** What the amplifiers of a match give off as heat, and whether their fuses could feed what is claimed. */
import type { Assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import { type AmplifierDraw, inputPower, plausiblePower } from '../supply/amplifier-draw.ts'
import { type AmplifierClass, classDraws, supplyJudgement } from '../supply/supply-judgement.ts'

export interface AmplifierEconomy {
  readonly class?: AmplifierClass
  readonly efficiency?: number
  readonly quiescentW?: number
  readonly onboardFusesA?: readonly number[]
}

export interface AmplifierHeat {
  /** With a test tone at full level [W]. */
  readonly fullSineW: number
  /** With music that averages one eighth of it [W]. */
  readonly averageW: number
}

/** Supply of the rating standard per 12 V system (ANSI/CTA-2006, second-hand). */
const RATING_SUPPLY_V = 14.4

function efficiencyOf({ class: named, efficiency }: AmplifierEconomy, assumed: Assumptions, at: string) {
  if (efficiency !== undefined || named === undefined) return efficiency
  return assumed.or(
    undefined as number | undefined,
    `${at}efficiency`,
    classDraws[named].efficiency,
    `class ${named} at rated output, common practice; a data-sheet figure wins`
  )
}

function drawOf(amplifier: AmplifierEconomy, powerW: number, efficiency: number, assumed: Assumptions, at: string) {
  const switching = efficiency >= supplyJudgement.switchingFrom ? 'D' : 'AB'
  const amplifierClass = assumed.or<AmplifierClass>(
    amplifier.class,
    `${at}class`,
    switching,
    'partial-load law from the efficiency'
  )
  const fullInputW = powerW / efficiency
  const idle = classDraws[amplifierClass].quiescentW
  const quiescentW = assumed.or(
    amplifier.quiescentW,
    `${at}quiescentW`,
    Math.min(idle, supplyJudgement.quiescentShare * fullInputW),
    `idle draw of class ${amplifierClass}, common practice`
  )
  const draw: AmplifierDraw = {
    powerW,
    class: amplifierClass,
    efficiency,
    quiescentW: Math.min(quiescentW, fullInputW),
    fullInputW,
    regulated: true,
    regulationKnown: false,
    ratedVoltageV: RATING_SUPPLY_V
  }
  return draw
}

/**
 * Heat = input − output, at full sine and at one eighth of it.
 *
 * @param powerW  output of all amplifiers together at full level [W]
 * @returns undefined when neither class nor efficiency is known
 * @source class efficiencies common practice; partial-load law as in the supply room
 * @check  640 W at efficiency 0.85 → 112.9 W
 */
export function amplifierHeat(
  amplifier: AmplifierEconomy,
  powerW: number,
  assumed: Assumptions,
  at: string
): AmplifierHeat | undefined {
  const efficiency = efficiencyOf(amplifier, assumed, at)
  if (efficiency === undefined) return undefined
  const draw = drawOf(amplifier, powerW, efficiency, assumed, at)
  const heat = (share: number) => inputPower(draw, share) - share * powerW
  return { fullSineW: heat(1), averageW: heat(supplyJudgement.averageDuty) }
}

export function heatCautions(heat: AmplifierHeat | undefined): readonly Caution[] {
  if (heat === undefined) return []
  const { averageW, fullSineW } = heat
  return [
    caution(
      'amplifier-heat',
      `The amplifiers give off about ${Math.round(averageW)} W with music and ${Math.round(fullSineW)} W with a full-level tone: free air around them, no carpet over them.`,
      { figures: { averageW, fullSineW } }
    )
  ]
}

/** Doubt about a claimed power that the on-board fuses could not feed. */
export function plausibilityCautions(amplifier: AmplifierEconomy, claimedW: number, at: string): readonly Caution[] {
  const { onboardFusesA } = amplifier
  const efficiency =
    amplifier.efficiency ?? (amplifier.class === undefined ? 1 : classDraws[amplifier.class].efficiency)
  if (onboardFusesA === undefined) return []
  const plausibleW = plausiblePower(efficiency, RATING_SUPPLY_V, onboardFusesA)
  if (claimedW <= plausibleW) return []
  return [
    caution(
      'rating-implausible',
      `${Math.round(claimedW)} W are claimed, but ${Math.round(plausibleW)} W is all that on-board fuses of ${onboardFusesA.join(' + ')} A pass at ${RATING_SUPPLY_V} V${amplifier.efficiency === undefined && amplifier.class === undefined ? ' even without any loss' : ` with efficiency ${efficiency}`}.`,
      { at: `${at}onboardFusesA`, figures: { claimedW, plausibleW } }
    )
  ]
}
