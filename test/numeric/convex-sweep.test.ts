import { describe, expect, it } from 'vitest'
import { block, drum } from '../../src/domain/box/solids/solids.ts'
import {
  convexDistance,
  dot,
  unit,
  type Vector3,
  vector,
  wayOutByAxes
} from '../../src/numeric/geometry/convex-distance.ts'
import { swept } from '../../src/numeric/geometry/convex-sweep.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

const [x, y, z] = [vector(1, 0, 0), vector(0, 1, 0), vector(0, 0, 1)]
const cube = (at: Vector3) =>
  block(
    at,
    [x, y, z].map(along => ({ along, half: 0.5 }))
  )

describe('a cube of 1 moved by 2 along x', () => {
  const path = swept(cube(vector(0, 0, 0)), x, 2)

  it('reaches from −0.5 to 2.5 and stays 1 high', () => {
    expect([path.low, path.high]).toEqual([vector(-0.5, -0.5, -0.5), vector(2.5, 0.5, 0.5)])
    expect(path.support(x).x).toBe(2.5)
    expect(path.support(vector(-1, 0, 0)).x).toBe(-0.5)
  })

  it('passes a cube 1.3 beside its way at 0.3, and meets one that stands in it', () => {
    expect(convexDistance(path, cube(vector(1, 1.3, 0)))).toBeCloseTo(0.3, 9)
    expect(convexDistance(path, cube(vector(2.8, 0.4, 0)))).toBe(0)
  })
})

it('slides along a bevel without meeting it: an axis of its path parts them', () => {
  const lean = unit(vector(0, 0.3, 1)) as Vector3
  const across = vector(0, lean.z, -lean.y)
  const board = block(vector(0, 0, 0), [
    { along: x, half: 0.3 },
    { along: lean, half: 0.2 },
    { along: across, half: 0.009 }
  ])
  const beside = block(vector(across.x * 0.018, across.y * 0.018, across.z * 0.018), [
    { along: x, half: 0.3 },
    { along: lean, half: 0.2 },
    { along: across, half: 0.009 }
  ])
  expect(wayOutByAxes(swept(board, lean, 6), beside)).toBeCloseTo(0, 9)
})

it('holds every place that a body passes, drawn at random, and no more along any direction (seeded)', () => {
  const random = randomStream(7)
  const any = () => unit(vector(random.uniform() - 0.5, random.uniform() - 0.5, random.uniform() - 0.5)) ?? x
  for (let n = 0; n < 200; n++) {
    const [along, length, axis] = [any(), 3 * random.uniform(), any()]
    const body = drum(
      { centre: vector(0, 0, 0), along: axis, radius: random.uniform() },
      { centre: vector(0, 0, 0), along: axis, radius: random.uniform() }
    )
    const towards = any()
    const stops = Array.from({ length: 101 }, (_, i) => (length * i) / 100)
    const furthest = Math.max(...stops.map(s => dot(body.support(towards), towards) + s * dot(along, towards)))
    const path = swept(body, along, length)
    expect(dot(path.support(towards), towards)).toBeCloseTo(furthest, 12)
  }
})
