/** How much air a port has to carry at full drive, and the area an air-speed limit asks for. */
import type { PortDemand, PortSizingRequest } from '../../../contract/ports/port-sizing.ts'
import { goldenMaximum } from '../../../numeric/golden-maximum.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { Air } from '../../air/air.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { type Driver, driverOf } from '../../driver/driver.ts'
import { limitDefaults } from '../../enclosure/limits/defaults.ts'
import { enclosureDefaults } from '../../enclosure/model/defaults.ts'
import { type DriverWiring, driverWiring } from '../../enclosure/model/driver-wiring.ts'
import { presetNetwork } from '../../enclosure/model/preset-network.ts'
import type { PresetEnclosureRequest } from '../../enclosure/model/request.ts'
import { filterDefaults } from '../../filter/defaults.ts'
import { filterSections } from '../../filter/filter-sections.ts'
import { branchFlow } from '../../network/branch-flow.ts'
import { filteredSolver } from '../../network/filtered-solver.ts'
import type { Branch } from '../../network/network.ts'
import { emptySolution, type Solution } from '../../network/solution.ts'
import { networkSolver } from '../../network/solver.ts'
import { say } from '../../say.ts'
import { effectiveLengthM } from '../port-length.ts'
import { belowTuning, portSizingDefaults } from './defaults.ts'
import { displacementRuleAreaM2, RULE_SPEED_SHARE } from './displacement-rule.ts'

interface Setting {
  readonly tuningHz: number
  readonly limitMPerS: number
  readonly air: Air
}

/** Highest frequency at which the flow is looked at, in tunings; far above it the port carries next to nothing. */
const SPAN = 6
const POINTS = 160

/**
 * @returns undefined where nothing tells the flow
 * @throws DesignError `conflicting-input` where flow, swept volume and driver are given together; `missing-input` where the
 *   request says how a driver is driven, but not which
 */
export function portDemand(request: PortSizingRequest, setting: Setting, assume: Assumptions): PortDemand | undefined {
  const { driver, sweptVolumeM3, peakFlowM3PerS } = request
  const given = [driver, sweptVolumeM3, peakFlowM3PerS].filter(value => value !== undefined)
  if (given.length > 1) {
    const detail = say('refused.give-one-of-the-three-a')
    throw new DesignError('conflicting-input', { field: driver === undefined ? 'peakFlowM3PerS' : 'driver', detail })
  }
  if (driver !== undefined) return drivenDemand(request, driverOf(driver, setting.air, assume), setting, assume)
  requireNothingDriven(request)
  if (peakFlowM3PerS !== undefined) {
    return {
      by: 'given-flow',
      peakFlowM3PerS,
      limitMPerS: setting.limitMPerS,
      areaM2: peakFlowM3PerS / setting.limitMPerS
    }
  }
  return sweptVolumeM3 === undefined ? undefined : sweptDemand(sweptVolumeM3, setting)
}

/** What only a driver's flow depends on; beside a flow or a swept volume it would be dropped. */
const ofTheDriver = ['drivers', 'source', 'filters', 'leakQ', 'highPassHz', 'rearVolumeM3'] as const

function requireNothingDriven(request: PortSizingRequest): void {
  const idle = ofTheDriver.find(field => request[field] !== undefined)
  if (idle === undefined) return
  const detail = say('refused.only-bears-on-the-air-that', { idle })
  throw new DesignError('missing-input', { field: 'driver', detail })
}

/** The rule stands for 5 % of the speed of sound; other limits scale its area. */
function sweptDemand(sweptVolumeM3: number, { tuningHz, limitMPerS, air }: Setting): PortDemand {
  const ruleAreaM2 = displacementRuleAreaM2(tuningHz, sweptVolumeM3)
  const peakFlowM3PerS = ruleAreaM2 * RULE_SPEED_SHARE * air.soundSpeedMPerS
  return { by: 'swept-volume', peakFlowM3PerS, limitMPerS, areaM2: peakFlowM3PerS / limitMPerS, ruleAreaM2 }
}

