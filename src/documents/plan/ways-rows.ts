/** The ways to work the boards, side by side: what each takes, and how exact it is. */
import type { WorkWay } from '../../contract/systems/words.ts'
import { INCH_M } from '../../domain/constants.ts'
import type { WorkOrder } from '../../plan/steps/work-order.ts'
import { durationText, figure, type PaperUnits } from '../draw/number-text.ts'
import type { PaperTable } from './what-if-rows.ts'

const names: Readonly<Record<WorkWay, string>> = {
  'saw-and-router': 'panel saw and router',
  'cutting-service': 'cutting service, holes by jigsaw',
  'jigsaw-and-drill': 'jigsaw and drill on a table'
}

/** Hundredths of an inch: no fraction on a rule is as small. */
const offText = (offM: number, { units }: PaperUnits): string =>
  units === 'metric' ? `${figure(offM * 1000, 1)} mm` : `${figure(offM / INCH_M, 2)} in`

/** Says what the columns hold. */
export const WAYS_CAPTION =
  'How far a length and the edge of a hole come out, with care; what such cuts move air and tuning by at most; work at the box'

export function waysTable({ ways }: WorkOrder, paper: PaperUnits): PaperTable {
  const tuned = ways.some(({ tuningPercent }) => tuningPercent !== undefined)
  return {
    headings: ['Way', 'Cut', 'Hole', 'Air', ...(tuned ? ['Tuning'] : []), 'Work'],
    rows: ways.map(({ way, taken, cutM, holeM, netVolumePercent, tuningPercent = 0, workMinutes }) => [
      taken ? `${names[way]} (this plan)` : names[way],
      offText(cutM, paper),
      offText(holeM, paper),
      `${figure(netVolumePercent, 1)} %`,
      ...(tuned ? [`${figure(tuningPercent, 1)} %`] : []),
      durationText(workMinutes)
    ])
  }
}
