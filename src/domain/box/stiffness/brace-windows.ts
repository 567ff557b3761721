/** Braces across the axis of a box: frames with a window, each a line that holds every wall it touches. */
import type { CutOut } from '../../../contract/boxes/panel.ts'
import { bounds, centroid, type Polygon, signedArea, vertex } from '../../../numeric/geometry/polygon.ts'
import { insideDistance } from '../../../numeric/geometry/polygon-distance.ts'
import type { BuiltDivider } from '../shell/divider.ts'
import type { Inside } from '../shell/face.ts'
import { profilePoint } from '../shell/face.ts'
import { clearLength } from '../shell/shell.ts'
import { type BarePanel, inBox } from '../shell/shell-panels.ts'
import { unmirrored } from '../slot/slot-plane.ts'
import type { BuiltSlot } from '../slot/slot-port.ts'
import type { Mounted, MountedDriver } from '../solids/mounting.ts'

/** Wood left round the window [m], and the largest share of the frame it opens. */
const WEB_M = 40e-3
const LARGEST_WINDOW = 0.6
/** Play between a brace and what it stands beside [m]. */
const PLAY_M = 5e-3
/** How far a brace may leave its even place, as a share of the clear length. */
const SHIFT_SHARE = 0.15
/** Places tried to either side of the even one. */
const STEPS = 12

/** Of a driver on the divider the flange stands in the box as well. */
const widest = ({ driver, face }: MountedDriver) =>
  Math.max(driver.cutOutDiameterM ?? 0, face.name === 'divider' ? (driver.flangeDiameterM ?? 0) : 0)

/** A slot in the plane of the frames, and how far one that crosses it reaches from each end [m]. */
interface Beside {
  readonly slot?: BuiltSlot
  readonly low: number
  readonly high: number
}

/** Stretches of the axis, from the inner face of the low cap, where a frame would cut into something. */
function keptClear(inside: Inside, mounted: readonly Mounted[], { slot, low, high }: Beside, thicknessM: number) {
  const start = inside.shell.caps.low.thicknessM
  const clear = clearLength(inside.shell)
  const half = thicknessM / 2 + PLAY_M
  const items = mounted.map(each => {
    const { along } = profilePoint(inside.shell.axis, each.at)
    const direction = profilePoint(inside.shell.axis, {
      xM: each.face.inwards.x,
      yM: each.face.inwards.y,
      zM: each.face.inwards.z
    }).along
    const depth = each.kind === 'driver' ? (each.driver.mountingDepthM ?? 0) : each.insideM + each.port.innerDiameterM
    const radius = (each.kind === 'driver' ? widest(each) : each.widestM) / 2
    const centre = along - start
    return Math.abs(direction) < 0.5
      ? { from: centre - radius - half, to: centre + radius + half }
      : direction > 0
        ? { from: -half, to: depth + half }
        : { from: clear - depth - half, to: clear + half }
  })
  const ends = [
    { from: -half, to: low === 0 ? -half : low + half },
    { from: high === 0 ? clear + half : clear - high - half, to: clear + half }
  ]
  if (slot === undefined || !slot.space.hasCheek) return [...items, ...ends]
  const edge = slot.space.widthM + slot.space.wallM / 2
  return [...items, ...ends, { from: edge - slot.space.wallM - half, to: edge + slot.space.wallM + half }]
}

/**
 * Places of n frames, as even as what stands in the box allows.
 *
 * @param beside  slots whose reach is known
 * @param standsClear  whether a frame there is clear of what `mounted` does not tell: elbows, a cup, an amplifier
 * @returns distances from the inner face of the low cap, or none when a frame finds no place
 */
export function framePlaces(
  inside: Inside,
  mounted: readonly Mounted[],
  beside: Beside,
  thicknessM: number,
  count: number,
  standsClear: (place: number) => boolean
): readonly number[] | undefined {
  const clear = clearLength(inside.shell)
  const taken = keptClear(inside, mounted, beside, thicknessM)
  const isFree = (place: number) =>
    place > thicknessM &&
    place < clear - thicknessM &&
    taken.every(({ from, to }) => place <= from || place >= to) &&
    standsClear(place)
  const places: number[] = []
  for (let k = 1; k <= count; k++) {
    const even = (clear * k) / (count + 1)
    const steps = Array.from({ length: 2 * STEPS + 1 }, (_, i) => even + ((i - STEPS) / STEPS) * SHIFT_SHARE * clear)
    const near = [even, ...taken.flatMap(({ from, to }) => [from - 1e-6, to + 1e-6]), ...steps]
      .filter(place => Math.abs(place - even) <= SHIFT_SHARE * clear + 1e-9)
      .filter(place => places.every(other => Math.abs(other - place) > 2 * thicknessM))
      .toSorted((a, b) => Math.abs(a - even) - Math.abs(b - even))
      .find(isFree)
    if (near === undefined) return undefined
    places.push(near)
  }
  return places.toSorted((a, b) => a - b)
}

