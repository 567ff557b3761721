/** The cut plan: which panel comes from which sheet, cut by cut, and how far that is from the least board possible. */
import type {
  BoardSummary,
  SheetLayout,
  SheetPlan,
  SheetPlanRequest,
  SheetPlanTotal
} from '../../contract/boxes/box-sheets.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import { randomStream } from '../../numeric/random-stream.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import { DesignError, type FoundFault } from '../design-error.ts'
import { explain } from '../formula.ts'
import type { Outcome } from '../outcome.ts'
import { present } from '../present.ts'
import { phrased, say } from '../say.ts'
import { type BoardGroup, boardGroups, toUnits } from './board-group.ts'
import { type CopyCounter, sheetLayout } from './cut-list.ts'
import { sheetDefaults } from './defaults.ts'
import { sheetYield } from './formulas.ts'
import { type Layout, searchLayout } from './search-layout.ts'
import { type SheetBound, sheetBound } from './sheet-bound.ts'

const most = { panels: 1000, kindsOfBoard: 12 } as const

/** Placements weighed for one request, shared out among its boards: about a third of a second. */
const workOfARequest = 8e6

interface Settings {
  readonly kerfM: number
  readonly trimM: number
  readonly keepOffcutM: number
}

function settingsOf(request: SheetPlanRequest, assumed: Assumptions): Settings {
  return {
    kerfM: assumed.take(request.kerfM, 'kerfM', sheetDefaults.kerfM),
    trimM: assumed.take(request.trimM, 'trimM', sheetDefaults.trimM),
    keepOffcutM: assumed.take(request.keepOffcutM, 'keepOffcutM', sheetDefaults.keepOffcutM)
  }
}

function requireSensible({ panels, sheets }: SheetPlanRequest, { trimM }: Settings): void {
  const total = panels.reduce((sum, panel) => sum + panel.quantity, 0)
  if (total > most.panels) {
    throw new DesignError('out-of-range', { field: 'panels', value: total, maximum: most.panels, unit: '1' })
  }
  const faults = sheets.flatMap((sheet, index): FoundFault[] => {
    const side = Math.min(sheet.lengthM, sheet.widthM)
    return side > 2 * trimM ? [] : [{ field: `sheets[${index}].widthM`, value: side, minimum: 2 * trimM, unit: 'm' }]
  })
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('out-of-range', first, ...others)
}

/** @throws DesignError `no-solution` when the sheets given do not hold every panel */
function requireComplete(group: BoardGroup, layout: Layout, bound: SheetBound): void {
  const missing = group.panels.flatMap((panel, index) => {
    const copies = layout.missing[index] ?? 0
    return copies === 0 ? [] : [`${copies} × "${panel.name}"`]
  })
  if (missing.length === 0) return
  const stock = group.sheets.reduce((sum, sheet) => sum + (sheet.quantity ?? 0), 0)
  const proof =
    stock < bound.leastSheets
      ? say('refused.sheets.least', { leastCount: bound.leastSheets })
      : say('refused.sheets.none-found')
  throw new DesignError('no-solution', {
    field: 'sheets',
    value: stock,
    minimum: Math.max(bound.leastSheets, stock + 1),
    unit: '1',
    detail: say('refused.the-sheets-given-leave-out', {
      stockCount: stock,
      panels: missing.slice(0, 8).join(', '),
      more: missing.length > 8 ? say('refused.the-sheets-given-leave-out.more') : [],
      proof
    })
  })
}

const proofs = {
  area: 'the area of the panels with their kerfs',
  'large-pieces': 'pieces so large that no two of them share a sheet',
  'densest-sheet': 'the fullest sheet that these sizes can make at all'
} as const

function whyOf(sheetCount: number, { leastSheets, areaSheets, proof }: SheetBound): string {
  if (sheetCount <= leastSheets) return `No plan uses fewer sheets, by ${proofs[proof]}.`
  const share = Math.round((1000 * areaSheets) / leastSheets) / 10
  return `The panels need ${sheetCount} sheets. ${leastSheets === 1 ? 'One sheet' : `${leastSheets} sheets`} would have to be ${share} % full (bound by ${proofs[proof]}); whether edge-to-edge cuts can do that is not known, and the search found no such plan.`
}

function summaryOf(group: BoardGroup, layouts: readonly SheetLayout[], bound: SheetBound): BoardSummary {
  const sheetCount = layouts.length
  return {
    thicknessM: group.thicknessM,
    ...present({ material: group.material }),
    panelCount: group.panels.reduce((sum, panel) => sum + panel.quantity, 0),
    sheetCount,
    panelAreaM2: group.panels.reduce((sum, panel) => sum + panel.quantity * panel.lengthM * panel.widthM, 0),
    sheetAreaM2: layouts.reduce((sum, layout) => sum + layout.lengthM * layout.widthM, 0),
    leastSheetCount: bound.leastSheets,
    provedBy: bound.proof,
    areaBoundSheets: bound.areaSheets,
    aboveLeastPercent: Math.max(0, (100 * (sheetCount - bound.leastSheets)) / bound.leastSheets),
    why: whyOf(sheetCount, bound)
  }
}

