/** What the voltages of a solved circuit say: collapse, drop-out, losses, batteries that help. */

import type { Said } from '../../../contract/sentences/form/template.ts'
import type { CircuitRequest, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import type { CircuitLevel, EngineState } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { listed, say } from '../../say.ts'
import { supplyDefaults } from '../source/defaults.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { sideOf } from './sides.ts'

type States = readonly CircuitState[]

const when = ({ level, engine }: CircuitState): Said =>
  say('circuit-state', { level: say(`circuit-level.${level}`), engine: say(`engine.${engine}`) })

/** Music while driving or idling must play, the test tone while driving; the rest is told. */
const mustHold = ({ level, engine }: CircuitState) =>
  engine === 'driving' || (engine === 'idling' && level !== 'full-sine')

const named = ({ request }: CircuitParts, index: number) =>
  request.amplifiers[index]?.name ?? request.amplifiers[index]?.id ?? ''

const voltageOf = (state: CircuitState | undefined, id: string | undefined) =>
  state?.parts.find(part => part.id === id)?.voltageV

const sameIn = (states: States | undefined, { level, engine }: CircuitState) =>
  states?.find(state => state.level === level && state.engine === engine)

const stateAt = (states: States, level: CircuitLevel, engine: EngineState) =>
  states.find(state => state.level === level && state.engine === engine)

/** The gravest of states that fail: those that must hold first, then by what is left. */
function gravest(failed: States, left: (state: CircuitState) => number): CircuitState | undefined {
  return failed.toSorted((one, other) => Number(mustHold(other)) - Number(mustHold(one)) || left(one) - left(other))[0]
}

const SETTLES = say('assumed-resistance')

/** A stop only where music must play so and no guess causes it. */
function judged(
  state: CircuitState,
  guessed: boolean
): { readonly level: 'care' | 'stop'; readonly settles: Said | readonly [] } {
  const level = mustHold(state) && !guessed ? 'stop' : 'care'
  return { level, settles: mustHold(state) && guessed ? SETTLES : [] }
}

function saidLimits({ converters = [] }: CircuitRequest): Said | readonly [] {
  const limits = converters.map(({ id, ratedA, setV }) =>
    say('circuit-collapse.limit', { id, ratedA: toDigits(ratedA), setV: toDigits(setV) })
  )
  return limits.length === 0 ? [] : say('circuit-collapse.limits', { limits: listed(limits) })
}

function collapseCautions(states: States, { request }: CircuitParts, certain: States | undefined): readonly Caution[] {
  const state = gravest(
    states.filter(({ stands }) => !stands),
    ({ sustainableShare = 0 }) => sustainableShare
  )
  if (state === undefined) return []
  const { sustainableShare = 0 } = state
  const { level, settles } = judged(state, sameIn(certain, state)?.stands === true)
  const message = say('circuit-collapse', {
    when: when(state),
    sustainableSharePercent: toDigits(100 * sustainableShare, 3),
    limits: saidLimits(request),
    settles
  })
  return [caution('circuit-collapse', message, { at: 'amplifiers', level, figures: { sustainableShare } })]
}

/** What dense bass leaves, beside a test tone that fails. */
function musicText(state: CircuitState, states: States, id: string | undefined): Said | readonly [] {
  if (state.level !== 'full-sine') return []
  const voltageV = voltageOf(stateAt(states, 'heavy', state.engine), id)
  return voltageV === undefined ? [] : say('dense-bass.voltage', { voltageV: toDigits(voltageV) })
}

function dropOutCautions(states: States, parts: CircuitParts, certain: States | undefined): readonly Caution[] {
  return parts.request.amplifiers.flatMap(({ id }, index) => {
    const dropOutV = parts.dropOutsV[index] ?? 0
    const low = (state: CircuitState | undefined) => (voltageOf(state, id) ?? dropOutV) < dropOutV
    const state = gravest(
      states.filter(each => each.engine !== 'cranking' && low(each)),
      each => voltageOf(each, id) ?? 0
    )
    const voltageV = voltageOf(state, id)
    if (state === undefined || voltageV === undefined) return []
    const { level, settles } = judged(state, certain !== undefined && !low(sameIn(certain, state)))
    const message = say('below-drop-out.circuit', {
      when: when(state),
      voltageV: toDigits(voltageV, 4),
      name: named(parts, index),
      dropOutV: toDigits(dropOutV, 4),
      bass: musicText(state, states, id),
      settles
    })
    return [caution('below-drop-out', message, { at: `amplifiers[${index}]`, level, figures: { voltageV, dropOutV } })]
  })
}

/** Voltage lost between an amplifier and the nearest battery, or the converter that feeds it [V]. */
export function lostV(state: CircuitState, id: string, request: CircuitRequest): number | undefined {
  const atAmplifierV = voltageOf(state, id)
  const { plus = '' } = request.amplifiers.find(each => each.id === id) ?? {}
  const poles = sideOf(request, plus).sources.flatMap(source => voltageOf(state, source) ?? [])
  return atAmplifierV === undefined || poles.length === 0 ? undefined : Math.min(...poles) - atAmplifierV
}

function dropCautions(states: States, parts: CircuitParts, certain: States | undefined): readonly Caution[] {
  const state = stateAt(states, 'full-sine', 'driving')
  const { totalDropCarePercent: care, totalDropStopPercent: stop } = supplyDefaults
  if (state === undefined) return []
  return parts.request.amplifiers.flatMap(({ id, plus }, index) => {
    const { nominalV } = sideOf(parts.request, plus)
    const percent = (volts: number | undefined) => (100 * (volts ?? 0)) / nominalV
    const dropV = lostV(state, id, parts.request) ?? 0
    const dropPercent = percent(dropV)
    if (dropPercent <= care.value) return []
    const known = sameIn(certain, state)
    const sure = known === undefined ? dropPercent : percent(lostV(known, id, parts.request))
    const settles = dropPercent > stop.value && sure <= stop.value ? SETTLES : []
    const message = say('total-drop.circuit', {
      when: when(state),
      dropV: toDigits(dropV),
      dropPercent: toDigits(dropPercent),
      name: named(parts, index),
      bass: musicText(state, states, id),
      settles
    })
    const level = sure > stop.value ? 'stop' : 'care'
    return [caution('total-drop', message, { at: `amplifiers[${index}]`, level, figures: { dropV, dropPercent } })]
  })
}

/** Dense bass first: what helps there discharges while the music plays. */
function assistCautions(states: States, { request }: CircuitParts): readonly Caution[] {
  if (request.alternators === undefined) return []
  const given = (state: CircuitState | undefined, list: readonly { readonly id: string }[]) =>
    (state?.parts ?? [])
      .filter(({ id, currentA }) => currentA > 0 && list.some(each => each.id === id))
      .reduce((sum, { currentA }) => sum + currentA, 0)
  const running = [stateAt(states, 'heavy', 'driving'), stateAt(states, 'full-sine', 'driving')]
  const state = running.find(each => given(each, request.batteries) > 1)
  if (state === undefined) return []
  const batteriesA = given(state, request.batteries)
  const chargedA = given(state, request.alternators)
  const message = say('battery-assists.circuit', {
    when: when(state),
    chargedA: toDigits(chargedA),
    batteriesA: toDigits(batteriesA)
  })
  return [caution('battery-assists', message, { at: 'alternators', figures: { batteriesA, chargedA } })]
}

function darkCautions(states: States): readonly Caution[] {
  return states.flatMap((state, index) => {
    const { stopped = [], engine } = state
    const why = stopped.length === 0 ? [] : say('no-supply.stopped', { names: listed(stopped) })
    const told = states
      .slice(0, index)
      .filter(each => each.engine === engine)
      .flatMap(({ withoutSupply }) => withoutSupply)
    // while the starter turns nothing is dark but what is dark with the engine off
    const dark = engine === 'cranking' ? [] : state.withoutSupply.filter(name => !told.includes(name))
    return dark.map(name => caution('no-supply', say('no-supply', { name, when: when(state), why }), { at: 'links' }))
  })
}

/** The states in which something fails that a guess may have caused: what must be solved again without it. */
export function failingStates(states: States, parts: CircuitParts): States {
  const { request } = parts
  const { amplifiers } = request
  const lossy = (state: CircuitState) =>
    amplifiers.some(
      ({ id, plus }) =>
        (100 * (lostV(state, id, request) ?? 0)) / sideOf(request, plus).nominalV >
        supplyDefaults.totalDropStopPercent.value
    )
  const low = (state: CircuitState) =>
    amplifiers.some(({ id }, index) => (voltageOf(state, id) ?? Infinity) < (parts.dropOutsV[index] ?? 0))
  return states.filter(state => mustHold(state) && (!state.stands || low(state) || lossy(state)))
}

/** @param certain  the same states without guessed resistances, where something fails and something is guessed */
export function voltageCautions(states: States, parts: CircuitParts, certain: States | undefined): readonly Caution[] {
  return [
    ...collapseCautions(states, parts, certain),
    ...dropOutCautions(states, parts, certain),
    ...dropCautions(states, parts, certain),
    ...assistCautions(states, parts),
    ...darkCautions(states)
  ]
}
