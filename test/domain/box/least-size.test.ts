/** The least size of a box is the least that its own clearances let pass, worked by hand from the sheet. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

const driver = {
  cutOutDiameterM: 0.28,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.15,
  magnetDiameterM: 0.16,
  magnetHeightM: 0.05
}
const failed = (request: BoxRequest) =>
  layOutBox(request)
    .result.clearances.filter(({ passes }) => !passes)
    .map(({ between }) => between)

function refusal(request: BoxRequest): DesignError {
  try {
    layOutBox(request)
  } catch (error) {
    if (error instanceof DesignError) return error
  }
  throw new Error('was not refused')
}

describe('the least size of a box', () => {
  const one = { netVolumeM3: 0.04, thicknessM: 0.018, drivers: [driver] }

  it('keeps 15 mm from flange to edge, so 312 mm of flange in 18 mm board take 312 + 2·15 + 2·18 = 378 mm', () => {
    const limits = { widthM: 0.8, heightM: 0.378, depthM: 0.5 }
    expect(failed({ ...one, limits })).toEqual([])
    expect(refusal({ ...one, limits: { ...limits, heightM: 0.377 } }).faults[0]).toMatchObject({
      field: 'limits.heightM',
      minimum: 0.378
    })
  })

  it('keeps 25 mm between two flanges and 15 mm at their edges: 2·312 + 25 + 2·15 + 2·18 = 715 mm', () => {
    const two = { ...one, drivers: [{ ...driver, count: 2 }] }
    const limits = { widthM: 0.715, heightM: 0.378, depthM: 0.5 }
    expect(failed({ ...two, limits })).toEqual([])
    expect(refusal({ ...two, limits: { ...limits, widthM: 0.714 } }).faults[0]?.field).toBe('limits.widthM')
  })

  it('lets the upper rim of the motor pass a back that leans by 22°: 150 + 20 + 18/cos 22° + (189 + 80)·tan 22° = 298.1 mm', () => {
    const leaning: BoxRequest = { ...one, shape: 'wedge', slopedFace: 'back', slopeDeg: 22, netVolumeM3: 0.001 }
    const limits = { widthM: 0.36, heightM: 0.378 }
    const theta = (22 * Math.PI) / 180
    const leastM = 0.15 + 0.02 + 0.018 / Math.cos(theta) + (0.189 + 0.08) * Math.tan(theta)
    const refused = refusal({ ...leaning, limits: { ...limits, widthM: 0.378, depthM: 0.297 } })
    expect(refused.faults[0]).toMatchObject({ field: 'limits.depthM' })
    expect(refused.faults[0]?.minimum).toBeCloseTo(leastM, 9)
    const room = { ...limits, widthM: 0.378, depthM: 0.299 }
    const narrow = { ...leaning, netVolumeM3: 0.0216, limits: room }
    expect(failed(narrow)).toEqual([])
  })

  it.each([
    ['top', 'heightM', 0.15 + 0.02 + 0.018, 'depthM', 0.312 + 0.03 + 2 * 0.018],
    ['bottom', 'heightM', 0.15 + 0.02 + 0.018, 'depthM', 0.312 + 0.03 + 2 * 0.018],
    ['left', 'widthM', 0.15 + 0.02 + 0.018, 'depthM', 0.312 + 0.03 + 2 * 0.018],
    ['back', 'depthM', 0.15 + 0.02 + 0.018, 'heightM', 0.312 + 0.03 + 2 * 0.018]
  ] as const)('asks for the same behind and beside a driver in the %s', (face, behind, behindM, beside, besideM) => {
    const request: BoxRequest = { netVolumeM3: 0.045, thicknessM: 0.018, drivers: [{ ...driver, face }] }
    const wide = { widthM: 0.9, heightM: 0.9, depthM: 0.9 }
    for (const [size, leastM] of [
      [behind, behindM],
      [beside, besideM]
    ] as const) {
      const low = { ...request, netVolumeM3: 0.1, limits: { ...wide, [size]: leastM - 0.001 } }
      expect(refusal(low).faults[0]?.minimum).toBeCloseTo(leastM, 9)
      expect(failed({ ...request, limits: { ...wide, [size]: leastM } })).toEqual([])
    }
    expect(failed({ ...request, limits: wide })).toEqual([])
  })
})
