/** Frames and battens as parts of the cut list and as bodies. */
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Inside } from '../shell/face.ts'
import type { Body } from '../solids/bodies.ts'
import { finishPanel } from '../solids/finish-panels.ts'
import { BATTEN_HEIGHT_M, battenBody, battenLengthM } from './batten-places.ts'
import { frameBodies } from './brace-bodies.ts'
import type { PlacedBraces } from './brace-plan.ts'
import { type Frame, framePanel } from './brace-windows.ts'

function batten(name: string, length: number, { fixed, board }: BoxTask): Panel {
  return {
    name,
    role: 'brace',
    quantity: 1,
    material: board.material,
    lengthM: Math.max(length, BATTEN_HEIGHT_M),
    widthM: Math.min(length, BATTEN_HEIGHT_M),
    thicknessM: fixed.thicknessM,
    lengthAlong: length >= BATTEN_HEIGHT_M ? 'u' : 'v',
    grain: board.grained ? 'length' : 'any',
    outline: [
      { uM: 0, vM: 0 },
      { uM: length, vM: 0 },
      { uM: length, vM: BATTEN_HEIGHT_M },
      { uM: 0, vM: BATTEN_HEIGHT_M }
    ],
    edges: [],
    cutOuts: [],
    massKg: length * BATTEN_HEIGHT_M * fixed.thicknessM * board.densityKgPerM3
  }
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
    return all.map((each, i) => ({ ...each, name: `batten, ${face.name}${all.length > 1 ? ` ${i + 1}` : ''}` }))
  })

export function braceParts(braces: PlacedBraces, inside: Inside, resolved: BoxTask): readonly Panel[] {
  const { fixed, board } = resolved
  const names = frameNames(braces.frames)
  const frames = braces.frames.map((frame, i) => {
    const { panel, holes } = framePanel(inside, frame, fixed.thicknessM, names[i] ?? 'brace')
    return finishPanel(panel, board, holes)
  })
  return [...frames, ...battensOf(braces).map(each => batten(each.name, battenLengthM(each), resolved))]
}

export function braceBodies(braces: PlacedBraces, inside: Inside, { fixed }: BoxTask): readonly Body[] {
  const names = frameNames(braces.frames)
  return [
    ...braces.frames.map((frame, i) => frameBodies(inside, frame, fixed.thicknessM, names[i] ?? 'brace')),
    ...battensOf(braces).map(({ name, ...batten }) => battenBody(batten, name))
  ]
}
