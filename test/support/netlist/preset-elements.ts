/** A preset enclosure spelled out as nodes and elements; a new kind only adds a branch here. */

import type {
  ChamberRequest,
  CustomChamberRequest,
  CustomDriverRequest,
  CustomEnclosureRequest,
  CustomPortRequest,
  CustomRadiatorRequest
} from '../../../src/contract/enclosures/enclosure.ts'
import type { PresetEnclosureRequest, SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { type Air, mechanics } from './netlist.ts'

export type Elements = Omit<CustomEnclosureRequest, 'kind'>

/** Frequency that the losses of a chamber belong to: its tuning, or the closed-box resonance. */
function lossHz(chamber: ChamberRequest, { rho, c }: Air, closedHz: number): number {
  const { port, passiveRadiators: unit, netVolumeM3 } = chamber
  if (port !== undefined) {
    const length = port.lengthM + (port.endFactor ?? 1.463) * Math.sqrt(port.areaM2 / Math.PI)
    return (c / (2 * Math.PI)) * Math.sqrt(((port.count ?? 1) * port.areaM2) / (length * netVolumeM3))
  }
  if (unit !== undefined) {
    const stiffness = 1 / unit.complianceMPerN + ((unit.count ?? 1) * rho * c * c * unit.areaM2 ** 2) / netVolumeM3
    return Math.sqrt(stiffness / unit.massKg) / (2 * Math.PI)
  }
  return closedHz
}

function faces(kind: PresetEnclosureRequest['kind']): { front: string; rear: string } {
  if (kind === 'infinite-baffle') return { front: 'outside', rear: 'behind' }
  return { front: kind.startsWith('band-pass') ? 'front' : 'outside', rear: 'rear' }
}

function groups({ drivers }: SystemRequest, front: string, rear: string): readonly CustomDriverRequest[] {
  const count = drivers?.count ?? 1
  const inSeries = drivers?.inSeries ?? 1
  if (drivers?.isobaric === undefined) return [{ name: 'driver', front, rear, count, inSeries }]
  return [
    { name: 'outer', front, rear: 'coupling', count: count / 2, inSeries },
    { name: 'inner', front: 'coupling', rear, count: count / 2, inSeries }
  ]
}

export function presetElements(request: SystemRequest, air: Air): Elements {
  const enclosure = request.enclosure as PresetEnclosureRequest
  const { front, rear } = faces(enclosure.kind)
  const chambers: CustomChamberRequest[] = []
  const ports: CustomPortRequest[] = []
  const passiveRadiators: CustomRadiatorRequest[] = []
  const { mms, cms } = mechanics(request.driver, air)
  const count = request.drivers?.count ?? 1
  const share = request.drivers?.isobaric === undefined ? count : count / 4
  for (const name of ['rear', 'front'] as const) {
    const chamber = enclosure[name]
    if (chamber === undefined) continue
    const vas = air.rho * air.c ** 2 * request.driver.sdM2 ** 2 * cms * share
    const closed = Math.sqrt((1 + vas / chamber.netVolumeM3) / (mms * cms)) / (2 * Math.PI)
    const hz = lossHz(chamber, air, closed)
    const { port, passiveRadiators: unit, ...volume } = chamber
    chambers.push({ name, ...volume, lossHz: hz })
    const to = name === 'rear' && enclosure.kind === 'band-pass-6-series' ? 'front' : 'outside'
    if (port !== undefined) ports.push({ ...port, name, from: name, to, lossHz: hz })
    if (unit !== undefined) passiveRadiators.push({ ...unit, name, from: name, to })
  }
  const isobaric = request.drivers?.isobaric
  if (isobaric !== undefined) chambers.push({ name: 'coupling', netVolumeM3: isobaric.couplingVolumeM3 })
  return {
    chambers,
    ports,
    passiveRadiators,
    driverGroups: groups(request, front, rear),
    connection: isobaric?.connection ?? 'parallel'
  }
}
