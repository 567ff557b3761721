/** Templates of round holes, as large as life, in sheets that a desk printer takes: to be joined, pricked through and sawn by. */

import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { lengthText, openingText, type Reader, shortUnit } from '../draw/number-text.ts'
import { holeName, panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import type { Drawing } from '../panels/panel-drawing.ts'

/** What A4 and Letter both print when they lie [mm]. */
export const tile = { width: 259, height: 190, overlap: 15 } as const
/** Round the largest circle [mm]. */
const RIM = 5
const BAR = 100

interface Spot {
  readonly x: number
  readonly y: number
}

/** A page: how far its left upper corner lies from the middle of the hole [mm], x to the right, y down. */
interface Tile extends Spot {
  readonly row: number
  readonly column: number
  readonly rows: number
  readonly columns: number
}

/** Pages that hold a square about the middle. */
export function tilesOf(sideMm: number): readonly Tile[] {
  const count = (room: number) => Math.max(1, Math.ceil((sideMm - tile.overlap) / (room - tile.overlap) - 1e-9))
  const [columns, rows] = [count(tile.width), count(tile.height)]
  return Array.from({ length: rows * columns }, (_, i) => {
    const [row, column] = [Math.floor(i / columns), i % columns]
    return {
      row,
      column,
      rows,
      columns,
      x: startOf(column, columns, tile.width),
      y: startOf(row, rows, tile.height)
    }
  })
}

const isOn = ({ x, y }: Spot, page: Tile) =>
  x >= page.x && x <= page.x + tile.width && y >= page.y && y <= page.y + tile.height

/** Chords of a degree each: 0.006 mm inside the circle at a radius of 150 mm. */
const CHORDS = 360

/** What of a circle about the middle lies on a page. */
function circleOn(page: Tile, radius: number, dash?: string): string {
  const at = (i: number): Spot => {
    const angle = (2 * Math.PI * i) / CHORDS
    return { x: radius * Math.cos(angle), y: -radius * Math.sin(angle) }
  }
  let path = ''
  for (let i = 0; i < CHORDS; i++) {
    const [from, to] = [at(i), at(i + 1)]
    if (!isOn(from, page) || !isOn(to, page)) continue
    const start = path.endsWith(pair(from, page)) ? '' : `M${pair(from, page)}`
    path += `${start}L${pair(to, page)}`
  }
  return path === ''
    ? ''
    : element('path', {
        d: path,
        fill: 'none',
        stroke: ink.cut,
        class: 'cut',
        'stroke-width': 0.35,
        'stroke-dasharray': dash
      })
}

const pair = ({ x, y }: Spot, page: Tile) => `${(x - page.x).toFixed(3)} ${(y - page.y).toFixed(3)}`

function crossOn(page: Tile, at: Spot, arm: number, colour: string): string {
  if (!isOn(at, page)) return ''
  const [x, y] = [at.x - page.x, at.y - page.y]
  const look = { stroke: colour, class: 'centre', 'stroke-width': 0.2 }
  return (
    element('line', { x1: x - arm, x2: x + arm, y1: y, y2: y, ...look }) +
    element('line', { x1: x, x2: x, y1: y - arm, y2: y + arm, ...look })
  )
}

/** From the middle of the hole to the start of a page in a row of pages [mm]. */
const startOf = (index: number, pages: number, room: number) =>
  index * (room - tile.overlap) - (pages * (room - tile.overlap) + tile.overlap) / 2

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i)

/** Crosses in the middle of each overlap, at the same points of the hole on both pages that share it. */
export function joiningCrosses({ rows, columns }: Pick<Tile, 'rows' | 'columns'>): readonly Spot[] {
  const { width, height, overlap } = tile
  const shares = [0.3, 0.7]
  const upright = upTo(columns - 1).flatMap(c =>
    upTo(rows).flatMap(r =>
      shares.map(share => ({
        x: startOf(c + 1, columns, width) + overlap / 2,
        y: startOf(r, rows, height) + share * height
      }))
    )
  )
  const level = upTo(rows - 1).flatMap(r =>
    upTo(columns).flatMap(c =>
      shares.map(share => ({
        x: startOf(c, columns, width) + share * width,
        y: startOf(r + 1, rows, height) + overlap / 2
      }))
    )
  )
  return [...upright, ...level]
}

/** A bar of 100 mm lying and one standing: a printer that scales shows it. */
function bars({ language }: Reader): string {
  const [x, y] = [8, tile.height - 12]
  const look = { stroke: ink.text, class: 'ink-line', 'stroke-width': 0.4 }
  return (
    element('line', { x1: x, x2: x + BAR, y1: y, y2: y, ...look }) +
    element('line', { x1: x, x2: x, y1: y - BAR, y2: y, ...look }) +
    textAt(x + 4, y - 2, told(language, 'draw.measure'), { size: 3 })
  )
}

