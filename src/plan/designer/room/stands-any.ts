/** Whether a space holds any box at all for its drivers, whatever it sounds like. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Strategy } from '../../../contract/boxes/words.ts'
import { type PlannedKind, portShapes } from '../../../contract/systems/words.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { type BoxFacts, boxFacts } from './box-facts.ts'
import { boxRoom } from './box-room.ts'
import { roomDefaults } from './defaults.ts'

interface Asked {
  readonly strategy?: Strategy | undefined
  readonly kind?: PlannedKind | undefined
  readonly netVolumeM3?: number
  readonly tuningHz?: number
  readonly portShape?: (typeof portShapes)[number]
  readonly portAreaM2?: number
}

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
  const { kind, portShape, tuningHz = roomDefaults.tuningHz.value, portAreaM2 } = asked
  const facts = factsOf(box, asked.strategy)
  if (facts === undefined) return false
  const shapes = portShape === undefined ? portShapes : [portShape]
  const room = boxRoom(facts, { shapes, fromM3: 0, toM3: Infinity, longestM: roomDefaults.longestPortM.value })
  const volumes = asked.netVolumeM3 === undefined ? volumesFor(box) : [asked.netVolumeM3]
  return volumes.some(
    netM3 =>
      (kind !== 'vented' && room.closed(netM3) !== undefined) ||
      (kind !== 'closed' &&
        room.ported(netM3, tuningHz, portAreaM2 ?? roomDefaults.portAreaPerM3.value * netM3) !== undefined)
  )
}

function volumesFor({ drivers: [driver] = [] }: BoxRequest): readonly number[] {
  const { count = 1, flangeDiameterM, cutOutDiameterM = roomDefaults.cutOutM.value } = driver ?? {}
  const leastM3 = roomDefaults.leastAirShare.value * count * (flangeDiameterM ?? cutOutDiameterM) ** 3
  return Array.from(
    { length: roomDefaults.volumes.value },
    (_, step) => leastM3 * roomDefaults.volumeStep.value ** step
  )
}
