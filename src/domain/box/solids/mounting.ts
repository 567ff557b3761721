/** Drivers, tubes and the terminal cup set on their faces, and the holes they need. */

import type { BoxDriver, PlaceOnPanel, RoundPort } from '../../../contract/boxes/box-hardware.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { CutOut, Point3 } from '../../../contract/boxes/panel.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import type { Polygon } from '../../../numeric/geometry/polygon.ts'
import { leftPart } from '../../../numeric/geometry/polygon.ts'
import { DesignError } from '../../design-error.ts'
import { present } from '../../present.ts'
import { say, worded } from '../../say.ts'
import { driverFixing, USUAL_SCREW_COUNT } from '../request/driver-fixing.ts'
import { type BuiltDivider, faceOfChamber } from '../shell/divider.ts'
import { type Face, findFace, type Inside, inFrame, onFace } from '../shell/face.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { tubeOuter, tubeWidest } from '../slot/tube.ts'
import { arrange } from './arrange.ts'

export interface MountedDriver {
  readonly kind: 'driver'
  readonly label: string
  readonly driver: BoxDriver
  readonly field: string
  readonly face: Face
  readonly centre: PlaceOnPanel
  readonly at: Point3
}

export interface MountedTube {
  readonly kind: 'tube'
  readonly label: string
  readonly port: RoundPort
  readonly outerDiameterM: number
  /** What passes the panel: the tube, or its flare. */
  readonly widestM: number
  /** Behind the inner face of its panel. */
  readonly insideM: number
  readonly field: string
  readonly face: Face
  readonly centre: PlaceOnPanel
  readonly at: Point3
}
export type Mounted = MountedDriver | MountedTube

/** Fit of a tube in its hole [m]. */
const TUBE_FIT_M = 0.5e-3
interface Item {
  readonly label: string
  readonly field: string
  readonly faceName: FaceName
  readonly diameterM: number
  readonly centre?: PlaceOnPanel
  readonly mount: (face: Face, centre: PlaceOnPanel) => Mounted
}

/** Each driver a name of its own, so that a hole tells whose it is: a name that several bear is numbered. */
function driverNames(drivers: readonly BoxDriver[]): (driver: BoxDriver) => string {
  const bare = ({ label, kind }: BoxDriver) => label ?? (kind === 'passive-radiator' ? 'passive radiator' : 'driver')
  const total = (name: string) => drivers.reduce((sum, each) => sum + (bare(each) === name ? (each.count ?? 1) : 0), 0)
  const given = new Map<string, number>()
  return driver => {
    const name = bare(driver)
    const number = (given.get(name) ?? 0) + 1
    given.set(name, number)
    return total(name) === 1 ? name : `${name} ${number}`
  }
}

function driverItems(drivers: readonly BoxDriver[]): readonly Item[] {
  const name = driverNames(drivers)
  return drivers.flatMap((driver, i) => {
    const { count = 1, centres } = driver
    const field = `drivers[${i}]`
    if (centres !== undefined && centres.length !== count) {
      throw new DesignError('conflicting-input', {
        field: `${field}.centres`,
        detail: say('refused.there-are-drivers-of-this-kind', { count, centres: centres.length })
      })
    }
    if (driver.cutOutDiameterM === undefined) return []
    const diameterM = driver.flangeDiameterM ?? driver.cutOutDiameterM
    return Array.from({ length: count }, (_, n): Item => {
      const label = name(driver)
      const centre = centres?.[n]
      return {
        label,
        field,
        faceName: driver.face ?? 'front',
        diameterM,
        ...present({ centre }),
        mount: (face, at) => ({ kind: 'driver', label, driver, field, face, centre: at, at: onFace(face.place, at) })
      }
    })
  })
}

function tubeItems(port: RoundPort, insideM: number): readonly Item[] {
  const { count = 1, centres } = port
  if (centres !== undefined && centres.length !== count) {
    throw new DesignError('conflicting-input', {
      field: 'port.centres',
      detail: say('refused.there-are-tubes-but-centres', { count, centres: centres.length })
    })
  }
  const [outerDiameterM, widestM] = [tubeOuter(port), tubeWidest(port)]
  return Array.from({ length: count }, (_, n): Item => {
    const label = count === 1 ? 'port' : `port ${n + 1}`
    const centre = centres?.[n]
    return {
      label,
      field: 'port',
      faceName: port.face ?? 'front',
      diameterM: widestM,
      ...present({ centre }),
      mount: (face, at) => ({
        kind: 'tube',
        label,
        port,
        outerDiameterM,
        widestM,
        insideM,
        field: 'port',
        face,
        centre: at,
        at: onFace(face.place, at)
      })
    }
  })
}

