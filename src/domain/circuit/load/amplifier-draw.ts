/** What one amplifier takes from the supply, from silence to a full sine. */

import type { AmplifierOnSupply } from '../../../contract/supply/supply-current.ts'
import type { AmplifierClass } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { classDraws } from './class-draws.ts'
import { loadDefaults } from './defaults.ts'
import { ratedOutputW } from './rated-output.ts'
import { suitsSupply } from './voltage-class.ts'

export interface AmplifierDraw {
  readonly powerW: number
  /** What the sheet claims, where the fuses on board pass less and powerW is what they pass. */
  readonly claimedW?: number
  readonly class: AmplifierClass
  readonly efficiency: number
  readonly quiescentW: number
  /** Input power at rated output. */
  readonly fullInputW: number
  /** Also of one made for another system voltage: its converter holds the voltage. */
  readonly regulated: boolean
  readonly regulationKnown: boolean
  readonly ratedVoltageV: number
}

/**
 * Input power of an amplifier at an output.
 *
 *   linear (D)                 Pin = Pq + P·(Pfull − Pq)/Prated
 *   square root (AB, B, G, H)  Pin = Pq + (Pfull − Pq)·√(P/Prated)
 *   constant (A)               Pin = Pfull
 *
 * @param draw  Pfull = Prated/η [W], Pq [W] below it
 * @param share  P/Prated, 0 … 1
 * @returns Pin [W]
 * @validity Unclipped. The square root is the sine law of class B, fixed at the rated point; noise draws up to 11 % less. Never scale full draw by the duty for class AB.
 * @source class B theory (derived); linear law derived
 * @check  1000 W, η 0.85, Pq 15 W at 1/8 → 160.18 W; at 1/3 → 402.16 W; at 1 → 1176.47 W
 */
export function inputPower(draw: AmplifierDraw, share: number): number {
  const { law } = classDraws[draw.class]
  if (law === 'constant') return draw.fullInputW
  const level = law === 'linear' ? share : Math.sqrt(share)
  return draw.quiescentW + (draw.fullInputW - draw.quiescentW) * level
}

/**
 * Highest continuous output the on-board fuses make believable: η·Vrating·ΣIfuse.
 *
 * @returns [W]
 * @source ANSI/CTA-2006 rating voltage 14.4 V; the bound is derived, fuses do carry brief overload
 * @check  2 × 30 A, η 0.85 → 734.4 W
 */
export function plausiblePower(efficiency: number, ratedVoltageV: number, fusesA: readonly number[]): number {
  return efficiency * ratedVoltageV * fusesA.reduce((sum, ratingA) => sum + ratingA, 0)
}

/** Beyond the rounding of six digits. */
export const disproved = (claimedW: number, plausibleW: number) => claimedW > plausibleW * (1 + 1e-5)

/** The claim, or what the fuses on board can feed where they disprove it. */
function believed({ onboardFusesA }: AmplifierOnSupply, claimedW: number, efficiency: number, ratedVoltageV: number) {
  const plausibleW = plausiblePower(efficiency, ratedVoltageV, onboardFusesA ?? [Infinity])
  return disproved(claimedW, plausibleW) ? plausibleW : claimedW
}

/**
 * The class law when only an efficiency is known: above what a class B stage reaches it must switch.
 *
 * @throws DesignError `missing-input` where neither is known
 */
function classOf(
  amplifier: AmplifierOnSupply,
  efficiency: number | undefined,
  assumed: Assumptions,
  at: string
): AmplifierClass {
  if (efficiency === undefined && amplifier.class === undefined) {
    throw new DesignError('missing-input', {
      field: `${at}class`,
      detail: say('refused.give-the-amplifier-s-class-its')
    })
  }
  const guess: AmplifierClass = efficiency === undefined || efficiency >= loadDefaults.switchingFrom.value ? 'D' : 'AB'
  const rule = guess === 'D' ? loadDefaults.switching : loadDefaults.notSwitching
  return assumed.work<AmplifierClass>(amplifier.class, `${at}class`, guess, rule)
}

