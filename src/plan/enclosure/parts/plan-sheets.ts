/** The sheets a box of the plan is cut from. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { SheetPanel, SheetPlan, SheetPlanRequest } from '../../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { inMm } from '../../../domain/digits.ts'
import { boards } from '../../../domain/material/boards.ts'
import { present } from '../../../domain/present.ts'
import { nestPanels } from '../../../domain/sheet/nest-panels.ts'
import { type Part, runPart } from '../../request/part.ts'
import { accuracyOf } from '../../request/plan-workshop.ts'

/** The sheet most dealers cut from, where the table of boards knows none. Common practice, no source. */
const USUAL_SHEET_MM = [2440, 1220] as const

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

/** One kind of sheet for each board the panels are of: the caller's size, else the usual one of that board. */
export function sheetRequest({ board, workshop }: Cut, panels: BoxLayout['panels']): SheetPlanRequest {
  const { way } = workshop ?? {}
  const { kerfM = way && accuracyOf[way].kerfM, ...given }: Partial<NonNullable<PlanRequest['board']['sheet']>> =
    board.sheet ?? {}
  const kinds = new Map(panels.map(panel => [`${panel.material} ${panel.thicknessM}`, panel]))
  return {
    panels: panels.map(sheetPanel),
    sheets: [...kinds.values()].map(({ material, thicknessM }) => {
      const { grained, sheetsMm } = boards[material]
      const [lengthMm, widthMm] = sheetsMm[0] ?? USUAL_SHEET_MM
      return {
        name: `${inMm(thicknessM, 1)} ${material}`,
        material,
        thicknessM,
        grain: grained ? ('length' as const) : ('none' as const),
        lengthM: lengthMm / 1000,
        widthM: widthMm / 1000,
        ...given
      }
    }),
    ...present({ kerfM })
  }
}

export const planSheets = (request: Cut, { panels }: BoxLayout): SheetsPart =>
  runPart(sheetRequest(request, panels), nestPanels)
