/** Whether a band-pass stands in the space: a closed chamber behind the drivers, one with tubes before them. */
import type { FaceName } from '../../../contract/boxes/words.ts'
import { LEDGE_WIDTH_M } from '../../../domain/box/shell/ledges.ts'
import { clearanceRules, roomBefore, roomBehind } from '../../../domain/box/solids/clearances.ts'
import { portDefaults } from '../../../domain/port/defaults.ts'
import { equivalentRadiusM } from '../../../domain/port/port-length.ts'
import type { Room } from '../search/design-problem.ts'
import { remembered } from '../search/remembered.ts'
import { type BoxFacts, rangesWith } from './box-facts.ts'
import { isPort, lengthOf, type PlacedBox, roomier, standing, waysOf } from './box-room.ts'
import { innerDepthM, type Sides } from './box-sides.ts'
import { roomDefaults } from './defaults.ts'
import { tubesOfArea } from './ports-of-area.ts'

export type DividedFace = 'front' | 'right' | 'left' | 'top' | 'bottom'
type Divided = NonNullable<Room<PlacedBox>['divided']>

interface Chambers {
  readonly rearM3: number
  readonly frontM3: number
}

interface Depths {
  readonly rearM: number
  readonly frontM: number
}

/** Depth that each chamber has to have: behind the divider for the motor, before it for the cone. */
function depthsNeeded({ task }: BoxFacts): Depths {
  const drivers = task.request.drivers ?? []
  const { spareM } = roomDefaults
  const behind = drivers.map(each => (each.mountingDepthM ?? 0) + (each.rebateDepthM ?? 0) + roomBehind(each).needM)
  return {
    rearM: Math.max(0, ...behind) - task.fixed.thicknessM + spareM.value,
    frontM: Math.max(0, ...drivers.map(each => roomBefore(each).needM)) + spareM.value
  }
}

interface Tube {
  readonly lengthM: number
  readonly diameterM: number
}

/** Clear depth of the front chamber for its tubes: across it they pass the way of the cone, from the front they end before it. */
function tubeDepthM({ task, frontM, boardM }: BoxFacts, face: FaceName, { lengthM, diameterM }: Tube): number {
  const { tubeWallM, spareM } = roomDefaults
  if (face === 'front') return lengthM - frontM + Math.max(diameterM, clearanceRules.motorToTube.needM)
  const xmaxM = Math.max(0, ...(task.request.drivers ?? []).map(each => each.xmaxM ?? 0))
  const edgeM = clearanceRules.flangeToEdge.needM
  return (
    boardM +
    diameterM +
    2 * tubeWallM.value +
    edgeM +
    Math.max(edgeM, clearanceRules.motorToTube.needM + xmaxM + spareM.value)
  )
}

function divides(walls: BoxFacts, sides: Sides, { rearM3, frontM3 }: Chambers, { rearM, frontM }: Depths): boolean {
  const deepM = innerDepthM(walls, sides)
  const share = frontM3 / (frontM3 + rearM3)
  return deepM * share >= frontM && deepM * (1 - share) >= rearM
}

/** Lengths in steps, the next above, so that many ports ask for the same ways of growing. */
const inSteps = (lengthM: number) =>
  Math.ceil(lengthM / roomDefaults.acrossStepM.value) * roomDefaults.acrossStepM.value

/** @param faces  of the tubes, in the order in which they are tried */
export function dividedRoom(facts: BoxFacts, faces: readonly DividedFace[], longestM: number): Divided {
  // the divider takes its thickness of the depth, as a second front would
  const walls = { ...facts, frontM: facts.frontM + facts.boardM }
  const depths = depthsNeeded(facts)
  const waysFor = remembered((face: DividedFace, count: number, innerDiameterM: number, acrossM: number) => {
    const port = { kind: 'round', face, count, innerDiameterM, lengthM: facts.frontM, chamber: 'front' } as const
    return waysOf(
      walls,
      rangesWith(facts, port).map(choice => roomier(choice, face, acrossM))
    )
  })
  const onFace = (face: DividedFace): Divided => {
    return (netM3, frontVolumeM3, tuningHz, areaM2) => {
      const tubes = tubesOfArea(areaM2)
      if (tubes === undefined) return undefined
      const { count, diameterM } = tubes
      const one = (Math.PI * diameterM ** 2) / 4
      const endsM = portDefaults.endFactor.value * equivalentRadiusM(one)
      const lengthM = lengthOf(facts, frontVolumeM3, tuningHz, count * one, endsM)
      if (!isPort(lengthM, endsM, one, longestM)) return undefined
      const boardM = face === 'front' ? facts.frontM : facts.boardM
      const outerM = diameterM + 2 * roomDefaults.tubeWallM.value
      const tubeM3 = (count * Math.PI * outerM ** 2 * Math.max(0, lengthM - boardM)) / 4
      const ledgesM3 = roomDefaults.mouthSides.value * Math.cbrt(netM3 + frontVolumeM3) * LEDGE_WIDTH_M * facts.boardM
      const chambers = { rearM3: netM3 + facts.takenM3, frontM3: frontVolumeM3 + tubeM3 + ledgesM3 }
      const frontM = Math.max(depths.frontM, tubeDepthM(facts, face, { lengthM, diameterM }))
      const across = face === 'front' ? 0 : inSteps(facts.boardM + lengthM + diameterM)
      const stands = (sides: Sides) => divides(walls, sides, chambers, { rearM: depths.rearM, frontM })
      const outerM3 = standing(
        walls,
        waysFor(face, count, diameterM, across),
        chambers.rearM3 + chambers.frontM3,
        stands
      )
      return outerM3 === undefined ? undefined : { outerM3, portShape: 'round', portFace: face }
    }
  }
  const ways = faces.map(onFace)
  return remembered((netM3: number, frontVolumeM3: number, tuningHz: number, areaM2: number) => {
    for (const way of ways) {
      const placed = way(netM3, frontVolumeM3, tuningHz, areaM2)
      if (placed !== undefined) return placed
    }
    return undefined
  })
}
