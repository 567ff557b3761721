import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import type { Panel } from '../../src/contract/boxes/panel.ts'
import { boxOverview } from '../../src/documents/box/box-overview.ts'
import { drawBox } from '../../src/documents/box/draw-box.ts'
import { drawingBook } from '../../src/documents/box/drawing-book.ts'
import { drawingsPdf } from '../../src/documents/box/drawings-pdf.ts'
import { responseCharts, roundUp } from '../../src/documents/charts/response-charts.ts'
import { plainLine } from '../../src/documents/draw/dxf.ts'
import { chartDescription } from '../../src/documents/draw/line-chart.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { panelDrawing, scaleFor } from '../../src/documents/panels/panel-drawing.ts'
import { panelsDxf, sheetsDxf } from '../../src/documents/panels/panel-dxf.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { usualSheets } from '../../src/domain/material/usual-sheets.ts'
import { nestPanels } from '../../src/domain/sheet/nest-panels.ts'
import { type DxfEntity, readDxf } from '../support/dxf-reader.ts'
import { inventedBox } from '../support/invented-box.ts'
import { tenBoxes } from '../support/ten-boxes.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

const wedge = {
  shape: 'wedge',
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.25 },
  slopedFace: 'back',
  thicknessM: 0.018,
  displacement: { driversM3: 0.002 }
} as const
const evil = '</text><script>alert(1)</script> & "x" \u202e\u0007 \ud800'

/** Area within a closed contour [mm²]: shoelace and the segments its bulges add (bulge = tan of a quarter of the angle). */
function areaWithin({ vertices = [] }: DxfEntity): number {
  const area = vertices.reduce((sum, { x, y, bulge = 0 }, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? { x, y }
    const chord = Math.hypot(next.x - x, next.y - y)
    const angle = 4 * Math.atan(bulge)
    const radius = angle === 0 ? 0 : chord / (2 * Math.sin(angle / 2))
    return sum + (x * next.y - next.x * y) / 2 + (radius ** 2 * (angle - Math.sin(angle))) / 2
  }, 0)
  return Math.abs(area)
}

const holed = {
  ...inventedBox,
  panels: inventedBox.panels.map(
    (panel): Panel =>
      panel.role === 'front'
        ? {
            ...panel,
            cutOuts: [
              ...panel.cutOuts,
              {
                kind: 'circle',
                purpose: 'driver-rebate',
                label: 'rebate',
                uM: 0.25,
                vM: 0.182,
                diameterM: 0.31,
                rebateDepthM: 0.006
              }
            ]
          }
        : panel
  )
}

