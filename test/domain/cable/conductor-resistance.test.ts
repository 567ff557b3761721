import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { cableSize } from '../../../src/domain/circuit/cable/cable-size.ts'
import {
  areaForOhmPerM,
  type ConductorRequest,
  conductorLaw,
  conductorOhmPerM
} from '../../../src/domain/circuit/cable/conductor-resistance.ts'
import {
  iec60228Class2Aluminium,
  iec60228Class5,
  iso6722Copper
} from '../../../src/domain/circuit/cable/metric-resistance-tables.ts'
import { class2AluminiumAsPrinted, class5AsPrinted, iso6722AsRecalled } from '../../published/conductor-tables.ts'
import { expectPrinted } from '../../support/printed.ts'

const law = (request: ConductorRequest) => conductorLaw(request, assumptions())
const ohmPerM = (designation: string, request: ConductorRequest, temperatureC = 20) =>
  conductorOhmPerM(cableSize(designation, undefined, 'd'), law(request), temperatureC)
const FOOT_M = 0.3048

describe('conductor resistance', () => {
  for (const [table, printed] of [
    [iec60228Class5, class5AsPrinted],
    [iec60228Class2Aluminium, class2AluminiumAsPrinted],
    [iso6722Copper, iso6722AsRecalled]
  ] as const) {
    const how = printed === iso6722AsRecalled ? 'remembered twice: no source' : 'printed'
    it(`holds every row of ${table.source} as ${how}`, () => {
      const rows = printed.split('|').map(row => row.split(' ').map(Number))
      expect(table.rows.map(row => [...row])).toEqual(rows)
    })

    it(`of ${table.source} falls from size to size, at a plausible resistivity`, () => {
      const product = table.rows.map(([mm2, mohm]) => mm2 * mohm)
      const metal = table === iec60228Class2Aluminium ? 28.264 : 17.241
      for (const [index, value] of product.entries()) {
        expect(value / metal).toBeGreaterThan(1.03)
        expect(value / metal).toBeLessThan(1.175)
        if (index > 0) expect(table.rows[index]?.[1]).toBeLessThan(table.rows[index - 1]?.[1] ?? 0)
      }
    })
  }

  it('meets NFPA 70 Chapter 9 Table 8 at 75 °C: 0.308 and 0.122 Ω/kft copper, 0.508 aluminium', () => {
    const perKft = (awg: string, conductor: 'copper' | 'aluminium') => ohmPerM(awg, { conductor }, 75) * FOOT_M * 1000
    expectPrinted(perKft('4 AWG', 'copper'), '0.308')
    expectPrinted(perKft('1/0 AWG', 'copper'), '0.122')
    expect(Math.abs(perKft('4 AWG', 'aluminium') - 0.508)).toBeLessThan(0.003) // other coefficient of aluminium
  })

  it('prints the handbook arithmetic: 4 AWG 0.8315, SAE 4 0.929, 25 mm² 0.780 mΩ/m', () => {
    expectPrinted(ohmPerM('4 AWG', { conductor: 'copper' }) * 1000, '0.8315')
    expectPrinted(ohmPerM('SAE 4', { conductor: 'copper' }) * 1000, '0.929')
    expectPrinted(ohmPerM('25 mm2', { conductor: 'copper' }) * 1000, '0.780')
    expectPrinted(17.2414 / (ohmPerM('25 mm2', { conductor: 'copper' }) * 1000), '22.1')
    expectPrinted(ohmPerM('25 mm2', { conductor: 'copper', metricResistance: 'iso-6722-1' }) * 1000, '0.743')
  })

  it('makes copper-clad aluminium need two gauges more (ASTM B566: ratio 1.59)', () => {
    const clad = ohmPerM('2 AWG', { conductor: 'copper-clad-10' })
    expectPrinted(clad / ohmPerM('2 AWG', { conductor: 'copper' }), '1.59')
    expect(clad / ohmPerM('4 AWG', { conductor: 'copper' })).toBeCloseTo(1, 3)
    expect(ohmPerM('2 AWG', { conductor: 'unknown' })).toBe(clad)
    expect(law({ conductor: 'unknown' }).compositionUnknown).toBe(true)
    // A wire maker prints 3.91 Ω/kft for 14 AWG solid, 10 % clad: better than the standard's minimum by 2.5 %.
    expect(
      Math.abs(ohmPerM('14 AWG', { conductor: 'copper-clad-10', strandingFactor: 1 }) * FOOT_M * 1000 - 3.91)
    ).toBeLessThan(0.12)
  })

  it('rises 21.62 % from 20 to 75 °C in copper (IEC 60028)', () => {
    expectPrinted(ohmPerM('4 AWG', { conductor: 'copper' }, 75) / ohmPerM('4 AWG', { conductor: 'copper' }), '1.2162')
  })

  it('takes the caller’s metal before every table', () => {
    const request = {
      conductor: 'copper',
      resistivityOhmM: 1.724e-8,
      temperatureCoefficientPerK: 0.00393,
      strandingFactor: 1
    } as const
    expect(ohmPerM('25 mm2', request, 35)).toBeCloseTo((1.724e-8 * (1 + 0.00393 * 15)) / 25e-6, 12)
  })

  it('returns to the area it came from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 120, noNaN: true }),
        fc.double({ min: -40, max: 125, noNaN: true }),
        (mm2, t) => {
          const metal = law({ conductor: 'copper', metricResistance: 'nominal-area' })
          const size = { system: 'mm2', designation: 'x', areaM2: mm2 / 1e6, mm2 } as const
          expect(areaForOhmPerM(conductorOhmPerM(size, metal, t), metal, t) / size.areaM2).toBeCloseTo(1, 12)
        }
      ),
      { seed: 1 }
    )
  })

  it('echoes what it assumed', () => {
    const assumed = assumptions()
    conductorLaw({}, assumed, 'cable.')
    expect(assumed.list.map(({ field, value }) => [field, value])).toEqual([
      ['cable.conductor', 'copper'],
      ['cable.strandingFactor', 1.02]
    ])
  })
})
