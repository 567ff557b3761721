/** Drivers beside a slot: motors and baskets against its channel and its plates. */
import type { Body } from './bodies.ts'
import { bodyGap } from './body-pairs.ts'
import { type Clearance, clearanceRow, clearanceRules } from './clearances.ts'

/** A basket only has to clear the plate. */
const basketRule = { needM: 5e-3, why: 'the basket must clear the plate of the slot' }

const rows = {
  basket: { text: 'basket to the plates of the slot', rule: basketRule },
  motor: { text: 'motor to the plates of the slot', rule: clearanceRules.motorToTube }
} as const

/** Of each driver whose sizes are known; what stands outside the box is not said. */
export function slotClearances(bodies: readonly Body[]): readonly Clearance[] {
  const slot = bodies.find(({ kind }) => kind === 'slot')
  if (slot === undefined) return []
  return bodies
    .filter(({ kind, isOutside }) => kind === 'driver' && isOutside !== true)
    .flatMap(driver =>
      (['basket', 'motor'] as const).flatMap(what => {
        const pieces = driver.pieces.filter(piece => piece.what === what)
        if (pieces.length === 0) return []
        const gapM = bodyGap({ ...driver, pieces }, slot, Infinity)
        return [clearanceRow(`${driver.name}: ${rows[what].text}`, gapM, rows[what].rule)]
      })
    )
}
