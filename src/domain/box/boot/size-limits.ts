/** The smallest box that takes its hardware and the largest that its place allows, axis by axis. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import type { BoxLimits, BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { bounds } from '../../../numeric/geometry/polygon.ts'
import { DesignError, type FoundFault } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import type { BoxTask } from '../request/box-task.ts'
import { LEAST_OVER_SLOT_M } from '../slot/slot-port.ts'
import { tubeWidest } from '../slot/tube.ts'
import { roomBefore, roomBehind } from '../solids/clearances.ts'
import { frontGaps, leastLineM } from '../solids/front-gaps.ts'
import { type Axis, axes } from './axes.ts'
import { faceNeed } from './face-needs.ts'

interface Range {
  readonly min: number
  readonly max: number
}
export type Ranges = Readonly<Record<Axis, Range>>

export const freeAxes = (ranges: Ranges) => axes.filter(axis => ranges[axis].max > ranges[axis].min)

/** No box of one board is longer [m]. */
const LONGEST_M = 3
/** Clear inside that a hand and a sealant gun need [m]. */
export const LEAST_INSIDE_M = 60e-3

const sizeField = { width: 'widthM', height: 'heightM', depth: 'depthM' } as const

/** Drivers on a face without a place of their own: diameters [m]. */
const flangesOn = ({ drivers = [] }: BoxRequest, on: 'front' | 'divider'): readonly number[] =>
  drivers
    .filter(({ face = 'front', centres }) => face === on && centres === undefined)
    .flatMap(({ count = 1, flangeDiameterM, cutOutDiameterM }) =>
      Array.from({ length: count }, () => flangeDiameterM ?? cutOutDiameterM ?? 0)
    )
    .filter(diameter => diameter > 0)

/** What stands on the front without a place of its own: diameters [m]. */
function frontDiameters(request: BoxRequest): readonly number[] {
  const { port } = request
  const tubes =
    port?.kind === 'round' && (port.face ?? 'front') === 'front' && port.centres === undefined
      ? Array.from({ length: port.count ?? 1 }, () => tubeWidest(port))
      : []
  return [...flangesOn(request, 'front'), ...tubes].filter(diameter => diameter > 0)
}

/** Rows that the fuller of front and divider can be set in at most. */
export const mostRows = (request: BoxRequest): number =>
  Math.max(1, frontDiameters(request).length, flangesOn(request, 'divider').length)

interface FrontNeed {
  readonly width: number
  readonly height: number
  /** Lower edge of the free front to the middle of the highest row. */
  readonly highest: number
}

/** Clear width and height of a front on which they stand in rows [m]. */
function frontNeed(diameters: readonly number[], rows: number): FrontNeed {
  if (diameters.length === 0) return { width: 0, height: 0, highest: 0 }
  const perRow = Math.ceil(diameters.length / rows)
  const lines = Array.from({ length: rows }, (_, i) => diameters.slice(i * perRow, (i + 1) * perRow)).filter(
    line => line.length > 0
  )
  const tallest = lines.map(line => Math.max(...line))
  const height = leastLineM(tallest)
  return {
    width: Math.max(...lines.map(leastLineM)),
    height,
    highest: height - frontGaps.toEdgeM - (tallest.at(-1) ?? 0) / 2
  }
}

/** Outer face of the front to the back panel's inner face [m]. */
function depthNeed({ drivers = [], port }: BoxRequest): number {
  const onFront = drivers.filter(({ face = 'front', mount }) => face === 'front' && mount !== 'reversed')
  const need = ({ mountingDepthM, rebateDepthM = 0, ...driver }: BoxDriver) =>
    mountingDepthM === undefined ? 0 : mountingDepthM + rebateDepthM + roomBehind(driver).needM
  const tube =
    port?.kind === 'round' && (port.face ?? 'front') === 'front' && port.elbowRadiusM === undefined
      ? (port.lengthM ?? port.insideLengthM ?? 0) + port.innerDiameterM
      : 0
  return Math.max(tube, ...onFront.map(need))
}

/** Inner face of the front to the inner face of the back, with a driver on a divider between them [m]. */
function dividedNeed({ drivers = [] }: BoxRequest, boardM: number): number {
  const needs = drivers
    .filter(({ face, mount }) => face === 'divider' && mount !== 'reversed')
    .map(({ mountingDepthM = boardM, rebateDepthM = 0, ...driver }) => {
      const behindM = Math.max(boardM, mountingDepthM + rebateDepthM) + roomBehind(driver).needM
      return roomBefore(driver).needM + behindM
    })
  return Math.max(0, ...needs)
}

/** Clear height over the wall that a slot runs along, in the axis in which it stands [m]. */
function slotNeed({ port }: BoxRequest, boardM: number, axis: Axis): number {
  if (port?.kind !== 'slot') return 0
  const { along = 'bottom', heightM, wallThicknessM = boardM } = port
  const stands = along === 'left' || along === 'right' ? 'width' : 'height'
  return axis === stands ? heightM + wallThicknessM + LEAST_OVER_SLOT_M : 0
}

