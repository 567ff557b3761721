/** A slot port in a box: chosen legs, the air it takes, and its mouth in the front. */

import type { SlotPort } from '../../../contract/boxes/box-hardware.ts'
import { edgeLine, leftOf, meeting, vertex } from '../../../numeric/geometry/polygon.ts'
import { DesignError } from '../../design-error.ts'
import { toMm } from '../../digits.ts'
import { cornerFillM2 } from '../../port/bends.ts'
import { listed, say } from '../../say.ts'
import { type Inside, inFrame } from '../shell/face.ts'
import { type BarePanel, inBox } from '../shell/shell-panels.ts'
import { MOST_LEGS, type SlotPath, slotPath } from './slot-path.ts'
import { type PlacedPlane, slotPlane, unmirrored } from './slot-plane.ts'
import { quickTakenArea, type SlotRun, slotRun, takenArea } from './slot-run.ts'

export interface SlotSpace {
  readonly placed: PlacedPlane
  readonly heightM: number
  readonly wallM: number
  readonly widthM: number
  /** To which its plates and the front are rounded at the mouths. */
  readonly flareM: number
  /** Whether the outer corners of its bends are filled to a quarter round. */
  readonly isRound: boolean
  /** Whether the slot is narrower than the box and closed by a cheek. */
  readonly hasCheek: boolean
  /** One leg, two, as many as there are walls for. */
  readonly mostLegs: number
  /** Its way with so many legs, from 1; worked out when it is first asked for: most slots need one or two. */
  readonly pathWith: (legs: number) => SlotPath
}

export interface BuiltSlot {
  readonly kind: 'slot'
  readonly space: SlotSpace
  readonly run: SlotRun
  readonly takenM3: number
  /** Whether length and gap are as they should be; the lenient form is only for finding sizes. */
  readonly fits: boolean
}

/** A slot has at least half its height free before its mouth; below its whole height there is a caution. */
const LEAST_GAP_SHARE = 0.5

/** Over the plate of a slot the front keeps at least this much of its height [m]. */
export const LEAST_OVER_SLOT_M = 1e-3

/** A slot that leaves nothing of the front over its plate leaves no box behind it. */
function requireFront({ plane: { inner, front } }: PlacedPlane, heightM: number, wallM: number): void {
  const roomM = leftOf(edgeLine(inner, front + 1), vertex(inner, front))
  const maximum = Math.max(0, roomM - wallM - LEAST_OVER_SLOT_M)
  if (heightM <= maximum + 1e-9) return
  throw new DesignError('no-solution', {
    field: 'port.heightM',
    value: heightM,
    maximum,
    unit: 'm',
    detail: say('refused.the-front-is-high-inside-where', {
      roomMm: toMm(roomM),
      wallMm: toMm(wallM),
      maximumMm: toMm(maximum)
    })
  })
}

/** @throws DesignError `no-solution` when the slot is wider or higher than the box or leaves no room for its cheek */
export function slotSpace(inside: Inside, slot: SlotPort, boardM: number): SlotSpace {
  const placed = slotPlane(inside, slot)
  const wallM = slot.wallThicknessM ?? boardM
  const widthM = slot.widthM ?? placed.clear
  const hasCheek = widthM < placed.clear - 1e-9
  if (widthM > placed.clear + 1e-9 || (hasCheek && widthM + wallM > placed.clear + 1e-9)) {
    throw new DesignError('no-solution', {
      field: 'port.widthM',
      value: widthM,
      maximum: placed.clear - (hasCheek ? wallM : 0),
      unit: 'm',
      detail: say('refused.the-box-is-mm-wide-inside', {
        insideMm: Math.round(placed.clear * 1e3),
        wallMm: Math.round(wallM * 1e3)
      })
    })
  }
  requireFront(placed, slot.heightM, wallM)
  const size = { heightM: slot.heightM, wallM, isRound: slot.roundCorners === true }
  const mostLegs = Math.min(MOST_LEGS, placed.plane.inner.length - 1)
  const known: SlotPath[] = []
  const pathWith = (legs: number) => {
    known[legs] ??= slotPath(placed.plane, size, legs)
    return known[legs]
  }
  return { placed, ...size, widthM, flareM: slot.flareRadiusM ?? 0, hasCheek, mostLegs, pathWith }
}

interface ChosenLegs {
  readonly path: SlotPath
  readonly lengthM: number
  readonly fits: boolean
}

/** Longest centre line whose mouth keeps its gap from the wall it faces. */
const longest = ({ roomM, size }: SlotPath, gapShare: number) => roomM - gapShare * size.heightM

