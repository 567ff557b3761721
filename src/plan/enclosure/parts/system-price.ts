/** What a system costs, as far as its parts have prices. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { BoxBrief } from '../../request/box-brief.ts'
import { planSheets } from './plan-sheets.ts'

function sheetsPrice(brief: BoxBrief, layout: BoxLayout): number | undefined {
  if (brief.board.sheet?.price === undefined) return undefined
  const sheets = planSheets(brief, layout)
  return sheets.done ? sheets.outcome.result.total.price : undefined
}

/** @returns drivers, amplifier and whole sheets, those that have a price; none where nothing has one */
export function systemPrice(brief: BoxBrief, layout: BoxLayout): number | undefined {
  const { driver, amplifier } = brief.prices
  const priced = [
    driver === undefined ? undefined : driver * brief.drivers.count,
    amplifier,
    sheetsPrice(brief, layout)
  ].filter(price => price !== undefined)
  return priced.length === 0 ? undefined : priced.reduce((sum, price) => sum + price, 0)
}
