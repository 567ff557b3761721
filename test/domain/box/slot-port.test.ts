/** Slots: bends and ends against other routes to the same figure, volumes against counting cells. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { slotPath } from '../../../src/domain/box/slot/slot-path.ts'
import { heightAtMouth, slotRun } from '../../../src/domain/box/slot/slot-run.ts'
import { cornerFillM2, mitreShortening, roundedShortening } from '../../../src/domain/port/bends.ts'
import { fullWidthSlotEndM, gapEnd, gapEndTable } from '../../../src/domain/port/end-correction.ts'
import { endLengthM, lengthForTuning, tuningHz } from '../../../src/domain/port/port-length.ts'
import { signedArea } from '../../../src/numeric/geometry/polygon.ts'
import { bendLength } from '../../support/bend-elements.ts'

const rectangle = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height }
]

/** Flow length of a mitred bend by relaxation on a grid, in channel heights less its two legs: a second route. */
function relaxedCorner(cells: number): number {
  const legs = 4 * cells
  const side = legs + cells
  const open = (i: number, j: number) => i >= 0 && j >= 0 && i < side && j < side && (i < cells || j < cells)
  const u = new Float64Array(side * side).fill(0.5)
  const neighbours = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1]
  ] as const
  for (let sweep = 0; sweep < 6000; sweep++) {
    for (let i = 0; i < side; i++) {
      for (let j = 0; j < side; j++) {
        if (!open(i, j)) continue
        let [sum, weight] = [0, 0]
        for (const [di, dj] of neighbours) {
          if (open(i + di, j + dj)) [sum, weight] = [sum + (u[(i + di) * side + j + dj] as number), weight + 1]
        }
        if (i === side - 1) [sum, weight] = [sum + 2, weight + 2]
        if (j === side - 1) weight += 2
        const at = i * side + j
        u[at] = (u[at] as number) + 1.85 * (sum / weight - (u[at] as number))
      }
    }
  }
  let flow = 0
  for (let j = 0; j < cells; j++) flow += 2 * (1 - (u[(side - 1) * side + j] as number))
  return 1 / flow - (2 * legs) / cells
}

describe('bends and ends of a slot', () => {
  it('loses 2·ln2/π of its height at a square mitre (potential flow; sheet-resistor corner 0.559)', () => {
    expect(1 - mitreShortening(Math.PI / 2)).toBeCloseTo(0.5587288, 6)
  })

  it('is found again by relaxation on a grid, extrapolated', () => {
    const [coarse, fine] = [relaxedCorner(4), relaxedCorner(8)]
    const ratio = 2 ** (4 / 3)
    const limit = (ratio * fine - coarse) / (ratio - 1)
    expect(Math.abs(limit - (1 - mitreShortening(Math.PI / 2)))).toBeLessThan(0.004)
  })

  it('counts a rounded bend as finite elements do, which know the square one (roundedShortening)', () => {
    const limit = (isRound: boolean) => {
      const [coarse, fine] = [bendLength(6, isRound), bendLength(12, isRound)]
      return fine + (fine - coarse) / 3
    }
    expect(Math.abs(limit(false) - 0.5587288)).toBeLessThan(1e-3)
    expect(Math.abs(limit(true) - (1 - roundedShortening()))).toBeLessThan(1e-3)
    expect(roundedShortening()).toBeCloseTo(0.41395, 5)
    expect(roundedShortening()).toBeLessThan(0.4412712)
    // A square of 40 mm less the quarter of a disc: 1600 − 1256.6.
    expect(cornerFillM2(0.04) * 1e6).toBeCloseTo(343.4, 1)
  })

  it('takes a quarter round less of the air at each bend, and is that much longer', () => {
    const request: BoxRequest = {
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
      thicknessM: 0.018,
      port: { kind: 'slot', heightM: 0.04, lengthM: 0.572 }
    }
    const round = { ...request, port: { ...request.port, roundCorners: true } } as BoxRequest
    const [sharp, filled] = [request, round].map(each => layOutBox(each).result)
    expect(sharp?.port?.legs).toBe(2)
    expect(filled?.port?.cornerFill).toMatchObject({ count: 1, radiusM: 0.04, lengthM: expect.closeTo(0.604, 9) })
    // One bend of 40 mm: 343.4 mm² over 604 mm of width are 0.2074 l; 0.0273 heights are 1.093 mm.
    const lessM3 = (sharp?.volume.netM3 ?? 0) - (filled?.volume.netM3 ?? 0)
    expect(lessM3 * 1e3).toBeCloseTo(0.2074, 4)
    expect(((filled?.port?.acousticLengthM ?? 0) - (sharp?.port?.acousticLengthM ?? 0)) * 1e3).toBeCloseTo(1.093, 3)
    const wedge = {
      ...round,
      shape: 'wedge',
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.3 }
    } as const
    expect(() => layOutBox(wedge)).toThrow(/square/)
  })

  it('loses nothing when it does not turn, and more the sharper it turns', () => {
    expect(mitreShortening(0)).toBeCloseTo(0, 9)
    const losses = [20, 45, 70, 90, 110].map(degrees => mitreShortening((degrees * Math.PI) / 180))
    expect(losses).toEqual(losses.toSorted((a, b) => a - b))
  })

  // Step in a two-dimensional duct (Marcuvitz 1951, form from memory); the second column is a finite-difference solution.
  for (const [share, relaxed] of [
    [0.5, 0.2498],
    [0.25, 0.6499],
    [0.125, 1.0812],
    [0.1, 1.2221]
  ] as const) {
    it(`has an inner end of ${relaxed} heights in a space ${1 / share} times as high`, () =>
      expect(Math.abs(fullWidthSlotEndM(share, 1) / share - relaxed)).toBeLessThan(1e-3))
  }

  it('reads the gap table at its rows, between them and beyond', () => {
    for (const [gap, end] of gapEndTable) expect(gapEnd(gap)).toBeCloseTo(end, 12)
    expect(gapEnd(1.25)).toBeCloseTo((2.34 + 1.92) / 2, 12)
    expect(gapEnd(0.1)).toBe(3.39)
    expect(gapEnd(9)).toBe(1.31)
    // Another box, D/h 10, H/h 7, by finite differences: within 3 %.
    for (const [gap, other] of [
      [0.5, 3.435],
      [1, 2.376],
      [2, 1.707],
      [4, 1.301]
    ] as const) {
      expect(Math.abs(gapEnd(gap) / other - 1)).toBeLessThan(0.03)
    }
  })
})

