/** Outer sizes for a wanted net volume inside the limits. */
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { type Axis, axes } from '../boot/axes.ts'
import { noPlace, places, standsInBoot } from '../boot/boot-ranges.ts'
import { freeAxes, mostRows, noFit, type Ranges, rangeFaults, sizeRanges } from '../boot/size-limits.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import type { BracedTask } from '../stiffness/brace-plan.ts'
import { isTouched } from './box-clearances.ts'
import { boxContents } from './box-contents.ts'
import { buildBox } from './build-box.ts'
import { netOf, sizeReaching, sizesOf } from './net-volume.ts'
import { pathOf, preferredRatio } from './size-path.ts'
import { type OuterSizes, type SizedBox, type Solved, tooLarge, tooSmall } from './size-refusals.ts'

/** Every free size but the last on the saw's step, then the last one solved again and put on the step that comes nearest. */
function onSawStep(resolved: BracedTask, ranges: Ranges, sizes: OuterSizes, target: number): SizedBox {
  const step = resolved.sawStepM
  const free = freeAxes(ranges)
  if (free.length === 0) return { sizes, netM3: netOf(resolved, sizes) }
  const steps = (count: number) => Math.round(count * step * 1e9) / 1e9
  const onStep = (value: number, { min, max }: { min: number; max: number }) => {
    const near = steps(Math.round(value / step))
    if (near > max + 1e-9) return steps(Math.floor(max / step + 1e-9))
    return near < min - 1e-9 ? steps(Math.ceil(min / step - 1e-9)) : near
  }
  const loose = free.filter(axis => sizes[axis] > ranges[axis].min + step && sizes[axis] < ranges[axis].max - step)
  const last = (loose.length > 0 ? loose : free).reduce((a, b) => (sizes[b] > sizes[a] ? b : a))
  const rounded = Object.fromEntries(
    axes.map(axis => [axis, free.includes(axis) && axis !== last ? onStep(sizes[axis], ranges[axis]) : sizes[axis]])
  ) as unknown as OuterSizes
  const at = (value: number): OuterSizes => ({ ...rounded, [last]: value })
  const { min, max } = ranges[last]
  const exact = sizeReaching(resolved, target, at, { low: min, high: max })
  const near = [steps(Math.floor(exact / step)), steps(Math.ceil(exact / step))].filter(
    value => value >= min - 1e-9 && value <= max + 1e-9
  )
  const options = (near.length > 0 ? near : [onStep(exact, ranges[last])]).map(value => ({
    sizes: at(value),
    netM3: netOf(resolved, at(value))
  }))
  return options.reduce((a, b) => (Math.abs(b.netM3 - target) < Math.abs(a.netM3 - target) ? b : a))
}

/** Net volume within this share of the wanted one is met. */
const SAME_VOLUME = 0.005

/** Ranges solved; the fixed axis, when given, keeps one size. */
function solveIn(resolved: BracedTask, target: number, ranges: Ranges): Solved {
  const { request, fixed } = resolved
  const path = pathOf(request.strategy ?? 'balanced', ranges, fixed.thicknessM)
  const most = { sizes: path(1), netM3: netOf(resolved, path(1)) }
  if (most.netM3 < target) return { refusal: () => tooLarge(target, most, request) }
  const sizes = path(sizeReaching(resolved, target, path, { low: 0, high: 1 }))
  const netM3 = netOf(resolved, sizes)
  return netM3 > target * (1 + SAME_VOLUME)
    ? { refusal: () => tooSmall(target, { sizes, netM3 }, ranges) }
    : { box: onSawStep(resolved, ranges, sizes, target) }
}

/** How far a box is from the preferred proportions. */
const strain = ({ sizes }: SizedBox) => {
  const logs = axes.map(axis => Math.log(sizes[axis] / preferredRatio[axis]))
  const mean = logs.reduce((sum, each) => sum + each, 0) / 3
  return logs.reduce((sum, each) => sum + (each - mean) ** 2, 0)
}

/** Nearest first: another depth, then another height. */
const nudges = Array.from({ length: 16 }, (_, i) => (i % 2 === 0 ? 1 : -1) * 0.03 * (Math.floor(i / 2) + 1))

/** Less room than this round a driver is worth another box [m]. */
const TOUCH_M = 10e-3

/** The volume is met, the port fits, and no driver touches. */
function holds(resolved: BracedTask, { sizes, netM3 }: SizedBox, target: number): boolean {
  if (!(Math.abs(netM3 / target - 1) < SAME_VOLUME)) return false
  try {
    const built = buildBox(resolved, sizesOf(resolved, sizes))
    return !isTouched(built, resolved, boxContents(built, resolved), TOUCH_M)
  } catch (error) {
    if (error instanceof DesignError && error.code === 'no-solution') return false
    throw error
  }
}

