/** Which braces a box needs: frames across it and battens on its faces, so that the worst face falls least short. */
import { present } from '../../present.ts'
import type { BoxTask } from '../request/box-task.ts'
import { driven } from '../request/driven.ts'
import type { Body } from '../solids/bodies.ts'
import { overlaps } from '../solids/body-pairs.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { standingIn } from '../solids/fitting-places.ts'
import { BATTEN_HEIGHT_M, type Batten, battenLengthM, placeBattens, type SpanBattens } from './batten-places.ts'
import { frameBodies } from './brace-bodies.ts'
import { type Frame, framePlaces, frameSections, framesAt } from './brace-windows.ts'
import { bracingDefaults } from './defaults.ts'
import { bracedFrequency, faceBending } from './face-strength.ts'
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
const MOST = 3

export interface PlacedBraces {
  readonly frames: readonly Frame[]
  /** Each face with the lines that hold it and its battens. */
  readonly faces: readonly { readonly face: FreeFace; readonly spans: readonly SpanBattens[] }[]
}

/** Frames clear of what stands in the box; none where one of them finds no place. */
function placeFrames(
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

const placesOf = (frames: readonly Frame[]) => [...new Set(frames.map(({ placeM }) => placeM))]

function bodiesOf({ inside }: FittedBox, { fixed }: BoxTask, frames: readonly Frame[]): readonly Body[] {
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

/** Peak pressure in the box: given, or that of a closed box at full excursion, which is the upper bound of the pass band. */
export function boxPressure({ request, air }: BoxTask, netM3: number): number | undefined {
  const { bracing } = request
  if (bracing?.pressurePa !== undefined) return bracing.pressurePa
  const moved = driven(request).map(({ sdM2, xmaxM, count = 1 }) =>
    sdM2 === undefined || xmaxM === undefined ? undefined : sdM2 * xmaxM * count
  )
  if (moved.length === 0 || moved.some(each => each === undefined) || !(netM3 > 0)) return undefined
  return (air.stiffnessPa * moved.reduce<number>((sum, each) => sum + (each ?? 0), 0)) / netM3
}

export const wantedFrequency = ({ request }: BoxTask) =>
  (request.bracing?.upperHz ?? bracingDefaults.upperHz.value) * bracingDefaults.frequencyRatio.value

/** Of what is wanted of a face the part that is missing: in frequency or in stiffness, the worse of both; 0 where it passes. */
function shortfall(
  face: FreeFace,
  spans: readonly SpanBattens[],
  { built, resolved, pressurePa }: { built: FittedBox; resolved: BoxTask; pressurePa: number | undefined }
): number {
  const frequency = bracedFrequency(face, spans, built, resolved) / wantedFrequency(resolved)
  const bends = pressurePa === undefined ? 0 : faceBending(face, spans, resolved, pressurePa).largestM
  return Math.max(0, 1 - Math.min(frequency, bracingDefaults.deflectionM.value / Math.max(bends, 1e-12)))
}

interface Attempt {
  readonly plan: BracePlan
  /** What each face lacks, the worst first, in steps of half a per cent. */
  readonly lacks: readonly number[]
  readonly volumeM3: number
  readonly parts: number
}

const STEPS = 200

function withFrames(built: FittedBox, resolved: BoxTask, count: number, others: readonly Body[]): Attempt | undefined {
  const frames = placeFrames(built, resolved, count, others)
  if (frames === undefined) return undefined
  const standing = [...others, ...bodiesOf(built, resolved, frames)]
  const context = { built, resolved, pressurePa: boxPressure(resolved, built.netM3) }
  const faces = freeFaces(built, placesOf(frames)).map(face => {
    const site = { built, face, thicknessM: resolved.fixed.thicknessM }
    return leastBattens(face, battens => {
      const spans = placeBattens(site, battens, standing)
      return spans && { face, spans, battens, lack: shortfall(face, spans, context) }
    })
  })
  const known = faces.filter(each => each !== undefined)
  const battens = Object.fromEntries(known.flatMap(({ face, battens: n }) => (n > 0 ? [[face.name, n]] : [])))
  const wood = woodOf({ frames, faces: known }, built, resolved)
  return {
    plan: { frames: count, battens },
    lacks: known.map(({ lack }) => steps(lack)).toSorted((a, b) => b - a),
    volumeM3: wood.rearM3 + wood.frontM3,
    parts: frames.length + known.reduce((sum, { spans }) => sum + spans.reduce((n, s) => n + s.battens.length, 0), 0)
  }
}

interface BattenTry {
  readonly face: FreeFace
  readonly spans: readonly SpanBattens[]
  readonly battens: number
  readonly lack: number
}

/** The fewest battens with which a face passes; else those that bring it nearest, the fewer of equals. */
function leastBattens({ battensFromM, alongM }: FreeFace, tried: (battens: number) => BattenTry | undefined) {
  const most = battensFromM < alongM ? MOST : 0
  let best: BattenTry | undefined
  for (let battens = 0; battens <= most; battens++) {
    const next = tried(battens)
    if (next?.lack === 0) return next
    if (next !== undefined && (best === undefined || steps(next.lack) < steps(best.lack))) best = next
  }
  return best
}

/** Rounded before they are compared: comparing within a tolerance would depend on the order of the tries. */
const steps = (lack: number) => Math.ceil(lack * STEPS - 1e-9)

/** Whether b is better than a: its worst face lacks less, then the next; then less wood, then fewer parts. */
function isBetter(b: Attempt, a: Attempt): boolean {
  const at = a.lacks.findIndex((lack, i) => lack !== b.lacks[i])
  if (at >= 0) return (b.lacks[at] ?? 0) < (a.lacks[at] ?? 0)
  const more = b.volumeM3 - a.volumeM3
  return more < -1e-9 || (more < 1e-9 && b.parts < a.parts)
}

/**
 * No face is given up to save air, and asking for more never gives less: the plan whose worst face lacks least.
 *
 * @source derived: lexicographic minimum of the shortfalls, each rounded up to half a per cent
 */
export function planBraces(built: FittedBox, resolved: BoxTask): BracePlan {
  const { bodies } = standingIn(built, resolved)
  const attempts = Array.from({ length: MOST + 1 }, (_, count) => withFrames(built, resolved, count, bodies))
  const best = attempts.reduce<Attempt | undefined>((a, b) => {
    if (a === undefined || b === undefined) return a ?? b
    return isBetter(b, a) ? b : a
  }, undefined)
  return best?.plan ?? noBraces
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
