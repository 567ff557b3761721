/** One driver in a small closed box on a factory radio: tight bass, little room. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { hatchback, planned } from './workshop.ts'

describe('one driver in a small closed box', () => {
  it('takes 20 to 45 L, leans on the cabin below 50 Hz and needs no port', async () => {
    const { part, text } = await planned(hatchback)
    expect(part('box').volume.netL).toBeGreaterThan(20)
    expect(part('box').volume.netL).toBeLessThan(45)
    expect(part('response').scalars.f3Hz).toBeGreaterThan(38)
    expect(part('response').scalars.f3Hz).toBeLessThan(60)
    expect(part('port')).toBeUndefined()
    expect(text).toContain('Closed box')
  })

  it('is warned of a radio whose speaker outputs are bridged: neither lead is ground', async () => {
    const { cares } = await planned(hatchback)
    expect(cares).toContain('bridge-tied-source')
  })

  it('needs 6 AWG or one thicker and a fuse of 45 to 60 A for 420 W', async () => {
    const { cableMm2, fuseA } = await planned(hatchback)
    expect(cableMm2).toBeGreaterThan(12)
    expect(cableMm2).toBeLessThan(25)
    expect(fuseA).toBeGreaterThanOrEqual(45)
    expect(fuseA).toBeLessThanOrEqual(60)
  })
})
