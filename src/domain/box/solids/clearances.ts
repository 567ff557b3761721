/** What comes too close to what: motors to walls, flanges to edges, mouths to what they face. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import type { Point3 } from '../../../contract/boxes/panel.ts'
import { insideDistance } from '../../../numeric/geometry/polygon-distance.ts'
import { type Caution, caution } from '../../caution.ts'
import { toMm } from '../../digits.ts'
import { say } from '../../say.ts'
import { type Inside, moved, onFace, roomAhead, roomForHole } from '../shell/face.ts'
import { frontGaps } from './front-gaps.ts'
import type { Mounted, MountedDriver, MountedTube } from './mounting.ts'

export interface Clearance {
  /** What is measured, e.g. `driver 1 magnet to back`. */
  readonly between: string
  readonly availableM: number
  readonly neededM: number
  readonly passes: boolean
  readonly why: string
}

/** Distances that are judged by habit, not by a standard [m]. */
export const clearanceRules = {
  behindMotor: { needM: 20e-3, why: 'room behind the motor for air and wire (common practice)' },
  motorToSide: { needM: 20e-3, why: 'motor to a wall beside it (common practice)' },
  basketToWall: { needM: 15e-3, why: 'the basket has to pass the walls (common practice)' },
  flangeToEdge: { needM: frontGaps.toEdgeM, why: 'flange to the edge of the free baffle (common practice)' },
  flangeToFlange: { needM: frontGaps.toFlangeM, why: 'flange to flange (common practice)' },
  web: { needM: 40e-3, why: 'wood between two holes (common practice)' },
  tubeToWall: { needM: 0, why: 'the tube has to pass the walls' },
  motorToTube: { needM: 20e-3, why: 'motor to the wall of a port (common practice)' }
} as const

export const passes = (availableM: number, neededM: number): boolean => availableM >= neededM - 1e-9

export const clearanceRow = (
  between: string,
  availableM: number,
  { needM, why }: { needM: number; why: string }
): Clearance => ({
  between,
  availableM,
  neededM: needM,
  passes: passes(availableM, needM),
  why
})

/** Points round the rim of a circle parallel to a face, at a depth behind its outer side. */
function rim({ face, centre }: Mounted, radiusM: number, depthM: number): readonly Point3[] {
  return Array.from({ length: 24 }, (_, i) => {
    const angle = (i * Math.PI) / 12
    const onRim = { uM: centre.uM + radiusM * Math.cos(angle), vM: centre.vM + radiusM * Math.sin(angle) }
    return moved(onFace(face.place, onRim), face.inwards, depthM)
  })
}

/** Room that a driver wants behind itself; a cone without a motor comes back with all that hangs on it. */
export function roomBehind({ kind, ventDiameterM = 0, xmaxM = 0 }: BoxDriver): { needM: number; why: string } {
  const { needM, why } = clearanceRules.behindMotor
  if (kind === 'passive-radiator') {
    return xmaxM > needM
      ? { needM: xmaxM, why: 'a passive radiator comes back by its travel' }
      : { needM, why: 'room behind a passive radiator, that it strikes nothing (common practice)' }
  }
  const vent = ventDiameterM / 4
  return vent > needM
    ? { needM: vent, why: 'a ring as wide as a quarter of the vent has the area of the vent' }
    : { needM, why }
}

function behindMotor(inside: Inside, mounted: MountedDriver): readonly Clearance[] {
  const { driver, face, label } = mounted
  const { mountingDepthM: depth, magnetDiameterM = 0, rebateDepthM = 0 } = driver
  if (depth === undefined || driver.mount === 'reversed') return []
  const ahead = rim(mounted, magnetDiameterM / 2, face.thicknessM).map(
    point => roomAhead(inside, point, face.inwards) + face.thicknessM
  )
  const what = driver.kind === 'passive-radiator' ? 'cone' : 'motor'
  const roomM = Math.min(...ahead) - depth - rebateDepthM
  return [clearanceRow(`${label}: ${what} to the wall behind it`, roomM, roomBehind(driver))]
}

/** From the axis of a driver at a depth square outwards to the first wall; its own board is none. */
function roomRound(inside: Inside, mounted: MountedDriver, depthM: number): number {
  const axis = moved(mounted.at, mounted.face.inwards, depthM + 1e-9)
  const ways = rim(mounted, 1, depthM).map(point => toward(axis, point))
  return Math.min(...ways.map(way => roomAhead(inside, axis, way)))
}

