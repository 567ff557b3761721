/** A chamber of an enclosure and its opening, as elements of the network. Each loss Q is taken at the chamber's own frequency. */

import type { ChamberRequest, PassiveRadiatorRequest, PortRequest } from '../../../contract/enclosures/enclosure.ts'
import type { Air } from '../../air/air.ts'
import type { Assumptions } from '../../assume.ts'
import type { Branch, Chamber, Place } from '../../network/network.ts'
import { OUTSIDE } from '../../network/network.ts'
import { portDefaults } from '../../port/defaults.ts'
import { endLengthM, equivalentRadiusM, tuningHz } from '../../port/port-length.ts'
import { present } from '../../present.ts'
import { enclosureDefaults } from './defaults.ts'
import { echoLossless } from './lossless.ts'
import { tunedRadiators } from './tuned-radiators.ts'

interface Port {
  readonly count: number
  readonly areaM2: number
  readonly lengthM: number
  readonly endFactor: number
  readonly radiusM: number
  readonly effectiveLengthM: number
  readonly tuningHz: number
}

interface PassiveRadiators {
  readonly count: number
  readonly areaM2: number
  readonly resonanceHz: number
  /** Volume of air as compliant as all units together. */
  readonly vasM3: number
  readonly tuningHz: number
}

export interface ChamberParts {
  readonly volumeM3: number
  readonly chamber: Chamber
  readonly leak?: Branch
  readonly opening?: Branch
  readonly port?: Port
  readonly passiveRadiators?: PassiveRadiators
  /** Where the loss Qs hold. */
  readonly lossHz: number
}

function portOf(request: PortRequest, volumeM3: number, air: Air, assume: Assumptions, at: string): Port {
  const ends = endLengths(request, assume, at)
  const { areaM2, lengthM } = request
  const opening = { count: ends.count, areaM2 }
  return {
    areaM2,
    lengthM,
    ...ends,
    tuningHz: tuningHz(ends.effectiveLengthM, volumeM3, opening, air.soundSpeedMPerS)
  }
}

/** Effective length, physical length plus the end factor times the radius of one port; a slot counts as a circle of equal area. */
export function endLengths({ areaM2, lengthM, ...given }: PortRequest, assume: Assumptions, at: string) {
  const count = assume.take(given.count, `${at}.count`, enclosureDefaults.ports)
  const endFactor = assume.take(given.endFactor, `${at}.endFactor`, portDefaults.endFactor)
  return {
    count,
    endFactor,
    radiusM: equivalentRadiusM(areaM2),
    effectiveLengthM: lengthM + endLengthM(areaM2, endFactor)
  }
}

/**
 * Tuning of a volume with passive radiators.
 *
 *   fp = 1/(2π√(m·C))   Vap = n·ρc²·S²·C   fb = fp·√(1 + Vap/V)
 *
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974 (opening read, formula from memory)
 * @check  Vap/V = 2.5, fp 18 Hz → 33.67 Hz
 */
function radiatorsOf(
  request: PassiveRadiatorRequest,
  volumeM3: number,
  air: Air,
  assume: Assumptions,
  at: string
): PassiveRadiators {
  const count = assume.take(request.count, `${at}.count`, enclosureDefaults.radiators)
  const { areaM2, massKg, complianceMPerN } = request
  return { count, areaM2, ...tunedRadiators({ count, areaM2, massKg, complianceMPerN }, volumeM3, air.stiffnessPa) }
}

function portBranch(port: Port, from: Place, to: Place, lossQ: number | undefined, air: Air): Branch {
  const massKgPerM4 = (air.densityKgPerM3 * port.effectiveLengthM) / port.areaM2
  const resistancePaSPerM3 = lossQ === undefined ? 0 : (2 * Math.PI * port.tuningHz * massKgPerM4) / lossQ
  return { from, to, count: port.count, massKgPerM4, resistancePaSPerM3, stiffnessPaPerM3: 0 }
}

function radiatorBranch(
  radiators: PassiveRadiators,
  from: Place,
  to: Place,
  { areaM2, massKg, complianceMPerN, qm }: PassiveRadiatorRequest
): Branch {
  const massKgPerM4 = massKg / areaM2 ** 2
  return {
    from,
    to,
    count: radiators.count,
    massKgPerM4,
    resistancePaSPerM3: qm === undefined ? 0 : (2 * Math.PI * radiators.resonanceHz * massKgPerM4) / qm,
    stiffnessPaPerM3: 1 / (complianceMPerN * areaM2 ** 2)
  }
}

interface ChamberPlace {
  readonly node: Place
  /** Where the opening leads to. */
  readonly opensTo: Place
  /** Frequency of the losses when there is no opening. */
  readonly closedHz: number
  /** Path in the request. */
  readonly at: string
}

function openingOf(request: ChamberRequest, air: Air, assume: Assumptions, place: ChamberPlace) {
  const { port, passiveRadiators, netVolumeM3 } = request
  const { node, opensTo, at } = place
  if (port !== undefined) {
    const parts = portOf(port, netVolumeM3, air, assume, `${at}.port`)
    echoLossless(port.lossQ, `${at}.port.lossQ`, enclosureDefaults.portFriction, assume)
    const opening = portBranch(parts, node, opensTo, port.lossQ, air)
    return { opening, port: parts, lossHz: parts.tuningHz }
  }
  if (passiveRadiators !== undefined) {
    const parts = radiatorsOf(passiveRadiators, netVolumeM3, air, assume, `${at}.passiveRadiators`)
    echoLossless(passiveRadiators.qm, `${at}.passiveRadiators.qm`, enclosureDefaults.radiatorLoss, assume)
    const opening = radiatorBranch(parts, node, opensTo, passiveRadiators)
    return { opening, passiveRadiators: parts, lossHz: parts.tuningHz }
  }
  return { lossHz: place.closedHz }
}

/**
 * Losses of a chamber at its own frequency f.
 *
 *   leak R = Q/(2πf·C) to the outside, its flow radiates;  absorption R = 1/(2πf·C·Q) in series with C
 *
 * @source Small, "Vented-box loudspeaker systems", JAES 21(5), 1973 (from memory)
 */
export function chamberParts(
  request: ChamberRequest,
  air: Air,
  assume: Assumptions,
  place: ChamberPlace
): ChamberParts {
  const { netVolumeM3, leakQ, absorptionQ } = request
  const complianceM3PerPa = netVolumeM3 / air.stiffnessPa
  echoLossless(leakQ, `${place.at}.leakQ`, enclosureDefaults.tightOpenedChamber, assume)
  echoLossless(absorptionQ, `${place.at}.absorptionQ`, enclosureDefaults.chamberAbsorption, assume)
  const opened = openingOf(request, air, assume, place)
  const reactance = 1 / (2 * Math.PI * opened.lossHz * complianceM3PerPa)
  const leak: Branch | undefined =
    leakQ === undefined
      ? undefined
      : {
          from: place.node,
          to: OUTSIDE,
          count: 1,
          resistancePaSPerM3: leakQ * reactance,
          massKgPerM4: 0,
          stiffnessPaPerM3: 0
        }
  return {
    ...opened,
    volumeM3: netVolumeM3,
    chamber: { complianceM3PerPa, absorptionPaSPerM3: absorptionQ === undefined ? 0 : reactance / absorptionQ },
    ...present({ leak })
  }
}
