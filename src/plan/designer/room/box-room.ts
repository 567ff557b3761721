/** Whether a volume, with or without a port of an area, stands in the space: in closed form, as the layout would find it. */
import { type FaceName, strategies } from '../../../contract/boxes/words.ts'
import type { portShapes, RadiatorFace } from '../../../contract/systems/words.ts'
import { portDefaults } from '../../../domain/port/defaults.ts'
import { effectiveLengthM, equivalentRadiusM } from '../../../domain/port/port-length.ts'
import { portSizingDefaults } from '../../../domain/port/sizing/defaults.ts'
import type { Place, Room } from '../search/design-problem.ts'
import { remembered } from '../search/remembered.ts'
import { type BoxFacts, type RowRanges, rangesWith } from './box-facts.ts'
import { type Growth, growthOf, outerM3, type Sides, sidesAt } from './box-sides.ts'
import { roomDefaults } from './defaults.ts'
import { slotEndsM, slotOfArea, tubesOfArea } from './ports-of-area.ts'
import { type SlotSide, slotSides, slotTakesM3, standsBeside, standsSlot, withSlot } from './slot-room.ts'

export interface PlacedBox extends Place {
  /** Absent: none. */
  readonly portShape?: 'round' | 'slot'
  /** Of the tubes of a band-pass. */
  readonly portFace?: Exclude<FaceName, 'divider'>
  /** Only of a box with passive radiators. */
  readonly radiators?: { readonly count: number; readonly face: RadiatorFace }
}

interface Way {
  readonly growth: Growth
  readonly choice: RowRanges
}

/** The ways of growing in the order of the layout. */
export function waysOf(facts: BoxFacts, choices: readonly RowRanges[]): readonly Way[] {
  const tried = facts.strategy === undefined ? strategies : [facts.strategy]
  return tried.flatMap(strategy =>
    choices.flatMap(choice => {
      const growth = growthOf(facts, choice.ranges, strategy)
      return growth === undefined ? [] : [{ growth, choice }]
    })
  )
}

/** What the box takes on the first way on which it stands. */
export function standing(
  facts: BoxFacts,
  ways: readonly Way[],
  volumeM3: number,
  stands?: (sides: Sides, choice: RowRanges) => boolean
): number | undefined {
  for (const { growth, choice } of ways) {
    const sides = sidesAt(growth, volumeM3)
    if (sides !== undefined && (stands === undefined || stands(sides, choice))) return outerM3(facts, sides)
  }
  return undefined
}

/** Length of a port of this area for the tuning, both ends taken off [m]. */
export const lengthOf = (facts: BoxFacts, netM3: number, tuningHz: number, areaM2: number, endsM: number): number =>
  effectiveLengthM(tuningHz, netM3, { count: 1, areaM2 }, facts.task.air.soundSpeedMPerS) - endsM

/** No shorter than its radius, and short enough not to resonate as a pipe in the band. */
export const isPort = (lengthM: number, endsM: number, areaM2: number, longestM: number) =>
  lengthM >= equivalentRadiusM(areaM2) && lengthM + endsM <= longestM

interface Asked {
  readonly netM3: number
  readonly tuningHz: number
  readonly areaM2: number
}

type PortRoom = (asked: Asked) => number | undefined

/** Tubes beside the drivers; their ranges are the same for each size, but for the depth that their length takes. */
function tubeRoom(facts: BoxFacts, face: FaceName, longestM: number): PortRoom {
  const rangesOf = remembered((count: number, innerDiameterM: number) =>
    rangesWith(facts, { kind: 'round', face, count, innerDiameterM, lengthM: facts.frontM })
  )
  return ({ netM3, tuningHz, areaM2 }) => {
    const tubes = tubesOfArea(areaM2)
    if (tubes === undefined) return undefined
    const { count, diameterM } = tubes
    const one = (Math.PI * diameterM ** 2) / 4
    const endsM = portDefaults.endFactor.value * equivalentRadiusM(one)
    const lengthM = lengthOf(facts, netM3, tuningHz, count * one, endsM)
    if (!isPort(lengthM, endsM, one, longestM)) return undefined
    const outerM = diameterM + 2 * roomDefaults.tubeWallM.value
    const takenM3 = (count * Math.PI * outerM ** 2 * Math.max(0, lengthM - facts.frontM)) / 4
    const choices = rangesOf(count, diameterM).map(choice =>
      roomier(choice, face, facts.recessM + facts.boardM + lengthM + diameterM)
    )
    return standing(facts, waysOf(facts, choices), netM3 + facts.takenM3 + takenM3)
  }
}