/**
 * Depth that a slope takes away where the highest motor meets it [m]: at the upper rim of the motor under a leaning back, whose
 * board is cut through aslant.
 *
 *   (t + z + r)·tan θ + t·(1/cos θ − 1)
 */
function leanM({ request, fixed, slopeRad = 0 }: BoxTask, highestM: number): number {
  const { drivers = [] } = request
  const { thicknessM: t, slopedFace, acrossRad } = fixed
  const [front, back] = slopedFace === 'front' ? [slopeRad, acrossRad] : [acrossRad, slopeRad]
  if (depthNeed(request) === 0) return 0
  const aheadM = highestM * Math.tan(Math.max(0, front))
  const theta = Math.max(0, back)
  const radii = drivers
    .filter(({ face = 'front' }) => face === 'front')
    .map(({ magnetDiameterM = 0 }) => magnetDiameterM / 2)
  if (theta === 0) return aheadM
  return aheadM + (t + highestM + Math.max(0, ...radii)) * Math.tan(theta) + t * (1 / Math.cos(theta) - 1)
}

/** What play and covering take of the place on each side of the box [m]. */
const aroundM = ({ clearanceM = 0, coveringM = 0 }: BoxLimits) => clearanceM + coveringM

/** What a limit leaves for the box itself. */
function allowed(limits: BoxLimits, axis: Axis): number | undefined {
  const limit = limits[sizeField[axis]]
  return limit === undefined ? undefined : limit - 2 * aroundM(limits)
}

/** A prism is as wide and deep as its footprint. */
function footprintSize({ shape, footprint }: BoxTask['fixed'], axis: Axis): number | undefined {
  if (shape !== 'prism' || axis === 'height') return undefined
  const { width, height } = bounds(footprint)
  return axis === 'width' ? width : height
}

/**
 * @param rows  in which the drivers of the front stand
 * @returns outer sizes between which the box may lie
 */
export function sizeRanges(resolved: BoxTask, rows: number): Ranges {
  const { request, fixed } = resolved
  const { thicknessM: t, frontLayers, recessM, shape } = fixed
  const { limits = {}, outer = {} } = request
  const front = frontNeed(frontDiameters(request), rows)
  const between = frontNeed(flangesOn(request, 'divider'), rows)
  const [across, up, along] = [faceNeed(request, 'width'), faceNeed(request, 'height'), faceNeed(request, 'depth')]
  const upright = [
    front.height,
    between.height,
    up.clearM,
    ...(shape === 'prism' ? [] : [slotNeed(request, t, 'height')])
  ]
  const frontM = recessM + frontLayers * t
  const least = {
    width: Math.max(
      2 * t + Math.max(LEAST_INSIDE_M, front.width, between.width, slotNeed(request, t, 'width'), across.clearM),
      t + across.behindM
    ),
    height: Math.max(2 * t + Math.max(LEAST_INSIDE_M, ...upright), t + up.behindM),
    depth: Math.max(
      recessM + t + leanM(resolved, front.highest) + Math.max(frontLayers * t + LEAST_INSIDE_M, depthNeed(request)),
      frontM + Math.max(t + along.clearM, along.behindM, t + dividedNeed(request, t))
    )
  }
  const range = (axis: Axis): Range => {
    const given = outer[sizeField[axis]] ?? footprintSize(fixed, axis)
    return given === undefined
      ? { min: least[axis], max: allowed(limits, axis) ?? LONGEST_M }
      : { min: given, max: given }
  }
  return { width: range('width'), height: range('height'), depth: range('depth') }
}

/** The axes on which the hardware needs more than the place allows. */
export function rangeFaults(ranges: Ranges, limits: BoxRequest['limits']): readonly FoundFault[] {
  return axes.flatMap(axis => {
    const { min, max } = ranges[axis]
    const field = sizeField[axis]
    return min <= max + 1e-9 || limits?.[field] === undefined
      ? []
      : [
          {
            field: `limits.${field}`,
            value: max,
            minimum: Math.round(min * 1e9) / 1e9,
            unit: 'm',
            detail: say('refused.the-box-would-have-to-be', {
              leastMm: Math.ceil(min * 1e3),
              axis: say(`axis.${axis}`),
              limitMm: Math.round(max * 1e3),
              around:
                aroundM(limits) === 0 ? '' : say('refused.less-around', { aroundMm: toDigits(aroundM(limits) * 1e3) })
            })
          }
        ]
  })
}

export function noFit(faults: readonly FoundFault[]): DesignError | undefined {
  const [first, ...rest] = faults
  return first === undefined ? undefined : new DesignError('no-solution', first, ...rest)
}