function statedEfficiency(
  amplifier: AmplifierOnSupply,
  powerW: number,
  ratedVoltageV: number,
  at: string
): number | undefined {
  const { efficiency, inputCurrentA, inputVoltageV } = amplifier
  if (inputCurrentA === undefined) return efficiency
  if (efficiency !== undefined) {
    throw new DesignError('conflicting-input', {
      field: `${at}efficiency`,
      detail: say('refused.give-the-efficiency-or-the-measured')
    })
  }
  const implied = powerW / (inputCurrentA * (inputVoltageV ?? ratedVoltageV))
  if (implied < 1) return implied
  throw new DesignError('conflicting-input', {
    field: `${at}inputCurrentA`,
    value: inputCurrentA,
    unit: 'A',
    minimum: powerW / (inputVoltageV ?? ratedVoltageV),
    detail: say('refused.a-at-v-is-less-than', { inputCurrentA, ratedVoltageV: inputVoltageV ?? ratedVoltageV, powerW })
  })
}

/** Assumed aloud only where it enters the calculation. */
function ratedVoltageOf(
  amplifier: AmplifierOnSupply,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string
): number {
  const { ratedVoltageV, regulation, inputCurrentA, inputVoltageV, onboardFusesA } = amplifier
  const { ratedVoltageVPer12V } = loadDefaults
  const usual = ratedVoltageVPer12V.value * twelves(systemVoltageV)
  const measured = inputCurrentA !== undefined && inputVoltageV === undefined
  const matters = regulation !== 'regulated' || measured || onboardFusesA !== undefined
  if (!matters) return ratedVoltageV ?? usual
  return assumed.work(ratedVoltageV, `${at}ratedVoltageV`, usual, ratedVoltageVPer12V)
}

/** @throws DesignError `out-of-range` above the input power at rated output */
function quiescentOf(
  given: number | undefined,
  amplifierClass: AmplifierClass,
  fullInputW: number,
  assumed: Assumptions,
  at: string
): number {
  const { law, quiescentW: usualW } = classDraws[amplifierClass]
  const usual = law === 'constant' ? fullInputW : Math.min(usualW, loadDefaults.quiescentShare.value * fullInputW)
  const field = `${at}quiescentW`
  const why = `idle draw of class ${amplifierClass}, common practice`
  const quiescentW = assumed.work(given, field, usual, { why, source: 'practice' })
  if (quiescentW <= fullInputW) return quiescentW
  throw new DesignError('out-of-range', { field, value: quiescentW, maximum: fullInputW, unit: 'W' })
}

/**
 * Settles one amplifier: data sheet before class default.
 *
 * @throws DesignError `missing-input` without class, efficiency or input current; `conflicting-input`; `out-of-range`
 */
export function amplifierDraw(
  amplifier: AmplifierOnSupply,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string
): AmplifierDraw {
  const claimedW = ratedOutputW(amplifier, at)
  const ratedVoltageV = ratedVoltageOf(amplifier, systemVoltageV, assumed, at)
  const stated = statedEfficiency(amplifier, claimedW, ratedVoltageV, at)
  const amplifierClass = classOf(amplifier, stated, assumed, at)
  const why = `class ${amplifierClass} at rated output, common practice; a data-sheet figure wins`
  const { efficiency: usual } = classDraws[amplifierClass]
  const efficiency = assumed.work(stated, `${at}efficiency`, usual, { why, source: 'practice' })
  const powerW = believed(amplifier, claimedW, efficiency, ratedVoltageV)
  const fullInputW = powerW / efficiency
  return {
    powerW,
    ...(powerW === claimedW ? {} : { claimedW }),
    class: amplifierClass,
    efficiency,
    quiescentW: quiescentOf(amplifier.quiescentW, amplifierClass, fullInputW, assumed, at),
    fullInputW,
    regulated: amplifier.regulation !== 'unregulated' || !suitsSupply(amplifier, systemVoltageV),
    regulationKnown: amplifier.regulation !== undefined,
    ratedVoltageV
  }
}
