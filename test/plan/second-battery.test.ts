/** A second battery, a capacitor and a turn-on relay as parts of a plan: circuit, bill and picture hold the same pieces. */
import { describe, expect, it } from 'vitest'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { chargerInputA } from '../../src/plan/electric/second-battery.ts'
import { doors, alderPlan as plan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { expectPrinted } from '../support/printed.ts'

const second = (chemistry: string, arrangement = 'isolated', more: object = {}) => ({
  secondBattery: { arrangement, capacityAh: 95, chemistry, ...more }
})
const agm = { battery: { capacityAh: 92, chemistry: 'agm' }, ...second('agm', 'isolated', { coldCrankingA: 860 }) }
const offRoad = electricalHalf(plan(2200, { otherAmplifiers: [doors], capacitor: { capacitanceF: 2 }, ...agm }))
const van = electricalHalf(plan(1100, second('lithium')))
const joined = electricalHalf(plan(1100, second('flooded', 'parallel', { coldCrankingA: 700 })))

type Half = typeof van
function circuitOf({ parts }: Half) {
  if (!parts.circuit.done) throw new Error('no circuit')
  return { request: parts.circuit.request, ...parts.circuit.outcome.result }
}
const currentOf = (half: Half, id: string, level: string, engine: string) =>
  circuitOf(half)
    .states.find(state => state.level === level && state.engine === engine)
    ?.parts.find(part => part.id === id)?.currentA ?? 0

describe('every source of a plan', () => {
  it.each([
    ['relay', offRoad],
    ['charger', van],
    ['no switch', joined]
  ])('has its fuse, and every cable its guard from both ends, with a %s between', (_, half) => {
    const { bareSources, cables, request } = circuitOf(half)
    expect(request.batteries.map(({ id }) => id)).toEqual(['battery', 'second battery'])
    expect(bareSources).toEqual([])
    for (const { guarded, id } of cables) expect(guarded, id).toBe(true)
  })

  it('gives the trunk the same fuse at the far end where the second battery feeds that too, not behind a charger', () => {
    const ends = (half: Half) => circuitOf(half).request.fuses?.filter(({ id }) => id.startsWith('main'))
    expect(ends(offRoad)?.map(({ id, ratingA }) => [id, ratingA])).toEqual([
      ['main fuse', 300],
      ['main end fuse', 300]
    ])
    expect(ends(van)).toHaveLength(1)
    expect(circuitOf(offRoad).cables.find(({ id }) => id === 'main')).toMatchObject({
      fromStartA: 300,
      fromEndA: 300
    })
  })
})

describe('with the engine off', () => {
  it('the relay parts the batteries: the first gives the parked car alone, the second all the music', () => {
    // 3 A of the parked car and 20 mA of the turn-on inputs
    expectPrinted(currentOf(offRoad, 'battery', 'average', 'off'), '3.020')
    const music = ['amplifier 1', 'amplifier 2'].map(id => currentOf(offRoad, id, 'average', 'off'))
    expect(currentOf(offRoad, 'second battery', 'average', 'off')).toBeCloseTo((music[0] ?? 0) + (music[1] ?? 0), 4)
  })

  it('batteries that are joined for good share it', () => {
    for (const id of ['battery', 'second battery'])
      expect(currentOf(joined, id, 'average', 'off'), id).toBeGreaterThan(5)
  })
})

describe('a battery of another kind', () => {
  it('is charged through a converter, whose input carries 1.2/0.88 of its output', () => {
    expectPrinted(chargerInputA(30), '40.9')
    expect(van.circuit.secondBattery).toMatchObject({ link: 'charger', name: '95 A·h, lithium' })
    // 1100 W of class D draw (1294 − 15)/8 + 15 W on ordinary music, 14.6 A at 12 V: the next charger gives 20 A
    expect(van.circuit.secondBattery?.charger?.ratedA).toBe(20)
    expectPrinted(van.parts.cable.request?.currentA ?? 0, '27.3')
    const { circuit } = van.parts
    expectPrinted((circuit.done && circuit.request.converters?.[0]?.highestInputA) || 0, '27.3')
    expect(van.circuit.trunk?.fuse?.ratingA).toBeGreaterThanOrEqual(27.3 / 0.75)
  })

  it('gives what the charger lacks, and takes nothing of the first', () => {
    const amplifierA = currentOf(van, 'amplifier 1', 'full-sine', 'driving')
    expect(currentOf(van, 'second battery', 'full-sine', 'driving')).toBeCloseTo(amplifierA - 20, 3)
    // what it gives at the voltage the second battery lets it have, over its efficiency, and 4 W
    const partOf = (id: string) =>
      circuitOf(van)
        .states.find(({ level, engine }) => level === 'full-sine' && engine === 'driving')
        ?.parts.find(part => part.id === id)
    const wattsOf = (id: string) => (partOf(id)?.voltageV ?? 0) * (partOf(id)?.currentA ?? 0)
    expect(wattsOf('charger input')).toBeCloseTo(wattsOf('charger') / 0.88 + 4, 3)
  })

  it('rests at 13.2 V, not at 12.6 V', () => {
    const state = circuitOf(van).states.find(({ level, engine }) => level === 'average' && engine === 'off')
    const { voltageV = 0, currentA = 0 } = state?.parts.find(({ id }) => id === 'second battery') ?? {}
    // lithium, 95 A·h: the upper end of its resistance is 1.2 Ω·A·h over 95 A·h
    expect(voltageV + currentA * (1.2 / 95)).toBeCloseTo(13.2, 6)
  })
})

describe('bill and picture', () => {
  const metres = (half: Half) => {
    const bought = new Map<string, number>()
    for (const { item, need } of half.bill) {
      const [, power, size = power] = /^power cable (.*?),|(?:wire|relay,) (\d\S* mm²)/.exec(item) ?? []
      if (size !== undefined) bought.set(size, (bought.get(size) ?? 0) + need)
    }
    return bought
  }

  it.each([
    ['relay', offRoad],
    ['charger', van],
    ['no switch', joined]
  ])('have every cable and fuse of the circuit once, with a %s between', (_, half) => {
    const { request } = circuitOf(half)
    const laid = new Map<string, number>()
    for (const { designation, lengthM } of request.cables ?? [])
      laid.set(designation, (laid.get(designation) ?? 0) + lengthM)
    expect([...laid.keys()].sort()).toEqual([...metres(half).keys()].sort())
    for (const [size, lengthM] of laid) expect(lengthM, size).toBeCloseTo(metres(half).get(size) ?? 0, 9)
    const fuses = half.bill.filter(({ item }) => /^(?:blade )?fuse \d/.test(item))
    expect(fuses.reduce((sum, { need }) => sum + need, 0)).toBe(request.fuses?.length)
    // a fuse-link is a box with a line through it
    expect(half.picture.match(/paper-shape fuse/g)).toHaveLength(request.fuses?.length ?? 0)
    for (const designation of laid.keys()) if (designation !== '12 AWG') expect(half.picture).toContain(designation)
  })

  it('name relay, charger and capacitor with their ratings, and leave nothing of them unplanned', () => {
    const items = (half: Half) => half.bill.map(({ item }) => item).join('\n')
    expect(items(offRoad)).toContain('isolating relay, 300 A')
    expect(items(van)).toContain('charger from battery to battery, 20 A')
    expect(items(joined)).not.toMatch(/relay|charger from/)
    expect(items(offRoad)).toContain('distribution block, 2 in, 2 out')
    expect(offRoad.picture).toContain('>Relay<')
    expect(van.picture).toContain('>Charger<')
    expect(offRoad.picture).toContain('>Capacitor<')
    expect(offRoad.bill.find(({ item }) => item.endsWith('capacitor'))?.need).toBeCloseTo(0.6, 9)
    for (const half of [van, joined]) expect(half.circuit.notPlanned).toEqual([])
  })

  it('buy relay, diode and fuse of a turn-on that the source cannot carry', () => {
    const weak = { ...estatePlan.signal, turnOn: { remoteOutput: true, loadsA: [0.5] } }
    const items = electricalHalf(plan(700, {}, { signal: weak })).bill.map(({ item }) => item)
    for (const part of ['relay, change-over', 'quenching diode', 'blade fuse 1 A', 'fuse holder, blade'])
      expect(
        items.filter(item => item.startsWith(part)),
        part
      ).toHaveLength(1)
    expect(
      electricalHalf(plan(700))
        .bill.map(({ item }) => item)
        .join()
    ).not.toContain('quenching diode')
  })
})
