/** The circuit at every level that says something about it. */
import type { CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { EngineState } from '../../../contract/supply/words.ts'
import type { Situation } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { drawnA, type Element } from './element.ts'
import { feedCircuit } from './feed-circuit.ts'
import { type PointVoltages, standsAt, sustainableShare } from './solve-points.ts'

const running: readonly Situation[] = [
  { level: 'silence', engine: 'idling' },
  { level: 'average', engine: 'idling' },
  { level: 'heavy', engine: 'idling' },
  { level: 'full-sine', engine: 'idling' },
  { level: 'average', engine: 'driving' },
  { level: 'heavy', engine: 'driving' },
  { level: 'full-sine', engine: 'driving' },
  { level: 'average', engine: 'off' },
  { level: 'heavy', engine: 'off' }
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

/** What draws nothing in a state lacks no supply. */
const takes = ({ law }: Element) => law.kind !== 'current' || law.currentA > 0

function stateOf(parts: CircuitParts, situation: Situation, reference: string): CircuitState {
  const { elements, voltages, stopped } = feedCircuit(parts, situation, reference)
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
      .filter(element => loads.has(element.id) && takes(element) && acrossV(voltages, element) === undefined)
      .map(({ id }) => id),
    ...(stopped.length === 0 ? {} : { stopped })
  }
}

/** Whether every amplifier that is fed stays above its drop-out: else it stops, and what it would draw never lasts. */
const lasts = ({ parts }: CircuitState, { request, dropOutsV }: CircuitParts) =>
  request.amplifiers.every(({ id }, index) => {
    const voltageV = parts.find(part => part.id === id)?.voltageV
    return voltageV === undefined || voltageV >= (dropOutsV[index] ?? 0)
  })

/** Most that flows through each part for good at a level [A]: the test tone while idling takes seconds and counts in none. */
export function lastingAt(
  level: 'heavy' | 'full-sine',
  states: readonly CircuitState[],
  parts: CircuitParts
): ReadonlyMap<string, number> {
  const engines: readonly EngineState[] = level === 'heavy' ? ['idling', 'driving'] : ['driving']
  const lasting = states.filter(state => state.level === level && engines.includes(state.engine) && lasts(state, parts))
  const currents = new Map<string, number>()
  for (const { id, currentA } of lasting.flatMap(state => state.parts)) {
    currents.set(id, Math.max(currents.get(id) ?? 0, Math.abs(currentA)))
  }
  return currents
}

/** @param asked  only these situations; all where absent */
export function circuitStates(
  parts: CircuitParts,
  reference: string,
  asked?: readonly Situation[]
): readonly CircuitState[] {
  if (asked !== undefined) return asked.map(situation => stateOf(parts, situation, reference))
  const { starter } = parts.request
  const cold: readonly Situation[] = starter === undefined ? [] : [{ level: 'cold-start', engine: 'cranking' }]
  return [...running, ...cold].map(situation => stateOf(parts, situation, reference))
}

/** The ripple of bass reaches twice the mean. */
const RIPPLE = 2

/** How many times the full sine still stands while driving; undefined where twice of it does, or where itself does not. */
export function marginAtFullSine(parts: CircuitParts, states: readonly CircuitState[], reference: string) {
  const situation: Situation = { level: 'full-sine', engine: 'driving' }
  const stands = states.some(state => state.level === 'full-sine' && state.engine === 'driving' && state.stands)
  if (!stands) return undefined
  const { elements } = feedCircuit(parts, situation, reference)
  return standsAt(RIPPLE, elements, reference) ? undefined : sustainableShare(elements, reference, RIPPLE)
}

/** The same circuit without what is only guessed of its links; undefined where nothing is. */
export function withoutGuesses(parts: CircuitParts): CircuitParts | undefined {
  const { links = [] } = parts.request
  if (!links.some(({ assumed }) => assumed === true)) return undefined
  const bare = links.map(link => (link.assumed === true ? { ...link, resistanceOhm: 1e-6 } : link))
  return { ...parts, request: { ...parts.request, links: bare } }
}
