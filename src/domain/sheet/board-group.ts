/** Sorts panels and sheets by board: what must be cut from the same material and thickness. */
import type { SheetPanel, SheetPlanRequest, SheetStock } from '../../contract/boxes/box-sheets.ts'
import { DesignError, type FoundFault } from '../design-error.ts'
import { present } from '../present.ts'
import { listed, say } from '../say.ts'
import type { PieceKind } from './fill-sheet.ts'
import type { SheetKind } from './search-layout.ts'

/** Lengths inside a plan are whole hundredths of a millimetre. */
const perM = 100_000
export const toUnits = (lengthM: number): number => Math.round(lengthM * perM)
export const toM = (units: number): number => units / perM

export interface BoardGroup {
  readonly thicknessM: number
  readonly material?: string
  /** Rows of the request; kinds and sheetKinds run in the same order. */
  readonly panels: readonly SheetPanel[]
  readonly sheets: readonly SheetStock[]
  readonly kinds: readonly PieceKind[]
  readonly sheetKinds: readonly SheetKind[]
}

const sameBoard = (sheet: SheetStock, panel: SheetPanel) =>
  toUnits(sheet.thicknessM) === toUnits(panel.thicknessM) &&
  (panel.material === undefined || panel.material === sheet.material)

/** The material a panel is cut from, and the fault when that is not one. */
function boardOf(
  panel: SheetPanel,
  index: number,
  sheets: readonly SheetStock[]
): { key: string } | { fault: FoundFault } {
  const materials = new Set(sheets.filter(sheet => sameBoard(sheet, panel)).map(sheet => sheet.material))
  if (materials.size === 1) return { key: JSON.stringify([toUnits(panel.thicknessM), [...materials][0] ?? null]) }
  const board = `${toM(toUnits(panel.thicknessM)) * 1000} mm${panel.material === undefined ? '' : ` ${panel.material}`}`
  const detail =
    materials.size === 0
      ? say('refused.panel-needs-board-and-no-sheet', { name: panel.name, board })
      : say('refused.panel-names-no-material', {
          name: panel.name,
          board,
          materials: listed([...materials].map(name => name ?? say('refused.unnamed')))
        })
  return { fault: { field: `panels[${index}].${materials.size === 0 ? 'thicknessM' : 'material'}`, detail } }
}

/** How a panel may lie on a sheet: the grain of both must run the same way. */
function waysToLie(panel: SheetPanel, sheet: SheetStock): { readonly straight: boolean; readonly turned: boolean } {
  const sheetGrain = sheet.grain ?? 'length'
  const panelGrain = panel.grain ?? 'any'
  if (sheetGrain === 'none' || panelGrain === 'any') return { straight: true, turned: true }
  return { straight: sheetGrain === panelGrain, turned: sheetGrain !== panelGrain }
}

function pieceKind(panel: SheetPanel, sheet: SheetStock): PieceKind {
  const { straight, turned } = waysToLie(panel, sheet)
  const length = toUnits(panel.lengthM)
  const width = toUnits(panel.widthM)
  return { length, width, copies: panel.quantity, straight, turned: turned && (length !== width || !straight) }
}

const fits = ({ length, width, straight, turned }: PieceKind, sheet: SheetKind) =>
  (straight && length <= sheet.length && width <= sheet.width) ||
  (turned && width <= sheet.length && length <= sheet.width)

function tooLarge(panel: SheetPanel, field: string, sheet: SheetStock, trimM: number): FoundFault {
  const mm = (lengthM: number) => Math.round(lengthM * 1e5) / 100
  return {
    field,
    detail: say('refused.panel-mm-the-largest-offers-mm', {
      name: panel.name,
      lengthMm: mm(panel.lengthM),
      widthMm: mm(panel.widthM),
      why: sheet.grain === 'none' ? say('refused.panel-larger-than-any-sheet') : say('refused.panel-against-its-grain'),
      sheetLengthMm: mm(sheet.lengthM - 2 * trimM),
      sheetWidthMm: mm(sheet.widthM - 2 * trimM)
    })
  }
}

/** Sheets of one board share one grain, so that a panel lies the same way on each; a width-grained sheet is laid lengthwise. */
function laidAlongGrain(sheet: SheetStock): SheetStock {
  if (sheet.grain !== 'width') return sheet
  return { ...sheet, lengthM: sheet.widthM, widthM: sheet.lengthM, grain: 'length' }
}

/** @throws DesignError `no-solution`, `conflicting-input` */
export function boardGroups({ panels, sheets: given }: SheetPlanRequest, trimM: number): readonly BoardGroup[] {
  const sheets = given.map(laidAlongGrain)
  const boards = panels.map((panel, index) => boardOf(panel, index, sheets))
  const faults = boards.flatMap(board => ('fault' in board ? [board.fault] : []))
  const [first, ...others] = faults
  if (first !== undefined) {
    throw new DesignError(first.field.endsWith('material') ? 'missing-input' : 'no-solution', first, ...others)
  }
  const keys = [...new Set(boards.map(board => ('key' in board ? board.key : '')))]
  return keys.map(key => {
    const members = panels
      .map((panel, index) => ({ panel, index }))
      .filter((_, index) => {
        const board = boards[index]
        return board !== undefined && 'key' in board && board.key === key
      })
    return boardGroup(members, sheets, trimM)
  })
}

function boardGroup(
  members: readonly { panel: SheetPanel; index: number }[],
  all: readonly SheetStock[],
  trimM: number
): BoardGroup {
  const panels = members.map(({ panel }) => panel)
  const example = panels[0] as SheetPanel
  const sheets = all.filter(sheet => panels.every(panel => sameBoard(sheet, panel)))
  const grained = sheets.find(sheet => sheet.grain !== 'none') ?? (sheets[0] as SheetStock)
  const priced = sheets.every(sheet => sheet.price !== undefined && sheet.price > 0)
  const sheetKinds = sheets.map(sheet => ({
    length: toUnits(sheet.lengthM - 2 * trimM),
    width: toUnits(sheet.widthM - 2 * trimM),
    cost: priced ? (sheet.price as number) : sheet.lengthM * sheet.widthM,
    stock: sheet.quantity ?? Number.POSITIVE_INFINITY
  }))
  const kinds = panels.map(panel => pieceKind(panel, grained))
  const misfits = members.filter((_, index) => !sheetKinds.some(sheet => fits(kinds[index] as PieceKind, sheet)))
  const largest = sheets.reduce((a, b) => (b.lengthM * b.widthM > a.lengthM * a.widthM ? b : a))
  const [first, ...others] = misfits.map(({ panel, index }) =>
    tooLarge(panel, `panels[${index}].lengthM`, largest, trimM)
  )
  if (first !== undefined) throw new DesignError('no-solution', first, ...others)
  const material = example.material ?? sheets[0]?.material
  return {
    thicknessM: example.thicknessM,
    ...present({ material }),
    panels,
    sheets,
    kinds,
    sheetKinds
  }
}
