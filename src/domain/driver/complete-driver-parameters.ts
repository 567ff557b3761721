/** POST /v1/drivers/parameters: the full small-signal set of a driver from what its sheet gives, and whether the sheet can be believed. */
import type {
  CompletedDriver,
  DriverFigures,
  DriverParameters,
  DriverParametersRequest,
  DriverSheet,
  Origin,
  SheetCoils
} from '../../contract/drivers/driver-parameters.ts'
import { type Air, airOf } from '../air/air.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import type { Outcome } from '../outcome.ts'
import { present } from '../present.ts'
import { coilFactors } from './coil-connection.ts'
import { figuresBasis, setBasis } from './driver-basis.ts'
import { halfSpaceLevelDb, referenceEfficiency } from './efficiency.ts'
import { type GatheredSet, gatherSet } from './gather-set.ts'
import { freeConeAirLoadKg } from './sheet/air-load.ts'
import { driverDefaults, driverRules } from './sheet/defaults.ts'
import { symbolOf } from './sheet/driver-identities.ts'
import { judgeSet } from './sheet/judge-set.ts'
import { sheetCautions } from './sheet/sheet-cautions.ts'
import {
  type SmallSignalQuantity,
  type SmallSignalSet,
  smallSignalQuantities
} from './sheet/small-signal-quantities.ts'
import { airOfVas } from './vas-air.ts'

/**
 * @throws DesignError `missing-input` (naming what would complete the set), `conflicting-input`
 * @validity Small signals, piston range. Values of the sheet are kept as given; nothing is corrected silently.
 * @source Small 1972 (relations); limits and slips: see judgement.ts, consistency.ts, unit-slips.ts
 */
export function completeDriverParameters(request: DriverParametersRequest): Outcome<DriverParameters> {
  const assume = assumptions()
  const air = airOf(request.air, assume)
  const { driver: sheet } = request
  const coils = resolvedCoils(request.coils, assume)
  const sheetAir = airOfVas(sheet.vasAir, air, assume)
  const gathered = gatherSet(sheet, coils, sheetAir, assume)
  const inUse = withConnection(gathered.set.known as SmallSignalSet, sheet, coils)
  const { sdM2 } = inUse.driver
  const { checks, slips } = judgeSet({ ...gathered, ...looseFigures(sheet), sdM2 }, sheetAir)
  const figures = figuresOf(inUse.driver, sheet, air, sheetAir)
  const result: DriverParameters = {
    driver: inUse.driver,
    origins: originsOf(gathered, sheet, inUse.changed),
    checks,
    slips,
    figures,
    leaning: leaningOf(figures.ebpHz)
  }
  return {
    result,
    cautions: sheetCautions(result, sheet),
    assumed: assume.list,
    sources: ['small-1972-direct-radiator', 'beranek-mellow-2012', 'practice-driver-choice', 'ours-driver-limits'],
    basis: [...setBasis(gathered.set, inUse.driver, sheetAir), ...figuresBasis(figures, inUse.driver, air, sheetAir)]
  }
}

function resolvedCoils(coils: SheetCoils | undefined, assume: Assumptions): Required<SheetCoils> | undefined {
  if (coils === undefined) return undefined
  const connection = coils.count === 1 ? 'one-coil' : 'series'
  const statedFor = assume.work(coils.statedFor, 'coils.statedFor', connection, driverRules.statedFor)
  return {
    count: coils.count,
    statedFor,
    resistanceStatedFor: assume.work(
      coils.resistanceStatedFor,
      'coils.resistanceStatedFor',
      statedFor,
      driverRules.resistanceStatedFor
    ),
    wanted: assume.work(coils.wanted, 'coils.wanted', statedFor, driverRules.wanted)
  }
}

/** Figures of a sheet that the set is worked out of, or that only judge it; whatever else it says is handed on as printed. */
const workedWith = [
  ...smallSignalQuantities,
  'mmdKg',
  'leH',
  'leParallelOhm',
  'ratedImpedanceOhm',
  'nominalDiameterM',
  'level1WDb',
  'level2V83Db'
] as const satisfies readonly (keyof DriverSheet)[]

function asPrinted(sheet: DriverSheet): Omit<DriverSheet, (typeof workedWith)[number]> {
  const printed = { ...sheet }
  for (const name of workedWith) Reflect.deleteProperty(printed, name)
  return printed
}

