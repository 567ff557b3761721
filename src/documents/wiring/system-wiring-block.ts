/** The distribution block and the branches behind it, each with its fuse, its cable and its way back. */
import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'
import { alarm, bodyPoint, device, fuseLink, note, run } from './system-wiring-figures.ts'
import type { SystemWiring, WiringBlock, WiringBranch } from './system-wiring-layout.ts'
import { BASS_HEIGHT, OTHER_HEIGHT, type WiringLayout } from './system-wiring-layout.ts'

const FUSE_X = 486
const FUSE_WIDTH = 44
/** Of the plus and minus terminals below the top of an amplifier. */
const PLUS = 27
/** Where the ways back part from the amplifiers: to the body, or onto their common line. */
const LEAD_X = { body: 40, cable: 22 } as const
const minusOf = (bass: boolean) => (bass ? 96 : 60)

function plusSide(
  { fuse, positive }: WiringBranch,
  y: number,
  { blockX, blockWidth, amplifierX }: WiringLayout
): string {
  const from = blockX + blockWidth
  const middle = (from + amplifierX) / 2
  if (fuse === undefined) return alarm(middle, y, 'no fused branch: do not connect') + note(middle, y + 17, positive)
  return [
    run(
      [
        [from, y],
        [FUSE_X, y]
      ],
      'plus'
    ),
    run(
      [
        [FUSE_X + FUSE_WIDTH, y],
        [amplifierX, y]
      ],
      'plus'
    ),
    fuseLink(FUSE_X, y),
    textAt(middle - 8, y - 13, fuse, { size: 11, anchor: 'middle', bold: true }),
    note(middle + 20, y + 17, positive, { width: 190 })
  ].join('')
}

function minusSide({ negative }: WiringBranch, y: number, returnBy: SystemWiring['returnBy'], x: number): string {
  const byBody = returnBy === 'body'
  const end = x - LEAD_X[returnBy]
  return [
    run([[x, y], [end, y], ...(byBody ? ([[end, y + 10]] as const) : [])], 'minus'),
    byBody ? bodyPoint(end, y + 10) : element('circle', { cx: end, cy: y, r: 3.5, fill: ink.text, class: 'ink-fill' }),
    note(end - 16, y + 8, negative, { anchor: 'end', width: 200 })
  ].join('')
}

/** Where the branches go back by cable: their common line, its block, and the way to the battery. */
function returnBlock({ negative, returnBy, block }: SystemWiring, layout: WiringLayout): string {
  if (returnBy === 'body') return ''
  const { amplifierX, rows, bassY, returnY, minusY } = layout
  const x = amplifierX - LEAD_X.cable
  const top = (rows[0] ?? bassY) + minusOf(rows.length === 1)
  return [
    run(
      [
        [x, top],
        [x, returnY],
        [168, returnY],
        [168, minusY],
        [130, minusY]
      ],
      'minus'
    ),
    element('rect', {
      x: x - 42,
      y: returnY - 10,
      width: 84,
      height: 20,
      rx: 3,
      fill: ink.wood,
      class: 'wood',
      stroke: ink.text,
      'stroke-width': 1.4
    }),
    textAt(x, returnY + 4, block?.title === 'Converter' ? '− of converter' : 'returns', {
      size: 10.5,
      anchor: 'middle'
    }),
    note(400, returnY - 7, negative)
  ].join('')
}

export function blockSide(diagram: SystemWiring, block: WiringBlock, layout: WiringLayout): string {
  const { blockX, blockWidth, amplifierX, rows, bassY } = layout
  const branches = [...block.others, block.bass]
  return [
    returnBlock(diagram, layout),
    ...branches.map((branch, index) => plusSide(branch, (rows[index] ?? bassY) + PLUS, layout)),
    ...branches.map((branch, index) => {
      const y = (rows[index] ?? bassY) + minusOf(index === branches.length - 1)
      return minusSide(branch, y, diagram.returnBy, amplifierX)
    }),
    device(blockX, 84, blockWidth, bassY + BASS_HEIGHT - 40 - 84, block.title, block.ways),
    ...block.others.map(({ amplifier }, index) =>
      device(amplifierX, rows[index] ?? 0, 150, OTHER_HEIGHT, 'Amplifier', [
        amplifier,
        'loudspeakers and signal',
        'not drawn'
      ])
    )
  ].join('')
}
