/** How many sheets a short search needs, for choosing among boxes that differ by millimetres; the cut plan proper searches on. */
import type { SheetPlanRequest } from '../../contract/boxes/box-sheets.ts'
import { randomStream } from '../../numeric/random-stream.ts'
import { type BoardGroup, boardGroups, toUnits } from './board-group.ts'
import { sheetDefaults } from './defaults.ts'
import { searchLayout } from './search-layout.ts'
import { sheetBound } from './sheet-bound.ts'

export interface QuickCount {
  readonly sheetCount: number
  /** Share of the emptiest sheet that becomes panels. */
  readonly leastUsedShare: number
  /** Sheets that panels with their kerfs fill by area alone, summed over the boards. */
  readonly areaSheets: number
}

/** Placements weighed for one board: a millisecond or two, and some ten of them. The cut plan proper weighs eight millions. */
const WORK = { glance: 1.5e5, look: 1.2e6 } as const

interface Care {
  readonly work: keyof typeof WORK
  readonly evenly: boolean
}

function counted({ kinds, sheetKinds: sheets }: BoardGroup, kerf: number, { work, evenly }: Care): QuickCount {
  const bound = sheetBound(kinds, sheets, kerf)
  const task = { kinds, sheets, kerf, random: randomStream(1), work: WORK[work], evenly }
  const found = searchLayout(task, bound.leastCost)
  const shares = found.sheets.map(({ sheet, fill }) => {
    const { length = 1, width = 1 } = sheets[sheet] ?? {}
    return fill.area / (length * width)
  })
  const isWhole = found.missing.every(count => count === 0)
  return {
    sheetCount: isWhole ? found.sheets.length : Number.POSITIVE_INFINITY,
    leastUsedShare: Math.min(1, ...shares),
    areaSheets: bound.areaSheets
  }
}

/**
 * @param care  a glance, or a look where much hangs on the count; `evenly` where the share of the emptiest sheet is asked for
 * @returns never fewer sheets than some plan needs, since each is a plan that was found
 * @throws DesignError as `nestPanels`
 */
export function quickSheetCount(request: SheetPlanRequest, care: Care): QuickCount {
  const kerf = toUnits(request.kerfM ?? sheetDefaults.kerfM.value)
  const groups = boardGroups(request, request.trimM ?? sheetDefaults.trimM.value)
  const counts = groups.map(group => counted(group, kerf, care))
  return {
    sheetCount: counts.reduce((sum, each) => sum + each.sheetCount, 0),
    leastUsedShare: Math.min(1, ...counts.map(each => each.leastUsedShare)),
    areaSheets: counts.reduce((sum, each) => sum + each.areaSheets, 0)
  }
}