describe('a slot that folds up the back', () => {
  const plane = { inner: rectangle(0.344, 0.364), front: 3, frontM: 0.018 }
  const run = slotRun(slotPath(plane, { heightM: 0.04, wallM: 0.018, isRound: false }, 2), 0.572)

  it('has a centre line of front + depth + rise − height and takes 18.77715 L at 604 mm (closed form; cells of 2 mm)', () => {
    const rise = run.mouth.y
    expect(0.018 + 0.344 + rise - 0.04).toBeCloseTo(0.572, 12)
    const [h, t, d, w] = [0.04, 0.018, 0.344, 0.604]
    const closed = w * (h * (d + rise - h) + t * (d - h) + t * (rise - h - t))
    expect(signedArea(run.taken) * w).toBeCloseTo(closed, 12)
    expect(closed * 1e3).toBeCloseTo(18.77715, 4)
    expect(run.acousticM).toBeCloseTo(0.572 - 0.4412712 * 0.04, 6)
    expect(run.gapM).toBeCloseTo(0.364 - rise, 5)
    expect(heightAtMouth(plane, run)).toBeCloseTo(0.344, 6)
  })

  it('has plates that fill the space between channel and air', () => {
    const plates = run.plates.reduce((sum, { corners }) => sum + Math.abs(signedArea(corners)), 0)
    expect(plates).toBeCloseTo(signedArea(run.taken) - signedArea(run.channel), 12)
  })
})

const driver = {
  count: 2,
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.165,
  magnetDiameterM: 0.2,
  magnetHeightM: 0.06,
  displacementM3: 2e-3,
  massKg: 9
}

/** A seat that leans by 20°, a shelf at 460 mm: two drivers and a folded slot. */
const wedge: BoxRequest = {
  shape: 'wedge',
  slopeDeg: 20,
  slopedFace: 'back',
  netVolumeM3: 0.085,
  limits: { widthM: 1.05, heightM: 0.46, depthM: 0.55 },
  thicknessM: 0.018,
  frontLayers: 2,
  drivers: [driver],
  port: { kind: 'slot', heightM: 0.045, widthM: 0.4, tuningHz: 33 }
}

