/** Boxes for drivers wired in one way, weighed in closed form for one amplifier after the other. */
import type { DesignGoal, PlannedKind } from '../../../contract/systems/words.ts'
import { present } from '../../../domain/present.ts'
import type { JoinedDrivers } from '../../load/plan-load.ts'
import type { PlacedBox } from '../room/box-room.ts'
import type { DesignProblem, FoundDesign, Room } from '../search/design-problem.ts'
import { goalFor, goals } from '../search/goals.ts'
import { grid } from '../search/search-boxes.ts'
import { designScale } from '../search/weigh-design.ts'
import { type BoxHearing, type Heard, hearing } from './box-hearing.ts'
import { mostOf } from './most-score.ts'

export type BoxProblem = Omit<DesignProblem<PlacedBox>, 'goal'>

/** A volume and tuning of the grid, and what no amplifier lets it pass. */
export interface Node {
  readonly netVolumeM3: number
  readonly tuningHz?: number
  /** Score with an amplifier without end and a port as wide as it likes. */
  readonly most: number
  readonly leastOuterM3: number
  readonly f3Hz: number
  /** Square of the level at the frequency compared, for one volt, and of the voltage its parts bear there. */
  readonly level2: number
  readonly bears2: number
}

export interface ForeseenBox {
  readonly design: FoundDesign<PlacedBox>
  readonly heard: Heard
}

/** How far a box breaks what the caller allows; 0 or less keeps it. */
type Overshoot = (figures: Partial<Heard> & { readonly outerVolumeM3?: number }) => number

export interface WiredBoxes {
  /** The best box that keeps every limit, or the one that comes nearest to it; none where no box stands at all. */
  readonly best: (
    kind: PlannedKind,
    goal: DesignGoal,
    joined: JoinedDrivers,
    overshoot: Overshoot
  ) => (ForeseenBox & { readonly keeps: boolean }) | undefined
}

/** The walk over gains goes in steps, so a looser limit may come out this much lower [dB]. */
const STEP_SLACK_DB = 0.3
/** Areas are asked of the room in steps of a tenth, the next above, so that amplifiers ask for the same boxes. */
const AREA_STEP = Math.log(1.1)

function inSteps(room: Room<PlacedBox>): Room<PlacedBox> {
  const above = (areaM2: number) => Math.exp(Math.ceil(Math.log(areaM2) / AREA_STEP - 1e-9) * AREA_STEP)
  return { ...room, ported: (netM3, tuningHz, areaM2) => room.ported(netM3, tuningHz, above(areaM2)) }
}

function nodesFor(problem: BoxProblem, kind: PlannedKind, goalName: DesignGoal, ear: BoxHearing): readonly Node[] {
  const goal = goalFor(goals[goalName], problem.tables.qts)
  const most = mostOf({ ...problem, goal, kind })
  return grid({ ...problem, goal, kind })
    .flatMap(spot => {
      const netVolumeM3 = Math.exp(spot.volume)
      const tuning = kind === 'closed' ? {} : { tuningHz: Math.exp(spot.tuning) }
      const bound = most(netVolumeM3, tuning.tuningHz)
      const told = bound === undefined ? undefined : ear.node({ netVolumeM3, ...tuning })
      return bound === undefined || told === undefined ? [] : [{ netVolumeM3, ...tuning, ...bound, ...told }]
    })
    .toSorted((a, b) => b.most - a.most || a.netVolumeM3 - b.netVolumeM3 || (a.tuningHz ?? 0) - (b.tuningHz ?? 0))
}

const levelAt = ({ level2, bears2 }: Node, { targetVoltageV }: JoinedDrivers) =>
  10 * Math.log10(level2 * Math.min(bears2, targetVoltageV ** 2))

/**
 * @param problem  of any amplifier; its own voltages are put in for each
 * @param levelHz  where the level is compared
 */
export function wiredBoxes(problem: BoxProblem, plateau2: number, levelHz: number): WiredBoxes {
  const ear = hearing(problem, plateau2, levelHz)
  const room = inSteps(problem.room)
  const nodes = new Map<string, readonly Node[]>()
  const nodesOf = (kind: PlannedKind, goal: DesignGoal) => {
    const key = `${kind} ${goal}`
    const found = nodes.get(key) ?? nodesFor(problem, kind, goal, ear)
    nodes.set(key, found)
    return found
  }

  const best: WiredBoxes['best'] = (kind, goalName, joined, overshoot) => {
    const goal = goalFor(goals[goalName], problem.tables.qts)
    const free = () => 0
    const referenceDb = goal.withinDb === undefined ? undefined : best(kind, 'loud', joined, free)?.design.held.levelDb
    const limits = { ...problem.limits, amplifierV: joined.amplifierVoltageV }
    const highestV = joined.targetVoltageV
    const scale = designScale({ ...problem, room, limits, highestV, goal, kind, ...present({ referenceDb }) })
    const weigh = ({ netVolumeM3, tuningHz }: Node): ForeseenBox | undefined => {
      const design = tuningHz === undefined ? scale.closed(netVolumeM3) : scale.vented(netVolumeM3, tuningHz)
      return design && { design, heard: ear.box(design, limits, highestV) }
    }
    let found: ForeseenBox | undefined
    let near: { readonly box: ForeseenBox; readonly beyond: number } | undefined
    let passed: { readonly node: Node; readonly beyond: number } | undefined
    for (const node of nodesOf(kind, goalName)) {
      if (found !== undefined && node.most + STEP_SLACK_DB <= found.design.score) break
      const atLeast = overshoot({
        outerVolumeM3: node.leastOuterM3,
        f3Hz: node.f3Hz,
        levelDb: levelAt(node, joined)
      })
      if (atLeast > 0) {
        if (passed === undefined || atLeast < passed.beyond) passed = { node, beyond: atLeast }
        continue
      }
      const box = weigh(node)
      if (box === undefined || (found !== undefined && box.design.score <= found.design.score)) continue
      const beyond = overshoot({ ...box.heard, outerVolumeM3: box.design.place.outerM3 })
      if (beyond <= 0) found = box
      else if (near === undefined || beyond < near.beyond) near = { box, beyond }
    }
    if (found !== undefined) return { ...found, keeps: true }
    const last =
      passed !== undefined && (near === undefined || passed.beyond < near.beyond) ? weigh(passed.node) : undefined
    const nearest = last ?? near?.box
    return nearest && { ...nearest, keeps: false }
  }
  return { best }
}
