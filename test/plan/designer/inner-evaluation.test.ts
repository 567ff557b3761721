/** The closed forms of the designer against the network solver of the responses, over random systems. */
import { describe, expect, it } from 'vitest'
import { airOf } from '../../../src/domain/air/air.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { bandPassLoad } from '../../../src/plan/designer/evaluate/band-pass-load.ts'
import { type BoxCurves, boxCurves, portLimit2, solveBox } from '../../../src/plan/designer/evaluate/box-response.ts'
import { designGridHz } from '../../../src/plan/designer/evaluate/design-grid.ts'
import { driverTables } from '../../../src/plan/designer/evaluate/driver-tables.ts'
import { boxDelays, worstDelayS } from '../../../src/plan/designer/evaluate/listening.ts'
import { solveLoaded } from '../../../src/plan/designer/evaluate/loaded-response.ts'
import { radiatorLoad } from '../../../src/plan/designer/evaluate/radiator-load.ts'
import { type Draw, draws, randomDriver } from '../../support/random-systems.ts'

const frequenciesHz = designGridHz

function randomCase(kind: 'closed' | 'vented', draw: Draw) {
  const inSeries = draw.pick([1, 2])
  const count = inSeries * draw.pick([1, 2])
  const netVolumeM3 = draw.between(0.006, 0.3)
  const port = { areaM2: draw.between(0.002, 0.03), lengthM: draw.between(0.05, 0.9) }
  const leakQ = draw.between(5, 30)
  const limits = {
    amplifierVoltageV: draw.between(10, 80),
    amplifierCurrentA: draw.between(5, 60),
    airSpeedMPerS: draw.between(10, 40),
    ratedOhm: draw.between(1, 20),
    dutyFactor: draw.between(0.1, 1)
  }
  const driver = { ...randomDriver(draw), xmaxM: draw.between(0.004, 0.03), powerW: draw.between(30, 2000) }
  return { count, inSeries, netVolumeM3, port, leakQ, limits, driver, seriesOhm: draw.between(0.001, 0.5), kind }
}

function solved({
  kind,
  netVolumeM3,
  port,
  leakQ,
  count,
  inSeries,
  seriesOhm,
  ...rest
}: ReturnType<typeof randomCase>) {
  const rear = kind === 'vented' ? { netVolumeM3, port, leakQ } : { netVolumeM3 }
  return computeResponse({
    ...rest,
    drivers: { count, inSeries },
    enclosure: { kind, rear },
    source: { voltageV: 1, seriesOhm },
    frequenciesHz: [...frequenciesHz]
  }).result
}

const everyLimit = ['cone-excursion', 'coil-heat', 'rated-voltage', 'amplifier-voltage', 'amplifier-current']

type Grouped = Omit<ReturnType<typeof randomCase>, 'kind' | 'port' | 'leakQ' | 'netVolumeM3'>

/** Tables and limits of the drivers of a case. */
function grouped({ driver, count, inSeries, seriesOhm, limits }: Grouped) {
  const assume = assumptions()
  const air = airOf(undefined, assume)
  const tables = driverTables({ driver: driverOf(driver, air, assume), count, inSeries, seriesOhm, air }, frequenciesHz)
  const heatW = driver.powerW * count
  const bounds = {
    coneM: driver.xmaxM,
    heatW,
    ratedV: Math.sqrt((heatW * limits.ratedOhm) / limits.dutyFactor),
    duty: limits.dutyFactor,
    amplifierV: limits.amplifierVoltageV,
    amplifierA: limits.amplifierCurrentA
  }
  return { tables, bounds, curves: boxCurves(frequenciesHz.length) }
}

/** Largest voltage and its level at every frequency as the network has them, no air in a port. */
function expectSolved(solvedCurves: ReturnType<typeof solved>['curves'], own: BoxCurves, governed: Set<string>): void {
  for (const [k, voltage2] of own.other2.entries()) {
    const levelDb = 10 * Math.log10((own.level2[k] as number) * voltage2)
    expect(levelDb, `${frequenciesHz[k]} Hz`).toBeCloseTo(solvedCurves.maximumLevelDb?.[k] as number, 9)
    expect(Math.sqrt(voltage2) / (solvedCurves.maximumVoltageV?.[k] as number)).toBeCloseTo(1, 10)
    governed.add(solvedCurves.governingLimit?.[k] as string)
  }
}

