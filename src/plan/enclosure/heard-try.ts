/** A try that fits, braced as the plan braces it, then heard: braces take air. */
import type { ResponseRequest } from '../../domain/enclosure/model/request.ts'
import { type BoxPart, bracedBox, clears } from './plan-box.ts'
import { planResponse, pressureIn, type ResponsePart } from './plan-response.ts'
import { enclosureOf, type Try } from './plan-tries.ts'
import type { Setting } from './setting.ts'

export interface HeardTry {
  readonly box: BoxPart
  readonly response: ResponsePart
}

/** The try with its braces; a box that braces would crowd stays as it was, with its caution. */
function finishedBox(setting: Setting, { candidate, port, box, leakQ }: Try): BoxPart {
  const pressurePa = box.done ? pressureIn(setting, enclosureOf(candidate, box, port, leakQ)) : undefined
  if (!box.done || pressurePa === undefined) return box
  const braced = bracedBox(setting.request, box, pressurePa)
  const isAsked = setting.request.board.bracing !== undefined && braced.done
  return isAsked || clears(braced) ? braced : box
}

export function heardTry(
  setting: Setting,
  made: Try,
  frequenciesHz?: NonNullable<ResponseRequest['frequenciesHz']>
): HeardTry {
  const box = finishedBox(setting, made)
  const { candidate, port, leakQ } = made
  return { box, response: planResponse(setting, enclosureOf(candidate, box, port, leakQ), frequenciesHz) }
}
