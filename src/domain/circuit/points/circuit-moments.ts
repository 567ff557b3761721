/** What the amplifiers meet while the engine is started, while it stands, and where the vehicle governs its charging. */

import type { CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { CircuitLevel, EngineState } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { circuitStates } from './circuit-states.ts'
import { circuitDefaults } from './defaults.ts'

type States = readonly CircuitState[]

interface Fed {
  readonly name: string
  readonly voltageV: number
  readonly dropOutV: number
}

const stateAt = (states: States, level: CircuitLevel, engine: EngineState) =>
  states.find(state => state.level === level && state.engine === engine)

/** Of all that are fed, the one that is nearest to its drop-out. */
function scarcest(state: CircuitState | undefined, { request, dropOutsV }: CircuitParts): Fed | undefined {
  return request.amplifiers
    .flatMap(({ id, name = id }, index): readonly Fed[] => {
      const voltageV = state?.parts.find(part => part.id === id)?.voltageV
      return voltageV === undefined ? [] : [{ name, voltageV, dropOutV: dropOutsV[index] ?? 0 }]
    })
    .toSorted((one, other) => one.voltageV - one.dropOutV - other.voltageV + other.dropOutV)[0]
}

function startCautions(states: States, parts: CircuitParts): readonly Caution[] {
  const fed = scarcest(stateAt(states, 'cold-start', 'cranking'), parts)
  if (fed === undefined || fed.voltageV >= fed.dropOutV) return []
  const { name, voltageV, dropOutV } = fed
  const message = say('cold-start', { name, voltageV: toDigits(voltageV, 3), dropOutV: toDigits(dropOutV, 3) })
  return [caution('cold-start', message, { at: 'starter', figures: { voltageV, dropOutV } })]
}

/** What the first battery gives beyond what the parked vehicle takes [A]. */
function musicFromFirst({ parts }: CircuitState, { request: { batteries, accessories = [] } }: CircuitParts): number {
  const givenA = parts.find(({ id }) => id === batteries[0]?.id)?.currentA ?? 0
  return givenA - accessories.reduce((sum, { parkedA = 0 }) => sum + parkedA, 0)
}

/** An amplifier that stops by itself does so long after the battery has become too flat to start the engine. */
function cutOffCautions(states: States, parts: CircuitParts): readonly Caution[] {
  const state = stateAt(states, 'average', 'off')
  const fed = scarcest(state, parts)
  const [first] = parts.batteries
  if (state === undefined || fed === undefined || first === undefined || parts.request.starter === undefined) return []
  if (first.asked.chemistry === 'lithium' || musicFromFirst(state, parts) < 1) return []
  const stopsAtV = first.restV - (fed.voltageV - fed.dropOutV)
  const halfV = first.restV - circuitDefaults.weakBelowRestV.value * twelves(parts.request.systemVoltageV)
  if (stopsAtV >= halfV) return []
  const message = say('late-cut-off', {
    name: fed.name,
    stopsAtV: toDigits(stopsAtV, 3),
    halfV: toDigits(halfV, 3)
  })
  return [caution('late-cut-off', message, { at: 'amplifiers', figures: { stopsAtV, halfV } })]
}

const setTo = (parts: CircuitParts, end: 'lowestSetV' | 'highestSetV'): CircuitParts => {
  const alternators = (parts.request.alternators ?? []).map(each => ({ ...each, setV: each[end] ?? each.setV }))
  return { ...parts, request: { ...parts.request, alternators } }
}

/** Where the vehicle sets its charging as it likes, both ends of what that leaves. */
function windowCautions(parts: CircuitParts, reference: string): readonly Caution[] {
  const [first] = parts.request.alternators ?? []
  const { setV = 0, lowestSetV = setV, highestSetV = setV } = first ?? {}
  if (first === undefined || lowestSetV === highestSetV) return []
  const at = (end: 'lowestSetV' | 'highestSetV', level: CircuitLevel) =>
    scarcest(circuitStates(setTo(parts, end), reference, [{ level, engine: 'driving' }])[0], parts)
  const [low, high] = [at('lowestSetV', 'heavy'), at('highestSetV', 'heavy')]
  if (low === undefined || high === undefined) return []
  const { name, voltageV, dropOutV } = low
  const message = say('governed-charging', {
    lowestSetV: toDigits(lowestSetV, 3),
    highestSetV: toDigits(highestSetV, 3),
    name,
    lowV: toDigits(voltageV, 3),
    highV: toDigits(high.voltageV, 3)
  })
  const level = voltageV < dropOutV ? 'care' : 'note'
  const figures = { lowV: voltageV, highV: high.voltageV }
  return [caution('governed-charging', message, { at: 'alternators[0]', level, figures })]
}

export const momentCautions = (states: States, parts: CircuitParts, reference: string): readonly Caution[] => [
  ...startCautions(states, parts),
  ...cutOffCautions(states, parts),
  ...windowCautions(parts, reference)
]