/** The fewest legs that hold a length; when none does, the nearest length that would. */
function chooseLegs(space: SlotSpace, lengthM: number): ChosenLegs {
  for (const gapShare of [1, LEAST_GAP_SHARE]) {
    for (let legs = 1; legs <= space.mostLegs; legs++) {
      const path = space.pathWith(legs)
      if (lengthM >= path.shortestM - 1e-9 && lengthM <= longest(path, gapShare) + 1e-9)
        return { path, lengthM, fits: true }
    }
  }
  const nearest = bandsOf(space)
    .map(({ path, longestM }) => ({ path, lengthM: Math.min(longestM, Math.max(path.shortestM, lengthM)) }))
    .reduce<{ path: SlotPath; lengthM: number } | undefined>(
      (best, next) =>
        best === undefined || Math.abs(next.lengthM - lengthM) < Math.abs(best.lengthM - lengthM) ? next : best,
      undefined
    )
  const bare = { path: space.pathWith(1), lengthM: space.placed.plane.frontM }
  return { ...(nearest ?? bare), fits: false }
}

/** Bands of length that find a place. */
const bandsOf = ({ mostLegs, pathWith, placed }: SlotSpace) =>
  Array.from({ length: mostLegs }, (_, k) => pathWith(k + 1))
    .map(path => ({ path, longestM: longest(path, LEAST_GAP_SHARE) }))
    .filter(({ path, longestM }) => longestM > Math.max(path.shortestM, placed.plane.frontM))

function refusal(lengthM: number, bands: ReturnType<typeof bandsOf>): DesignError {
  const lengths = bands.map(({ path, longestM }) =>
    say('refused.from-to', { fromMm: Math.round(path.shortestM * 1e3), toMm: toMm(longestM) })
  )
  return new DesignError('no-solution', {
    field: 'port.lengthM',
    value: lengthM,
    ...(bands.length === 0 ? {} : { maximum: Math.max(...bands.map(({ longestM }) => longestM)) }),
    unit: 'm',
    detail: say('refused.a-slot-of-does-not-fit', {
      lengthMm: toMm(lengthM),
      some: lengths.length === 0 ? say('refused.none-at-this-height') : listed(lengths)
    })
  })
}

/** Length of the plate beside the last leg: beyond a bend it starts behind the one before it [m]. */
export const lastPlateM = ({ run, space }: BuiltSlot): number => run.lastLegM - (run.legs > 1 ? space.wallM : 0)

const takenWidth = ({ widthM, hasCheek, wallM }: SlotSpace) => widthM + (hasCheek ? wallM : 0)

/** Of what fills its corners [m³]. */
const filledM3 = ({ isRound, heightM, widthM }: SlotSpace, { legs }: SlotPath) =>
  isRound ? (legs - 1) * cornerFillM2(heightM) * widthM : 0

/** What a slot of a length takes of the air, and what the air cuts off at its bends; as near as it goes where it finds no place. */
export function slotTakes(space: SlotSpace, lengthM: number) {
  const chosen = chooseLegs(space, lengthM)
  const takenM3 = quickTakenArea(chosen.path, chosen.lengthM) * takenWidth(space)
  return { takenM3: takenM3 + filledM3(space, chosen.path), cutOffM: chosen.path.cutOffM }
}

/** @throws DesignError `no-solution` unless lenient */
export function buildSlot(space: SlotSpace, lengthM: number, lenient: boolean): BuiltSlot {
  const { path, lengthM: laidM, fits } = chooseLegs(space, lengthM)
  if (!fits && !lenient) throw refusal(lengthM, bandsOf(space))
  const takenM3 = takenArea(path, laidM) * takenWidth(space) + filledM3(space, path)
  return { kind: 'slot', space, run: slotRun(path, laidM), takenM3, fits }
}

export interface Opening {
  readonly uM: number
  readonly vM: number
  readonly widthM: number
  readonly heightM: number
}

/** The mouth as it falls on a board of the front, in the frame of that board; with the plate's edge when asked. */
export function mouthOn({ space, run }: BuiltSlot, panel: BarePanel, withPlate = false): Opening {
  const { placed, heightM, wallM, widthM, hasCheek } = space
  const { plane } = placed
  const face = edgeLine(plane.inner, plane.front, -plane.frontM + panel.layer * panel.thicknessM)
  const at = (inwards: number, along: number) => {
    const leg = edgeLine(plane.inner, plane.front + 1, inwards)
    const point = meeting(face, leg) ?? run.mouth
    return inFrame(panel.place, inBox(placed.axis, unmirrored(placed, point), along))
  }
  const a = at(0, placed.start)
  const b = at(heightM + (withPlate ? wallM : 0), placed.start + widthM + (withPlate && hasCheek ? wallM : 0))
  return {
    uM: (a.uM + b.uM) / 2,
    vM: (a.vM + b.vM) / 2,
    widthM: Math.abs(a.uM - b.uM),
    heightM: Math.abs(a.vM - b.vM)
  }
}
