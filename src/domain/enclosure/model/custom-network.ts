/** The network of a `custom` enclosure: nodes and elements as the caller names them. */

import type {
  CustomChamberRequest,
  CustomDriverRequest,
  CustomEnclosureRequest,
  CustomPortRequest,
  CustomRadiatorRequest
} from '../../../contract/enclosures/enclosure.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { Air } from '../../air/air.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError, type FoundFault } from '../../design-error.ts'
import type { Driver } from '../../driver/driver.ts'
import { BEHIND, type Branch, type Chamber, type DriverGroup, OUTSIDE, type Place } from '../../network/network.ts'
import { say } from '../../say.ts'
import type { BuiltNetwork, Opening } from './built-network.ts'
import { endLengths } from './chamber.ts'
import { enclosureDefaults } from './defaults.ts'
import { echoLossless } from './lossless.ts'
import { requireRadiating } from './radiates-outside.ts'

const at = (list: string, index: number, field: string) => `enclosure.${list}[${index}].${field}`
const missing = (field: string, detail: Said) => new DesignError('missing-input', { field, detail })

interface Builder {
  readonly air: Air
  readonly assume: Assumptions
  readonly place: (name: string, field: string) => Place
}

/** @throws DesignError `conflicting-input` for a name used twice or reserved */
function placesOf(chambers: readonly CustomChamberRequest[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>([
    ['outside', OUTSIDE],
    ['behind', BEHIND]
  ])
  const faults: FoundFault[] = []
  chambers.forEach(({ name }, node) => {
    if (places.has(name)) {
      faults.push({
        field: at('chambers', node, 'name'),
        value: name,
        detail: say('refused.names-another-place-already', { name })
      })
    } else places.set(name, node)
  })
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
  return places
}

/** 1/(2πf·C): what the loss Qs of a chamber are relative to. */
function lossReactance(
  { leakQ, absorptionQ, lossHz }: CustomChamberRequest,
  compliance: number,
  index: number
): number {
  if (leakQ === undefined && absorptionQ === undefined) {
    if (lossHz === undefined) return 0
    const detail = say('refused.a-frequency-of-losses-says-nothing')
    throw new DesignError('conflicting-input', { field: at('chambers', index, 'lossHz'), detail })
  }
  if (lossHz === undefined) {
    throw missing(at('chambers', index, 'lossHz'), say('refused.chamber-loss-frequency'))
  }
  return 1 / (2 * Math.PI * lossHz * compliance)
}

function chamberOf(request: CustomChamberRequest, index: number, { air, assume }: Builder) {
  const complianceM3PerPa = request.netVolumeM3 / air.stiffnessPa
  const reactance = lossReactance(request, complianceM3PerPa, index)
  const { leakQ, absorptionQ } = request
  echoLossless(leakQ, at('chambers', index, 'leakQ'), enclosureDefaults.tightChamber, assume)
  echoLossless(absorptionQ, at('chambers', index, 'absorptionQ'), enclosureDefaults.chamberAbsorption, assume)
  const chamber: Chamber = {
    complianceM3PerPa,
    absorptionPaSPerM3: absorptionQ === undefined ? 0 : reactance / absorptionQ
  }
  return { chamber, leaks: leakQ === undefined ? [] : [leak(index, OUTSIDE, leakQ * reactance)] }
}

const leak = (from: Place, to: Place, resistancePaSPerM3: number): Branch => ({
  from,
  to,
  count: 1,
  resistancePaSPerM3,
  massKgPerM4: 0,
  stiffnessPaPerM3: 0
})

function portOf(request: CustomPortRequest, index: number, { air, assume, place }: Builder): Opening {
  const { name, areaM2, lossQ, lossHz } = request
  if (lossQ !== undefined && lossHz === undefined) {
    throw missing(at('ports', index, 'lossHz'), say('refused.port-loss-frequency'))
  }
  echoLossless(lossQ, at('ports', index, 'lossQ'), enclosureDefaults.portFriction, assume)
  const { count, effectiveLengthM } = endLengths(request, assume, `enclosure.ports[${index}]`)
  const massKgPerM4 = (air.densityKgPerM3 * effectiveLengthM) / areaM2
  const branch: Branch = {
    from: place(request.from, at('ports', index, 'from')),
    to: place(request.to, at('ports', index, 'to')),
    count,
    massKgPerM4,
    resistancePaSPerM3: lossQ === undefined ? 0 : (2 * Math.PI * (lossHz ?? 0) * massKgPerM4) / lossQ,
    stiffnessPaPerM3: 0
  }
  return { name, branch, count, areaM2 }
}

function radiatorOf(request: CustomRadiatorRequest, index: number, { assume, place }: Builder): Opening {
  const { name, areaM2, massKg, complianceMPerN, qm } = request
  const count = assume.take(request.count, at('passiveRadiators', index, 'count'), enclosureDefaults.radiators)
  echoLossless(qm, at('passiveRadiators', index, 'qm'), enclosureDefaults.radiatorLoss, assume)
  const branch: Branch = {
    from: place(request.from, at('passiveRadiators', index, 'from')),
    to: place(request.to, at('passiveRadiators', index, 'to')),
    count,
    massKgPerM4: massKg / areaM2 ** 2,
    resistancePaSPerM3: qm === undefined ? 0 : Math.sqrt(massKg / complianceMPerN) / (areaM2 ** 2 * qm),
    stiffnessPaPerM3: 1 / (complianceMPerN * areaM2 ** 2)
  }
  return { name, branch, count, areaM2 }
}

function groupOf(request: CustomDriverRequest, index: number, driver: Driver, { assume, place }: Builder): DriverGroup {
  const field = (name: string) => at('driverGroups', index, name)
  const count = assume.take(request.count, field('count'), enclosureDefaults.drivers)
  const inSeries = assume.take(request.inSeries, field('inSeries'), enclosureDefaults.inSeries)
  if (count % inSeries !== 0) {
    const detail = say('refused.drivers-cannot-be-split-into-strings.2', { count, inSeries })
    throw new DesignError('conflicting-input', { field: field('inSeries'), value: inSeries, detail })
  }
  return {
    front: place(request.front, field('front')),
    rear: place(request.rear, field('rear')),
    driver,
    count,
    inSeries,
    polarity: assume.take<boolean>(request.inverted, field('inverted'), enclosureDefaults.inverted) ? -1 : 1
  }
}

type FindPlace = Builder['place']

/** @throws DesignError `unknown-designation` for a place that is no chamber */
function placeFinder(chambers: readonly CustomChamberRequest[]): FindPlace {
  const places = placesOf(chambers)
  return (name, field) => {
    const found = places.get(name)
    if (found !== undefined) return found
    const detail = say('refused.is-neither-a-chamber-nor-outside', { name })
    throw new DesignError('unknown-designation', { field, value: name, detail })
  }
}

function leaksOf({ leaks = [] }: CustomEnclosureRequest, place: FindPlace): readonly Branch[] {
  return leaks.map(({ from, to, resistancePaSPerM3 }, index) =>
    leak(place(from, at('leaks', index, 'from')), place(to, at('leaks', index, 'to')), resistancePaSPerM3)
  )
}

function connectionOf({ connection, driverGroups }: CustomEnclosureRequest, assume: Assumptions) {
  if (driverGroups.length === 1) return 'parallel'
  return assume.take(connection, 'enclosure.connection', enclosureDefaults.groupConnection)
}

/** @throws DesignError `unknown-designation` for a place that is no chamber, `missing-input`, `conflicting-input` */
export function customNetwork(
  enclosure: CustomEnclosureRequest,
  driver: Driver,
  air: Air,
  assume: Assumptions
): BuiltNetwork {
  const { chambers = [], driverGroups } = enclosure
  const builder: Builder = { air, assume, place: placeFinder(chambers) }
  const built = chambers.map((chamber, index) => chamberOf(chamber, index, builder))
  const ports = (enclosure.ports ?? []).map((port, index) => portOf(port, index, builder))
  const radiators = (enclosure.passiveRadiators ?? []).map((unit, index) => radiatorOf(unit, index, builder))
  const leaks = [...leaksOf(enclosure, builder.place), ...built.flatMap(part => part.leaks)]
  const branches = [...[...ports, ...radiators].map(({ branch }) => branch), ...leaks]
  const drivers = driverGroups.map((group, index) => groupOf(group, index, driver, builder))
  requireRadiating(drivers, branches)
  return {
    network: {
      chambers: built.map(({ chamber }) => chamber),
      branches,
      drivers,
      connection: connectionOf(enclosure, assume)
    },
    chambers: {},
    chamberNames: chambers.map(({ name }) => name),
    ports,
    radiators,
    groupNames: driverGroups.map(({ name }) => name)
  }
}