/**
 * With the high-pass among the filters the whole programme is looked at; without it the range ends where one has to protect.
 *
 * @throws DesignError `out-of-range` where nothing of the span is left above it
 */
function lowestHz({ highPassHz, filters = [] }: PortSizingRequest, tuningHz: number, assume: Assumptions): number {
  const weighed = filters.some(({ kind }) => kind === 'high-pass')
  const share = filterDefaults.highPassOfTuning.value
  const rule = weighed ? portSizingDefaults.weighedFrom : belowTuning(share)
  const fromHz = assume.work(
    highPassHz,
    'highPassHz',
    weighed ? limitDefaults.programmeFromHz.value : share * tuningHz,
    rule
  )
  const maximum = SPAN * tuningHz
  if (fromHz < maximum) return fromHz
  throw new DesignError('out-of-range', { field: 'highPassHz', value: fromHz, maximum, unit: 'Hz' })
}

/** Peak flow in a port, and as much of it as the cones may move within their excursion [m³/s]. */
interface Flow {
  readonly full: number
  readonly held: number
}

type FlowName = keyof Flow

/** The flow may have a peak below, at and above the tuning: looked for on a grid, then refined. */
function highestFlow(grid: readonly number[], flows: readonly number[], flow: (frequencyHz: number) => number) {
  const [fromHz = 0] = grid
  const best = flows.indexOf(Math.max(...flows))
  const at = goldenMaximum(flow, grid[Math.max(0, best - 1)] ?? fromHz, grid[best + 1] ?? fromHz)
  const refined = flow(at)
  const onGrid = flows[best] ?? 0
  return refined >= onGrid ? { flow: refined, at } : { flow: onGrid, at: grid[best] ?? fromHz }
}

function drivenDemand(request: PortSizingRequest, driver: Driver, setting: Setting, assume: Assumptions): PortDemand {
  const { tuningHz, limitMPerS } = setting
  const wiring = driverWiring(request.drivers, driver, assume)
  const flowsAt = flowAtDrive(request, driver, wiring, setting, assume)
  const fromHz = lowestHz(request, tuningHz, assume)
  const grid = logarithmicGrid(fromHz, SPAN * tuningHz, POINTS)
  const onGrid = flowsAt(grid)
  const one = new Float64Array(1)
  const flow = (frequencyHz: number, name: FlowName) => {
    one[0] = frequencyHz
    return (flowsAt(one)[0] as Flow)[name]
  }
  const highest = (name: FlowName) =>
    highestFlow(
      grid,
      onGrid.map(each => each[name]),
      hz => flow(hz, name)
    )
  const full = highest('full')
  const swept = driver.xmaxM === undefined ? undefined : wiring.faces * driver.sdM2 * driver.xmaxM
  return {
    by: 'network',
    peakFlowM3PerS: full.flow,
    peakFlowHz: full.at,
    flowAtTuningM3PerS: flow(tuningHz, 'full'),
    limitMPerS,
    areaM2: full.flow / limitMPerS,
    ...(swept === undefined
      ? {}
      : {
          excursionLimitedAreaM2: highest('held').flow / limitMPerS,
          ruleAreaM2: displacementRuleAreaM2(tuningHz, swept)
        })
  }
}

/** The area of all cones that face the listener; of isobaric pairs one each. */
export function coneAreaM2({ driver, drivers }: PortSizingRequest, air: Air): number | undefined {
  if (driver === undefined) return undefined
  const completed = driverOf(driver, air)
  return driverWiring(drivers, completed, assumptions()).faces * completed.sdM2
}

