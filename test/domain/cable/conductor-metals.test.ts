/** The metals of the trade against the standard copper of IEC 60028, by which conductivities are printed. */
import { describe, expect, it } from 'vitest'
import { conductorMaterials } from '../../../src/domain/circuit/cable/conductor-materials.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('a conductor metal', () => {
  for (const [name, { ohmMm2PerM, iacsPercent }] of Object.entries(conductorMaterials))
    it(`${name} resists 100/${iacsPercent} times 1/58 Ω·mm²/m (IEC 60028: 100 % IACS is 58 m/(Ω·mm²))`, () =>
      expect(Math.abs((ohmMm2PerM * 58 * iacsPercent) / 100 - 1)).toBeLessThan(1e-3))

  it('warms by the coefficient its standard prints: 0.393 % and 0.403 % a kelvin at 20 °C (IEC 60028, IEC 60889)', () => {
    expectPrinted(conductorMaterials.copper.perK * 100, '0.393')
    for (const name of ['aluminium', 'copper-clad-10', 'copper-clad-15'] as const)
      expectPrinted(conductorMaterials[name].perK * 100, '0.403')
  })
})