describe('DXF, read back by another library', () => {
  const sheets = nestPanels({
    panels: holed.panels,
    sheets: usualSheets(holed.panels, () => 'full sheet'),
    kerfM: 0.0032
  }).result
  for (const [name, text, copies] of [
    ['panels', panelsDxf(holed.panels), (): number => 1],
    ['sheets', sheetsDxf(holed.panels, sheets), ({ quantity }: Panel): number => quantity]
  ] as const) {
    const entities = readDxf(text)
    const on = (layer: string) => entities.filter(entity => entity.layer === layer)

    it(`${name}: every contour is closed and every hole is a true circle or a closed contour`, () => {
      const contours = entities.filter(({ type }) => type === 'LWPOLYLINE')
      expect(contours.length).toBeGreaterThan(5)
      expect(contours.every(({ shape }) => shape === true)).toBe(true)
      expect(new Set(entities.map(({ type }) => type))).toEqual(new Set(['LWPOLYLINE', 'CIRCLE', 'TEXT']))
    })

    it(`${name}: areas on the cut layer are those of the cut list, to 0.01 mm on each side`, () => {
      const wanted = holed.panels.flatMap(panel =>
        Array.from({ length: copies(panel) }, () => panel.lengthM * panel.widthM * 1e6)
      )
      const found = on('CUT').map(areaWithin)
      expect(found.length).toBe(wanted.length)
      const sorted = [...wanted].sort((a, b) => a - b)
      for (const [index, area] of [...found].sort((a, b) => a - b).entries())
        expect(Math.abs(area - (sorted[index] ?? 0))).toBeLessThan(0.01 * 2000)
    })

    it(`${name}: holes, pockets and screw holes lie on their layers with their sizes`, () => {
      const circles = on('HOLES').filter(({ type }) => type === 'CIRCLE')
      expect(circles.map(({ radius }) => radius)).toEqual([141])
      const cup = on('HOLES').filter(({ type }) => type === 'LWPOLYLINE')
      expect(cup.map(entity => Math.round(areaWithin(entity) * 100) / 100)).toEqual([
        Math.round((100 * 60 - (4 - Math.PI) * 36) * 100) / 100
      ])
      expect(on('POCKET_6.0').map(({ radius }) => radius)).toEqual([155])
      expect(on('DRILL_4.5')).toHaveLength(8)
      const [centre] = circles
      for (const { center } of on('DRILL_4.5')) {
        const reach = Math.hypot(
          (center?.x ?? 0) - (centre?.center?.x ?? 0),
          (center?.y ?? 0) - (centre?.center?.y ?? 0)
        )
        expect(reach).toBeCloseTo(150, 2)
      }
    })
  }

  it('mirrors no part that must keep its outer face up: every outline still runs anticlockwise', () => {
    for (const { vertices = [], layer } of readDxf(sheetsDxf(holed.panels, sheets))) {
      if (layer !== 'CUT') continue
      const signed = vertices.reduce((sum, { x, y }, index) => {
        const next = vertices[(index + 1) % vertices.length] ?? { x, y }
        return sum + x * next.y - next.x * y
      }, 0)
      expect(signed).toBeGreaterThan(0)
    }
  })

  it('says millimetres', () => {
    expect(panelsDxf(holed.panels)).toMatch(/\$INSUNITS\r?\n\s*70\r?\n4\r?\n/)
  })

  it('lets no name become geometry', () => {
    const named = holed.panels.map(panel => ({
      ...panel,
      name: 'a\r\n0\r\nCIRCLE\r\n8\r\nCUT\r\n10\r\n5\r\n20\r\n5\r\n40\r\n5^J%%c\\P'
    }))
    const circles = (panels: readonly Panel[]) =>
      readDxf(panelsDxf(panels)).filter(({ type }) => type === 'CIRCLE').length
    expect(circles(named)).toBe(circles(holed.panels))
    expect(plainLine('x^Jy%%c\\P\r\nz')).toBe("x'Jy%c/P z")
  })

  it('gives the same bytes twice', () => {
    expect(panelsDxf(holed.panels)).toBe(panelsDxf(holed.panels))
  })

  it('turns a panel with its holes: the hole keeps its distance to the corners of its blank', () => {
    const entities = readDxf(sheetsDxf(holed.panels, sheets))
    const hole = entities.find(({ layer, radius }) => layer === 'HOLES' && radius === 141)
    const distances = entities
      .filter(({ layer }) => layer === 'CUT')
      .map(({ vertices = [] }) =>
        vertices
          .map(({ x, y }) => Math.hypot(x - (hole?.center?.x ?? 0), y - (hole?.center?.y ?? 0)))
          .sort((a, b) => a - b)
      )
    const expected = [
      [0, 0],
      [604, 0],
      [604, 364],
      [0, 364]
    ]
      .map(([u = 0, v = 0]) => Math.hypot(u - 250, v - 182))
      .sort((a, b) => a - b)
    expect(distances).toContainEqual(expected.map(value => expect.closeTo(value, 2)))
  })
})

