/** Which braces a box needs, so that its worst face falls least short and all of them move little air. */
import { bounds } from '../../../numeric/geometry/polygon.ts'
import type { BoxTask } from '../request/box-task.ts'
import { driven } from '../request/driven.ts'
import type { Body } from '../solids/bodies.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { standingIn } from '../solids/fitting-places.ts'
import { BATTEN_HEIGHT_M, battenLengthM, placeBattens, type SpanBattens } from './batten-places.ts'
import { type BracePlan, bodiesOf, noBraces, placeFrames, placesOf } from './brace-plan.ts'
import type { Frame } from './brace-windows.ts'
import { bracingDefaults } from './defaults.ts'
import { bracedFrequency, faceBending } from './face-strength.ts'
import { type FreeFace, freeFaces } from './free-face.ts'

/** Frames in a box, and battens in a span, at most. */
const MOST = 3

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

/** Air that all cones move at full excursion [m³]; 0 where it is not known. */
export const conesM3 = ({ request }: BoxTask): number =>
  driven(request).reduce((sum, { sdM2 = 0, xmaxM = 0, count = 1 }) => sum + sdM2 * xmaxM * count, 0)

interface Judged {
  readonly built: FittedBox
  readonly resolved: BoxTask
  readonly pressurePa: number | undefined
}

/** Of what is wanted of a face the part that is missing: in frequency or in stiffness, the worse of both; 0 where it passes. */
function judged(face: FreeFace, spans: readonly SpanBattens[], { built, resolved, pressurePa }: Judged) {
  const frequency = bracedFrequency(face, spans, built, resolved) / wantedFrequency(resolved)
  if (pressurePa === undefined) return { lack: Math.max(0, 1 - frequency), movedM3: 0 }
  const { largestM, displacedM3 } = faceBending(face, spans, resolved, pressurePa)
  const stiffness = bracingDefaults.deflectionM.value / Math.max(largestM, 1e-12)
  return { lack: Math.max(0, 1 - Math.min(frequency, stiffness)), movedM3: displacedM3 }
}

interface Attempt {
  readonly plan: BracePlan
  /** What each face lacks, the worst first, in steps of half a per cent; and all together of holding the air, in whole tenths. */
  readonly lacks: readonly number[]
  readonly airTenths: number
  /** Blanks: the wood of a window is bought too. */
  readonly boardM2: number
  readonly parts: number
}

const STEPS = 200

function withFrames(built: FittedBox, resolved: BoxTask, count: number, others: readonly Body[]): Attempt | undefined {
  const frames = placeFrames(built, resolved, count, others)
  if (frames === undefined) return undefined
  const standing = [...others, ...bodiesOf(built, resolved, frames)]
  const context = { built, resolved, pressurePa: boxPressure(resolved, built.netM3) }
  const choices = freeFaces(built, placesOf(frames)).map(face => {
    const site = { built, face, thicknessM: resolved.fixed.thicknessM }
    const known: (BattenTry | undefined)[] = []
    return (battens: number): BattenTry | undefined => {
      if (battens in known || battens > mostOf(face)) return known[battens]
      const spans = placeBattens(site, battens, standing)
      known[battens] = spans && { face, spans, battens, ...judged(face, spans, context) }
      return known[battens]
    }
  })
  const { tries, lack } = stiller(choices, bracingDefaults.volumeShare.value * conesM3(resolved))
  return {
    plan: {
      frames: count,
      battens: Object.fromEntries(tries.flatMap(({ face, battens: n }) => (n > 0 ? [[face.name, n]] : [])))
    },
    lacks: tries.map(each => steps(each.lack)).toSorted((a, b) => b - a),
    airTenths: Math.floor(10 * lack),
    boardM2: boardOf(frames, tries),
    parts: frames.length + tries.reduce((sum, { spans }) => sum + spans.reduce((n, s) => n + s.battens.length, 0), 0)
  }
}

interface BattenTry {
  readonly face: FreeFace
  readonly spans: readonly SpanBattens[]
  readonly battens: number
  readonly lack: number
  /** At the pressure of the box; 0 where that is not known. */
  readonly movedM3: number
}

function boardOf(frames: readonly Frame[], tries: readonly BattenTry[]): number {
  const blanks = frames.map(({ outline }) => bounds(outline).width * bounds(outline).height)
  const battens = tries.flatMap(({ spans }) => spans.flatMap(each => each.battens))
  return [...blanks, ...battens.map(each => battenLengthM(each) * BATTEN_HEIGHT_M)].reduce((sum, each) => sum + each, 0)
}

/** A face with so many battens in each span; none where they find no place. */
type Choice = (battens: number) => BattenTry | undefined

const mostOf = ({ battensFromM, alongM }: FreeFace) => (battensFromM < alongM ? MOST : 0)

/** The fewest battens with which a face passes; else those that bring it nearest, the fewer of equals. */
function leastBattens(choice: Choice): BattenTry | undefined {
  let best: BattenTry | undefined
  for (let battens = 0; battens <= MOST; battens++) {
    const next = choice(battens)
    if (next?.lack === 0) return next
    if (next !== undefined && (best === undefined || steps(next.lack) < steps(best.lack))) best = next
  }
  return best
}

/** Gains that differ by less are of faces alike. */
const SAME_GAIN = 1e-6

const airOf = (tries: readonly BattenTry[]) => tries.reduce((sum, { movedM3 }) => sum + movedM3, 0)

/**
 * Each face with the battens it needs, then one more at a time where it stills the most air, until all together move no more than
 * they may or nothing helps.
 *
 * @param mostM3  air that all faces may move together; 0 where it is not known
 */
function stiller(choices: readonly Choice[], mostM3: number) {
  let tries = choices.flatMap(choice => leastBattens(choice) ?? [])
  while (mostM3 > 0 && airOf(tries) > mostM3) {
    const gains = choices.flatMap(choice => {
      const now = tries.find(({ face }) => face === choice(0)?.face)
      const next = now && choice(now.battens + 1)
      return now === undefined || next === undefined || next.lack > now.lack
        ? []
        : [{ now, next, gainM3: now.movedM3 - next.movedM3 }]
    })
    const bestM3 = Math.max(0, ...gains.map(({ gainM3 }) => gainM3))
    if (bestM3 === 0) break
    // Left and right of a box alike get the same.
    const taken = gains.filter(({ gainM3 }) => gainM3 > bestM3 * (1 - SAME_GAIN))
    tries = tries.map(each => taken.find(({ now }) => now === each)?.next ?? each)
  }
  const moved = airOf(tries)
  return { tries, lack: mostM3 > 0 && moved > mostM3 ? 1 - mostM3 / moved : 0 }
}

/** Rounded before they are compared: comparing within a tolerance would depend on the order of the tries. */
const steps = (lack: number) => Math.ceil(lack * STEPS - 1e-9)

/** Whether b is better than a: its worst face lacks less, then the next; then it moves less air, takes less board, has fewer parts. */
function isBetter(b: Attempt, a: Attempt): boolean {
  const at = a.lacks.findIndex((lack, i) => lack !== b.lacks[i])
  if (at >= 0) return (b.lacks[at] ?? 0) < (a.lacks[at] ?? 0)
  if (b.airTenths !== a.airTenths) return b.airTenths < a.airTenths
  const more = b.boardM2 - a.boardM2
  return more < -1e-9 || (more < 1e-9 && b.parts < a.parts)
}

/**
 * No face is given up to save air, and asking for more never gives less: the plan whose worst face lacks least; of those the one
 * whose faces together keep to the air they may move, within a tenth; of those the one of least board.
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
