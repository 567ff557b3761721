/**
 * A network and its filters in time: x' = A·x + B·e for the source voltage e, and the rate of the radiated flow, which is
 * what the sound pressure follows. Built from the same elements as the equations over frequency, by other means.
 */
import type { FilterSection } from '../filter/filter.ts'
import type { Network } from './network.ts'
import { derivative, radiatedFlowOf } from './state-derivative.ts'
import { type StateLayout, stateLayout } from './state-layout.ts'

export interface StateSpace {
  readonly order: number
  /** Row by row, in states scaled to equal energy. */
  readonly a: Float64Array
  readonly b: Float64Array
  /** dU/dt = c·x + d·e [m³/s² per V]. */
  readonly c: Float64Array
  readonly d: number
}

function columnOf(layout: StateLayout, state: number): { readonly rates: Float64Array; readonly flowRate: number } {
  const x = new Float64Array(layout.order)
  if (state >= 0) x[state] = 1 / (layout.weights[state] as number)
  const rates = derivative(layout, x, state >= 0 ? 0 : 1)
  return {
    flowRate: radiatedFlowOf(layout, rates),
    rates: rates.map((rate, k) => rate * (layout.weights[k] as number))
  }
}

export function stateSpace(network: Network, sourceOhm: number, filters: readonly FilterSection[]): StateSpace {
  const layout = stateLayout(network, sourceOhm, filters)
  const { order } = layout
  const a = new Float64Array(order * order)
  const c = new Float64Array(order)
  for (let state = 0; state < order; state++) {
    const { rates, flowRate } = columnOf(layout, state)
    for (let row = 0; row < order; row++) a[row * order + state] = rates[row] as number
    c[state] = flowRate
  }
  const { rates, flowRate } = columnOf(layout, -1)
  return { order, a, b: rates, c, d: flowRate }
}