describe('SVG drawings', () => {
  it('keep the dimensions of a board of twelve corners clear of the notes below', () => {
    const corners = Array.from({ length: 12 }, (_, i) => ((i - 0.5) * Math.PI) / 6)
    const footprint = corners.map(angle => ({ xM: 0.3 * (1 + Math.cos(angle)), yM: 0.3 * (1 + Math.sin(angle)) }))
    const joints = { corners: 'mitre' } as const
    const { panels } = layOutBox({
      shape: 'prism',
      outer: { heightM: 0.2 },
      prism: { footprint },
      joints,
      thicknessM: 0.018
    }).result
    const { svg } = panelDrawing(panels.find(({ name }) => name === 'bottom') as Panel, 'p', metric)
    const notes = Number(/<text[^>]* y="([\d.]+)"[^>]*>Dashed:/.exec(svg)?.[1])
    const lines = [...svg.matchAll(/<line[^>]* y2="([\d.]+)"/g)].map(([, y]) => Number(y))
    const titleBlock = Math.max(...lines)
    expect(notes).toBeGreaterThan(100)
    expect(Math.max(...lines.filter(y => y < titleBlock))).toBeLessThan(notes - 2.7)
  })

  it('are well-formed, with a name and no broken figure, for every panel and sheet', () => {
    const { result } = drawBox({ box: wedge })
    expect(result.drawings.length).toBeGreaterThan(5)
    for (const { svg } of result.drawings) expect(complaintsAboutXml(svg)).toEqual([])
    expect(complaintsAboutXml(drawingBook(result.drawings, 'wedge', metric.language))).toEqual([])
  })

  it('escape what a caller wrote', () => {
    const panel = { ...(inventedBox.panels[2] as Panel), name: evil }
    const { svg } = panelDrawing(panel, 'p', metric)
    expect(complaintsAboutXml(svg)).toEqual([])
    for (const part of ['<script', '\u202e', '\u0007']) expect(svg).not.toContain(part)
    expect(complaintsAboutXml(drawingBook([], evil, metric.language))).toEqual([])
  })

  it('show the whole box with every placed panel, holes in the front, in its true proportions', () => {
    const { box } = drawBox({
      box: { ...wedge, drivers: [{ cutOutDiameterM: 0.25, mountingDepthM: 0.1, sdM2: 0.04 }] },
      show: 'panels'
    }).result
    const svg = boxOverview(box, 'o', metric) ?? ''
    expect(complaintsAboutXml(svg)).toEqual([])
    const drawnAs = (style: string) =>
      [...svg.matchAll(/<polygon points="([^"]*)"([^>]*)>/g)]
        .filter(([, , rest = '']) => rest.includes(style))
        .map(([, text = '']) => text.split(' ').map(pair => pair.split(',').map(Number)))
    const polygons = drawnAs('stroke-width="1.4"')
    const holes = drawnAs('class="hole"')
    // In sight from the front right and above: lid, front and the right side; the left side, floor and back are dashed.
    expect([polygons.length, drawnAs('stroke-dasharray').length]).toEqual([3, 3])
    const span = (corners: number[][] | undefined, axis: number) =>
      Math.max(...(corners ?? []).map(spot => spot[axis] ?? 0)) -
      Math.min(...(corners ?? []).map(spot => spot[axis] ?? 0))
    expect(span(holes[0], 0)).toBeCloseTo(span(holes[0], 1), 0)
    const square = (corners: number[][]) =>
      [0, 1].every(axis => new Set(corners.map(spot => Math.round(spot[axis] ?? 0))).size === 2)
    const front = box.panels.find(({ role }) => role === 'front')
    const drawn = polygons.find(corners => corners.length === 4 && square(corners))
    expect(span(drawn, 0) / span(drawn, 1)).toBeCloseTo((front?.lengthM ?? 0) / (front?.widthM ?? 1), 1)
    expect(span(drawn, 0) / span(holes[0], 0)).toBeCloseTo((front?.lengthM ?? 0) / 0.25, 1)
    // The right side is the left one mirrored: it ends the box at its full width, 42 % of the depth further right.
    const scale = span(drawn, 0) / (front?.lengthM ?? 1)
    const { widthM, depthM } = box.outer
    const fromFront = widthM - (widthM - (front?.lengthM ?? 0)) / 2 + 0.42 * depthM
    const xs = (corners: number[][]) => corners.map(([x = 0]) => x)
    expect((Math.max(...xs(polygons.flat())) - Math.min(...xs(drawn ?? []))) / scale).toBeCloseTo(fromFront, 2)
    expect(boxOverview(inventedBox, 'o', metric)).toBeUndefined()
  })

  it('draw to scale: a 282 mm hole at 1:4 is 70.5 mm on paper', () => {
    const { svg, scale } = panelDrawing(inventedBox.panels[2] as Panel, 'p', metric)
    const radii = [...svg.matchAll(/ r="([\d.]+)"/g)].map(([, r]) => Number(r))
    expect(radii.some(radius => Math.abs(radius - 141 / scale) < 0.011)).toBe(true)
    expect(svg).toContain(`Scale 1:${scale}`)
    expect(scaleFor(0.9, 0.3, { width: 250, height: 150 })).toBe(4)
  })

  it('print the dimensions a builder needs: both sides of the blank and both centres', () => {
    const { svg } = panelDrawing(inventedBox.panels[2] as Panel, 'p', metric)
    for (const text of ['>604<', '>364<', '>250<', '>182<']) expect(svg).toContain(text)
    const inches = panelDrawing(inventedBox.panels[2] as Panel, 'p', {
      ...metric,
      units: 'imperial',
      inches: 'sixteenths'
    } as const).svg
    for (const text of ['>23 3/4<', '>14 5/16<', '>9 13/16<']) expect(inches).toContain(text)
  })

  it('place a rectangle by its edges: a mouth of 400 × 40 between the sides runs from 0 to 400, before sides of 18 mm from 18 to 418', () => {
    const box = tenBoxes['slot beside a cheek, braced'] as BoxRequest
    const frontOf = (request: BoxRequest) =>
      drawBox({ box: request, show: 'panels' }).result.drawings.find(({ name }) => name === 'front')?.svg
    expect(frontOf(box)).toContain('0 to 400 mm from the left, 0 to 40 mm from below')
    const before = { ...box, joints: { sides: 'between' } } as const
    expect(frontOf(before)).toContain('18 to 418 mm from the left, 0 to 40 mm from below')
  })

  it('say when the second of two must be mirrored', () => {
    const { result } = drawBox({ box: wedge, show: 'panels' })
    expect(result.drawings.filter(({ svg }) => svg.includes('one of them mirrored')).map(({ name }) => name)).toEqual([
      'side'
    ])
  })
})

