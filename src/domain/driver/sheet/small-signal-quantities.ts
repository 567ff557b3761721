/** The quantities of a driver's small-signal set, with the symbol and unit that data sheets print. */
import { inDigits } from '../../digits.ts'

export const smallSignalQuantities = [
  'fsHz',
  'qms',
  'qes',
  'qts',
  'vasM3',
  'sdM2',
  'reOhm',
  'blTm',
  'mmsKg',
  'cmsMPerN',
  'rmsKgPerS'
] as const
export type SmallSignalQuantity = (typeof smallSignalQuantities)[number]

/** What a sheet gives of the set; SI. */
export type PartialSmallSignalSet = { readonly [Name in SmallSignalQuantity]?: number }
/** All eleven; SI. */
export type SmallSignalSet = { readonly [Name in SmallSignalQuantity]: number }

interface PrintedQuantity {
  readonly symbol: string
  readonly unit: string
  /** Printed value = SI value × perSi. */
  readonly perSi: number
  /**
   * Where drivers for low frequencies lie [SI]; beyond it a value is doubted, not refused.
   * Engineering choice of this service, wide enough for 5 to 21 in drivers.
   */
  readonly usual: readonly [number, number]
  /**
   * Coarsest step that sheets print, in `unit`. JSON loses trailing noughts, so this bounds what a round figure may stand for.
   * Common practice, no source.
   */
  readonly coarsestStep: number
}

export const printedQuantities: Readonly<Record<SmallSignalQuantity, PrintedQuantity>> = {
  fsHz: { symbol: 'fs', unit: 'Hz', perSi: 1, usual: [10, 200], coarsestStep: 1 },
  qms: { symbol: 'Qms', unit: '', perSi: 1, usual: [0.8, 30], coarsestStep: 0.1 },
  qes: { symbol: 'Qes', unit: '', perSi: 1, usual: [0.1, 5], coarsestStep: 0.01 },
  qts: { symbol: 'Qts', unit: '', perSi: 1, usual: [0.08, 4], coarsestStep: 0.01 },
  vasM3: { symbol: 'Vas', unit: 'L', perSi: 1e3, usual: [0.000_5, 1], coarsestStep: 1 },
  sdM2: { symbol: 'Sd', unit: 'cm²', perSi: 1e4, usual: [0.004, 0.3], coarsestStep: 1 },
  reOhm: { symbol: 'Re', unit: 'Ω', perSi: 1, usual: [0.2, 32], coarsestStep: 0.1 },
  blTm: { symbol: 'Bl', unit: 'T·m', perSi: 1, usual: [1, 80], coarsestStep: 0.1 },
  mmsKg: { symbol: 'Mms', unit: 'g', perSi: 1e3, usual: [0.005, 2], coarsestStep: 1 },
  cmsMPerN: { symbol: 'Cms', unit: 'mm/N', perSi: 1e3, usual: [2e-5, 5e-3], coarsestStep: 0.01 },
  rmsKgPerS: { symbol: 'Rms', unit: 'kg/s', perSi: 1, usual: [0.2, 60], coarsestStep: 0.1 }
}

/** `Vas 60 L`. */
export function printedValue(name: SmallSignalQuantity, value: number): string {
  const { symbol, unit, perSi } = printedQuantities[name]
  return `${symbol} ${inDigits(value * perSi, 4)}${unit === '' ? '' : ` ${unit}`}`
}
