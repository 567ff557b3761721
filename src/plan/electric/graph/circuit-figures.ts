/** What a reader asks of the solved circuit: how much is left at the amplifier that gets least. */
import type { CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { CircuitLevel, EngineState } from '../../../contract/supply/words.ts'
import { lostV } from '../../../domain/circuit/points/circuit-voltages.ts'
import type { CircuitPart } from './plan-graph.ts'

interface LeastVoltage {
  readonly voltageV: number
  /** From the nearest battery to it [V]. */
  readonly lostV: number
  /** Whether a battery gives current beside the charging system. */
  readonly batteryGives: boolean
}

type Done = CircuitPart & { readonly done: true }

const stateOf = ({ outcome }: Done, level: CircuitLevel, engine: EngineState): CircuitState | undefined =>
  outcome.result.states.find(state => state.level === level && state.engine === engine)

/** @returns undefined where the voltage collapses or nothing feeds the amplifiers */
export function leastVoltage(part: Done, level: CircuitLevel, engine: EngineState): LeastVoltage | undefined {
  const state = stateOf(part, level, engine)
  const { amplifiers, batteries } = part.request
  const [least] = amplifiers
    .flatMap(({ id }) => {
      const voltageV = state?.parts.find(each => each.id === id)?.voltageV
      return voltageV === undefined ? [] : [{ id, voltageV }]
    })
    .sort((one, other) => one.voltageV - other.voltageV)
  if (state === undefined || least === undefined) return undefined
  const gives = ({ id, currentA }: CircuitState['parts'][number]) =>
    batteries.some(battery => battery.id === id) && currentA > 1
  return {
    voltageV: least.voltageV,
    lostV: lostV(state, least.id, part.request) ?? 0,
    batteryGives: state.parts.some(gives)
  }
}
