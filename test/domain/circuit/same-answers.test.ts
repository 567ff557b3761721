/** What a small calculator and the whole circuit both answer is the same text, digit for digit, over random requests. */
import { describe, expect, it } from 'vitest'
import { supplyCables } from '../../../src/http/operations/supply/supply-cables.ts'
import { supplyCircuit } from '../../../src/http/operations/supply/supply-circuit.ts'
import { supplyFeeder } from '../../../src/http/operations/supply/supply-feeder.ts'
import { supplyFuses } from '../../../src/http/operations/supply/supply-fuses.ts'
import { postTo } from '../../support/post-to.ts'
import { seeded } from '../../support/random-requests.ts'

const post = postTo(supplyCables, supplyCircuit, supplyFeeder, supplyFuses)
const CASES = 150
const sizes = ['8 AWG', '4 AWG', '2 AWG', '1/0 AWG', '4/0 AWG'] as const

/** As a caller writes it: no more digits than a sheet has. */
const between = (random: () => number, low: number, high: number) => +(low + (high - low) * random()).toPrecision(3)

function amplifierOf(random: () => number) {
  const regulation = random() < 0.7 ? 'regulated' : 'unregulated'
  return {
    ...{ powerW: between(random, 80, 900), class: random() < 0.6 ? 'D' : 'AB', regulation, ratedVoltageV: 14.4 },
    ...{ efficiency: between(random, 0.5, 0.9), quiescentW: between(random, 2, 12) }
  }
}

describe('the feeder and the circuit of the same source, cables and amplifiers', () => {
  const random = seeded(21)
  const cases = Array.from({ length: CASES }, () => {
    const [voltageV, resistanceOhm] = [between(random, 12, 14.4), between(random, 0.001, 0.008)]
    const stage = (longest: number) => ({
      ...{ designation: sizes[Math.floor(sizes.length * random())], positiveLengthM: between(random, 0.5, longest) },
      ratingA: between(random, 60, 300)
    })
    const branches = Array.from({ length: 1 + Math.floor(3 * random()) }, () => ({
      ...{ asked: amplifierOf(random), cable: stage(2) }
    }))
    return { voltageV, resistanceOhm, temperatureC: between(random, 20, 90), trunk: stage(6), branches }
  })
  type Case = (typeof cases)[number]
  type Stage = Case['trunk']

  const feederStage = ({ designation, positiveLengthM, ratingA }: Stage) => ({
    cable: { designation, positiveLengthM, insulationC: 105, ambientC: 50, conductor: 'copper' },
    ...{ fuse: { ratingA }, joints: 4 }
  })
  const feederOf = ({ voltageV, resistanceOhm, temperatureC, trunk, branches }: Case, level: string) => ({
    ...{ systemVoltageV: 12, level, source: { voltageV, resistanceOhm }, conductorTemperatureC: temperatureC },
    trunk: feederStage(trunk),
    amplifiers: branches.map(({ asked, cable }) => ({ ...asked, branch: feederStage(cable) }))
  })
  const circuitOf = ({ voltageV, resistanceOhm, temperatureC, trunk, branches }: Case) => {
    const way = (id: string, from: string, to: string, { designation, positiveLengthM }: Stage) => ({
      ...{ id, from, to, designation, lengthM: positiveLengthM, joints: 4 },
      ...{ insulationC: 105, ambientC: 50, conductor: 'copper' }
    })
    return {
      systemVoltageV: 12,
      batteries: [{ id: 'source', plus: 'p', minus: 'm', openCircuitV: voltageV, resistanceOhm }],
      conductorTemperatureC: temperatureC,
      fuses: [
        { id: 'main', from: 'p', to: 'f', ratingA: trunk.ratingA },
        ...branches.map(({ cable }, index) => ({
          ...{ id: `fuse ${index}`, from: 'block', to: `b${index}`, ratingA: cable.ratingA }
        }))
      ],
      cables: [
        way('trunk', 'f', 'block', trunk),
        ...branches.map(({ cable }, index) => way(`branch ${index}`, `b${index}`, `a${index}`, cable))
      ],
      amplifiers: branches.map(({ asked }, index) => ({ ...asked, id: `amp ${index}`, plus: `a${index}`, minus: 'm' }))
    }
  }

  it('gives every amplifier the same voltage and current at every level, and collapses with it', async () => {
    let compared = 0
    for (const each of cases) {
      const { body: circuit } = await post('/v1/supply/circuit', circuitOf(each))
      for (const level of ['full-sine', 'heavy', 'average']) {
        const { body: feeder } = await post('/v1/supply/feeder', feederOf(each, level))
        // no alternator: at dense bass and on average the engine may stand, at full sine it idles
        const state = circuit.result.states.find(
          (one: { level: string; engine: string }) => one.level === level && one.engine === 'idling'
        )
        expect(state.stands).toBe(feeder.result.feasible)
        if (!state.stands) continue
        feeder.result.amplifiers.forEach(({ voltageV, currentA }: Record<string, number>, index: number) => {
          const part = state.parts.find(({ id }: { id: string }) => id === `amp ${index}`)
          expect(JSON.stringify([part.voltageV, part.currentA]), `${level}`).toBe(JSON.stringify([voltageV, currentA]))
          compared++
        })
      }
    }
    expect(compared).toBeGreaterThan(CASES)
  })
})