function evaluated(made: ReturnType<typeof randomCase>, tuningHz: number | undefined) {
  const { netVolumeM3, leakQ, limits, port } = made
  const { tables, bounds, curves } = grouped(made)
  const design = tuningHz === undefined ? { netVolumeM3 } : { netVolumeM3, tuningHz, leakQ }
  solveBox(tables, design, bounds, curves)
  return Array.from(frequenciesHz, (_, k) => {
    const air2 = (port.areaM2 * limits.airSpeedMPerS) ** 2 * portLimit2(curves.port2[k] as number)
    const voltage2 = Math.min(curves.other2[k] as number, tuningHz === undefined ? Infinity : air2)
    return { voltageV: Math.sqrt(voltage2), levelDb: 10 * Math.log10((curves.level2[k] as number) * voltage2) }
  })
}

describe('the inner evaluation of the designer', () => {
  for (const kind of ['closed', 'vented'] as const) {
    it(`equals the limits of the service: ${kind}`, () => {
      const draw = draws(1201)
      const governed = new Set<string>()
      for (let round = 0; round < 60; round++) {
        const made = randomCase(kind, draw)
        const { curves, scalars } = solved(made)
        const own = evaluated(made, kind === 'vented' ? scalars.tuningHz : undefined)
        for (const [k, each] of own.entries()) {
          expect(each.levelDb, `${round} ${frequenciesHz[k]} Hz`).toBeCloseTo(curves.maximumLevelDb?.[k] as number, 9)
          expect(each.voltageV / (curves.maximumVoltageV?.[k] as number)).toBeCloseTo(1, 10)
          governed.add(curves.governingLimit?.[k] as string)
        }
      }
      expect([...governed].toSorted()).toEqual(
        [...everyLimit, ...(kind === 'vented' ? ['port-air-speed'] : [])].toSorted()
      )
    })
  }

  it('equals the limits of the service: passive radiators', () => {
    const draw = draws(1203)
    const governed = new Set<string>()
    for (let round = 0; round < 60; round++) {
      const { kind: _, port: _port, limits: drawn, ...made } = randomCase('closed', draw)
      const { driver, netVolumeM3, leakQ } = made
      const { airSpeedMPerS: _speed, ...limits } = { ...drawn, passiveRadiatorXmaxM: draw.between(0.004, 0.04) }
      const units = { count: draw.pick([1, 2]), areaM2: draw.between(0.02, 0.1), massKg: draw.between(0.1, 1.5) }
      const radiators = { ...units, complianceMPerN: draw.between(1e-4, 2e-3), qm: draw.between(2, 20) }
      const solvedBox = computeResponse({
        driver,
        drivers: { count: made.count, inSeries: made.inSeries },
        enclosure: { kind: 'passive-radiator', rear: { netVolumeM3, leakQ, passiveRadiators: radiators } },
        source: { voltageV: 1, seriesOhm: made.seriesOhm },
        limits,
        frequenciesHz: [...frequenciesHz]
      }).result
      const { tables, bounds, curves } = grouped({ ...made, limits: { ...limits, airSpeedMPerS: 1 } })
      const unit = {
        ...radiators,
        rmsKgPerS: Math.sqrt(radiators.massKg / radiators.complianceMPerN) / radiators.qm,
        travelM: limits.passiveRadiatorXmaxM,
        mostAddedKg: 0
      }
      const tuningHz = solvedBox.scalars.tuningHz as number
      const box = { netVolumeM3, tuningHz, leakQ, unit, count: radiators.count, isFlat: false }
      solveLoaded(tables, radiatorLoad(tables.air, box, {}), bounds, curves)
      expectSolved(solvedBox.curves, curves, governed)
    }
    expect([...governed].toSorted()).toEqual([...everyLimit, 'passive-radiator-excursion'].toSorted())
  })

  it('equals the limits of the service: band-pass of fourth order', () => {
    const draw = draws(1205)
    const governed = new Set<string>()
    for (let round = 0; round < 60; round++) {
      const { kind: _, port, limits, ...made } = randomCase('closed', draw)
      const { driver, netVolumeM3, leakQ } = made
      const frontVolumeM3 = netVolumeM3 * draw.between(0.2, 4)
      const { airSpeedMPerS: _speed, ...others } = limits
      const solvedBox = computeResponse({
        driver,
        drivers: { count: made.count, inSeries: made.inSeries },
        enclosure: {
          kind: 'band-pass-4',
          rear: { netVolumeM3, leakQ },
          front: { netVolumeM3: frontVolumeM3, leakQ, port }
        },
        source: { voltageV: 1, seriesOhm: made.seriesOhm },
        limits: { ...others, airSpeedMPerS: 1e6 },
        frequenciesHz: [...frequenciesHz]
      }).result
      const { tables, bounds, curves } = grouped({ ...made, limits })
      const tuningHz = solvedBox.scalars.frontTuningHz as number
      solveLoaded(tables, bandPassLoad(tables, { netVolumeM3, frontVolumeM3, tuningHz, leakQ }, {}), bounds, curves)
      expectSolved(solvedBox.curves, curves, governed)
      for (const k of frequenciesHz.keys()) {
        const speed = Math.sqrt(2 * (curves.port2[k] as number)) / port.areaM2
        expect(speed / (solvedBox.curves.frontPortAirSpeedMPerS?.[k] as number)).toBeCloseTo(1, 9)
      }
    }
    expect([...governed].toSorted()).toEqual([...everyLimit].toSorted())
  })

  it('hears a box given as a load as the box itself, and its air as one more limit', () => {
    const draw = draws(1204)
    const { limits: _, ...made } = randomCase('closed', draw)
    const { tables, bounds, curves } = grouped({ ...made, limits: { ...randomCase('closed', draw).limits } })
    const held = { ...bounds, springShare: 0.001 }
    const other = boxCurves(frequenciesHz.length)
    const { netVolumeM3 } = made
    const still = { areaM2: 1e-7, massKg: 1, complianceMPerN: 1, rmsKgPerS: 0, travelM: 1e9, mostAddedKg: 0 }
    const box = { netVolumeM3, tuningHz: 1e-3, unit: still, count: 1, isFlat: false }
    solveBox(tables, { netVolumeM3 }, held, curves)
    solveLoaded(tables, radiatorLoad(tables.air, box, held), held, other)
    for (const [k, each] of curves.other2.entries()) {
      expect(other.other2[k] as number).toBeCloseTo(each, 6)
      expect((other.level2[k] as number) / (curves.level2[k] as number)).toBeCloseTo(1, 6)
    }
  })

  it('finds the mean group delay of the service between neighbours', () => {
    const draw = draws(5)
    for (let round = 0; round < 20; round++) {
      const made = { ...randomCase('closed', draw), seriesOhm: 0 }
      const air = airOf(undefined, assumptions())
      const tables = driverTables({ ...made, driver: driverOf(made.driver, air), air }, frequenciesHz)
      const curves = boxCurves(frequenciesHz.length)
      solveBox(tables, { netVolumeM3: made.netVolumeM3 }, { duty: 1 }, curves)
      const delays = solved(made).curves.groupDelayS ?? []
      const pairs = delays.flatMap((delay, k) => {
        const [low, high] = [frequenciesHz[k] as number, frequenciesHz[k + 1] ?? Infinity]
        return low >= 19.99 && high <= 80 ? [(delay + (delays[k + 1] as number)) / 2] : []
      })
      expect(worstDelayS(boxDelays(frequenciesHz, curves), 0) / Math.max(...pairs)).toBeCloseTo(1, 1)
    }
  })
})
