/** Frames and battens as parts of the cut list. */

import { battenLengths, placeFrames } from './brace-plan.ts'
import { framePanel } from './brace-windows.ts'
import type { BuiltBox } from './build-box.ts'
import { BATTEN_HEIGHT_M, freeFaces } from './face-strength.ts'
import { finishPanel } from './finish-panels.ts'
import type { Panel } from './panel.ts'
import type { Settled } from './settle.ts'

function batten(name: string, length: number, { fixed, board }: Settled): Panel {
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

export function braceParts(built: BuiltBox, settled: Settled): readonly Panel[] {
  const { plan, fixed, board, request } = settled
  if (plan === undefined || request.displacement?.bracesM3 !== undefined) return []
  const placed = placeFrames(built, settled, plan.frames) ?? { places: [], frames: [] }
  const frames = placed.frames.map((frame, i) => {
    const { panel, holes } = framePanel(built.inside, frame, fixed.thicknessM, placed.places[i] ?? 0, i + 1)
    return finishPanel(panel, board, holes)
  })
  const battens = freeFaces(built, placed.places).flatMap(face => {
    const lengths = battenLengths(face, plan.battens[face.name] ?? 0)
    return lengths.map((length, i) =>
      batten(`batten, ${face.name}${lengths.length > 1 ? ` ${i + 1}` : ''}`, length, settled)
    )
  })
  return [...frames, ...battens]
}