const behindFace = { left: 'width', right: 'width', top: 'height', bottom: 'height' } as const

/** At least so much along the way a tube goes from its face. */
export function roomier(choice: RowRanges, face: FaceName, leastM: number): RowRanges {
  const axis = face in behindFace ? behindFace[face as keyof typeof behindFace] : 'depth'
  const { min, max } = choice.ranges[axis]
  const least = leastM + (axis === 'depth' ? choice.leanM : 0)
  return { ...choice, ranges: { ...choice.ranges, [axis]: { min: Math.max(min, least), max } } }
}

function slotRoom(facts: BoxFacts, side: SlotSide, longestM: number): PortRoom {
  const closed = rangesWith(facts)
  const waysWith = remembered((heightM: number) =>
    waysOf(
      facts,
      closed.map(each => ({ ...each, ranges: withSlot(facts, side, heightM, each.bare) }))
    )
  )
  const endsOf = remembered((heightM: number, widthM: number) => slotEndsM({ heightM, widthM }))
  return ({ netM3, tuningHz, areaM2 }) => {
    const size = slotOfArea(areaM2)
    if (size.widthM > portSizingDefaults.flattestSlot.value * size.heightM) return undefined
    const endsM = endsOf(size.heightM, size.widthM)
    const lengthM = lengthOf(facts, netM3, tuningHz, size.widthM * size.heightM, endsM)
    if (!isPort(lengthM, endsM, areaM2, longestM)) return undefined
    const volumeM3 = netM3 + facts.takenM3 + slotTakesM3(facts, size, lengthM)
    const stands = (sides: Sides, { rows, bare }: RowRanges) =>
      standsBeside(facts, side, size, sides, bare) && standsSlot(facts, side, { ...size, lengthM }, sides, rows)
    return standing(facts, waysWith(size.heightM), volumeM3, stands)
  }
}

interface RoomWish {
  /** Face of the tubes; the front when absent. */
  readonly portFace?: FaceName
  readonly shapes: readonly (typeof portShapes)[number][]
  /** Net volumes of the smallest and the largest box worth a look. */
  readonly fromM3: number
  readonly toM3: number
  /** No port is longer, both ends in it. */
  readonly longestM: number
}

/** Of a box without a port: what is set into it stands in the facts. */
export function tightRoom(facts: BoxFacts): (netM3: number) => PlacedBox | undefined {
  const bare = waysOf(facts, rangesWith(facts))
  return remembered((netM3: number) => {
    const outer = standing(facts, bare, netM3 + facts.takenM3)
    return outer === undefined ? undefined : { outerM3: outer }
  })
}

/** A room that places the closed box, the tube before the slot along the floor, and that before the one up a side. */
export function boxRoom(
  facts: BoxFacts,
  { shapes, portFace = 'front', fromM3, toM3, longestM }: RoomWish
): Room<PlacedBox> {
  const tubes = { portShape: 'round', place: tubeRoom(facts, portFace, longestM) } as const
  const slots = slotSides(facts).map(side => ({ portShape: 'slot', place: slotRoom(facts, side, longestM) }) as const)
  const ways = [tubes, ...slots].filter(({ portShape }) => shapes.includes(portShape))
  const ported = (netM3: number, tuningHz: number, areaM2: number): PlacedBox | undefined => {
    for (const { portShape, place } of ways) {
      const outer = place({ netM3, tuningHz, areaM2 })
      if (outer !== undefined) return { outerM3: outer, portShape }
    }
    return undefined
  }
  return {
    fromM3,
    toM3,
    closed: tightRoom(facts),
    ported: remembered(ported)
  }
}
