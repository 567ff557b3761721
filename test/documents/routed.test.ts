/** Files for a router, read back by a library that did not write them: relief of inside corners, room for the cutter, bridges. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import { drawBox } from '../../src/documents/box/draw-box.ts'
import { holdingTabs, tabRule } from '../../src/documents/panels/holding-tabs.ts'
import { panelsDxf, sheetsDxf } from '../../src/documents/panels/panel-dxf.ts'
import { arcRadiusM, relieved, routedHole } from '../../src/documents/panels/routed-contour.ts'
import { type DxfEntity, readDxf } from '../support/dxf-reader.ts'
import { tenBoxes } from '../support/ten-boxes.ts'

type Points = readonly { readonly x: number; readonly y: number; readonly bulge?: number }[]

/** Signed: shoelace and the segments that bulges add. */
function areaOf(points: Points): number {
  return points.reduce((sum, { x, y, bulge = 0 }, index) => {
    const next = points[(index + 1) % points.length] ?? { x, y }
    const angle = 4 * Math.atan(bulge)
    const radius = bulge === 0 ? 0 : Math.hypot(next.x - x, next.y - y) / (2 * Math.sin(angle / 2))
    return sum + (x * next.y - next.x * y) / 2 + (radius ** 2 * (angle - Math.sin(angle))) / 2
  }, 0)
}

/** A kite with the air angle at its first corner. */
const wedgeOfAir = (airDeg: number): Points => {
  const half = (airDeg * Math.PI) / 360
  const [c, s] = [200 * Math.cos(half), 200 * Math.sin(half)]
  return [
    { x: 0, y: 0 },
    { x: c, y: -s },
    { x: c + 300, y: 0 },
    { x: c, y: s }
  ]
}

describe('relief of a corner', () => {
  const cutter = { radius: 3, dogBones: true }

  it('takes q²(π − θ − sin θ) beyond the corner, at 60, 90, 110 and 140° (by hand: 5.137 mm² for 90° and 3 mm)', () => {
    for (const airDeg of [60, 90, 110, 140]) {
      const hole = wedgeOfAir(airDeg)
      const corners = hole.map((_, index) => {
        const [before, here, after] = [-1, 0, 1].map(step => hole[(index + step + 4) % 4]) as unknown as [
          Points[number],
          Points[number],
          Points[number]
        ]
        const [a, b] = [before, after].map(({ x, y }) => Math.atan2(y - here.y, x - here.x)) as [number, number]
        return Math.abs(Math.PI - Math.abs(Math.PI - Math.abs(a - b)))
      })
      const beyond = corners.reduce((sum, angle) => sum + 9 * (Math.PI - angle - Math.sin(angle)), 0)
      expect(areaOf(relieved(hole, cutter, 1)) - areaOf(hole)).toBeCloseTo(beyond, 9)
    }
    const square = routedHole({ x: 0, y: 0 }, { width: 100, height: 60 }, {}, cutter)
    expect(areaOf(square) - 6000).toBeCloseTo(4 * 5.137_166_94, 6)
  })

  it('is drawn a tenth of a millimetre wider than the cutter', () => {
    expect(arcRadiusM(0.006)).toBeCloseTo(0.0031, 12)
  })

  it('passes the corner itself and lies a diameter wide: the cutter fits, no more', () => {
    const [from, to] = relieved(wedgeOfAir(90), cutter, 1) as [Points[number], Points[number]]
    // The middle of the arc is the corner: from the chord by bulge times half of it.
    const [mx, my] = [(from.x + to.x) / 2, (from.y + to.y) / 2]
    const half = Math.hypot(to.x - from.x, to.y - from.y) / 2
    expect(Math.hypot(mx, my)).toBeCloseTo((from.bulge ?? 0) * half, 9)
    expect((half * (1 + (from.bulge ?? 0) ** 2)) / (2 * (from.bulge ?? 1))).toBeCloseTo(3, 9)
  })

  it('leaves corners alone that a part turns outwards, and those too short for the cutter', () => {
    const part = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 100 },
      { x: 0, y: 100 }
    ]
    expect(relieved(part, cutter, -1)).toEqual(part)
    const narrow = routedHole({ x: 0, y: 0 }, { width: 8, height: 60 }, {}, cutter)
    expect(narrow.every(({ bulge = 0 }) => bulge === 0)).toBe(true)
  })

  it('rounds what is round anyway no tighter than the cutter', () => {
    const radiusOf = (points: Points) => Math.abs((points[0]?.x ?? 0) - (points[1]?.x ?? 0))
    const window = routedHole({ x: 0, y: 0 }, { width: 100, height: 60 }, { cornerRadiusM: 0.002 }, cutter)
    expect(100 - radiusOf(window)).toBeCloseTo(2 * 3, 9)
    const wide = routedHole({ x: 0, y: 0 }, { width: 100, height: 60 }, { cornerRadiusM: 0.02 }, cutter)
    expect(100 - radiusOf(wide)).toBeCloseTo(2 * 20, 9)
  })
})

