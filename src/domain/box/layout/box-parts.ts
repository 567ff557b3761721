/** Every part of a built box, finished: shell, port, braces; mouths and holes cut. */
import type { CutOut, Panel } from '../../../contract/boxes/panel.ts'
import { bounds } from '../../../numeric/geometry/polygon.ts'
import type { BoxTask } from '../request/box-task.ts'
import { boardFace } from '../shell/board-faces.ts'
import { moved } from '../shell/face.ts'
import { ledgePanel } from '../shell/ledges.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { slotPanels } from '../slot/slot-panels.ts'
import { mouthOn, type Opening } from '../slot/slot-port.ts'
import { finishPanel } from '../solids/finish-panels.ts'
import { holesOf, holesOn } from '../solids/mounting.ts'
import { braceParts } from '../stiffness/brace-parts.ts'
import type { BoxContents } from './box-contents.ts'
import type { BuiltBox } from './build-box.ts'

const size = (panel: BarePanel, along: 'uM' | 'vM') => Math.max(...panel.outline.map(point => point[along]))
const near = (a: number, b: number) => Math.abs(a - b) < 1e-6

/** Which part of a board a mouth takes in full: the edge that goes with it, and what is left. */
function leftOver(panel: BarePanel, mouth: Opening) {
  const [width, height] = [size(panel, 'uM'), size(panel, 'vM')]
  const [left, right] = [mouth.uM - mouth.widthM / 2, mouth.uM + mouth.widthM / 2]
  const [low, high] = [mouth.vM - mouth.heightM / 2, mouth.vM + mouth.heightM / 2]
  // The mouth is measured on the outer face, which may be shorter than the blank.
  const face = bounds(boardFace(panel, 'outer'))
  const acrossU = left < face.left + 1e-6 && right > face.right - 1e-6
  const acrossV = low < face.low + 1e-6 && high > face.high - 1e-6
  const whole = { fromU: 0, toU: width, fromV: 0, toV: height }
  if (acrossU && low < face.low + 1e-6) return { edge: 0, ...whole, fromV: high }
  if (acrossU && near(high, face.high)) return { edge: 2, ...whole, toV: low }
  if (acrossV && left < face.left + 1e-6) return { edge: 3, ...whole, fromU: right }
  if (acrossV && near(right, face.right)) return { edge: 1, ...whole, toU: left }
  return undefined
}

/**
 * A board whose mouth takes its whole lower, upper, left or right part simply ends there, sawn along the channel: at the tilt
 * of the edge that it loses. The mouth is that of the outer face; where the inner one is longer the blank is so much larger.
 */
function shortened(panel: BarePanel, mouth: Opening, flareM: number): BarePanel | undefined {
  const left = leftOver(panel, mouth)
  if (left === undefined) return undefined
  const { place, thicknessM } = panel
  const { edge, ...box } = left
  const lost = panel.edges.find(each => each.edge === edge)
  const tilt = lost !== undefined && lost.tiltDeg > 0 ? lost : undefined
  const more = tilt?.longFace === 'inner' ? thicknessM * Math.tan((tilt.tiltDeg * Math.PI) / 180) : 0
  const fromV = box.fromV - (edge === 0 ? more : 0)
  const fromU = box.fromU - (edge === 3 ? more : 0)
  const [u, v] = [box.toU + (edge === 1 ? more : 0) - fromU, box.toV + (edge === 2 ? more : 0) - fromV]
  const kept = panel.edges.filter(each => each.edge !== edge)
  const sawn = { edge, tiltDeg: tilt?.tiltDeg ?? 0, longFace: tilt?.longFace ?? ('equal' as const) }
  const along = flareM === 0 ? sawn : { ...sawn, roundingRadiusM: flareM }
  return {
    ...panel,
    outline: [
      { uM: 0, vM: 0 },
      { uM: u, vM: 0 },
      { uM: u, vM: v },
      { uM: 0, vM: v }
    ],
    edges: tilt === undefined && flareM === 0 ? kept : [...kept, along].toSorted((one, other) => one.edge - other.edge),
    place: { ...place, origin: moved(moved(place.origin, place.uAxis, fromU), place.vAxis, fromV) },
    volumeM3: panel.volumeM3 - mouth.widthM * mouth.heightM * thicknessM
  }
}

const notch = (mouth: Opening): CutOut => ({
  kind: 'rectangle',
  purpose: 'port',
  label: 'port mouth',
  cornerRadiusM: 0,
  ...mouth
})

/** A front board with the mouth of a slot: shorter, or notched where it covers the sides. */
function withMouth(
  panel: BarePanel,
  built: BuiltBox
): { readonly panel: BarePanel; readonly holes: readonly CutOut[] } {
  if (built.port?.kind !== 'slot' || panel.role !== 'front') return { panel, holes: [] }
  const mouth = mouthOn(built.port, panel)
  const flareM = panel.layer === 0 ? built.port.space.flareM : 0
  const cut = shortened(panel, mouth, flareM)
  const hole = flareM === 0 ? notch(mouth) : { ...notch(mouth), roundingRadiusM: flareM }
  return cut === undefined ? { panel, holes: [hole] } : { panel: cut, holes: [] }
}

/** One by one, before equal parts are gathered. */
export function boxParts(built: BuiltBox, resolved: BoxTask, { standing, braces }: BoxContents): readonly Panel[] {
  const { board } = resolved
  const { cup } = standing
  const shell = built.panels.map(bare => {
    const faces = built.mounted.filter(({ face }) =>
      built.panels.some(outer => outer.place === face.place && outer.wall === bare.wall)
    )
    const { panel, holes } = withMouth(bare, built)
    const cups =
      cup !== undefined && cup.panel.wall === bare.wall && bare.wall !== 'inside'
        ? holesOn(panel, cup.face, [cup.hole])
        : []
    return finishPanel(panel, board, [
      ...holes,
      ...cups,
      ...faces.flatMap(each => holesOn(panel, each.face, holesOf(each)))
    ])
  })
  const port = built.port?.kind === 'slot' ? slotPanels(built.port).map(bare => finishPanel(bare, board, [])) : []
  const ledges = (built.ledges ?? []).map(each => finishPanel(ledgePanel(each, resolved.fixed.thicknessM), board, []))
  return [...shell, ...port, ...ledges, ...braceParts(braces, built.inside, resolved)]
}
