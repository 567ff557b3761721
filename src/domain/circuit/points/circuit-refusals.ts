/** Graphs that are no circuit. */
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import { DesignError } from '../../design-error.ts'
import { fuseFamily } from '../fuse/fuse-families-iso-8820.ts'
import { reached } from './reach.ts'

interface Placed {
  readonly id: string
  readonly field: string
  readonly from: string
  readonly to: string
}

function placed(request: CircuitRequest): readonly Placed[] {
  const { batteries, alternators = [], cables = [], fuses = [], links = [], amplifiers, accessories = [] } = request
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
    ...ends('cables', cables),
    ...ends('fuses', fuses),
    ...ends('links', links),
    ...poles('amplifiers', amplifiers),
    ...poles('accessories', accessories),
    ...(starter === undefined ? [] : [{ id: 'starter', field: 'starter', from: starter.plus, to: starter.minus }])
  ]
}

const refuse = (field: string, detail: string) => new DesignError('conflicting-input', { field, detail })

function requireFuseVoltage({ batteries, alternators = [], fuses = [], systemVoltageV }: CircuitRequest): void {
  const given = [...batteries.map(({ openCircuitV = 0 }) => openCircuitV), ...alternators.map(({ setV }) => setV)]
  const highestV = Math.max(systemVoltageV, ...given)
  for (const [index, { type, ratedVoltageV }] of fuses.entries()) {
    const made = fuseFamily(type)?.voltagesV ?? []
    const stands = ratedVoltageV ?? Math.max(0, ...made)
    if (stands === 0 || stands >= highestV) continue
    throw new DesignError('fuse-voltage', {
      field: `fuses[${index}].${ratedVoltageV === undefined ? 'type' : 'ratedVoltageV'}`,
      value: stands,
      minimum: highestV,
      unit: 'V'
    })
  }
}

/** @throws DesignError `conflicting-input` for names used twice, a way that leads nowhere, a part with no source; `fuse-voltage` */
export function requireCircuit(request: CircuitRequest): void {
  const all = placed(request)
  const ids = new Set<string>()
  for (const { id, field, from, to } of all) {
    if (ids.has(id)) throw refuse(field, `The name ${id} is used twice.`)
    ids.add(id)
    if (from === to) throw refuse(field, `${id} begins and ends at the same point ${from}.`)
  }
  const loads = [...request.amplifiers, ...(request.accessories ?? [])].map(({ id }) => id)
  const live = reached(
    [request.batteries[0]?.minus ?? ''],
    all.filter(({ id }) => !loads.includes(id))
  )
  for (const { id, field, from, to } of all) {
    const lost = [from, to].find(point => !live.has(point))
    if (lost !== undefined) throw refuse(field, `Nothing joins the point ${lost} of ${id} to the first battery.`)
  }
  requireFuseVoltage(request)
}
