/** Templates as large as life: every part of a circle is on a page, pages that are joined agree. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import { drawBox } from '../../src/documents/box/draw-box.ts'
import { joiningCrosses, tile, tilesOf } from '../../src/documents/box/hole-template.ts'
import { bigDriver, tenBoxes } from '../support/ten-boxes.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

const request: BoxRequest = {
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
  thicknessM: 0.018,
  drivers: [{ ...bigDriver, screwCircleDiameterM: 0.297, screwCount: 8, rebateDepthM: 0.006 }]
}

describe('pages of a template', () => {
  it('are as many as the square needs less its overlaps: 190 on one, 322 on two by two, 560 on three by four', () => {
    const counted = (side: number) => {
      const [{ rows, columns } = { rows: 0, columns: 0 }, ...more] = tilesOf(side)
      return [columns, rows, more.length + 1]
    }
    // A page holds 259 × 190; each further one adds 244 × 175.
    expect([190, 191, 259, 260, 322, 560].map(counted)).toEqual([
      [1, 1, 1],
      [1, 2, 2],
      [1, 2, 2],
      [2, 2, 4],
      [2, 2, 4],
      [3, 4, 12]
    ])
  })

  it('lie evenly about the middle and overlap by 15 mm', () => {
    for (const side of [150, 300, 450, 700]) {
      const pages = tilesOf(side)
      const left = Math.min(...pages.map(({ x }) => x))
      const right = Math.max(...pages.map(({ x }) => x)) + tile.width
      expect(left + right).toBeCloseTo(0, 9)
      expect(right - left).toBeGreaterThanOrEqual(side)
      for (const { row, column, x } of pages) {
        const next = pages.find(page => page.row === row && page.column === column + 1)
        if (next !== undefined) expect(x + tile.width - next.x).toBeCloseTo(15, 9)
      }
    }
  })

  it('share at least two crosses with each neighbour', () => {
    const pages = tilesOf(560)
    const on = (page: (typeof pages)[number]) =>
      joiningCrosses(page).filter(
        ({ x, y }) => x > page.x && x < page.x + tile.width && y > page.y && y < page.y + tile.height
      )
    for (const page of pages) {
      for (const other of pages) {
        const apart = Math.abs(page.row - other.row) + Math.abs(page.column - other.column)
        if (apart !== 1) continue
        const shared = on(page).filter(one => on(other).some(two => Math.hypot(one.x - two.x, one.y - two.y) < 1e-9))
        expect(shared.length).toBeGreaterThanOrEqual(2)
      }
    }
  })
})

describe('the template of a driver of 282 mm', () => {
  const { drawings } = drawBox({ box: request, show: 'templates' }).result

  it('is drawn 1:1, one unit of the drawing a millimetre, on four pages', () => {
    expect(drawings).toHaveLength(4)
    for (const { svg, scale, widthM } of drawings) {
      expect([scale, widthM]).toEqual([1, 0.259])
      expect(svg).toContain('viewBox="0 0 259 190"')
      expect(svg).toContain('width="259mm" height="190mm"')
      expect(complaintsAboutXml(svg)).toEqual([])
    }
  })

  it('has every degree of the cut on some page, 141 mm from the middle', () => {
    const pages = tilesOf(323)
    const seen = new Set<number>()
    for (const [i, { svg }] of drawings.entries()) {
      const page = pages[i]
      const [, path = ''] = /<path d="([^"]*)"/.exec(svg) ?? []
      for (const [, x, y] of path.matchAll(/([\d.]+) ([\d.]+)/g)) {
        const [dx, dy] = [Number(x) + (page?.x ?? 0), Number(y) + (page?.y ?? 0)]
        expect(Math.hypot(dx, dy)).toBeCloseTo(141, 2)
        seen.add((Math.round((Math.atan2(-dy, dx) * 180) / Math.PI) + 360) % 360)
      }
    }
    expect(seen.size).toBe(360)
  })

  it('tells the way with a compass: 297·sin(22.5°) = 113.7 mm from screw to screw', () => {
    expect(drawings[0]?.svg).toContain('113.7 mm from one to the next')
  })

  it('is made for tubes and cups too, and for nothing that is not round', () => {
    const { drawings: pages } = drawBox({
      box: tenBoxes['elbow, cup and inner amplifier'] as BoxRequest,
      show: 'templates'
    }).result
    const names = new Set(pages.map(({ name }) => name.split(', page')[0]))
    expect([...names].toSorted()).toEqual(['back, terminal cup', 'front, driver', 'front, port'])
  })
})
