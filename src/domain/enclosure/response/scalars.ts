/** The figures a response is judged by, refined between the points of an own scan. */
import type { PortLengths, ResponseScalars } from '../../../contract/enclosures/response.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { conventionalEnds } from '../../port/end-correction.ts'
import { present } from '../../present.ts'
import { closedBox } from '../alignment/closed-box.ts'
import type { ChamberParts } from '../model/chamber.ts'
import {
  type Extreme,
  excursionQuantity,
  extremes,
  impedanceQuantity,
  pressureQuantity,
  type Scan
} from '../model/extremes.ts'
import { halfPower } from '../model/half-power.ts'
import { pressureScale } from '../model/plateau.ts'
import { pointSolver, type ResponseSystem, solveGrid } from '../model/response-system.ts'
import { closedTotalQ } from './formulas.ts'

const SCAN_FROM_HZ = 1
const SCAN_TO_HZ = 1000
const SCAN_POINTS = 420
const scanGridHz: readonly number[] = logarithmicGrid(SCAN_FROM_HZ, SCAN_TO_HZ, SCAN_POINTS)

/** A solution dense enough that every feature of a loudspeaker shows a change of slope. */
function scanOf(system: ResponseSystem): Scan {
  const frequenciesHz = scanGridHz
  return { frequenciesHz, solution: solveGrid(system, frequenciesHz), at: pointSolver(system) }
}

const within =
  (low: number, high: number) =>
  ({ frequencyHz }: { readonly frequencyHz: number }) =>
    frequencyHz >= low && frequencyHz <= high

const level = (pressurePa: number) => 20 * Math.log10(Math.max(pressurePa / REFERENCE_PRESSURE_PA, 1e-15))

function levelScalars(system: ResponseSystem, scan: Scan) {
  const { upward, downward, peak, reference, f3Hz, f3UpperHz } = halfPower(
    system,
    scan,
    extremes(scan, pressureQuantity)
  )
  const scale = pressureScale(system)
  return {
    ...present({ referenceLevelDb: system.highPass ? level(reference * scale) : undefined, f3Hz, f3UpperHz }),
    ...(system.highPass ? {} : { upwardCrossings: upward, downwardCrossings: downward }),
    peakLevelDb: level(peak.modulus * scale),
    peakLevelHz: peak.frequencyHz
  }
}

/**
 * Closed box.
 *
 *   α = N·Vas/V    fc = fs·√(1+α)    Qtc = Qts'·√(1+α)    Qes' = Qes·(Re + Rg1)/Re
 *
 * @source Small, "Closed-box loudspeaker systems", JAES 20(10), 1972 and 21(1), 1973 (from memory)
 * @check  fs 30, Qts 0.412844, Vas 60 L, 30 L → α 2, fc 51.96 Hz, Qtc 0.7151
 */
function closedScalars({ driver, wiring, sourceOhm }: ResponseSystem, rear: ChamberParts) {
  const { fcHz } = closedBox({ ...driver, vasM3: wiring.vasM3 }, rear.volumeM3)
  const rise = fcHz / driver.fsHz
  const [qec, qmc] = [driver.qes * rise, driver.qms * rise]
  const Rg1 = (sourceOhm * wiring.count) / wiring.inSeries ** 2
  return { fcHz, qtc: closedTotalQ.of({ Qmc: qmc, Qec: qec, Re: driver.coil.reOhm, Rg1 }), qec, qmc }
}

function portLengths({ effectiveLengthM, radiusM }: NonNullable<ChamberParts['port']>): PortLengths {
  const length = (endFactor: number) => effectiveLengthM - endFactor * radiusM
  return {
    flangedFreeM: length(conventionalEnds('free', 'flanged')),
    bothFlangedM: length(conventionalEnds('flanged', 'flanged')),
    bothFreeM: length(conventionalEnds('free', 'free'))
  }
}

function geometryScalars(system: ResponseSystem) {
  const { rear, front } = system.chambers
  const { driver, wiring } = system
  const alpha = (parts: ChamberParts) => wiring.vasM3 / parts.volumeM3
  const opening = (parts: ChamberParts | undefined) => parts?.port ?? parts?.passiveRadiators
  return {
    ...present({
      alpha: rear === undefined ? undefined : alpha(rear),
      frontAlpha: front === undefined ? undefined : alpha(front)
    }),
    ...(rear === undefined || opening(rear) !== undefined || front !== undefined ? {} : closedScalars(system, rear)),
    ...(rear === undefined || opening(rear) === undefined
      ? {}
      : { tuningHz: rear.lossHz, tuningRatio: rear.lossHz / driver.fsHz }),
    ...(front === undefined || opening(front) === undefined ? {} : { frontTuningHz: front.lossHz }),
    ...(rear?.port && { portEffectiveLengthM: rear.port.effectiveLengthM, portLengths: portLengths(rear.port) }),
    ...(front?.port && {
      frontPortEffectiveLengthM: front.port.effectiveLengthM,
      frontPortLengths: portLengths(front.port)
    }),
    ...(rear?.passiveRadiators && {
      passiveRadiatorResonanceHz: rear.passiveRadiators.resonanceHz,
      passiveRadiatorVasM3: rear.passiveRadiators.vasM3
    }),
    ...(front?.passiveRadiators && {
      frontPassiveRadiatorResonanceHz: front.passiveRadiators.resonanceHz,
      frontPassiveRadiatorVasM3: front.passiveRadiators.vasM3
    })
  }
}

function turningScalars({ voltageV }: ResponseSystem, scan: Scan) {
  const ohms = extremes(scan, impedanceQuantity).filter(within(3, 400))
  const excursions = extremes(scan, excursionQuantity).filter(within(5, 400))
  const impedance = ({ frequencyHz, modulus }: Extreme) => ({ frequencyHz, ohm: modulus })
  const excursion = ({ frequencyHz, modulus }: Extreme) => ({
    frequencyHz,
    excursionM: Math.SQRT2 * voltageV * modulus
  })
  return {
    impedancePeaks: ohms.filter(({ peak }) => peak).map(impedance),
    impedanceMinima: ohms.filter(({ peak }) => !peak).map(impedance),
    excursionPeaks: excursions.filter(({ peak }) => peak).map(excursion),
    excursionMinima: excursions.filter(({ peak }) => !peak).map(excursion)
  }
}

export function responseScalars(system: ResponseSystem): ResponseScalars {
  const scan = scanOf(system)
  return {
    voltageV: system.voltageV,
    ...levelScalars(system, scan),
    ...geometryScalars(system),
    ...turningScalars(system, scan)
  }
}