/** The box as the response builds it; its port has the mass that the tuning asks for, whatever its area. */
function openedNetwork(
  request: PortSizingRequest,
  driver: Driver,
  wiring: DriverWiring,
  { tuningHz, air }: Setting,
  assume: Assumptions
) {
  const { netVolumeM3, rearVolumeM3 } = request
  const leakQ = assume.take(request.leakQ, 'leakQ', enclosureDefaults.openedLeakQ)
  const opening = { count: 1, areaM2: driver.sdM2 }
  const lengthM = effectiveLengthM(tuningHz, netVolumeM3, opening, air.soundSpeedMPerS)
  const opened = { netVolumeM3, leakQ, port: { ...opening, lengthM, endFactor: 0 } }
  const enclosure: PresetEnclosureRequest =
    rearVolumeM3 === undefined
      ? { kind: 'vented', rear: opened }
      : { kind: 'band-pass-4', rear: { netVolumeM3: rearVolumeM3, leakQ }, front: opened }
  return presetNetwork(enclosure, driver, wiring, air, assumptions())
}

/** The flow through the port over frequencies, the filters before the amplifier in it. */
function flowAtDrive(
  request: PortSizingRequest,
  driver: Driver,
  wiring: DriverWiring,
  setting: Setting,
  assume: Assumptions
) {
  const { network, ports } = openedNetwork(request, driver, wiring, setting, assume)
  const port = ports[0]?.branch as Branch
  const sourceOhm = assume.take(request.source?.seriesOhm, 'source.seriesOhm', enclosureDefaults.seriesOhm)
  const solver = filteredSolver(networkSolver(network, sourceOhm), filterSections(request.filters ?? [], 'filters'))
  const single = emptySolution(network, new Float64Array(1))
  const peak = Math.SQRT2 * driveV(request, driver, wiring.groupOhm, wiring.count, assume)
  return (frequenciesHz: ArrayLike<number>): readonly Flow[] => {
    const { length } = frequenciesHz
    const solution = length === 1 ? single : emptySolution(network, new Float64Array(length))
    for (let k = 0; k < length; k++) solution.omegas[k] = 2 * Math.PI * (frequenciesHz[k] as number)
    solver.solve(solution)
    return Array.from(branchFlow(solution, port), (perVolt, k) => {
      const share = heldShare(solution, k, peak, driver.xmaxM)
      return { full: peak * perVolt, held: share * peak * perVolt }
    })
  }
}

/** What the excursion of the cone that moves most leaves of a drive. */
function heldShare({ velocities, omegas }: Solution, k: number, peak: number, xmaxM: number | undefined): number {
  if (xmaxM === undefined) return 1
  const speeds = velocities.map(({ re, im }) => Math.hypot(re[k] ?? 0, im[k] ?? 0))
  return Math.min(1, xmaxM / ((peak * Math.max(...speeds)) / (omegas[k] as number)))
}

/** @returns RMS over the group, before the series resistance */
function driveV(
  { source }: PortSizingRequest,
  { powerW }: Driver,
  groupOhm: number,
  count: number,
  assume: Assumptions
): number {
  if (source?.voltageV !== undefined) {
    if (source.powerW === undefined && source.loadOhm === undefined) return source.voltageV
    const detail = say('refused.give-voltagev-or-powerw-with-loadohm')
    throw new DesignError('conflicting-input', { field: 'source.voltageV', detail })
  }
  if (source !== undefined && source.powerW === undefined) {
    throw new DesignError('missing-input', {
      field: 'source.voltageV',
      detail: say('refused.give-the-voltage-or-the-power')
    })
  }
  if (source === undefined && powerW === undefined) {
    const detail = say('refused.full-drive-is-not-told-give')
    throw new DesignError('missing-input', { field: 'source.powerW', detail })
  }
  const power = assume.work(source?.powerW, 'source.powerW', count * (powerW ?? 0), enclosureDefaults.ratedPower)
  return Math.sqrt(power * assume.work(source?.loadOhm, 'source.loadOhm', groupOhm, enclosureDefaults.groupOhm))
}
