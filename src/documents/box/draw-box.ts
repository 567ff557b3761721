/** A box drawn: its panels and its cut sheets, from the request of a box. */
import type { BoxDrawingRequest, BoxDrawings, RouterCut, Routing } from '../../contract/boxes/box-drawings.ts'
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { type drawingSubjects, inchStyles } from '../../contract/boxes/words.ts'
import type { LanguageCode } from '../../contract/sentences/words.ts'
import { type Assumptions, assumptions } from '../../domain/assume.ts'
import { type BoxSolids, layOutSolids } from '../../domain/box/layout/lay-out-box.ts'
import { DesignError, type Fault, type FoundFault } from '../../domain/design-error.ts'
import { languages } from '../../domain/languages.ts'
import { usualSheets } from '../../domain/material/usual-sheets.ts'
import type { Outcome } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { nestPanels } from '../../domain/sheet/nest-panels.ts'
import type { Reader } from '../draw/number-text.ts'
import { USUAL_SHEET } from '../draw/panel-name.ts'
import { drawnApart } from '../panels/panel-copies.ts'
import { a4Lying, type Drawing, panelDrawing } from '../panels/panel-drawing.ts'
import { arcRadiusM } from '../panels/routed-contour.ts'
import { assemblyDrawings } from './assembly-drawing.ts'
import { cutSheet } from './cut-sheet.ts'
import { drawingDefaults } from './defaults.ts'
import { holeTemplates } from './hole-template.ts'

type DrawingSubject = (typeof drawingSubjects)[number]

interface BoxDrawing extends Drawing {
  readonly subject: 'panel' | 'cut-sheet' | 'assembly-step' | 'template'
}

/** Runs a part and moves the paths of its refusals to where the whole request has them. */
function within<Value>(moved: (field: string) => string, part: () => Value): Value {
  try {
    return part()
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    const [first = { field: '' }, ...others]: readonly (FoundFault | Fault)[] = error.faults.map(fault => ({
      ...fault,
      field: moved(fault.field)
    }))
    throw new DesignError(error.code, first, ...others)
  }
}

const usualSheetsOf = ({ panels }: BoxLayout) => usualSheets(panels, () => USUAL_SHEET)

const spacedFor = ({ cutterM }: RouterCut, assumed: Assumptions): number =>
  assumed.work(undefined, 'kerfM', cutterM + drawingDefaults.routedWebM.value, drawingDefaults.routedWebM)

function routingOf({ cutterM, dogBones, tabs }: RouterCut, assumed: Assumptions): Routing {
  return {
    radiusM: arcRadiusM(cutterM),
    dogBones: assumed.take(dogBones, 'router.dogBones', drawingDefaults.dogBones),
    tabs: assumed.take(tabs, 'router.tabs', drawingDefaults.tabs)
  }
}

function cutPlanOf(request: BoxDrawingRequest, box: BoxLayout, assumed: Assumptions): Outcome<SheetPlan> {
  const sheets = request.sheets ?? usualSheetsOf(box)
  if (request.sheets === undefined) {
    const [first] = sheets
    const size = `${(first?.lengthM ?? 0) * 1000} × ${(first?.widthM ?? 0) * 1000} mm`
    assumed.note('sheets', size, drawingDefaults.sheets)
  }
  const { trimM, router } = request
  const kerfM = request.kerfM ?? (router && spacedFor(router, assumed))
  return within(
    field => (field.startsWith('sheets') && request.sheets !== undefined ? field : 'box'),
    () =>
      nestPanels({
        panels: box.panels,
        sheets,
        ...present({ kerfM, trimM })
      })
  )
}

function panelDrawings(panels: readonly Panel[], paper: Reader, prefix: string): readonly BoxDrawing[] {
  return panels.flatMap(drawnApart).map((panel, index) => ({
    subject: 'panel' as const,
    ...panelDrawing(panel, `${prefix}-panel-${index + 1}`, paper)
  }))
}

function cutSheetDrawings({ layouts }: SheetPlan, paper: Reader, prefix: string): readonly BoxDrawing[] {
  return layouts.map(layout => ({
    subject: 'cut-sheet' as const,
    ...cutSheet(layout, `${prefix}-sheet-${layout.number}`, paper, a4Lying)
  }))
}

/** All but the sheets. */
function drawnBox(solids: BoxSolids, show: DrawingSubject, paper: Reader): readonly BoxDrawing[] {
  const { panels } = solids.layout
  if (show === 'assembly') {
    return assemblyDrawings(solids, 'box', paper).map(drawing => ({ subject: 'assembly-step', ...drawing }))
  }
  if (show === 'templates') {
    return holeTemplates(panels, paper, 'box').map(drawing => ({ subject: 'template', ...drawing }))
  }
  return show === 'cut-sheets' ? [] : panelDrawings(panels, paper, 'box')
}

function unitsOf(request: BoxDrawingRequest, assumed: Assumptions): Pick<Reader, 'units' | 'inches'> {
  const units = assumed.take<Reader['units']>(request.units, 'units', drawingDefaults.units)
  if (units === 'metric') return { units, inches: inchStyles[0] }
  return { units, inches: assumed.take<Reader['inches']>(request.inches, 'inches', drawingDefaults.inches) }
}

/** @throws DesignError as layOutBox and nestPanels do */
export function drawBox(request: BoxDrawingRequest, code: LanguageCode = 'en'): Outcome<BoxDrawings> {
  const assumed = assumptions()
  const show = assumed.take<DrawingSubject>(request.show, 'show', drawingDefaults.show)
  const units = unitsOf(request, assumed)
  const language = languages[code]
  const paper = { ...units, language }
  const box = within(
    field => (field === '' ? 'box' : `box.${field}`),
    () => layOutSolids(request.box)
  )
  const { layout } = box.result
  const cuts = show === 'cut-sheets' || show === 'both' ? cutPlanOf(request, layout, assumed) : undefined
  const drawings = [
    ...drawnBox(box.result, show, paper),
    ...(cuts === undefined ? [] : cutSheetDrawings(cuts.result, paper, 'box'))
  ]
  const boxAssumed = box.assumed.map(entry => ({ ...entry, field: `box.${entry.field}` }))
  const boxCautions = box.cautions.map(({ at, ...entry }) => ({ ...entry, at: at === undefined ? 'box' : `box.${at}` }))
  return {
    result: {
      title: request.title ?? told(language, 'draw.box'),
      ...units,
      box: layout,
      ...present({
        cutPlan: cuts?.result,
        routing: request.router === undefined ? undefined : routingOf(request.router, assumed)
      }),
      drawings
    },
    cautions: [...boxCautions, ...(cuts?.cautions ?? []).map(({ at: _, ...entry }) => entry)],
    assumed: [...assumed.list, ...boxAssumed, ...(cuts?.assumed ?? []).filter(({ field }) => field !== 'keepOffcutM')],
    sources: [...box.sources, ...(cuts?.sources ?? [])],
    basis: [
      ...box.basis.map(entry => ({ ...entry, quantity: `box.${entry.quantity}` })),
      ...(cuts?.basis ?? []).map(entry => ({ ...entry, quantity: `cutPlan.${entry.quantity}` }))
    ]
  }
}
