/** An attempt that fits, braced as the plan braces it and heard at a few frequencies only. */
import { computeResponse } from '../../domain/enclosure/answer/compute-response.ts'
import { runPart } from '../request/part.ts'
import { type Attempt, enclosureOf, type Setting } from './plan-attempts.ts'
import { type BoxPart, bracedBox, clears } from './plan-box.ts'
import { planResponse, type ResponsePart, SHOWN } from './plan-response.ts'

export interface AttemptResponse {
  readonly box: BoxPart
  readonly response: ResponsePart
}

/** The pressure in the box over the band of a chart, without the limits that make a chart costly. */
function pressureOf(response: ResponsePart & { readonly done: true }) {
  const { limits: _, ...linear } = response.request
  return runPart({ ...linear, frequenciesHz: SHOWN }, computeResponse)
}

export function attemptResponse(
  { request, drivers, joined }: Setting,
  { candidate, port, box, leakQ }: Attempt,
  frequenciesHz: readonly number[]
): AttemptResponse {
  const hear = (part: BoxPart) =>
    planResponse(request, drivers, joined, enclosureOf(candidate, part, port, leakQ), frequenciesHz)
  const response = hear(box)
  if (!box.done || !response.done) return { box, response }
  const pressure = pressureOf(response)
  const braced = pressure.done ? bracedBox(request, box, pressure.outcome.result) : box
  const isAsked = request.board.bracing !== undefined && braced.done
  return isAsked || clears(braced) ? { box: braced, response: hear(braced) } : { box, response }
}
