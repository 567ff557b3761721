/** The search itself: a coarse grid on fixed nodes, the best regions refined by halving steps. Counted, never timed. */
import type { PlannedKind } from '../../../contract/systems/words.ts'
import { searchDefaults } from './defaults.ts'
import type { DesignProblem, FoundDesign, Place } from './design-problem.ts'
import { remembered } from './remembered.ts'
import { designScale } from './weigh-design.ts'

interface Spot {
  readonly kind: PlannedKind
  /** Logarithms. */
  readonly volume: number
  readonly tuning: number
}

function* nodes(from: number, to: number, step: number): Generator<number> {
  for (let node = Math.ceil(from / step - 1e-9); node * step <= to + 1e-9; node++) yield node * step
}

/** Every second of the nodes that all boxes share. */
const everyOther = (values: readonly number[]) => values.filter((_, k) => k % searchDefaults.bandNodes.value === 0)

function volumes<Placed extends Place>({ room, netVolumeM3 }: DesignProblem<Placed>): readonly number[] {
  if (netVolumeM3 !== undefined) return netVolumeM3 > room.toM3 ? [] : [Math.log(netVolumeM3)]
  if (!(room.toM3 > room.fromM3)) return []
  const inside = [
    ...nodes(Math.log(room.fromM3), Math.log(room.toM3), Math.LN10 / searchDefaults.volumesPerDecade.value)
  ]
  return [...new Set([...inside, Math.log(room.toM3)])]
}

function tunings<Placed extends Place>(
  { tuningHz }: DesignProblem<Placed>,
  highestHz: number = searchDefaults.highestTuningHz.value
): readonly number[] {
  if (tuningHz !== undefined) return [Math.log(tuningHz)]
  const step = Math.LN2 / searchDefaults.tuningsPerOctave.value
  const steps = nodes(0, Math.log(highestHz / searchDefaults.lowestTuningHz.value), step)
  return [...steps].map(node => Math.log(searchDefaults.lowestTuningHz.value) + node)
}

/** Where the search looks first. */
export function grid<Placed extends Place>(problem: DesignProblem<Placed>): readonly Spot[] {
  const [across, tuned] = [volumes(problem), tunings(problem)]
  const wants = (kind: PlannedKind) => problem.kind === undefined || problem.kind === kind
  const opened = (kind: PlannedKind) => across.flatMap(volume => tuned.map(tuning => ({ kind, volume, tuning })))
  return [
    ...(wants('closed') && problem.tuningHz === undefined
      ? across.map(volume => ({ kind: 'closed', volume, tuning: 0 }) as const)
      : []),
    ...(wants('vented') ? opened('vented') : []),
    ...(problem.kind === 'band-pass-4' ? divided(problem, across) : []),
    ...(wants('passive-radiator') && problem.radiators !== undefined ? opened('passive-radiator') : [])
  ]
}

function divided<Placed extends Place>(problem: DesignProblem<Placed>, across: readonly number[]): readonly Spot[] {
  const tuned = everyOther(tunings(problem, searchDefaults.highestBandHz.value))
  return everyOther(across).flatMap(volume => tuned.map(tuning => ({ kind: 'band-pass-4', volume, tuning }) as const))
}

const isApart = (a: Spot, b: Spot) =>
  a.kind !== b.kind ||
  Math.abs(a.volume - b.volume) > Math.log(searchDefaults.apartVolume.value) ||
  Math.abs(a.tuning - b.tuning) > Math.log(searchDefaults.apartTuning.value)

/** Neighbours of a spot within the volumes worth a look; what the caller has fixed does not move. */
function neighbours<Placed extends Place>(problem: DesignProblem<Placed>, spot: Spot, share: number): readonly Spot[] {
  const step = spot.kind === 'band-pass-4' ? share * searchDefaults.bandNodes.value : share
  const wide = (step * Math.LN10) / searchDefaults.volumesPerDecade.value
  const high =
    problem.tuningHz === undefined && spot.kind !== 'closed'
      ? (step * Math.LN2) / searchDefaults.tuningsPerOctave.value
      : 0
  const up = high === 0 ? [0] : [-high, 0, high]
  const across = problem.netVolumeM3 === undefined ? [-wide, 0, wide] : [0]
  const [least, most] = [Math.log(problem.room.fromM3), Math.log(problem.room.toM3)]
  return across
    .filter(dv => dv === 0 || (spot.volume + dv >= least && spot.volume + dv <= most))
    .flatMap(dv => up.map(dt => ({ ...spot, volume: spot.volume + dv, tuning: spot.tuning + dt })))
    .filter(({ volume, tuning }) => volume !== spot.volume || tuning !== spot.tuning)
}

function byScore<Placed extends Place>(a: FoundDesign<Placed>, b: FoundDesign<Placed>): number {
  const better = b.score - a.score
  if (Math.abs(better) > searchDefaults.sameScoreDb.value) return better
  return a.kind.localeCompare(b.kind, 'en') || a.netVolumeM3 - b.netVolumeM3 || (a.tuningHz ?? 0) - (b.tuningHz ?? 0)
}

/** @returns every design that was weighed and stands in the room, the best first */
export function searchBoxes<Placed extends Place>(problem: DesignProblem<Placed>): readonly FoundDesign<Placed>[] {
  const scale = designScale(problem)
  const found: { readonly spot: Spot; readonly design: FoundDesign<Placed> }[] = []
  const known = (kind: PlannedKind) =>
    remembered((volume: number, tuning: number) => scale[kind](Math.exp(volume), Math.exp(tuning)))
  const weighed = {
    closed: known('closed'),
    vented: known('vented'),
    'passive-radiator': known('passive-radiator'),
    'band-pass-4': known('band-pass-4')
  } as const satisfies Record<PlannedKind, unknown>
  const weigh = (spot: Spot): FoundDesign<Placed> | undefined => {
    const design = weighed[spot.kind](spot.volume, spot.tuning)
    if (design !== undefined) found.push({ spot, design })
    return design
  }
  for (const spot of grid(problem)) weigh(spot)
  const seeds: { spot: Spot; design: FoundDesign<Placed> }[] = []
  for (const each of found.toSorted((a, b) => byScore(a.design, b.design))) {
    if (seeds.length < searchDefaults.seeds.value && seeds.every(seed => isApart(seed.spot, each.spot)))
      seeds.push(each)
  }
  for (const seed of seeds) refine(problem, seed, weigh)
  return found.map(({ design }) => design).toSorted(byScore)
}

function refine<Placed extends Place>(
  problem: DesignProblem<Placed>,
  seed: { readonly spot: Spot; readonly design: FoundDesign<Placed> },
  weigh: (spot: Spot) => FoundDesign<Placed> | undefined
): void {
  let best = seed
  for (let halving = 1, share = 0.5; halving <= searchDefaults.halvings.value; halving++, share /= 2) {
    for (let move = 0; move < searchDefaults.mostMoves.value; move++) {
      let next = best
      for (const spot of neighbours(problem, best.spot, share)) {
        const design = weigh(spot)
        if (design !== undefined && byScore(design, next.design) < 0) next = { spot, design }
      }
      if (next === best) break
      best = next
    }
  }
}
