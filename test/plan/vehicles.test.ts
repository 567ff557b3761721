/**
 * Vehicles of everyday work, as a master installer would wire them: sizes and fuses by common practice (no source), every
 * source fused, every cable guarded from both ends, every picture whole. Where the plan differs, the row says why.
 */
import { describe, expect, it } from 'vitest'
import { metric } from '../../src/documents/draw/number-text.ts'
import { conductorsOf } from '../../src/documents/wiring/conductors.ts'
import { alderPlan as car } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { vehicles } from '../support/twelve-vehicles.ts'

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

  it('draws every conductor of the table by its number, with its size and length, and breaks no figure from its unit', () => {
    const lines = half.picture.match(/<text[^>]*>[^<]*/g)?.map(text => text.replace(/<[^>]*>/, '')) ?? []
    const drawn = lines.join(' ')
    for (const [index, { what, size, run }] of conductorsOf(half, metric).entries()) {
      const count = lines.filter(text => text === `${index + 1}`).length
      // the minus of a charger or converter stands in its box
      expect(count === 1 || drawn.includes(`(${index + 1})`), what).toBe(true)
      if (count === 1 && run !== '') expect(drawn, what).toContain(`${size}, ${run}`)
    }
    expect(lines.filter(text => /^(?:m|mm²|AWG|A)(?![\p{L}\d])/u.test(text))).toEqual([])
  })

  it('draws, buys and reads every fuse, and cuts no lettering off', () => {
    const count = request.fuses?.length ?? 0
    expect(half.picture.match(/paper-shape fuse/g)).toHaveLength(count)
    const bought = half.bill
      .filter(({ item }) => /^(?:blade )?fuse \d/.test(item))
      .reduce((sum, { need }) => sum + need, 0)
    expect(bought).toBe(count)
    expect(half.picture).not.toContain('…')
    expect(half.readings.length).toBeGreaterThan(8)
  })
})

describe('cables side by side', () => {
  it.each([2, 3, 4])('%s of them are guarded from both ends, with a fuse at each end from three on, and read', runs => {
    const half = electricalHalf(car(3000, { runs }))
    const { circuit } = half.parts
    if (!circuit.done) throw new Error('no circuit')
    const { bareSources, cables } = circuit.outcome.result
    expect(bareSources).toEqual([])
    for (const { id, guarded } of cables) expect(guarded, id).toBe(true)
    const fuses = circuit.request.fuses?.length
    expect(fuses).toBe(runs > 2 ? 2 * runs : runs)
    const bought = half.bill.filter(({ item }) => /^fuse \d/.test(item)).reduce((sum, { need }) => sum + need, 0)
    expect(bought).toBe(fuses)
    for (const { what, expected = 0, lowest = 0, highest = 0 } of half.readings)
      expect([expected, lowest, highest].every(Number.isFinite), what).toBe(true)
  })

  it('meet a relay whose piece to the block carries all of them', () => {
    const agm = { capacityAh: 92, chemistry: 'agm' }
    const second = { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm', coldCrankingA: 860 }
    const half = electricalHalf(car(3000, { runs: 2, battery: agm, secondBattery: second }))
    const { circuit } = half.parts
    if (!circuit.done) throw new Error('no circuit')
    for (const { id, guarded } of circuit.outcome.result.cables) expect(guarded, id).toBe(true)
    expect(half.bill.map(({ item }) => item)).toContain('power cable 4/0 AWG, relay to block')
  })
})
