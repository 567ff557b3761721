/** The whole box seen from the front right and above: which panel goes where. Panels in front whole, those behind dashed. */
import type { BoxLayout } from '../domain/box/box-layout.ts'
import type { CutOut, Direction3, Panel, PanelPlace, PanelPoint } from '../domain/box/panel.ts'
import { lengthText, type PaperUnits } from './number-text.ts'
import { ink } from './paper.ts'
import { element, svgDocument, textAt } from './svg.ts'

/** Oblique: the front keeps its true shape, depth runs up to the right. */
const depth = { right: 0.42, up: 0.3 } as const
/** Towards the eye. */
const view: Direction3 = { x: depth.right, y: -1, z: depth.up }

interface Spot {
  readonly x: number
  readonly y: number
}

const drawn = { width: 620, height: 380, left: 70, top: 56 } as const

function cross(a: Direction3, b: Direction3): Direction3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x }
}

/** The outer face looks along u × v. */
function faces({ uAxis, vAxis }: PanelPlace): boolean {
  const normal = cross(uAxis, vAxis)
  return normal.x * view.x + normal.y * view.y + normal.z * view.z > 1e-9
}

type Project = (place: PanelPlace, point: PanelPoint) => Spot

function projection({ widthM, heightM, depthM }: BoxLayout['outer']): Project {
  const scale = Math.min(drawn.width / (widthM + depth.right * depthM), drawn.height / (heightM + depth.up * depthM))
  return ({ origin, uAxis: u, vAxis: v }, { uM, vM }) => {
    const x = origin.xM + uM * u.x + vM * v.x
    const y = origin.yM + uM * u.y + vM * v.y
    const z = origin.zM + uM * u.z + vM * v.z
    return {
      x: drawn.left + scale * (x + depth.right * y),
      y: drawn.top + scale * (heightM + depth.up * depthM - z - depth.up * y)
    }
  }
}

const points = (spots: readonly Spot[]) => spots.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')

function rim({ kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0 }: CutOut): readonly PanelPoint[] {
  if (kind === 'circle') {
    return Array.from({ length: 48 }, (_, index) => {
      const angle = (2 * Math.PI * index) / 48
      return { uM: uM + (diameterM / 2) * Math.cos(angle), vM: vM + (diameterM / 2) * Math.sin(angle) }
    })
  }
  const [w, h] = [widthM / 2, heightM / 2]
  return [
    { uM: uM - w, vM: vM - h },
    { uM: uM + w, vM: vM - h },
    { uM: uM + w, vM: vM + h },
    { uM: uM - w, vM: vM + h }
  ]
}

function hidden({ outline }: Panel, place: PanelPlace, project: Project): string {
  const spots = outline.map(point => project(place, point))
  return element('polygon', {
    points: points(spots),
    fill: 'none',
    stroke: ink.quiet,
    class: 'thin',
    'stroke-width': 0.9,
    'stroke-dasharray': '4 3'
  })
}

function visible({ name, outline, cutOuts }: Panel, place: PanelPlace, project: Project): string {
  const spots = outline.map(point => project(place, point))
  const middle = spots.reduce((sum, { x, y }) => ({ x: sum.x + x / spots.length, y: sum.y + y / spots.length }), {
    x: 0,
    y: 0
  })
  const holes = cutOuts
    .filter(({ rebateDepthM, purpose }) => rebateDepthM === undefined && purpose !== 'brace-window')
    .map(cutOut =>
      element('polygon', {
        points: points(rim(cutOut).map(point => project(place, point))),
        fill: ink.paper,
        class: 'hole',
        stroke: ink.cut,
        'stroke-width': 1.3
      })
    )
  const lowest = spots.reduce((best, spot) => (spot.y > best.y ? spot : best))
  const label = cutOuts.length > 0 ? { x: middle.x, y: lowest.y - 7 } : { x: middle.x, y: middle.y + 4 }
  return (
    element('polygon', {
      points: points(spots),
      fill: ink.wood,
      class: 'wood',
      stroke: ink.text,
      'stroke-width': 1.4,
      'stroke-linejoin': 'round'
    }) +
    holes.join('') +
    textAt(label.x, label.y, name, { size: 12, anchor: 'middle', bold: true })
  )
}

/** @returns undefined for a box whose panels have no place */
export function boxOverview(box: BoxLayout, id: string, paper: PaperUnits): string | undefined {
  const placed = box.panels.flatMap(panel => (panel.place === undefined ? [] : [{ panel, place: panel.place }]))
  if (placed.length < 4) return undefined
  const project = projection(box.outer)
  const shell = placed.filter(({ panel }) => !['brace', 'port-wall', 'divider', 'baffle-ring'].includes(panel.role))
  const front = shell.filter(({ place }) => faces(place))
  const { widthM, heightM, depthM, topDepthM } = box.outer
  const sizes = `outside: width ${lengthText(widthM, paper)}, height ${lengthText(heightM, paper)}, depth ${lengthText(depthM, paper)}${topDepthM === undefined ? '' : ` at the floor, ${lengthText(topDepthM, paper)} at the lid`}`
  return svgDocument(
    {
      id,
      title: 'The box, seen from the front right and above',
      description: `Panels ${box.panels.map(({ name }) => name).join(', ')}; ${sizes}.`
    },
    { width: drawn.width + 2 * drawn.left, height: drawn.height + drawn.top + 54 },
    textAt(20, 30, 'The box', { size: 17, bold: true }),
    ...front.map(({ panel, place }) => visible(panel, place, project)),
    ...placed.filter(entry => !front.includes(entry)).map(({ panel, place }) => hidden(panel, place, project)),
    textAt(20, drawn.height + drawn.top + 36, `${sizes}. Dashed: panels behind and inside.`, {
      size: 12,
      colour: ink.quiet,
      className: 'quiet'
    })
  )
}
