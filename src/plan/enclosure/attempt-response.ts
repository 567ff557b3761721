/** An attempt that fits, braced as the plan braces it, and then its response: braces take air. */
import type { ResponseRequest } from '../../domain/enclosure/model/request.ts'
import { type Attempt, enclosureOf } from './plan-attempts.ts'
import { type BoxPart, bracedBox, clears } from './plan-box.ts'
import { planResponse, pressureIn, type ResponsePart } from './plan-response.ts'
import type { Setting } from './setting.ts'

export interface AttemptResponse {
  readonly box: BoxPart
  readonly response: ResponsePart
}

/** The box of the attempt with its braces; one that braces would crowd stays as it was, with its caution. */
function finishedBox(setting: Setting, { candidate, port, box, leakQ }: Attempt): BoxPart {
  const pressurePa = box.done ? pressureIn(setting, enclosureOf(candidate, box, port, leakQ)) : undefined
  if (!box.done || pressurePa === undefined) return box
  const braced = bracedBox(setting.request, box, pressurePa)
  const isAsked = setting.request.board.bracing !== undefined && braced.done
  return isAsked || clears(braced) ? braced : box
}

export function attemptResponse(
  setting: Setting,
  made: Attempt,
  frequenciesHz?: NonNullable<ResponseRequest['frequenciesHz']>
): AttemptResponse {
  const box = finishedBox(setting, made)
  const { candidate, port, leakQ } = made
  return { box, response: planResponse(setting, enclosureOf(candidate, box, port, leakQ), frequenciesHz) }
}
