/** Distance and overlap of convex bodies against closed forms and against points drawn at random. */
import { describe, expect, it } from 'vitest'
import { drum, polytope } from '../../src/domain/box/solids/solids.ts'
import {
  convexDistance,
  overlapDepth,
  type Vector3,
  vector,
  wayOutByAxes
} from '../../src/numeric/geometry/convex-distance.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

const block = (from: Vector3, size: Vector3) =>
  polytope(
    [0, 1].flatMap(i =>
      [0, 1].flatMap(j => [0, 1].map(k => vector(from.x + i * size.x, from.y + j * size.y, from.z + k * size.z)))
    ),
    [vector(1, 0, 0), vector(0, 1, 0), vector(0, 0, 1)]
  )
const cube = block(vector(0, 0, 0), vector(1, 1, 1))
const roller = (at: Vector3, along: Vector3, radius: number, length: number) =>
  drum(
    { centre: at, along, radius },
    {
      centre: vector(at.x + along.x * length, at.y + along.y * length, at.z + along.z * length),
      along,
      radius
    }
  )

describe('the distance of two bodies', () => {
  it('is that of the nearest faces, edges and corners of two blocks (Pythagoras)', () => {
    expect(convexDistance(cube, block(vector(1.2, 0.3, 0.4), vector(1, 1, 1)))).toBeCloseTo(0.2, 9)
    expect(convexDistance(cube, block(vector(1.3, 1.4, 0), vector(1, 1, 1)))).toBeCloseTo(0.5, 9)
    expect(convexDistance(cube, block(vector(2, 3, 3), vector(1, 1, 1)))).toBeCloseTo(3, 9)
    expect(convexDistance(cube, block(vector(1, 0.2, 0), vector(1, 1, 1)))).toBe(0)
  })

  it('is that of the axes less both radii for crossed and for parallel rollers (plane geometry)', () => {
    const along = roller(vector(-1, 0, 0), vector(1, 0, 0), 0.1, 2)
    expect(convexDistance(along, roller(vector(0, -1, 0.5), vector(0, 1, 0), 0.15, 2))).toBeCloseTo(0.25, 6)
    expect(convexDistance(along, roller(vector(-1, 0.3, 0.4), vector(1, 0, 0), 0.15, 2))).toBeCloseTo(0.25, 6)
    // An end against a flank: 0.6 beyond the end of the first, whose rim is 0.1 from the axis.
    expect(convexDistance(along, roller(vector(1.6, 0.5, -1), vector(0, 0, 1), 0.2, 2))).toBeCloseTo(
      Math.hypot(0.6, 0.4) - 0.2,
      6
    )
  })

  it('is that of the axis less the radius of a roller over a block, whichever comes first', () => {
    const over = roller(vector(-1, 0.5, 1.4), vector(1, 0, 0), 0.1, 3)
    expect(convexDistance(cube, over)).toBeCloseTo(0.3, 6)
    expect(convexDistance(over, cube)).toBeCloseTo(0.3, 6)
  })
})

describe('the way out along the likely directions', () => {
  it('is negative by the gap of parted blocks, nil at contact, and the overlap of one face (arithmetic)', () => {
    expect(wayOutByAxes(cube, block(vector(1.2, 0, 0), vector(1, 1, 1)))).toBeCloseTo(-0.2, 9)
    expect(wayOutByAxes(cube, block(vector(1, 0, 0), vector(1, 1, 1)))).toBeCloseTo(0, 9)
    expect(wayOutByAxes(cube, block(vector(0.9, 0.7, 0.6), vector(1, 1, 1)))).toBeCloseTo(0.1, 9)
  })
})

describe('the overlap of two bodies', () => {
  it('is the least way out: 0.1 of blocks that share 0.1 × 0.3 × 0.4', () => {
    expect(overlapDepth(cube, block(vector(0.9, 0.7, 0.6), vector(1, 1, 1)))).toBeCloseTo(0.1, 9)
  })

  it('is both radii less the distance of the axes for rollers, along them where that is less', () => {
    const along = roller(vector(-1, 0, 0), vector(1, 0, 0), 0.1, 2)
    expect(overlapDepth(along, roller(vector(-1, 0.03, 0.04), vector(1, 0, 0), 0.15, 2))).toBeCloseTo(0.2, 6)
    expect(overlapDepth(along, roller(vector(0.98, 0, 0), vector(1, 0, 0), 0.1, 2))).toBeCloseTo(0.02, 9)
  })

  it('agrees with points drawn at random on whether there is any (seeded)', () => {
    const random = randomStream(7)
    const between = (low: number, high: number) => low + (high - low) * random.uniform()
    let overlapping = 0
    for (let n = 0; n < 60; n++) {
      const [x, y, z, radius] = [between(-0.5, 1.5), between(-0.5, 1.5), between(-0.5, 1.5), between(0.1, 0.4)]
      const distance = convexDistance(cube, roller(vector(x, y, z), vector(0, 0, 1), radius, 0.5))
      let shared = 0
      for (let i = 0; i < 4000; i++) {
        const p = [random.uniform(), random.uniform(), random.uniform()] as const
        if (Math.hypot(p[0] - x, p[1] - y) < radius && p[2] > z && p[2] < z + 0.5) shared++
      }
      if (shared > 0) overlapping++
      if (shared > 0) expect(distance).toBe(0)
      if (distance > 0) expect(shared).toBe(0)
      const flat = Math.hypot(Math.max(0, -x, x - 1), Math.max(0, -y, y - 1)) - radius
      const exact = Math.hypot(Math.max(0, flat), Math.max(0, -(z + 0.5), z - 1))
      expect(distance).toBeCloseTo(exact, 5)
    }
    expect(overlapping).toBeGreaterThan(15)
  })
})
