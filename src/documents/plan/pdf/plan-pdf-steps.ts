/** Steps on paper: in two columns, page after page, a stretch's name never apart from its first step. */
import type { Content } from 'pdfmake/interfaces.js'
import { told } from '../../../domain/say.ts'
import { durationText } from '../../draw/number-text.ts'
import { ink } from '../../draw/paper.ts'
import { smallerHeading } from '../../draw/pdf-roles.ts'
import { plain } from '../../draw/pdf-text.ts'
import { barriersOf, type PaperStep, type PaperStretch } from '../paper-steps.ts'
import type { PlanPaper } from '../plan-paper.ts'
import { linesOf } from './text-lines.ts'

/** Height and width of the type area [pt]: A4 between the margins of `plan-pdf.ts`. */
export const PAGE_PT = 763
export const WIDTH_PT = 523
const SIZE = 8
const TITLE_SIZE = 8.6
const STRETCH_SIZE = 10
const GAP_PT = 14
const COLUMN_PT = (WIDTH_PT - GAP_PT) / 2
/** From one line of the font to the next, as a share of its size. */
const LEADING = 1.164 * 1.02
const STRETCH_PT = STRETCH_SIZE * 1.4 + 8

export interface Block {
  readonly content: readonly Content[]
  readonly heightPt: number
}

/** What a column takes for it. */
function heightOf(title: string, texts: readonly string[]): number {
  const lines = texts.reduce((sum, text) => sum + linesOf(text, SIZE, COLUMN_PT), 0)
  return linesOf(title, TITLE_SIZE, COLUMN_PT, true) * TITLE_SIZE * LEADING + lines * SIZE * LEADING + 4
}

function stepBlock(plan: PlanPaper, step: PaperStep): Block {
  const { number, title, time, readings, how, tools } = step
  const { once } = barriersOf(plan, step)
  const texts = {
    barrier: once.join(' '),
    how: how.join(' '),
    tools: tools.length === 0 ? '' : told(plan.language, 'paper.tools', { all: tools.join(', ') }),
    reading: readings.join(' ')
  }
  const line = (text: string, mark: string, color: string): Content[] =>
    text === '' ? [] : [{ text: mark + plain(text), color }]
  const content: Content = {
    unbreakable: true,
    margin: [0, 1, 0, 2],
    fontSize: SIZE,
    lineHeight: 1.02,
    stack: [
      {
        text: [
          { text: `☐ ${number}  ${plain(title)}`, bold: true, fontSize: TITLE_SIZE },
          { text: time === undefined ? '' : `   ${time}`, color: ink.quiet }
        ]
      },
      ...line(texts.barrier, '▲ ', ink.limit),
      ...line(texts.how, '', ink.text),
      ...line(texts.tools, '', ink.quiet),
      ...line(texts.reading, '= ', ink.text)
    ]
  }
  return {
    content: [content],
    heightPt: heightOf(
      `☐ ${number}  ${title}   ${time ?? ''}`,
      [`▲ ${texts.barrier}`, texts.how, texts.tools, `= ${texts.reading}`].filter(text => text.length > 2)
    )
  }
}

/** What a part of the paper says beside its steps, after them. */
export const noteBlock = (text: string, color: string): Block => ({
  content: [{ text: plain(text), fontSize: SIZE, lineHeight: 1.02, margin: [0, 1, 0, 2], color, unbreakable: true }],
  heightPt: linesOf(text, SIZE, COLUMN_PT) * SIZE * LEADING + 3
})

function blocksOf(plan: PlanPaper, { title, minutes, steps }: PaperStretch): readonly Block[] {
  return steps.map((step, index) => {
    const block = stepBlock(plan, step)
    if (index > 0) return block
    const name: Content = {
      text: plain(`${title}, ${durationText(minutes, plan)}`),
      bold: true,
      fontSize: STRETCH_SIZE,
      margin: [0, 6, 0, 2],
      ...smallerHeading
    }
    return {
      content: [{ stack: [name, ...block.content], unbreakable: true }],
      heightPt: block.heightPt + STRETCH_PT
    }
  })
}

/** As many of the blocks from the front as a height holds, at least one. */
function holds(blocks: readonly Block[], heightPt: number): number {
  let used = 0
  const end = blocks.findIndex(block => {
    used += block.heightPt
    return used > heightPt
  })
  return end < 0 ? blocks.length : Math.max(1, end)
}

/** The lowest height at which two columns hold all of some blocks, the first column first. */
function balanced(blocks: readonly Block[], mostPt: number): { readonly split: number; readonly heightPt: number } {
  const sum = (some: readonly Block[]) => some.reduce((total, { heightPt }) => total + heightPt, 0)
  const heights = blocks.map((_, index) => ({
    split: index + 1,
    heightPt: Math.max(sum(blocks.slice(0, index + 1)), sum(blocks.slice(index + 1)))
  }))
  return heights.reduce((best, each) => (each.heightPt < best.heightPt ? each : best), {
    split: blocks.length,
    heightPt: mostPt
  })
}

/** Blocks one after the other in so many columns, each as high as the others as far as blocks allow. */
export function evenColumns(blocks: readonly Block[], count: number): readonly (readonly Block[])[] {
  const wholePt = blocks.reduce((sum, { heightPt }) => sum + heightPt, 0)
  const columns: Block[][] = Array.from({ length: count }, () => [])
  let usedPt = 0
  for (const block of blocks) {
    const at = Math.min(count - 1, Math.floor(((usedPt + block.heightPt / 2) / wholePt) * count))
    columns[at]?.push(block)
    usedPt += block.heightPt
  }
  return columns
}

/**
 * @param fromPt  what the page holds already
 * @param notes  what follows the steps
 * @returns the columns, and how far down the last page they reach
 */
export function stepColumns(
  plan: PlanPaper,
  stretches: readonly PaperStretch[],
  fromPt: number,
  notes: readonly Block[] = []
): { readonly content: Content[]; readonly endPt: number } {
  let blocks = [...stretches.flatMap(each => blocksOf(plan, each)), ...notes]
  let usedPt = fromPt
  const content: Content[] = []
  const stack = (some: readonly Block[]): Content => ({ stack: some.flatMap(block => block.content) })
  while (blocks.length > 0) {
    const roomPt = PAGE_PT - usedPt
    const left = holds(blocks, roomPt)
    const count = left + (left < blocks.length ? holds(blocks.slice(left), roomPt) : 0)
    const page = blocks.slice(0, count)
    blocks = blocks.slice(count)
    const { split, heightPt } = blocks.length > 0 ? { split: left, heightPt: roomPt } : balanced(page, roomPt)
    const columns = { columns: [stack(page.slice(0, split)), stack(page.slice(split))], columnGap: GAP_PT }
    content.push(usedPt === 0 ? { ...columns, pageBreak: 'before' } : columns)
    usedPt = blocks.length > 0 ? 0 : usedPt + heightPt
  }
  return { content, endPt: usedPt }
}