interface Hole {
  readonly cut: CutOut
  readonly rebate?: CutOut
}

function screwsOn(page: Tile, { screwCircle }: CutOut): string {
  if (screwCircle === undefined) return ''
  const { diameterM, count, startAngleDeg } = screwCircle
  const marks = Array.from({ length: count }, (_, i) => {
    const angle = ((startAngleDeg + (360 * i) / count) * Math.PI) / 180
    const at = { x: (diameterM / 2) * 1000 * Math.cos(angle), y: -(diameterM / 2) * 1000 * Math.sin(angle) }
    const number = isOn(at, page) ? textAt(at.x - page.x + 2, at.y - page.y - 2, String(i + 1), { size: 3 }) : ''
    return crossOn(page, at, 2.5, ink.limit) + number
  })
  return circleOn(page, (diameterM / 2) * 1000, '3 1 0.6 1') + marks.join('')
}

/** With a compass instead of paper: radius, and the chord from one screw to the next. */
function words({ cut }: Hole, panel: string, paper: Reader): readonly string[] {
  const { diameterM = 0, screwCircle } = cut
  const { language } = paper
  const hole = { hole: holeName(cut, paper), panel: panelName(panel, paper) }
  const place = {
    size: `${openingText(diameterM, paper)} ${shortUnit(paper)}`,
    across: lengthText(cut.uM, paper),
    up: lengthText(cut.vM, paper)
  }
  const screwed = (count: number, circleM: number) =>
    told(language, 'draw.template-screws', {
      count,
      circle: lengthText(circleM, paper),
      chord: lengthText(circleM * Math.sin(Math.PI / count), paper)
    })
  return [
    told(language, 'draw.template-place', hole),
    told(language, 'draw.template-hole', place),
    ...(screwCircle === undefined ? [] : [screwed(screwCircle.count, screwCircle.diameterM)])
  ]
}

function pageOf(hole: Hole, page: Tile, panel: string, paper: Reader, id: string): Drawing {
  const { cut, rebate } = hole
  const { language } = paper
  const name = `${panelName(panel, paper)}, ${holeName(cut, paper)}`
  const pages = page.rows * page.columns
  const which =
    pages === 1
      ? ''
      : told(language, 'draw.template-page', {
          page: page.row * page.columns + page.column + 1,
          pages,
          row: page.row + 1,
          column: page.column + 1
        })
  const svg = svgDocument(
    {
      id,
      title: told(language, 'draw.template', { name }),
      description: `${words(hole, panel, paper).join('. ')}${which}.`
    },
    { width: tile.width, height: tile.height, unit: 'mm' },
    circleOn(page, (cut.diameterM ?? 0) * 500),
    rebate === undefined ? '' : circleOn(page, (rebate.diameterM ?? 0) * 500, '2 1'),
    screwsOn(page, cut),
    crossOn(page, { x: 0, y: 0 }, 12, ink.cut),
    ...joiningCrosses(page).map(at => crossOn(page, at, 4, ink.text)),
    bars(paper),
    ...words(hole, panel, paper).map((text, i) =>
      textAt(tile.width - 4, 7 + 4.4 * i, text + (i === 0 ? which : ''), { size: 3.2, anchor: 'end' })
    ),
    element('path', {
      d: `M6 22L6 6M4 10L6 6L8 10`,
      fill: 'none',
      stroke: ink.text,
      class: 'ink-line',
      'stroke-width': 0.5
    })
  )
  return { name: name + which, svg, scale: 1, widthM: tile.width / 1000, heightM: tile.height / 1000 }
}

/** @param prefix  unique on a page */
export function holeTemplates(panels: readonly Panel[], paper: Reader, prefix: string): readonly Drawing[] {
  return panels.flatMap(({ name, cutOuts }, p) =>
    cutOuts.flatMap((cut, c) => {
      if (cut.kind !== 'circle' || cut.rebateDepthM !== undefined) return []
      const rebate = cutOuts.find(other => other.purpose === 'driver-rebate' && other.label === cut.label)
      const largest = Math.max(cut.diameterM ?? 0, rebate?.diameterM ?? 0, cut.screwCircle?.diameterM ?? 0)
      const hole: Hole = { cut, ...present({ rebate }) }
      return tilesOf(largest * 1000 + 2 * RIM).map((page, i) =>
        pageOf(hole, page, name, paper, `${prefix}-template-${p + 1}-${c + 1}-${i + 1}`)
      )
    })
  )
}
