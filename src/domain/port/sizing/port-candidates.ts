/** The shapes worth looking at: for each number of ports the smallest size that keeps the limit, and the one below it. */
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { PortShape } from '../port-shape.ts'
import { portSizingDefaults } from './defaults.ts'
import { isFlat, round, slot } from './port-design.ts'
import type { PortWish } from './port-sizing.ts'

type Fits = (shape: PortShape) => boolean

/**
 * @param areaM2  wanted for all ports together; absent where nothing tells the flow
 * @param hasRoom  whether a shape's length fits, so that the largest one that does is among the candidates
 * @throws DesignError `missing-input` where neither the flow nor the size is told
 */
export function portShapes(wish: PortWish, areaM2: number | undefined, hasRoom: Fits): readonly PortShape[] {
  const most = wish.kind === 'round' ? portSizingDefaults.mostPorts.value : MOST_SLOTS
  const counts = wish.count === undefined ? Array.from({ length: most }, (_, index) => index + 1) : [wish.count]
  return counts.flatMap(count => {
    if (wish.kind === 'round' && wish.diameterM !== undefined) return [round(count, wish.diameterM)]
    if (wish.kind === 'slot' && wish.heightM !== undefined) return [slot(count, wish.widthM, wish.heightM)]
    const sizes =
      wish.kind === 'round'
        ? portSizingDefaults.roundDiametersM.value.map(diameter => round(count, diameter))
        : slotHeights(neededArea(areaM2) / (count * wish.widthM)).map(height => slot(count, wish.widthM, height))
    const found = around(sizes, neededArea(areaM2), hasRoom)
    return wish.kind === 'slot' && found.every(isFlat) ? [...found, sturdySlot(count, wish.widthM)] : found
  })
}

/** The lowest slot of the width that is not flat: more area than asked for, where there is room for the length that takes. */
function sturdySlot(count: number, widthM: number): PortShape {
  const least = Math.max(portSizingDefaults.lowestSlotM.value, widthM / portSizingDefaults.flattestSlot.value)
  return slot(
    count,
    widthM,
    Math.ceil(least / portSizingDefaults.slotStepM.value - 1e-9) * portSizingDefaults.slotStepM.value
  )
}

/** Two slots are as many as share their walls with a box sensibly. */
const MOST_SLOTS = 2

/** The smallest size that is enough, the one below it, and the largest below that which has room; sizes ascend. */
function around(sizes: readonly PortShape[], neededM2: number, hasRoom: Fits): readonly PortShape[] {
  const enough = sizes.findIndex(({ count, areaM2 }) => count * areaM2 >= neededM2 * (1 - 1e-12))
  const at = enough < 0 ? sizes.length - 1 : enough
  const roomy = sizes.slice(0, Math.max(0, at - 1)).findLast(hasRoom)
  return [...sizes.slice(Math.max(0, at - 1), at + 1).reverse(), ...(roomy === undefined ? [] : [roomy])]
}

/** Steps up to the height wanted, at most forty of them. */
function slotHeights(neededM: number): readonly number[] {
  const highest = Math.max(2, Math.ceil(neededM / portSizingDefaults.slotStepM.value - 1e-9))
  const lowest = Math.max(2, highest - 39)
  return Array.from(
    { length: highest - lowest + 1 },
    (_, index) => (lowest + index) * portSizingDefaults.slotStepM.value
  )
}

function neededArea(areaM2: number | undefined): number {
  if (areaM2 !== undefined) return areaM2
  throw new DesignError('missing-input', {
    field: 'driver',
    detail: say('refused.the-size-of-the-port-needs')
  })
}
