/** What stands in a built box, each thing at its place: made once, read by parts, clearances and stiffness. */
import { type Standing, standingIn } from '../solids/fitting-places.ts'
import { type BracedTask, noBraces, type PlacedBraces, placeBraces } from '../stiffness/brace-plan.ts'
import type { BuiltBox } from './build-box.ts'

export interface BoxContents {
  readonly standing: Standing
  readonly braces: PlacedBraces
}

export function boxContents(built: BuiltBox, resolved: BracedTask): BoxContents {
  const standing = standingIn(built, resolved)
  const isGiven = resolved.request.displacement?.bracesM3 !== undefined
  const plan = isGiven ? noBraces : (resolved.plan ?? noBraces)
  return { standing, braces: placeBraces(built, resolved, plan, standing.bodies) }
}
