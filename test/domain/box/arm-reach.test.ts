/** What a hand reaches in a closed box: by Pythagoras, and with things put in its way. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { reachCautions } from '../../../src/domain/box/assembly/arm-reach.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'

const driver = {
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.15,
  magnetDiameterM: 0.2,
  magnetHeightM: 0.06,
  centres: [{ uM: 0.302, vM: 0.182 }]
}
const cup = { cutOutDiameterM: 0.08, volumeM3: 1e-4, centre: { uM: 0.152, vM: 0.182 } }
const box: BoxRequest = {
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.42 },
  thicknessM: 0.018,
  drivers: [driver],
  fittings: { terminal: cup }
}
const reachOf = (request: BoxRequest) => layOutBox(request).result.assembly.reach

describe('an arm through a hole of 140 mm (armIn)', () => {
  const small = {
    cutOutDiameterM: 0.14,
    flangeDiameterM: 0.17,
    mountingDepthM: 0.08,
    magnetDiameterM: 0.09,
    magnetHeightM: 0.03,
    centres: [{ uM: 0.2, vM: 0.182 }]
  }
  /** From the middle of the hole to 30 mm before the rear of the cup, straight in. */
  const straightM = (depthM: number) => depthM - 0.018 - 1e-4 / ((Math.PI / 4) * 0.08 ** 2) - 0.03 - 0.009
  /** A cup that lies so far aslant behind the hole; the back is seen from behind. */
  const aslant = (degrees: number, depthM = 0.42): BoxRequest => {
    const offM = straightM(depthM) * Math.tan((degrees * Math.PI) / 180)
    const terminal = { ...cup, centre: { uM: 0.9 - 0.2 - offM, vM: 0.182 } }
    return { ...box, outer: { widthM: 0.9, heightM: 0.4, depthM }, drivers: [small], fittings: { terminal } }
  }

  it('goes in up to 43.1° aslant', () => {
    const lengthM = straightM(0.42) / Math.cos((43 * Math.PI) / 180)
    expect(reachOf(aslant(43))).toEqual([
      { part: 'terminal cup', through: 'driver', lengthM: expect.closeTo(lengthM, 9) }
    ])
    expect(reachOf(aslant(43.1))).toEqual([{ part: 'terminal cup' }])
  })

  it('goes in no further than 600 mm', () => {
    const longest = 0.42 + 0.6 - straightM(0.42)
    expect(reachOf(aslant(0, longest - 1e-6))[0]?.through).toBe('driver')
    expect(reachOf(aslant(0, longest + 1e-6))[0]?.through).toBeUndefined()
  })
})

describe('what is reached in a box', () => {
  it('is the rear of the cup, at the distance that Pythagoras tells', () => {
    // 30 mm before the cup's rear; the back is seen from behind, so its u runs the other way.
    const depth = 1e-4 / ((Math.PI / 4) * 0.08 ** 2)
    const [dx, dy] = [0.302 - (0.64 - 0.152), 0.42 - 0.018 - depth - 0.03 - 0.009]
    expect(reachOf(box)).toEqual([
      { part: 'terminal cup', through: 'driver', lengthM: expect.closeTo(Math.hypot(dx, dy), 9) }
    ])
    expect(layOutBox(box).cautions.map(({ code }) => code)).not.toContain('out-of-reach')
  })

  it('is not what stands behind a slot that runs up the back and along the lid, or behind a hole for a hand too small', () => {
    const port = { kind: 'slot', heightM: 0.05, lengthM: 0.95 } as const
    const behind = {
      ...box,
      port,
      fittings: { terminal: { ...cup, face: 'top', centre: { uM: 0.3, vM: 0.3 } } }
    } as const
    expect(reachOf(behind)).toEqual([{ part: 'terminal cup' }])
    const small = { ...driver, cutOutDiameterM: 0.085, flangeDiameterM: 0.11, magnetDiameterM: 0.06 }
    const { result, cautions } = layOutBox({ ...box, drivers: [small] })
    expect(result.assembly.reach).toEqual([{ part: 'terminal cup' }])
    expect(cautions).toContainEqual(expect.objectContaining({ code: 'out-of-reach', level: 'care' }))
  })

  it('is no driver on the board between two chambers; through another driver’s hole it is', () => {
    const inner = { ...driver, face: 'divider' } as const
    const parted = { ...box, fittings: {}, divider: { fromFrontM: 0.15 }, drivers: [inner] }
    expect(reachOf(parted)).toEqual([{ part: 'driver' }])
    const outer = { ...driver, mountingDepthM: 0.1, label: 'front driver', centres: [{ uM: 0.32, vM: 0.182 }] }
    expect(reachOf({ ...parted, drivers: [inner, outer] })).toEqual([
      // From the middle of the front to 30 mm before the divider, straight in.
      { part: 'driver', through: 'front driver', lengthM: expect.closeTo(0.15 + 0.009 - 0.03, 9) }
    ])
  })

  it('is nothing to speak of without a hole to reach in by', () => {
    expect(reachOf({ ...box, drivers: [] })).toEqual([])
    expect(reachCautions([])).toEqual([])
  })
})
