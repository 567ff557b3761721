/** The wiring of coils as a drawing: terminals, links and joints, from amplifier plus to amplifier minus. */
import type { Coil, CoilNetwork } from '../../domain/coils/coil-network.ts'
import { coilName, jointsOf, terminalName } from '../../domain/coils/joints.ts'
import { toDigits } from '../../domain/digits.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt, textWidth } from '../draw/svg.ts'
import {
  coilBox,
  type PlacedCoil,
  type PlacedJoint,
  type Point,
  type WiringLayout,
  wiringLayout
} from './wiring-layout.ts'

export interface DrawnWiring {
  readonly network: CoilNetwork<Coil>
  readonly driverCount: number
  readonly coilsPerDriver: number
  readonly loadOhm: number
  readonly join: string
}

const MARGIN = 32
const HEAD = 84
const AMPLIFIER = { width: 104, height: 96 } as const
const LEAD = 64
const RETURN = 54
const TERMINAL = 5

const wire = (from: Point, to: Point) =>
  element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: ink.cut, class: 'cut', 'stroke-width': 2 })

const dot = ({ x, y }: Point) => element('circle', { cx: x, cy: y, r: 4, fill: ink.cut, class: 'cut-fill' })

const terminal = (x: number, y: number) =>
  element('circle', {
    cx: x,
    cy: y,
    r: TERMINAL,
    fill: ink.paper,
    stroke: ink.text,
    class: 'paper line',
    'stroke-width': 1.5
  })

function coilAt({ coil, x, y }: PlacedCoil, coilsPerDriver: number): string {
  const middle = y + coilBox.height / 2
  return (
    element('rect', {
      x,
      y,
      width: coilBox.width,
      height: coilBox.height,
      rx: 6,
      fill: ink.wood,
      stroke: ink.text,
      class: 'wood line',
      'stroke-width': 1.5
    }) +
    terminal(x, middle) +
    terminal(x + coilBox.width, middle) +
    textAt(x + 12, middle + 4.5, '+', { size: 14, bold: true }) +
    textAt(x + coilBox.width - 12, middle + 4.5, '−', { size: 14, anchor: 'end', bold: true }) +
    textAt(x + coilBox.width / 2, middle + 4, coilName(coil, coilsPerDriver), { size: 11.5, anchor: 'middle' })
  )
}

function jointAt(joint: PlacedJoint): string {
  const label =
    joint.number === undefined
      ? ''
      : textAt(joint.x, joint.y - 10, `joint ${joint.number}`, {
          size: 10,
          anchor: 'middle',
          colour: ink.quiet,
          className: 'quiet'
        })
  return dot(joint) + label
}

function amplifierAt(x: number, y: number): string {
  const right = x + AMPLIFIER.width
  return (
    element('rect', {
      x,
      y,
      width: AMPLIFIER.width,
      height: AMPLIFIER.height,
      rx: 6,
      fill: 'none',
      stroke: ink.text,
      class: 'line',
      'stroke-width': 2
    }) +
    textAt(x + 12, y + AMPLIFIER.height / 2 + 4, 'amplifier', { size: 13 }) +
    terminal(right, y + 24) +
    terminal(right, y + AMPLIFIER.height - 24) +
    textAt(right - 12, y + 29, '+', { size: 14, anchor: 'end', bold: true }) +
    textAt(right - 12, y + AMPLIFIER.height - 19, '−', { size: 14, anchor: 'end', bold: true })
  )
}

/** Plus straight across to the network, minus round below it. */
function leads({ plus, minus }: WiringLayout, amplifierY: number, floor: number): string {
  const x = MARGIN + AMPLIFIER.width
  const plusY = amplifierY + 24
  const minusY = amplifierY + AMPLIFIER.height - 24
  const turn = x + LEAD / 2
  const points: readonly (readonly [Point, Point])[] = [
    [
      { x, y: plusY },
      { x: turn + LEAD / 4, y: plusY }
    ],
    [
      { x: turn + LEAD / 4, y: plusY },
      { x: turn + LEAD / 4, y: plus.y }
    ],
    [{ x: turn + LEAD / 4, y: plus.y }, plus],
    [
      { x, y: minusY },
      { x: turn, y: minusY }
    ],
    [
      { x: turn, y: minusY },
      { x: turn, y: floor }
    ],
    [
      { x: turn, y: floor },
      { x: minus.x + LEAD / 2, y: floor }
    ],
    [
      { x: minus.x + LEAD / 2, y: floor },
      { x: minus.x + LEAD / 2, y: minus.y }
    ],
    [{ x: minus.x + LEAD / 2, y: minus.y }, minus]
  ]
  return points.map(([from, to]) => wire(from, to)).join('')
}

/** The drawing in words, joint by joint, for whoever cannot see it. */
export function wiringDescription({ network, coilsPerDriver }: DrawnWiring): string {
  return jointsOf(network)
    .map(({ name, terminals }) => `${name}: ${terminals.map(end => terminalName(end, coilsPerDriver)).join(', ')}.`)
    .join(' ')
}

export function wiringDiagram(wiring: DrawnWiring): string {
  const { network, driverCount, coilsPerDriver, loadOhm, join } = wiring
  const ohm = toDigits(loadOhm)
  const coils = coilsPerDriver === 1 ? '' : ` with ${coilsPerDriver} coils each`
  const title = `${driverCount} ${driverCount === 1 ? 'driver' : 'drivers'}${coils} wired to ${ohm} Ω`
  const left = MARGIN + AMPLIFIER.width + LEAD
  const probe = wiringLayout(network, left, HEAD)
  const top = HEAD + Math.max(0, (AMPLIFIER.height - probe.height) / 2)
  const layout = wiringLayout(network, left, top)
  const floor = top + Math.max(layout.height, (layout.height + AMPLIFIER.height) / 2) + RETURN / 2
  const amplifierY = layout.plus.y - AMPLIFIER.height / 2
  const text = Math.max(textWidth(title, 17), textWidth(join, 12))
  const width = Math.max(layout.minus.x + LEAD / 2, MARGIN + text) + MARGIN
  return svgDocument(
    { id: 'wiring', title, description: wiringDescription(wiring) },
    { width, height: floor + MARGIN },
    textAt(MARGIN, 36, title, { size: 17, bold: true }),
    textAt(MARGIN, 58, join, { size: 12, colour: ink.quiet, className: 'quiet' }),
    leads(layout, amplifierY, floor),
    amplifierAt(MARGIN, amplifierY),
    ...layout.wires.map(({ from, to }) => wire(from, to)),
    ...layout.joints.map(jointAt),
    ...layout.coils.map(coil => coilAt(coil, coilsPerDriver))
  )
}
