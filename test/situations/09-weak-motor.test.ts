/** A driver of Qts 0.9 wants a large closed box or none; a small one booms. Small 1972: Qtc is never below Qts. */
import { describe, expect, it } from 'vitest'
import { hatchback, planned } from './workshop.ts'

describe('a driver of Qts 0.9', () => {
  const sheet = { fsHz: 38, qms: 6, qes: 1.06, vasL: 90, sdCm2: 490, reOhm: 3.4, xmaxMm: 8, powerW: 200 }
  const weak = { ...hatchback, driver: { ...hatchback.driver, sheet } }

  it('cannot have the Qtc of 0.7 that was asked for, and says so', async () => {
    const { verdict, status } = await planned({ ...weak, enclosure: { kind: 'closed', qtc: 0.7 } })
    expect(status !== 200 || verdict === 'incomplete' || verdict === 'stop').toBe(true)
  })

  it('is said to lean to a closed box: fs/Qes = 36 Hz', async () => {
    const { part } = await planned({ ...weak, enclosure: { kind: 'closed', qtc: 1.1 } })
    expect(part('driver').leaning.kind).toBe('closed')
  })

  it('fills the whole boot where Qtc 1.1 wants more: Vas/((1.1/0.9)² − 1) = 182 L do not go into 123 L, and it says so', async () => {
    const { netL, reasons, cableMm2, fuseA } = await planned({ ...weak, enclosure: { kind: 'closed', qtc: 1.1 } })
    expect(reasons).toContain('1.1 asked')
    expect(netL).toBeGreaterThan(75)
    expect(netL).toBeLessThan(123)
    // the amplifier draws what it drew before: 420 W of class D
    expect(cableMm2).toBeGreaterThan(12)
    expect(cableMm2).toBeLessThan(25)
    expect(fuseA).toBeGreaterThanOrEqual(45)
    expect(fuseA).toBeLessThanOrEqual(60)
  })

  it('gets 199 L where the boot has them: 182 L, and more for the 0.054 Ω of its wire, by which Qes is 1.077 (Small 1972, arithmetic)', async () => {
    const car = { ...hatchback.car, space: { widthMm: 1000, heightMm: 600, depthMm: 560 } }
    const { netL, part } = await planned({ ...weak, car, enclosure: { kind: 'closed', qtc: 1.1 } })
    const qes = (1.06 * (3.4 + 0.054)) / 3.4
    const qts = (qes * 6) / (qes + 6)
    expect(Math.abs((netL ?? 0) / (90 / ((1.1 / qts) ** 2 - 1)) - 1)).toBeLessThan(0.005)
    expect(part('response').scalars.qtc).toBeCloseTo(1.1, 1)
  })
})
