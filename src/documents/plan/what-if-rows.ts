/** What moves when the planned box is changed a little, as rows of a table. */
import type { WhatIfChange } from '../../contract/systems/words.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure } from '../draw/number-text.ts'

export interface PaperTable {
  readonly headings: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

const names: Readonly<Record<WhatIfChange, string>> = {
  none: 'as planned',
  volume: 'volume',
  tuning: 'tuning',
  'port-length': 'port length',
  'port-area': 'port area',
  power: 'power'
}

/** Number and sign stay on one line. */
const changeText = (change: WhatIfChange, factor: number) =>
  change === 'none' ? names.none : `${names[change]} ${factor < 1 ? '−' : '+'}10\u00a0%`

const or = (value: number | undefined, decimals: number) => (value === undefined ? '' : figure(value, decimals))

/** Of the compared frequencies those that a narrow page has room for. */
const SHOWN = [
  { at: 0, heading: '25 Hz' },
  { at: 2, heading: '40 Hz' },
  { at: 4, heading: '63 Hz' }
] as const

/** Says the units of the columns. */
export const WHAT_IF_CAPTION =
  'A tenth less or more of one figure, the rest as it is: dB at three frequencies, half power in Hz, power held in W, air in the port in m/s'

/** @returns no rows where there is no box */
export function whatIfTable({ whatIf = [] }: Pick<SystemPlan, 'whatIf'>): PaperTable {
  const isPorted = whatIf.some(({ airSpeedMPerS }) => airSpeedMPerS !== undefined)
  const air = isPorted ? ['Air'] : []
  return {
    headings: ['Change', ...SHOWN.map(({ heading }) => heading), '−3 dB', 'Held', ...air],
    rows: whatIf.map(({ change, factor, levelDb, f3Hz, heldPowerW, airSpeedMPerS }) => [
      changeText(change, factor),
      ...SHOWN.map(({ at }) => or(levelDb[at], 1)),
      or(f3Hz, 1),
      figure(heldPowerW, 0),
      ...(isPorted ? [or(airSpeedMPerS, 0)] : [])
    ])
  }
}
