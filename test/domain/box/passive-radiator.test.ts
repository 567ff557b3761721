/** A cone without a motor in its own hole: hole, air, room behind it, and what it does not do. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'

const driver = {
  cutOutDiameterM: 0.23,
  flangeDiameterM: 0.26,
  mountingDepthM: 0.14,
  magnetDiameterM: 0.15,
  magnetHeightM: 0.05,
  sdM2: 0.033,
  xmaxM: 0.01,
  massKg: 5
} as const
const radiator = {
  kind: 'passive-radiator',
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.09,
  sdM2: 0.048,
  xmaxM: 0.025,
  massKg: 1.5
} as const
const box: BoxRequest = {
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
  thicknessM: 0.018,
  drivers: [driver, { ...radiator, face: 'left' }]
}
const row = (request: BoxRequest, between: string) =>
  layOutBox(request).result.clearances.find(each => each.between === between)

describe('a passive radiator', () => {
  it('has a hole of its own purpose on its face, and its name', () => {
    const holes = layOutBox(box).result.panels.flatMap(({ cutOuts }) => cutOuts)
    expect(holes.map(({ purpose, label, diameterM }) => [purpose, label, diameterM])).toEqual([
      ['driver', 'driver', 0.23],
      ['passive-radiator', 'passive radiator', 0.282]
    ])
  })

  it('takes the air of its cone less its hole: 0.69 L less the hole of 1.12 L leaves none (frustum by hand)', () => {
    const air = (drivers: NonNullable<BoxRequest['drivers']>) => layOutBox({ ...box, drivers }).result.volume.netM3
    const deep = { ...radiator, mountingDepthM: 0.2 }
    // π/12·0.1·(0.2472² + 0.2472·0.0618 + 0.0618²) = 2.100 L, less π/4·0.282²·0.018 = 1.124 L.
    expect((air([driver]) - air([driver, { ...deep, face: 'left' }])) * 1e3).toBeCloseTo(2.1 - 1.124, 2)
    expect(air([driver]) - air([driver, { ...radiator, face: 'left' }])).toBeCloseTo(0, 12)
  })

  it('wants its travel behind it: 25 mm, where 20 would do for a shorter one', () => {
    const name = 'passive radiator: cone to the wall behind it'
    expect(row(box, name)).toMatchObject({ neededM: 0.025, passes: true })
    expect(row({ ...box, drivers: [driver, { ...radiator, xmaxM: 0.01, face: 'left' }] }, name)?.neededM).toBe(0.02)
  })

  it('meets the motor of a driver where both are deep: 140 + 90 mm stand in 640, not in 220', () => {
    const narrow = { ...box, outer: { widthM: 0.22, heightM: 0.4, depthM: 0.38 } }
    const facing = (request: BoxRequest) =>
      layOutBox({
        ...request,
        drivers: [
          { ...driver, face: 'right' },
          { ...radiator, face: 'left' }
        ]
      }).result.clearances.filter(
        ({ between, passes }) => between.includes('passive radiator') && between.includes('driver') && !passes
      )
    expect(facing(box)).toEqual([])
    expect(facing(narrow)[0]?.availableM).toBeCloseTo(-0.01, 9)
  })

  it('drives nothing: the pressure that bends the panels is that of the driver alone', () => {
    const asked = { ...box, bracing: {} }
    const [both, alone] = [layOutBox(asked).result, layOutBox({ ...asked, drivers: [driver] }).result]
    const perAir = ({ vibration, volume }: typeof both) => (vibration.pressurePa ?? 0) * volume.netM3
    expect(perAir(both)).toBeCloseTo(perAir(alone), 6)
  })

  it('has no motor: its sizes are refused', () => {
    const refused = () => layOutBox({ ...box, drivers: [{ ...radiator, magnetHeightM: 0.05 }] })
    expect(refused).toThrow('no motor')
  })
})
