/** A drawn boot that shows which size is which. */

import { element, svgDocument, textAt } from '../../documents/draw/svg.ts'
import { type Language, told } from '../../domain/say.ts'

const line = (x1: number, y1: number, x2: number, y2: number, className: string) =>
  element('line', { x1, y1, x2, y2, class: className })

export function bootSketch(language: Language): string {
  return svgDocument(
    {
      id: 'sketch',
      title: told(language, 'front.sketch'),
      description: told(language, 'front.sketch-words')
    },
    { width: 240, height: 150 },
    element('polygon', { points: '30,118 170,118 214,84 74,84', class: 'floor' }),
    element('polygon', { points: '74,84 214,84 214,20 74,20', class: 'seat' }),
    ...[102, 130, 158, 186].map(x => line(x, 20, x, 84, 'hatch')),
    textAt(144, 56, told(language, 'front.sketch.seat'), { size: 12, anchor: 'middle', className: 'quiet' }),
    line(30, 128, 170, 128, 'measure'),
    textAt(100, 143, told(language, 'front.sketch.width'), { size: 12, anchor: 'middle', className: 'measured' }),
    line(22, 118, 22, 54, 'measure'),
    textAt(17, 86, told(language, 'front.sketch.height'), {
      size: 12,
      anchor: 'middle',
      className: 'measured',
      turn: -90
    }),
    line(182, 118, 226, 84, 'measure'),
    textAt(216, 114, told(language, 'front.sketch.depth'), { size: 12, anchor: 'middle', className: 'measured' })
  )
}
