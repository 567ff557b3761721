/** What always holds for a cut plan. */
import type { Static } from 'typebox'
import type { SheetPlanRequest, SheetPlanResult } from '../../../contract/boxes/box-sheets.ts'
import { firstBroken, isAtMost, type Law, unbalanced } from '../../wire/law.ts'

type Plan = Static<typeof SheetPlanResult>
type Piece = Plan['layouts'][number]['pieces'][number]

const overlap = (one: Piece, other: Piece) =>
  Math.min(
    one.xMm + one.lengthMm - other.xMm,
    other.xMm + other.lengthMm - one.xMm,
    one.yMm + one.widthMm - other.yMm,
    other.yMm + other.widthMm - one.yMm
  )

/** Places are written with six digits. */
const DIGIT_MM = 0.02

export const sheetLaws: readonly Law<Static<typeof SheetPlanRequest>, Plan>[] = [
  {
    id: 'every-panel-once',
    sentence: 'Every copy of every panel lies on one sheet, and nothing else does.',
    broken: ({ request: { panels }, result: { layouts, total } }) => {
      const wanted = panels.reduce((sum, { quantity }) => sum + quantity, 0)
      const laid = layouts.reduce((sum, { pieces }) => sum + pieces.length, 0)
      return laid === wanted && total.panelCount === wanted ? undefined : `${wanted} panels, ${laid} laid`
    }
  },
  {
    id: 'pieces-apart-on-their-sheet',
    sentence: 'No two pieces share wood, and none reaches beyond its sheet.',
    broken: ({ result: { layouts } }) =>
      firstBroken(layouts, ({ pieces, lengthMm, widthMm }) =>
        firstBroken(pieces, (piece, place) => {
          const inside =
            piece.xMm + piece.lengthMm <= lengthMm + DIGIT_MM && piece.yMm + piece.widthMm <= widthMm + DIGIT_MM
          if (!inside) return `${piece.panel} reaches beyond its sheet`
          const other = pieces.slice(place + 1).find(next => overlap(piece, next) > DIGIT_MM)
          return other && `${piece.panel} lies on ${other.panel}`
        })
      )
  },
  {
    id: 'areas-balance',
    sentence: 'Panels and waste make the sheets, and no plan uses fewer sheets than the proved least.',
    broken: ({ result: { total, boards } }) =>
      unbalanced('yield', 100, [total.yieldPercent, total.wastePercent]) ??
      firstBroken(boards, ({ leastSheetCount, sheetCount }) =>
        isAtMost(leastSheetCount, sheetCount) ? undefined : `${sheetCount} sheets, at least ${leastSheetCount}`
      )
  },
  {
    id: 'thinner-blade-never-costs',
    sentence: 'A thinner blade never raises the least number of sheets.',
    varied: ({ request }, chance) =>
      request.kerfMm === undefined ? undefined : { ...request, kerfMm: request.kerfMm * chance() },
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) =>
      firstBroken(first.boards, ({ leastSheetCount }, place) => {
        const after = second.boards[place]?.leastSheetCount ?? 0
        return after <= leastSheetCount ? undefined : `at least ${leastSheetCount}, with the thinner blade ${after}`
      })
  }
]
