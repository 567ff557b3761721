/** Rows of the card: figures in the unit that the meter shows, with both limits. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import { measured, type Probe } from '../../domain/circuit/readings/measured.ts'
import type { SolvedLevel } from '../../domain/circuit/readings/solved-level.ts'
import { present } from '../../domain/present.ts'
import { worded } from '../../domain/say.ts'

export interface Row {
  readonly step: string
  readonly what: Said
  readonly probes: Said
  readonly when: Said
  readonly below?: Said
  readonly above?: Said
}

const wordedRow = ({ step, what, probes, when, below, above }: Row) => ({
  step,
  ...worded({ what, probes, when, ...present({ below, above }) })
})

type Unit = PlanReading['unit']
const perSi: Readonly<Record<Unit, number>> = { V: 1, mV: 1000, A: 1, mA: 1000, mΩ: 1000, Ω: 1 }
const meterOf: Readonly<Record<Unit, 'V' | 'mV' | 'A' | 'ohm'>> = {
  V: 'V',
  mV: 'mV',
  A: 'A',
  mA: 'A',
  mΩ: 'ohm',
  Ω: 'ohm'
}

/** A reading of a solved level; what cannot be negative has no limit below nothing. */
export function readingOf(level: SolvedLevel, unit: Unit, read: (see: Probe) => number, row: Row): PlanReading {
  const { expected, below, above } = measured(level, read, meterOf[unit])
  const scale = perSi[unit]
  return {
    ...wordedRow(row),
    unit,
    expected: scale * expected,
    lowest: scale * Math.max(0, expected - below),
    highest: scale * (expected + above)
  }
}

/** One that only a limit judges. */
export const limitOf = (
  unit: Unit,
  limits: { readonly lowest?: number; readonly highest?: number },
  row: Row
): PlanReading => ({ ...wordedRow(row), unit, ...limits })
