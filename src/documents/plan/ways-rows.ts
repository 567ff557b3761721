/** The ways to work the boards, side by side: what each takes, and how exact it is. */
import { INCH_M } from '../../domain/constants.ts'
import { told } from '../../domain/say.ts'
import type { WorkOrder } from '../../plan/steps/work-order.ts'
import { figure, type Reader } from '../draw/number-text.ts'
import type { PaperTable } from './what-if-rows.ts'

/** Hundredths of an inch: no fraction on a rule is as small. */
const offText = (offM: number, paper: Reader): string =>
  paper.units === 'metric' ? figure(offM * 1000, 1, paper) : figure(offM / INCH_M, 2, paper)

/** Bare figures, or the table is wider than a telephone: the caption has their units. */
export function waysTable({ ways }: WorkOrder, paper: Reader): PaperTable {
  const { language } = paper
  const tuned = ways.some(({ tuningPercent }) => tuningPercent !== undefined)
  const percent = (value: number) => figure(value, 1, paper)
  return {
    headings: [
      told(language, 'paper.ways.way'),
      told(language, 'paper.ways.cut'),
      told(language, 'paper.ways.hole'),
      told(language, 'paper.ways.air'),
      ...(tuned ? [told(language, 'paper.tuning')] : []),
      told(language, 'paper.work')
    ],
    rows: ways.map(({ way: name, taken, cutM, holeM, netVolumePercent, tuningPercent = 0, workMinutes }) => {
      const way = told(language, `paper.ways.${name}`)
      return [
        taken ? told(language, 'paper.ways.taken', { way }) : way,
        offText(cutM, paper),
        offText(holeM, paper),
        percent(netVolumePercent),
        ...(tuned ? [percent(tuningPercent)] : []),
        figure(workMinutes / 60, 1, paper)
      ]
    })
  }
}
