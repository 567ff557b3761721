/** Which braces a box needs: frames across it and battens on its faces, the least volume that passes. */

import { type Frame, frameAt, framePlaces } from './brace-windows.ts'
import type { BuiltBox } from './build-box.ts'
import type { BraceAir } from './chambers.ts'
import {
  BATTEN_HEIGHT_M,
  bracedFrequency,
  type FreeFace,
  faceBending,
  freeFaces,
  spansOf,
  takesBattens
} from './face-strength.ts'
import type { Settled } from './settle.ts'
import { bracingTargets } from './vibration-targets.ts'

/** How many, not where: places follow from the sizes of the box. */
export interface BracePlan {
  readonly frames: number
  /** Battens in each span, by name of the face. */
  readonly battens: Readonly<Record<string, number>>
}

export const noBraces: BracePlan = { frames: 0, battens: {} }
const MOST = 3

interface PlacedFrames {
  readonly places: readonly number[]
  readonly frames: readonly Frame[]
}

export function placeFrames(built: BuiltBox, { fixed }: Settled, count: number): PlacedFrames | undefined {
  const slot = built.port?.kind === 'slot' ? built.port : undefined
  const places = framePlaces(built.inside, built.mounted, slot, fixed.thicknessM, count)
  if (places === undefined) return undefined
  return { places, frames: places.map(place => frameAt(built.inside, slot, fixed.thicknessM, place)) }
}

/** Battens of one face: how many, and how long each [m]. */
export function battenLengths(face: FreeFace, count: number): readonly number[] {
  return spansOf(face)
    .filter(span => takesBattens(face, span))
    .flatMap(({ length }) => Array.from({ length: count }, () => Math.min(length, face.acrossM)))
}

function battenVolume(face: FreeFace, count: number, thicknessM: number): number {
  return battenLengths(face, count).reduce((sum, length) => sum + length * thicknessM * BATTEN_HEIGHT_M, 0)
}

/** Volume of a plan in a box; a frame that finds no place is left out. */
export function planVolume(built: BuiltBox, settled: Settled, plan: BracePlan): BraceAir {
  const placed = placeFrames(built, settled, plan.frames)
  const frames = (placed?.frames ?? []).reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
  const faces = freeFaces(built, placed?.places ?? [])
  const rearM3 = faces.reduce(
    (sum, face) => sum + battenVolume(face, plan.battens[face.name] ?? 0, settled.fixed.thicknessM),
    frames
  )
  return { rearM3, frontM3: 0 }
}

const bracesM3 = ({ rearM3, frontM3 }: BraceAir) => rearM3 + frontM3

/** Peak pressure in the box: given, or that of a closed box at full excursion, which is the upper bound of the pass band. */
export function boxPressure({ request, air }: Settled, netM3: number): number | undefined {
  const { bracing, drivers = [] } = request
  if (bracing?.pressurePa !== undefined) return bracing.pressurePa
  const moved = drivers.map(({ sdM2, xmaxM, count = 1 }) =>
    sdM2 === undefined || xmaxM === undefined ? undefined : sdM2 * xmaxM * count
  )
  if (moved.length === 0 || moved.some(each => each === undefined) || !(netM3 > 0)) return undefined
  return (air.stiffnessPa * moved.reduce<number>((sum, each) => sum + (each ?? 0), 0)) / netM3
}

export const wantedFrequency = ({ request }: Settled) =>
  (request.bracing?.upperHz ?? bracingTargets.upperHz) * bracingTargets.frequencyRatio

function passes(
  face: FreeFace,
  battens: number,
  built: BuiltBox,
  settled: Settled,
  pressurePa: number | undefined
): boolean {
  if (bracedFrequency(face, battens, built, settled) < wantedFrequency(settled)) return false
  if (pressurePa === undefined) return true
  return faceBending(face, battens, settled, pressurePa).largestM <= bracingTargets.deflectionM
}

interface Try {
  readonly plan: BracePlan
  readonly failing: number
  readonly volumeM3: number
}

function withFrames(built: BuiltBox, settled: Settled, count: number): Try | undefined {
  const placed = placeFrames(built, settled, count)
  if (placed === undefined) return undefined
  const pressurePa = boxPressure(settled, built.netM3)
  const battens: Record<string, number> = {}
  let failing = 0
  for (const face of freeFaces(built, placed.places)) {
    const most = face.battensFromM < face.alongM ? MOST : 0
    const counts = Array.from({ length: most + 1 }, (_, k) => k)
    const enough = counts.find(k => passes(face, k, built, settled, pressurePa))
    if (enough === undefined) failing++
    // What bends too far under the slot may still be lifted out of the band beside it.
    const best = enough ?? counts.find(k => bracedFrequency(face, k, built, settled) >= wantedFrequency(settled)) ?? 0
    if (best > 0) battens[face.name] = best
  }
  const plan = { frames: count, battens }
  return { plan, failing, volumeM3: bracesM3(planVolume(built, settled, plan)) }
}

/** Fewest faces that fail, then least volume, then fewest frames. */
export function planBraces(built: BuiltBox, settled: Settled): BracePlan {
  const tries = Array.from({ length: MOST + 1 }, (_, count) => withFrames(built, settled, count))
  const best = tries.reduce<Try | undefined>((a, b) => {
    if (a === undefined || b === undefined) return a ?? b
    return b.failing < a.failing || (b.failing === a.failing && b.volumeM3 < a.volumeM3 - 1e-9) ? b : a
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
