/** Other proportions, near those chosen, of the same air: where the last sheet is nearly empty one of them may do without it. */
import type { BoxRequest } from '../../contract/boxes/box-panels.ts'
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { layOutBox } from '../../domain/box/layout/lay-out-box.ts'
import { type QuickCount, quickSheetCount } from '../../domain/sheet/quick-count.ts'
import type { BoxBrief } from '../request/box-brief.ts'
import { onSawStep } from '../request/plan-imperial.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import { type BoxPart, clears } from './parts/plan-box.ts'
import { sheetRequest } from './parts/plan-sheets.ts'

type Done = BoxPart & { readonly done: true }

/** A box on fewer sheets than the one it stands for. */
export interface SheetSaving {
  readonly instead: BoxLayout['outer']
  readonly sheets: number
  readonly sheetsInstead: number
}

const WAYS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1]
] as const

type SheetBrief = Pick<BoxBrief, 'space' | 'board' | 'sawStepM' | 'run'>

interface Move {
  readonly widthM: number
  readonly heightM: number
  readonly depthM: number
}

/** Depth that keeps the product of the inner sizes. */
function moveOf({ inner }: BoxLayout, widthM: number, heightM: number): Move {
  const share = (1 + widthM / inner.widthM) * (1 + heightM / inner.heightM)
  return { widthM, heightM, depthM: inner.depthM * (1 / share - 1) }
}

/** What a panel becomes when the box changes by a move: each side follows the sizes it runs along. Walls of a slot stay, by guess. */
function movedPanel(panel: Panel, { widthM, heightM, depthM }: Move): Panel {
  const { place, role, lengthAlong, lengthM, widthM: acrossM } = panel
  if (place === undefined || role === 'port-wall') return panel
  const grown = ({ x, y, z }: typeof place.uAxis) => Math.abs(x) * widthM + Math.abs(y) * depthM + Math.abs(z) * heightM
  const [alongU, alongV] = [grown(place.uAxis), grown(place.vAxis)]
  const [long, across] = lengthAlong === 'u' ? [alongU, alongV] : [alongV, alongU]
  return { ...panel, lengthM: lengthM + long, widthM: acrossM + across }
}

/** Whether its last sheet is nearly empty, and what else is cut could fit the others. */
const worthTrying = ({ sheetCount, leastUsedShare, areaSheets }: QuickCount) =>
  sheetCount > 1 &&
  leastUsedShare < enclosurePlanDefaults.nearlyEmptyShare.value &&
  areaSheets <= enclosurePlanDefaults.fullestShare.value * (sheetCount - 1)

function fitsSpace({ space: asked }: Pick<BoxBrief, 'space'>, { outer }: BoxLayout, move: Move): boolean {
  const { coveringM = 0, clearanceM = 0, ...space } = asked
  return (['widthM', 'heightM', 'depthM'] as const).every(size => {
    const most = space[size]
    return most === undefined || outer[size] + move[size] + 2 * (coveringM + clearanceM) <= most + 1e-9
  })
}

/** Where only the count matters. */
const GLANCE = { work: 'glance', evenly: false } as const

/** Moves after which the panels, as far as can be told without laying the box out, come from fewer sheets. */
function* likelyMoves(brief: SheetBrief, layout: BoxLayout, sheetCount: number): Generator<Move> {
  const { ringsM, narrowM } = enclosurePlanDefaults
  const mostM = brief.space.strategy === undefined ? Infinity : narrowM.value
  const rings = ringsM.value.filter(ringM => ringM <= mostM)
  for (const ringM of rings.map(each => onSawStep(brief, each))) {
    for (const [across, up] of WAYS) {
      const move = moveOf(layout, across * ringM, up * ringM)
      if (!fitsSpace(brief, layout, move)) continue
      const panels = layout.panels.map(panel => movedPanel(panel, move))
      if (quickSheetCount(sheetRequest(brief, panels), GLANCE).sheetCount < sheetCount) yield move
    }
  }
}

const worriesOf = ({ outcome }: Done) =>
  new Set(outcome.cautions.filter(({ level }) => level !== 'note').map(({ code }) => code))

/** No worse a box: the same air, everything clear, no face that passed fails, nothing new to take care of. */
function isNoWorse(other: Done, box: Done): boolean {
  const [next, now] = [other.outcome.result, box.outcome.result]
  if (!clears(other) || Math.abs(next.volume.errorPercent ?? 0) > 100 * enclosurePlanDefaults.sameAirShare.value)
    return false
  const failing = (layout: BoxLayout) => layout.vibration.faces.filter(({ passes }) => !passes).length
  const known = worriesOf(box)
  return failing(next) <= failing(now) && [...worriesOf(other)].every(code => known.has(code))
}

function remade({ run }: SheetBrief, { request, outcome }: Done, { widthM, heightM }: Move): BoxPart {
  const { outer } = outcome.result
  const sizes = { ...request.outer, widthM: outer.widthM + widthM, heightM: outer.heightM + heightM }
  return run<BoxRequest, BoxLayout>({ ...request, outer: sizes }, layOutBox)
}

interface BoxOnSheets {
  readonly box: BoxPart
  readonly saving?: SheetSaving
}

const sheetsOf = (brief: SheetBrief, { outcome }: Done): number =>
  quickSheetCount(sheetRequest(brief, outcome.result.panels), { work: 'look', evenly: false }).sheetCount

/** Further the way of a move after which something touched, it touches too. */
const isBeyond = (move: Move, blocked: Move) =>
  Math.sign(move.widthM) === Math.sign(blocked.widthM) &&
  Math.sign(move.heightM) === Math.sign(blocked.heightM) &&
  Math.abs(move.widthM) >= Math.abs(blocked.widthM) &&
  Math.abs(move.heightM) >= Math.abs(blocked.heightM)

/** The box itself, or one of other proportions that is no worse and needs a sheet less. */
export function onFewerSheets(brief: SheetBrief, box: BoxPart): BoxOnSheets {
  if (!box.done) return { box }
  const layout = box.outcome.result
  const quick = quickSheetCount(sheetRequest(brief, layout.panels), { work: 'glance', evenly: true })
  if (!worthTrying(quick)) return { box }
  const blocked: Move[] = []
  let laidOut = 0
  for (const move of likelyMoves(brief, layout, quick.sheetCount)) {
    if (blocked.some(each => isBeyond(move, each))) continue
    if (laidOut++ >= enclosurePlanDefaults.mostLaidOut.value) break
    const other = remade(brief, box, move)
    if (other.done && !clears(other)) blocked.push(move)
    if (!other.done || !isNoWorse(other, box) || !isLess(brief, other, quick)) continue
    const [sheets, sheetsInstead] = [sheetsOf(brief, other), sheetsOf(brief, box)]
    // What a short search could not lay on fewer sheets a longer one may: then nothing is to be saved.
    if (sheets >= sheetsInstead) return { box }
    return { box: other, saving: { instead: layout.outer, sheets, sheetsInstead } }
  }
  return { box }
}

/** Counted on its own panels: a move only foretold them. */
const isLess = (brief: SheetBrief, { outcome }: Done, { sheetCount }: QuickCount) =>
  quickSheetCount(sheetRequest(brief, outcome.result.panels), { work: 'glance', evenly: true }).sheetCount < sheetCount
