/** What comes too close to what: motors to walls, flanges to edges, mouths to what they face. */
import type { BoxDriver, RoundPort } from '../../../contract/boxes/box-hardware.ts'
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Point3 } from '../../../contract/boxes/panel.ts'
import type { clearanceSentences } from '../../../contract/sentences/english/box/clearance.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { insideDistance } from '../../../numeric/geometry/polygon-distance.ts'
import { type Caution, caution } from '../../caution.ts'
import { toMm } from '../../digits.ts'
import { saidOf, say, worded } from '../../say.ts'
import { type Inside, moved, onFace, roomAhead, roomForHole } from '../shell/face.ts'
import { panelSaid } from '../shell/panel-words.ts'
import { frontGaps, ringGapM } from './front-gaps.ts'
import type { Mounted, MountedDriver, MountedTube } from './mounting.ts'

type Sentence = keyof typeof clearanceSentences
type Why = Extract<Sentence, `room.${string}`>
type What = Exclude<Sentence, Why | 'clearance.part'>

/** Room that is wanted somewhere, and why. */
export interface RoomRule {
  readonly needM: number
  readonly why: Why
}

/** A thing that has a name, or one part of its body. */
export interface Named {
  readonly name: string
  readonly part?: string
}

/** A distance as it was measured; it is put into words where a box is told, not for each box that is tried. */
export interface Gap {
  readonly what: What
  readonly thing: Named
  readonly other: Named | undefined
  readonly availableM: number
  readonly neededM: number
  readonly passes: boolean
  readonly why: Why
}

type Clearance = BoxLayout['clearances'][number]

/** Distances that are judged by habit, not by a standard [m]. */
export const clearanceRules = {
  behindMotor: { needM: 20e-3, why: 'room.behind-motor' },
  motorToSide: { needM: 20e-3, why: 'room.motor-to-side' },
  basketToWall: { needM: 15e-3, why: 'room.basket' },
  flangeToEdge: { needM: frontGaps.toEdgeM, why: 'room.flange-to-edge' },
  flangeToFlange: { needM: frontGaps.toFlangeM, why: 'room.flange-to-flange' },
  web: { needM: 40e-3, why: 'room.web' },
  tubeToWall: { needM: 0, why: 'room.tube' },
  motorToTube: { needM: 20e-3, why: 'room.motor-to-tube' }
} as const satisfies Readonly<Record<string, RoomRule>>

export const passes = (availableM: number, neededM: number): boolean => availableM >= neededM - 1e-9

export const gap = (
  what: What,
  [thing, other]: readonly [Named, Named?],
  availableM: number,
  { needM, why }: RoomRule
): Gap => ({ what, thing, other, availableM, neededM: needM, passes: passes(availableM, needM), why })

function nameSaid({ name, part }: Named): Said {
  const thing = panelSaid(name)
  return part === undefined ? thing : say('clearance.part', { thing, part: panelSaid(part) })
}

/** In words. */
export function toldGap({ what, thing, other = thing, why, availableM, neededM, passes: clear }: Gap): Clearance {
  const between = say(what, { thing: nameSaid(thing), other: nameSaid(other) })
  return { ...worded({ between, why: say(why) }), availableM, neededM, passes: clear }
}

/** Points round the rim of a circle parallel to a face, at a depth behind its outer side. */
function rim({ face, centre }: Mounted, radiusM: number, depthM: number): readonly Point3[] {
  return Array.from({ length: 24 }, (_, i) => {
    const angle = (i * Math.PI) / 12
    const onRim = { uM: centre.uM + radiusM * Math.cos(angle), vM: centre.vM + radiusM * Math.sin(angle) }
    return moved(onFace(face.place, onRim), face.inwards, depthM)
  })
}

/** Room that a driver wants behind itself; a cone without a motor comes back with all that hangs on it. */
export function roomBehind({ kind, ventDiameterM = 0, xmaxM = 0 }: BoxDriver): RoomRule {
  const { needM, why } = clearanceRules.behindMotor
  if (kind === 'passive-radiator') {
    return xmaxM > needM ? { needM: xmaxM, why: 'room.passive-travel' } : { needM, why: 'room.behind-passive' }
  }
  const vent = ventDiameterM / 4
  return vent > needM ? { needM: vent, why: 'room.vent-ring' } : { needM, why }
}

function behindMotor(inside: Inside, mounted: MountedDriver): readonly Gap[] {
  const { driver, face, label } = mounted
  const { mountingDepthM: depth, magnetDiameterM = 0, rebateDepthM = 0 } = driver
  if (depth === undefined || driver.mount === 'reversed') return []
  const ahead = rim(mounted, magnetDiameterM / 2, face.thicknessM).map(
    point => roomAhead(inside, point, face.inwards) + face.thicknessM
  )
  const what = driver.kind === 'passive-radiator' ? 'clearance.cone-to-wall' : 'clearance.motor-to-wall'
  const roomM = Math.min(...ahead) - depth - rebateDepthM
  return [gap(what, [{ name: label }], roomM, roomBehind(driver))]
}

/** From the axis of a driver at a depth square outwards to the first wall; its own board is none. */
function roomRound(inside: Inside, mounted: MountedDriver, depthM: number): number {
  const axis = moved(mounted.at, mounted.face.inwards, depthM + 1e-9)
  const ways = rim(mounted, 1, depthM).map(point => toward(axis, point))
  return Math.min(...ways.map(way => roomAhead(inside, axis, way)))
}

/** Unit vector from a point to one a metre away. */
const toward = (from: Point3, to: Point3) => ({ x: to.xM - from.xM, y: to.yM - from.yM, z: to.zM - from.zM })

