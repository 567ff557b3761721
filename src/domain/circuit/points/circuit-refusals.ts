/** Graphs that are no circuit. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { requireFuseStands } from '../fuse/fuse-rating.ts'
import { inputOf } from './circuit-elements.ts'
import { reached } from './reach.ts'

interface Placed {
  readonly id: string
  readonly field: string
  readonly from: string
  readonly to: string
}

function placed(request: CircuitRequest): readonly Placed[] {
  const { batteries, alternators = [], converters = [], cables = [], fuses = [], links = [] } = request
  const { amplifiers, accessories = [], capacitors = [] } = request
  const poles = (
    name: string,
    list: readonly { readonly id: string; readonly plus: string; readonly minus: string }[]
  ) => list.map(({ id, plus, minus }, index) => ({ id, field: `${name}[${index}]`, from: plus, to: minus }))
  const ends = (name: string, list: readonly { readonly id: string; readonly from: string; readonly to: string }[]) =>
    list.map(({ id, from, to }, index) => ({ id, field: `${name}[${index}]`, from, to }))
  const { starter } = request
  return [
    ...poles('batteries', batteries),
    ...poles('alternators', alternators),
    ...converters.flatMap(({ id, inPlus, inMinus, outPlus, outMinus }, index) => [
      { id, field: `converters[${index}]`, from: outPlus, to: outMinus },
      { id: inputOf(id), field: `converters[${index}]`, from: inPlus, to: inMinus }
    ]),
    ...ends('cables', cables),
    ...ends('fuses', fuses),
    ...ends('links', links),
    ...poles('amplifiers', amplifiers),
    ...poles('accessories', accessories),
    ...poles('capacitors', capacitors),
    ...(starter === undefined ? [] : [{ id: 'starter', field: 'starter', from: starter.plus, to: starter.minus }])
  ]
}

const refuse = (field: string, detail: Said) => new DesignError('conflicting-input', { field, detail })

/** Every source by its plus pole, with the most volts it holds. */
function heldV({ batteries, alternators = [], converters = [], systemVoltageV }: CircuitRequest) {
  return [
    ...batteries.map(({ plus, openCircuitV = 0 }) => ({ plus, voltageV: Math.max(systemVoltageV, openCircuitV) })),
    ...alternators.map(({ plus, setV, highestSetV = setV }) => ({ plus, voltageV: highestSetV })),
    ...converters.map(({ outPlus, setV }) => ({ plus: outPlus, voltageV: setV }))
  ]
}

/** By the sources of its own side: behind a converter the voltage is another. */
function requireVoltages(request: CircuitRequest): void {
  const { cables = [], fuses = [], links = [], capacitors = [] } = request
  const sources = heldV(request)
  const highestAt = (points: readonly string[]) => {
    const side = reached(points, [...cables, ...fuses, ...links])
    return Math.max(0, ...sources.filter(({ plus }) => side.has(plus)).map(({ voltageV }) => voltageV))
  }
  for (const [index, { from, to, ...fuse }] of fuses.entries())
    requireFuseStands(fuse, highestAt([from, to]), `fuses[${index}]`)
  for (const [index, { id, plus, ratedVoltageV = Infinity }] of capacitors.entries()) {
    const highestV = highestAt([plus])
    if (highestV <= ratedVoltageV) continue
    const detail = say('refused.capacitor-voltage', { id, ratedVoltageV, highestV })
    throw refuse(`capacitors[${index}].ratedVoltageV`, detail)
  }
}

function requireAlternators({ alternators = [] }: CircuitRequest): void {
  for (const [index, { setV, lowestSetV = setV, highestSetV = setV, idleA, drivingA }] of alternators.entries()) {
    if (idleA > drivingA) throw refuse(`alternators[${index}].idleA`, say('refused.more-at-idle', { idleA, drivingA }))
    if (lowestSetV <= setV && setV <= highestSetV) continue
    throw refuse(
      `alternators[${index}].setV`,
      say('refused.charging-outside-its-ends', { setV, lowestSetV, highestSetV })
    )
  }
}

/** @throws DesignError `conflicting-input` for names used twice, a way that leads nowhere, a part with no source; `fuse-voltage` */
export function requireCircuit(request: CircuitRequest): void {
  const all = placed(request)
  const ids = new Set<string>()
  for (const { id, field, from, to } of all) {
    if (ids.has(id)) throw refuse(field, say('refused.the-name-is-used-twice', { id }))
    ids.add(id)
    if (from === to) throw refuse(field, say('refused.begins-and-ends-at-the-same', { id, from }))
  }
  const loads = [
    ...[...request.amplifiers, ...(request.accessories ?? []), ...(request.capacitors ?? [])].map(({ id }) => id),
    ...(request.converters ?? []).map(({ id }) => inputOf(id))
  ]
  const live = reached(
    [request.batteries[0]?.minus ?? ''],
    all.filter(({ id }) => !loads.includes(id))
  )
  for (const { id, field, from, to } of all) {
    const lost = [from, to].find(point => !live.has(point))
    if (lost !== undefined) throw refuse(field, say('refused.nothing-joins-the-point-of-to', { lost, id }))
  }
  requireVoltages(request)
  requireAlternators(request)
}
