/** What a person reads of other boxes, and of what would make one fit. */
import { describe, expect, it } from 'vitest'
import { metric } from '../../src/documents/draw/number-text.ts'
import { waysToFit } from '../../src/documents/plan/paper-choice.ts'

describe('what would make a box fit', () => {
  it('is a sentence for the change and one for what is built then, and the largest driver last', () => {
    const size = { kind: 'vented', netVolumeM3: 0.04, outerVolumeM3: 0.06, massKg: 20, gainPowerW: 300 } as const
    const figures = { ...size, levelDb: [], heardAt: 'seat', groupDelayS: 0.02 } as const
    const changes = [{ change: 'Make the room 25 mm higher.', builds: 'Vented, 40 L at 35 Hz', figures, patch: {} }]
    const largestDriver = { nominalM: 0.2, flangeDiameterM: 0.212, mountingDepthM: 0.118 }
    expect(waysToFit({ waysOut: { changes, largestDriver } }, metric)).toEqual([
      'Make the room 25 mm higher. Vented, 40 L at 35 Hz.',
      'The largest usual driver that this space takes: 200 mm, flange 212 mm, 118 mm deep.'
    ])
    expect(waysToFit({}, metric)).toEqual([])
  })
})
