/** What the vehicle does to the supply of a plan: it starts, it stands, it governs its charging. */
import { describe, expect, it } from 'vitest'
import { alderPlan as plan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'

const agm = { battery: { capacityAh: 95, chemistry: 'agm' } }
const second = (chemistry: string) => ({
  ...agm,
  secondBattery: { arrangement: 'isolated', capacityAh: 100, chemistry }
})
const circuitOf = (wire: object) => {
  const { circuit } = electricalHalf(wire).parts
  if (!circuit.done) throw new Error('no circuit')
  return circuit
}
const codesOf = (wire: object) => circuitOf(wire).outcome.cautions.map(({ code }) => code)

describe('the starter of a plan', () => {
  it('takes half the cold cranking current at 9.6 V: 340 A of 680 A, 28.24 mΩ, unless its current is given', () => {
    expect(circuitOf(plan(700)).request.starter?.resistanceOhm).toBeCloseTo(9.6 / 340, 6)
    expect(circuitOf(plan(700, { starterA: 200 })).request.starter?.resistanceOhm).toBeCloseTo(9.6 / 200, 6)
    expect(electricalHalf(plan(700)).assumed).toContainEqual(
      expect.objectContaining({ field: 'supply.starterA', value: 340 })
    )
  })

  it('is none where orange cables turn the engine or a converter charges', () => {
    const converter = { charging: { kind: 'converter', ratedA: 150, baseLoadA: 30 } }
    const { car } = plan(700)
    for (const wire of [plan(700, converter), plan(700, {}, { car: { ...car, drive: 'hybrid' } })])
      expect(circuitOf(wire).request.starter).toBeUndefined()
  })

  it('pulls the amplifiers down with the first battery, not those on a battery of their own', () => {
    expect(codesOf(plan(1100))).toEqual(expect.arrayContaining(['cold-start', 'late-cut-off']))
    for (const kind of ['agm', 'lithium'])
      for (const code of ['cold-start', 'late-cut-off']) expect(codesOf(plan(1100, second(kind)))).not.toContain(code)
  })

  it('is read at the battery: between its weak and its strong end, 5.4 and 2 V over 680 A', () => {
    const reading = electricalHalf(plan(700)).readings.find(({ what }) => what === 'battery while the starter turns')
    const at = (ohm: number) => (12.6 * (9.6 / 340)) / (9.6 / 340 + ohm)
    expect(reading?.expected).toBeGreaterThan(at(5.4 / 680))
    expect(reading?.expected).toBeLessThan(at(2 / 680))
    expect(reading?.lowest).toBeLessThan(at(5.4 / 680))
  })
})

describe('a vehicle with a battery sensor', () => {
  const sensed = { batterySensor: true, charging: { kind: 'alternator', ratedA: 180 } }

  it('governs its alternator, and is read from 12.2 to 15 V', () => {
    const half = electricalHalf(plan(950, sensed))
    expect(half.cautions.map(({ code }) => code)).toContain('governed-charging')
    const reading = half.readings.find(({ what }) => what === 'charging voltage at the battery')
    expect([reading?.lowest, reading?.highest]).toEqual([12.2, 15])
  })

  it('does not govern what it was not told to have, nor a converter', () => {
    const { batterySensor: _, ...plain } = sensed
    expect(codesOf(plan(950, plain))).not.toContain('governed-charging')
    const converter = { ...sensed, charging: { kind: 'converter', ratedA: 150 } }
    expect(codesOf(plan(950, converter))).not.toContain('governed-charging')
  })
})

describe('readings behind a charger', () => {
  const half = electricalHalf(plan(1100, second('lithium')))

  it('start at the battery that feeds the amplifiers, and expect what lies between their limits', () => {
    const probes = half.readings.map(each => each.probes)
    expect(probes).toContain('plus post of the second battery to the plus terminal of the amplifier')
    for (const { what, expected, lowest = -Infinity, highest = Infinity } of half.readings) {
      if (expected === undefined) continue
      expect(expected, what).toBeGreaterThanOrEqual(lowest)
      expect(expected, what).toBeLessThanOrEqual(highest)
    }
  })
})
