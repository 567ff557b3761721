/** Sizes that drivers and tubes on lid, floor, sides and back ask of a box; the front has rules of its own. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import { tubeWidest } from '../slot/tube.ts'
import { roomBehind } from '../solids/clearances.ts'
import { frontGaps, leastLineM } from '../solids/front-gaps.ts'
import type { Axis } from './axes.ts'

/** Along which sizes a face lies, the line of drivers first, and which lies behind it. */
const sizesOfFace: Readonly<
  Partial<Record<FaceName, { readonly line: Axis; readonly across: Axis; readonly behind: Axis }>>
> = {
  top: { line: 'width', across: 'depth', behind: 'height' },
  bottom: { line: 'width', across: 'depth', behind: 'height' },
  left: { line: 'depth', across: 'height', behind: 'width' },
  right: { line: 'depth', across: 'height', behind: 'width' },
  back: { line: 'width', across: 'height', behind: 'depth' }
}

interface OnFace {
  readonly face: FaceName
  readonly diameterM: number
  /** Outer face of its board to the inner face across, without what neighbours need. */
  readonly behindM: number
}

function driversOf({ drivers = [] }: BoxRequest): readonly OnFace[] {
  return drivers
    .filter(({ centres }) => centres === undefined)
    .flatMap(({ face = 'front', count = 1, flangeDiameterM, cutOutDiameterM = 0, mount, ...driver }) => {
      const { mountingDepthM = 0, rebateDepthM = 0 } = driver
      const behindM =
        mount === 'reversed' || mountingDepthM === 0 ? 0 : mountingDepthM + rebateDepthM + roomBehind(driver).needM
      return Array.from({ length: count }, () => ({ face, diameterM: flangeDiameterM ?? cutOutDiameterM, behindM }))
    })
}

function tubesOf({ port }: BoxRequest): readonly OnFace[] {
  if (port?.kind !== 'round' || port.centres !== undefined) return []
  const { face = 'front', count = 1, lengthM, insideLengthM, innerDiameterM, elbowRadiusM } = port
  const behindM = elbowRadiusM === undefined ? (lengthM ?? insideLengthM ?? 0) + innerDiameterM : 0
  return Array.from({ length: count }, () => ({ face, diameterM: tubeWidest(port), behindM }))
}

/**
 * Least clear size inside along an axis, and least outer size less the board across.
 *
 * @validity one line of drivers a face, along the width, on a side along the depth; upright faces
 */
export function faceNeed(request: BoxRequest, axis: Axis): { readonly clearM: number; readonly behindM: number } {
  const things = [...driversOf(request), ...tubesOf(request)].filter(({ diameterM }) => diameterM > 0)
  const needs = Object.entries(sizesOfFace).flatMap(([face, { line, across, behind }]) => {
    const here = things.filter(each => each.face === face)
    if (here.length === 0) return []
    const diameters = here.map(({ diameterM }) => diameterM)
    const acrossM = Math.max(...diameters) + 2 * frontGaps.toEdgeM
    return [
      {
        clearM: axis === line ? leastLineM(diameters) : axis === across ? acrossM : 0,
        behindM: axis === behind ? Math.max(...here.map(each => each.behindM)) : 0
      }
    ]
  })
  return {
    clearM: Math.max(0, ...needs.map(({ clearM }) => clearM)),
    behindM: Math.max(0, ...needs.map(({ behindM }) => behindM))
  }
}
