import { describe, expect, it } from 'vitest'
import type { Panel } from '../../../src/contract/boxes/panel.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { roundingRadius } from '../../../src/domain/box/shell/edge-rounding.ts'
import type { Direction3 } from '../../../src/domain/box/shell/panel.ts'

type Request = Parameters<typeof layOutBox>[0]
const panelsOf = (request: Request) => layOutBox(request).result.panels

const rectangular: Request = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 }
const boxes: Readonly<Record<string, Request>> = {
  rectangular,
  'sides over the ends': { ...rectangular, joints: { sides: 'over' } },
  'two front layers': { ...rectangular, frontLayers: 2 },
  wedge: {
    shape: 'wedge',
    slopedFace: 'back',
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.25 },
    thicknessM: 0.018
  },
  mitred: { ...rectangular, joints: { corners: 'mitre' } }
}

type Vector = readonly [number, number, number]
const vector = ({ x, y, z }: Direction3): Vector => [x, y, z]
const plus = (a: Vector, b: Vector, by = 1): Vector => [a[0] + by * b[0], a[1] + by * b[1], a[2] + by * b[2]]
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0]
]

interface Solid {
  readonly origin: Vector
  readonly u: Vector
  readonly v: Vector
  /** Out of the box. */
  readonly out: Vector
  readonly panel: Panel
}

/** Every placed board; the other one of a pair of sides stands mirrored. */
function solidsOf(panels: readonly Panel[], widthM: number): Solid[] {
  return panels.flatMap(panel => {
    if (panel.place === undefined) return []
    const { origin, uAxis, vAxis } = panel.place
    const [u, v] = [vector(uAxis), vector(vAxis)]
    const one: Solid = { origin: [origin.xM, origin.yM, origin.zM], u, v, out: cross(u, v), panel }
    if (panel.quantity === 1 || panel.role !== 'side') return [one]
    const mirrored = ([x, y, z]: Vector): Vector => [-x, y, z]
    const [x, y, z] = one.origin
    return [one, { ...one, origin: [widthM - x, y, z], u: mirrored(u), v: mirrored(v), out: mirrored(one.out) }]
  })
}

function holds({ origin, u, v, out, panel }: Solid, point: Vector): boolean {
  const from = plus(point, origin, -1)
  const [pu, pv, deep] = [dot(from, u), dot(from, v), -dot(from, out)]
  if (deep < 0 || deep > panel.thicknessM) return false
  return panel.outline.every((a, i) => {
    const b = panel.outline[(i + 1) % panel.outline.length] ?? a
    return (b.uM - a.uM) * (pv - a.vM) - (b.vM - a.vM) * (pu - a.uM) >= 0
  })
}

/** Points of a rounded edge: its middle on the arris, into the outer face, out of the end of the board. */
function arris({ origin, u, v, out, panel }: Solid, edge: number) {
  const a = panel.outline[edge] as Panel['outline'][number]
  const b = panel.outline[(edge + 1) % panel.outline.length] ?? a
  const length = Math.hypot(b.uM - a.uM, b.vM - a.vM)
  const [eu, ev] = [(b.vM - a.vM) / length, -(b.uM - a.uM) / length]
  const beyond = plus(plus([0, 0, 0], u, eu), v, ev)
  const middle = plus(plus(origin, u, (a.uM + b.uM) / 2), v, (a.vM + b.vM) / 2)
  return { middle, beyond, out }
}

describe('outer edges that may be rounded', () => {
  it('keep 6 mm of the board, to 12 mm at most (common practice, no source)', () => {
    expect([0.018, 0.015, 0.025, 0.008].map(roundingRadius)).toEqual([0.012, 0.009, 0.012, 0.002])
    expect(roundingRadius(0.007)).toBeUndefined()
  })

  it('are all of lid and floor and the upright ends of front and back, where the sides stand between (by hand)', () => {
    const edges = Object.fromEntries(
      panelsOf(rectangular).map(panel => [panel.name, panel.edges.map(({ edge }) => edge)])
    )
    expect(edges).toEqual({ top: [0, 1, 2, 3], bottom: [0, 1, 2, 3], front: [1, 3], back: [1, 3], side: [] })
  })

  it('are none of a mitred profile, whose seams run in the arris; two equal boards of a front stay one row', () => {
    const around = panelsOf(boxes.mitred as Request).filter(({ role }) => role !== 'side')
    expect(
      around.flatMap(({ edges }) => edges.filter(({ tiltDeg }) => tiltDeg > 0).map(edge => edge.roundingRadiusM))
    ).toEqual(Array(8).fill(undefined))
    const fronts = panelsOf(boxes['two front layers'] as Request).filter(({ role }) => role === 'front')
    expect(fronts.map(({ name, quantity }) => [name, quantity])).toEqual([['front', 2]])
  })

  it('are none where the saw is tilted', () => {
    const edges = Object.values(boxes).flatMap(request => panelsOf(request).flatMap(panel => panel.edges))
    const tilted = edges.filter(({ tiltDeg }) => tiltDeg > 0)
    expect(tilted.length).toBeGreaterThan(8)
    for (const edge of tilted) expect(edge).not.toHaveProperty('roundingRadiusM')
  })

  it('are none of the inner board of a front', () => {
    const driver = { cutOutDiameterM: 0.2, mountingDepthM: 0.1, flangeDiameterM: 0.22, rebateDepthM: 0.006 }
    const fronts = panelsOf({ ...rectangular, frontLayers: 2, drivers: [driver] }).filter(
      ({ role }) => role === 'front'
    )
    expect(fronts.map(({ name, edges }) => [name, edges.length])).toEqual([
      ['front outer', 2],
      ['front inner', 0]
    ])
  })

  for (const [name, request] of Object.entries(boxes)) {
    it(`lie bare, and the bit meets wood of one board alone: ${name}`, () => {
      const panels = panelsOf(request)
      const solids = solidsOf(panels, 0.64)
      let rounded = 0
      for (const solid of solids)
        for (const { edge, roundingRadiusM: radius } of solid.panel.edges) {
          if (radius === undefined) continue
          rounded++
          const { middle, beyond, out } = arris(solid, edge)
          const wood = (point: Vector) => solids.filter(other => holds(other, point))
          // Nothing before the face, nothing beyond the end, down to the foot of the rounding.
          for (const deep of [1e-4, 0.99 * radius]) {
            expect(wood(plus(plus(middle, out, -deep), beyond, 1e-4)), `${solid.panel.name} ${edge}`).toEqual([])
            expect(wood(plus(plus(middle, beyond, -deep), out, 1e-4)), `${solid.panel.name} ${edge}`).toEqual([])
          }
          // What the bit takes away belongs to this board.
          const taken = plus(plus(middle, out, -0.2 * radius), beyond, -0.2 * radius)
          expect(wood(taken).map(({ panel }) => panel.name)).toEqual([solid.panel.name])
          const foot = plus(plus(middle, out, -0.99 * radius), beyond, -1e-4)
          expect(wood(foot).map(({ panel }) => panel.name)).toEqual([solid.panel.name])
        }
      expect(rounded).toBeGreaterThan(3)
    })
  }
})