/** The completed set in the wanted connection; Qes and Qts change only between one coil and all of them. */
function withConnection(set: SmallSignalSet, sheet: DriverSheet, coils: Required<SheetCoils> | undefined) {
  const { leH, leParallelOhm } = sheet
  const changed = coils !== undefined && coils.wanted !== coils.statedFor
  const one = { resistance: 1, forceFactor: 1, inductance: 1, electricalQ: 1 }
  const from = coils === undefined ? one : coilFactors(coils.count, coils.statedFor, 'coils.statedFor')
  const to = coils === undefined ? one : coilFactors(coils.count, coils.wanted, 'coils.wanted')
  const turns = to.inductance / from.inductance
  const qes = (set.qes * to.electricalQ) / from.electricalQ
  const driver: CompletedDriver = {
    ...set,
    reOhm: (set.reOhm * to.resistance) / from.resistance,
    blTm: (set.blTm * to.forceFactor) / from.forceFactor,
    qes,
    qts: qes === set.qes ? set.qts : (set.qms * qes) / (set.qms + qes),
    ...present({
      leH: leH === undefined ? undefined : leH * turns,
      leParallelOhm: leParallelOhm === undefined ? undefined : leParallelOhm * turns
    }),
    ...asPrinted(sheet)
  }
  const names: readonly SmallSignalQuantity[] = ['reOhm', 'blTm', 'qes', 'qts']
  return { driver, changed: changed ? names.filter(name => driver[name] !== set[name]) : [] }
}

function originsOf(
  { stated, set }: GatheredSet,
  sheet: DriverSheet,
  changed: readonly SmallSignalQuantity[]
): DriverParameters['origins'] {
  const originOf = (name: SmallSignalQuantity): Origin => {
    if (changed.includes(name)) return { origin: 'derived', rule: 'moved to the wanted coil connection' }
    const derivation = set.derivations.find(({ member }) => member === name)
    if (derivation !== undefined) {
      return { origin: 'derived', rule: `${symbolOf[name]} = ${derivation.identity.formulas[name]}` }
    }
    if (name === 'mmsKg' && sheet.mmdKg !== undefined) return { origin: 'derived', rule: 'Mms = Mmd + 8/3·ρ·a³' }
    if (stated[name] === undefined) return { origin: 'assumed', rule: 'see the assumed values' }
    return stated[name] === sheet[name]
      ? { origin: 'given' }
      : { origin: 'derived', rule: 'moved to one coil connection' }
  }
  return Object.fromEntries(smallSignalQuantities.map(name => [name, originOf(name)])) as DriverParameters['origins']
}

function looseFigures({ xmaxM, leH, nominalDiameterM }: DriverSheet) {
  return present({ xmaxM, leH, nominalDiameterM })
}

/** Vas as the air of the request makes it: what radiates there is not what the sheet's air would. */
function figuresOf(driver: CompletedDriver, sheet: DriverSheet, air: Air, sheetAir: Air): DriverFigures {
  const vasM3 = (driver.vasM3 * air.stiffnessPa) / sheetAir.stiffnessPa
  const efficiency = referenceEfficiency(driver.fsHz, driver.qes, vasM3, air.soundSpeedMPerS)
  const impedance = air.densityKgPerM3 * air.soundSpeedMPerS
  const levelOf = (electricalW: number) => halfSpaceLevelDb(efficiency * electricalW, impedance)
  const { ratedImpedanceOhm: rated } = sheet
  return {
    ebpHz: driver.fsHz / driver.qes,
    efficiencyPercent: efficiency * 100,
    level1WDb: levelOf(1),
    level2V83Db: levelOf(2.83 ** 2 / driver.reOhm),
    ...(rated === undefined ? {} : { levelRated1WDb: levelOf(rated / driver.reOhm) }),
    impedancePeakOhm: driver.reOhm * (1 + driver.qms / driver.qes),
    ...(driver.xmaxM === undefined ? {} : { sweptVolumeM3: driver.sdM2 * driver.xmaxM }),
    airLoadKg: freeConeAirLoadKg(driver.sdM2, sheetAir.densityKgPerM3)
  }
}

function leaningOf(ebpHz: number): DriverParameters['leaning'] {
  const [closed, vented] = driverDefaults.ebpLimitsHz.value
  const figure = `fs/Qes = ${ebpHz.toPrecision(3)} Hz`
  const rule = `below ${closed} Hz closed, above ${vented} Hz vented or band-pass (common practice, no source)`
  if (ebpHz < closed) return { kind: 'closed', why: `${figure} leans to a closed box: ${rule}` }
  if (ebpHz > vented) return { kind: 'vented', why: `${figure} leans to a vented or band-pass box: ${rule}` }
  return { kind: 'either', why: `${figure} lies between, closed and vented both work: ${rule}` }
}
