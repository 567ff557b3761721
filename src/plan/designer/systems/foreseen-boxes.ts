/** Boxes for drivers wired in one way, weighed in closed form for one amplifier after the other. */
import type { DesignGoal, SearchedKind } from '../../../contract/systems/words.ts'
import { present } from '../../../domain/present.ts'
import { inSteps } from '../room/area-steps.ts'
import type { PlacedBox } from '../room/box-room.ts'
import { goals, searchDefaults } from '../search/defaults.ts'
import type { FoundDesign } from '../search/design-problem.ts'
import { goalFor } from '../search/goals.ts'
import { mostOf } from '../search/most-score.ts'
import { remembered } from '../search/remembered.ts'
import { grid } from '../search/search-boxes.ts'
import { designScale } from '../search/weigh-design.ts'
import { type BoxFigures, type BoxProblem, type BoxSolver, boxSolver } from './box-solver.ts'
import { systemDefaults } from './defaults.ts'

/** A volume and tuning of the grid, and what it cannot pass. */
interface Node {
  readonly netVolumeM3: number
  readonly tuningHz?: number
  /** Score with an amplifier a little stronger and a port as wide as it likes. */
  readonly most: number
  readonly leastOuterM3: number
  readonly f3Hz: number
  /** Square of the level at the frequency compared, for one volt, and of the voltage its parts bear there. */
  readonly level2: number
  readonly bears2: number
}

export interface ForeseenBox {
  readonly design: FoundDesign<PlacedBox>
  readonly heard: BoxFigures
}

/** How far a box breaks what the caller allows; 0 or less keeps it. */
type Overshoot = (figures: Partial<BoxFigures> & { readonly outerVolumeM3?: number }) => number

interface NearestBox extends ForeseenBox {
  readonly keeps: boolean
}

/** The best box that keeps every limit, or the one that comes nearest to it; none where no box stands at all. */
export type WiredBoxes = (kind: SearchedKind, goal: DesignGoal, driveV: number) => NearestBox | undefined

/** The next above of the gains for which bounds are worked out. */
function nextVoltage(driveV: number): number {
  const stepDb = systemDefaults.voltageStepDb.value
  return 10 ** ((stepDb * Math.ceil((20 * Math.log10(driveV)) / stepDb)) / 20)
}

function nodesFor(problem: BoxProblem, kind: SearchedKind, goalName: DesignGoal, solver: BoxSolver): readonly Node[] {
  const goal = goalFor(goals[goalName].value, problem.tables.qts)
  const most = mostOf({ ...problem, goal, kind })
  return grid({ ...problem, goal, kind })
    .flatMap(spot => {
      const netVolumeM3 = Math.exp(spot.volume)
      const tuning = kind === 'closed' ? {} : { tuningHz: Math.exp(spot.tuning) }
      const bound = most(netVolumeM3, tuning.tuningHz)
      const told = bound === undefined ? undefined : solver.node({ netVolumeM3, ...tuning }, kind)
      return bound === undefined || told === undefined ? [] : [{ netVolumeM3, ...tuning, ...bound, ...told }]
    })
    .toSorted((a, b) => b.most - a.most || a.netVolumeM3 - b.netVolumeM3 || (a.tuningHz ?? 0) - (b.tuningHz ?? 0))
}

const levelAt = ({ level2, bears2 }: Node, driveV: number) => 10 * Math.log10(level2 * Math.min(bears2, driveV ** 2))

interface Weighing {
  readonly nodes: readonly Node[]
  /** A box whose score is above what is given. */
  readonly weigh: (node: Node, above: number) => ForeseenBox | undefined
  readonly driveV: number
  readonly overshoot: Overshoot
}

function bestOf({ nodes, weigh, driveV, overshoot }: Weighing): NearestBox | undefined {
  let found: ForeseenBox | undefined
  let near: { readonly box: ForeseenBox; readonly beyond: number } | undefined
  let passed: { readonly node: Node; readonly beyond: number } | undefined
  for (const node of nodes) {
    if (found !== undefined && node.most + searchDefaults.boundSlackDb.value <= found.design.score) break
    const { leastOuterM3: outerVolumeM3, f3Hz } = node
    const atLeast = overshoot({ outerVolumeM3, f3Hz, levelDb: levelAt(node, driveV) })
    if (atLeast > 0) {
      if (passed === undefined || atLeast < passed.beyond) passed = { node, beyond: atLeast }
      continue
    }
    const box = weigh(node, found?.design.score ?? -Infinity)
    if (box === undefined) continue
    const beyond = overshoot({ ...box.heard, outerVolumeM3: box.design.place.outerM3 })
    if (beyond <= 0) found = box
    else if (near === undefined || beyond < near.beyond) near = { box, beyond }
  }
  if (found !== undefined) return { ...found, keeps: true }
  const nearer = near === undefined || (passed?.beyond ?? Infinity) < near.beyond ? passed : undefined
  const nearest = (nearer && weigh(nearer.node, -Infinity)) ?? near?.box
  return nearest && { ...nearest, keeps: false }
}

/**
 * No gain is set above what the amplifier bears, so that only the gain counts: amplifiers with the same are asked once.
 *
 * @param problem  of any amplifier
 * @param levelHz  where the level is compared
 */
export function wiredBoxes(problem: BoxProblem, plateau2: number, levelHz: number, overshoot: Overshoot): WiredBoxes {
  const solver = boxSolver(problem, plateau2, levelHz)
  const room = inSteps(problem.room, systemDefaults.areaStep.value)
  const { amplifierV: _, ...limits } = problem.limits
  const nodesOf = remembered((kind: SearchedKind, goal: DesignGoal, highestV: number) =>
    nodesFor({ ...problem, highestV }, kind, goal, solver)
  )
  const bestWithin = (
    kind: SearchedKind,
    goalName: DesignGoal,
    highestV: number,
    overshoot: Overshoot
  ): NearestBox | undefined => {
    const goal = goalFor(goals[goalName].value, problem.tables.qts)
    const loudest = () => bestWithin(kind, 'loud', highestV, () => 0)?.design.held.levelDb
    const referenceDb = goal.withinDb === undefined ? undefined : loudest()
    const scale = designScale({ ...problem, room, limits, highestV, goal, kind, ...present({ referenceDb }) })
    const weigh = ({ netVolumeM3, tuningHz }: Node, above: number): ForeseenBox | undefined => {
      const tuned = kind === 'passive-radiator' ? scale[kind] : scale.vented
      const design = tuningHz === undefined ? scale.closed(netVolumeM3) : tuned(netVolumeM3, tuningHz)
      return design && design.score > above ? { design, heard: solver.box(design, limits, highestV) } : undefined
    }
    const nodes = nodesOf(kind, goalName, nextVoltage(highestV))
    return bestOf({ nodes, weigh, driveV: highestV, overshoot })
  }
  return remembered((kind, goal, driveV) => bestWithin(kind, goal, driveV, overshoot))
}
