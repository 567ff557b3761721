/** What moves when the planned box is changed a little, as rows of a table. */
import type { WhatIfChange } from '../../contract/systems/words.ts'
import { told } from '../../domain/say.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure, type Reader } from '../draw/number-text.ts'

export interface PaperTable {
  readonly headings: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** Number and sign stay on one line. */
function changeText(change: WhatIfChange, factor: number, { language }: Reader): string {
  const name = told(language, `paper.what-if.${change}`)
  return change === 'none' ? name : `${name} ${factor < 1 ? '−' : '+'}10\u00a0%`
}

const or = (value: number | undefined, decimals: number, paper: Reader) =>
  value === undefined ? '' : figure(value, decimals, paper)

/** Of the compared frequencies those that a narrow page has room for. */
const SHOWN = [
  { at: 0, heading: '25 Hz' },
  { at: 2, heading: '40 Hz' },
  { at: 4, heading: '63 Hz' }
] as const

/** @returns no rows where there is no box */
export function whatIfTable({ whatIf = [] }: Pick<SystemPlan, 'whatIf'>, paper: Reader): PaperTable {
  const { language } = paper
  const isPorted = whatIf.some(({ airSpeedMPerS }) => airSpeedMPerS !== undefined)
  const air = isPorted ? [told(language, 'paper.what-if.air')] : []
  return {
    headings: [
      told(language, 'paper.what-if.change'),
      ...SHOWN.map(({ heading }) => heading),
      '−3 dB',
      told(language, 'paper.what-if.held'),
      ...air
    ],
    rows: whatIf.map(({ change, factor, levelDb, f3Hz, heldPowerW, airSpeedMPerS }) => [
      changeText(change, factor, paper),
      ...SHOWN.map(({ at }) => or(levelDb[at], 1, paper)),
      or(f3Hz, 1, paper),
      figure(heldPowerW, 0, paper),
      ...(isPorted ? [or(airSpeedMPerS, 0, paper)] : [])
    ])
  }
}
