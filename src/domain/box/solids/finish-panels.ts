/** Bare panels with their cut-outs, material and mass; parts that are alike become one row. */

import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { CutOut, Panel } from '../../../contract/boxes/panel.ts'
import { signedArea } from '../../../numeric/geometry/polygon.ts'
import type { BoardProperties } from '../../material/board-properties.ts'
import { blankOf } from '../shell/board-faces.ts'
import type { BarePanel } from '../shell/shell-panels.ts'

/** A nanometre is no wood; it keeps 260 mm from reading 259.99999999999994. */
const clean = (metres: number) => Math.round(metres * 1e9) / 1e9

const extent = (outline: readonly PanelPoint[], along: 'uM' | 'vM') => {
  const values = outline.map(point => point[along])
  return Math.max(...values) - Math.min(...values)
}

function cutArea({ kind, diameterM = 0, widthM = 0, heightM = 0 }: CutOut): number {
  return kind === 'circle' ? (Math.PI / 4) * diameterM ** 2 : widthM * heightM
}

/** Wood taken out of a board: right through, or to the depth of a rebate less the hole inside it. */
export function cutVolume(cutOuts: readonly CutOut[], thicknessM: number): number {
  return cutOuts.reduce((sum, cut) => {
    if (cut.rebateDepthM === undefined) return sum + cutArea(cut) * thicknessM
    const hole = cutOuts.find(other => other.rebateDepthM === undefined && other.label === cut.label)
    return sum + (cutArea(cut) - (hole === undefined ? 0 : cutArea(hole))) * Math.min(cut.rebateDepthM, thicknessM)
  }, 0)
}

export function finishPanel(bare: BarePanel, board: BoardProperties, cutOuts: readonly CutOut[]): Panel {
  const outline = bare.outline.map(({ uM, vM }) => ({ uM: clean(uM), vM: clean(vM) }))
  const [alongU, alongV] = [clean(extent(outline, 'uM')), clean(extent(outline, 'vM'))]
  return {
    name: bare.name,
    role: bare.role,
    quantity: 1,
    material: board.material,
    lengthM: Math.max(alongU, alongV),
    widthM: Math.min(alongU, alongV),
    thicknessM: bare.thicknessM,
    lengthAlong: alongU >= alongV ? 'u' : 'v',
    grain: board.grained ? 'length' : 'any',
    outline,
    edges: bare.edges,
    cutOuts: cutOuts.map(cut => ({ ...cut, uM: clean(cut.uM), vM: clean(cut.vM) })),
    massKg: Math.max(0, bare.volumeM3 - cutVolume(cutOuts, bare.thicknessM)) * board.densityKgPerM3,
    place: bare.place
  }
}

/** Area of the blank as the sheet plan sees it [m²]. */
export const blankArea = (panel: Panel) => signedArea(blankOf(panel))

/**
 * Same to a hundredth of a millimetre, so that rounding dust does not split a row. Arrises are rounded after assembly:
 * boards that differ in them alone are sawn alike.
 */
function likeness({ role, thicknessM, outline, edges: all, cutOuts }: Panel): string {
  const edges = all.flatMap(({ roundingRadiusM: _, ...edge }) => (edge.tiltDeg > 0 ? [edge] : []))
  const rounded = (value: unknown): unknown => (typeof value === 'number' ? Math.round(value * 1e5) : value)
  const points = role === 'side' && edges.length === 0 && cutOuts.length === 0 ? sizesOnly(outline) : outline
  return JSON.stringify([role, thicknessM, points, edges, cutOuts], (_, value) => rounded(value))
}

/** A plain side turned over is the other side: edge lengths in order from the longest, either way round. */
function sizesOnly(outline: readonly PanelPoint[]): readonly number[] {
  const lengths = outline.map((point, i) => {
    const next = outline[(i + 1) % outline.length] ?? point
    return Math.round(Math.hypot(next.uM - point.uM, next.vM - point.vM) * 1e5) / 1e5
  })
  return lengths.toSorted((a, b) => a - b)
}

/** Staves that no saw tells apart: size to a tenth of a millimetre, tilt to a tenth of a degree. */
function staveLikeness({ thicknessM, lengthM, widthM, outline, edges, cutOuts, name }: Panel): string {
  if (cutOuts.length > 0 || outline.length !== 4) return name
  const tilts = edges.map(({ edge, tiltDeg, longFace }) => [edge, Math.round(tiltDeg * 10), longFace])
  return JSON.stringify(['wall', thicknessM, Math.round(lengthM * 1e4), Math.round(widthM * 1e4), tilts])
}

const isBatten = ({ role, name }: Panel) => role === 'brace' && name.startsWith('batten')

/** `batten, back` of `batten, back 2`. */
const faceName = ({ name }: Panel) => name.replace(/ \d+$/, '')
const numberOf = ({ name }: Panel) => /\d+$/.exec(name)?.[0] ?? ''

const layerNames = ['outer', 'inner', 'innermost']

/** Equal parts in one row; what differs keeps a name of its own. */
export function gathered(panels: readonly Panel[]): readonly Panel[] {
  const groups = new Map<string, Panel[]>()
  for (const panel of panels) {
    const isSheet = panel.role === 'side' || panel.role === 'front'
    const key = isBatten(panel)
      ? `${faceName(panel)} ${likeness(panel)}`
      : isSheet
        ? likeness(panel)
        : panel.role === 'wall'
          ? staveLikeness(panel)
          : panel.name
    groups.set(key, [...(groups.get(key) ?? []), panel])
  }
  const rows = [...groups.values()]
  return rows.map(group => {
    const [first] = group as [Panel]
    const copies = group.flatMap(each => each.copies ?? [])
    const name = rowName(first, group, rows)
    return { ...first, name, quantity: group.length, ...(copies.length === 0 ? {} : { copies }) }
  })
}

/** What a row of equal parts is called among the rows. */
function rowName(first: Panel, group: readonly Panel[], rows: readonly (readonly Panel[])[]): string {
  const { role, name } = first
  if (isBatten(first) && group.length > 1)
    return `${faceName(first)} ${numberOf(first)}–${numberOf(group.at(-1) as Panel)}`
  const alike = rows.filter(other => other[0]?.role === role)
  if (role === 'side' && name !== 'top' && name !== 'bottom') return alike.length === 1 ? 'side' : `side ${name}`
  if (role === 'front' && alike.length > 1) {
    const number = alike.indexOf(group)
    return `front ${layerNames[number] ?? number + 1}`
  }
  return role === 'wall' && alike.length === 1 ? 'wall' : name
}
