/** From a data sheet to a complete set: what is given, what follows, what has to be assumed, and what is missing. */
import type { DriverSheet, SheetCoils } from '../../contract/drivers/driver-parameters.ts'
import type { Assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { say } from '../say.ts'
import { coilFactors } from './coil-connection.ts'
import { freeConeAirLoadKg } from './sheet/air-load.ts'
import { type CompletedSet, completeSet, unknownOf } from './sheet/complete-set.ts'
import { driverDefaults, driverRules } from './sheet/defaults.ts'
import { missingFigures } from './sheet/missing-figures.ts'
import { type Roundings, relativeRounding, roundingsOf } from './sheet/printed-rounding.ts'
import {
  type PartialSmallSignalSet,
  printedQuantities,
  smallSignalQuantities
} from './sheet/small-signal-quantities.ts'

interface AirFigures {
  readonly densityKgPerM3: number
  readonly stiffnessPa: number
}

export interface GatheredSet {
  /** What the sheet says, Re moved to the connection of Bl and Q. */
  readonly stated: PartialSmallSignalSet
  /** Of what the sheet says. */
  readonly roundings: Roundings
  /** What the set was completed from: what is stated, and what had to be assumed. */
  readonly taken: PartialSmallSignalSet
  readonly set: CompletedSet
}

/** The quantities of the small-signal set that a sheet gives. */
function statedSet(sheet: DriverSheet): PartialSmallSignalSet {
  return Object.fromEntries(
    smallSignalQuantities.flatMap(name => (sheet[name] === undefined ? [] : [[name, sheet[name]]]))
  )
}

/**
 * @throws DesignError `missing-input` naming what would complete the set; `conflicting-input` where no positive value fits
 */
export function gatherSet(
  sheet: DriverSheet,
  coils: SheetCoils | undefined,
  air: AirFigures,
  assume: Assumptions
): GatheredSet {
  const stated = withAirLoad(withOneConnection(statedSet(sheet), coils), sheet, air.densityKgPerM3)
  let set = completeSet(stated, air.stiffnessPa)
  let taken = stated
  for (const fallback of fallbacks) {
    const more = unknownOf(set.known).length === 0 ? undefined : fallback(set.known, sheet, assume)
    if (more === undefined) continue
    taken = { ...taken, ...more }
    set = completeSet(taken, air.stiffnessPa)
  }
  if (unknownOf(set.known).length > 0) throw missingFigures(taken)
  refuseImpossible(set)
  return { stated, roundings: printedRoundings(sheet, stated), taken, set }
}

/** Mms from a bare mass is as uncertain as that mass was printed. */
function printedRoundings(sheet: DriverSheet, { mmsKg }: PartialSmallSignalSet): Roundings {
  const roundings = roundingsOf(statedSet(sheet))
  if (sheet.mmdKg === undefined || mmsKg === undefined) return roundings
  return { ...roundings, mmsKg: (relativeRounding('mmsKg', sheet.mmdKg) * sheet.mmdKg) / mmsKg }
}

function withOneConnection(stated: PartialSmallSignalSet, coils: SheetCoils | undefined): PartialSmallSignalSet {
  if (coils?.resistanceStatedFor === undefined || stated.reOhm === undefined) return stated
  const from = coilFactors(coils.count, coils.resistanceStatedFor, 'coils.resistanceStatedFor')
  const to = coilFactors(coils.count, coils.statedFor ?? coils.resistanceStatedFor, 'coils.statedFor')
  return { ...stated, reOhm: (stated.reOhm * to.resistance) / from.resistance }
}

function withAirLoad(stated: PartialSmallSignalSet, { mmdKg }: DriverSheet, density: number): PartialSmallSignalSet {
  if (mmdKg === undefined) return stated
  if (stated.mmsKg !== undefined) {
    const detail = say('refused.mms-and-mmd-are-the-same')
    throw new DesignError('conflicting-input', { field: 'driver.mmdKg', detail })
  }
  if (stated.sdM2 === undefined) {
    const detail = say('refused.mmd-needs-sd-from-which-the')
    throw new DesignError('missing-input', { field: 'driver.sdM2', detail })
  }
  return { ...stated, mmsKg: mmdKg + freeConeAirLoadKg(stated.sdM2, density) }
}

type Fallback = (
  known: PartialSmallSignalSet,
  sheet: DriverSheet,
  assume: Assumptions
) => PartialSmallSignalSet | undefined

const fallbacks: readonly Fallback[] = [
  ({ sdM2 }, { nominalDiameterM }, assume) => {
    if (sdM2 !== undefined || nominalDiameterM === undefined) return undefined
    const area = (Math.PI / 4) * (driverDefaults.pistonDiameterShare.value * nominalDiameterM) ** 2
    assume.note('driver.sdM2', area, driverRules.piston)
    return { sdM2: area }
  },
  ({ reOhm }, { ratedImpedanceOhm }, assume) => {
    if (reOhm !== undefined || ratedImpedanceOhm === undefined) return undefined
    const usualOhm = driverDefaults.usualResistanceRatio.value * ratedImpedanceOhm
    assume.note('driver.reOhm', usualOhm, driverRules.resistance)
    return { reOhm: usualOhm }
  },
  ({ qms, qes, qts }, _sheet, assume) => {
    if (qms !== undefined || qes !== undefined || qts === undefined || qts >= driverDefaults.usualQms.value)
      return undefined
    return { qms: assume.take<number>(undefined, 'driver.qms', driverDefaults.usualQms) }
  }
]

function refuseImpossible({ known, derivations }: CompletedSet): void {
  for (const { member, identity } of derivations) {
    const value = known[member]
    if (value !== undefined && value > 0 && Number.isFinite(value)) continue
    const others = identity.members.filter(name => name !== member)
    throw new DesignError('conflicting-input', {
      field: `driver.${others[0] ?? member}`,
      detail: say('refused.these-figures-exclude-each-other-no', {
        symbol: printedQuantities[member].symbol,
        relation: identity.relation,
        otherSymbol: others.map(name => printedQuantities[name].symbol).join(', ')
      })
    })
  }
}