/** Unit vector from a point to one a metre away. */
const toward = (from: Point3, to: Point3) => ({ x: to.xM - from.xM, y: to.yM - from.yM, z: to.zM - from.zM })

function besideMotor(inside: Inside, mounted: MountedDriver): readonly Clearance[] {
  const { driver, face, label } = mounted
  const { mountingDepthM: depth, magnetDiameterM, magnetHeightM = 0, cutOutDiameterM = 0 } = driver
  const hole = roomForHole(face, mounted.centre) - cutOutDiameterM / 2
  const basket = clearanceRow(`${label}: hole to the walls behind the panel`, hole, clearanceRules.basketToWall)
  if (depth === undefined || magnetDiameterM === undefined || driver.mount === 'reversed') return [basket]
  const { rebateDepthM = 0 } = driver
  const rear = depth + rebateDepthM
  const front = Math.max(face.thicknessM, rear - magnetHeightM)
  const room = Math.min(...[front, Math.max(front, rear)].map(each => roomRound(inside, mounted, each)))
  return [
    basket,
    clearanceRow(`${label}: motor to the walls beside it`, room - magnetDiameterM / 2, clearanceRules.motorToSide)
  ]
}

function onThePanel(mounted: Mounted): readonly Clearance[] {
  if (mounted.kind === 'tube') return []
  const { flangeDiameterM } = mounted.driver
  if (flangeDiameterM === undefined) return []
  const edge = insideDistance(mounted.face.clear, { x: mounted.centre.uM, y: mounted.centre.vM }) - flangeDiameterM / 2
  return [clearanceRow(`${mounted.label}: flange to the edge of the free panel`, edge, clearanceRules.flangeToEdge)]
}

const holeRadius = (m: Mounted) => (m.kind === 'tube' ? m.outerDiameterM : (m.driver.cutOutDiameterM ?? 0)) / 2

function betweenTwo(a: Mounted, b: Mounted): readonly Clearance[] {
  if (a.face.name !== b.face.name) return []
  const apart = Math.hypot(a.centre.uM - b.centre.uM, a.centre.vM - b.centre.vM)
  const web = Math.max(clearanceRules.web.needM, 0)
  const rows = [
    clearanceRow(`${a.label} and ${b.label}: wood between the holes`, apart - holeRadius(a) - holeRadius(b), {
      ...clearanceRules.web,
      needM: web
    })
  ]
  if (a.kind === 'driver' && b.kind === 'driver' && a.driver.flangeDiameterM && b.driver.flangeDiameterM) {
    const flanges = apart - (a.driver.flangeDiameterM + b.driver.flangeDiameterM) / 2
    rows.push(clearanceRow(`${a.label} and ${b.label}: flange to flange`, flanges, clearanceRules.flangeToFlange))
  }
  return rows
}

/** Of a straight tube: its inner mouth to the wall it faces, at least its own diameter. */
function tubeMouth(inside: Inside, mounted: MountedTube): readonly Clearance[] {
  const { port, face, label, at } = mounted
  if (port.elbowRadiusM !== undefined) return []
  const ahead = roomAhead(inside, moved(at, face.inwards, face.thicknessM), face.inwards)
  const gap = ahead - mounted.insideM
  const why = 'the mouth of a port keeps its own diameter from the wall it faces (common practice)'
  return [clearanceRow(`${label}: inner mouth to the wall it faces`, gap, { needM: port.innerDiameterM, why })]
}

/** Said only where it fails: a tube may lie against a wall. */
function tubeHole({ face, centre, label, outerDiameterM }: MountedTube): readonly Clearance[] {
  const edge = roomForHole(face, centre) - outerDiameterM / 2
  const row = clearanceRow(`${label}: hole to the walls behind the panel`, edge, clearanceRules.tubeToWall)
  return row.passes ? [] : [row]
}

/** @param chamberOf  the inside that a thing stands in: one of the chambers of a box with a divider */
export function clearanceRows(
  chamberOf: (mounted: Mounted) => Inside,
  mounted: readonly Mounted[]
): readonly Clearance[] {
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
    .map(({ between, availableM, neededM, why }) => {
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
