/** The card of readings of a plan. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import type { CircuitPart } from '../electric/graph/plan-graph.ts'
import { cardOf } from './card.ts'
import { loadReadings } from './load-readings.ts'
import { silentReadings } from './silent-readings.ts'

/**
 * @param senses  the amplifier wakes by its signal: there is no turn-on terminal to read
 * @returns nothing without a circuit
 */
export function planReadings(circuit: CircuitPart, capacitor: boolean, senses: boolean): readonly PlanReading[] {
  if (!circuit.done) return []
  const card = cardOf(circuit.request, capacitor)
  return [...silentReadings(card), ...loadReadings(card)].filter(({ step }) => !(senses && step === 'turn-on'))
}

/** In the order of the steps; what belongs to none of them is left out. */
export const readingsInOrder = (
  readings: readonly PlanReading[],
  steps: readonly { readonly id: string }[]
): readonly PlanReading[] => steps.flatMap(({ id }) => readings.filter(({ step }) => step === id))
