/** From where on something is said of a supply: each bound from both sides, an exact balance being none. */
import { describe, expect, it } from 'vitest'
import type { AmplifierOnSupply, CurrentRequest } from '../../../src/contract/supply/supply-current.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { amplifierDraw } from '../../../src/domain/circuit/load/amplifier-draw.ts'
import { classDraws } from '../../../src/domain/circuit/load/class-draws.ts'
import { chargingCautions } from '../../../src/domain/circuit/load/supply-cautions.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { chargingBalance } from '../../../src/domain/circuit/source/charging-balance.ts'
import { engineOff } from '../../../src/domain/circuit/source/engine-off.ts'

const said = (amplifier: Partial<AmplifierOnSupply>, request: Partial<CurrentRequest> = {}) =>
  supplyCurrent({ amplifiers: [{ powerW: 400, class: 'D', ...amplifier }], systemVoltageV: 12, ...request }).cautions
const codes = (...given: Parameters<typeof said>) => said(...given).map(({ code }) => code)

describe('a supply', () => {
  it('sized above its nominal voltage is told by how much: 13.8 V are 15 % over 12 V, 27.6 V over 24 V', () => {
    for (const [systemVoltageV, nominalV] of [
      [13.8, 12],
      [27.6, 24],
      [55.2, 48]
    ] as const) {
      const found = said({}, { systemVoltageV }).find(({ code }) => code === 'sizing-above-nominal')
      expect(found?.figures).toEqual({ systemVoltageV, nominalV })
      expect(found?.message).toContain('15')
    }
    for (const systemVoltageV of [12, 24, 48])
      expect(codes({}, { systemVoltageV })).not.toContain('sizing-above-nominal')
  })

  it('of an efficiency that its class cannot have is told, and one at the end of its range is not', () => {
    const { lowest, highest } = classDraws.D
    const odd = (efficiency: number) => codes({ efficiency }).includes('efficiency-implausible')
    expect([highest + 0.001, highest, lowest, lowest / 2, lowest / 2 - 0.001].map(odd)).toEqual([
      true,
      false,
      false,
      false,
      true
    ])
    expect(codes({})).not.toContain('efficiency-implausible')
  })

  it('of a small amplifier idles at a fifth of its full draw at most: 20 W at 0.85 take 23.5 W, 4.71 W of them idle', () => {
    const idleW = (powerW: number) => amplifierDraw({ powerW, class: 'D' }, 12, assumptions(), '').quiescentW
    expect(idleW(20)).toBeCloseTo((0.2 * 20) / 0.85, 9)
    // from 63.75 W on the 15 W of its class are less than that
    expect(idleW(64)).toBe(15)
  })

  it('of a battery whose reserve would need an exponent above 2 is refused: 70 Ah for 15 min at 25 A, n 2.23', () => {
    // n = ln(20 h/t)/ln(25 A·20 h/70 Ah); 30 min give 1.88
    const hours = (reserveMinutes: number) =>
      engineOff({ capacityAh: 70, reserveMinutes } as never, 15, 100, 12, assumptions(), '').peukertExponent
    expect(hours(30)).toBeCloseTo(Math.log(40) / Math.log(500 / 70), 9)
    expect(() => hours(15)).toThrow(/15 min/)
  })

  it('in exact balance lacks nothing; each deficit is told once, the heaviest that matters', () => {
    const balance = (idle: number, cruise: number, heavy: number) =>
      chargingCautions(
        {
          ...chargingBalance({ kind: 'alternator', ratedA: 120 }, 30, 60, assumptions(), ''),
          ...{ idleAverageSurplusA: idle, cruiseAverageSurplusA: cruise, cruiseHeavySurplusA: heavy }
        },
        'alternator'
      ).length
    expect(balance(0, 0, 0)).toBe(0)
    expect(balance(-1, 5, 5)).toBe(1)
    expect(balance(1, 0, -1)).toBe(1)
    // where even the mean falls short, dense bass is no news
    expect(balance(1, -1, -9)).toBe(1)
    expect(balance(-1, -1, -9)).toBe(2)
  })
})
