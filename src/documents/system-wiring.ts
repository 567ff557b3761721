/** The wiring from battery to drivers as a line drawing: what connects to what, with size and rating at each line. */
import { ink } from './paper.ts'
import { element, svgDocument, textAt } from './svg.ts'
import { device, driverFigures, fitted, fuseFigure, note, returnPath, run, size } from './system-wiring-figures.ts'

export interface SystemWiring {
  readonly battery: string
  /** Rating and type; absent when the fuse could not be rated. */
  readonly fuse?: string
  readonly fusePlace?: string
  readonly positive: string
  readonly negative: string
  /** `body`: both ends go to the body of the car; `cable`: a cable runs back to the battery. */
  readonly returnBy: 'body' | 'cable'
  readonly amplifier: readonly string[]
  readonly speakerWire: string
  readonly load: string
  readonly driverCount: number
  /** How the coils are joined, a sentence each. */
  readonly joints: readonly string[]
  readonly source: string
  readonly signal: string
  /** Absent when the amplifier wakes by the signal. */
  readonly turnOn?: string
}

function systemWiringText(diagram: SystemWiring): string {
  const { battery, fuse, positive, negative, speakerWire, load, driverCount, joints, source, signal, turnOn } = diagram
  return [
    `${battery}, plus through ${fuse ?? 'no rated fuse'} and ${positive} to the amplifier; minus by ${negative}.`,
    `Amplifier by ${speakerWire} to ${driverCount} ${driverCount === 1 ? 'driver' : 'drivers'}, ${load}.`,
    ...joints,
    `${source} by ${signal} to the amplifier${turnOn === undefined ? '' : `, turned on by ${turnOn}`}.`
  ].join(' ')
}

/** Breaks a sentence at spaces. */
function wrapped(text: string, most: number): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines
}

type Points = Parameters<typeof run>[0]

const sign = (x: number, y: number, text: string, size: number) => textAt(x, y, text, { size, bold: true })

/** Battery, fuse and return path, up to the amplifier. */
function supplySide(diagram: SystemWiring): string {
  const toFuse: Points = [
    [130, 111],
    [196, 111]
  ]
  const fromFuse: Points = [
    [240, 111],
    [400, 111]
  ]
  return [
    run(toFuse, 'plus'),
    run(fromFuse, 'plus'),
    returnPath(diagram),
    fuseFigure(diagram),
    note(320, 128, diagram.positive),
    device(20, 84, 110, 118, 'Battery', [diagram.battery]),
    sign(136, 106, '+', 14),
    sign(136, 172, '−', 14)
  ].join('')
}

function boxOutline(driverCount: number): string {
  return element('rect', {
    x: 640,
    y: 56,
    width: 100,
    height: Math.min(driverCount, 4) * 76 + 6,
    rx: 3,
    fill: 'none',
    stroke: ink.quiet,
    class: 'thin',
    'stroke-dasharray': '4 3'
  })
}

/** The amplifier and what it drives. */
function driverSide({ amplifier, speakerWire, load, driverCount }: SystemWiring): string {
  const plus: Points = [
    [550, 120],
    [640, 120]
  ]
  const minus: Points = [
    [550, 150],
    [640, 150]
  ]
  return [
    device(400, 84, 150, 150, 'Amplifier', amplifier),
    run(plus, 'plus'),
    run(minus, 'minus'),
    sign(556, 115, '+', 13),
    sign(556, 166, '−', 13),
    boxOutline(driverCount),
    textAt(690, 48, 'box', { size: 11, anchor: 'middle', colour: ink.quiet, className: 'quiet' }),
    driverFigures(driverCount),
    textAt(595, 186, fitted(speakerWire, 100), { size: 10, anchor: 'middle' }),
    textAt(595, 201, fitted(load, 100), { size: 10, anchor: 'middle' })
  ].join('')
}

/** The source, its signal line and, where the amplifier needs one, the turn-on line. */
function sourceSide({ source, signal, turnOn }: SystemWiring): string {
  const signalLine: Points = [
    [170, 310],
    [475, 310],
    [475, 234]
  ]
  const turnOnLine: Points = [
    [170, 336],
    [510, 336],
    [510, 234]
  ]
  return [
    device(20, 290, 150, 60, 'Source', [source]),
    run(signalLine, 'thin'),
    note(320, 303, signal),
    ...(turnOn === undefined ? [] : [run(turnOnLine, 'thin'), note(320, 330, turnOn)])
  ].join('')
}

const LEGEND =
  'Solid lines: positive and signal. Dashed: negative. The fuse goes in last; the battery is off while anything is joined.'

export function systemWiring(diagram: SystemWiring, id = 'wiring-diagram'): string {
  const jointLines = diagram.joints.flatMap(joint => wrapped(joint, 112))
  return svgDocument(
    { id, title: 'Wiring from battery to drivers', description: systemWiringText(diagram) },
    { ...size, height: size.height + jointLines.length * 15 },
    textAt(20, 30, 'Wiring', { size: 17, bold: true }),
    supplySide(diagram),
    driverSide(diagram),
    sourceSide(diagram),
    textAt(20, 376, LEGEND, { size: 10.5, colour: ink.quiet, className: 'quiet' }),
    ...jointLines.map((line, index) => textAt(20, 396 + index * 15, line, { size: 11 }))
  )
}
