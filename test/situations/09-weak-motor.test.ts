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
})
