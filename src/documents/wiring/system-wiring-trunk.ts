/** From the battery to the amplifier or to the distribution block, and the way back. */
import { ink } from '../draw/paper.ts'
import { textAt } from '../draw/svg.ts'
import { alarm, bodyPoint, device, fitted, fuseLink, note, type Points, run } from './system-wiring-figures.ts'
import type { SystemWiring, WiringLayout } from './system-wiring-layout.ts'

const FUSE_X = 196
const FUSE_WIDTH = 44
const END_FUSE_X = 256

/** A relay stands behind the end fuses, a charger right behind the trunk with the fuse of its output at the block. */
function linkBox({ link }: SystemWiring, { plusY }: WiringLayout): string {
  if (link === undefined) return ''
  const [firstY = 111] = plusY
  const height = Math.max(30 + 14 * link.lines.length, (plusY.at(-1) ?? firstY) - firstY + 16)
  if (link.fuse === undefined) return device(314, firstY - 10, 66, height, link.title, link.lines)
  return [
    device(248, firstY - 10, 78, height, link.title, link.lines),
    fuseLink(340, firstY),
    ...link.fuse.map((text, index) => textAt(362, firstY + 24 + 13 * index, text, { size: 10.5, anchor: 'middle' }))
  ].join('')
}

/** Every cable of the trunk from the battery through its fuse; without a rated fuse nothing is joined. */
export function trunk(diagram: SystemWiring, layout: WiringLayout): string {
  const { fuse, fusePlace, positive, block, link, fusedAtEnd } = diagram
  const { plusY, blockX, amplifierX } = layout
  const end = block === undefined ? amplifierX : blockX
  const [firstY = 111] = plusY
  const below = link === undefined ? (fusedAtEnd === true ? 56 : 17) : 34 + 14 * Math.max(2, link.lines.length)
  const label = note((240 + end) / 2, (plusY.at(-1) ?? firstY) + below, positive, { width: end - 244 })
  if (fuse === undefined) return alarm(250, 92, 'no fuse rated: do not connect') + label
  const lines = plusY.flatMap(y => {
    const toFuse: Points =
      y === firstY
        ? [
            [130, y],
            [FUSE_X, y]
          ]
        : [
            [150, firstY],
            [150, y],
            [FUSE_X, y]
          ]
    const on: Points = [
      [FUSE_X + FUSE_WIDTH, y],
      [end, y]
    ]
    const far = fusedAtEnd === true ? fuseLink(END_FUSE_X, y) : ''
    return [run(toFuse, 'plus'), run(on, 'plus'), fuseLink(FUSE_X, y), far]
  })
  return [
    ...lines,
    linkBox(diagram, layout),
    textAt(268, 95, fitted(fuse, 250), { size: 11, anchor: 'middle', bold: true }),
    fusePlace === undefined
      ? ''
      : textAt(268, 80, fitted(fusePlace, 250), {
          size: 10.5,
          anchor: 'middle',
          colour: ink.quiet,
          className: 'quiet'
        }),
    label
  ].join('')
}

/** With a block the leads of the amplifiers are drawn with their branches. */
export function returnPath({ negative, returnBy, block }: SystemWiring, { minusY, amplifierX }: WiringLayout): string {
  if (returnBy === 'cable') {
    if (block !== undefined) return ''
    const line: Points = [
      [130, minusY],
      [amplifierX, minusY]
    ]
    return run(line, 'minus') + note(265, minusY + 18, negative)
  }
  const atBattery: Points = [
    [130, minusY],
    [168, minusY],
    [168, minusY + 30]
  ]
  const battery = run(atBattery, 'minus') + bodyPoint(168, minusY + 30)
  if (block !== undefined) return battery + note(188, minusY + 40, negative, { anchor: 'start', width: 206 })
  const atAmplifier: Points = [
    [amplifierX, minusY],
    [330, minusY],
    [330, minusY + 30]
  ]
  return [
    battery,
    run(atAmplifier, 'minus'),
    bodyPoint(330, minusY + 30),
    note(250, minusY + 60, negative),
    note(250, minusY + 75, 'each to its own bolt on bare metal')
  ].join('')
}
