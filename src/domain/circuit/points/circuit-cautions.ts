/** What a solved circuit says to the one who builds it. */

import type { Circuit, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { BatteryChemistry } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { fuseDefaults } from '../fuse/defaults.ts'
import { inputPower } from '../load/amplifier-draw.ts'
import { drainCaution } from '../load/supply-cautions.ts'
import { voltageClassCautions } from '../load/voltage-class.ts'
import { unlike } from '../source/unlike-batteries.ts'
import { guardsSay } from './circuit-guard-cautions.ts'
import { momentCautions } from './circuit-moments.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { voltageCautions } from './circuit-voltages.ts'
import { converterInputCautions } from './converter-cautions.ts'
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
    ...guardsSay(result, parts),
    ...voltageCautions(result.states, parts, certain),
    ...marginCautions(result),
    ...sheetCautions(parts),
    ...momentCautions(result.states, parts, batteries[0]?.minus ?? ''),
    ...converterInputCautions(result, parts)
  ]
}