/** The air of the profile where a slot stands in it. */
function besideSlot({ space, run }: BuiltSlot): Polygon {
  const { plane, isMirrored } = space.placed
  const half = run.taken.length / 2
  const far = run.taken.slice(half).toReversed()
  const end = run.taken[half - 1]
  const n = plane.inner.length
  const rest = Array.from({ length: n - run.legs }, (_, k) => vertex(plane.inner, plane.front + run.legs + 1 + k))
  const points = [...far, ...(end === undefined ? [] : [end]), ...rest].map(point => unmirrored(space.placed, point))
  return isMirrored ? points.toReversed() : points
}

export interface Frame {
  /** From the inner face of the low cap to its middle [m]. */
  readonly placeM: number
  readonly chamber: 'rear' | 'front'
  readonly outline: Polygon
  readonly window: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  readonly volumeM3: number
}

interface FrameSpace {
  readonly inside: Inside
  readonly slot?: BuiltSlot
  readonly divider?: BuiltDivider
  readonly thicknessM: number
}

type Section = Omit<Frame, 'placeM'>

/** Sections that frames are cut to: beside the slot as far as it reaches along the axis, whole beyond it. */
interface FrameSections {
  readonly reachM: number
  readonly beside: readonly Section[] | undefined
  readonly whole: readonly Section[] | undefined
}

/** A frame fills the profile less a slot that passes there, or each chamber by itself: none runs through a divider. */
export function frameSections({ inside, slot, divider, thicknessM }: FrameSpace): FrameSections {
  const section = (chamber: Section['chamber'], outline: Polygon): Section | undefined => {
    const window = widestWindow(outline)
    const volumeM3 = window && (signedArea(outline) - window.width * window.height) * thicknessM
    return window && volumeM3 !== undefined ? { chamber, outline, window, volumeM3 } : undefined
  }
  // A frame without a window would part the air: then none stands there.
  const all = (sections: readonly (Section | undefined)[]) =>
    sections.every(each => each !== undefined) ? sections : undefined
  const whole =
    divider === undefined
      ? [section('rear', inside.inner)]
      : [section('front', divider.parts.front), section('rear', divider.parts.rear)]
  const isCut = slot !== undefined && divider === undefined
  return {
    reachM: isCut ? slot.space.widthM + (slot.space.hasCheek ? slot.space.wallM : 0) : 0,
    beside: isCut ? all([section('rear', besideSlot(slot))]) : undefined,
    whole: all(whole)
  }
}

/** The widest window whose webs an outline allows; none where it would be a slit. */
function widestWindow(outline: Polygon): Frame['window'] | undefined {
  const { width: w, height: h } = bounds(outline)
  const { x, y } = centroid(outline)
  const corners = [-1, 0, 1].flatMap(i => [-1, 0, 1].map(k => [i, k] as const)).filter(([i, k]) => i !== 0 || k !== 0)
  const hasWebs = (share: number) =>
    corners.every(
      ([i, k]) => insideDistance(outline, { x: x + (i * w * share) / 2, y: y + (k * h * share) / 2 }) >= WEB_M
    )
  let share = Math.min(1, Math.sqrt((LARGEST_WINDOW * signedArea(outline)) / (w * h)))
  while (share > 0.1 && !hasWebs(share)) share -= 0.02
  return share > 0.1 ? { x, y, width: w * share, height: h * share } : undefined
}

/** The frames that stand at one place, one in each chamber; none where one of them would have no window. */
export function framesAt({ reachM, beside, whole }: FrameSections, placeM: number): readonly Frame[] | undefined {
  return (placeM < reachM ? beside : whole)?.map(section => ({ placeM, ...section }))
}

function windowHoles({ outline, window }: Frame): readonly CutOut[] {
  const { left, low } = bounds(outline)
  return [
    {
      kind: 'rectangle',
      purpose: 'brace-window',
      label: 'window',
      uM: window.x - left,
      vM: window.y - low,
      widthM: window.width,
      heightM: window.height,
      cornerRadiusM: 20e-3
    }
  ]
}

/** The frame as a part, seen along the axis as the right side or the lid of the box is. */
export function framePanel({ shell }: Inside, frame: Frame, thicknessM: number, name: string) {
  const box = bounds(frame.outline)
  const upright = shell.axis === 'x'
  const panel: BarePanel = {
    name,
    role: 'brace',
    wall: 'inside',
    layer: 0,
    thicknessM,
    outline: frame.outline.map(({ x, y }) => ({ uM: x - box.left, vM: y - box.low })),
    edges: [],
    place: {
      origin: inBox(shell.axis, { x: box.left, y: box.low }, shell.caps.low.thicknessM + frame.placeM + thicknessM / 2),
      uAxis: upright ? { x: 0, y: 1, z: 0 } : { x: 1, y: 0, z: 0 },
      vAxis: upright ? { x: 0, y: 0, z: 1 } : { x: 0, y: 1, z: 0 }
    },
    volumeM3: signedArea(frame.outline) * thicknessM
  }
  return { panel, holes: windowHoles(frame) }
}
