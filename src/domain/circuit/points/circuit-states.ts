/** The circuit at every level that says something about it. */
import type { CircuitState } from '../../../contract/supply/supply-circuit.ts'
import { elementsIn, type Situation } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { drawnA, type Element } from './element.ts'
import { type PointVoltages, solvePoints, sustainableShare } from './solve-points.ts'

const running: readonly Situation[] = [
  { level: 'silence', engine: 'idling' },
  { level: 'average', engine: 'idling' },
  { level: 'heavy', engine: 'idling' },
  { level: 'full-sine', engine: 'idling' },
  { level: 'average', engine: 'driving' },
  { level: 'heavy', engine: 'driving' },
  { level: 'full-sine', engine: 'driving' },
  { level: 'average', engine: 'off' }
]

/** Voltage over an element; undefined where it has no supply. */
export function acrossV(voltages: PointVoltages, { from, to }: Element): number | undefined {
  const [first, second] = [voltages.get(from), voltages.get(to)]
  return first === undefined || second === undefined ? undefined : first - second
}

function partsOf(elements: readonly Element[], voltages: PointVoltages): CircuitState['parts'] {
  return elements.flatMap(element => {
    const voltageV = acrossV(voltages, element)
    if (voltageV === undefined) return []
    const { id, law } = element
    const gives = law.kind === 'battery' || law.kind === 'regulated'
    return [{ id, voltageV, currentA: (gives ? -1 : 1) * drawnA(law, voltageV) }]
  })
}

function stateOf(parts: CircuitParts, situation: Situation, reference: string): CircuitState {
  const elements = elementsIn(parts, situation)
  const voltages = solvePoints(elements, reference)
  if (voltages === undefined) {
    const share = sustainableShare(elements, reference)
    return { ...situation, stands: false, sustainableShare: share, points: [], parts: [], withoutSupply: [] }
  }
  const { amplifiers, accessories = [] } = parts.request
  const loads = new Set([...amplifiers, ...accessories].map(({ id }) => id))
  return {
    ...situation,
    stands: true,
    points: [...voltages].map(([point, voltageV]) => ({ point, voltageV })),
    parts: partsOf(elements, voltages),
    withoutSupply: elements
      .filter(element => loads.has(element.id) && acrossV(voltages, element) === undefined)
      .map(({ id }) => id)
  }
}

/** Most that flows through each part at full sine, engine idling or driving [A]; absent where nothing stands or feeds it. */
export function fullSineCurrents(states: readonly CircuitState[]): ReadonlyMap<string, number> {
  const currents = new Map<string, number>()
  for (const { id, currentA } of states.filter(({ level }) => level === 'full-sine').flatMap(({ parts }) => parts)) {
    currents.set(id, Math.max(currents.get(id) ?? 0, Math.abs(currentA)))
  }
  return currents
}

export function circuitStates(parts: CircuitParts, reference: string): readonly CircuitState[] {
  const { starter } = parts.request
  const cold: readonly Situation[] = starter === undefined ? [] : [{ level: 'cold-start', engine: 'cranking' }]
  return [...running, ...cold].map(situation => stateOf(parts, situation, reference))
}