/** From a point to straight sides. */
const distanceTo = (outline: Points, { x, y }: Points[number]): number =>
  Math.min(
    ...outline.map((from, index) => {
      const to = outline[(index + 1) % outline.length] ?? from
      const [dx, dy] = [to.x - from.x, to.y - from.y]
      const share = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy || 1)
      const at = Math.max(0, Math.min(1, share))
      return Math.hypot(from.x + at * dx - x, from.y + at * dy - y)
    })
  )

const routing = { radiusM: 0.0031, dogBones: true, tabs: true }
const onLayer = (entities: readonly DxfEntity[], name: string) => entities.filter(({ layer }) => layer === name)
const boxOf = (name: string) => tenBoxes[name] as BoxRequest

describe('a front with a notch, read back', () => {
  const { panels } = drawBox({ box: boxOf('slot beside a cheek, braced'), show: 'panels' }).result.box
  const plain = onLayer(readDxf(panelsDxf(panels)), 'CUT')
  const routed = onLayer(readDxf(panelsDxf(panels, routing)), 'CUT')

  it('loses 0.5708 q² of wood at each inside corner and nothing else', () => {
    const lost = plain.map(({ vertices = [] }, index) => areaOf(vertices) - areaOf(routed[index]?.vertices ?? []))
    const each = (Math.PI / 2 - 1) * 3.1 ** 2
    const corners = routed.map(({ vertices = [] }) => vertices.filter(({ bulge = 0 }) => bulge !== 0).length)
    expect(Math.max(...corners)).toBeGreaterThan(0)
    for (const [index, count] of corners.entries()) expect(lost[index]).toBeCloseTo(count * each, 1)
  })
})

describe('every shape of box', () => {
  for (const [name, box] of Object.entries(tenBoxes)) {
    it(`is spaced for the cutter, held at sides with room, and runs anticlockwise: ${name}`, () => {
      const {
        box: layout,
        cutPlan,
        assumed
      } = {
        ...drawBox({ box, show: 'cut-sheets', router: { cutterM: 0.008 } }).result,
        assumed: drawBox({ box, show: 'cut-sheets', router: { cutterM: 0.008 } }).assumed
      }
      if (cutPlan === undefined) throw new Error('not cut')
      expect(assumed.find(({ field }) => field === 'kerfM')?.value).toBeCloseTo(0.01, 12)
      const entities = readDxf(sheetsDxf(layout.panels, cutPlan, { radiusM: 0.0041, dogBones: true, tabs: true }))
      const cuts = onLayer(entities, 'CUT')
      expect(cuts.length).toBe(layout.panels.reduce((sum, { quantity }) => sum + quantity, 0))
      for (const { vertices = [] } of cuts) expect(areaOf(vertices)).toBeGreaterThan(0)
      const boxesOf = cuts.map(({ vertices = [] }) => {
        const [xs, ys] = [vertices.map(({ x }) => x), vertices.map(({ y }) => y)]
        return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) }
      })
      for (const [i, a] of boxesOf.entries())
        for (const b of boxesOf.slice(i + 1)) {
          const gap = Math.max(a.left - b.right, b.left - a.right, a.low - b.high, b.low - a.high)
          expect(gap).toBeGreaterThan(10 - 0.01)
        }
      const tabs = onLayer(entities, 'TABS')
      expect(tabs.length).toBeGreaterThanOrEqual(2 * cuts.length)
      for (const { vertices = [] } of tabs) {
        const [from, to] = vertices as unknown as [Points[number], Points[number]]
        const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2]
        const own = cuts.filter(({ vertices: outline = [] }) => distanceTo(outline, { x, y }) < 0.01)
        expect(own).toHaveLength(1)
        const corners = own[0]?.vertices ?? []
        const nearest = Math.min(...corners.map(corner => Math.hypot(corner.x - x, corner.y - y)))
        expect(nearest).toBeGreaterThan(tabRule.fromCorner + tabRule.long / 2 - 6)
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(4 * 4.1, 2)
      }
    })
  }
})

describe('bridges', () => {
  it('are one a side, two on a metre, and two on the only side with room', () => {
    const rectangle = (w: number, h: number) => [
      { x: 0, y: 0 },
      { x: w, y: 0 },
      { x: w, y: h },
      { x: 0, y: h }
    ]
    expect(holdingTabs(rectangle(400, 300))).toHaveLength(4)
    expect(holdingTabs(rectangle(1000, 300))).toHaveLength(6)
    expect(holdingTabs(rectangle(300, 40))).toHaveLength(2)
    expect(holdingTabs(rectangle(40, 40))).toHaveLength(0)
  })

  it('and relief are left out where nobody wants them', () => {
    const request = { box: boxOf('slot beside a cheek, braced'), show: 'panels' } as const
    const { box, routing: asked } = drawBox({
      ...request,
      router: { cutterM: 0.006, tabs: false, dogBones: false }
    }).result
    const entities = readDxf(panelsDxf(box.panels, asked))
    expect(onLayer(entities, 'TABS')).toEqual([])
    for (const { vertices = [] } of onLayer(entities, 'CUT'))
      expect(vertices.some(({ bulge = 0 }) => bulge !== 0)).toBe(false)
  })
})