describe('charts', () => {
  const frequencyHz = Array.from({ length: 60 }, (_, index) => 10 * 1.06 ** index)
  const flat = (value: number) => frequencyHz.map(() => value)
  const curves = {
    frequencyHz,
    levelDb: frequencyHz.map(hz => 100 - 400 / hz),
    impedanceOhm: flat(4),
    coneExcursionM: flat(0.01),
    groupDelayS: flat(0.002),
    rearPortAirSpeedMPerS: flat(12)
  }

  it('are well-formed for ordinary, empty, flat and broken curves', () => {
    const cases = [
      curves,
      { ...curves, levelDb: flat(Number.NEGATIVE_INFINITY), coneExcursionM: flat(0), impedanceOhm: flat(Number.NaN) },
      {
        ...curves,
        frequencyHz: [40],
        levelDb: [90],
        impedanceOhm: [4],
        coneExcursionM: [0.001],
        groupDelayS: [0],
        rearPortAirSpeedMPerS: [1]
      }
    ]
    for (const each of cases)
      for (const { svg } of responseCharts(each, {
        ...metric,
        xmaxM: 0.012,
        airSpeedMPerS: 17,
        tuningHz: 35,
        f3Hz: 33
      }))
        expect(complaintsAboutXml(svg)).toEqual([])
  })

  it('show limits and tell curves apart by dash as well as colour', () => {
    const [level, excursion] = responseCharts({ ...curves }, { ...metric, xmaxM: 0.012, cabinLevelDb: flat(110) })
    expect(excursion?.svg).toContain('Xmax 12 mm')
    expect(level?.svg).toMatch(/stroke-dasharray="7 3"/)
  })

  it('say the highest and lowest value in words', () => {
    const words = chartDescription({
      language: metric.language,
      id: 'c',
      title: 't',
      frequencyHz: [10, 20, 40],
      series: [{ label: 'level', values: [90, 96, 93] }],
      yLabel: 'Level',
      yUnit: 'dB',
      yRange: [0, 100]
    })
    expect(words).toContain('highest 96 dB at 20 Hz')
    expect(words).toContain('lowest 90 dB at 10 Hz')
  })

  it('rounds an axis up, never down', () => {
    for (const value of [0.013, 0.99, 1, 1.01, 7.3, 41, 99, 101]) {
      expect(roundUp(value)).toBeGreaterThanOrEqual(value)
      expect(roundUp(value)).toBeLessThanOrEqual(value * 1.34)
    }
  })
})

describe('PDF', () => {
  it('is the same twice, with a page for each drawing', async () => {
    const { result } = drawBox({ box: wedge, show: 'panels' })
    const [first, second] = [
      await drawingsPdf(result.drawings, 'wedge', metric.language),
      await drawingsPdf(result.drawings, 'wedge', metric.language)
    ]
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true)
    const text = Buffer.from(first).toString('latin1')
    expect(text.startsWith('%PDF-')).toBe(true)
    expect(text.match(/\/Type \/Page\b/g)).toHaveLength(result.drawings.length)
  })
})