/** Where nothing else may stand on a face: what a slot takes of it, as a line that has the free part on its left. */
type Reserved = (face: Face) => Polygon

/** Sets everything on its face, tubes alone on one in their chamber; what has no centre is arranged with the others that have none. */
export function mountAll(
  inside: Inside,
  panels: readonly BarePanel[],
  { drivers = [], port, divider: { screwedFront } = {}, thicknessM }: BoxRequest,
  free: Reserved,
  tubeInsideM: number,
  divider?: BuiltDivider
): readonly Mounted[] {
  const items = [...driverItems(drivers), ...(port?.kind === 'round' ? tubeItems(port, tubeInsideM) : [])]
  const bareM = screwedFront ? thicknessM : 0
  const names = [...new Set(items.map(({ faceName }) => faceName))]
  return names.flatMap(name => {
    const here = items.filter(({ faceName }) => faceName === name)
    const whole = findFace(inside, panels, name, `${here[0]?.field}.face`)
    const isTubes = here.every(({ field }) => field === 'port')
    const face =
      divider === undefined || port?.kind !== 'round' || !isTubes
        ? whole
        : faceOfChamber(inside, divider, whole, port.chamber ?? 'rear', bareM)
    const loose = here.filter(({ centre }) => centre === undefined)
    const places = arrange(
      free(face),
      loose.map(({ diameterM }) => diameterM)
    )
    return here.map(item => item.mount(face, item.centre ?? places[loose.indexOf(item)] ?? { uM: 0, vM: 0 }))
  })
}

/** The clear part of a face less a strip along its lower, upper, left or right edge. */
export function withoutStrip(clear: Polygon, edge: 'lower' | 'upper' | 'left' | 'right', depthM: number): Polygon {
  const xs = clear.map(({ x }) => x)
  const ys = clear.map(({ y }) => y)
  const lines = {
    lower: { at: { x: 0, y: Math.min(...ys) + depthM }, along: { x: 1, y: 0 } },
    upper: { at: { x: 0, y: Math.max(...ys) - depthM }, along: { x: -1, y: 0 } },
    left: { at: { x: Math.min(...xs) + depthM, y: 0 }, along: { x: 0, y: -1 } },
    right: { at: { x: Math.max(...xs) - depthM, y: 0 }, along: { x: 0, y: 1 } }
  }
  return leftPart(clear, lines[edge])
}

function screwsOf({
  screwCircleDiameterM,
  screwCount = USUAL_SCREW_COUNT,
  massKg
}: BoxDriver): Pick<CutOut, 'screwCircle'> {
  if (screwCircleDiameterM === undefined) return {}
  const { screw, pilotM } = driverFixing(massKg)
  return {
    screwCircle: {
      diameterM: screwCircleDiameterM,
      count: screwCount,
      startAngleDeg: 0,
      holeDiameterM: pilotM,
      ...worded({ screw: say(screw) })
    }
  }
}

function driverHoles({ driver, label, centre }: MountedDriver): readonly CutOut[] {
  const { cutOutDiameterM = 0, flangeDiameterM, rebateDepthM } = driver
  const hole: CutOut = {
    kind: 'circle',
    purpose: driver.kind ?? 'driver',
    label,
    ...centre,
    diameterM: cutOutDiameterM,
    ...screwsOf(driver)
  }
  if (rebateDepthM === undefined || flangeDiameterM === undefined) return [hole]
  return [
    {
      kind: 'circle',
      purpose: 'driver-rebate',
      label,
      ...centre,
      diameterM: flangeDiameterM + 1e-3,
      rebateDepthM
    },
    hole
  ]
}

/** Holes in the outer panel of the face; `through` repeats in every layer, rebates only in the outermost. */
export function holesOf(mounted: Mounted): readonly CutOut[] {
  if (mounted.kind === 'driver') return driverHoles(mounted)
  const { label, centre, widestM } = mounted
  return [{ kind: 'circle', purpose: 'port', label, ...centre, diameterM: widestM + TUBE_FIT_M }]
}

/** The holes of a face as they fall on one of its boards, whose frame may be shifted against the outer one. */
export function holesOn(panel: BarePanel, face: Face, holes: readonly CutOut[]): readonly CutOut[] {
  return holes
    .filter(({ rebateDepthM }) => rebateDepthM === undefined || panel.layer === 0)
    .map(hole => ({ ...hole, ...inFrame(panel.place, onFace(face.place, hole)) }))
}
