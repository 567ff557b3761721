/** POST /v1/designs/drivers: the drivers of a size that would suit a wish, a space and a car, where nobody has one yet. */
import type {
  DriverRegion,
  DriverRegionRequest,
  SuitedDriver,
  TypicalDriver
} from '../../../contract/systems/driver-region.ts'
import type { DesignGoal } from '../../../contract/systems/words.ts'
import { type Assumptions, assumptions } from '../../../domain/assume.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { toDigits } from '../../../domain/digits.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import { say, worded } from '../../../domain/say.ts'
import { firstBuilt } from '../../enclosure/alternatives.ts'
import { wishDesigner, wishProblem } from '../../enclosure/goal-designs.ts'
import { roomForAir } from '../../enclosure/parts/plan-box.ts'
import type { Setting } from '../../enclosure/parts/setting.ts'
import { type BoxBrief, boxBrief } from '../../request/box-brief.ts'
import { planDefaults } from '../../request/defaults.ts'
import { partRunner } from '../../request/part.ts'
import { resolvedPlan } from '../../request/resolved-plan.ts'
import { largestDriver } from '../../ways-out/largest-driver.ts'
import { inSteps } from '../room/area-steps.ts'
import type { PlacedBox } from '../room/box-room.ts'
import { type Goal, goals } from '../search/defaults.ts'
import type { Room } from '../search/design-problem.ts'
import { goalFor } from '../search/goals.ts'
import { remembered } from '../search/remembered.ts'
import { regionDefaults } from './defaults.ts'
import { driverWorth } from './driver-worth.ts'
import { type Block, bestNode, cornersOf, type Field, grownBlock, type Node } from './grow-region.ts'
import { regionSizes, trioAt } from './region-nodes.ts'
import { driverOfTrio, nearestUsual, planOfTrio, type Trio, typicalDriver, type UsualDriver } from './typical-driver.ts'

interface RegionTask {
  readonly request: DriverRegionRequest
  readonly goal: DesignGoal
  readonly size: UsualDriver
  readonly typical: TypicalDriver
  readonly brief: BoxBrief
  readonly roomM3: number
}

function settingFor({ request, typical, brief }: RegionTask, trio: Trio): Setting {
  const { powerW, driverCount } = request
  const loadOhm = typical.ratedOhm / driverCount
  const voltageV = Math.sqrt(powerW * loadOhm)
  const driver = driverOfTrio(typical, trio)
  return {
    brief,
    driver,
    drivers: { count: driverCount, inSeries: 1 },
    joined: {
      connection: 'one-coil',
      driversInSeries: 1,
      loadOhm,
      outputs: 1,
      bridged: false,
      seriesOhm: 0,
      driversPowerW: powerW,
      amplifierPowerW: powerW,
      supplyPowerW: powerW,
      powerW,
      usablePowerW: powerW,
      targetVoltageV: voltageV,
      amplifierVoltageV: voltageV
    }
  }
}

/** A wish for little room is weighed by room and level here; a driver for a tight box is not forgiven what a loose one needs. */
function worthOf(task: RegionTask, room: Room<PlacedBox>, trio: Trio): number {
  const problem = wishProblem(settingFor(task, trio), task.roomM3, room)
  const wish: Goal = goals[task.goal].value
  const { withinDb: _, ...goal } = wish.closedOnly ? wish : goalFor(wish, problem.tables.qts)
  return driverWorth({ ...problem, goal })
}

/** The box that a plan would build for such a driver. */
function built(task: RegionTask, room: Room<PlacedBox>, trio: Trio): SuitedDriver | undefined {
  const setting = settingFor(task, trio)
  const designs = wishDesigner(setting, task.roomM3, room)
  const made = firstBuilt(
    { setting, goal: task.goal, designs, roomM3: task.roomM3 },
    task.goal,
    regionDefaults.mostAttempts.value
  )
  return made === undefined ? undefined : { ...trio, figures: made.figures }
}

interface Found {
  readonly block: Block
  readonly toleranceDb: number
  readonly best: SuitedDriver
  readonly corners: readonly SuitedDriver[]
}

const hasBreadth = ({ low, high }: Block) => low.every((each, axis) => each < (high[axis] ?? each))

/** The block at the least tolerance that gives it breadth along each axis, else at the most. */
function blockAt(field: Field, from: Node): Pick<Found, 'block' | 'toleranceDb'> {
  const [least, ...wider] = regionDefaults.tolerancesDb.value
  const grown = (toleranceDb: number) => ({
    toleranceDb,
    block: grownBlock(field, from, field.worth(from) - toleranceDb)
  })
  let found = grown(least)
  for (const toleranceDb of wider) if (!hasBreadth(found.block)) found = grown(toleranceDb)
  return found
}

