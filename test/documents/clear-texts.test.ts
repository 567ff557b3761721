import { describe, expect, it } from 'vitest'
import { drawBox } from '../../src/documents/box/draw-box.ts'
import { clearTexts, drawnBlock, drawnDisc, drawnLine } from '../../src/documents/draw/clear-texts.ts'
import { tenBoxes } from '../support/ten-boxes.ts'

/** Attributes of every element of a kind, as a reader of XML finds them. */
const elements = (svg: string, name: string) =>
  [...svg.matchAll(new RegExp(`<${name}([^>]*)>([^<]*)`, 'g'))].map(([, attributes = '', text = '']) => ({
    text,
    ...Object.fromEntries(
      [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value])
    )
  })) as readonly Readonly<Record<string, string>>[]

/** Points along a line of text, taken narrower than any letter is, so that only what truly stands there counts. */
function alongText({ x = '', y = '', transform, text = '', ...rest }: Readonly<Record<string, string>>) {
  const size = Number(rest['font-size'])
  const turn = (Number(/rotate\(([-\d.]+)/.exec(transform ?? '')?.[1] ?? 0) * Math.PI) / 180
  const half = 0.28 * size * text.length
  return [-1, -0.5, 0, 0.5, 1].map(share => ({
    high: size,
    x: Number(x) + share * half * Math.cos(turn) + 0.35 * size * Math.sin(turn),
    y: Number(y) + share * half * Math.sin(turn) - 0.35 * size * Math.cos(turn)
  }))
}

const onPaper = (figure: Readonly<Record<string, string>>, key: string) => Number(figure[key])

describe('texts where nothing else stands', () => {
  const at = (x: number) => ({ x, y: 0, turn: 0 })
  const put = (places: readonly { x: number; y: number; turn: number }[], ...drawn: Parameters<typeof clearTexts>[1]) =>
    Number(/x="([-\d.]+)"/.exec(clearTexts([{ text: 'abc', places, style: { size: 2 } }], drawn))?.[1])

  it('takes the first place that is clear, and the least crossed where none is', () => {
    expect(put([at(0), at(50)], drawnDisc({ x: 0, y: 0 }, 1))).toBe(50)
    expect(put([at(0), at(50)], drawnBlock({ x: 50, y: 0 }, 4, 4))).toBe(0)
    expect(put([at(0), at(50)], drawnLine({ x: 0, y: -9 }, { x: 0, y: 9 }))).toBe(50)
    expect(put([at(0), at(50)], drawnBlock({ x: 0, y: 0 }, 9, 9), drawnDisc({ x: 51, y: 0 }, 0.1))).toBe(50)
  })

  it('keeps texts from one another', () => {
    const twice = { text: 'abc', places: [at(0), at(50)], style: { size: 2 } }
    const found = [...clearTexts([twice, twice], []).matchAll(/x="([-\d.]+)"/g)].map(([, x]) => Number(x))
    expect(found).toEqual([0, 50])
  })

  it('writes notes of edges into no hole, in ten boxes', () => {
    for (const box of Object.values(tenBoxes)) {
      for (const { svg, name } of drawBox({ box, show: 'panels' }).result.drawings) {
        const notes = elements(svg, 'text').filter(
          each => each.class === 'limit-text' && each['text-anchor'] === 'middle'
        )
        const holes = elements(svg, 'rect').filter(each => each.class === 'hole')
        const rounds = elements(svg, 'circle').filter(each => each.class === 'hole')
        for (const { x, y } of notes.flatMap(alongText)) {
          for (const hole of holes) {
            const [left, top] = [onPaper(hole, 'x'), onPaper(hole, 'y')]
            const inside = x > left && x < left + onPaper(hole, 'width') && y > top && y < top + onPaper(hole, 'height')
            expect(inside, name).toBe(false)
          }
          for (const hole of rounds) {
            expect(Math.hypot(x - onPaper(hole, 'cx'), y - onPaper(hole, 'cy')), name).toBeGreaterThan(
              onPaper(hole, 'r')
            )
          }
        }
      }
    }
  })

  it('puts no number of a cut on the name of a panel', () => {
    for (const box of Object.values(tenBoxes)) {
      for (const { svg, name } of drawBox({ box, show: 'cut-sheets' }).result.drawings) {
        const groups = [...svg.matchAll(/<g transform="translate\(([-\d.]+) ([-\d.]+)\)">(.*?)<\/g>/g)]
        const words = groups.flatMap(([, x, y, inside = '']) =>
          elements(inside, 'text').flatMap(each =>
            alongText(each).map(point => ({ ...point, x: point.x + Number(x), y: point.y + Number(y) }))
          )
        )
        expect(words.length, name).toBeGreaterThan(0)
        for (const number of elements(svg, 'circle').filter(each => each.class === 'bubble')) {
          const near = words.filter(
            ({ x, y, high }) =>
              Math.hypot(x - onPaper(number, 'cx'), y - onPaper(number, 'cy')) < onPaper(number, 'r') + 0.3 * high
          )
          expect(near, name).toEqual([])
        }
      }
    }
  })
})