/**
 * A slot fits only in bands of length: a bend needs its legs. Where the best box falls between two bands, the nearest other
 * depth or height that takes the slot is used instead.
 */
function nudged(resolved: BracedTask, best: SizedBox, target: number, ranges: Ranges): SizedBox {
  if (holds(resolved, best, target)) return best
  for (const axis of ['depth', 'height'] as const) {
    const { min, max } = ranges[axis]
    const spent = new Set<number>()
    for (const share of nudges) {
      const size = Math.round((best.sizes[axis] * (1 + share)) / resolved.sawStepM) * resolved.sawStepM
      if (max === min || size < min || size > max || spent.has(Math.sign(share))) continue
      const { box: other } = solveIn(resolved, target, { ...ranges, [axis]: { min: size, max: size } })
      // Volume grows with every size: where one is too small or too large for it, so are all beyond.
      if (other === undefined) spent.add(Math.sign(share))
      else if (holds(resolved, other, target)) return other
    }
  }
  return best
}

/** Of all refusals the one that comes nearest to the volume asked for; a box that its place has no room for is farthest. */
function nearestMiss(attempts: readonly Solved[], target: number): DesignError | undefined {
  const refusals = attempts.flatMap(({ refusal }) => (refusal === undefined ? [] : [refusal()]))
  const miss = ({ faults: [first] }: DesignError) =>
    first?.field === 'netVolumeM3' ? Math.abs((first.maximum ?? first.minimum ?? Infinity) - target) : Infinity
  return refusals.length < attempts.length || refusals.length === 0
    ? undefined
    : refusals.reduce((a, b) => (miss(b) < miss(a) ? b : a))
}

type SizeTry = Solved & { readonly ranges: Ranges }

/** What two ranges that differ in their widest width only have in common. */
const apartFromWidth = ({ width, height, depth }: Ranges) =>
  [width.min, height.min, height.max, depth.min, depth.max].join(' ')

/**
 * Each range solved. A balanced box that stands in a width leaves its proportions only further in a narrower one, so the
 * narrower ones are not looked at: twelve blocks in a boot give hundreds.
 */
function attemptsOf(resolved: BracedTask, choices: readonly Ranges[], target: number): readonly SizeTry[] {
  const { request } = resolved
  const balanced = (request.strategy ?? 'balanced') === 'balanced'
  const stands = new Set<string>()
  return choices
    .toSorted((a, b) => b.width.max - a.width.max)
    .flatMap(ranges => {
      if (balanced && stands.has(apartFromWidth(ranges))) return []
      const refusal = noFit(rangeFaults(ranges, request.limits))
      const solved = refusal === undefined ? solveIn(resolved, target, ranges) : { refusal: () => refusal }
      if (solved.box !== undefined && standsInBoot(resolved, solved.box.sizes)) stands.add(apartFromWidth(ranges))
      return [{ ranges, ...solved }]
    })
}

/**
 * Sizes of a box for a net volume: along a path on which all free sizes grow, by interpolation inside a bracket; then put on the saw's step.
 *
 * @throws DesignError `missing-input` when a size is missing and no volume is wanted; `no-solution` naming the limit in the way
 * @validity Net volume within half a saw step of the last solved size: below 0.5 % for boxes over 10 L on 1 mm.
 * @source derived: one root on a monotone path
 */
export function solveSizes(resolved: BracedTask): ShellSizes {
  const { request, fixed } = resolved
  const { outer = {}, netVolumeM3, prism } = request
  const given = { width: outer.widthM, height: outer.heightM, depth: outer.depthM }
  const isSet = (axis: Axis) => given[axis] !== undefined || (prism !== undefined && axis !== 'height')
  if (axes.every(isSet)) {
    const { width = 0, height = 0, depth = 0 } = given
    return sizesOf(resolved, { width, height, depth })
  }
  if (netVolumeM3 === undefined) {
    throw new DesignError('missing-input', {
      field: `outer.${axes.find(axis => !isSet(axis))}M`,
      detail: say('refused.give-every-outer-size-or-a')
    })
  }
  const most = fixed.shape === 'prism' ? 1 : Math.min(mostRows(request), 4)
  const choices = Array.from({ length: most }, (_, i) => sizeRanges(resolved, i + 1)).flatMap(ranges =>
    places(resolved, ranges)
  )
  const attempts = attemptsOf(resolved, choices, netVolumeM3)
  const found = attempts.flatMap(({ ranges, box }) =>
    box === undefined || !standsInBoot(resolved, box.sizes) ? [] : [{ ranges, box }]
  )
  const [first, ...rest] = found
  if (first === undefined) throw nearestMiss(attempts, netVolumeM3) ?? noPlace(request)
  const best = rest.reduce((a, b) => (strain(b.box) < strain(a.box) ? b : a), first)
  return sizesOf(resolved, nudged(resolved, best.box, netVolumeM3, best.ranges).sizes)
}
