/**
 * Any enclosure of ours as a circuit: voltage is pressure and current is volume flow in the acoustic part, voltage is force
 * and current is velocity in the mechanical part. Built from the request with relations of its own; every driver, port and
 * radiator is there one by one, joined as the request says, so that nothing of the service takes part.
 */
import type { DriverRequest } from '../../../src/contract/drivers/driver.ts'
import type { CustomEnclosureRequest } from '../../../src/contract/enclosures/enclosure.ts'
import type { SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { coilLines } from './coil-lines.ts'
import { type Elements, presetElements } from './preset-elements.ts'

export interface Air {
  readonly rho: number
  readonly c: number
}

/** Mechanical constants of a driver from either set. */
export function mechanics(d: DriverRequest, { rho, c }: Air) {
  if (d.mmsKg !== undefined && d.cmsMPerN !== undefined && d.rmsKgPerS !== undefined && d.blTm !== undefined) {
    return { mms: d.mmsKg, cms: d.cmsMPerN, rms: d.rmsKgPerS, bl: d.blTm }
  }
  const { fsHz = 0, vasM3 = 0, qms = 0, qes = 0 } = d
  const cms = vasM3 / (rho * c ** 2 * d.sdM2 ** 2)
  const mms = 1 / ((2 * Math.PI * fsHz) ** 2 * cms)
  return { mms, cms, rms: Math.sqrt(mms / cms) / qms, bl: Math.sqrt((Math.sqrt(mms / cms) * d.reOhm) / qes) }
}

/** Names of the currents to read, each of a voltage source of zero volts. */
export interface Probes {
  /** Into the terminals; flows out of the source, so its sign is turned. */
  readonly current: string
  readonly radiated: string
  /** First cone of each group. */
  readonly velocities: readonly string[]
  /** First port or radiator of each kind of opening, by name. */
  readonly openings: Readonly<Record<string, string>>
  /** Voltage over the drivers. */
  readonly terminal: string
  readonly chambers: Readonly<Record<string, string>>
}

export interface Netlist {
  readonly lines: readonly string[]
  readonly probes: Probes
}

/** Keeps the operating point of the simulator determined; far below what the comparison sees. */
const TIE_OHM = 1e15
const COIL_OHM = 1e-5

/** @param tag  unique within one simulation, letters and digits */
export function netlistOf(request: SystemRequest, air: Air, tag: string): Netlist {
  const elements = request.enclosure.kind === 'custom' ? request.enclosure : presetElements(request, air)
  const lines: string[] = []
  let serial = 0
  const add = (letter: string, ...rest: readonly (string | number)[]) => {
    const name = `${letter}${tag}_${serial++}`
    lines.push([name, ...rest].join(' '))
    return name
  }
  const node = (name: string) => (name === 'behind' ? '0' : `${tag}_${name}`)
  const fresh = () => `${tag}_n${serial++}`
  const radiated = add('V', node('outside'), '0', 'dc 0')
  addChambers(elements, air, add, node, fresh)
  const openings = addOpenings(elements, air, add, node, fresh)
  const source = addSource(request, add, node)
  const velocities = addDrivers(request, elements, air, add, node, fresh)
  return {
    lines,
    probes: {
      current: source,
      radiated,
      velocities,
      openings,
      terminal: node('terminal'),
      chambers: Object.fromEntries((elements.chambers ?? []).map(({ name }) => [name, node(name)]))
    }
  }
}

export type Add = (letter: string, ...rest: readonly (string | number)[]) => string
type Node = (name: string) => string
type Fresh = () => string

function addChambers(elements: Elements, { rho, c }: Air, add: Add, node: Node, fresh: Fresh): void {
  for (const { name, netVolumeM3, leakQ, absorptionQ, lossHz = 0 } of elements.chambers ?? []) {
    const compliance = netVolumeM3 / (rho * c * c)
    const reactance = 1 / (2 * Math.PI * lossHz * compliance)
    add('R', node(name), '0', TIE_OHM)
    if (leakQ !== undefined) add('R', node(name), node('outside'), leakQ * reactance)
    if (absorptionQ === undefined) add('C', node(name), '0', compliance)
    else {
      const inner = fresh()
      add('C', node(name), inner, compliance)
      add('R', inner, '0', reactance / absorptionQ)
    }
  }
  for (const { from, to, resistancePaSPerM3 } of elements.leaks ?? [])
    add('R', node(from), node(to), resistancePaSPerM3)
}

function addOpenings(elements: Elements, { rho }: Air, add: Add, node: Node, fresh: Fresh): Record<string, string> {
  const probes: Record<string, string> = {}
  const branch = (name: string, from: string, to: string, r: number, m: number, compliance?: number) => {
    const [a, b] = [fresh(), fresh()]
    const probe = add('V', node(from), a, 'dc 0')
    probes[name] ??= probe
    add('R', a, b, r + COIL_OHM)
    if (compliance === undefined) add('L', b, node(to), m)
    else {
      const d = fresh()
      add('L', b, d, m)
      add('C', d, node(to), compliance)
    }
  }
  for (const port of elements.ports ?? []) {
    const radius = Math.sqrt(port.areaM2 / Math.PI)
    const mass = (rho * (port.lengthM + (port.endFactor ?? 0.85 + 0.613) * radius)) / port.areaM2
    const loss = port.lossQ === undefined ? 0 : (2 * Math.PI * (port.lossHz ?? 0) * mass) / port.lossQ
    for (let n = 0; n < (port.count ?? 1); n++) branch(port.name, port.from, port.to, loss, mass)
  }
  for (const unit of elements.passiveRadiators ?? []) {
    const { areaM2: s, massKg: m, complianceMPerN: cm, qm } = unit
    const omega = 1 / Math.sqrt(m * cm)
    const loss = qm === undefined ? 0 : (omega * m) / qm / (s * s)
    for (let n = 0; n < (unit.count ?? 1); n++) branch(unit.name, unit.from, unit.to, loss, m / (s * s), cm * s * s)
  }
  return probes
}

function addSource({ source }: SystemRequest, add: Add, node: Node): string {
  const series = source.seriesOhm ?? 0
  if (series === 0) return add('V', node('terminal'), '0', 'dc 0 ac 1')
  const name = add('V', node('source'), '0', 'dc 0 ac 1')
  add('R', node('source'), node('terminal'), series)
  return name
}

/** One driver between two electrical and two acoustic nodes; returns the probe of its cone's velocity. */
function addDriver(d: DriverRequest, air: Air, ends: Ends, add: Add, fresh: Fresh): string {
  const { mms, cms, rms, bl } = mechanics(d, air)
  const signed = ends.inverted ? -bl : bl
  const [e1, e2, e3, m1, m2, m3, m4, m5] = Array.from({ length: 8 }, fresh) as [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string
  ]
  const velocity = add('V', m5, '0', 'dc 0')
  const current = add('V', ends.plus, e1, 'dc 0')
  add('R', e1, e2, d.reOhm)
  const last = coilLines(d, e2, e3, add, fresh)
  add('H', last, ends.minus, velocity, signed)
  add('H', m1, '0', current, signed)
  add('R', m1, m2, rms)
  add('L', m2, m3, mms)
  add('C', m3, m4, cms)
  add('E', m4, m5, ends.front, ends.rear, d.sdM2)
  add('F', '0', ends.front, velocity, d.sdM2)
  add('F', ends.rear, '0', velocity, d.sdM2)
  return velocity
}

interface Ends {
  readonly plus: string
  readonly minus: string
  readonly front: string
  readonly rear: string
  readonly inverted: boolean
}

function addDrivers(
  { driver }: SystemRequest,
  elements: Elements,
  air: Air,
  add: Add,
  node: Node,
  fresh: Fresh
): readonly string[] {
  const groups = elements.driverGroups
  const series = elements.connection === 'series'
  let plus = node('terminal')
  return groups.map((group, index) => {
    const minus = !series || index === groups.length - 1 ? '0' : fresh()
    const probes = addGroup(driver, air, group, plus, minus, add, node, fresh)
    if (series) plus = minus
    return probes
  })
}

function addGroup(
  driver: DriverRequest,
  air: Air,
  group: CustomEnclosureRequest['driverGroups'][number],
  plus: string,
  minus: string,
  add: Add,
  node: Node,
  fresh: Fresh
): string {
  const inSeries = group.inSeries ?? 1
  const probes: string[] = []
  for (let string = 0; string < (group.count ?? 1) / inSeries; string++) {
    let top = plus
    for (let n = 0; n < inSeries; n++) {
      const bottom = n === inSeries - 1 ? minus : fresh()
      const ends = { plus: top, minus: bottom, front: node(group.front), rear: node(group.rear) }
      probes.push(addDriver(driver, air, { ...ends, inverted: group.inverted ?? false }, add, fresh))
      top = bottom
    }
  }
  return probes[0] as string
}
