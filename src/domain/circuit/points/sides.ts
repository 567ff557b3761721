/** Which sources feed a point: its own system, or a converter that gives it another voltage. */
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import { nominalVoltage } from '../load/voltage-class.ts'
import { reached } from './reach.ts'

interface Side {
  readonly nominalV: number
  /** Batteries and converters whose plus hangs on the point. */
  readonly sources: readonly string[]
  /** Where nothing but this converter feeds it: what flows is limited by it. */
  readonly converter?: string
}

type Fed = Pick<
  CircuitRequest,
  'systemVoltageV' | 'batteries' | 'alternators' | 'converters' | 'cables' | 'fuses' | 'links'
>

/** @param plus  the plus pole that is fed */
export function sideOf(request: Fed, plus: string): Side {
  const { systemVoltageV, batteries, alternators = [], converters = [], cables = [], fuses = [], links = [] } = request
  const system = { nominalV: systemVoltageV, sources: batteries.map(({ id }) => id) }
  if (converters.length === 0) return system
  const side = reached([plus], [...cables, ...fuses, ...links])
  if ([...batteries, ...alternators].some(source => side.has(source.plus))) return system
  const feeding = converters.filter(({ outPlus }) => side.has(outPlus))
  const [first] = feeding
  if (first === undefined) return system
  const sources = feeding.map(({ id }) => id)
  const nominalV = nominalVoltage(first.setV)
  return feeding.length > 1 ? { nominalV, sources } : { nominalV, sources, converter: first.id }
}