describe('a board for a router', () => {
  it('bears on the sheet the marks of its own copy: plates on one side only, mirrored with the side or not', () => {
    const box = layOutBox(tenBoxes['sloped front over a slot'] as BoxRequest).result
    const plan = nestPanels({ panels: box.panels, sheets: usualSheets(box.panels, () => 'full sheet') }).result
    const drawn = readDxf(sheetsDxf(box.panels, plan))
    const length = ({ vertices: [a, b] = [] }: DxfEntity) =>
      Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))
    const wanted = box.panels
      .flatMap(({ copies = [] }) => copies.flatMap(({ marks }) => marks))
      .flatMap(({ from, to }) => {
        const long = Math.hypot(from.uM - to.uM, from.vM - to.vM) * 1e3
        return [long, long]
      })
    const found = drawn.filter(({ layer }) => layer === 'MARK').map(length)
    expect(found.toSorted((a, b) => a - b)).toEqual(wanted.toSorted((a, b) => a - b).map(mm => expect.closeTo(mm, 2)))
    // Every mark lies on its own board: within the blank of some piece.
    for (const { vertices = [] } of drawn.filter(({ layer }) => layer === 'MARK')) {
      const inside = plan.layouts[0]?.pieces.some(({ xM, yM, lengthM, widthM }) =>
        vertices.every(
          ({ x, y }) =>
            x > xM * 1e3 - 1 && y > yM * 1e3 - 1 && x < (xM + lengthM) * 1e3 + 1 && y < (yM + widthM) * 1e3 + 1
        )
      )
      expect(inside).toBe(true)
    }
  })

  it('keeps its name however small it is, along its longer side', () => {
    const { panels } = layOutBox(tenBoxes['slot beside a cheek, braced'] as BoxRequest).result
    const texts = readDxf(panelsDxf(panels)).filter(({ type }) => type === 'TEXT')
    const written = (name: string) => texts.some(({ text }) => text?.startsWith(name))
    // The two sides bear unlike marks, so that each has its own drawing.
    for (const { name, copies = [] } of panels)
      expect(written(name) || copies.every(copy => written(copy.name))).toBe(true)
  })

  it('has the mouth of a slot in its outline, its tilts and the depth of its pockets in words', () => {
    const front = layOutBox({
      outer: { widthM: 0.96, heightM: 0.42, depthM: 0.42 },
      thicknessM: 0.018,
      joints: { sides: 'between' },
      port: { kind: 'slot', widthM: 0.4, heightM: 0.04, lengthM: 0.6 },
      drivers: [{ cutOutDiameterM: 0.232, flangeDiameterM: 0.262, rebateDepthM: 0.006, displacementM3: 0.002 }]
    }).result.panels.filter(({ name }) => name === 'front')
    const drawn = readDxf(panelsDxf(front))
    const [cut] = drawn.filter(({ layer }) => layer === 'CUT')
    // Between the sides and lid and floor: 924 × 384, less the mouth of 400 × 40 in its corner.
    const [board] = front
    const blank = (board?.lengthM ?? 0) * (board?.widthM ?? 0) * 1e6
    expect(areaWithin(cut as DxfEntity)).toBeCloseTo(blank - 400 * 40, 3)
    expect(drawn.filter(({ layer }) => layer === 'HOLES')).toHaveLength(1)
    expect(panelsDxf(front)).toContain('pocket 6 deep')
    const layers = new Set(drawn.map(({ layer }) => layer))
    expect([...layers].toSorted()).toEqual(['CUT', 'DRILL_2.5', 'HOLES', 'MARK', 'POCKET_6.0', 'TEXT'])
    const marks = front.flatMap(({ copies = [] }) => copies.flatMap(copy => copy.marks))
    expect(drawn.filter(({ layer }) => layer === 'MARK')).toHaveLength(2 * marks.length)
    expect(drawn.filter(({ layer }) => layer === 'DRILL_2.5')).toHaveLength(
      marks.flatMap(({ screws }) => screws).length
    )
    const sloped = layOutBox(wedge).result.panels
    // The back of this wedge leans by atan((380 − 250)/400) = 18.0°: its own two edges, those of lid and floor.
    const bevels = readDxf(panelsDxf(sloped)).filter(({ layer }) => layer.startsWith('BEVEL'))
    expect(bevels.map(({ layer, type }) => `${layer} ${type}`)).toEqual(Array(4).fill('BEVEL_18.0 LINE'))
    expect(
      bevels.map(({ vertices: [a, b] = [] }) => Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0)))
    ).toEqual(Array(4).fill(expect.closeTo(604, 2)))
    expect(panelsDxf(sloped)).toMatch(/edge \d: saw at [\d.]+ deg, (outer|inner) face long/)
  })
})

describe('the list of cuts beside a sheet', () => {
  it('shows every cut of the ten boxes whole', () => {
    for (const [name, box] of Object.entries(tenBoxes)) {
      const { drawings, cutPlan } = drawBox({ box, show: 'cut-sheets' }).result
      const cuts = cutPlan?.layouts.flatMap(layout => layout.cuts).length ?? 0
      const texts = drawings.flatMap(({ svg }) =>
        [...svg.matchAll(/>([^<]*→[^<]*\|[^<]*)</g)].map(([, text = '']) => text)
      )
      expect([name, texts.length]).toEqual([name, cuts])
      expect([name, texts.filter(text => text.includes('…'))]).toEqual([name, []])
    }
  })
})
