/** What a solved circuit says to the one who builds it. */

import type { Circuit, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { BatteryChemistry } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { fuseDefaults } from '../fuse/defaults.ts'
import { inputPower } from '../load/amplifier-draw.ts'
import { drainCaution } from '../load/supply-cautions.ts'
import { voltageClassCautions } from '../load/voltage-class.ts'
import { unlike } from '../source/unlike-batteries.ts'
import { inputOf } from './circuit-elements.ts'
import { guardsSay } from './circuit-guard-cautions.ts'
import { momentCautions } from './circuit-moments.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { voltageCautions } from './circuit-voltages.ts'
import { reached } from './reach.ts'
import { sideOf } from './sides.ts'

/** Batteries that cables, fuses and closed links tie together, each with the first of its bank. */
function bankCautions({ request }: CircuitParts): readonly Caution[] {
  const { batteries, cables = [], fuses = [], links = [] } = request
  const ways = [...cables, ...fuses, ...links]
  return batteries.flatMap((second, index) => {
    const bank = reached([second.plus], ways)
    const first = batteries.find(({ plus }) => bank.has(plus))
    if (first === undefined || first === second || !unlike(first, second)) return []
    const stated = first.chemistry !== undefined && second.chemistry !== undefined
    const said = (chemistry: BatteryChemistry | undefined) => say(`chemistry.${chemistry ?? 'unknown'}`)
    const message = say('unlike-batteries-parallel.circuit', {
      id: first.id,
      chemistry: said(first.chemistry),
      otherId: second.id,
      otherChemistry: said(second.chemistry)
    })
    return [
      caution('unlike-batteries-parallel', message, { at: `batteries[${index}]`, level: stated ? 'stop' : 'care' })
    ]
  })
}

/** Rest voltages of one bank differ by no more than this for each 12 V: lead by its charge and kind. */
const SAME_REST_V = 1

/** What runs from one into the other of two batteries tied together, by Ohm's law. */
function restCautions({ batteries, request }: CircuitParts): readonly Caution[] {
  const { cables = [], fuses = [], links = [], systemVoltageV } = request
  const ways = [...cables, ...fuses, ...links]
  return batteries.flatMap((second, index) => {
    const bank = reached([second.asked.plus], ways)
    const first = batteries.find(({ asked }) => bank.has(asked.plus))
    if (first === undefined || first === second) return []
    const differV = Math.abs(first.restV - second.restV)
    if (differV <= SAME_REST_V * twelves(systemVoltageV)) return []
    const message = say('unlike-batteries-parallel.volts', {
      id: first.asked.id,
      firstV: toDigits(first.restV, 3),
      otherId: second.asked.id,
      secondV: toDigits(second.restV, 3),
      flowA: toDigits(differV / (first.ohm + second.ohm))
    })
    return [caution('unlike-batteries-parallel', message, { at: `batteries[${index}]`, level: 'stop' })]
  })
}

/** A fuse of the minus side: when it opens the amplifier is still live. */
function returnFuseCautions({ request }: CircuitParts): readonly Caution[] {
  const { batteries, cables = [], fuses = [], links = [] } = request
  const ways = [...cables, ...fuses, ...links]
  const live = reached(
    batteries.map(({ plus }) => plus),
    ways
  )
  const returns = reached(
    batteries.map(({ minus }) => minus),
    ways
  )
  return fuses.flatMap(({ id, from }, index) =>
    returns.has(from) && !live.has(from)
      ? [caution('fuse-in-return', say('fuse-in-return', { id }), { at: `fuses[${index}]` })]
      : []
  )
}

function marginCautions({ collapseMargin }: Circuit): readonly Caution[] {
  if (collapseMargin === undefined) return []
  const message = say('collapse-margin.driving', { collapseMarginTimes: toDigits(collapseMargin) })
  return [caution('collapse-margin', message, { at: 'amplifiers', figures: { collapseMargin } })]
}

/** What the sheets of the amplifiers say against the voltage they hang on, and of what they draw switched off. */
function sheetCautions({ request, draws }: CircuitParts): readonly Caution[] {
  return request.amplifiers.flatMap((amplifier, index) => {
    const at = `amplifiers[${index}]`
    const { nominalV } = sideOf(request, amplifier.plus)
    const draw = draws[index]
    const inputW = draw === undefined ? undefined : inputPower(draw, 1)
    return [...voltageClassCautions(amplifier, nominalV, inputW, `${at}.`), ...drainCaution(amplifier, at)]
  })
}

/** Volts at the input of a converter. */
const inputV = ({ parts }: CircuitState, id: string): number =>
  parts.find(part => part.id === inputOf(id))?.voltageV ?? 0

function converterInputCautions({ states }: Circuit, { converters }: CircuitParts): readonly Caution[] {
  return converters.flatMap(({ asked: { id, highestInputV } }, index) => {
    const highest = Math.max(...states.map(state => inputV(state, id)))
    if (highestInputV === undefined || highest <= highestInputV) return []
    const message = say('converter-input', { highestV: toDigits(highest), id, allowedV: toDigits(highestInputV) })
    return [
      caution('converter-input', message, { at: `converters[${index}].highestInputV`, figures: { highestInputV } })
    ]
  })
}

/** @param certain  states without guessed resistances, where something fails that a guess may have caused */
export function circuitCautions(
  result: Circuit,
  parts: CircuitParts,
  certain: readonly CircuitState[] | undefined
): readonly Caution[] {
  const { batteries } = parts.request
  return [
    ...result.bareSources.map(bare => {
      const index = batteries.findIndex(({ id }) => id === bare)
      const message = say('bare-source', { bare, idealMm: 1000 * fuseDefaults.idealM.value })
      return caution('bare-source', message, { at: `batteries[${index}]` })
    }),
    ...bankCautions(parts),
    ...restCautions(parts),
    ...returnFuseCautions(parts),
    ...guardsSay(result, parts),
    ...voltageCautions(result.states, parts, certain),
    ...marginCautions(result),
    ...sheetCautions(parts),
    ...momentCautions(result.states, parts, batteries[0]?.minus ?? ''),
    ...converterInputCautions(result, parts)
  ]
}
