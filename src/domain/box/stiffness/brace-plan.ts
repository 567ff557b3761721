/** Braces as a count and in their places: frames across the box and battens on its faces, and the wood they are. */
import { present } from '../../present.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Body } from '../solids/bodies.ts'
import { overlaps } from '../solids/body-pairs.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { standingIn } from '../solids/fitting-places.ts'
import { BATTEN_HEIGHT_M, type Batten, battenLengthM, placeBattens, type SpanBattens } from './batten-places.ts'
import { frameBodies } from './brace-bodies.ts'
import { type Frame, framePlaces, frameSections, framesAt } from './brace-windows.ts'
import { alongSlot, crossingReach, crossingSlot, type FreeFace, freeFaces } from './free-face.ts'

/** How many, not where: places follow from the sizes of the box. */
export interface BracePlan {
  readonly frames: number
  /** Battens in each span, by name of the face. */
  readonly battens: Readonly<Record<string, number>>
}

/** A request with the braces that are to be set into its box. */
export interface BracedTask extends BoxTask {
  readonly plan?: BracePlan
}

/** Wood of the braces in each chamber; a box of one chamber has all of it in the rear [m³]. */
export interface BraceAir {
  readonly rearM3: number
  readonly frontM3: number
}
export const noBraceAir: BraceAir = { rearM3: 0, frontM3: 0 }

export const noBraces: BracePlan = { frames: 0, battens: {} }
export interface PlacedBraces {
  readonly frames: readonly Frame[]
  /** Each face with the lines that hold it and its battens. */
  readonly faces: readonly { readonly face: FreeFace; readonly spans: readonly SpanBattens[] }[]
}

/** Frames clear of what stands in the box; none where one of them finds no place. */
export function placeFrames(
  built: FittedBox,
  { fixed }: BoxTask,
  count: number,
  others: readonly Body[]
): readonly Frame[] | undefined {
  if (count === 0) return []
  const { inside, divider } = built
  const slot = alongSlot(built)
  const sections = frameSections({ inside, thicknessM: fixed.thicknessM, ...present({ slot, divider }) })
  // Frames are cut round slot and divider, and stand beside the whole depth of a driver or a straight tube anyway.
  const bent = built.mounted.filter(each => each.kind === 'tube' && each.port.elbowRadiusM !== undefined)
  const inTheWay = others.filter(
    ({ kind, name }) =>
      kind === 'cup' ||
      kind === 'amplifier' ||
      (kind === 'slot' && slot === undefined) ||
      bent.some(({ label }) => label === name)
  )
  const standsClear = (place: number) => {
    if (inTheWay.length === 0) return true
    const bodies = framesAt(sections, place)?.map(frame => frameBodies(inside, frame, fixed.thicknessM, 'brace'))
    return bodies?.every(frame => !inTheWay.some(other => overlaps(frame, other))) ?? false
  }
  const beside = { ...present({ slot }), ...crossingReach(built) }
  const places = framePlaces(inside, built.mounted, beside, fixed.thicknessM, count, standsClear)
  const frames = places?.map(place => framesAt(sections, place))
  return frames?.every(each => each !== undefined) ? frames.flat() : undefined
}

export const placesOf = (frames: readonly Frame[]) => [...new Set(frames.map(({ placeM }) => placeM))]

export function bodiesOf({ inside }: FittedBox, { fixed }: BoxTask, frames: readonly Frame[]): readonly Body[] {
  return frames.map((frame, i) => frameBodies(inside, frame, fixed.thicknessM, `brace ${i + 1}`))
}

/** A plan in a box; what finds no place stands at its even one, and the clearances say what it meets. */
export function placeBraces(
  built: FittedBox,
  resolved: BoxTask,
  plan: BracePlan,
  others: readonly Body[]
): PlacedBraces {
  const frames = placeFrames(built, resolved, plan.frames, others) ?? []
  const standing = [...others, ...bodiesOf(built, resolved, frames)]
  const faces = freeFaces(built, placesOf(frames)).map(face => {
    const site = { built, face, thicknessM: resolved.fixed.thicknessM }
    const count = plan.battens[face.name] ?? 0
    const spans = placeBattens(site, count, standing) ?? placeBattens(site, count, []) ?? []
    return { face, spans }
  })
  return { frames, faces }
}

const battenVolume = (batten: Batten, thicknessM: number) => battenLengthM(batten) * thicknessM * BATTEN_HEIGHT_M

/** Wood of placed braces in each chamber; battens stand in the rear one, or on the front, which is in the front one. */
function woodOf({ frames, faces }: PlacedBraces, built: FittedBox, { fixed }: BoxTask): BraceAir {
  const ahead = (face: FreeFace) => built.divider !== undefined && face.name === 'front'
  const frameM3 = (name: Frame['chamber']) =>
    frames.reduce((sum, { chamber, volumeM3 }) => sum + (chamber === name ? volumeM3 : 0), 0)
  const battenM3 = (inFront: boolean) =>
    faces
      .filter(({ face }) => ahead(face) === inFront)
      .flatMap(({ spans }) => spans.flatMap(({ battens }) => battens))
      .reduce((sum, batten) => sum + battenVolume(batten, fixed.thicknessM), 0)
  return { rearM3: frameM3('rear') + battenM3(false), frontM3: frameM3('front') + battenM3(true) }
}

/** Only what is asked for can stand where a frame would: without it nobody has to know what stands in the box. */
function framesGiveWay(built: FittedBox, { fittings, port }: BoxTask['request']): boolean {
  if (crossingSlot(built) !== undefined) return true
  const isBent = port?.kind === 'round' && port.elbowRadiusM !== undefined
  return isBent || fittings?.terminal !== undefined || fittings?.amplifier !== undefined
}

/**
 * Volume of a plan in a box. Frames give way to what stands there, which alters the spans of the battens; battens that give way
 * along their face keep their wood.
 */
export function planVolume(built: FittedBox, resolved: BoxTask, plan: BracePlan): BraceAir {
  const others = plan.frames > 0 && framesGiveWay(built, resolved.request) ? standingIn(built, resolved).bodies : []
  const frames = placeFrames(built, resolved, plan.frames, others) ?? []
  const faces = freeFaces(built, placesOf(frames)).map(face => {
    const site = { built, face, thicknessM: resolved.fixed.thicknessM }
    return { face, spans: placeBattens(site, plan.battens[face.name] ?? 0, []) ?? [] }
  })
  return woodOf({ frames, faces }, built, resolved)
}

/** At least what either asks for, so that turns of planning and sizing come to an end. */
export function joined(a: BracePlan, b: BracePlan): BracePlan {
  const names = [...new Set([...Object.keys(a.battens), ...Object.keys(b.battens)])].toSorted()
  return {
    frames: Math.max(a.frames, b.frames),
    battens: Object.fromEntries(names.map(name => [name, Math.max(a.battens[name] ?? 0, b.battens[name] ?? 0)]))
  }
}

export const samePlan = (a: BracePlan, b: BracePlan) =>
  JSON.stringify(joined(a, noBraces)) === JSON.stringify(joined(b, noBraces))