function totalOf(
  boards: readonly BoardSummary[],
  layouts: readonly SheetLayout[],
  prices: readonly (number | undefined)[]
): SheetPlanTotal {
  const sum = (value: (board: BoardSummary) => number) => boards.reduce((total, board) => total + value(board), 0)
  const panelAreaM2 = sum(board => board.panelAreaM2)
  const sheetAreaM2 = sum(board => board.sheetAreaM2)
  const kept = layouts.flatMap(layout => layout.offcuts.filter(offcut => offcut.reusable))
  const keptM2 = kept.reduce((total, { lengthM, widthM }) => total + lengthM * widthM, 0)
  const cuts = layouts.flatMap(layout => layout.cuts)
  return {
    panelCount: sum(board => board.panelCount),
    sheetCount: layouts.length,
    panelAreaM2,
    sheetAreaM2,
    yieldPercent: sheetYield.of({ A_panels: panelAreaM2, A_sheets: sheetAreaM2 }),
    wastePercent: 100 - sheetYield.of({ A_panels: panelAreaM2, A_sheets: sheetAreaM2 }),
    wasteAfterOffcutsPercent: Math.max(0, 100 - (100 * (panelAreaM2 + keptM2)) / sheetAreaM2),
    cutCount: cuts.length,
    cutLengthM: cuts.reduce((total, cut) => total + cut.cutLengthM, 0),
    ...(prices.every(price => price !== undefined) ? { price: prices.reduce((total, price) => total + price, 0) } : {})
  }
}

function cautionsOf(boards: readonly BoardSummary[], request: SheetPlanRequest): Caution[] {
  const narrow = request.panels.findIndex(panel => Math.min(panel.lengthM, panel.widthM) < 0.06)
  const panel = request.panels[narrow]
  return [
    ...boards
      .filter(board => board.aboveLeastPercent > 5)
      .map(board =>
        caution(
          'sheet-plan-above-bound',
          say('sheet-plan-above-bound', {
            sheetCount: board.sheetCount,
            thicknessMm: board.thicknessM * 1000,
            leastSheetCount: board.leastSheetCount,
            why: phrased(board.why)
          }),
          { figures: { sheetCount: board.sheetCount, leastSheetCount: board.leastSheetCount } }
        )
      ),
    ...(panel === undefined
      ? []
      : [
          caution(
            'narrow-strip',
            say('narrow-strip', {
              panel: panel.name,
              widthMm: Math.round(Math.min(panel.lengthM, panel.widthM) * 1e4) / 10
            }),
            { at: `panels[${narrow}].widthM`, figures: { widthMm: Math.min(panel.lengthM, panel.widthM) * 1000 } }
          )
        ])
  ]
}

function basisOf({ panelAreaM2, sheetAreaM2, yieldPercent }: SheetPlanTotal): Basis[] {
  const areas = { A_panels: panelAreaM2, A_sheets: sheetAreaM2 }
  return [explain(sheetYield, 'total.yieldPercent', yieldPercent, areas)]
}

function planBoard(
  group: BoardGroup,
  settings: Settings,
  share: number,
  seed: number
): { readonly bound: SheetBound; readonly layout: Layout } {
  const kerf = toUnits(settings.kerfM)
  const bound = sheetBound(group.kinds, group.sheetKinds, kerf)
  const { kinds, sheetKinds: sheets } = group
  const layout = searchLayout(
    { kinds, sheets, kerf, random: randomStream(seed), work: workOfARequest * share, evenly: true },
    bound.leastCost
  )
  requireComplete(group, layout, bound)
  return { bound, layout }
}

/** @throws DesignError `out-of-range` */
function requireFewKinds(kinds: number): void {
  const maximum = most.kindsOfBoard
  if (kinds <= maximum) return
  const detail = say('refused.the-panels-need-kinds-of-board', { kinds, maximum })
  throw new DesignError('out-of-range', { field: 'panels', value: kinds, maximum, unit: '1', detail })
}

/**
 * A cut plan with edge-to-edge cuts.
 *
 * @param request  panels of positive size, at most 1000 pieces; the sheets to be had; kerf and trim [m]
 * @returns layouts with pieces, numbered cuts and offcuts; totals; for each board the lower bound and the distance to it
 * @throws DesignError `no-solution` (no sheet of that board, panel too large, stock too small), `missing-input` (which of
 *   several materials), `out-of-range`
 * @validity rectangular blanks; cut-outs are not nested; one search with fixed steps, so the same request gives the same plan
 * @source ours, see search-layout.ts and sheet-bound.ts
 */
export function nestPanels(request: SheetPlanRequest): Outcome<SheetPlan> {
  const assumed = assumptions()
  const settings = settingsOf(request, assumed)
  requireSensible(request, settings)
  const groups = boardGroups(request, settings.trimM)
  requireFewKinds(groups.length)
  const layouts: SheetLayout[] = []
  const prices: (number | undefined)[] = []
  const boards = groups.map((group, index) => {
    const { bound, layout } = planBoard(group, settings, 1 / groups.length, index + 1)
    const counter: CopyCounter = new Map()
    const mine = layout.sheets.map((sheet, place) =>
      sheetLayout(sheet, layouts.length + place + 1, counter, { group, ...settings })
    )
    layouts.push(...mine)
    prices.push(...layout.sheets.map(({ sheet }) => group.sheets[sheet]?.price))
    return summaryOf(group, mine, bound)
  })
  const total = totalOf(boards, layouts, prices)
  return {
    result: { total, boards, layouts },
    cautions: cautionsOf(boards, request),
    assumed: assumed.list,
    sources: [
      'sheet-area-bound',
      'guillotine-list-heuristic',
      'sequential-value-correction',
      'unconstrained-guillotine-programme'
    ],
    basis: basisOf(total)
  }
}
