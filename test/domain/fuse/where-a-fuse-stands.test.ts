/** What the conductor before a fuse deserves by its length: 7, 18 and 40 in of 33 CFR 183.455 and of the trade, from both sides. */
import { describe, expect, it } from 'vitest'
import { placementCautions } from '../../../src/domain/circuit/fuse/fuse-placement.ts'

const told = (distanceM: number | undefined, sheathed: boolean) =>
  placementCautions(distanceM, sheathed, false).map(({ level, message }) => ({ level, message }))[0]

describe('a fuse that stands away from its battery', () => {
  for (const [distanceM, sheathed, level, advice] of [
    [0.17, false, undefined, /^$/],
    [0.175, true, undefined, /^$/],
    [0.18, false, 'note', /sleeve/],
    [0.45, false, 'note', /sleeve/],
    [0.46, false, 'stop', /sheath/],
    [0.18, true, 'note', /sheath.*whole/],
    [0.46, true, 'care', /conduit/],
    [1.016, true, 'care', /conduit/],
    [1.02, true, 'stop', /move|nearer|closer/i]
  ] as const)
    it(`by ${distanceM} m, ${sheathed ? 'sheathed' : 'bare'}: ${level ?? 'nothing to say'}`, () => {
      const found = told(distanceM, sheathed)
      expect(found?.level).toBe(level)
      expect(found?.message ?? '').toMatch(advice)
    })

  it('is told to have one at both ends where the cable joins two batteries, wherever it stands', () => {
    const codes = (distanceM?: number) => placementCautions(distanceM, false, true).map(({ code }) => code)
    expect([codes(), codes(0.1), codes(0.3)]).toEqual([
      ['link-both-ends'],
      ['link-both-ends'],
      ['link-both-ends', 'fuse-too-far']
    ])
  })
})
