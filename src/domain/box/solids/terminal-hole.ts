/** The hole for the terminal cup. */
import type { BoxFittings, PlaceOnPanel } from '../../../contract/boxes/box-hardware.ts'
import type { CutOut } from '../../../contract/boxes/panel.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import { plus } from '../../../numeric/geometry/convex-distance.ts'
import { bounds, centroid, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { insideDistance } from '../../../numeric/geometry/polygon-distance.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { USUAL_CUP_M, USUAL_CUP_M3 } from '../request/usual-cup.ts'
import { type Face, findFace, inFrame, moved, onFace } from '../shell/face.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { unmirrored } from '../slot/slot-plane.ts'
import type { Body } from './bodies.ts'
import { bodyGap } from './body-pairs.ts'
import { type Gap, gap, type RoomRule } from './clearances.ts'
import type { FittedBox } from './fitted-box.ts'
import { block, drum, toDirection, toVector } from './solids.ts'

type Terminal = NonNullable<BoxFittings['terminal']>

export interface TerminalHole {
  readonly face: Face
  readonly panel: BarePanel
  readonly hole: CutOut
  /** From the rim of the hole to the edge of the free panel, and to the next hole [m]; negative where it crosses them. */
  readonly edgeM: number
  readonly webM: number
}

const CUP = 'terminal cup'

const rules = {
  edge: { needM: 20e-3, why: 'room.cup-screws' },
  hole: { needM: 40e-3, why: 'room.web' }
} as const satisfies Readonly<Record<string, RoomRule>>

function outline({ cutOutDiameterM, cutOutWidthM, cutOutHeightM }: Terminal) {
  if (cutOutWidthM === undefined && cutOutHeightM === undefined) {
    const diameterM = cutOutDiameterM ?? USUAL_CUP_M
    return { shape: { kind: 'circle' as const, diameterM }, half: { u: diameterM / 2, v: diameterM / 2 } }
  }
  if (cutOutDiameterM !== undefined || cutOutWidthM === undefined || cutOutHeightM === undefined) {
    throw new DesignError(cutOutDiameterM === undefined ? 'missing-input' : 'conflicting-input', {
      field: 'fittings.terminal',
      detail: say('refused.give-the-diameter-of-a-round')
    })
  }
  return {
    shape: { kind: 'rectangle' as const, widthM: cutOutWidthM, heightM: cutOutHeightM },
    half: { u: cutOutWidthM / 2, v: cutOutHeightM / 2 }
  }
}

/** Depth of the cup behind the inner face of its panel [m]. */
function cupDepth({ diameterM, widthM = 0, heightM = 0 }: CutOut, terminal: Terminal = {}): number {
  const areaM2 = diameterM === undefined ? widthM * heightM : (Math.PI / 4) * diameterM ** 2
  return (terminal.volumeM3 ?? USUAL_CUP_M3) / areaM2
}

/** The cup behind its hole, as deep as its volume makes it. */
export function cupBody(face: Face, hole: CutOut, terminal: Terminal | undefined): readonly Body[] {
  const depthM = cupDepth(hole, terminal)
  if (!(depthM > 0)) return []
  const at = onFace(face.place, hole)
  const along = toDirection(face.inwards)
  const start = toVector(moved(at, face.inwards, face.thicknessM))
  const end = toVector(moved(at, face.inwards, face.thicknessM + depthM))
  const { diameterM, widthM = 0, heightM = 0 } = hole
  const name = 'terminal cup'
  if (diameterM === undefined) {
    const halves = [
      { along: toDirection(face.place.uAxis), half: widthM / 2 },
      { along: toDirection(face.place.vAxis), half: heightM / 2 },
      { along, half: depthM / 2 }
    ]
    const middle = plus(start, along, depthM / 2)
    const pieces = [{ solid: block(middle, halves) }]
    return [{ name, kind: 'cup', pieces, shape: { kind: 'block', middle, halves }, inwards: along, on: face.name }]
  }
  const radius = diameterM / 2
  const outline = [0, depthM].map(depth => ({ along: depth, radius }))
  const closed = [{ along: 0, radius: 0 }, ...outline, { along: depthM, radius: 0 }]
  const shape = { kind: 'turned', centre: start, along, outline: closed, isClosed: false } as const
  return [
    {
      name,
      kind: 'cup',
      pieces: [{ solid: drum({ centre: start, along, radius }, { centre: end, along, radius }) }],
      shape,
      inwards: along,
      on: face.name
    }
  ]
}

/** Where the slot leaves the panel: the stretch between the end of the slot and the other edge. */
function freeHeight({ port, inside }: FittedBox, clear: Polygon, panel: BarePanel): readonly [number, number] {
  const { low, high } = bounds(clear)
  if (port?.kind !== 'slot' || port.space.placed.axis !== inside.shell.axis || inside.shell.axis !== 'x')
    return [low, high]
  const { x, y } = unmirrored(port.space.placed, port.run.mouth)
  const end = inFrame(panel.place, { xM: 0, yM: x, zM: y }).vM
  if (port.run.legs < 2 || end <= low || end >= high) return [low, high]
  return port.space.placed.isMirrored ? [low, end] : [end, high]
}

/** Shares of the free width and height at which a cup without a given centre is tried, the middle first. */
const tryShares = [0.5, 0.25, 0.75, 0.15, 0.85]

function roomAt(built: FittedBox, face: Face, centre: PlaceOnPanel, half: { readonly u: number; readonly v: number }) {
  const corners = [-1, 1].flatMap(i => [-1, 1].map(k => ({ x: centre.uM + i * half.u, y: centre.vM + k * half.v })))
  const isRound = half.u === half.v
  const edgeM = isRound
    ? insideDistance(face.clear, { x: centre.uM, y: centre.vM }) - half.u
    : Math.min(...corners.map(corner => insideDistance(face.clear, corner)))
  const gaps = built.mounted
    .filter(each => each.face.place === face.place)
    .map(each => {
      const radius = (each.kind === 'driver' ? (each.driver.cutOutDiameterM ?? 0) : each.widestM) / 2
      const [du, dv] = [Math.abs(each.centre.uM - centre.uM), Math.abs(each.centre.vM - centre.vM)]
      const apart = isRound ? Math.hypot(du, dv) - half.u : toRectangle(du, dv, half)
      return apart - radius
    })
  return { edgeM, webM: Math.min(Number.POSITIVE_INFINITY, ...gaps) }
}

/** From a point to a rectangle about the origin; negative inside. */
function toRectangle(du: number, dv: number, { u, v }: { readonly u: number; readonly v: number }): number {
  const [a, b] = [du - u, dv - v]
  return a < 0 && b < 0 ? Math.max(a, b) : Math.hypot(Math.max(0, a), Math.max(0, b))
}

/** Where a cup goes that nobody gives a face: a prism has no back, and its lid may be full. */
const usualFaces = { upright: ['back'], standing: ['top', 'front'] } as const

/**
 * On the back, of a prism on the lid or else the front, or where asked. Without a centre: the middle first, then wherever the wood
 * round the hole suffices and the cup stands clear of what is behind the panel; where no place has both, the one that lacks least.
 *
 * @param inside  what stands in the box already
 */
export function terminalHole(
  built: FittedBox,
  terminal: Terminal | undefined,
  inside: readonly Body[]
): TerminalHole | undefined {
  if (terminal === undefined) return undefined
  const usual = built.inside.shell.axis === 'z' ? usualFaces.standing : usualFaces.upright
  const names: readonly FaceName[] = terminal.face === undefined ? usual : [terminal.face]
  let best: Found | undefined
  for (const name of names) {
    const face = findFace(built.inside, built.panels, name, 'fittings.terminal.face')
    best = holeOn(built, face, { terminal, inside, best })
    if (best?.lacksM === 0) break
  }
  return best?.found
}

interface Found {
  readonly found: TerminalHole
  readonly lacksM: number
}

/** The first place on a face that lacks nothing, else the one of all so far that lacks least. */
function holeOn(
  built: FittedBox,
  face: Face,
  asked: { readonly terminal: Terminal; readonly inside: readonly Body[]; readonly best: Found | undefined }
): Found | undefined {
  const { terminal, inside } = asked
  const { shape, half } = outline(terminal)
  const panel = built.panels.find(({ place }) => place === face.place)
  if (panel === undefined) return asked.best
  const holeAt = (centre: PlaceOnPanel): CutOut => ({ purpose: 'terminal', label: CUP, ...centre, ...shape })
  let { best } = asked
  for (const centre of terminal.centre === undefined ? places(built, face, panel) : [terminal.centre]) {
    const found = { face, panel, hole: holeAt(centre), ...roomAt(built, face, centre, half) }
    const onPanelM = -Math.min(0, found.edgeM - rules.edge.needM, found.webM - rules.hole.needM)
    const lacksM = lackBeside(inside, cupBody(face, found.hole, terminal), onPanelM, best?.lacksM)
    if (lacksM === 0) return { found, lacksM }
    if (best === undefined || lacksM < best.lacksM) best = { found, lacksM }
  }
  return best
}

/** What the cup lacks, on its panel or in the box; no further than to know that another place lacks no more. */
function lackBeside(
  inside: readonly Body[],
  cups: readonly Body[],
  onPanelM: number,
  enoughM = Number.POSITIVE_INFINITY
): number {
  let lacksM = onPanelM
  for (const cup of cups) {
    for (const body of inside) {
      if (lacksM >= enoughM) return lacksM
      lacksM = Math.max(lacksM, -bodyGap(cup, body, 0))
    }
  }
  return lacksM
}

/** Centres at which a cup is tried on the part of a panel that the slot leaves free. */
function places(built: FittedBox, { clear }: Face, panel: BarePanel): readonly PlaceOnPanel[] {
  const { left, width } = bounds(clear)
  const [low, high] = freeHeight(built, clear, panel)
  const middle = centroid(clear)
  const tried = tryShares.flatMap(v => tryShares.map(u => ({ uM: left + u * width, vM: low + v * (high - low) })))
  return [{ uM: middle.x, vM: clear.length === 4 ? (low + high) / 2 : middle.y }, ...tried]
}

/** Rows only where something is too near. */
export function cupGaps(cup: TerminalHole | undefined): readonly Gap[] {
  if (cup === undefined) return []
  return [
    gap('clearance.hole-to-edge', [{ name: CUP }], cup.edgeM, rules.edge),
    gap('clearance.hole-web', [{ name: CUP }], cup.webM, rules.hole)
  ].filter(({ passes }) => !passes)
}
