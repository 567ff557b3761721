/**
 * Judgements of a search, written down a second time: nothing outside of this house can say that one is wrong, so that a slip of the
 * finger in one would pass for a judgement. Who changes a value changes it here as well, and tells it in the changelog. What each
 * rests on stands in its record; common practice, no source, unless it says otherwise.
 */
import { describe, expect, it } from 'vitest'
import { rankDefaults } from '../../../src/plan/designer/defaults.ts'
import { listeningDefaults } from '../../../src/plan/designer/evaluate/defaults.ts'
import { regionDefaults } from '../../../src/plan/designer/region/defaults.ts'
import { roomDefaults } from '../../../src/plan/designer/room/defaults.ts'
import { systemDefaults } from '../../../src/plan/designer/systems/defaults.ts'
import { variationDefaults } from '../../../src/plan/designer/variations/defaults.ts'

type Table = Readonly<Record<string, object>>

const register: readonly (readonly [Table, Readonly<Record<string, unknown>>])[] = [
  [
    rankDefaults,
    {
      driverCounts: [1, 2],
      rankBy: 'balance',
      weight: 1,
      zeroF3Hz: 30,
      zeroOuterVolumeM3: 0.1,
      zeroPrice: 1000,
      zeroFullSineA: 50,
      leastPrice: 1,
      leastCurrentA: 0.001,
      levelHz: 40,
      show: 10,
      excursionOfXmax: 1,
      dbShare: 10 ** (1 / 20) - 1,
      mostFaults: 20
    }
  ],
  [listeningDefaults, { delayFromHz: 20, delayToHz: 80, evenFromHz: 31, evenToHz: 66 }],
  [
    regionDefaults,
    {
      middle: { nominalM: 0.25, fsHz: 31, vasM3: 0.026 },
      fsPower: -0.72,
      vasPower: 4,
      fsShares: [0.75, 0.85, 0.95, 1.05, 1.2, 1.35, 1.5],
      qtsNodes: [0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7],
      vasShares: [0.4, 0.6, 0.9, 1.35, 2, 3],
      ratedOhm: 4,
      tolerancesDb: [2, 3, 4],
      mostAttempts: 6,
      mostTurns: 12,
      areaStep: 1.03,
      cableM: 5
    }
  ],
  [
    roomDefaults,
    {
      tubeWallM: 0.003,
      mostRows: 4,
      sameArea: 0.985,
      mostTubes: 2,
      spareM: 0.005,
      mouthSides: 4,
      acrossStepM: 0.02,
      leastAirShare: 0.35,
      volumes: 24,
      volumeStep: 1.2,
      tuningHz: 34,
      portAreaPerM3: 0.125,
      longestPortM: 1.05,
      cutOutM: 0.2,
      lastLegHeights: 1.5
    }
  ],
  [
    systemDefaults,
    {
      slack: 1.05,
      neighbourhood: 1.5,
      mostDesigns: 6,
      mostPorts: 4,
      foreseenSlack: 0.05,
      areaStep: 1.1,
      voltageStepDb: 1,
      sameRank: 1e-9,
      mostRelaxed: 6,
      spareBuilds: 20,
      levelStepDb: 1,
      reachStepOctaves: 1 / 6,
      roomStepOctaves: 0.25,
      currentStepOctaves: 0.25
    }
  ],
  [variationDefaults, { allPower: 0.999, factors: [0.9, 1.1], mostVoltage: 2 }]
]

const valuesOf = (table: Table) =>
  Object.fromEntries(
    Object.entries(table).flatMap(([name, record]) => ('value' in record ? [[name, record.value]] : []))
  )

describe('the judgement values of a search', () => {
  it('are those that were decided, and all of them are here', () => {
    for (const [table, values] of register) expect(valuesOf(table)).toEqual(values)
  })
})
