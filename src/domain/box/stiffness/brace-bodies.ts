/** A frame as a body: its wood round the window. */
import { roundWindow } from '../../../numeric/geometry/polygon-window.ts'
import type { Inside } from '../shell/face.ts'
import type { Body } from '../solids/bodies.ts'
import { bars } from '../solids/solids.ts'
import type { Frame } from './brace-windows.ts'

export function frameBodies({ shell }: Inside, frame: Frame, thicknessM: number, name: string): Body {
  const middle = shell.caps.low.thicknessM + frame.placeM
  const [from, to] = [middle - thicknessM / 2, middle + thicknessM / 2]
  const solids = roundWindow(frame.outline, frame.window).flatMap(piece => bars(shell.axis, piece, from, to))
  return { name, kind: 'brace', pieces: solids.map(solid => ({ solid })) }
}
