/**
 * Vehicles of everyday work, as a master installer would wire them: sizes and fuses by common practice (no source), every
 * source fused, every cable guarded from both ends, every picture whole. Where the plan differs, the row says why.
 */
import { describe, expect, it } from 'vitest'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { alder, alderPlan as car, doors } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'

const byCable = { return: { kind: 'cable', lengthM: 5.4 } }
const agm = {
  battery: { capacityAh: 92, chemistry: 'agm' },
  secondBattery: { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm', coldCrankingA: 860 }
}

interface Vehicle {
  readonly plan: object
  readonly trunk: string
  readonly fuseA: number
  readonly runs?: number
}

const vehicles: Readonly<Record<string, Vehicle>> = {
  // the trade table: 8 AWG, 30 to 40 A; strips that break 3 kA begin at 35 A
  'hatchback, 300 W': { plan: car(300, { positiveLengthM: 4.6 }), trunk: '8 AWG', fuseA: 35 },
  // the trade table: 4 AWG, 50 A; a cable that prints 105 °C carries it one size thinner within 3 % of drop
  'hatchback, 500 W': { plan: car(500, { positiveLengthM: 5 }), trunk: '6 AWG', fuseA: 50 },
  // the trade table: 1/0 AWG, 150 A
  'estate, 1500 W on copper': { plan: car(1500), trunk: '1/0 AWG', fuseA: 150 },
  // clad aluminium: a third less conductance, so one or two sizes up
  'estate, 1500 W on clad aluminium': {
    plan: car(1500, { conductor: 'copper-clad-10' }),
    trunk: '2/0 AWG',
    fuseA: 150
  },
  'off-road, 3000 W on two amplifiers, battery beside them': {
    plan: car(2200, { otherAmplifiers: [doors], branchLengthM: 1.2, ...agm }),
    trunk: '4/0 AWG',
    fuseA: 300
  },
  // 650 W/0.85/12 V = 64 A: 70 A of output, 45 A from 24 V; practice lays the same 50 A out and 70 A behind
  'lorry of 24 V, 650 W behind a converter': {
    plan: car(650, {
      systemVoltageV: 24,
      source: { chemistry: 'agm', capacityAh: 170 },
      converter: {},
      ...{ positiveLengthM: 3.4, branchLengthM: 2.4 },
      return: { kind: 'cable', lengthM: 3.4 }
    }),
    trunk: '8 AWG',
    fuseA: 50
  },
  // practice refuses 8 Ω on it; four coils in series are allowed and give half: cable and fuse are those of its 600 W
  'amplifier for 4 Ω alone, two drivers of two 2 Ω coils': {
    plan: car(
      600,
      { positiveLengthM: 4.8 },
      {
        driver: { ...estatePlan.driver, coils: { count: 2, ratedOhm: 2 } },
        amplifier: alder(600, { ratings: [{ loadOhm: 4, powerW: 600 }], minimumOhm: 4 })
      }
    ),
    trunk: '4 AWG',
    fuseA: 60
  },
  // practice lays 2 AWG; the drop of 3 % over out and back asks for the next size. The return ends before the sensor
  'start-stop, 950 W, back by cable': {
    plan: car(950, { ...byCable, batterySensor: true, charging: { kind: 'alternator', ratedA: 180 } }),
    trunk: '1/0 AWG',
    fuseA: 100
  },
  'electric, 1000 W, lithium, converter': {
    plan: car(
      1000,
      {
        ...byCable,
        source: { chemistry: 'lithium', capacityAh: 60 },
        battery: { capacityAh: 60, chemistry: 'lithium' },
        charging: { kind: 'converter', ratedA: 150, baseLoadA: 30 }
      },
      { car: { ...estatePlan.car, drive: 'electric' } }
    ),
    trunk: '1/0 AWG',
    fuseA: 100
  },
  // 420 W/0.85/12 V = 41 A: the next rating
  'factory radio, loudspeaker level': { plan: hatchbackPlan, trunk: '6 AWG', fuseA: 50 },
  // 520 W/0.6/12 V = 72 A
  'bridged four-channel, class AB, 520 W': {
    plan: car(520, {}, { amplifier: alder(520, { class: 'AB' }) }),
    trunk: '4 AWG',
    fuseA: 80
  },
  // the trunk feeds a charger alone
  'van, 1100 W on a lithium second battery': {
    plan: car(1100, {
      battery: { capacityAh: 95, chemistry: 'agm' },
      secondBattery: { arrangement: 'isolated', capacityAh: 100, chemistry: 'lithium' }
    }),
    trunk: '6 AWG',
    fuseA: 50
  }
}

describe.each(Object.entries(vehicles))('%s', (_, { plan, trunk, fuseA, runs = 1 }) => {
  const half = electricalHalf(plan)
  const part = half.parts.circuit
  if (!part.done) throw new Error('no circuit')
  const { request, outcome } = part

  it('has the cable and the fuse of the trade', () => {
    const laid = half.circuit.trunk
    expect([laid?.designation, laid?.fuse?.ratingA, laid?.runs]).toEqual([trunk, fuseA, runs])
  })

  it('has a fuse at every source, a guard from both ends of every cable, and a short that opens one', () => {
    const { bareSources, cables, farFaults } = outcome.result
    expect(bareSources).toEqual([])
    for (const { id, guarded } of cables) expect(guarded, id).toBe(true)
    // three times the rating, ECSS-Q-ST-30-11C 6.17.3 (second-hand)
    for (const { amplifier: name, multiple, limitedBy } of farFaults) {
      // what a converter gives at most every cable behind it carries
      if (limitedBy === undefined) expect(multiple, name).toBeGreaterThanOrEqual(3)
    }
  })

  it('has fuses that break what its batteries may drive', () => {
    for (const { id, prospectiveA, breakingA = 0 } of outcome.result.fuses)
      expect(prospectiveA, id).toBeLessThanOrEqual(breakingA)
  })

  it('plays dense bass above the drop-out, engine idling and driving', () => {
    for (const { level, engine, parts } of outcome.result.states) {
      if (level !== 'heavy') continue
      for (const { id } of request.amplifiers)
        expect(parts.find(each => each.id === id)?.voltageV ?? 0, `${id} ${engine}`).toBeGreaterThan(10.5)
    }
  })

  it('keeps the currents in balance at every point of every state', () => {
    const ends = [
      ...(request.converters ?? []).flatMap(({ id, inPlus, inMinus, outPlus, outMinus }) => [
        { id, from: outMinus, to: outPlus },
        { id: `${id} input`, from: inPlus, to: inMinus }
      ]),
      ...[...request.batteries, ...(request.alternators ?? [])].map(({ id, plus, minus }) => ({
        id,
        from: minus,
        to: plus
      })),
      ...[
        ...request.amplifiers,
        ...(request.accessories ?? []),
        ...(request.starter === undefined ? [] : [{ id: 'starter', ...request.starter }])
      ].map(({ id, plus, minus }) => ({
        id,
        from: plus,
        to: minus
      })),
      ...[...(request.cables ?? []), ...(request.fuses ?? []), ...(request.links ?? [])]
    ]
    for (const { stands, parts, points } of outcome.result.states) {
      if (!stands) continue
      for (const { point } of points) {
        const sum = parts.reduce((total, { id, currentA }) => {
          const end = ends.find(each => each.id === id)
          return total + (end?.from === point ? currentA : 0) - (end?.to === point ? currentA : 0)
        }, 0)
        expect(Math.abs(sum), point).toBeLessThan(1e-5)
      }
    }
  })

  it('draws, buys and reads every fuse, and cuts no lettering off', () => {
    const count = request.fuses?.length ?? 0
    expect(half.picture.match(/paper-shape fuse/g)).toHaveLength(count)
    const bought = half.bill.filter(({ item }) => /^fuse \d/.test(item)).reduce((sum, { need }) => sum + need, 0)
    expect(bought).toBe(count)
    expect(half.picture).not.toContain('…')
    expect(half.readings.length).toBeGreaterThan(8)
  })
})
