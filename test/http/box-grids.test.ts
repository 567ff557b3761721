/** Ordinary questions about boxes that can be built and about boxes that cannot: each is answered or refused, none is a fault of ours. */
import { describe, expect, it } from 'vitest'
import { post } from '../support/call.ts'

const path = '/v1/boxes/panels'
const board = 18
const driver = { cutOutDiameterMm: 282, mountingDepthMm: 165 }

const sizes = [560, 640, 720].flatMap(widthMm =>
  [300, 360, 400, 440].flatMap(heightMm => [20, 30, 40, 55].map(netVolumeL => ({ widthMm, heightMm, netVolumeL })))
)

describe('two sizes given, the third from the volume', () => {
  // By hand: a motor 165 mm deep wants 20 mm of air behind it and the back board, whatever the volume.
  const leastDepthMm = driver.mountingDepthMm + 20 + board
  const insideL = (...outerMm: readonly number[]) => outerMm.reduce((litres, mm) => litres * (mm - 2 * board), 1e-6)

  for (const { widthMm, heightMm, netVolumeL } of sizes) {
    it(`${widthMm} × ${heightMm} mm for ${netVolumeL} L`, async () => {
      const { status, body } = await post(path, {
        outer: { widthMm, heightMm },
        netVolumeL,
        thicknessMm: board,
        drivers: [driver]
      })
      const leastL = insideL(widthMm, heightMm, leastDepthMm)
      if (leastL > 1.005 * netVolumeL) {
        expect(status).toBe(422)
        expect(body.errors).toMatchObject([{ pointer: '/netVolumeL', code: 'no-solution' }])
        expect(body.errors[0].bounds.minimum).toBeCloseTo(leastL, 4)
        expect(body.detail).toContain(`depth of at least ${leastDepthMm} mm`)
        return
      }
      expect(status).toBe(200)
      const { outer, volume, clearances } = body.result
      expect(outer).toMatchObject({ widthMm, heightMm })
      expect(insideL(widthMm, heightMm, outer.depthMm)).toBeCloseTo(volume.netL, 3)
      expect(Math.abs(volume.netL / netVolumeL - 1)).toBeLessThan(0.005)
      // A hole of 282 mm in a front that is 264 mm high inside: said with the amount, 9 mm at either edge.
      const failed = clearances.filter(({ passes }: { passes: boolean }) => !passes)
      expect(failed.length > 0).toBe(heightMm - 2 * board < driver.cutOutDiameterMm)
    })
  }

  it('no driver, and a volume below what a hand inside needs', async () => {
    const { status, body } = await post(path, {
      outer: { widthMm: 640, heightMm: 300 },
      netVolumeL: 1,
      thicknessMm: board
    })
    expect(status).toBe(422)
    expect(body.errors).toMatchObject([{ pointer: '/netVolumeL', code: 'no-solution' }])
    // 60 mm clear: 604 × 264 × 60 mm.
    expect(body.errors[0].bounds.minimum).toBeCloseTo(9.56736, 4)
  })

  it('limits that leave one size only', async () => {
    const { status, body } = await post(path, {
      limits: { widthMm: 96, heightMm: 96, depthMm: 96 },
      netVolumeL: 0.216,
      thicknessMm: board
    })
    expect([status, body.result?.outer]).toEqual([200, { widthMm: 96, heightMm: 96, depthMm: 96 }])
  })

  it('nothing given but a volume that the driver does not go into: refused, not enlarged in silence', async () => {
    const { status, body } = await post(path, { netVolumeL: 8, thicknessMm: board, drivers: [driver] })
    expect(status).toBe(422)
    expect(body.errors).toMatchObject([{ pointer: '/netVolumeL', code: 'no-solution' }])
  })
})

describe('a wedge with a tall slot', () => {
  for (const heightMm of [60, 100, 150, 200, 250, 300, 320, 350, 380, 400, 450, 500]) {
    for (const slopeDeg of [10, 20]) {
      it(`${heightMm} mm at ${slopeDeg}°`, async () => {
        const { status, body } = await post(path, {
          shape: 'wedge',
          slopeDeg,
          netVolumeL: 85,
          thicknessMm: board,
          drivers: [{ cutOutDiameterMm: 230 }],
          port: { kind: 'slot', heightMm, lengthMm: 200 }
        })
        expect([200, 422]).toContain(status)
        if (status === 422) expect(body.errors[0].pointer).toMatch(/^\/(port\/(lengthMm|heightMm)|netVolumeL)$/)
      })
    }
  }

  it('two drivers beside it', async () => {
    const { status } = await post(path, {
      shape: 'wedge',
      slopeDeg: 20,
      netVolumeL: 85,
      thicknessMm: board,
      drivers: [{ cutOutDiameterMm: 141, count: 2 }],
      port: { kind: 'slot', heightMm: 500, lengthMm: 200 }
    })
    expect(status).toBe(422)
  })

  for (const [shape, outer] of [
    ['rectangular', { widthMm: 500, heightMm: 400, depthMm: 380 }],
    ['wedge', { widthMm: 500, heightMm: 400, depthMm: 420, topDepthMm: 300 }]
  ] as const) {
    it(`in a ${shape} box of given sizes: the greatest height is said`, async () => {
      const ask = (heightMm: number) =>
        post(path, { shape, outer, thicknessMm: board, port: { kind: 'slot', heightMm, lengthMm: 250 } })
      const { status, body } = await ask(350)
      expect(status).toBe(422)
      expect(body.errors).toMatchObject([{ pointer: '/port/heightMm', code: 'no-solution' }])
      // 400 less two boards, the plate of 18 mm and a millimetre of front over it.
      expect(body.errors[0].bounds.maximum).toBeCloseTo(345, 6)
      const lower = await ask(345)
      expect(lower.body.errors?.[0]?.pointer).not.toBe('/port/heightMm')
    })
  }
})
