/** /v1/boxes/panels as a caller sees it. */
import { describe, expect, it } from 'vitest'
import { post } from '../support/call.ts'

const path = '/v1/boxes/panels?digits=full'

describe('box panels over HTTP', () => {
  it('cuts a plain box by the joints of this service (arithmetic)', async () => {
    const { body } = await post(path, {
      outer: { widthMm: 700, heightMm: 300, depthMm: 450 },
      thicknessMm: 20,
      board: { densityKgPerM3: 700 }
    })
    const sizes = body.result.panels.map((p: Record<string, number>) => [p.name, p.quantity, p.lengthMm, p.widthMm])
    expect(sizes).toEqual([
      ['top', 1, 700, 450],
      ['bottom', 1, 700, 450],
      ['front', 1, 700, 260],
      ['back', 1, 700, 260],
      ['side', 2, 410, 260]
    ])
    const area = 2 * 0.7 * 0.45 + 2 * 0.7 * 0.26 + 2 * 0.41 * 0.26
    expect(body.result.boardAreaM2).toBeCloseTo(area, 12)
    expect(body.result.massKg).toBeCloseTo(area * 0.02 * 700, 9)
    expect(body.result.volume.grossL).toBeCloseTo(660 * 260 * 410 * 1e-6, 9)
  })

  it('takes one board off the sides for a second front (arithmetic)', async () => {
    const { body } = await post(path, {
      outer: { widthMm: 700, heightMm: 300, depthMm: 450 },
      thicknessMm: 20,
      frontLayers: 2
    })
    const sizes = body.result.panels.map((p: Record<string, number>) => [p.name, p.quantity, p.lengthMm, p.widthMm])
    expect(sizes).toContainEqual(['front', 2, 700, 260])
    expect(sizes).toContainEqual(['side', 2, 390, 260])
  })

  it('subtracts drivers, braces and the outer cylinder of a tube from a wedge (arithmetic)', async () => {
    const { body } = await post(path, {
      shape: 'wedge',
      outer: { widthMm: 640, heightMm: 400, depthMm: 380, topDepthMm: 250 },
      thicknessMm: 18,
      port: { kind: 'round', innerDiameterMm: 100, outerDiameterMm: 106, insideLengthMm: 200 },
      displacement: { driversL: 2.5, bracesL: 0.75 }
    })
    const { volume } = body.result
    expect(volume.grossL).toBeCloseTo(61.13606877, 7)
    const tube = ((Math.PI / 4) * 106 ** 2 * 200) / 1e6
    expect(volume.displaced.portsL).toBeCloseTo(tube, 9)
    expect(volume.netL).toBeCloseTo(61.13606876714 - 2.5 - 0.75 - tube, 7)
  })

  it('meets a net volume inside its limits within half a per cent, on whole millimetres', async () => {
    const limits = { widthMm: 900, heightMm: 420, depthMm: 500 }
    const driver = { count: 2, cutOutDiameterMm: 232, flangeDiameterMm: 260, mountingDepthMm: 140, displacementL: 1.4 }
    for (const strategy of ['balanced', 'lowest', 'shallowest', 'narrowest']) {
      const { body } = await post(path, { netVolumeL: 70, limits, strategy, thicknessMm: 18, drivers: [driver] })
      const { outer, volume } = body.result
      expect(Math.abs(volume.errorPercent)).toBeLessThan(0.5)
      expect(Math.abs(volume.netL / 70 - 1)).toBeLessThan(0.005)
      for (const size of ['widthMm', 'heightMm', 'depthMm'] as const) {
        expect(Number.isInteger(outer[size]), `${strategy} ${size} ${outer[size]}`).toBe(true)
        expect(outer[size]).toBeLessThanOrEqual(limits[size])
      }
    }
  })

  it('says which limit is in the way and how much would fit', async () => {
    const limits = { widthMm: 500, heightMm: 300, depthMm: 300 }
    const { status, body } = await post(path, { netVolumeL: 60, limits, thicknessMm: 18 })
    expect(status).toBe(422)
    expect(body.code).toBe('no-solution')
    const most = (464 * 264 * 264) / 1e6
    expect(body.detail).toContain(`${Number(most.toPrecision(4))} L`)
    const deep = await post(path, {
      netVolumeL: 30,
      limits: { widthMm: 500, heightMm: 400, depthMm: 150 },
      thicknessMm: 18,
      drivers: [{ cutOutDiameterMm: 232, mountingDepthMm: 180 }]
    })
    expect(deep.body.errors[0].pointer).toBe('/limits/depthMm')
    expect(deep.body.errors[0].bounds.minimum).toBeCloseTo(218, 9)
  })

  it('refuses what does not determine a box', async () => {
    const code = async (request: object) => (await post(path, request)).body.code
    expect(await code({ thicknessMm: 18 })).toBe('missing-input')
    expect(await code({ thicknessMm: 18, outer: { widthMm: 400, heightMm: 400 } })).toBe('missing-input')
    expect(await code({ thicknessMm: 18, shape: 'wedge', outer: { widthMm: 400, heightMm: 400, depthMm: 400 } })).toBe(
      'missing-input'
    )
    expect(await code({ thicknessMm: 18, shape: 'prism', netVolumeL: 30 })).toBe('missing-input')
    expect(await code({ thicknessMm: 18, outer: { widthMm: 400, heightMm: 400, depthMm: 400 }, slopeDeg: 10 })).toBe(
      'conflicting-input'
    )
    expect(await code({ thicknessMm: 60, outer: { widthMm: 100, heightMm: 400, depthMm: 400 } })).toBe('no-solution')
  })
})
