/** What stands beside battery and block: the second battery with its fuse and ground, a capacitor with its leads. */

import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'
import { bodyPoint, device, fitted, fuseLink, note, run, sign } from './system-wiring-figures.ts'
import {
  BASS_HEIGHT,
  SECOND_HEIGHT,
  type SystemWiring,
  type WiringBattery,
  type WiringLayout
} from './system-wiring-layout.ts'

const FUSE_X = 196
const FUSE_WIDTH = 44
const blockBottom = ({ bassY }: WiringLayout) => bassY + BASS_HEIGHT - 40

/** Over its fuse to the block, from the side or from below. */
function secondPlus({ fuse, positive = '' }: WiringBattery, layout: WiringLayout): string {
  const { blockX, blockWidth, secondY } = layout
  const y = secondY + 27
  const bottom = blockBottom(layout)
  const middle = blockX + blockWidth / 2
  const end =
    y < bottom - 8
      ? ([[blockX, y]] as const)
      : ([
          [middle, y],
          [middle, bottom]
        ] as const)
  if (fuse === undefined) return note(160, y, 'no fused lead: do not connect', { anchor: 'start' })
  return [
    run(
      [
        [150, y],
        [FUSE_X, y]
      ],
      'plus'
    ),
    run([[FUSE_X + FUSE_WIDTH, y], ...end], 'plus'),
    fuseLink(FUSE_X, y),
    textAt(FUSE_X - 20, y - 13, fitted(fuse, 210), { size: 11, bold: true }),
    note(FUSE_X + FUSE_WIDTH + 8, y + 17, positive, { anchor: 'start', width: 180 })
  ].join('')
}

function secondMinus({ negative = '' }: WiringBattery, returnBy: SystemWiring['returnBy'], y: number): string {
  const toBody = returnBy === 'body'
  return [
    run([[150, y], [178, y], ...(toBody ? ([[178, y + 8]] as const) : [])], 'minus'),
    toBody ? bodyPoint(178, y + 8) : element('circle', { cx: 178, cy: y, r: 3.5, fill: ink.text, class: 'ink-fill' }),
    note(196, y + 10, negative, { anchor: 'start', width: 230 })
  ].join('')
}

export function secondBattery({ secondBattery: second, returnBy }: SystemWiring, layout: WiringLayout): string {
  if (second === undefined) return ''
  const { secondY } = layout
  const figure = device(20, secondY, 130, SECOND_HEIGHT, 'Second battery', [second.name])
  if (second.positive === undefined) return figure
  return [
    figure,
    sign(156, secondY + 22, '+', 14),
    sign(156, secondY + 56, '−', 14),
    secondPlus(second, layout),
    secondMinus(second, returnBy, secondY + 62)
  ].join('')
}

/** Plus lead in the block or the amplifier, minus lead in the amplifier or at the body. */
export function capacitor({ capacitor: stored, block, returnBy }: SystemWiring, layout: WiringLayout): string {
  if (stored === undefined) return ''
  const { blockX, amplifierX, bassY } = layout
  const into = bassY + BASS_HEIGHT
  const y = into + (block === undefined ? 28 : 12)
  if (block === undefined) {
    return [
      device(250, y, 120, 42, 'Capacitor', stored),
      run(
        [
          [370, y + 12],
          [amplifierX + 15, y + 12],
          [amplifierX + 15, into]
        ],
        'plus'
      ),
      run(
        [
          [370, y + 30],
          [amplifierX + 32, y + 30],
          [amplifierX + 32, into]
        ],
        'minus'
      )
    ].join('')
  }
  const x = blockX + 100
  return [
    device(x, y - 30, 130, 42, 'Capacitor', stored),
    run(
      [
        [blockX + 44, blockBottom(layout)],
        [blockX + 44, y - 14],
        [x, y - 14]
      ],
      'plus'
    ),
    run(
      [
        [x + 130, y - 6],
        [x + 150, y - 6],
        [x + 150, y]
      ],
      'minus'
    ),
    returnBy === 'body' ? bodyPoint(x + 150, y) : note(x + 156, y, 'returns', { anchor: 'start' })
  ].join('')
}
