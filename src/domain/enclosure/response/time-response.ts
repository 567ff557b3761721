/** What a step and a pulse of the source sound like: the course of the pressure in time, and how soon it is over. */
import type { ResponseScalars } from '../../../contract/enclosures/response.ts'
import type { TimeResponse, TimeResponseRequest } from '../../../contract/enclosures/time-response.ts'
import { matrixExponential } from '../../../numeric/linear/matrix-exponential.ts'
import type { Assumptions } from '../../assume.ts'
import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { DesignError } from '../../design-error.ts'
import { type StateSpace, stateSpace } from '../../network/state-space.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { DISTANCE_M, type ResponseSystem } from '../model/response-system.ts'
import { responseDefaults } from './defaults.ts'

const SETTLED = 0.05
/** Beyond this the matrices would hold up other requests. */
const MOST_STATES = 120

/** e^(M·t) of [A B; 0 0]: one step of the state under a constant source, exactly. */
function stepMatrix({ order, a, b }: StateSpace, dt: number): Float64Array {
  const n = order + 1
  const m = new Float64Array(n * n)
  for (let row = 0; row < order; row++) {
    for (let column = 0; column < order; column++) m[row * n + column] = dt * (a[row * order + column] as number)
    m[row * n + order] = dt * (b[row] as number)
  }
  return matrixExponential(m, n)
}

/** c·x (+ d·e) at each moment, from a start and under a constant source. */
function course(space: StateSpace, step: Float64Array, start: Float64Array, source: 0 | 1, points: number): number[] {
  const n = space.order + 1
  let x = start
  const values: number[] = []
  for (let k = 0; k < points; k++) {
    let value = source * space.d
    for (let state = 0; state < space.order; state++) value += (space.c[state] as number) * (x[state] as number)
    values.push(value)
    const next = new Float64Array(space.order)
    for (let row = 0; row < space.order; row++) {
      let sum = source * (step[row * n + space.order] as number)
      for (let column = 0; column < space.order; column++)
        sum += (step[row * n + column] as number) * (x[column] as number)
      next[row] = sum
    }
    x = next
  }
  return values
}

function figures(timeS: readonly number[], stepRatio: readonly number[]) {
  const peakIndex = stepRatio.reduce(
    (best, value, k) => (Math.abs(value) > Math.abs(stepRatio[best] as number) ? k : best),
    0
  )
  const peakRatio = stepRatio[peakIndex] as number
  const against = stepRatio.slice(peakIndex).reduce((most, value) => Math.max(most, -value * Math.sign(peakRatio)), 0)
  const last = stepRatio.findLastIndex(value => Math.abs(value) > SETTLED * Math.abs(peakRatio))
  const settlingTimeS = timeS[last + 1]
  return {
    peakRatio,
    peakTimeS: timeS[peakIndex] as number,
    overshootRatio: peakRatio === 0 ? 0 : against / Math.abs(peakRatio),
    ...present({ settlingTimeS })
  }
}

/**
 * Exact for the network: the state moves by e^(A·Δt), so nothing sounds before the step and nothing rings that the network
 * does not let ring. The reference is the plateau of high-pass kinds, the highest level of the others.
 *
 * @throws DesignError `out-of-range` for a network of too many states, `no-solution` where digits run out
 * @validity Linear; a power-law coil is a chain of cells that follows it within 0.01 % from 1 Hz to 1 kHz.
 * @source derived: the equations of the network in time
 */
export function timeResponse(
  system: ResponseSystem,
  scalars: ResponseScalars,
  request: TimeResponseRequest,
  assume: Assumptions
): TimeResponse {
  const durationS = assume.take(request.durationS, 'timeResponse.durationS', responseDefaults.durationS)
  const points = assume.take(request.points, 'timeResponse.points', responseDefaults.timePoints)
  const space = stateSpace(system.network, system.sourceOhm, system.filters)
  if (space.order > MOST_STATES) {
    const detail = say('refused.the-network-has-states-the-response', { order: space.order, mostStates: MOST_STATES })
    throw new DesignError('out-of-range', { field: 'timeResponse', value: space.order, maximum: MOST_STATES, detail })
  }
  const step = stepMatrix(space, durationS / (points - 1))
  const referencePa = REFERENCE_PRESSURE_PA * 10 ** ((scalars.referenceLevelDb ?? scalars.peakLevelDb) / 20)
  const scale = (system.air.densityKgPerM3 * system.voltageV) / (2 * Math.PI * DISTANCE_M * referencePa)
  const timeS = Array.from({ length: points }, (_, k) => (durationS * k) / (points - 1))
  const scaled = (values: readonly number[]) => values.map(value => value * scale)
  const stepRatio = scaled(course(space, step, new Float64Array(space.order), 1, points))
  const impulsePerS = scaled(course(space, step, space.b, 0, points))
  if (![...stepRatio, ...impulsePerS].every(Number.isFinite)) {
    const detail = say('refused.the-parts-of-this-network-differ')
    throw new DesignError('no-solution', { field: 'timeResponse', detail })
  }
  return {
    timeS,
    stepRatio,
    impulsePerS,
    jumpRatio: space.d * scale,
    ...figures(timeS, stepRatio)
  }
}
