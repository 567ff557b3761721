/** Things inside a box against each other, whichever faces they stand on. Figures by arithmetic, and by points drawn at random. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const driver = {
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.165,
  magnetDiameterM: 0.2,
  magnetHeightM: 0.06,
  displacementM3: 2e-3,
  massKg: 9
} as const
const tube = { kind: 'round', innerDiameterM: 0.1, outerDiameterM: 0.106 } as const
const boxOf = (widthM: number, heightM: number, depthM: number, rest: Partial<BoxRequest>): BoxRequest => ({
  outer: { widthM, heightM, depthM },
  thicknessM: 0.018,
  ...rest
})
const failing = (request: BoxRequest) => layOutBox(request).result.clearances.filter(({ passes }) => !passes)
const between = (request: BoxRequest, ...names: readonly string[]) =>
  failing(request).find(row => names.every(name => row.between.includes(name)))?.availableM
const stops = (request: BoxRequest) => layOutBox(request).cautions.filter(({ level }) => level === 'stop')

describe('two drivers on walls that face each other', () => {
  it('stand 2 × 165 − 300 = 30 mm in each other, left and right as well as front and back', () => {
    for (const [size, faces] of [
      [
        [0.3, 0.4, 0.6],
        ['left', 'right']
      ],
      [
        [0.6, 0.4, 0.3],
        ['front', 'back']
      ]
    ] as const) {
      const drivers = faces.map(face => ({ ...driver, face }))
      const request = boxOf(size[0], size[1], size[2], { drivers })
      expect(between(request, 'driver 1, motor', 'driver 2, motor')).toBeCloseTo(-0.03, 9)
      expect(stops(request).map(({ code }) => code)).toContain('driver-hits-box')
    }
  })

  it('clear each other by 25 mm in 355 mm, more than the 20 mm that are wanted', () => {
    const drivers = [
      { ...driver, face: 'left' as const },
      { ...driver, face: 'right' as const }
    ]
    expect(failing(boxOf(0.355, 0.4, 0.6, { drivers }))).toEqual([])
    expect(between(boxOf(0.345, 0.4, 0.6, { drivers }), 'motor')).toBeCloseTo(0.015, 9)
  })
})

describe('a tube and a driver', () => {
  // Without a place of its own it would step aside.
  const centres = [{ uM: 0.152, vM: 0.2 }]
  const port = { ...tube, lengthM: 0.4, face: 'left' as const, centres }

  it('share air where the tube runs from the side under the motor: 165 − (170 − 53) = 48 mm', () => {
    const request = boxOf(0.64, 0.4, 0.34, { drivers: [driver], port })
    expect(between(request, 'driver', 'port')).toBeCloseTo(-(0.165 - (0.17 - 0.053)), 6)
  })

  it('share it behind an elbow: its second leg starts 156 mm behind the front, the motor ends at 165', () => {
    const elbow = { ...tube, lengthM: 0.5, elbowRadiusM: 0.08, centres: [{ uM: 0.11, vM: 0.18 }] }
    const request = boxOf(0.64, 0.4, 0.3, {
      drivers: [{ ...driver, centres: [{ uM: 0.4, vM: 0.18 }] }],
      port: elbow
    })
    // The bend keeps 20 mm from the back: 282 − 20 − 106 = 156.
    expect(between(request, 'driver', 'port')).toBeCloseTo(-0.009, 6)
  })

  it('agree with points drawn at random on whether they share air (seeded)', () => {
    const random = randomStream(31)
    const range = (low: number, high: number) => low + (high - low) * random.uniform()
    let shared = 0
    for (let n = 0; n < 40; n++) {
      const depthM = range(0.3, 0.5)
      const [vM, lengthM] = [range(0.12, 0.28), range(0.2, 0.5)]
      const request = boxOf(0.64, 0.4, depthM, {
        joints: { sides: 'over' },
        drivers: [{ ...driver, centres: [{ uM: 0.302, vM: 0.182 }] }],
        port: { ...port, lengthM, centres: [{ uM: depthM / 2, vM }] }
      })
      // Joints `over`: the left side is seen from outside, u from the rear; the front starts at x = 18, z = 18.
      const [motorX, motorZ, tubeY, tubeZ] = [0.018 + 0.302, 0.018 + 0.182, depthM / 2, vM]
      let hits = 0
      for (let i = 0; i < 20000; i++) {
        const [x, dy, dz] = [range(0.018, lengthM), range(-0.053, 0.053), range(-0.053, 0.053)]
        if (Math.hypot(dy, dz) > 0.053) continue
        const [y, z] = [tubeY + dy, tubeZ + dz]
        const off = Math.hypot(x - motorX, z - motorZ)
        // Flat motor of 100 mm radius from 105 to 165 mm, before it a cone that widens to the hole.
        const radius = y > 0.105 ? 0.1 : 0.1 + (0.041 * (0.105 - y)) / 0.105
        if (y < 0.165 && y > 0.018 && off < radius) hits++
      }
      const gap = between(request, 'driver', 'port') ?? 1
      if (hits > 0) shared++
      if (hits > 0) expect(gap).toBeLessThan(0)
      if (gap < -0.004) expect(hits).toBeGreaterThan(0)
      if (gap < 0) expect(stops(request).length).toBeGreaterThan(0)
    }
    expect(shared).toBeGreaterThan(5)
    expect(shared).toBeLessThan(35)
  })
})

describe('in a box with a divider', () => {
  const divider = { fromFrontM: 0.2 }

  it('a tube of the front chamber meets the divider, 200 − 132 = 68 mm before its mouth', () => {
    const centres = [{ uM: 0.32, vM: 0.2 }]
    const port = { ...tube, lengthM: 0.15, chamber: 'front' as const, centres }
    expect(between(boxOf(0.64, 0.4, 0.6, { divider, port }), 'inner mouth')).toBeCloseTo(0.068, 9)
    const long = { ...port, lengthM: 0.3 }
    expect(between(boxOf(0.64, 0.4, 0.6, { divider, port: long }), 'inner mouth')).toBeCloseTo(-0.082, 9)
    expect(stops(boxOf(0.64, 0.4, 0.6, { divider, port: long })).length).toBeGreaterThan(0)
  })

  it('a tube from the side is cut by it where it stands astride: 26 mm on one side, its radius of 53 less', () => {
    const port = {
      ...tube,
      lengthM: 0.2,
      face: 'left' as const,
      centres: [{ uM: 0.6 - 0.018 - 0.218 - 0.026, vM: 0.2 }]
    }
    const over = { joints: { sides: 'over' as const }, divider, port }
    expect(between(boxOf(0.64, 0.4, 0.6, over), 'port: hole to the walls')).toBeCloseTo(0.026 - 0.053, 9)
    expect(stops(boxOf(0.64, 0.4, 0.6, over)).map(({ code }) => code)).toContain('driver-hits-box')
  })

  it('a reversed driver on it meets a tube from the front: 165 − (180 − 132) → 75 mm in their way', () => {
    const centres = [{ uM: 0.32, vM: 0.2 }]
    const port = { ...tube, lengthM: 0.15, chamber: 'front' as const, centres }
    const reversed = { ...driver, face: 'divider' as const, mount: 'reversed' as const }
    const request = boxOf(0.64, 0.4, 0.6, { divider: { fromFrontM: 0.18 }, drivers: [reversed], port })
    // Coaxial: out along the axis 132 + 165 − 180 = 117 mm, which a sideways move of 153 does not undercut, but the way out
    // past the end of the tube that stands in the motor is 15 mm from the front and 60 mm of motor: 75.
    expect(between(request, 'driver', 'port') ?? 0).toBeLessThan(-0.05)
  })

  it('frames stop at it, one in each chamber, and each takes its air from its own', () => {
    const request = boxOf(0.9, 0.4, 0.6, {
      divider,
      drivers: [{ ...driver, face: 'divider' }],
      bracing: { upperHz: 120 }
    })
    const { panels, chambers, clearances, volume } = layOutBox(request).result
    const frames = panels.filter(({ name }) => name.startsWith('brace'))
    expect(frames.length).toBeGreaterThan(0)
    for (const { name, outline, place } of frames) {
      const depth = Math.max(...outline.map(({ uM }) => uM))
      const from = place?.origin.yM ?? 0
      expect(from).toBeCloseTo(name.includes('front') ? 0.018 : 0.236, 9)
      expect(depth).toBeCloseTo(name.includes('front') ? 0.2 : 0.6 - 0.018 - 0.236, 9)
    }
    expect(clearances.filter(({ between: what }) => what.includes('brace'))).toEqual([])
    const wood = (name: string) =>
      frames
        .filter(each => each.name.includes(name))
        .reduce((sum, { massKg, quantity }) => sum + (massKg * quantity) / 750, 0)
    const front = chambers?.find(({ name }) => name === 'front')
    expect(front?.displacedM3).toBeCloseTo(wood('front'), 6)
    expect(volume.displaced.bracesM3).toBeGreaterThan(wood('front'))
  })
})

describe('braces', () => {
  it('keep clear of an elbow, whose second leg runs along the back', () => {
    const elbow = { ...tube, lengthM: 0.6, elbowRadiusM: 0.08, centres: [{ uM: 0.15, vM: 0.18 }] }
    const request = boxOf(1, 0.4, 0.38, {
      drivers: [{ ...driver, centres: [{ uM: 0.75, vM: 0.18 }] }],
      port: elbow,
      bracing: { upperHz: 200 }
    })
    expect(failing(request).filter(({ between: what }) => /brace|batten/.test(what))).toEqual([])
  })
})

describe('a driver set into the back over the second leg of a slot', () => {
  it('is stopped with the whole depth of the overlap, not with what its rims show', () => {
    const small = {
      ...driver,
      cutOutDiameterM: 0.182,
      flangeDiameterM: 0.212,
      magnetDiameterM: 0.1,
      face: 'back'
    } as const
    const request = boxOf(0.725, 0.412, 0.403, {
      drivers: [{ ...small, mountingDepthM: 0.185 }],
      port: { kind: 'slot', heightM: 0.039, lengthM: 0.647 }
    })
    // Plate and channel reach 57 mm before the back over the height that the second leg rises; the basket goes through both.
    const row = failing(request).find(({ between: what }) => what.includes('basket to the plates'))
    expect(row?.availableM ?? 0).toBeLessThan(-0.01)
    expect(stops(request).length).toBeGreaterThan(0)
  })
})

describe('a flange on a sloped front', () => {
  it('does not meet the lid, whose edge is sawn along the slope', () => {
    const flat = {
      ...driver,
      cutOutDiameterM: 0.248,
      flangeDiameterM: 0.278,
      mountingDepthM: 0.113,
      magnetDiameterM: 0.137
    }
    const request: BoxRequest = {
      shape: 'wedge',
      slopedFace: 'front',
      outer: { widthM: 0.854, heightM: 0.342, depthM: 0.404, topDepthM: 0.363 },
      thicknessM: 0.015,
      drivers: [{ ...flat, magnetHeightM: 0.034 }],
      port: { kind: 'slot', heightM: 0.042, lengthM: 0.606, widthM: 0.179 }
    }
    expect(failing(request).filter(({ between: what }) => what.includes('top'))).toEqual([])
  })
})

describe('what no box can take', () => {
  const box = (own: object, thicknessM = 0.018) => ({
    ...boxOf(0.64, 0.4, 0.38, { drivers: [{ ...driver, ...own }] }),
    thicknessM
  })

  it('is refused: screws in the hole or beside the flange, a flange that falls through, a rebate with 2 mm under it', () => {
    for (const [request, field] of [
      [box({ screwCircleDiameterM: 0.28 }), 'drivers[0].screwCircleDiameterM'],
      [box({ screwCircleDiameterM: 0.311 }), 'drivers[0].screwCircleDiameterM'],
      [box({ flangeDiameterM: 0.27 }), 'drivers[0].flangeDiameterM'],
      [box({ rebateDepthM: 0.01 }, 0.012), 'drivers[0].rebateDepthM'],
      [box({ rebateDepthM: 0.02 }), 'drivers[0].rebateDepthM']
    ] as const) {
      expect(() => layOutBox(request)).toThrow(
        expect.objectContaining({ faults: [expect.objectContaining({ field })] })
      )
    }
    expect(() => layOutBox(box({ screwCircleDiameterM: 0.297, rebateDepthM: 0.012 }))).not.toThrow()
  })

  it('is stopped: an amplifier of 900 × 450 in a box of 604 × 364 inside stands 43 mm in lid and floor', () => {
    const amplifier = { widthM: 0.9, heightM: 0.45, depthM: 0.06 }
    const request = boxOf(0.64, 0.4, 0.38, { fittings: { amplifier } })
    expect(between(request, 'amplifier', 'top')).toBeCloseTo(-(0.45 - 0.364) / 2, 9)
    expect(stops(request).length).toBeGreaterThan(0)
    const small = { amplifier: { widthM: 0.3, heightM: 0.2, depthM: 0.06 } }
    expect(failing(boxOf(0.64, 0.4, 0.38, { drivers: [driver], fittings: small }))).toEqual([])
  })
})

describe('the terminal cup', () => {
  const onBack = { ...driver, face: 'back' as const }

  it('has its hole, of a usual size that is said, when no size is given', () => {
    const { result, assumed } = layOutBox(boxOf(0.64, 0.4, 0.38, { fittings: { terminal: {} } }))
    const holes = result.panels.flatMap(({ cutOuts }) => cutOuts.filter(({ purpose }) => purpose === 'terminal'))
    expect(holes).toMatchObject([{ kind: 'circle', diameterM: 0.076 }])
    expect(assumed).toContainEqual(
      expect.objectContaining({ field: 'fittings.terminal.cutOutDiameterM', value: 0.076 })
    )
  })

  it('is stopped in the hole of a driver: 60 mm from its middle they overlap by 141 + 38 − 60 = 119 mm', () => {
    const centre = { uM: 0.302 - 0.06, vM: 0.182 }
    const request = boxOf(0.64, 0.4, 0.38, {
      joints: { sides: 'between' },
      drivers: [{ ...onBack, centres: [{ uM: 0.302, vM: 0.182 }] }],
      fittings: { terminal: { centre } }
    })
    expect(between(request, 'terminal cup', 'next hole')).toBeCloseTo(-0.119, 9)
    expect(stops(request).length).toBeGreaterThan(0)
  })

  it('finds a place beside a driver by itself', () => {
    const request = boxOf(0.64, 0.4, 0.38, { drivers: [onBack], fittings: { terminal: {} } })
    expect(failing(request)).toEqual([])
  })

  it('stands clear of the motor in front of it: 200 − 36 − 147 mm leave 17, a cup of 0.1 L and 76 mm is 22 deep', () => {
    const flat = boxOf(0.64, 0.4, 0.2, { drivers: [driver], fittings: { terminal: {} } })
    expect(100e3 / ((Math.PI / 4) * 76 ** 2)).toBeGreaterThan(200 - 36 - (165 - 18))
    expect(failing(flat).filter(row => /terminal cup/.test(JSON.stringify(row)))).toEqual([])
    const [cup] = layOutBox(flat).result.panels.flatMap(({ cutOuts }) =>
      cutOuts.filter(({ purpose }) => purpose === 'terminal')
    )
    // The middle of the back is behind the middle of the front; the magnet is 200 mm wide.
    expect(Math.hypot((cup?.uM ?? 0) - 0.302, (cup?.vM ?? 0) - 0.182)).toBeGreaterThan(0.1)
  })
})

describe('the hole of a driver', () => {
  it('gives back the air of the boards it goes through: one on the left, two on a front of two', () => {
    const sizes = { ...driver, displacementM3: undefined, sdM2: 0.048 }
    const { displacementM3: _, ...open } = sizes
    const at = (face: 'front' | 'left') => {
      const request = boxOf(0.64, 0.4, 0.5, { frontLayers: 2, drivers: [{ ...open, face }] })
      return layOutBox(request).result.volume.displaced.driversM3
    }
    const hole = (Math.PI / 4) * 0.282 ** 2 * 0.018
    expect(at('left') - at('front')).toBeCloseTo(hole, 9)
    expect(at('left')).toBeCloseTo(1.957e-3, 5)
  })
})

describe('a motor behind three front boards', () => {
  it('is not said to touch the board it hangs on: 100 mm below the middle of 364 are 82 to the walls', () => {
    const shallow = { ...driver, mountingDepthM: 0.12 }
    const { clearances } = layOutBox(boxOf(0.64, 0.4, 0.38, { frontLayers: 3, drivers: [shallow] })).result
    const row = clearances.find(({ between: what }) => what.includes('motor to the walls beside'))
    expect(row?.availableM).toBeCloseTo(0.182 - 0.1, 9)
  })
})

describe('bracing', () => {
  it('never gives less when more is asked: the lowest face does not fall as the band rises', () => {
    for (const outer of [
      { widthM: 1, heightM: 0.4, depthM: 0.38 },
      { widthM: 0.94, heightM: 0.41, depthM: 0.4 },
      { widthM: 1.06, heightM: 0.43, depthM: 0.42 }
    ]) {
      const lowest = [60, 90, 100, 120, 150, 180, 200, 240].map(upperHz => {
        const request: BoxRequest = {
          outer,
          thicknessM: 0.018,
          drivers: [driver],
          bracing: { upperHz, pressurePa: 800 }
        }
        return Math.min(...layOutBox(request).result.vibration.faces.map(({ builtHz }) => builtHz))
      })
      // Half a per cent is what the choice rounds to.
      for (const [i, hz] of lowest.slice(1).entries()) expect(hz).toBeGreaterThan(0.99 * (lowest[i] ?? 0))
    }
  })

  it('does not ask for bracing where it was asked for', () => {
    const message = (bracing?: object) =>
      layOutBox(
        boxOf(1, 0.4, 0.38, { drivers: [driver], ...(bracing === undefined ? {} : { bracing }) })
      ).cautions.find(({ code }) => code === 'panel-in-band')?.message
    expect(message()).toMatch(/Bracing/)
    expect(message({ upperHz: 200 })).toMatch(/Braces alone do not reach it/)
  })
})
