/** Invented drivers as their sheets print them: true values by the relations of Small 1972 (from memory), rounded as the trade rounds. */
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { draws } from './random-systems.ts'

export interface PrintedSheet {
  readonly fsHz: number
  readonly qms: number
  readonly qes: number
  readonly qts: number
  readonly vasL: number
  readonly sdCm2: number
  readonly reOhm: number
  readonly blTm: number
  readonly mmsG: number
  readonly cmsMmPerN: number
  readonly rmsKgPerS: number
}
export type PrintedName = keyof PrintedSheet

/** Decimals in print; a pair where sheets differ. */
const decimals: Readonly<Record<PrintedName, readonly [number, number]>> = {
  fsHz: [0, 1],
  qms: [1, 2],
  qes: [2, 2],
  qts: [2, 2],
  vasL: [0, 1],
  sdCm2: [0, 1],
  reOhm: [1, 2],
  blTm: [1, 2],
  mmsG: [0, 1],
  cmsMmPerN: [2, 3],
  rmsKgPerS: [1, 2]
}

/** ρc² of dry air at sea level, γ·p = 1.4·101 325 Pa. */
const STIFFNESS_PA = 141_855

/** @returns sheets that differ from a true driver by nothing but the rounding in print; trailing noughts get lost as in JSON */
export function printedSheets(seed: number, count: number): readonly PrintedSheet[] {
  const { between, pick } = draws(seed)
  return Array.from({ length: count }, () => {
    const [sd, fs, re] = [between(0.02, 0.12), between(22, 45), between(1.5, 7)]
    const [mms, qms, qes] = [sd * between(2, 4.5), between(3, 9), between(0.3, 0.8)]
    const omega = 2 * Math.PI * fs
    const cms = 1 / (omega ** 2 * mms)
    const exact: PrintedSheet = {
      fsHz: fs,
      qms,
      qes,
      qts: 1 / (1 / qms + 1 / qes),
      vasL: STIFFNESS_PA * sd ** 2 * cms * 1e3,
      sdCm2: sd * 1e4,
      reOhm: re,
      blTm: Math.sqrt((omega * mms * re) / qes),
      mmsG: mms * 1e3,
      cmsMmPerN: cms * 1e3,
      rmsKgPerS: (omega * mms) / qms
    }
    const printed = Object.entries(exact).map(([name, value]) => {
      const places = pick(decimals[name as PrintedName])
      return [name, Number((value as number).toFixed(places))]
    })
    return Object.fromEntries(printed) as unknown as PrintedSheet
  })
}

/** A part of a printed sheet, as the domain takes it. */
export const sheetOf = (sheet: PrintedSheet, without: readonly PrintedName[] = []) =>
  toSi(Object.fromEntries(Object.entries(sheet).filter(([name]) => !without.includes(name as PrintedName))))
