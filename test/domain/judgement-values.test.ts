/**
 * Judgements of the trade and of our own, written down a second time beside each other. Nothing outside of this house can say that
 * one is wrong, so that a slip of the finger in one would pass for a judgement: who changes a value changes it here as well, and
 * tells it in the changelog. What each rests on stands in its record; common practice, no source, unless it says otherwise.
 */
import { describe, expect, it } from 'vitest'
import { airDefaults } from '../../src/domain/air/defaults.ts'
import { amplifierDefaults } from '../../src/domain/amplifier/defaults.ts'
import { boxDefaults } from '../../src/domain/box/request/defaults.ts'
import { bracingDefaults } from '../../src/domain/box/stiffness/defaults.ts'
import { cabinDefaults } from '../../src/domain/cabin/defaults.ts'
import { cableDefaults } from '../../src/domain/circuit/cable/defaults.ts'
import { fuseDefaults } from '../../src/domain/circuit/fuse/defaults.ts'
import { feederDefaults } from '../../src/domain/circuit/graph/defaults.ts'
import { converterDefaults, loadDefaults } from '../../src/domain/circuit/load/defaults.ts'
import { circuitDefaults } from '../../src/domain/circuit/points/defaults.ts'
import { readingDefaults } from '../../src/domain/circuit/readings/defaults.ts'
import { supplyDefaults } from '../../src/domain/circuit/source/defaults.ts'
import { coilDefaults } from '../../src/domain/coils/defaults.ts'
import { driverDefaults } from '../../src/domain/driver/sheet/defaults.ts'
import { comparisonDefaults } from '../../src/domain/enclosure/comparison/defaults.ts'
import { limitDefaults } from '../../src/domain/enclosure/limits/defaults.ts'
import { enclosureDefaults } from '../../src/domain/enclosure/model/defaults.ts'
import { responseDefaults } from '../../src/domain/enclosure/response/defaults.ts'
import { sizingDefaults } from '../../src/domain/enclosure/sizing/defaults.ts'
import { spreadDefaults, toleranceDefaults } from '../../src/domain/enclosure/tolerance/defaults.ts'
import { filterDefaults } from '../../src/domain/filter/defaults.ts'
import { portDefaults } from '../../src/domain/port/defaults.ts'
import { portSizingDefaults } from '../../src/domain/port/sizing/defaults.ts'
import { sheetDefaults } from '../../src/domain/sheet/defaults.ts'
import { signalDefaults } from '../../src/domain/signal/defaults.ts'

type Values = Readonly<Record<string, number | readonly number[]>>
type Table = Readonly<Record<string, object>>

const held = (record: object | undefined): unknown => (record as { readonly value?: unknown } | undefined)?.value

