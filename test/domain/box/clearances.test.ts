/** What is measured between driver, port and box, also where a caller puts things beside it. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'

const box: BoxRequest = {
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
  thicknessM: 0.018,
  drivers: [
    {
      cutOutDiameterM: 0.24,
      flangeDiameterM: 0.26,
      mountingDepthM: 0.12,
      magnetDiameterM: 0.15,
      centres: [{ uM: 0.3, vM: 0.2 }]
    }
  ]
}
const [driver] = box.drivers ?? []
const behind = (request: BoxRequest) =>
  layOutBox(request).result.clearances.find(({ between }) => between.includes('behind it'))

describe('clearances', () => {
  it('measure behind the motor from the outer face: 380 less the back of 18 and the depth of 120 mm (arithmetic)', () => {
    expect(behind(box)?.availableM).toBeCloseTo(0.38 - 0.018 - 0.12, 12)
  })

  it('give figures only, and a stop, for a driver or a port beside the box', () => {
    const beside = [{ uM: 0.8, vM: 2.5 }]
    const requests: BoxRequest[] = [
      { ...box, drivers: [{ ...driver, centres: beside }] },
      { ...box, port: { kind: 'round', innerDiameterM: 0.1, lengthM: 0.2, centres: beside } },
      { ...box, port: { kind: 'round', innerDiameterM: 0.1, lengthM: 0.4, elbowRadiusM: 0.1, centres: beside } }
    ]
    for (const request of requests) {
      const { result, cautions } = layOutBox(request)
      const { clearances } = result
      expect(cautions.map(({ code }) => code)).toContain('driver-hits-box')
      expect(clearances.length).toBeGreaterThan(0)
      expect(clearances.filter(({ availableM }) => !Number.isFinite(availableM))).toEqual([])
    }
    const [outside = box] = requests
    expect(behind(outside)).toBeUndefined()
  })

  it('let a tube of 100 mm lie against the side, 18 + 50 mm from the edge, and stop it 1 mm further (arithmetic)', () => {
    const hits = (uM: number) => {
      const port = {
        kind: 'round',
        innerDiameterM: 0.094,
        outerDiameterM: 0.1,
        lengthM: 0.2,
        centres: [{ uM, vM: 0.2 }]
      } as const
      const { clearances } = layOutBox({ ...box, drivers: [], port, joints: { sides: 'between' } }).result
      return clearances.filter(({ between, passes }) => between.includes('hole') && !passes)
    }
    expect(hits(0.068)).toEqual([])
    expect(hits(0.067)[0]?.availableM).toBeCloseTo(-0.001, 12)
  })
})

describe('a hole in a leaning front', () => {
  it('keeps from the lid before the board as well: 18·tan θ nearer than behind it', () => {
    const lean = Math.atan(0.12 / 0.4)
    const request: BoxRequest = {
      shape: 'wedge',
      slopedFace: 'front',
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.42, topDepthM: 0.3 },
      thicknessM: 0.018,
      drivers: [{ cutOutDiameterM: 0.282 }]
    }
    const row = layOutBox(request).result.clearances.find(({ between }) => between.includes('hole to the walls'))
    // Between floor and lid both faces are (400 − 36)/cos θ long, the outer one moved down the slope by 18·tan θ.
    const half = (0.4 - 0.036) / Math.cos(lean) / 2
    expect(row?.availableM).toBeCloseTo(half - 0.018 * Math.tan(lean) - 0.141, 6)
  })
})
