/** The bounded search against the exhaustive one of a prototype, on twenty problems whose rule of fit needs no layout. */
import { describe, expect, it } from 'vitest'
import { standardAir } from '../../../src/domain/air/air.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { cabinGain } from '../../../src/domain/cabin/cabin-gain.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { boxCurves, portLimit2, solveBox } from '../../../src/plan/designer/evaluate/box-response.ts'
import { designGridHz } from '../../../src/plan/designer/evaluate/design-grid.ts'
import { driverTables } from '../../../src/plan/designer/evaluate/driver-tables.ts'
import { programme } from '../../../src/plan/designer/evaluate/held-level.ts'
import { goals } from '../../../src/plan/designer/search/defaults.ts'
import type { DesignProblem, Place } from '../../../src/plan/designer/search/design-problem.ts'
import { searchBoxes } from '../../../src/plan/designer/search/search-boxes.ts'
import { bruteForceBest } from '../../published/brute-force-designs.ts'

type Problem = (typeof bruteForceBest)[number]

/** The rule of fit of the problems. */
function simpleRoom({ totalL, portLengthMaxMm }: Pick<Problem, 'totalL' | 'portLengthMaxMm'>) {
  const totalM3 = totalL / 1000
  return {
    fromM3: 0.004,
    toM3: totalM3,
    closed: (netM3: number) => (netM3 <= totalM3 * (1 + 1e-9) ? { outerM3: netM3 } : undefined),
    ported: (netM3: number, tuningHz: number, areaM2: number) => {
      const effectiveM = areaM2 / (netM3 * ((2 * Math.PI * tuningHz) / standardAir.soundSpeedMPerS) ** 2)
      const lengthM = effectiveM - 1.463 * Math.sqrt(areaM2 / Math.PI)
      const outerM3 = netM3 + areaM2 * lengthM
      const fits = lengthM >= 0.018 && lengthM <= portLengthMaxMm / 1000 && outerM3 <= totalM3 * (1 + 1e-9)
      return fits ? { outerM3 } : undefined
    }
  }
}

function driverIn({ driver }: Problem) {
  const { vasL, sdCm2, leMh, xmaxMm, ...rest } = driver
  const si = { vasM3: vasL / 1000, sdM2: sdCm2 / 1e4, leH: leMh / 1000, xmaxM: xmaxMm / 1000 }
  return driverOf({ ...rest, ...si, vasAir: 'request' }, standardAir)
}

function tablesOf(problem: Problem, frequenciesHz: Float64Array) {
  const wiring = { count: problem.count, inSeries: 1, seriesOhm: 0, air: standardAir }
  return driverTables({ ...wiring, driver: driverIn(problem) }, frequenciesHz)
}

function limitsOf({ driver, count, amplifier, ratedOhm }: Problem) {
  const heatW = driver.powerW * count
  const duty = 0.25
  const amplifierV = Math.sqrt(amplifier.powerW * amplifier.loadOhm)
  return {
    coneM: driver.xmaxMm / 1000,
    heatW,
    ratedV: Math.sqrt((heatW * ratedOhm) / duty),
    duty,
    amplifierV,
    springShare: 0.08,
    ...('currentRmsA' in amplifier ? { amplifierA: amplifier.currentRmsA } : {})
  }
}

function gainOf({ cabin }: Problem, frequenciesHz: Float64Array) {
  const { lengthM, volumeL, volumeM3 } = { lengthM: undefined, volumeL: undefined, volumeM3: undefined, ...cabin }
  const size = lengthM === undefined ? { volumeM3: volumeM3 ?? (volumeL ?? 0) / 1000 } : { lengthM }
  return cabinGain(size, standardAir.soundSpeedMPerS, frequenciesHz, assumptions()).gainDb
}

function designProblem(problem: Problem): DesignProblem<Place> {
  const goal = goals[problem.goal].value
  const frequenciesHz = designGridHz
  return {
    tables: tablesOf(problem, frequenciesHz),
    limits: limitsOf(problem),
    airSpeedMPerS: problem.airSpeedMPerS,
    leakQ: 7,
    programme: programme(frequenciesHz, { cornerHz: 80, order: 4 }, { fromHz: 20, slopeOrder: 2 }),
    gainStepDb: 0.1,
    seatGainDb: gainOf(problem, frequenciesHz),
    room: simpleRoom(problem),
    ...('referenceLevelDb' in problem ? { referenceDb: problem.referenceLevelDb } : {}),
    goal: {
      ...goal,
      doublingDb: problem.goal === 'everyday' ? goal.doublingDb : 0,
      delayDbPerS: 0,
      unevennessWeight: 0,
      highestQtc: problem.qtcMax
    }
  }
}

describe('the search of the designer', () => {
  for (const problem of bruteForceBest) {
    const { id, best } = problem
    it(`comes as near as it says to the best of all: ${id}`, () => {
      const designs = searchBoxes(designProblem(problem))
      const [first] = designs
      const short = best.score - (first?.score ?? Number.NEGATIVE_INFINITY)
      const isSize = problem.goal === 'small'
      expect(short).toBeLessThan(isSize ? 0.03 * Math.abs(best.score) : 0.3)
      // the prototype tried six areas of port a box, the search ten: one problem is beaten by 0.10 dB
      expect(short).toBeGreaterThan(isSize ? -0.01 * Math.abs(best.score) : -0.12)
      expect(designs.length).toBeLessThan(900)
    })

    it(`hears the best as the prototype does: ${id}`, () => {
      const frequenciesHz = Float64Array.of(20, 25, 31.5, 40, 50, 63)
      const tables = tablesOf(problem, frequenciesHz)
      const curves = boxCurves(frequenciesHz.length)
      const tuned = 'tuningHz' in best ? { tuningHz: best.tuningHz, leakQ: 7 } : {}
      solveBox(tables, { netVolumeM3: best.netL / 1000, ...tuned }, limitsOf(problem), curves)
      const areaM2 = 'areaCm2' in best ? best.areaCm2 / 1e4 : Infinity
      const gainDb = gainOf(problem, frequenciesHz)
      for (const [k, expected] of best.maximumSeatLevelDb.entries()) {
        const air2 = (areaM2 * problem.airSpeedMPerS) ** 2 * portLimit2(curves.port2[k] as number)
        const level = 10 * Math.log10((curves.level2[k] as number) * Math.min(curves.other2[k] as number, air2))
        // volume, tuning and area are printed with four digits
        expect(Math.abs(level + (gainDb[k] as number) - expected), `${frequenciesHz[k]} Hz`).toBeLessThan(0.05)
      }
    })
  }
})
