/** A 14.4 V amplifier in a lorry of 24 V burns when it is switched on; a converter stands between. Maker's rating, no judgement. */
import { describe, expect, it } from 'vitest'
import { mergePatch } from '../support/merge-patch.ts'
import { estate, planned } from './workshop.ts'

const lorry = { ...estate, supply: { ...estate.supply, systemVoltageV: 24 } }

describe('a car amplifier in a lorry', () => {
  it('is stopped, and the converter that lets it play is a patch on the request', async () => {
    const { stops, verdict, body } = await planned(lorry)
    expect(verdict).toBe('stop')
    expect(stops).toContain('amplifier-voltage-class')
    const [remedy] = body.result.remedies
    expect(remedy).toMatchObject({ id: 'converter', patch: { supply: { converter: {} } } })
    expect(remedy.cures).toContain('amplifier-voltage-class')
    const mended = await planned(mergePatch(lorry, remedy.patch))
    expect(mended.stops).toEqual([])
    const { converter, trunk, branches } = mended.body.result.circuit
    // 700 W of class D at 12 V draw 69 A: the next converter gives 70 A, and from 24 V takes 70·13.6/0.88/24 = 45 A
    expect(converter).toMatchObject({ inputV: 24, nominalV: 12, ratedA: 70 })
    expect(converter.ratedInputA).toBeCloseTo((70 * 13.6) / 0.88 / 24 + 4 / 24, 2)
    expect([trunk.fuse.ratingA, branches[0].fuse.ratingA]).toEqual([50, 70])
  })

  it('is read before the amplifier is joined, and has its turn-on behind a relay', async () => {
    const { body } = await planned({ ...lorry, supply: { ...lorry.supply, converter: {} } })
    const { commissioning, billOfMaterials, readings, buildOrder } = body.result
    const ids = commissioning.map(({ id }: { id: string }) => id)
    expect(ids.indexOf('converter-check')).toBeLessThan(ids.indexOf('fuse-last'))
    const volts = readings.find(({ step }: { step: string }) => step === 'converter-check')
    expect(volts.expected).toBeCloseTo(13.6, 1)
    expect(billOfMaterials.map(({ part }: { part: string }) => part)).toContain('converter')
    expect(buildOrder.steps.map(({ id }: { id: string }) => id)).toContain('mount-converter')
    // the switched output of the source carries 24 V
    expect(body.result.parts.signal.answer.result.turnOn.method).toBe('relay')
  })

  it('does not start where the converter is too small, and takes no second battery behind it', async () => {
    const small = await planned({ ...lorry, supply: { ...lorry.supply, converter: { ratedA: 20 } } })
    expect(small.stops).toContain('converter-too-small')
    expect(small.body.result.remedies[0].patch.supply.converter.ratedA).toBe(70)
    const second = { arrangement: 'isolated', capacityAh: 90 }
    const both = { ...lorry.supply, battery: { capacityAh: 90 }, converter: {}, secondBattery: second }
    expect((await planned({ ...lorry, supply: both })).status).toBe(422)
    const twelve = await planned({ ...estate, supply: { ...estate.supply, converter: {} } })
    expect(JSON.stringify(twelve.body)).toContain('leave it out')
  })

  it('has thin copper before the converter and thick behind it, and the box of any car', async () => {
    const { cableMm2, body, netL } = await planned({ ...lorry, supply: { ...lorry.supply, converter: {} } })
    // 45 A over 5.5 m: 3 % of 24 V, ρ·l·I/ΔU = 6.1 mm², so 8 AWG or 10 mm²; the minus goes to the body
    expect(cableMm2).toBeGreaterThan(6.1)
    expect(cableMm2).toBeLessThan(17)
    // 70 A on a metre: 6 AWG or 4 AWG, never the 8 AWG of the run before it (common practice, no source)
    const [branch] = body.result.circuit.branches
    expect(['6 AWG', '4 AWG']).toContain(branch.designation)
    expect((netL ?? 0) / 2).toBeGreaterThan(35)
    expect((netL ?? 0) / 2).toBeLessThan(95)
  })
})
