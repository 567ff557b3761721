/** The hole for the terminal cup. */
import { centroid } from '../../numeric/polygon.ts'
import { insideDistance } from '../../numeric/polygon-distance.ts'
import { type Caution, caution } from '../caution.ts'
import { DesignError } from '../design-error.ts'
import type { BoxFittings } from './box-request.ts'
import type { BuiltBox } from './build-box.ts'
import { findFace, inFrame, onFace } from './face.ts'
import type { CutOut } from './panel.ts'
import type { BarePanel } from './shell-panels.ts'
import { unmirrored } from './slot-plane.ts'

type Terminal = NonNullable<BoxFittings['terminal']>

interface TerminalHole {
  readonly panel: BarePanel
  readonly hole: CutOut
  /** From the rim of the hole to the nearest edge of the free panel [m]; negative when it crosses it. */
  readonly edgeM: number
}

/** A cup keeps this much wood round it [m]. */
const WEB_M = 40e-3

function outline({ cutOutDiameterM, cutOutWidthM, cutOutHeightM }: Terminal) {
  if (cutOutDiameterM !== undefined)
    return { shape: { kind: 'circle' as const, diameterM: cutOutDiameterM }, radiusM: cutOutDiameterM / 2 }
  if (cutOutWidthM === undefined && cutOutHeightM === undefined) return undefined
  if (cutOutWidthM === undefined || cutOutHeightM === undefined) {
    throw new DesignError('missing-input', {
      field: 'fittings.terminal',
      detail: 'A rectangular cut-out needs both its width and its height.'
    })
  }
  return {
    shape: { kind: 'rectangle' as const, widthM: cutOutWidthM, heightM: cutOutHeightM },
    radiusM: Math.hypot(cutOutWidthM, cutOutHeightM) / 2
  }
}

/** Where the slot leaves the panel: the middle between the end of the slot and the other edge. */
function freeMiddle({ port, inside }: BuiltBox, clear: readonly { x: number; y: number }[], panel: BarePanel) {
  const middle = centroid(clear)
  if (port?.kind !== 'slot' || port.space.placed.axis !== inside.shell.axis || inside.shell.axis !== 'x') return middle
  const { x, y } = unmirrored(port.space.placed, port.run.mouth)
  const end = inFrame(panel.place, { xM: 0, yM: x, zM: y }).vM
  const [low, high] = [Math.min(...clear.map(p => p.y)), Math.max(...clear.map(p => p.y))]
  if (port.run.legs < 2 || end <= low || end >= high) return middle
  return { x: middle.x, y: port.space.placed.isMirrored ? (low + end) / 2 : (end + high) / 2 }
}

/** On the back, or where asked; in the middle of what is free there when no centre is given. */
export function terminalHole(built: BuiltBox, terminal: Terminal | undefined): TerminalHole | undefined {
  const cut = terminal === undefined ? undefined : outline(terminal)
  if (terminal === undefined || cut === undefined) return undefined
  const prism = built.inside.shell.axis === 'z'
  const face = findFace(built.inside, built.panels, terminal.face ?? (prism ? 'top' : 'back'), 'fittings.terminal.face')
  const panel = built.panels.find(({ place }) => place === face.place)
  if (panel === undefined) return undefined
  const { x, y } = freeMiddle(built, face.clear, panel)
  const centre = terminal.centre ?? { uM: x, vM: y }
  const nearest = built.mounted
    .filter(each => each.face.place === face.place)
    .map(each => {
      const there = inFrame(face.place, onFace(face.place, each.centre))
      const radius = (each.kind === 'driver' ? (each.driver.cutOutDiameterM ?? 0) : each.outerDiameterM) / 2
      return Math.hypot(there.uM - centre.uM, there.vM - centre.vM) - radius
    })
  const edge = insideDistance(face.clear, { x: centre.uM, y: centre.vM })
  return {
    panel,
    hole: { purpose: 'terminal', label: 'terminal cup', ...centre, ...cut.shape },
    edgeM: Math.min(edge, ...nearest) - cut.radiusM
  }
}

export function terminalCautions(hole: TerminalHole | undefined): readonly Caution[] {
  if (hole === undefined || hole.edgeM >= WEB_M) return []
  return [
    caution(
      'box-clearance',
      `The terminal cup keeps ${Math.round(hole.edgeM * 1e3)} mm of wood to the next edge or hole; ${WEB_M * 1e3} mm are wanted.`,
      { at: 'fittings.terminal', figures: { availableMm: hole.edgeM * 1e3, neededMm: WEB_M * 1e3 } }
    )
  ]
}
