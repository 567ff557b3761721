/** Frames and battens as parts of the cut list and as bodies. */
import type { Panel, PanelPlace } from '../../../contract/boxes/panel.ts'
import { cross, plus } from '../../../numeric/geometry/convex-distance.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Inside } from '../shell/face.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import type { Body } from '../solids/bodies.ts'
import { finishPanel } from '../solids/finish-panels.ts'
import { BATTEN_HEIGHT_M, type Batten, battenBody, battenLengthM } from './batten-places.ts'
import { frameBodies } from './brace-bodies.ts'
import type { PlacedBraces } from './brace-plan.ts'
import { type Frame, framePanel } from './brace-windows.ts'

/** Glued with its narrow side to the face: u along the batten, v away from the face. */
function placeOf({ block: { middle, halves } }: Batten): PanelPlace {
  const [along, across, inwards] = halves as [Half, Half, Half]
  const outwards = cross(along.along, inwards.along)
  const corner = [
    { along: along.along, half: -along.half },
    { along: inwards.along, half: -inwards.half },
    { along: outwards, half: across.half }
  ].reduce((point, { along: way, half }) => plus(point, way, half), middle)
  const origin = { xM: corner.x, yM: corner.y, zM: corner.z }
  return { origin, uAxis: along.along, vAxis: inwards.along }
}
type Half = Batten['block']['halves'][number]

function battenPart(name: string, batten: Batten, { fixed, board }: BoxTask): Panel {
  const length = battenLengthM(batten)
  const bare: BarePanel = {
    name,
    role: 'brace',
    wall: 'inside',
    layer: 0,
    thicknessM: fixed.thicknessM,
    outline: [
      { uM: 0, vM: 0 },
      { uM: length, vM: 0 },
      { uM: length, vM: BATTEN_HEIGHT_M },
      { uM: 0, vM: BATTEN_HEIGHT_M }
    ],
    edges: [],
    place: placeOf(batten),
    volumeM3: length * BATTEN_HEIGHT_M * fixed.thicknessM
  }
  return finishPanel(bare, board, [])
}

/** Frames of two chambers bear the same number. */
function frameNames(frames: readonly Frame[]): readonly string[] {
  const places = [...new Set(frames.map(({ placeM }) => placeM))]
  const isParted = frames.some(({ chamber }) => chamber === 'front')
  return frames.map(({ placeM, chamber }) => {
    const number = `brace ${places.indexOf(placeM) + 1}`
    return isParted ? `${number}, ${chamber} chamber` : number
  })
}

const battensOf = ({ faces }: PlacedBraces) =>
  faces.flatMap(({ face, spans }) => {
    const all = spans.flatMap(({ battens }) => battens)
    return all.map((batten, i) => ({
      batten,
      on: face.name,
      name: `batten, ${face.name}${all.length > 1 ? ` ${i + 1}` : ''}`
    }))
  })

export function braceParts(braces: PlacedBraces, inside: Inside, resolved: BoxTask): readonly Panel[] {
  const { fixed, board } = resolved
  const names = frameNames(braces.frames)
  const frames = braces.frames.map((frame, i) => {
    const { panel, holes } = framePanel(inside, frame, fixed.thicknessM, names[i] ?? 'brace')
    return finishPanel(panel, board, holes)
  })
  return [...frames, ...battensOf(braces).map(({ name, batten }) => battenPart(name, batten, resolved))]
}

export function braceBodies(braces: PlacedBraces, inside: Inside, { fixed }: BoxTask): readonly Body[] {
  const names = frameNames(braces.frames)
  return [
    ...braces.frames.map((frame, i) => frameBodies(inside, frame, fixed.thicknessM, names[i] ?? 'brace')),
    ...battensOf(braces).map(({ name, on, batten }) => ({ ...battenBody(batten, name), on }))
  ]
}
