/** A 14.4 V amplifier in a lorry of 24 V burns when it is switched on; a converter stands between. Maker's rating, no judgement. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a car amplifier in a lorry', () => {
  it('is stopped and told of a converter', async () => {
    const { stops, verdict, body } = await planned({ ...estate, supply: { ...estate.supply, systemVoltageV: 24 } })
    expect(verdict).toBe('stop')
    expect(stops.length).toBeGreaterThan(0)
    expect(JSON.stringify(body.cautions)).toMatch(/converter/)
  })
})
