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

export function systemWiringText(diagram: SystemWiring): string {
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

export function systemWiring(diagram: SystemWiring, id = 'wiring-diagram'): string {
  const { battery, positive, amplifier, speakerWire, load, driverCount, joints, source, signal, turnOn } = diagram
  const jointLines = joints.flatMap(joint => wrapped(joint, 112))
  return svgDocument(
    { id, title: 'Wiring from battery to drivers', description: systemWiringText(diagram) },
    { ...size, height: size.height + jointLines.length * 15 },
    textAt(20, 30, 'Wiring', { size: 17, bold: true }),
    run(
      [
        [130, 111],
        [196, 111]
      ],
      'plus'
    ),
    run(
      [
        [240, 111],
        [400, 111]
      ],
      'plus'
    ),
    returnPath(diagram),
    fuseFigure(diagram),
    note(320, 128, positive),
    device(20, 84, 110, 118, 'Battery', [battery]),
    textAt(136, 106, '+', { size: 14, bold: true }),
    textAt(136, 172, '−', { size: 14, bold: true }),
    device(400, 84, 150, 150, 'Amplifier', amplifier),
    run(
      [
        [550, 120],
        [640, 120]
      ],
      'plus'
    ),
    run(
      [
        [550, 150],
        [640, 150]
      ],
      'minus'
    ),
    textAt(556, 115, '+', { size: 13, bold: true }),
    textAt(556, 166, '−', { size: 13, bold: true }),
    element('rect', {
      x: 640,
      y: 56,
      width: 100,
      height: Math.min(driverCount, 4) * 76 + 6,
      rx: 3,
      fill: 'none',
      stroke: ink.quiet,
      class: 'thin',
      'stroke-dasharray': '4 3'
    }),
    textAt(690, 48, 'box', { size: 11, anchor: 'middle', colour: ink.quiet, className: 'quiet' }),
    driverFigures(driverCount),
    textAt(595, 186, fitted(speakerWire, 100), { size: 10, anchor: 'middle' }),
    textAt(595, 201, fitted(load, 100), { size: 10, anchor: 'middle' }),
    device(20, 290, 150, 60, 'Source', [source]),
    run(
      [
        [170, 310],
        [475, 310],
        [475, 234]
      ],
      'thin'
    ),
    note(320, 303, signal),
    ...(turnOn === undefined
      ? []
      : [
          run(
            [
              [170, 336],
              [510, 336],
              [510, 234]
            ],
            'thin'
          ),
          note(320, 330, turnOn)
        ]),
    textAt(
      20,
      376,
      'Whole lines plus or signal, dashed lines minus. The fuse goes in last; the battery is off while anything is joined.',
      { size: 10.5, colour: ink.quiet, className: 'quiet' }
    ),
    ...jointLines.map((line, index) => textAt(20, 396 + index * 15, line, { size: 11 }))
  )
}
