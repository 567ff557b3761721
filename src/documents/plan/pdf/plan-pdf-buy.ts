/** What is bought, on paper: the lists of the shops one after the other in three even columns. */
import type { Content } from 'pdfmake/interfaces.js'
import { told } from '../../../domain/say.ts'
import { ink } from '../../draw/paper.ts'
import { smallerHeading } from '../../draw/pdf-roles.ts'
import { heading, plain } from '../../draw/pdf-text.ts'
import type { PlanPaper } from '../plan-paper.ts'
import { buyText, panelsLine, shoppingRows, shops, stepUsing } from '../plan-rows.ts'
import { type Block, evenColumns, WIDTH_PT } from './plan-pdf-steps.ts'
import { linesOf } from './text-lines.ts'

const BUY_GAP_PT = 14
const BUY_PT = (WIDTH_PT - 2 * BUY_GAP_PT) / 3
const BUY_SIZE = 8

function shopBlocks(plan: PlanPaper, { title, groups }: (typeof shops)[number]): readonly Block[] {
  const { language } = plan
  const rows = shoppingRows(plan.bill).filter(({ group }) => groups.includes(group))
  const items = rows.map(({ item, quantity, unit, needed, part }) => {
    const step = stepUsing(plan, part)
    const count = buyText(quantity, unit, plan)
    const what = ` ${plain(item)}${needed ? '' : told(language, 'paper.optional')}`
    const where = step === undefined ? '' : `  ${told(language, 'paper.step-of', { number: step })}`
    const text = ['☐ ', { text: count, bold: true }, what, { text: where, color: ink.quiet }]
    return {
      content: [
        { text, fontSize: BUY_SIZE, lineHeight: 1.05, margin: [0, 0, 0, 2] as [number, number, number, number] }
      ],
      heightPt: linesOf(`☐ ${count}${what}${where}`, BUY_SIZE, BUY_PT) * BUY_SIZE * 1.22 + 2
    }
  })
  const head: Block = {
    content: [{ text: told(language, title), bold: true, fontSize: 9, margin: [0, 2, 0, 3], ...smallerHeading }],
    heightPt: 16
  }
  const [first, ...others] = items
  // A name stands with its first thing.
  return first === undefined
    ? []
    : [{ content: [...head.content, ...first.content], heightPt: head.heightPt + first.heightPt }, ...others]
}

/** As even as the things allow: the lists of the shops one after the other. */
export function pdfBuy(plan: PlanPaper): Content[] {
  if (plan.bill.length === 0) return []
  const blocks = shops.flatMap(each => shopBlocks(plan, each))
  const panels = panelsLine(plan)
  const half = panels === undefined ? [] : [{ text: panels, fontSize: 8 }]
  const columns = evenColumns(blocks, 3).map(some => ({ stack: some.flatMap(({ content }) => content) }))
  return [heading(told(plan.language, 'paper.buy')), { columns, columnGap: BUY_GAP_PT }, ...half]
}
