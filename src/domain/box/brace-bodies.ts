/** A frame as a body: its wood round the window. */
import type { Body } from './bodies.ts'
import type { Frame } from './brace-windows.ts'
import type { Inside } from './face.ts'
import { bars, roundWindow } from './solids.ts'

export function frameBodies({ shell }: Inside, frame: Frame, thicknessM: number, name: string): Body {
  const middle = shell.caps.low.thicknessM + frame.placeM
  const [from, to] = [middle - thicknessM / 2, middle + thicknessM / 2]
  const solids = roundWindow(frame.outline, frame.window).flatMap(piece => bars(shell.axis, piece, from, to))
  return { name, kind: 'brace', pieces: solids.map(solid => ({ solid })) }
}
