/**
 * Judgements of a plan, written down a second time: nothing outside of this house can say that one is wrong, so that a slip of the
 * finger in one would pass for a judgement. Who changes a value changes it here as well, and tells it in the changelog. What each
 * rests on stands in its record; common practice, no source, unless it says otherwise.
 */
import { describe, expect, it } from 'vitest'
import { answerDefaults } from '../../src/plan/answer/defaults.ts'
import { billDefaults } from '../../src/plan/bill/defaults.ts'
import { wiringDefaults } from '../../src/plan/electric/defaults.ts'
import { graphDefaults } from '../../src/plan/electric/graph/defaults.ts'
import { gainDefaults } from '../../src/plan/load/defaults.ts'
import { readingDefaults } from '../../src/plan/readings/defaults.ts'
import { remedyDefaults } from '../../src/plan/remedies/defaults.ts'
import { accuracyOf, planDefaults } from '../../src/plan/request/defaults.ts'
import { safetyDefaults } from '../../src/plan/safety/defaults.ts'
import { dayDefaults } from '../../src/plan/steps/defaults.ts'
import { wayOutDefaults } from '../../src/plan/ways-out/defaults.ts'
import { workDefaults } from '../../src/plan/work/defaults.ts'

type Table = Readonly<Record<string, object>>

