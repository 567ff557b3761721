/** An attempt that fits, braced and in sizes that save a sheet where some do, and then its response: both alter the air. */
import type { ResponseRequest } from '../../domain/enclosure/model/request.ts'
import { present } from '../../domain/present.ts'
import { type BoxPart, bracedBox, clears, wholeBox } from './parts/plan-box.ts'
import { planResponse, pressureIn, type ResponsePart } from './parts/plan-response.ts'
import type { Setting } from './parts/setting.ts'
import { type Attempt, enclosureOf } from './plan-attempts.ts'
import { onFewerSheets, type SheetSaving } from './sheet-saving.ts'

export interface AttemptResponse {
  readonly box: BoxPart
  readonly response: ResponsePart
  readonly saving?: SheetSaving
}

/** The box of the attempt with its braces; one that braces would crowd stays as it was, with its caution. */
function finishedBox(setting: Setting, made: Attempt): BoxPart {
  const { box } = made
  const pressurePa = box.done ? pressureIn(setting, enclosureOf(setting.brief, made, box)) : undefined
  if (!box.done || pressurePa === undefined) return wholeBox(setting.brief, box)
  const braced = bracedBox(setting.brief, box, pressurePa)
  const isAsked = setting.brief.board.bracing !== undefined && braced.done
  return isAsked || clears(braced) ? braced : wholeBox(setting.brief, box)
}

export function attemptResponse(
  setting: Setting,
  made: Attempt,
  frequenciesHz?: NonNullable<ResponseRequest['frequenciesHz']>
): AttemptResponse {
  const { box, saving } = onFewerSheets(setting.brief, finishedBox(setting, made))
  const response = planResponse(setting, enclosureOf(setting.brief, made, box), frequenciesHz)
  return { box, response, ...present({ saving }) }
}
