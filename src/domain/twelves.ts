/** Vehicles of 12, 24 and 48 V, counted in batteries of 12 V. */
import { DesignError } from './design-error.ts'
import { say } from './say.ts'

/** Nominal voltages whose batteries and drop-out voltages are known: [from, to, how many 12 V batteries]. */
const nominals = [
  [10, 16, 1],
  [20, 32, 2],
  [40, 58, 4]
] as const

/**
 * How many 12 V batteries a system voltage stands for: 1, 2 or 4.
 *
 * @throws DesignError `out-of-range` for 6, 36 and other voltages whose rest and drop-out voltages are not known here
 */
export function twelves(systemVoltageV: number): number {
  const found = nominals.find(([from, to]) => systemVoltageV >= from && systemVoltageV <= to)
  if (found !== undefined) return found[2]
  throw new DesignError('out-of-range', {
    field: 'systemVoltageV',
    value: systemVoltageV,
    unit: 'V',
    detail: say('refused.v-is-no-12-24-or', { systemVoltageV })
  })
}
