import { describe, expect, it } from 'vitest'
import { awgDiameter, awgNumber } from '../../../src/domain/circuit/cable/awg-astm-b258.ts'
import { cableSize } from '../../../src/domain/circuit/cable/cable-size.ts'
import { saeJ1127Areas } from '../../../src/domain/circuit/cable/sae-j1127-areas.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { awgAsPrinted, saeAsPrinted } from '../../published/conductor-tables.ts'
import { expectPrinted } from '../../support/printed.ts'

const code = (run: () => unknown): string => {
  try {
    run()
  } catch (error) {
    if (error instanceof DesignError) return error.code
    throw error
  }
  return 'accepted'
}

describe('cable sizes', () => {
  for (const [awg, diameter, area] of awgAsPrinted) {
    it(`prints ${diameter} mm and ${area} mm² for ${awg} AWG (ASTM B258)`, () => {
      expectPrinted(awgDiameter(awgNumber(awg) ?? 99) * 1000, diameter)
      expectPrinted(cableSize(`${awg} AWG`, undefined, 'd').areaM2 * 1e6, area)
    })
  }

  it('has the area ratio of ASTM B258: 1.26098 a gauge, 2.00503 in three', () => {
    const area = (n: number) => awgDiameter(n) ** 2
    for (let n = -3; n < 37; n++) {
      expectPrinted(area(n) / area(n + 1), '1.26098')
      expectPrinted(area(n) / area(n + 3), '2.00503')
    }
  })

  for (const [index, [gauge, mils, area]] of saeAsPrinted.entries()) {
    it(`holds ${mils} circular mils, ${area} mm², in SAE ${gauge}`, () => {
      expect(saeJ1127Areas.rows[index]).toEqual([gauge, Number(mils)])
      expectPrinted(cableSize(gauge, 'sae', 'd').areaM2 * 1e6, area)
    })
  }

  it('keeps the series apart', () => {
    expect(cableSize('4', 'awg', 'd').designation).toBe('4 AWG')
    expect(cableSize('SAE 4', undefined, 'd').designation).toBe('SAE 4')
    expect(cableSize('25 mm²', undefined, 'd')).toMatchObject({ designation: '25 mm2', mm2: 25, areaM2: 25e-6 })
    for (const same of ['0', '1/0']) expect(cableSize(same, 'awg', 'd').designation).toBe('1/0 AWG')
    expect(cableSize('0000', 'awg', 'd').designation).toBe('4/0 AWG')
    expect(code(() => cableSize('4', undefined, 'd'))).toBe('missing-input')
    expect(code(() => cableSize('4 AWG', 'sae', 'd'))).toBe('conflicting-input')
  })

  for (const [system, text] of [
    ['awg', '5/0'],
    ['awg', '41'],
    ['awg', '4.5'],
    ['awg', ''],
    ['sae', '3'],
    ['mm2', '0'],
    ['mm2', '501'],
    ['mm2', '1e2']
  ] as const) {
    it(`knows no ${system} "${text}"`, () =>
      expect(code(() => cableSize(text, system, 'd'))).toBe('unknown-designation'))
  }
})