describe('a fuse alone and in a circuit', () => {
  it('has to break the same current: right behind a battery that is described', async () => {
    const random = seeded(22)
    for (let turn = 0; turn < CASES; turn++) {
      const source = { coldCrankingA: between(random, 300, 950), chemistry: 'agm' }
      const { body } = await post('/v1/supply/fuses', {
        ...{ currentA: between(random, 10, 120), systemVoltageV: 12, source },
        cable: { designation: '4/0 AWG', insulationC: 105, ambientC: 40, conductor: 'copper' }
      })
      const { ratingA, type } = body.result.fuse
      const { body: circuit } = await post('/v1/supply/circuit', {
        systemVoltageV: 12,
        batteries: [{ id: 'battery', plus: 'p', minus: 'm', ...source }],
        fuses: [{ id: 'main', from: 'p', to: 'a', ratingA, type }],
        amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', powerW: 100, class: 'D' }]
      })
      const [guard] = circuit.result.fuses
      expect(JSON.stringify(guard.prospectiveA)).toBe(JSON.stringify(body.result.prospectiveA))
    }
  })
})

describe('a cable that is chosen and in a circuit', () => {
  it('carries the same for good, in the same surroundings', async () => {
    const random = seeded(23)
    for (let turn = 0; turn < CASES; turn++) {
      const classC = [80, 90, 105, 125][Math.floor(4 * random())]
      const around = { insulationC: classC, ambientC: between(random, 20, 60), conductor: 'copper' }
      const { body } = await post('/v1/supply/cables', {
        ...{ currentA: between(random, 20, 90), systemVoltageV: 12, positiveLengthM: between(random, 2, 6) },
        ...around,
        return: { kind: 'chassis', leadLengthM: 0.5, resistanceOhm: 0.001 }
      })
      const { cable, fuse } = body.result
      if (cable === undefined) continue
      const { body: circuit } = await post('/v1/supply/circuit', {
        systemVoltageV: 12,
        batteries: [{ id: 'battery', plus: 'p', minus: 'm', resistanceOhm: 0.005 }],
        fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: fuse.ratingA, type: fuse.type }],
        cables: [{ ...around, id: 'run', designation: cable.designation, from: 'f', to: 'a', lengthM: 4 }],
        amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', powerW: 100, class: 'D' }]
      })
      const [guard] = circuit.result.cables
      expect(JSON.stringify(guard.ampacityA)).toBe(JSON.stringify(cable.ampacityA))
      expect(guard.guarded).toBe(true)
    }
  })
})
