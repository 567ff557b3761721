/** The wiring from battery to drivers as a line drawing: what connects to what, with size and rating at each line. */
import { ink } from '../draw/paper.ts'
import { svgDocument, textAt } from '../draw/svg.ts'
import { capacitor, secondBattery } from './system-wiring-accessories.ts'
import { blockSide } from './system-wiring-block.ts'
import { alarm, device, driversInBox, fitted, note, type Points, run, sign } from './system-wiring-figures.ts'
import {
  BASS_HEIGHT,
  type SystemWiring,
  TOP,
  type WiringBranch,
  type WiringLayout,
  wiringLayout
} from './system-wiring-layout.ts'
import { returnPath, trunk } from './system-wiring-trunk.ts'

function branchText(name: string, { fuse, positive, negative }: WiringBranch, from = 'block'): string {
  return `From the ${from} through ${fuse ?? 'no fuse'} and ${positive} to ${name}, minus by ${negative}.`
}

function accessoriesText({
  secondBattery: second,
  link,
  fusedAtEnd,
  capacitor: stored
}: SystemWiring): readonly string[] {
  const { name, fuse, positive, negative } = second ?? {}
  return [
    ...(fusedAtEnd === true ? ['The same fuse again at the far end of the trunk.'] : []),
    ...(link === undefined ? [] : [`Before the block: ${[link.title, ...link.lines].join(', ')}.`]),
    ...(positive === undefined
      ? []
      : [
          `Second battery ${name}, plus through ${fuse ?? 'no fuse'} and ${positive} to the block, minus by ${negative}.`
        ]),
    ...(stored === undefined ? [] : [`Capacitor ${stored.join(', ')}.`])
  ]
}

function systemWiringText(diagram: SystemWiring): string {
  const { battery, fuse, positive, negative, block, speakerWire, load, driverCount, joints, source, signal, turnOn } =
    diagram
  return [
    `${battery}, plus through ${fuse ?? 'no rated fuse'} and ${positive} to the ${block === undefined ? 'amplifier' : block.title === 'Block' ? 'distribution block' : `converter, ${block.ways.join(', ')}`}; minus by ${negative}.`,
    ...(block === undefined
      ? []
      : [
          ...block.others.map(branch => branchText(branch.amplifier, branch)),
          branchText('the bass amplifier', block.bass, block.title.toLowerCase())
        ]),
    ...accessoriesText(diagram),
    `Amplifier by ${speakerWire} to ${driverCount} ${driverCount === 1 ? 'driver' : 'drivers'}, ${load}.`,
    ...joints,
    `${source} by ${signal} to the amplifier${diagram.signalEnd === undefined ? '' : ` through a ${diagram.signalEnd}`}${turnOn === undefined ? '' : `, turned on by ${turnOn}`}.`,
    ...diagram.notDrawn.map(text => `Not drawn: ${text}`)
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

function batteries({ battery }: SystemWiring, { batteryHeight, minusY }: WiringLayout): string {
  return [
    device(20, TOP, 110, batteryHeight, 'Battery', [battery]),
    sign(136, 106, '+', 14),
    sign(136, minusY - 4, '−', 14)
  ].join('')
}

/** The bass amplifier and what it drives. */
function driverSide(diagram: SystemWiring, { amplifierX, bassY, driversX }: WiringLayout): string {
  const { amplifier, speakerWire, load, driverCount } = diagram
  const right = amplifierX + 150
  const middle = (right + driversX) / 2
  const plus: Points = [
    [right, bassY + 26],
    [driversX, bassY + 26]
  ]
  const minus: Points = [
    [right, bassY + 46],
    [driversX, bassY + 46]
  ]
  return [
    device(amplifierX, bassY, 150, BASS_HEIGHT, 'Amplifier', amplifier),
    run(plus, 'plus'),
    run(minus, 'minus'),
    sign(right + 6, bassY + 21, '+', 13),
    sign(right + 6, bassY + 60, '−', 13),
    driversInBox(driversX, bassY - 28, driverCount),
    ...wrapped(speakerWire, 15).map((text, index) =>
      textAt(middle, bassY + 78 + index * 13, text, { size: 10, anchor: 'middle' })
    ),
    textAt(middle, bassY + 124, fitted(load, 100), { size: 10, anchor: 'middle' })
  ].join('')
}

/** The source, its signal line and, where the amplifier needs one, the turn-on line. */
function sourceSide(
  { source, signal, signalEnd, turnOn }: SystemWiring,
  { sourceY, amplifierX, bassY }: WiringLayout
): string {
  const into = bassY + BASS_HEIGHT
  const signalLine: Points = [
    [170, sourceY + 20],
    [amplifierX + 75, sourceY + 20],
    [amplifierX + 75, into]
  ]
  const turnOnLine: Points = [
    [170, sourceY + 46],
    [amplifierX + 110, sourceY + 46],
    [amplifierX + 110, into]
  ]
  const width = amplifierX - 110
  const middle = (170 + amplifierX + 75) / 2
  return [
    device(20, sourceY, 150, 60, 'Source', [source]),
    run(signalLine, 'thin'),
    note(middle, sourceY + 13, signal, { width }),
    signalEnd === undefined ? '' : note(amplifierX + 68, into + 16, signalEnd, { anchor: 'end' }),
    ...(turnOn === undefined ? [] : [run(turnOnLine, 'thin'), note(middle, sourceY + 40, turnOn, { width })])
  ].join('')
}

const LEGEND =
  'Solid lines: positive and signal. Dashed: negative. Power cables are joined with the battery off; the fuse goes in last.'

export function systemWiring(diagram: SystemWiring, id = 'wiring-diagram'): string {
  const layout = wiringLayout(diagram)
  const { width, legendY, plusY } = layout
  const most = Math.floor(width / 6.8)
  const missing = diagram.notDrawn.flatMap(text => wrapped(`Not drawn: ${text}`, most))
  const joints = diagram.joints.flatMap(joint => wrapped(joint, most))
  const below = legendY + 20 + missing.length * 15
  return svgDocument(
    { id, title: 'Wiring from battery to drivers', description: systemWiringText(diagram) },
    { width, height: below + 4 + joints.length * 15 },
    textAt(20, 30, 'Wiring', { size: 17, bold: true }),
    trunk(diagram, layout),
    plusY.length > 1
      ? run(
          [
            [130, 111],
            [150, 111]
          ],
          'plus'
        )
      : '',
    returnPath(diagram, layout),
    batteries(diagram, layout),
    secondBattery(diagram, layout),
    capacitor(diagram, layout),
    ...(diagram.block === undefined ? [] : [blockSide(diagram, diagram.block, layout)]),
    driverSide(diagram, layout),
    sourceSide(diagram, layout),
    textAt(20, legendY, LEGEND, { size: 10.5, colour: ink.quiet, className: 'quiet' }),
    ...missing.map((line, index) => alarm(20, legendY + 20 + index * 15, line, 'start')),
    ...joints.map((line, index) => textAt(20, below + index * 15, line, { size: 11 }))
  )
}
