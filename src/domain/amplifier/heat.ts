/** What the amplifiers of a match give off as heat, and whether their fuses could feed what is claimed. */

import type { AmplifierHeat, AmplifierSheet } from '../../contract/amplifiers/amplifier-matching.ts'
import type { AmplifierClass } from '../../contract/supply/words.ts'
import type { Assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import { type AmplifierDraw, disproved, inputPower, plausiblePower } from '../circuit/load/amplifier-draw.ts'
import { classDraws } from '../circuit/load/class-draws.ts'
import { loadDefaults } from '../circuit/load/defaults.ts'
import { say } from '../say.ts'
import { amplifierDefaults, classEfficiency, classIdleDraw } from './defaults.ts'

type AmplifierEconomy = Pick<AmplifierSheet, 'class' | 'efficiency' | 'quiescentW' | 'onboardFusesA' | 'ratedVoltageV'>

function efficiencyOf({ class: named, efficiency }: AmplifierEconomy, assumed: Assumptions, at: string) {
  if (efficiency !== undefined || named === undefined) return efficiency
  const usual = classDraws[named].efficiency
  assumed.note(`${at}efficiency`, usual, classEfficiency(named))
  return usual
}

function drawOf(amplifier: AmplifierEconomy, powerW: number, efficiency: number, assumed: Assumptions, at: string) {
  const switching = efficiency >= loadDefaults.switchingFrom.value ? 'D' : 'AB'
  const amplifierClass = assumed.work<AmplifierClass>(
    amplifier.class,
    `${at}class`,
    switching,
    amplifierDefaults.partialLoadClass
  )
  const fullInputW = powerW / efficiency
  const idle = classDraws[amplifierClass].quiescentW
  const quiescentW = assumed.work(
    amplifier.quiescentW,
    `${at}quiescentW`,
    Math.min(idle, loadDefaults.quiescentShare.value * fullInputW),
    classIdleDraw(amplifierClass)
  )
  const draw: AmplifierDraw = {
    powerW,
    class: amplifierClass,
    efficiency,
    quiescentW: Math.min(quiescentW, fullInputW),
    fullInputW,
    regulated: true,
    regulationKnown: false,
    ratedVoltageV: amplifierDefaults.ratedVoltageV.value
  }
  return draw
}

/**
 * Heat = input − output, at the full level the gain is set to and at one eighth of it. The efficiency is that at rated
 * output; below it the partial-load law of the class holds.
 *
 * @param ratedW  output of all amplifiers together at this load, as rated [W]
 * @param playedW  the same at full level [W], at most ratedW
 * @returns undefined when neither class nor efficiency is known
 * @source class efficiencies common practice; partial-load law as in the supply room
 * @check  640 W at efficiency 0.85 → 112.9 W; 300 W out of 2400 W, 15 W idle → 66.1 W
 */
export function amplifierHeat(
  amplifier: AmplifierEconomy,
  ratedW: number,
  playedW: number,
  assumed: Assumptions,
  at: string
): AmplifierHeat | undefined {
  const efficiency = efficiencyOf(amplifier, assumed, at)
  if (efficiency === undefined) return undefined
  const draw = drawOf(amplifier, ratedW, efficiency, assumed, at)
  const heat = (outputW: number) => inputPower(draw, outputW / ratedW) - outputW
  return { fullSineW: heat(playedW), averageW: heat(loadDefaults.averageDuty.value * playedW) }
}

export function heatCautions(heat: AmplifierHeat | undefined): readonly Caution[] {
  if (heat === undefined) return []
  const { averageW, fullSineW } = heat
  return [
    caution(
      'amplifier-heat',
      say('amplifier-heat', { averageW: Math.round(averageW), fullSineW: Math.round(fullSineW) }),
      { figures: { averageW, fullSineW } }
    )
  ]
}

const fuseEfficiency = ({ class: named, efficiency }: AmplifierEconomy) =>
  efficiency ?? (named === undefined ? 1 : classDraws[named].efficiency)

/** The most that the fuses on board let it give [W]; without class and efficiency as if it had no loss. */
export function believablePower(amplifier: AmplifierEconomy, assumed: Assumptions, at: string): number | undefined {
  const { onboardFusesA, ratedVoltageV } = amplifier
  if (onboardFusesA === undefined) return undefined
  const ratedV = assumed.take(ratedVoltageV, `${at}ratedVoltageV`, amplifierDefaults.ratedVoltageV)
  return plausiblePower(fuseEfficiency(amplifier), ratedV, onboardFusesA)
}

/** Said of a claimed power that the on-board fuses could not feed. */
export function plausibilityCautions(
  amplifier: AmplifierEconomy,
  claimedW: number,
  plausibleW: number | undefined,
  at: string
): readonly Caution[] {
  const {
    onboardFusesA = [],
    ratedVoltageV = amplifierDefaults.ratedVoltageV.value,
    efficiency,
    class: named
  } = amplifier
  if (plausibleW === undefined || !disproved(claimedW, plausibleW)) return []
  const loss =
    efficiency === undefined && named === undefined
      ? say('rating-implausible.no-loss')
      : say('rating-implausible.efficiency', { efficiencyRatio: fuseEfficiency(amplifier) })
  return [
    caution(
      'rating-implausible',
      say('rating-implausible', {
        claimedW: Math.round(claimedW),
        plausibleW: Math.round(plausibleW),
        fuses: onboardFusesA.join(' + '),
        ratedVoltageV,
        loss
      }),
      { at: `${at}onboardFusesA`, figures: { claimedW, plausibleW } }
    )
  ]
}
