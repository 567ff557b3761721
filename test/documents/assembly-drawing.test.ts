/** Pictures of the steps of assembly, and the order in which things hide each other, held against rays. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import { drawBox } from '../../src/documents/box/draw-box.ts'
import { farthestFirst, nearer } from '../../src/documents/box/seen-order.ts'
import { block } from '../../src/domain/box/solids/solids.ts'
import { cross, dot, minus, plus, unit, type Vector3, vector } from '../../src/numeric/geometry/convex-distance.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'
import { tenBoxes } from '../support/ten-boxes.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

interface Brick {
  readonly middle: Vector3
  readonly halves: readonly { readonly along: Vector3; readonly half: number }[]
}

/** Where a ray enters a brick, slab by slab; undefined where it passes. */
function entry({ middle, halves }: Brick, from: Vector3, along: Vector3): number | undefined {
  let [low, high] = [-Infinity, Infinity]
  for (const { along: axis, half } of halves) {
    const [start, slope] = [dot(minus(from, middle), axis), dot(along, axis)]
    if (Math.abs(slope) < 1e-12) {
      if (Math.abs(start) > half) return undefined
      continue
    }
    const [a, b] = [(-half - start) / slope, (half - start) / slope]
    low = Math.max(low, Math.min(a, b))
    high = Math.min(high, Math.max(a, b))
  }
  return high > low ? low : undefined
}

describe('what hides what', () => {
  const random = randomStream(12)
  const any = () => vector(random.uniform() - 0.5, random.uniform() - 0.5, random.uniform() - 0.5)
  const brick = (): Brick => {
    const one = unit(any()) ?? vector(1, 0, 0)
    const two = unit(cross(one, any())) ?? vector(0, 1, 0)
    const axes = [one, two, cross(one, two)]
    return { middle: any(), halves: axes.map(along => ({ along, half: 0.02 + 0.2 * random.uniform() })) }
  }
  const eye = unit(vector(0.4, -0.72, 0.62)) as Vector3

  it('is what a ray from the eye meets first, wherever it meets both (seeded)', () => {
    let judged = 0
    for (let n = 0; n < 4000; n++) {
      const [a, b] = [brick(), brick()]
      const order = nearer(block(a.middle, a.halves), block(b.middle, b.halves), eye)
      if (order === 0) continue
      for (let ray = 0; ray < 20; ray++) {
        const from = plus(plus(a.middle, any(), 0.4), eye, 5)
        const [first, second] = [a, b].map(each => entry(each, from, vector(-eye.x, -eye.y, -eye.z)))
        if (first === undefined || second === undefined) continue
        judged++
        expect(Math.sign(first - second)).toBe(order)
      }
    }
    expect(judged).toBeGreaterThan(300)
  })

  it('draws a stack from the lowest up when it is seen from above', () => {
    const up = unit(vector(0.1, -0.2, 1)) as Vector3
    const layer = (z: number) => {
      const halves = [vector(1, 0, 0), vector(0, 1, 0), vector(0, 0, 1)].map((along, i) => ({
        along,
        half: i === 2 ? 0.01 : 0.3
      }))
      return { name: z, pieces: [block(vector(0, 0, z), halves)], left: 0, right: 1, low: 0, high: 1 }
    }
    expect(farthestFirst([0.06, 0, 0.04, 0.02].map(layer), up).map(({ name }) => name)).toEqual([0, 0.02, 0.04, 0.06])
  })
})

describe('pictures of assembly', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`has one for each step, well-formed, what comes in a colour of its own: ${name}`, () => {
      const { box, drawings, cutPlan } = drawBox({ box: request as BoxRequest, show: 'assembly' }).result
      expect(cutPlan).toBeUndefined()
      expect(drawings.map(drawing => drawing.name)).toEqual(
        box.assembly.steps.map(({ parts }, index) => `${index + 1}  ${parts.join(' + ')}`)
      )
      for (const { svg, subject } of drawings) {
        expect(subject).toBe('assembly-step')
        expect(complaintsAboutXml(svg)).toEqual([])
        expect(svg).toContain('fill="#c4d9e6"')
        expect(svg).not.toContain('NaN')
      }
    })
  }
})

describe('what a maker looks for in the pictures', () => {
  const NEW = '#c4d9e6'
  const CONE = '#a3c1d3'
  const drawingsOf = (name: string) => drawBox({ box: tenBoxes[name] as BoxRequest, show: 'assembly' }).result.drawings
  type Shape = { readonly fill: string; readonly xs: readonly number[]; readonly area: number }

  function shapesOf(svg: string): readonly Shape[] {
    return [...svg.matchAll(/<path d="([^"]*)" fill="([^"]*)"/g)].map(([, d = '', fill = '']) => {
      const [outline = ''] = d.split('Z')
      const points = [...outline.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
      const twice = points.reduce((sum, [x, y], i) => {
        const [nx, ny] = points[(i + 1) % points.length] ?? [x, y]
        return sum + x * ny - nx * y
      }, 0)
      return { fill, xs: points.map(([x]) => x), area: Math.abs(twice) / 2 }
    })
  }
  const width = ({ xs }: Shape) => Math.max(...xs) - Math.min(...xs)
  const widest = (svg: string, fill: string) =>
    Math.max(...shapesOf(svg).flatMap(each => (each.fill === fill ? [width(each)] : [])))

  // The eye's right is (0.72, 0.4, 0)/0.8237; a disc that faces −y reaches √(1 − 0.4856²) = 0.8742 of its radius along it.
  const SHARE = 0.8742

  it('shows a driver with its flange flush where that is sunk, and the mouth of its cone in it (by hand)', () => {
    for (const name of ['leaning back, two fronts, sunk flanges', 'slot beside a cheek, braced']) {
      const { svg, scale } = drawingsOf(name).at(-1) as { svg: string; scale: number }
      // A flange before its board is seen 6 mm thick as well.
      const thick = /sunk/.test(name) ? 0 : 6 * 0.4856
      expect(widest(svg, NEW)).toBeCloseTo((312 * SHARE + thick) / scale, 1)
      expect(widest(svg, CONE)).toBeCloseTo((0.9 * 282 * SHARE) / scale, 1)
    }
  })

  it('shows a tube open', () => {
    const { svg, scale } = drawingsOf('elbow, cup and inner amplifier').at(-1) as { svg: string; scale: number }
    const bores = shapesOf(svg).filter(each => Math.abs(width(each) - (100 * SHARE) / scale) < 0.05)
    // The end of the tube, and upon it the dark of its bore.
    expect(bores.at(-1)?.fill).toBe('#5a5d5f')
  })

  it('shows some of the face of every wall that comes, also of a hexagon', () => {
    const seenOf = (name: string) => drawingsOf(name).filter(({ name: step }) => /wall|front|back/.test(step))
    const steps = seenOf('mitred hexagon')
    expect(steps.length).toBe(6)
    for (const { name, svg, scale } of steps) {
      const faces = shapesOf(svg).flatMap(({ fill, area }) => (fill === NEW ? [area] : []))
      expect([name, Math.max(...faces) > (0.15 * 0.8 * 350 * 364) / scale ** 2]).toEqual([name, true])
    }
  })
})
