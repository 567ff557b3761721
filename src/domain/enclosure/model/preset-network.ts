/** The network of a preset kind. */
import type { ChamberRequest } from '../../../contract/enclosures/enclosure.ts'
import { type ChamberName, chamberNames } from '../../../contract/enclosures/words.ts'
import type { Air } from '../../air/air.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import type { Driver } from '../../driver/driver.ts'
import {
  BEHIND,
  type Branch,
  type Chamber,
  type DriverGroup,
  type Network,
  OUTSIDE,
  type Place
} from '../../network/network.ts'
import { say } from '../../say.ts'
import type { BuiltNetwork, Opening } from './built-network.ts'
import { type ChamberParts, chamberParts } from './chamber.ts'
import type { DriverWiring } from './driver-wiring.ts'
import { type PlaceName, type Preset, presets } from './presets.ts'
import type { PresetEnclosureRequest } from './request.ts'

/** @throws DesignError `missing-input` or `conflicting-input` where the chambers do not fit the kind */
function checkShape(enclosure: PresetEnclosureRequest, preset: Preset): void {
  for (const name of chamberNames) {
    const needed = preset.front === name || preset.rear === name
    const chamber = enclosure[name]
    const field = `enclosure.${name}`
    if (needed && chamber === undefined) {
      throw new DesignError('missing-input', {
        field,
        detail: say('refused.a-enclosure-has-a-chamber', { kind: enclosure.kind, name })
      })
    }
    const openings = [chamber?.port, chamber?.passiveRadiators].filter(opening => opening !== undefined).length
    if (preset.openings[name] !== undefined && openings !== 1) {
      throw new DesignError(openings === 0 ? 'missing-input' : 'conflicting-input', {
        field: `${field}.port`,
        detail: say('refused.the-chamber-of-a-enclosure-needs', { name, kind: enclosure.kind })
      })
    }
  }
}

/** One group, or the outer and the inner half of isobaric pairs around the coupling chamber. */
function driverGroups(front: Place, rear: Place, coupling: Place, driver: Driver, wiring: DriverWiring) {
  const group = { driver, count: wiring.faces, inSeries: wiring.groupInSeries, polarity: 1 } as const
  const groups: readonly DriverGroup[] =
    wiring.isobaric === undefined
      ? [{ ...group, front, rear }]
      : [
          { ...group, front, rear: coupling },
          { ...group, front: coupling, rear }
        ]
  return groups
}

const opening = (name: string, { opening: branch, port, passiveRadiators }: ChamberParts): readonly Opening[] => {
  const unit = port ?? passiveRadiators
  return branch === undefined || unit === undefined ? [] : [{ name, branch, count: unit.count, areaM2: unit.areaM2 }]
}

const isGiven = (branch: Branch | undefined): branch is Branch => branch !== undefined

type NamedParts = readonly [ChamberName, ChamberParts]

const openingsOf = (parts: readonly NamedParts[]) => parts.flatMap(([name, part]) => opening(name, part))

export function presetNetwork(
  enclosure: PresetEnclosureRequest,
  driver: Driver,
  wiring: DriverWiring,
  air: Air,
  assume: Assumptions
): BuiltNetwork {
  const preset = presets[enclosure.kind]
  checkShape(enclosure, preset)
  const present = chamberNames.filter(name => enclosure[name] !== undefined)
  const place = (name: PlaceName | undefined): Place =>
    name === 'behind' ? BEHIND : name === 'outside' || name === undefined ? OUTSIDE : present.indexOf(name)
  const parts = present.map((name, node): NamedParts => {
    const chamber = enclosure[name] as ChamberRequest
    const closedHz = driver.fsHz * Math.sqrt(1 + wiring.vasM3 / chamber.netVolumeM3)
    const opensTo = place(preset.openings[name])
    return [name, chamberParts(chamber, air, assume, { node, opensTo, closedHz, at: `enclosure.${name}` })]
  })
  const coupling = couplingChamber(wiring, air)
  const network: Network = {
    chambers: [...parts.map(([, part]) => part.chamber), ...coupling],
    branches: parts.flatMap(([, part]) => [part.opening, part.leak].filter(isGiven)),
    drivers: driverGroups(place(preset.front), place(preset.rear), present.length, driver, wiring),
    connection: wiring.isobaric?.connection ?? 'parallel'
  }
  return {
    network,
    chambers: Object.fromEntries(parts),
    chamberNames: coupling.length === 0 ? present : [...present, 'coupling'],
    ports: openingsOf(parts.filter(([, { port }]) => port !== undefined)),
    radiators: openingsOf(parts.filter(([, { port }]) => port === undefined)),
    groupNames: coupling.length === 0 ? ['driver'] : ['outer', 'inner']
  }
}

/** Between the two drivers of an isobaric pair; none without one. */
function couplingChamber({ isobaric }: DriverWiring, { stiffnessPa }: Air): readonly Chamber[] {
  if (isobaric === undefined) return []
  return [{ complianceM3PerPa: isobaric.couplingVolumeM3 / stiffnessPa, absorptionPaSPerM3: 0 }]
}