describe('a wedge with two drivers and a folded slot', () => {
  const { result } = layOutBox(wedge)
  const { volume, port, outer } = result

  it('closes its balance within half a per cent of the volume asked for', () => {
    expect(Math.abs(volume.netM3 / 0.085 - 1)).toBeLessThan(0.005)
    expect(port?.legs).toBe(2)
    expect(result.clearances.filter(({ passes }) => !passes)).toEqual([])
  })

  it('keeps the tuning after rounding to a millimetre (Helmholtz worked out here)', () => {
    const area = 0.4 * 0.045
    const effective = (port?.acousticLengthM ?? 0) + 1.463 * Math.sqrt(area / Math.PI)
    const tuned = (343.21 / (2 * Math.PI)) * Math.sqrt(area / (effective * volume.netM3))
    expect(port?.tuningHz).toBeCloseTo(tuned, 3)
    expect(Math.abs(tuned / 33 - 1)).toBeLessThan(0.003)
    expect(((port?.lengthM ?? 0) * 1e3) % 1).toBeCloseTo(0, 6)
  })

  it('holds the air that counting seeded random points finds', () => {
    const slope = Math.tan((20 * Math.PI) / 180)
    const cos = Math.cos((20 * Math.PI) / 180)
    const [w, h, d, t] = [outer.widthM, outer.heightM, outer.depthM, 0.018]
    const along = (port?.lengthM ?? 0) - 0.036
    // The corner of the centre line on the floor, then up the back, which leans forward.
    const back = (z: number) => d - z * slope - t / cos
    const middle = t + 0.045 / 2
    const cornerY = back(middle) - 0.045 / 2 / cos
    const rise = along - (cornerY - 0.036)
    let state = 4711
    const random = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0
      return state / 2 ** 32
    }
    const inSlot = (x: number, y: number, z: number) => {
      if (x > t + 0.4 + 0.018) return false
      const fromBack = (back(z) - y) * cos
      const upBack = (z - middle) * cos - (y - cornerY) * Math.sin((20 * Math.PI) / 180)
      return z < t + 0.063 || (fromBack < 0.063 && upBack < rise)
    }
    let hits = 0
    const trials = 600_000
    for (let i = 0; i < trials; i++) {
      const [x, y, z] = [random() * w, random() * d, random() * h]
      const inside = x > t && x < w - t && z > t && z < h - t && y > 0.036 && y < back(z)
      if (inside && !inSlot(x, y, z)) hits++
    }
    const counted = (hits / trials) * w * d * h - 4e-3
    expect(Math.abs(volume.netM3 / counted - 1)).toBeLessThan(0.006)
  })

  it('lists every row of the subtraction and how it is known', () => {
    expect(volume.rows.map(({ item, known }) => [item, known])).toEqual([
      ['drivers', 'given'],
      ['ports', 'computed']
    ])
    expect(volume.grossM3 - volume.rows.reduce((sum, row) => sum + row.volumeM3, 0)).toBeCloseTo(volume.netM3, 12)
  })
})

describe('a slot in the wrong place', () => {
  const box = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 }
  const code = (request: BoxRequest) => {
    try {
      layOutBox(request)
      return 'laid out'
    } catch (error) {
      return (error as { code: string }).code
    }
  }

  it('is refused when its length falls between two bends, or when it is wider than the box', () => {
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, lengthM: 0.36 } })).toBe('no-solution')
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, lengthM: 3 } })).toBe('no-solution')
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, lengthM: 0.3, widthM: 0.7 } })).toBe('no-solution')
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, lengthM: 0.3, widthM: 0.6 } })).toBe('no-solution')
  })

  it('is refused without a length, with two, or with a tuning that the board alone overshoots', () => {
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04 } })).toBe('missing-input')
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, lengthM: 0.3, tuningHz: 40 } })).toBe(
      'conflicting-input'
    )
    expect(code({ ...box, port: { kind: 'slot', heightM: 0.04, tuningHz: 300 } })).toBe('no-solution')
  })

  it('is refused along the side of a wedge and along a side that the front covers', () => {
    const side = { kind: 'slot', heightM: 0.04, lengthM: 0.3, along: 'left' } as const
    expect(code({ ...box, port: side })).toBe('laid out')
    expect(code({ ...box, port: side, joints: { sides: 'between' } })).toBe('conflicting-input')
    expect(code({ ...box, shape: 'wedge', slopeDeg: 10, port: side })).toBe('conflicting-input')
  })
})

it('gives the length for a tuning and the tuning for that length', () => {
  const opening = { areaM2: 0.012, count: 2, endFactor: 1.463 }
  const lengthM = lengthForTuning(opening, 36, 0.07, 343.21)
  const effectiveM = lengthM + endLengthM(opening.areaM2, opening.endFactor)
  expect(tuningHz(effectiveM, 0.07, opening, 343.21)).toBeCloseTo(36, 10)
})

