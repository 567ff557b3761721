/** The wiring of coils as a drawing: terminals, links and joints, from amplifier plus to amplifier minus. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { Coil, CoilNetwork } from '../../domain/coils/coil-network.ts'
import { coilLines, jointSaid, jointsOf, terminalSaid } from '../../domain/coils/joints.ts'
import { toDigits } from '../../domain/digits.ts'
import { type Language, spoken, told } from '../../domain/say.ts'
import { figure } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import { broken } from './wiring-figures.ts'
import {
  coilBox,
  type PlacedCoil,
  type PlacedJoint,
  type Point,
  type WiringLayout,
  wiringLayout
} from './wiring-layout.ts'

export interface DrawnWiring {
  readonly language: Language
  readonly network: CoilNetwork<Coil>
  readonly driverCount: number
  readonly coilsPerDriver: number
  readonly loadOhm: number
  readonly join: string
}

/** As wide as a phone has pixels; a network that needs more makes the drawing wider. */
const WIDTH = 340
const MARGIN = 12
const AMPLIFIER_TOP = 8
const AMPLIFIER_HEIGHT = 46
/** From the amplifier down to the network. */
const LEAD = 34
/** Between the lines of text of the head. */
const LEADING = 17
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

function coilAt({ coil, x, y }: PlacedCoil, coilsPerDriver: number, language: Language): string {
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
    textAt(x + 8, middle + 4.5, '+', { size: 14, bold: true }) +
    textAt(x + coilBox.width - 7, middle + 4.5, '−', { size: 14, anchor: 'end', bold: true }) +
    coilLines(coil, coilsPerDriver)
      .map(line => spoken(line, language))
      .map((line, index, { length }) =>
        textAt(x + coilBox.width / 2, middle + 4 + (2 * index + 1 - length) * 8, line, { size: 11.5, anchor: 'middle' })
      )
      .join('')
  )
}

function jointAt(joint: PlacedJoint, language: Language): string {
  const label =
    joint.number === undefined
      ? ''
      : textAt(joint.x, joint.y - 10, told(language, 'coils.drawn-joint', { number: joint.number }), {
          size: 11,
          anchor: 'middle',
          colour: ink.quiet,
          className: 'quiet'
        })
  return dot(joint) + label
}

/** Across the network, its terminals over the ends of it. */
function amplifierAt({ plus, minus }: WiringLayout, top: number, language: Language): string {
  const bottom = top + AMPLIFIER_HEIGHT
  return (
    element('rect', {
      x: plus.x - 8,
      y: top,
      width: minus.x - plus.x + 16,
      height: AMPLIFIER_HEIGHT,
      rx: 2,
      fill: 'none',
      stroke: ink.text,
      class: 'line',
      'stroke-width': 2
    }) +
    textAt((plus.x + minus.x) / 2, top + 20, told(language, 'wire.driver-circuit'), { size: 13, anchor: 'middle' }) +
    [
      { x: plus.x, sign: '+' },
      { x: minus.x, sign: '−' }
    ]
      .map(
        ({ x, sign }) =>
          wire({ x, y: bottom }, { x, y: plus.y }) +
          terminal(x, bottom) +
          textAt(x, bottom - 10, sign, { size: 14, anchor: 'middle', bold: true })
      )
      .join('')
  )
}

/** The drawing in words, joint by joint, for whoever cannot see it. */
export function wiringDescription({ network, coilsPerDriver, language }: DrawnWiring): string {
  const said = (each: Said) => spoken(each, language)
  return jointsOf(network)
    .map(joint => {
      const ends = joint.terminals.map(end => said(terminalSaid(end, coilsPerDriver))).join(', ')
      return `${said(jointSaid(joint))}: ${ends}.`
    })
    .join(' ')
}

export function wiringDiagram(wiring: DrawnWiring): string {
  const { network, driverCount, coilsPerDriver, loadOhm, join, language } = wiring
  const drivers = { driverCount, load: figure(toDigits(loadOhm), 12, wiring) }
  const title =
    coilsPerDriver === 1
      ? told(language, 'wire.coils-title', drivers)
      : told(language, 'wire.coils-title-each', { ...drivers, count: coilsPerDriver })
  const probe = wiringLayout(network, 0, 0)
  const width = Math.max(WIDTH, probe.width + 4 * MARGIN)
  const head = [title, join].map((text, index) => broken(text, width - 2 * MARGIN, index === 0 ? 14 : 12))
  const [titles = [], joins = []] = head
  const top = AMPLIFIER_TOP + LEADING * (titles.length + joins.length)
  const layout = wiringLayout(network, (width - probe.width) / 2, top + AMPLIFIER_HEIGHT + LEAD)
  const said = [...titles, ...joins].map((text, index) => {
    const y = AMPLIFIER_TOP + 8 + LEADING * index
    return index < titles.length
      ? textAt(MARGIN, y, text, { size: 14, bold: true })
      : textAt(MARGIN, y, text, { size: 12, colour: ink.quiet, className: 'quiet' })
  })
  return svgDocument(
    { id: 'wiring', title, description: wiringDescription(wiring) },
    { width, height: top + AMPLIFIER_HEIGHT + LEAD + layout.height + MARGIN },
    ...said,
    amplifierAt(layout, top, language),
    ...layout.wires.map(({ from, to }) => wire(from, to)),
    ...layout.joints.map(joint => jointAt(joint, language)),
    ...layout.coils.map(coil => coilAt(coil, coilsPerDriver, language))
  )
}
