/** The curve of an alternator against the one table that was read, and in the charging of a car. */
import { describe, expect, it } from 'vitest'
import { shareAtShaft } from '../../../src/domain/circuit/source/alternator-curve.ts'
import { supplyCurrent } from '../../../src/http/operations/supply/supply-current.ts'
import { postTo } from '../../support/post-to.ts'

const at = (perMinute: number) => shareAtShaft(perMinute / 60)

describe('an alternator by the speed of its shaft', () => {
  it('follows the table of a small marine diesel within 3 %: hot 16, 41 and 48 A at 1300, 2500 and 5000', () => {
    const ratedA = 48 / at(5000)
    for (const [perMinute, currentA] of [
      [1300, 16],
      [2500, 41],
      [5000, 48]
    ] as const)
      expect(Math.abs((ratedA * at(perMinute)) / currentA - 1), `${perMinute}`).toBeLessThan(0.03)
  })

  it('is (1 − e^−(n − 950)/880)/(1 − e^−5050/880): 0.466 at 1500 per minute, 0.621 at 1800, 0.732 at 2100', () => {
    expect([1500, 1800, 2100].map(at)).toEqual([0.466, 0.621, 0.732].map(share => expect.closeTo(share, 3)))
    // by the same formula of 48 A at 5000: 15.9 A at 1300 and 40.1 A at 2500
    expect((48 * at(1300)) / at(5000)).toBeCloseTo(15.9, 0)
    expect((48 * at(2500)) / at(5000)).toBeCloseTo(40.1, 0)
  })

  it('gives nothing below its cut-in, all at its rated speed, half of it not far above idle', () => {
    expect([at(900), at(6000)]).toEqual([0, 1])
    expect(at(1500)).toBeGreaterThan(0.4)
    expect(at(2100)).toBeLessThan(0.74)
  })

  it('says what is left at idle: 800 of the engine, pulleys 2.6 : 1, 140 A, hot 0.85', async () => {
    const post = postTo(supplyCurrent)
    const ask = (charging: object) =>
      post('/v1/supply/current', {
        systemVoltageV: 12,
        amplifiers: [{ powerW: 500, class: 'D' }],
        charging: { kind: 'alternator', ratedA: 140, hotFactor: 0.85, baseLoadA: 35, ...charging }
      })
    const { body } = await ask({ idleShaftPerMin: 2080, drivingShaftPerMin: 5200 })
    const curve = (n: number) => (1 - Math.exp(-(n - 950) / 880)) / (1 - Math.exp(-5050 / 880))
    expect(body.result.charging.idleAvailableA).toBeCloseTo(140 * 0.85 * curve(2080), 3)
    expect(body.result.charging.cruiseAvailableA).toBeCloseTo(140 * 0.85 * curve(5200), 3)
    expect((await ask({ idleShaftPerMin: 2080, idleA: 70 })).status).toBe(422)
  })
})
