/** The sheets a box of the plan is cut from. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { SheetPanel, SheetPlan, SheetPlanRequest } from '../../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import type { WorkWay } from '../../../contract/systems/words.ts'
import { inMm } from '../../../domain/digits.ts'
import { usualSheets } from '../../../domain/material/usual-sheets.ts'
import { present } from '../../../domain/present.ts'
import { nestPanels } from '../../../domain/sheet/nest-panels.ts'
import { type Accuracy, accuracyOf } from '../../request/defaults.ts'
import type { Part } from '../../request/part.ts'
import type { ResolvedPlan } from '../../request/resolved-plan.ts'

export type SheetsPart = Part<SheetPlanRequest, SheetPlan>

const sheetPanel = ({ name, quantity, lengthM, widthM, thicknessM, material, grain }: Panel): SheetPanel => ({
  name,
  quantity,
  lengthM,
  widthM,
  thicknessM,
  material,
  grain
})

type Cut = Pick<PlanRequest, 'board' | 'workshop'>

/** What a way of working cuts away between two parts; that of a cut plan where it has none of its own. */
function kerfOf(way: WorkWay | undefined): number | undefined {
  const accuracy: Accuracy | undefined = way && accuracyOf[way].value
  return accuracy?.kerfM
}

/** One kind of sheet for each board the panels are of: the caller's size, else the usual one of that board. */
export function sheetRequest({ board, workshop }: Cut, panels: BoxLayout['panels']): SheetPlanRequest {
  const { way } = workshop ?? {}
  const { kerfM = kerfOf(way), ...given }: Partial<NonNullable<PlanRequest['board']['sheet']>> = board.sheet ?? {}
  const named = ({ material, thicknessM }: Pick<Panel, 'material' | 'thicknessM'>) =>
    `${inMm(thicknessM, 1)} ${material}`
  return {
    panels: panels.map(sheetPanel),
    sheets: usualSheets(panels, named).map(sheet => ({ ...sheet, ...given })),
    ...present({ kerfM })
  }
}

export const planSheets = (request: Cut & Pick<ResolvedPlan, 'run'>, { panels }: BoxLayout): SheetsPart =>
  request.run(sheetRequest(request, panels), nestPanels)
