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
  volume: 'volume, same port',
  tuning: 'tuning',
  'port-length': 'length of the port',
  'port-area': 'area of the port',
  power: 'power'
}

const changeText = (change: WhatIfChange, factor: number) =>
  change === 'none' ? names.none : `${names[change]} ${factor < 1 ? '−' : '+'}10 %`

const or = (value: number | undefined, decimals: number) => (value === undefined ? '' : figure(value, decimals))

/** @returns no rows where there is no box */
export function whatIfTable({ whatIf = [] }: Pick<SystemPlan, 'whatIf'>): PaperTable {
  const isPorted = whatIf.some(({ airSpeedMPerS }) => airSpeedMPerS !== undefined)
  const levels = ['25 Hz, dB', '31.5 Hz', '40 Hz', '50 Hz', '63 Hz']
  const air = isPorted ? ['Air in the port, m/s'] : []
  return {
    headings: ['Change', ...levels, 'Half power, Hz', 'Held, W', 'Cone, of Xmax', ...air],
    rows: whatIf.map(({ change, factor, levelDb, f3Hz, heldPowerW, coneOfXmax, airSpeedMPerS }) => [
      changeText(change, factor),
      ...levelDb.map(level => figure(level, 1)),
      or(f3Hz, 1),
      figure(heldPowerW, 0),
      or(coneOfXmax, 2),
      ...(isPorted ? [or(airSpeedMPerS, 0)] : [])
    ])
  }
}
