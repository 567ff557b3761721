/** Drivers and tubes as they are seen: sizes that a sheet does not give are the usual ones, and only the picture rests on them. */
import type { Direction3 } from '../shell/panel.ts'
import type { MountedDriver, MountedTube } from './mounting.ts'
import type { Shape, TurnedPoint } from './shape.ts'
import { type Disc, toDirection, toVector } from './solids.ts'

/** Of the cut-out: mouth of the cone and its dust cap; of the mounting depth: how deep the cone is. */
const CONE_SHARE = 0.9
const CAP_SHARE = 0.3
const HOLLOW_SHARE = 0.35
/** Thickness of a flange; no sheet gives it [m]. */
export const FLANGE_M = 6e-3
/** Depth of a driver whose sheet does not give it, as a share of its cut-out. */
const DEPTH_SHARE = 0.4

const turnedAway = ({ x, y, z }: Direction3): Direction3 => ({ x: -x, y: -y, z: -z })

/** Along from the outer side of the board into the box: hollow cone, flange, basket, motor. */
function driverOutline({ driver }: MountedDriver): readonly TurnedPoint[] {
  const { cutOutDiameterM = 0, flangeDiameterM = cutOutDiameterM, rebateDepthM: sunk = 0, magnetHeightM } = driver
  const hole = cutOutDiameterM / 2
  const depth = driver.mountingDepthM ?? DEPTH_SHARE * cutOutDiameterM
  const motor = (driver.magnetDiameterM ?? cutOutDiameterM * 0.6) / 2
  const rear = sunk + depth
  const [front, motorAt] = [sunk - FLANGE_M, rear - Math.min(magnetHeightM ?? depth / 3, 0.8 * depth)]
  const hollow = front + HOLLOW_SHARE * depth
  return [
    { along: hollow, radius: 0 },
    { along: hollow, radius: CAP_SHARE * hole },
    { along: front, radius: CONE_SHARE * hole },
    { along: front, radius: Math.max(hole, flangeDiameterM / 2) },
    { along: sunk, radius: Math.max(hole, flangeDiameterM / 2) },
    { along: sunk, radius: 0.99 * hole },
    { along: motorAt, radius: motor },
    { along: rear, radius: motor },
    { along: rear, radius: 0 }
  ]
}

/** A reversed driver is the same thing with its motor outside. */
export function driverShape(mounted: MountedDriver): Shape {
  const { face, at, driver } = mounted
  const along = toDirection(driver.mount === 'reversed' ? turnedAway(face.inwards) : face.inwards)
  return { kind: 'turned', centre: toVector(at), along, outline: driverOutline(mounted), isClosed: false }
}

/** Steps in which the quarter circle of a flare is drawn. */
const FLARE_STEPS = 8

/** From the straight part to the mouth: how far along, and how far the wall stands back. */
const flareSteps = (radiusM: number) =>
  Array.from({ length: FLARE_STEPS + 1 }, (_, i) => {
    const angle = ((i / FLARE_STEPS) * Math.PI) / 2
    return { along: radiusM * Math.sin(angle), back: radiusM * (1 - Math.cos(angle)) }
  })

/** A tube that opens to both mouths. */
function flaredOutline(outer: number, inner: number, end: number, flareM: number): readonly TurnedPoint[] {
  const steps = flareSteps(flareM)
  const front = (radius: number) => steps.map(({ along, back }) => ({ along: flareM - along, radius: radius + back }))
  const rear = (radius: number) =>
    steps.map(({ along, back }) => ({ along: end - flareM + along, radius: radius + back }))
  return [...front(inner), ...front(outer).toReversed(), ...rear(outer), ...rear(inner).toReversed()]
}

/** A straight tube with its bore, from the outer side of its panel to the inner mouth. */
export function tubeShape({ face, at, outerDiameterM, insideM, port }: MountedTube): Shape {
  const end = face.thicknessM + insideM
  const [outer, inner] = [outerDiameterM / 2, port.innerDiameterM / 2]
  const { flangeDiameterM = 0, flangeThicknessM = 0 } = port
  const flange = flangeDiameterM / 2 > outer && flangeThicknessM > 0
  const rim = flange
    ? [
        { along: end - flangeThicknessM, radius: outer },
        { along: end - flangeThicknessM, radius: flangeDiameterM / 2 },
        { along: end, radius: flangeDiameterM / 2 }
      ]
    : [{ along: end, radius: outer }]
  const { flareRadiusM = 0 } = port
  if (flareRadiusM > 0) {
    const outline = flaredOutline(outer, inner, end, flareRadiusM)
    return { kind: 'turned', centre: toVector(at), along: toDirection(face.inwards), outline, isClosed: true }
  }
  const outline = [{ along: 0, radius: inner }, { along: 0, radius: outer }, ...rim, { along: end, radius: inner }]
  return { kind: 'turned', centre: toVector(at), along: toDirection(face.inwards), outline, isClosed: true }
}

/** A tube with an elbow: from the outer side of its panel along its legs and its bend. */
export function elbowShape({ face, at, outerDiameterM, port }: MountedTube, way: readonly Disc[]): Shape {
  const along = toDirection(face.inwards)
  const mouth: Disc = { centre: toVector(at), along, radius: outerDiameterM / 2 }
  return { kind: 'pipe', way: [mouth, ...way], innerRadius: port.innerDiameterM / 2 }
}
