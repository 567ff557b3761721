/** A tube with one elbow: straight in, a quarter turn, and on beside the wall it would have met. */
import { type Inside, moved, roomAhead } from '../shell/face.ts'
import type { Direction3 } from '../shell/panel.ts'
import { clearanceRules, type Gap, gap, mouthRoom } from './clearances.ts'
import type { MountedTube } from './mounting.ts'

interface ElbowRoute {
  /** Straight parts before and behind the quarter turn [m]. */
  readonly firstM: number
  readonly secondM: number
  readonly towards: Direction3
  /** From the inner mouth on to the wall it faces. */
  readonly gapM: number
  /** From the outside of the bend to the wall behind it. */
  readonly behindM: number
}

const turned = ({ x, y, z }: Direction3): Direction3 => ({ x: -x, y: -y, z: -z })

/**
 * The centre line of an elbow counts π·R/2. The first leg goes as far in as the wall behind lets it, the second towards the
 * side with the most room.
 *
 * @source derived: length of an arc
 * @check  R 100 mm → the bend counts 157.08 mm
 */
export function elbowRoute(inside: Inside, { port, face, at, insideM, outerDiameterM }: MountedTube): ElbowRoute {
  const radius = port.elbowRadiusM ?? 0
  const arc = (Math.PI / 2) * radius
  const room = roomAhead(inside, moved(at, face.inwards, face.thicknessM), face.inwards)
  const deepest = room - radius - outerDiameterM / 2 - clearanceRules.motorToTube.needM
  const firstM = Math.max(0, Math.min(insideM - arc, deepest))
  const secondM = insideM - arc - firstM
  const corner = moved(at, face.inwards, face.thicknessM + firstM + radius)
  const { uAxis, vAxis } = face.place
  const ways = [uAxis, turned(uAxis), vAxis, turned(vAxis)].map(towards => ({
    towards,
    gapM: roomAhead(inside, corner, towards) - radius - secondM
  }))
  const best = ways.reduce((a, b) => (b.gapM > a.gapM ? b : a))
  return { firstM, secondM, ...best, behindM: room - firstM - radius - outerDiameterM / 2 }
}

export function elbowGaps(inside: Inside, mounted: MountedTube): readonly Gap[] {
  const { gapM, behindM, secondM } = elbowRoute(inside, mounted)
  const tube = [{ name: mounted.label }] as const
  return [
    gap('clearance.mouth-to-wall', tube, gapM, mouthRoom(mounted.port)),
    gap('clearance.bend-to-wall', tube, behindM, {
      ...clearanceRules.motorToTube,
      why: 'room.bend'
    }),
    ...(secondM >= 0
      ? []
      : [
          gap('clearance.beyond-bend', tube, secondM, {
            needM: 0,
            why: 'room.bend-too-long'
          })
        ])
  ]
}
