/** A circuit in one situation, each converter taking from its input what its output needs. */

import { converterInputW } from '../load/converter-input.ts'
import { elementsIn, inputOf, type Situation, type Taken } from './circuit-elements.ts'
import type { CircuitParts, ConverterPart } from './circuit-parts.ts'
import { drawnA, type Element } from './element.ts'
import { type PointVoltages, solvePoints } from './solve-points.ts'

interface Fed {
  readonly elements: readonly Element[]
  /** Absent where the loads cannot be fed. */
  readonly voltages: PointVoltages | undefined
  /** Converters that stop because their input is too low. */
  readonly stopped: readonly string[]
}

const TURNS = 60
/** Above what is left of the currents when a state is settled. */
const SETTLED_W = 1e-4
const SETTLED_A = 1e-6

const across = (voltages: PointVoltages, from: string, to: string) =>
  (voltages.get(from) ?? 0) - (voltages.get(to) ?? 0)

/** Most it gives without drawing more than it may: its rating, or what is left of the input [A]. */
function limitOf({ asked, efficiency, idleW }: ConverterPart, voltages: PointVoltages): number {
  const { ratedA, highestInputA, inPlus, inMinus, outPlus, outMinus } = asked
  if (highestInputA === undefined) return ratedA
  const inputW = across(voltages, inPlus, inMinus) * highestInputA
  return Math.min(ratedA, Math.max(0, (efficiency * (inputW - idleW)) / across(voltages, outPlus, outMinus)))
}

function takenBy(part: ConverterPart, elements: readonly Element[], voltages: PointVoltages) {
  const { asked, efficiency, idleW } = part
  const output = elements.find(({ id }) => id === asked.id)
  const voltageV = across(voltages, asked.outPlus, asked.outMinus)
  const givenA = output === undefined ? 0 : Math.max(0, -drawnA(output.law, voltageV))
  const powerW = converterInputW({ outputW: voltageV * givenA, efficiency, idleW })
  return { powerW, limitA: limitOf(part, voltages) }
}

function nextTaken(parts: CircuitParts, taken: Taken, elements: readonly Element[], voltages: PointVoltages): Taken {
  const running = parts.converters.filter(({ asked }) => elements.some(({ id }) => id === inputOf(asked.id)))
  const low = running.filter(
    ({ asked, lowestInputV }) =>
      voltages.has(asked.inPlus) && across(voltages, asked.inPlus, asked.inMinus) < lowestInputV
  )
  // one that stops unloads the others: they are asked again
  if (low.length > 0) return new Map([...taken].filter(([id]) => low.every(({ asked }) => asked.id !== id)))
  return new Map([...taken, ...running.map(part => [part.asked.id, takenBy(part, elements, voltages)] as const)])
}

const sameAs = (one: Taken, other: Taken) =>
  one.size === other.size &&
  [...one].every(([id, { powerW, limitA }]) => {
    const before = other.get(id)
    return (
      before !== undefined &&
      Math.abs(powerW - before.powerW) < SETTLED_W &&
      Math.abs(limitA - before.limitA) < SETTLED_A
    )
  })

/**
 * From no power at any input upwards, so that the highest state is found, as for the loads.
 *
 * @source energy balance of each converter, solved in turns; rises from below and ends where it first holds
 * @check  24 V, 0.1 Ω, 230 W at 12 V behind η 0.92 and 0 W idle: the input takes 250 W at 22.91 V
 */
export function feedCircuit(parts: CircuitParts, situation: Situation, reference: string): Fed {
  const all = parts.converters.map(({ asked }) => asked.id)
  if (all.length === 0) {
    const elements = elementsIn(parts, situation)
    return { elements, voltages: solvePoints(elements, reference), stopped: [] }
  }
  let taken: Taken = new Map(parts.converters.map(({ asked: { id, ratedA } }) => [id, { powerW: 0, limitA: ratedA }]))
  for (let turn = 0; ; turn++) {
    const elements = elementsIn(parts, situation, taken)
    const voltages = solvePoints(elements, reference)
    const stopped = all.filter(id => !taken.has(id))
    if (voltages === undefined) return { elements, voltages, stopped }
    const next = nextTaken(parts, taken, elements, voltages)
    if (sameAs(next, taken)) return { elements, voltages, stopped }
    if (turn === TURNS) return { elements, voltages: undefined, stopped }
    taken = next
  }
}
