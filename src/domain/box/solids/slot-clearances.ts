/** Drivers beside a slot: motors and baskets against its channel and its plates. */
import type { Body } from './bodies.ts'
import { bodyGap } from './body-pairs.ts'
import { clearanceRules, type Gap, gap, type RoomRule } from './clearances.ts'

/** A basket only has to clear the plate. */
const basketRule: RoomRule = { needM: 5e-3, why: 'room.basket-slot' }

const rows = {
  basket: { said: 'clearance.basket-to-slot', rule: basketRule },
  motor: { said: 'clearance.motor-to-slot', rule: clearanceRules.motorToTube }
} as const

/** Of each driver whose sizes are known; what stands outside the box is not said. */
export function slotGaps(bodies: readonly Body[]): readonly Gap[] {
  const slot = bodies.find(({ kind }) => kind === 'slot')
  if (slot === undefined) return []
  return bodies
    .filter(({ kind, isOutside }) => kind === 'driver' && isOutside !== true)
    .flatMap(driver =>
      (['basket', 'motor'] as const).flatMap(what => {
        const pieces = driver.pieces.filter(piece => piece.what === what)
        if (pieces.length === 0) return []
        const gapM = bodyGap({ ...driver, pieces }, slot, Infinity)
        return [gap(rows[what].said, [{ name: driver.name }], gapM, rows[what].rule)]
      })
    )
}
