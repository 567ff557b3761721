/** Whether a space holds any box at all for its drivers, whatever it sounds like. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Strategy } from '../../../contract/boxes/words.ts'
import { type PlannedKind, portShapes } from '../../../contract/systems/words.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { type BoxFacts, boxFacts } from './box-facts.ts'
import { boxRoom } from './box-room.ts'

interface Asked {
  readonly strategy?: Strategy | undefined
  readonly kind?: PlannedKind | undefined
  readonly netVolumeM3?: number
  readonly tuningHz?: number
  readonly portShape?: (typeof portShapes)[number]
  readonly portAreaM2?: number
}

/** Air that a driver has at least, over the cube of its flange; below it no driver is built in. Ours. */
const LEAST_SHARE = 0.35
/** Net volumes looked at, each this much larger than the one before. */
const VOLUMES = 24
const VOLUME_STEP = 1.2
/** A port of an eighth of the box's litres in dm² at an ordinary tuning: 50 cm² on 40 l. Common practice, no source. */
const USUAL = { tuningHz: 34, areaPerM3: 0.125, longestM: 1.05 } as const

function factsOf(box: BoxRequest, strategy: Strategy | undefined): BoxFacts | undefined {
  try {
    return boxFacts(box, strategy)
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

/** @param box  boards, drivers, fittings and the limits of the space */
export function standsAny(box: BoxRequest, asked: Asked): boolean {
  const { kind, portShape, tuningHz = USUAL.tuningHz, portAreaM2 } = asked
  const facts = factsOf(box, asked.strategy)
  if (facts === undefined) return false
  const shapes = portShape === undefined ? portShapes : [portShape]
  const room = boxRoom(facts, { shapes, fromM3: 0, toM3: Infinity, longestM: USUAL.longestM })
  const volumes = asked.netVolumeM3 === undefined ? volumesFor(box) : [asked.netVolumeM3]
  return volumes.some(
    netM3 =>
      (kind !== 'vented' && room.closed(netM3) !== undefined) ||
      (kind !== 'closed' && room.ported(netM3, tuningHz, portAreaM2 ?? USUAL.areaPerM3 * netM3) !== undefined)
  )
}

function volumesFor({ drivers: [driver] = [] }: BoxRequest): readonly number[] {
  const { count = 1, flangeDiameterM, cutOutDiameterM = 0.2 } = driver ?? {}
  const leastM3 = LEAST_SHARE * count * (flangeDiameterM ?? cutOutDiameterM) ** 3
  return Array.from({ length: VOLUMES }, (_, step) => leastM3 * VOLUME_STEP ** step)
}
