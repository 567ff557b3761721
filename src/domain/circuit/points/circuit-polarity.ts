/** Circuits whose poles are exchanged, shorted or of another voltage than the circuit is said to be: their states would say nothing. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { DesignError } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { elementsIn, inputOf } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'
import type { Element } from './element.ts'
import { reached } from './reach.ts'
import { sideOf } from './sides.ts'
import { solvePoints } from './solve-points.ts'

interface Device {
  readonly id: string
  readonly field: string
  readonly plus: string
  readonly minus: string
}

type Between = (poles: Pick<Device, 'plus' | 'minus'>) => number | undefined

/** Of its rest voltage, what is left at the poles of a battery that is shorted or exchanged. */
const SHORTED_SHARE = 0.5
/** Below that a device sees its poles exchanged; above, what is left of solving [V]. */
const EXCHANGED_V = -0.5
/** Of its nominal voltage, what charging never exceeds. */
const HIGHEST_SHARE = 1.4

function listed({ request }: CircuitParts): readonly Device[] {
  const { amplifiers, accessories = [], capacitors = [], alternators = [], converters = [], starter } = request
  const of = (name: string, devices: readonly Omit<Device, 'field'>[]) =>
    devices.map(({ id, plus, minus }, index) => ({ id, plus, minus, field: `${name}[${index}]` }))
  return [
    ...of('amplifiers', amplifiers),
    ...of('accessories', accessories),
    ...of('capacitors', capacitors),
    ...of('alternators', alternators),
    ...converters.flatMap(({ id, inPlus, inMinus, outPlus, outMinus }, index) => [
      { id, plus: inPlus, minus: inMinus, field: `converters[${index}].inPlus` },
      { id, plus: outPlus, minus: outMinus, field: `converters[${index}].outPlus` }
    ]),
    ...(starter === undefined ? [] : [{ id: 'starter', ...starter, field: 'starter' }])
  ]
}

const refuse = (field: string, detail: Said) => new DesignError('conflicting-input', { field, detail })

/** Sources and ways alone, the engine running. */
function unloaded(parts: CircuitParts): readonly Element[] {
  const { amplifiers, accessories = [], converters = [] } = parts.request
  const loads = new Set([
    ...[...amplifiers, ...accessories].map(({ id }) => id),
    ...converters.map(({ id }) => inputOf(id))
  ])
  return elementsIn(parts, { level: 'silence', engine: 'driving' }).filter(({ id }) => !loads.has(id))
}

function requireBatteries({ batteries }: CircuitParts, betweenV: Between): void {
  for (const [index, { asked, restV }] of batteries.entries()) {
    const voltageV = betweenV(asked) ?? restV
    if (voltageV >= SHORTED_SHARE * restV) continue
    const detail = say('refused.battery-shorted', { id: asked.id, leftV: toDigits(Math.max(0, voltageV), 3) })
    throw refuse(`batteries[${index}]`, detail)
  }
}

function requirePoles(parts: CircuitParts, betweenV: Between): void {
  for (const device of listed(parts)) {
    const { id, field } = device
    if ((betweenV(device) ?? 0) < EXCHANGED_V) throw refuse(field, say('refused.poles-exchanged', { id }))
  }
}

function requireNominal({ request }: CircuitParts, betweenV: Between): void {
  for (const [index, amplifier] of request.amplifiers.entries()) {
    const { nominalV } = sideOf(request, amplifier.plus)
    const voltageV = betweenV(amplifier) ?? 0
    if (voltageV <= HIGHEST_SHARE * nominalV) continue
    const detail = say('refused.more-volts-than-said', { id: amplifier.id, voltageV: toDigits(voltageV, 3), nominalV })
    throw refuse(`amplifiers[${index}]`, detail)
  }
}

/** No converter feeds its own input, over others or by itself. */
function requireNoCircle({ request }: CircuitParts): void {
  const { cables = [], fuses = [], links = [], converters = [] } = request
  const ways = [...cables, ...fuses, ...links]
  const behind = (plus: string) => {
    const side = reached([plus], ways)
    return converters.filter(({ inPlus }) => side.has(inPlus))
  }
  for (const [index, first] of converters.entries()) {
    const fed = new Set(behind(first.outPlus))
    for (const next of fed) for (const further of behind(next.outPlus)) fed.add(further)
    if (fed.has(first)) throw refuse(`converters[${index}]`, say('refused.feeds-itself', { id: first.id }))
  }
}

/** @throws DesignError `conflicting-input` for poles exchanged or shorted, for a voltage that is not the one said, for a converter that feeds itself */
export function requirePolarity(parts: CircuitParts, reference: string): void {
  requireNoCircle(parts)
  const voltages = solvePoints(unloaded(parts), reference)
  if (voltages === undefined) return
  const betweenV: Between = ({ plus, minus }) => {
    const [high, low] = [voltages.get(plus), voltages.get(minus)]
    return high === undefined || low === undefined ? undefined : high - low
  }
  requireBatteries(parts, betweenV)
  requirePoles(parts, betweenV)
  requireNominal(parts, betweenV)
}
