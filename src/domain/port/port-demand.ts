/** How much air a port has to carry at full drive, and the area an air-speed limit asks for. */
import { goldenMaximum } from '../../numeric/golden-maximum.ts'
import { logarithmicGrid } from '../../numeric/grid.ts'
import type { Air } from '../air/air.ts'
import type { Assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { type Driver, driverOf } from '../driver/driver.ts'
import { branchFlow } from '../network/branch-flow.ts'
import { type Branch, type Network, OUTSIDE } from '../network/network.ts'
import { emptySolution } from '../network/solution.ts'
import { networkSolver } from '../network/solver.ts'
import { displacementRuleAreaM2, RULE_SPEED_SHARE } from './displacement-rule.ts'
import { HIGH_PASS_SHARE, USUAL_LEAK_Q } from './port-judgement.ts'
import type { PortDemand, PortSizingRequest } from './port-sizing.ts'

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
 * @throws DesignError `conflicting-input` where flow, swept volume and driver are given together
 */
export function portDemand(request: PortSizingRequest, setting: Setting, assume: Assumptions): PortDemand | undefined {
  const { driver, sweptVolumeM3, peakFlowM3PerS } = request
  const given = [driver, sweptVolumeM3, peakFlowM3PerS].filter(value => value !== undefined)
  if (given.length > 1) {
    const detail = 'Give one of the three: a driver with its drive, a swept volume, or a peak flow.'
    throw new DesignError('conflicting-input', { field: driver === undefined ? 'peakFlowM3PerS' : 'driver', detail })
  }
  if (driver !== undefined) return drivenDemand(request, driverOf(driver, setting.air), setting, assume)
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

/** The rule stands for 5 % of the speed of sound; other limits scale its area. */
function sweptDemand(sweptVolumeM3: number, { tuningHz, limitMPerS, air }: Setting): PortDemand {
  const ruleAreaM2 = displacementRuleAreaM2(tuningHz, sweptVolumeM3)
  const peakFlowM3PerS = ruleAreaM2 * RULE_SPEED_SHARE * air.soundSpeedMPerS
  return { by: 'swept-volume', peakFlowM3PerS, limitMPerS, areaM2: peakFlowM3PerS / limitMPerS, ruleAreaM2 }
}

/** @throws DesignError `out-of-range` where nothing of the span is left above it */
function lowestHz({ highPassHz }: PortSizingRequest, tuningHz: number, assume: Assumptions): number {
  const why = `${HIGH_PASS_SHARE} of the tuning: below it a high-pass has to protect the driver (practice, no source)`
  const fromHz = assume.or(highPassHz, 'highPassHz', HIGH_PASS_SHARE * tuningHz, why)
  const maximum = SPAN * tuningHz
  if (fromHz < maximum) return fromHz
  throw new DesignError('out-of-range', { field: 'highPassHz', value: fromHz, maximum, unit: 'Hz' })
}

/** The flow may have a peak below, at and above the tuning: looked for on a grid, then refined. */
function highestFlow(flow: (frequencyHz: number) => number, fromHz: number, toHz: number) {
  const grid = logarithmicGrid(fromHz, toHz, POINTS)
  const flows = grid.map(flow)
  const best = flows.indexOf(Math.max(...flows))
  const at = goldenMaximum(flow, grid[Math.max(0, best - 1)] ?? fromHz, grid[best + 1] ?? fromHz)
  const refined = flow(at)
  const onGrid = flows[best] ?? 0
  return refined >= onGrid ? { flow: refined, at } : { flow: onGrid, at: grid[best] ?? fromHz }
}

function drivenDemand(request: PortSizingRequest, driver: Driver, setting: Setting, assume: Assumptions): PortDemand {
  const { tuningHz, limitMPerS } = setting
  const flow = flowAtDrive(request, driver, setting, assume)
  const fromHz = lowestHz(request, tuningHz, assume)
  const highest = (held: boolean) => highestFlow(hz => flow(hz, held), fromHz, SPAN * tuningHz)
  const full = highest(false)
  const swept = driver.xmaxM === undefined ? undefined : (request.drivers?.count ?? 1) * driver.sdM2 * driver.xmaxM
  return {
    by: 'network',
    peakFlowM3PerS: full.flow,
    peakFlowHz: full.at,
    flowAtTuningM3PerS: flow(tuningHz, false),
    limitMPerS,
    areaM2: full.flow / limitMPerS,
    ...(swept === undefined
      ? {}
      : {
          excursionLimitedAreaM2: highest(true).flow / limitMPerS,
          ruleAreaM2: displacementRuleAreaM2(tuningHz, swept)
        })
  }
}

/** @throws DesignError `conflicting-input` where the drivers do not split into equal strings */
function stringsOf({ drivers }: PortSizingRequest, assume: Assumptions) {
  const count = assume.or(drivers?.count, 'drivers.count', 1, 'a single driver')
  const inSeries = assume.or(drivers?.inSeries, 'drivers.inSeries', 1, 'all drivers in parallel')
  if (count % inSeries === 0) return { count, inSeries }
  const detail = `${count} drivers cannot be split into strings of ${inSeries}.`
  throw new DesignError('conflicting-input', { field: 'drivers.inSeries', value: inSeries, detail })
}

/** Peak flow through the port [m³/s]; the mass of a lumped port follows from the tuning alone, whatever its area. */
function flowAtDrive(request: PortSizingRequest, driver: Driver, { tuningHz, air }: Setting, assume: Assumptions) {
  const { count, inSeries } = stringsOf(request, assume)
  const compliance = request.netVolumeM3 / air.stiffnessPa
  const omega = 2 * Math.PI * tuningHz
  const measured = 'opened boxes of 25 to 100 L measure 5 to 10 (Small 1973)'
  const leakQ = assume.or(request.leakQ, 'leakQ', USUAL_LEAK_Q, measured)
  const port = branch({ massKgPerM4: 1 / (omega ** 2 * compliance) })
  const leak = branch({ resistancePaSPerM3: leakQ / (omega * compliance) })
  const network: Network = {
    chambers: [{ complianceM3PerPa: compliance, absorptionPaSPerM3: 0 }],
    branches: [port, leak],
    drivers: [{ front: OUTSIDE, rear: 0, driver, count, inSeries, polarity: 1 }],
    connection: 'parallel'
  }
  const solver = networkSolver(network, request.source?.seriesOhm ?? 0)
  const solution = emptySolution(network, new Float64Array(1))
  const peak = Math.SQRT2 * driveV(request, driver, (driver.coil.reOhm * inSeries ** 2) / count, count, assume)
  return (frequencyHz: number, heldToXmax: boolean): number => {
    solution.omegas[0] = 2 * Math.PI * frequencyHz
    solver.solve(solution)
    const cone = solution.velocities[0]
    const excursion = (peak * Math.hypot(cone?.re[0] ?? 0, cone?.im[0] ?? 0)) / (2 * Math.PI * frequencyHz)
    const held = heldToXmax && driver.xmaxM !== undefined ? Math.min(1, driver.xmaxM / excursion) : 1
    return held * peak * (branchFlow(solution, port)[0] ?? 0)
  }
}

function branch(part: Partial<Branch>): Branch {
  return { from: 0, to: OUTSIDE, count: 1, resistancePaSPerM3: 0, massKgPerM4: 0, stiffnessPaPerM3: 0, ...part }
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
    const detail = 'Give voltageV, or powerW with loadOhm, not both.'
    throw new DesignError('conflicting-input', { field: 'source.voltageV', detail })
  }
  if (source?.powerW === undefined && powerW === undefined) {
    const detail = 'Full drive is not told: give a voltage, a power, or the rated power of the driver.'
    throw new DesignError('missing-input', { field: 'source.powerW', detail })
  }
  const power = assume.or(source?.powerW, 'source.powerW', count * (powerW ?? 0), 'the rated power of the drivers')
  const why = 'the DC resistance of the drivers as they are joined'
  return Math.sqrt(power * assume.or(source?.loadOhm, 'source.loadOhm', groupOhm, why))
}