/** Room that a cone wants before itself, from its board on. */
export function roomBefore({ cutOutDiameterM = 0, xmaxM = 0 }: BoxDriver): RoomRule {
  return { needM: Math.max(ringGapM(cutOutDiameterM), xmaxM), why: 'room.before-cone' }
}

/** Of a driver on the divider its cone to the front, square to both. */
export function beforeCone(ahead: Inside, { driver, face, label, at }: MountedDriver): readonly Gap[] {
  if (driver.mount === 'reversed') return []
  const { x, y, z } = face.inwards
  const roomM = roomAhead(ahead, moved(at, face.inwards, -1e-6), { x: -x, y: -y, z: -z })
  return [gap('clearance.cone-to-front', [{ name: label }], roomM, roomBefore(driver))]
}

function besideMotor(inside: Inside, mounted: MountedDriver): readonly Gap[] {
  const { driver, face, label } = mounted
  const { mountingDepthM: depth, magnetDiameterM, magnetHeightM = 0, cutOutDiameterM = 0 } = driver
  const hole = roomForHole(face, mounted.centre) - cutOutDiameterM / 2
  const basket = gap('clearance.hole-to-walls', [{ name: label }], hole, clearanceRules.basketToWall)
  if (depth === undefined || magnetDiameterM === undefined || driver.mount === 'reversed') return [basket]
  const { rebateDepthM = 0 } = driver
  const rear = depth + rebateDepthM
  const front = Math.max(face.thicknessM, rear - magnetHeightM)
  const room = Math.min(...[front, Math.max(front, rear)].map(each => roomRound(inside, mounted, each)))
  return [
    basket,
    gap('clearance.motor-to-walls', [{ name: label }], room - magnetDiameterM / 2, clearanceRules.motorToSide)
  ]
}

function onThePanel(mounted: Mounted): readonly Gap[] {
  if (mounted.kind === 'tube') return []
  const { flangeDiameterM } = mounted.driver
  if (flangeDiameterM === undefined) return []
  const edge = insideDistance(mounted.face.clear, { x: mounted.centre.uM, y: mounted.centre.vM }) - flangeDiameterM / 2
  return [gap('clearance.flange-to-edge', [{ name: mounted.label }], edge, clearanceRules.flangeToEdge)]
}

const holeRadius = (m: Mounted) => (m.kind === 'tube' ? m.widestM : (m.driver.cutOutDiameterM ?? 0)) / 2

function betweenTwo(a: Mounted, b: Mounted): readonly Gap[] {
  if (a.face.name !== b.face.name) return []
  const apart = Math.hypot(a.centre.uM - b.centre.uM, a.centre.vM - b.centre.vM)
  const both = [{ name: a.label }, { name: b.label }] as const
  const rows = [gap('clearance.web', both, apart - holeRadius(a) - holeRadius(b), clearanceRules.web)]
  if (a.kind === 'driver' && b.kind === 'driver' && a.driver.flangeDiameterM && b.driver.flangeDiameterM) {
    const flanges = apart - (a.driver.flangeDiameterM + b.driver.flangeDiameterM) / 2
    rows.push(gap('clearance.flanges', both, flanges, clearanceRules.flangeToFlange))
  }
  return rows
}

/** A mouth keeps its own diameter from what it faces. */
export const mouthRoom = ({ innerDiameterM }: RoundPort): RoomRule => ({ needM: innerDiameterM, why: 'room.mouth' })

/** Of a straight tube: its inner mouth to the wall it faces, at least its own diameter. */
function tubeMouth(inside: Inside, mounted: MountedTube): readonly Gap[] {
  const { port, face, label, at } = mounted
  if (port.elbowRadiusM !== undefined) return []
  const ahead = roomAhead(inside, moved(at, face.inwards, face.thicknessM), face.inwards)
  return [gap('clearance.mouth-to-wall', [{ name: label }], ahead - mounted.insideM, mouthRoom(port))]
}

/** Said only where it fails: a tube may lie against a wall. */
function tubeHole({ face, centre, label, widestM }: MountedTube): readonly Gap[] {
  const edge = roomForHole(face, centre) - widestM / 2
  const row = gap('clearance.hole-to-walls', [{ name: label }], edge, clearanceRules.tubeToWall)
  return row.passes ? [] : [row]
}

/** @param chamberOf  the inside that a thing stands in: one of the chambers of a box with a divider */
export function faceGaps(chamberOf: (mounted: Mounted) => Inside, mounted: readonly Mounted[]): readonly Gap[] {
  return [
    ...mounted.flatMap(each => {
      const inside = chamberOf(each)
      return each.kind === 'driver'
        ? [...behindMotor(inside, each), ...besideMotor(inside, each), ...onThePanel(each)]
        : [...tubeMouth(inside, each), ...tubeHole(each)]
    }),
    ...mounted.flatMap((a, i) => mounted.slice(i + 1).flatMap(b => betweenTwo(a, b)))
  ]
}

/** A row that fails: `stop` where things overlap, `care` where they only come too close. */
export function clearanceCautions(rows: readonly Clearance[]): readonly Caution[] {
  return rows
    .filter(({ passes }) => !passes)
    .map(row => {
      const { availableM, neededM } = row
      const [between, why] = [saidOf(row, 'between'), saidOf(row, 'why')]
      const figures = { availableMm: availableM * 1e3, neededMm: neededM * 1e3 }
      return availableM < 0
        ? caution('driver-hits-box', say('driver-hits-box', { between, availableMm: toMm(-availableM, 1) }), {
            figures
          })
        : caution(
            'box-clearance',
            say('box-clearance', { between, availableMm: toMm(availableM, 1), neededMm: toMm(neededM, 1), why }),
            {
              figures
            }
          )
    })
}