/** Grown again without each corner for which nothing could be laid out. */
function regionOf(task: RegionTask): Found | undefined {
  const trio = (node: Node) => trioAt(task.size.nominalM, node)
  const { room } = wishProblem(settingFor(task, trio([0, 0, 0])), task.roomM3)
  const stepped = inSteps(room, regionDefaults.areaStep.value)
  const worthAt = remembered((...node: Node) => worthOf(task, stepped, trio(node)))
  const unsuited = new Set<string>()
  const worth = (node: Node) => (unsuited.has(node.join()) ? -Infinity : worthAt(...node))
  const suitedAt = remembered((...node: Node) => built(task, room, trio(node)))
  for (let turn = 0; turn < regionDefaults.mostTurns.value; turn++) {
    const from = bestNode({ sizes: regionSizes, worth })
    if (worth(from) === -Infinity) return undefined
    const { block, toleranceDb } = blockAt({ sizes: regionSizes, worth }, from)
    const tried = [from, ...cornersOf(block)].map(node => ({ node, suited: suitedAt(...node) }))
    const [best, ...corners] = tried.flatMap(({ suited }) => suited ?? [])
    if (best !== undefined && corners.length + 1 === tried.length) return { block, toleranceDb, best, corners }
    for (const { node, suited } of tried) if (suited === undefined) unsuited.add(node.join())
  }
  return undefined
}

/** The size asked for, or the largest that any box holds. */
function sizeFor(request: DriverRegionRequest): UsualDriver | undefined {
  const { nominalDiameterM } = request
  if (nominalDiameterM !== undefined) return nearestUsual(nominalDiameterM)
  const smallest = nearestUsual(0)
  const trio = trioAt(smallest.nominalM, [0, 0, 0])
  const largest = largestDriver(planOfTrio(request, typicalDriver(smallest, request), trio), request.driverCount)
  return largest === undefined ? undefined : nearestUsual(largest.nominalM)
}

function regionTask(request: DriverRegionRequest, assumed: Assumptions): RegionTask | undefined {
  const goal = assumed.take<DesignGoal>(request.goal, 'goal', planDefaults.goal)
  const size = sizeFor(request)
  if (size === undefined) return undefined
  const typical = typicalDriver(size, request)
  const plan = planOfTrio({ ...request, goal }, typical, trioAt(size.nominalM, [0, 0, 0]))
  const brief = boxBrief(resolvedPlan(plan, assumptions(), partRunner()))
  const roomM3 = roomForAir(brief)
  return roomM3 === undefined ? undefined : { request, goal, size, typical, brief, roomM3 }
}

function told({ goal, size, typical }: RegionTask, { block, toleranceDb, best, corners }: Found): DriverRegion {
  const [low, high] = [trioAt(size.nominalM, block.low), trioAt(size.nominalM, block.high)]
  const litres = (volumeM3: number) => toDigits(volumeM3 * 1e3, 3)
  const text = say('answer.driver-region', {
    sizeCm: toDigits(size.nominalM * 100, 3),
    fsFrom: low.fsHz,
    fsTo: high.fsHz,
    qtsFrom: low.qts,
    qtsTo: high.qts,
    vasFrom: litres(low.vasM3),
    vasTo: litres(high.vasM3),
    xmaxMm: toDigits(typical.xmaxM * 1e3, 2),
    powerW: toDigits(typical.powerW, 3)
  })
  return {
    ...worded({ text }),
    goal,
    nominalM: size.nominalM,
    fsFromHz: low.fsHz,
    fsToHz: high.fsHz,
    qtsFrom: low.qts,
    qtsTo: high.qts,
    vasFromM3: low.vasM3,
    vasToM3: high.vasM3,
    toleranceDb,
    typical,
    best,
    corners
  }
}

/**
 * @throws DesignError `no-solution` where no driver of the size finds a box
 * @validity Sealed and vented boxes, one driver of 4 Ω or several in parallel; the figures of a shelf lie within those looked at.
 */
export function regionOfDrivers(request: DriverRegionRequest): Outcome<DriverRegion> {
  const assumed = assumptions()
  const task = regionTask(request, assumed)
  const found = task === undefined ? undefined : regionOf(task)
  if (task === undefined || found === undefined) {
    throw new DesignError('no-solution', { field: 'space', detail: say('refused.no-driver-suits') })
  }
  return {
    result: told(task, found),
    cautions: [],
    assumed: assumed.list,
    sources: ['small-1972-direct-radiator', 'small-1973-vented-box', 'practice-driver-choice'],
    basis: []
  }
}
