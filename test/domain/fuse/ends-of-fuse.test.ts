/** Both ends of what a fuse is judged by: two batteries in series, a lithium bank, a maker's figure, a very hot place. */
import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../src/contract/supply/supply-fuses.ts'
import { rateFuse } from '../../../src/domain/circuit/fuse/rate-fuse.ts'

const cable = { designation: '1/0 AWG', insulationC: 105, ambientC: 30 } as const
const rated = (more: Partial<FuseRequest> = {}) => rateFuse({ currentA: 100, systemVoltageV: 12, cable, ...more })

describe('ends of a fuse', () => {
  it('meets twice the volts and twice the ohms at 24 V: the same amperes but for the fuse itself (two batteries in series)', () => {
    // 2·12.8 V and 2·3 mΩ, the cold fuse of 0.057 V/100 A once in either
    const fault = (systemVoltageV: number) => rated({ systemVoltageV }).result.prospectiveA
    const fuseOhm = 0.057 / rated().result.fuse.ratingA
    expect(fault(12)).toBeCloseTo(12.8 / (0.003 + fuseOhm), 0)
    expect(fault(24)).toBeCloseTo(25.6 / (0.006 + fuseOhm), 0)
  })

  it('takes a full lithium bank at 13.4 V each twelve and 0.06 Ω·Ah over its capacity (from memory)', () => {
    const { prospectiveA, fuse } = rated({ source: { chemistry: 'lithium', capacityAh: 100 } }).result
    expect(prospectiveA).toBeCloseTo(13.4 / (0.06 / 100 + 0.057 / fuse.ratingA), 0)
  })

  it('asks for the kind behind a capacity, and for the cranking current of a flooded one', () => {
    expect(() => rated({ source: { capacityAh: 70 } })).toThrow(/only with its kind/)
    expect(() => rated({ source: { capacityAh: 70, chemistry: 'flooded' } })).toThrow(/cold cranking current/)
    expect(() => rated({ source: { capacityAh: 70, resistanceOhm: 0.005 } })).not.toThrow()
    expect(() => rated({ source: { capacityAh: 70, coldCrankingA: 640 } })).not.toThrow()
  })

  it('obeys a maker whose fuse just carries the load, not one below it nor one above ours', () => {
    const by = (makerFuseA: number) => rated({ currentA: 80, heavyCurrentA: 70, makerFuseA }).result.fuse.ratingA
    const own = rated({ currentA: 80, heavyCurrentA: 70 }).result.fuse.ratingA
    expect(own).toBe(100)
    expect(by(80)).toBe(80)
    expect(by(70)).toBe(100)
    expect(by(150)).toBe(100)
  })

  it('lies no hotter than its list goes where the cable may: 22 of 40 A in 140 °C as in 125 °C', () => {
    const hot = { ...cable, insulationC: 200, ambientC: 140 } as const
    const { bounds } = rated({ currentA: 20, heavyCurrentA: 11, cable: hot, loadRatio: 0.5 }).result
    expect(bounds.thermalA).toBeCloseTo(11 / 0.5 / (22 / 40), 6)
  })

  it('bears 23 of 40 A in 120 °C, between 25 at 110 and 22 at 125 °C (data sheet, second-hand)', () => {
    const hot = { ...cable, insulationC: 125, ambientC: 120 } as const
    const { bounds } = rated({ currentA: 20, heavyCurrentA: 11, cable: hot, loadRatio: 0.5 }).result
    expect(bounds.thermalA).toBeCloseTo(11 / 0.5 / (23 / 40), 6)
  })
})