describe('a straight slot in a box with a sloped front', () => {
  const wedge = (topDepthM: number, lengthM: number): BoxRequest => ({
    shape: 'wedge',
    slopedFace: 'front',
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.42, topDepthM },
    thicknessM: 0.018,
    port: { kind: 'slot', heightM: 0.04, lengthM }
  })

  it('finds its place at 0.3° as at 18°, in one leg', () => {
    for (const topDepthM of [0.418, 0.29]) {
      for (const lengthM of [0.15, 0.25, 0.32]) {
        expect(layOutBox(wedge(topDepthM, lengthM)).result.port).toMatchObject({ legs: 1, lengthM })
      }
    }
  })

  it('keeps from the back what the floor leaves there (trigonometry)', () => {
    const slope = Math.atan2(0.42 - 0.29, 0.4)
    const { result } = layOutBox(wedge(0.29, 0.25))
    // Outer face of the front at the height of the centre line: 38 mm above the floor, set back by 38·tan(slope).
    const from = 0.038 * Math.tan(slope)
    expect(result.port?.mouthGapM).toBeCloseTo(0.42 - 0.018 - from - 0.25, 6)
  })

  it('still refuses one that is longer than the box is deep', () => {
    expect(() => layOutBox(wedge(0.29, 0.39))).toThrow(expect.objectContaining({ code: 'no-solution' }))
  })
})

describe('a last leg shorter than the plate before it', () => {
  it('is laid with another number of legs or refused, never with a plate of less than nothing', () => {
    const request = (lengthM: number) =>
      ({
        shape: 'wedge',
        slopedFace: 'back',
        outer: { widthM: 0.856, heightM: 0.402, depthM: 0.311, topDepthM: 0.268 },
        thicknessM: 0.018,
        frontLayers: 2,
        port: { kind: 'slot', heightM: 0.032, lengthM }
      }) as const
    let laid = 0
    for (let mm = 250; mm < 420; mm++) {
      try {
        const { panels } = layOutBox(request(mm / 1e3)).result
        const outlines = panels.filter(({ role }) => role === 'port-wall').map(({ outline }) => outline)
        for (const outline of outlines) {
          const area = outline.reduce((sum, { uM, vM }, i) => {
            const next = outline[(i + 1) % outline.length] ?? { uM: 0, vM: 0 }
            return sum + (uM * next.vM - next.uM * vM) / 2
          }, 0)
          expect(area).toBeGreaterThan(0)
        }
        laid++
      } catch (error) {
        expect(error).toMatchObject({ code: 'no-solution' })
      }
    }
    expect(laid).toBeGreaterThan(100)
  })
})

describe('the cheek of a slot with bends', () => {
  const cheeksOf = (lengthM: number, more: object = {}) =>
    layOutBox({
      outer: { widthM: 0.96, heightM: 0.42, depthM: 0.42 },
      thicknessM: 0.018,
      port: { kind: 'slot', widthM: 0.4, heightM: 0.04, lengthM },
      ...more
    }).result.panels.filter(({ name }) => name.startsWith('port cheek'))

  it('is a strip a leg, 40 mm wide: the first 384 mm to the back, the second 238 − 40 from there up', () => {
    const sizes = cheeksOf(0.6).map(({ lengthM, widthM }) => [lengthM, widthM].map(size => Math.round(size * 1e4) / 10))
    // Inside 384 × 384. Its middle takes 18 + 364 mm to the bend, which leaves 218 above 20: the mouth is 238 above the floor.
    expect(sizes).toEqual([
      [384, 40],
      [198, 40]
    ])
  })

  it('is as large as the channel (cheekStrips), whatever its bends (shoelace on the outline, walls that lean)', () => {
    for (const [lengthM, legs, more] of [
      [0.3, 1, {}],
      [0.6, 2, {}],
      [0.9, 3, {}],
      [
        0.65,
        2,
        { shape: 'wedge', slopedFace: 'back', outer: { widthM: 0.96, heightM: 0.42, depthM: 0.42, topDepthM: 0.32 } }
      ]
    ] as const) {
      const strips = cheeksOf(lengthM, more)
      expect(strips).toHaveLength(legs)
      const areaM2 = strips.reduce((sum, { massKg, thicknessM }) => sum + massKg / 750 / thicknessM, 0)
      // A bend at right angles takes the square of the height once; the middle line counts half of each of its sides.
      if (Object.keys(more).length === 0) expect(areaM2).toBeCloseTo(0.04 * (lengthM - 0.018), 6)
      for (const { outline } of strips) expect(outline).toHaveLength(4)
    }
  })
})