const register: readonly (readonly [Table, Readonly<Record<string, unknown>>])[] = [
  [
    answerDefaults,
    {
      mostOnPageOne: 7,
      mostGrave: 4,
      fewestOfDesign: 2,
      bandDropDb: 6,
      sameVolumeShare: 0.01,
      sameTuningShare: 0.01,
      sameQtcShare: 0.02,
      leastMissPercent: 0.1
    }
  ],
  [
    billDefaults,
    {
      glueKgPerM2: 0.15,
      glueEdgePercent: 30,
      glueSparePercent: 20,
      glueStepKg: 0.05,
      glueKgPerL: 1.1,
      sealantLegM: 0.006,
      sealantCartridgeM3: 3.1e-4,
      sealantSparePercent: 15,
      gasketWidthM: 0.01,
      gasketThicknessM: 0.003,
      gasketOverlapM: 0.02,
      gasketSparePercent: 5,
      gasketStepM: 0.1,
      flangeOverCutOut: 1.08,
      machineScrewExtraM: 0.015,
      machineScrewLengthsMm: [16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120],
      machineScrewStepMm: 10,
      layerScrewLengthsMm: [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70],
      pointKeepsM: 0.004,
      carpetOverlapM: 0.06,
      carpetTurnInM: 0.04,
      carpetEndMarginM: 0.03,
      carpetRollWidthM: 1.37,
      carpetSparePercent: 10,
      carpetStepM: 0.1,
      adhesiveCanCoversM2: 3,
      adhesiveSparePercent: 10,
      liningMatM2: 0.5,
      liningSparePercent: 5,
      edgeSealerM3PerM2: 1e-4,
      edgeSealerStepL: 0.05,
      surfaceSparePercent: 10,
      abrasiveSheetCoversM2: 0.5,
      cableStepM: 0.5,
      cableSparePercent: 10,
      clipSpacingM: 0.3,
      sleeveM: 0.05,
      sleeveStepM: 0.1,
      fuseSparePercent: 100,
      spliceSparePercent: 25,
      boltsAnAmplifier: 4,
      boltsInsteadOfStraps: 4,
      screwsACup: 4,
      feetABox: 4,
      receptaclesADriver: 4,
      screwLengthsIn: [0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3],
      machineLengthsIn: [0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4],
      jointSpareM: 0.001,
      strapStepLbf: 50,
      liningStepYd2: 0.5,
      carpetStepYd: 0.25
    }
  ],
  [
    wiringDefaults,
    {
      wireInsideM: 0.6,
      turnOnSize: '0.75 mm²',
      relayWireM: 0.5,
      tapFuseA: 1,
      feedSizes: ['0.75 mm²', '1.5 mm²', '2.5 mm²', '4 mm²', '6 mm²', '10 mm²'],
      linkFuseA: 3,
      runsFusedAtEnd: 3,
      leadMm2: 0.75,
      channels: 2,
      converterTailM: 0.5,
      relayPieceM: 0.2,
      chargersA: [20, 30, 40, 50, 60],
      relaysA: [100, 200, 300, 500],
      relayStepA: 100,
      chargerOverNominal: 1.2,
      coldC: 20
    }
  ],
  [
    graphDefaults,
    {
      shortestM: 0.01,
      sensorOhm: 1e-4,
      relayOhm: 4e-4,
      outputOhm: 5,
      contactOhm: 0.05,
      linkA: { relay: 1, charger: 0.02, joined: 0 }
    }
  ],
  [gainDefaults, { dialDigits: 3, sameGain: 0.99 }],
  [
    readingDefaults,
    {
      poorJointOhm: 5e-4,
      idleTimes: 3,
      idleSpareA: 1,
      leastLossMv: 20,
      continuityOhm: 0.3,
      chargerTimes: 1.05
    }
  ],
  [
    remedyDefaults,
    {
      goodBodyOhm: 6e-4,
      usualClassC: 105,
      hotClassC: 125,
      mostRuns: 4,
      stiffM2: 5e-5,
      overLimit: 1.0005,
      underLoss: 0.99,
      leastLossPercent: 0.2,
      secondAh: 70,
      nextAlternator: 1.4,
      alternatorStepA: 10,
      mostAlternatorA: 1000,
      turnDownDb: 2,
      coilsOhm: [1, 2, 4],
      worthV: 0.05,
      samePowerShare: 0.01,
      lessPower: 0.99,
      thinner: 0.99,
      stronger: 1.1
    }
  ],
  [
    accuracyOf,
    {
      'saw-and-router': { cutM: 5e-4, holeM: 5e-4 },
      'cutting-service': { cutM: 0.001, holeM: 0.0015, kerfM: 0.0045 },
      'jigsaw-and-drill': { cutM: 0.0015, holeM: 0.0015, kerfM: 0.004 }
    }
  ],
  [
    planDefaults,
    {
      speakerCableM: 2,
      mainsLowHz: 80,
      highestHandOverHz: 120,
      lowestHandOverHz: 50,
      crossoverOrder: 4,
      branchM: 1,
      groundLeadM: 0.5,
      secondLeadM: 0.5,
      converterLeadM: 0.5,
      capacitorLeadM: 0.3,
      goal: 'everyday',
      workWay: 'saw-and-router',
      travelShare: 0.02,
      portTravelShare: 0.05,
      ratingWPerM2: 5000,
      coilTimeS: 5e-4,
      airSpeedMPerS: 25,
      stiffA: 1000,
      stiffOhm: 1e-4,
      runningOverNominal: 13.8 / 12,
      starterA: 250,
      starterOfCranking: 0.5,
      starterVPer12V: 9.6,
      governedLowestV: 12.2,
      governedHighestV: 15,
      lowestCornerHz: 10,
      lined: true,
      liningM: 0.025,
      liningKgPerM3: 20,
      liningFibre: 'polyester',
      covered: true,
      coveringM: 0.004,
      wedgeFromDeg: 10,
      faceOfStaves: 'top',
      sheetFt: [8, 4],
      sawStepM: 0.001,
      sawStepIn: 0.0625,
      boardStepIn: 0.03125,
      sameBoardM: 5e-5,
      labelLetters: 40
    }
  ],
  [safetyDefaults, { strongMagnetKg: 4 }],
  [dayDefaults, { dayMinutes: 480 }],
  [
    wayOutDefaults,
    {
      roomStepM: 0.005,
      mostRoomSteps: 60,
      furtherSteps: [0, 4],
      mostAttempts: 12,
      usualDrivers: [
        { nominalM: 0.38, flangeDiameterM: 0.388, cutOutDiameterM: 0.352, mountingDepthM: 0.185 },
        { nominalM: 0.3, flangeDiameterM: 0.312, cutOutDiameterM: 0.282, mountingDepthM: 0.158 },
        { nominalM: 0.25, flangeDiameterM: 0.262, cutOutDiameterM: 0.232, mountingDepthM: 0.142 },
        { nominalM: 0.2, flangeDiameterM: 0.212, cutOutDiameterM: 0.182, mountingDepthM: 0.118 },
        { nominalM: 0.165, flangeDiameterM: 0.18, cutOutDiameterM: 0.146, mountingDepthM: 0.085 }
      ]
    }
  ],
  [
    workDefaults,
    {
      practised: 0.45,
      armOpeningM: 0.12,
      armReachM: 0.45,
      twoHandsKg: 10,
      parkedA: 0.02,
      crashFactor: 20,
      crashGravityMPerS2: 9.8,
      drivingShares: [
        { vehicleUpToKg: 2000, forward: 0.9, rearward: 0.5, sideways: 0.7 },
        { vehicleUpToKg: 3500, forward: 0.8, rearward: 0.5, sideways: 0.6 }
      ],
      leastStraps: 2,
      strapCapacityN: 5000,
      eyeStrengthN: 3500,
      strapSlopeDeg: 45,
      strapSpreadDeg: 45
    }
  ]
]

const valuesOf = (table: Table) =>
  Object.fromEntries(
    Object.entries(table).flatMap(([name, record]) => ('value' in record ? [[name, record.value]] : []))
  )

describe('the judgement values of a plan', () => {
  it('are those that were decided, and all of them are here', () => {
    for (const [table, values] of register) expect(valuesOf(table)).toEqual(values)
  })
})
