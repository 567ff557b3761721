/** Pairs about power: loads, cables, fuses, gain. */
import { pick } from '../random-requests.ts'
import { type Answer, between, type Pair } from './pair.ts'

const conductors = ['copper', 'aluminium', 'copper-clad-15'] as const

const cableAndFeeder: Pair = {
  asked: ['chooseCable', 'computeFeeder'],
  question: random => ({
    currentA: between(random, 20, 150),
    systemVoltageV: 12,
    positiveLengthM: between(random, 1, 6),
    return: { kind: 'chassis', leadLengthM: between(random, 0.2, 0.8), resistanceOhm: 0.002 },
    conductor: pick(random, conductors),
    insulationC: pick(random, [90, 105]),
    ambientC: between(random, 20, 55),
    conductorTemperatureC: between(random, 20, 60)
  }),
  same: ({ systemVoltageV, currentA, conductorTemperatureC, ...question }, { cable, fuse }) =>
    cable && fuse && feederOf({ systemVoltageV, currentA, conductorTemperatureC, ...question }, cable, fuse)
}

function feederOf({ systemVoltageV, currentA, conductorTemperatureC, ...asked }: Answer, cable: Answer, fuse: Answer) {
  const { positiveLengthM, return: back, conductor, insulationC, ambientC } = asked
  const { designation, loopOhm, conductorC, ampacityA, dropV } = cable
  const laid = { designation, positiveLengthM, return: back, conductor, insulationC, ambientC }
  return {
    question: {
      systemVoltageV,
      source: { voltageV: systemVoltageV, resistanceOhm: 0 },
      trunk: { cable: laid, fuse: { ratingA: fuse.ratingA, type: fuse.type } },
      amplifiers: [{ currentA }],
      conductorTemperatureC
    },
    said: { loopOhm, conductorC, ampacityA, dropV },
    heard: ({ trunk: { parts, ...trunk } }: Answer) => ({
      loopOhm: parts.positive + parts.return,
      conductorC: trunk.conductorC,
      ampacityA: trunk.ampacityA,
      dropV: (parts.positive + parts.return) * trunk.currentA
    })
  }
}

const cableAndFuse: Pair = {
  asked: ['chooseCable', 'rateFuse'],
  question: random => ({
    currentA: between(random, 5, 180),
    systemVoltageV: pick(random, [12, 24]),
    positiveLengthM: between(random, 1, 6),
    return: { kind: 'cable', lengthM: between(random, 1, 6) },
    conductor: pick(random, conductors),
    insulationC: pick(random, [90, 105]),
    ambientC: between(random, 20, 55)
  }),
  same: ({ currentA, systemVoltageV, conductor, insulationC, ambientC }, { cable, fuse }) =>
    cable &&
    fuse && {
      question: {
        currentA,
        systemVoltageV,
        cable: { designation: cable.designation, conductor, insulationC, ambientC }
      },
      said: {
        ratingA: fuse.ratingA,
        type: fuse.type,
        breakingA: fuse.breakingA,
        idealMm: fuse.placement.idealMm,
        ampacityA: cable.ampacityA,
        highestFuseA: cable.highestFuseA
      },
      heard: ({ fuse: rated, cables: [own] }) => ({
        ratingA: rated.ratingA,
        type: rated.type,
        breakingA: rated.breakingA,
        idealMm: rated.placement.idealMm,
        ampacityA: own.ampacityA,
        highestFuseA: own.highestFuseA
      })
    }
}

const levels = { 'full-sine': 'fullSineA', heavy: 'heavyA', average: 'averageA' } as const

const currentAndFeeder: Pair = {
  asked: ['computeCurrent', 'computeFeeder'],
  question: random => ({
    amplifiers: Array.from({ length: pick(random, [1, 2]) }, () => ({
      powerW: between(random, 200, 1500),
      class: pick(random, ['D', 'AB', 'H'])
    })),
    systemVoltageV: 12
  }),
  same: ({ amplifiers, systemVoltageV }, { currents, amplifiers: drawn }, random) => {
    const level = pick(random, Object.keys(levels) as readonly (keyof typeof levels)[])
    const [first] = drawn
    return {
      question: { systemVoltageV, source: { voltageV: systemVoltageV, resistanceOhm: 0 }, amplifiers, level },
      said: { totalA: currents[levels[level]], firstA: first[levels[level]] },
      heard: ({ totalCurrentA, amplifiers: fed }) => ({ totalA: totalCurrentA, firstA: fed[0].currentA })
    }
  }
}

const coils = (question: Answer) => ({
  driverCount: question.driverCount,
  coilsPerDriver: question.driver.coils,
  coilOhm: question.driver.coilOhm
})

const matchingAndWiring: Pair = {
  asked: ['matchAmplifier', 'wireCoils'],
  question: random => ({
    amplifier: {
      ratings: [16, 8, 4, 2, 1, 0.5].map(loadOhm => ({ loadOhm, powerW: 900 / loadOhm ** 0.8 })),
      minimumOhm: 0.5,
      class: 'D'
    },
    driver: { powerW: between(random, 200, 900), coils: pick(random, [1, 2]), coilOhm: pick(random, [1, 2, 4]) },
    driverCount: pick(random, [1, 2, 4]),
    cable: { lengthM: between(random, 1, 6), conductor: pick(random, conductors) }
  }),
  same: (question, { best, cable }) =>
    best?.outputs === 1
      ? {
          question: {
            ...coils(question),
            totalPowerW: best.totalPowerW,
            targetOhm: best.loadOhm,
            cable: question.cable
          },
          said: {
            loadOhm: best.loadOhm,
            coilPowerW: best.coilPowerW,
            driverPowerW: best.driverPowerW,
            designation: cable?.designation,
            loopOhm: cable?.loopOhm,
            currentA: cable?.currentA,
            lossDb: cable?.lossDb
          },
          heard: ({ chosen, coilPowerW, driverPowerW, cable: laid }) => ({
            loadOhm: chosen.ohm,
            coilPowerW,
            driverPowerW,
            designation: laid?.designation,
            loopOhm: laid?.loopOhm,
            currentA: laid?.currentA,
            lossDb: laid?.lossDb
          })
        }
      : undefined
}

const matchingAndSignal: Pair = {
  asked: ['matchAmplifier', 'setUpSignal'],
  question: random => ({
    amplifier: { ratings: [{ loadOhm: 2, powerW: between(random, 200, 1500) }], minimumOhm: 1, class: 'D' },
    driver: { powerW: between(random, 200, 900), coils: 1, coilOhm: 4 },
    driverCount: 2,
    tone: { levelDb: pick(random, [0, -6, -12]), quietRecordingDb: pick(random, [0, 4]) }
  }),
  same: ({ driver, driverCount, tone }, { best, gain }) =>
    best && {
      question: {
        source: { kind: 'line-level', levelV: 4 },
        amplifier: { powerW: best.outputPowerW, loadOhm: best.loadOhm },
        driversPowerW: driver.powerW * driverCount,
        tone
      },
      said: gainOf(gain),
      heard: ({ gain: set }) => gainOf(set)
    }
}

const gainOf = ({ powerW, loadOhm, targetVoltageV, currentA, limitedBy, meterVoltageV }: Answer) => ({
  powerW,
  loadOhm,
  targetVoltageV,
  currentA,
  limitedBy,
  meterVoltageV
})

export const electricPairs = [cableAndFeeder, cableAndFuse, currentAndFeeder, matchingAndWiring, matchingAndSignal]
