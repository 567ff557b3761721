/** Capacitors of a circuit: nothing in a steady state, all that the batteries drive when one is joined empty. */
import type { CapacitorGuard, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { Assumptions } from '../../assume.ts'
import { twelves } from '../../twelves.ts'
import { capacitorEffect, usualPrechargeOhm } from '../source/capacitor.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { strongElements } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { acrossV } from './circuit-states.ts'
import type { Element } from './element.ts'
import { sideOf } from './sides.ts'
import { solvePoints } from './solve-points.ts'

/** Ideal plates would tear the matrix. */
const LEAST_OHM = 1e-6

function highestV(states: readonly CircuitState[], plus: string, minus: string): number {
  const across = states.map(({ points }) => {
    const at = (name: string) => points.find(({ point }) => point === name)?.voltageV ?? 0
    return at(plus) - at(minus)
  })
  return Math.max(0, ...across)
}

/**
 * What each capacitor holds, and draws when it is joined empty.
 *
 *   E = C·V²/2,  t = R·C·ln(V/1 V),  I from the solved fault through its series resistance
 *
 * @param reference  the point of 0 V
 * @validity The first instant: leads have no inductance here.
 * @source energy and charging of a capacitor, Kirchhoff's laws, derived
 * @check  12.8 V behind 3 mΩ and 5 mΩ of lead, 2 mΩ in the capacitor: 1280 A; 2 F at 14.4 V: 207 J
 */
export function capacitorGuards(
  parts: CircuitParts,
  states: readonly CircuitState[],
  reference: string,
  assumed: Assumptions
): readonly CapacitorGuard[] {
  const { request } = parts
  return (request.capacitors ?? []).map(({ id, plus, minus, capacitanceF, esrOhm, ...asked }, index) => {
    const { nominalV } = sideOf(request, plus)
    const { prechargeOhm: rule } = supplyDefaults
    const usualOhm = usualPrechargeOhm(twelves(nominalV))
    const prechargeOhm = assumed.work(asked.prechargeOhm, `capacitors[${index}].prechargeOhm`, usualOhm, rule)
    const joined: Element = { id, from: plus, to: minus, law: { kind: 'conductor', ohm: esrOhm ?? LEAST_OHM } }
    const voltages = solvePoints([...strongElements(parts), joined], reference)
    const inrushV = (voltages && acrossV(voltages, joined)) ?? 0
    const voltageV = highestV(states, plus, minus)
    const effect = capacitorEffect({ capacitanceF, prechargeOhm }, voltageV, 0, 1, 0)
    return {
      id,
      voltageV,
      storedJ: effect.storedJ,
      prechargeOhm,
      inrushA: inrushV / (esrOhm ?? LEAST_OHM),
      prechargeDoneS: effect.prechargeDoneS ?? 0
    }
  })
}
