/** Tubes that turn once, by arithmetic on a rectangular box. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'

const box: BoxRequest = {
  outer: { widthM: 0.9, heightM: 0.4, depthM: 0.38 },
  thicknessM: 0.018,
  port: {
    kind: 'round',
    innerDiameterM: 0.1,
    outerDiameterM: 0.106,
    elbowRadiusM: 0.08,
    lengthM: 0.5,
    centres: [{ uM: 0.2, vM: 0.182 }]
  }
}
const available = (request: BoxRequest, between: string) =>
  layOutBox(request).result.clearances.find(row => row.between === between)?.availableM

describe('a tube with an elbow', () => {
  it('goes in until its bend keeps 20 mm from the back, then towards the longer side', () => {
    const first = 0.344 - 0.08 - 0.053 - 0.02
    const second = 0.5 - 0.018 - (Math.PI / 2) * 0.08 - first
    expect(available(box, 'port: bend to the wall behind it')).toBeCloseTo(0.02, 9)
    expect(available(box, 'port: inner mouth to the wall it faces')).toBeCloseTo(0.9 - 0.018 - 0.2 - 0.08 - second, 9)
  })

  it('takes its whole outer cylinder along the centre line (Pappus)', () => {
    const { volume } = layOutBox(box).result
    expect(volume.displaced.portsM3).toBeCloseTo((Math.PI / 4) * 0.106 ** 2 * 0.482, 12)
  })

  it('is stopped when the bend alone is longer than the tube', () => {
    const port = { ...(box.port as object), lengthM: 0.1 } as NonNullable<BoxRequest['port']>
    const codes = layOutBox({ ...box, port }).cautions.map(({ code }) => code)
    expect(codes).toContain('driver-hits-box')
  })
})

describe('the bend of an elbow (elbowRoute)', () => {
  it('of R 100 mm counts 157.08 mm of the length', () => {
    const bent = { ...box, port: { ...(box.port as object), elbowRadiusM: 0.1 } as NonNullable<BoxRequest['port']> }
    const first = 0.344 - 0.1 - 0.053 - 0.02
    const second = 0.5 - 0.018 - 0.15708 - first
    expect(available(bent, 'port: inner mouth to the wall it faces')).toBeCloseTo(0.9 - 0.018 - 0.2 - 0.1 - second, 6)
  })
})
