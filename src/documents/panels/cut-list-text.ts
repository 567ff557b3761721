/** The cuts of a sheet in words and as a list on paper. */
import type { FreedPart, SheetCut } from '../../contract/boxes/box-sheets.ts'
import { told } from '../../domain/say.ts'
import { dimension, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { textAt } from '../draw/svg.ts'

/** The list has at least this room beside a sheet. */
export const columnWidth = 84
export const rowHeight = 4.1

function freedText(freed: FreedPart | undefined, paper: Reader): string {
  if (freed === undefined) return told(paper.language, 'draw.dust')
  if (freed.is === 'panel') return `${panelName(freed.panel ?? '', paper)} ${freed.copy ?? ''}`.trim()
  const name =
    freed.is === 'part'
      ? told(paper.language, 'draw.part', { number: freed.part ?? '' })
      : told(paper.language, 'draw.offcut')
  return `${name} (${dimension(freed.lengthM, paper)} × ${dimension(freed.widthM, paper)})`
}

/** One cut in words: which part, which way, the fence, and what comes off. */
export function cutText({ part, along, distanceM, near, far }: SheetCut, paper: Reader): string {
  const { language } = paper
  const what = part === 1 ? told(language, 'draw.sheet') : told(language, 'draw.part', { number: part })
  const cut = { what, at: dimension(distanceM, paper), near: freedText(near, paper), far: freedText(far, paper) }
  return along === 'length' ? told(language, 'draw.cut-along', cut) : told(language, 'draw.cut-across', cut)
}

/** Sizes of the text: as large as lets the longest cut stand whole. */
const textSizes = { most: 2.4, least: 1.8 } as const
const NUMBER_WIDTH = 6.5

/** Width of a letter, as a share of its height: not less than any face has on average. */
const LETTER = 0.56

const sizeFor = (texts: readonly string[], width: number): number => {
  const longest = Math.max(1, ...texts.map(text => [...text].length))
  return Math.max(textSizes.least, Math.min(textSizes.most, width / (LETTER * longest)))
}

const shortened = (text: string, width: number, size: number) => {
  const most = Math.floor(width / (LETTER * size) + 1e-9)
  return [...text].length <= most ? text : `${[...text].slice(0, most - 1).join('')}…`
}

/** Where the list of cuts stands: beside the sheet, or in columns below it. */
export interface ListPlace {
  readonly x: number
  readonly y: number
  readonly columns: number
  readonly rows: number
  /** Of one column. */
  readonly width: number
}

export function cutList(cuts: readonly SheetCut[], place: ListPlace, paper: Reader): string {
  const most = place.columns * place.rows
  const shown = cuts.slice(0, cuts.length > most ? most - 1 : most)
  const rest = cuts.length - shown.length
  const at = (index: number) => ({
    x: place.x + Math.floor(index / place.rows) * (place.width + 5),
    y: place.y + 6 + (index % place.rows) * rowHeight
  })
  const room = place.width - NUMBER_WIDTH
  const texts = shown.map(cut => cutText(cut, paper))
  const size = sizeFor(texts, room)
  const lines = shown.map((cut, index) => {
    const { x, y } = at(index)
    const number = textAt(x + 5, y, `${cut.step}`, {
      size: 2.5,
      anchor: 'end',
      bold: true,
      colour: ink.cut,
      className: 'cut-text'
    })
    return number + textAt(x + NUMBER_WIDTH, y, shortened(texts[index] ?? '', room, size), { size })
  })
  const more = at(shown.length)
  const note =
    rest > 0
      ? textAt(more.x + NUMBER_WIDTH, more.y, told(paper.language, 'draw.more-cuts', { count: rest }), {
          size: 2.4,
          colour: ink.quiet,
          className: 'quiet'
        })
      : ''
  return textAt(place.x, place.y, told(paper.language, 'draw.cuts'), { size: 3.2, bold: true }) + lines.join('') + note
}