const register: readonly (readonly [Table, Values])[] = [
  [
    airDefaults,
    {
      temperatureC: 20,
      pressurePa: 101_325
    }
  ],
  [
    amplifierDefaults,
    {
      channels: 1,
      channelsOfBridge: 2,
      amplifierCount: 1,
      ratedVoltageV: 14.4,
      toneLevelDb: 0,
      quietRecordingDb: 0
    }
  ],
  [
    boxDefaults,
    {
      frontLayers: 1,
      cutOutDiameterM: 0.076
    }
  ],
  [
    bracingDefaults,
    {
      upperHz: 120,
      frequencyRatio: 1.5,
      volumeShare: 0.02,
      deflectionM: 0.00015
    }
  ],
  [
    cabinDefaults,
    {
      cornerQ: 0.7,
      leakQ: 0.7,
      leakCornerHz: 15,
      maximumGainDb: 20,
      uncertaintyDb: 6
    }
  ],
  [
    cableDefaults,
    {
      strandingFactor: 1.02,
      insulationC: 80,
      ambientEngineBayC: 70,
      ambientCabinC: 50,
      bundledConductors: 1,
      dropTemperatureC: 20,
      fillFactor: 0.75,
      emissivity: 0.9
    }
  ],
  [
    fuseDefaults,
    {
      loadRatio: 0.75,
      heavyShare: Math.sqrt(1 / 3),
      hottestFuseC: 125,
      cfrPolicyFactor: 1.5,
      cfrPolicyBelowV: 50,
      selectivityRatio: 1.6,
      clearingMultiple: 3,
      idealM: 0.175,
      usualM: 0.45,
      sheathedM: 40 * 0.0254,
      batteryOhmPer12V: 0.01,
      batteryLowestOhmPer12V: 0.003,
      crankingLowestV: 2,
      crankingEndV: 7.2,
      batteryRestVPer12V: 12.6,
      lithiumRestVPer12V: 13.2,
      batteryAboveRestV: 0.2,
      lithiumAboveRestV: 0.8,
      fuseDropV: 0.09,
      coldFuseV: 0.057
    }
  ],
  [
    feederDefaults,
    {
      sourceOhm: 0,
      joints: 4
    }
  ],
  [
    converterDefaults,
    {
      outputV: 13.6,
      efficiency: 0.88,
      idleW: 4,
      ratingsA: [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100]
    }
  ],
  [
    loadDefaults,
    {
      switchingFrom: 0.72,
      quiescentShare: 0.2,
      averageDuty: 1 / 8,
      heavyDuty: 1 / 3,
      standbyLimitA: 0.001,
      ratedVoltageVPer12V: 14.4,
      chargingVPer12V: 14.4,
      parkedLoadA: 3,
      dropOutV: 10.5
    }
  ],
  [
    circuitDefaults,
    {
      chargingOhmPer12V: 0.2,
      slopeOhm: 0.002,
      joints: 2,
      jointOhm: 0.0002,
      converterOhm: 0.002,
      converterLowestShare: 0.75,
      converterOverload: 1.5,
      conductorTemperatureC: 20,
      warmC: 60,
      fuseOverload: 1.1,
      weakBelowRestV: 0.4
    }
  ],
  [
    readingDefaults,
    {
      restBandV: 0.15,
      statedBand: 0.1,
      setBandV: 0.3,
      limitBand: 0.15,
      cableBand: 0.12,
      fuseBand: 0.25,
      linkBand: 0.1,
      guessBand: 0.5,
      musicBand: 0.3,
      loadBand: 0.05,
      smallBand: 0.5,
      vehicleBandA: 10
    }
  ],
  [
    supplyDefaults,
    {
      idleFraction: 0.5,
      hotFactor: 0.85,
      baseLoadA: 35,
      ratedHours: 20,
      usableFraction: 0.5,
      usableLithium: 0.8,
      capacitorFromVPer12V: 14.4,
      capacitorToVPer12V: 12,
      jointOhm: 0.0002,
      chassisOhm: 0.002,
      dropLimitPercent: 3,
      totalDropCarePercent: 5,
      totalDropStopPercent: 10,
      groundLeadM: 0.5,
      groundTolerance: 1.3,
      parallelRuns: 4,
      nearMissPercent: 10,
      collapseMargin: 2,
      groundNoiseDb: -60
    }
  ],
  [
    coilDefaults,
    {
      cableResistancePercent: 5,
      cableAmbientC: 30
    }
  ],
  [
    driverDefaults,
    {
      usualQms: 5,
      usualResistanceRatio: 0.85,
      resistanceRatioRange: [0.6, 1],
      pistonDiameterShare: 0.82,
      nominalAreaShare: [0.9, 1.1],
      xmaxDoubtfulM: 0.04,
      xmaxDoubtfulRadiusShare: 0.25,
      xmaxTinyM: 0.001,
      inductanceRangeH: [0.00002, 0.03],
      ebpLimitsHz: [50, 100]
    }
  ],
  [
    comparisonDefaults,
    {
      fromHz: 20,
      toHz: 120,
      points: 63,
      levelDb: 0.1,
      share: 0.005
    }
  ],
  [
    limitDefaults,
    {
      airSpeedMPerS: 17,
      dutyFactor: 1,
      portLossFactor: 1.5,
      coilRiseK: 180,
      ambientC: 25,
      maximumCoilC: 200,
      programmeFromHz: 15,
      programmeToHz: 200
    }
  ],
  [
    enclosureDefaults,
    {
      ports: 1,
      radiators: 1,
      drivers: 1,
      isobaricDrivers: 2,
      inSeries: 1,
      seriesOhm: 0,
      openedLeakQ: 7
    }
  ],
  [
    responseDefaults,
    {
      fromHz: 10,
      toHz: 300,
      points: 200,
      durationS: 0.2,
      timePoints: 401
    }
  ],
  [
    sizingDefaults,
    {
      usualQtc: [577, 707, 900].map(each => each / 1000),
      rippleLimitDb: 1,
      chosenPeakDb: 0.5,
      highestF3Hz: 80,
      largestVolumes: 5,
      smallestDelta: 2,
      radiatorsPerFace: 2,
      usualBand: [1, 2.6],
      roughBoardM: 0.018,
      roughDisplacementShare: 0.08,
      tuningStepHz: 0.5,
      tuningSpanHz: [15, 100],
      comparedHz: [20, 25, 31.5, 40, 50, 63, 80]
    }
  ],
  [
    spreadDefaults,
    {
      rePercent: 2,
      blPercent: 3,
      mmsPercent: 2,
      cmsPercent: 8,
      rmsPercent: 10,
      sdPercent: 1,
      lePercent: 5,
      volumePercent: 1.5,
      portLengthPercent: 1,
      portAreaPercent: 1,
      radiatorMassPercent: 2,
      radiatorCompliancePercent: 8,
      lossPercent: 30,
      temperatureK: 10
    }
  ],
  [
    toleranceDefaults,
    {
      samples: 500,
      seed: 1,
      percentiles: [5, 50, 95]
    }
  ],
  [
    filterDefaults,
    {
      lowPassHz: 80,
      highPassOfTuning: 0.8
    }
  ],
  [
    portDefaults,
    {
      endFactor: 0.85 + 0.613
    }
  ],
  [
    portSizingDefaults,
    {
      flattestSlot: 10,
      lowestSlotM: 0.04,
      cheekedSlot: 6,
      smallerBoxShare: 0.75,
      resonanceClear: 4,
      resonanceClose: 2,
      straightShare: 1.25,
      largePortShare: 0.2,
      roundDiametersM: [
        0.04, 0.05, 0.06, 0.07, 0.075, 0.08, 0.09, 0.1, 0.11, 0.12, 0.125, 0.14, 0.15, 0.16, 0.18, 0.2, 0.25
      ],
      slotStepM: 0.005,
      mostPorts: 4,
      flareRadiusM: 0,
      bentShare: 2
    }
  ],
  [
    sheetDefaults,
    {
      kerfM: 0.0032,
      trimM: 0.01,
      keepOffcutM: 0.3
    }
  ],
  [
    signalDefaults,
    {
      boostDb: 0,
      toneHz: 50,
      outputOhm: 600,
      inputOhm: 10000,
      inputsInParallel: 1,
      converterLineV: 2,
      digitalLineV: 2,
      remoteLimitA: 0.15,
      remoteLoadA: 0.05,
      relayCoilOhm: 90,
      nominalVoltageV: 12,
      systemVoltageV: 14.4,
      order: 4,
      turnOnFusesA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
      turnOnFuseLoad: 0.75,
      toneRoom: Math.SQRT2,
      narrowestBand: 1.5
    }
  ]
]

describe('the judgement values', () => {
  it('are those that were decided', () => {
    for (const [table, values] of register)
      for (const [name, value] of Object.entries(values)) {
        const found = held(table[name])
        if (typeof value === 'number') expect(found, name).toBeCloseTo(value, 12)
        else expect(found, name).toEqual(value)
      }
  })

  it('that are numbers are all here', () => {
    const isNumber = (value: unknown) => typeof (Array.isArray(value) ? value[0] : value) === 'number'
    const missing = register.flatMap(([table, values]) =>
      Object.entries(table).flatMap(([name, record]) =>
        isNumber(held(record)) && values[name] === undefined ? [name] : []
      )
    )
    expect(missing).toEqual([])
  })
})
