/** From a box that fits to the box that is built: braced where braces fit, in sizes that save a sheet where some do. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Response } from '../../domain/enclosure/answer/compute-response.ts'
import { type BoxPart, bracedBox, clears } from './plan-box.ts'
import { type BoxOnSheets, onFewerSheets } from './sheet-saving.ts'

/** A box that braces would crowd stays as it was, with its caution, unless they were asked for. */
export function settledBox(request: PlanRequest, box: BoxPart & { readonly done: true }, heard: Response): BoxOnSheets {
  const braced = bracedBox(request, box, heard)
  const isAsked = request.board.bracing !== undefined && braced.done
  return onFewerSheets(request, isAsked || clears(braced) ? braced : box)
}
