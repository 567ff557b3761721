/** What a sizing starts from: the drivers as one, the losses, and a way to hear any box through the network. */

import type { CandidateResponse, SizingRequest } from '../../../contract/enclosures/enclosure-sizing.ts'
import { type Air, airOf } from '../../air/air.ts'
import type { Assumptions } from '../../assume.ts'
import { assumptions } from '../../assume.ts'
import { type Driver, driverOf } from '../../driver/driver.ts'
import { qesFactor } from '../../driver/series-resistance.ts'
import type { Solution } from '../../network/solution.ts'
import { present } from '../../present.ts'
import type { BoxedDriver } from '../alignment/closed-box.ts'
import { enclosureDefaults } from '../model/defaults.ts'
import { driverWiring } from '../model/driver-wiring.ts'
import { pressureQuantity } from '../model/extremes.ts'
import { absorptionRule, usualLining, volumeRule } from '../model/lining.ts'
import { echoLossless } from '../model/lossless.ts'
import { highestLevelDb, passBandOf } from '../model/pass-band.ts'
import { plateauPressure, pressureScale } from '../model/plateau.ts'
import type { EnclosureRequest } from '../model/request.ts'
import { pointSolver, type ResponseSystem, responseSystem, solveGrid } from '../model/response-system.ts'
import { groupDelayCurve } from '../response/curves.ts'
import { sizingDefaults } from './defaults.ts'

export interface SizingProblem {
  readonly request: SizingRequest
  readonly air: Air
  readonly driver: Driver
  readonly count: number
  /** Drivers whose front is seen: half of them in isobaric pairs. */
  readonly faces: number
  /** All drivers, the source's resistance in the Q. */
  readonly boxed: BoxedDriver
  readonly ebpHz: number
  /** 1/QL of an opened box, every loss of it taken as a leak. */
  readonly openedLossPerQ: number
  readonly openedLeakQ: number
  readonly absorptionQ?: number
  readonly volumeFactor: number
  /** Level re the plateau of the drivers, at many frequencies. */
  readonly levelsOf: (enclosure: EnclosureRequest, frequenciesHz: readonly number[]) => readonly number[]
  readonly evaluate: (enclosure: EnclosureRequest, reference: 'plateau' | 'peak') => CandidateResponse
}

/**
 * Resistance before the group raises Qes: Qes′ = Qes·(Re + Rg·N/S²)/Re.
 *
 * @throws DesignError whatever the driver or the air refuses; `conflicting-input` where strings or pairs do not divide the drivers
 */
export function sizingProblem(request: SizingRequest, assume: Assumptions): SizingProblem {
  const air = airOf(request.air, assume)
  const driver = driverOf(request.driver, air, assume)
  const { count, faces, inSeries, vasM3 } = driverWiring(request.drivers, driver, assume)
  const sourceOhm = assume.take(request.source?.seriesOhm, 'source.seriesOhm', enclosureDefaults.seriesOhm)
  const qes = driver.qes * qesFactor((sourceOhm * count) / inSeries ** 2, driver.coil.reOhm)
  const boxed = {
    fsHz: driver.fsHz,
    qts: (driver.qms * qes) / (driver.qms + qes),
    vasM3
  }
  return {
    request,
    air,
    driver,
    count,
    faces,
    boxed,
    ebpHz: driver.fsHz / driver.qes,
    ...lossesOf(request, assume),
    levelsOf: (enclosure, grid) => relativeLevel(systemOf(request, enclosure, sourceOhm)).levelsOn(grid),
    evaluate: (enclosure, reference) => evaluated(systemOf(request, enclosure, sourceOhm), reference)
  }
}

function lossesOf(request: SizingRequest, assume: Assumptions) {
  const { losses, lining } = request
  const usual = usualLining[lining?.amount ?? 'bare']
  const volumeFactor =
    lining === undefined || lining.amount === 'bare'
      ? (lining?.volumeFactor ?? 1)
      : assume.work(lining.volumeFactor, 'lining.volumeFactor', usual.volumeFactor, volumeRule(usual))
  const lined = lining === undefined || lining.amount === 'bare' ? undefined : usual.absorptionQ
  const absorptionQ =
    lined === undefined
      ? losses?.absorptionQ
      : assume.work(losses?.absorptionQ, 'losses.absorptionQ', lined, absorptionRule(lining?.amount))
  echoLossless(absorptionQ, 'losses.absorptionQ', enclosureDefaults.boxAbsorption, assume)
  if (opensAny(request)) echoLossless(losses?.portQ, 'losses.portQ', enclosureDefaults.portFriction, assume)
  else echoLossless(losses?.leakQ, 'losses.leakQ', enclosureDefaults.tightChamber, assume)
  const openedLeakQ = opensAny(request)
    ? assume.take(losses?.leakQ, 'losses.leakQ', enclosureDefaults.openedLeakQ)
    : (losses?.leakQ ?? enclosureDefaults.openedLeakQ.value)
  const perQ = (q: number | undefined) => (q === undefined ? 0 : 1 / q)
  return {
    volumeFactor,
    openedLeakQ,
    openedLossPerQ: 1 / openedLeakQ + perQ(absorptionQ) + perQ(losses?.portQ),
    ...present({ absorptionQ })
  }
}

const opensAny = ({ kinds }: SizingRequest) =>
  kinds === undefined || kinds.some(kind => kind !== 'closed' && kind !== 'band-pass-4')

function systemOf({ driver, drivers, air }: SizingRequest, enclosure: EnclosureRequest, seriesOhm: number) {
  const group = present({ drivers, air })
  return responseSystem({ driver, enclosure, source: { voltageV: 1, seriesOhm }, ...group }, assumptions())
}

function evaluated(system: ResponseSystem, reference: 'plateau' | 'peak'): CandidateResponse {
  const { level, levelsOn } = relativeLevel(system)
  const toHz = Math.max(250, 8 * system.driver.fsHz)
  const peak = reference === 'plateau' ? 0 : highestLevelDb(level, 3, toHz, levelsOn)
  const band = passBandOf(
    f => level(f) - peak,
    3,
    toHz,
    frequencies => levelsOn(frequencies).map(db => db - peak)
  )
  const { f3UpperHz, ...highPass } = band
  const at = pointSolver(system)
  return {
    ...(reference === 'plateau' ? highPass : band),
    ...(f3UpperHz === undefined || reference === 'plateau' ? {} : { f3UpperHz }),
    peakDb: reference === 'plateau' ? band.peakDb : peak,
    ...(band.f3Hz === undefined ? {} : { groupDelayAtF3S: groupDelayCurve(at(band.f3Hz))[0] ?? 0 }),
    levels: sizingDefaults.comparedHz.value.map(frequencyHz => ({ frequencyHz, relativeDb: level(frequencyHz) }))
  }
}

/** Level re the mass-controlled plateau of the same drivers in half space [dB], one by one and for a whole grid. */
function relativeLevel(system: ResponseSystem) {
  const at = pointSolver(system)
  const scale = pressureScale(system) / plateauPressure(system)
  const db = (solution: Solution, k: number) =>
    20 * Math.log10(Math.max(scale * pressureQuantity.modulus(solution, k), 1e-12))
  return {
    level: (frequencyHz: number) => db(at(frequencyHz), 0),
    levelsOn: (frequenciesHz: readonly number[]) => {
      const solution = solveGrid(system, frequenciesHz)
      return frequenciesHz.map((_, k) => db(solution, k))
    }
  }
}
