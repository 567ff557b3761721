/** Hears boxes around the planned one in closed form, with the filters that are set. */
import type { PlanWhatIf } from '../../../contract/systems/plan-margins.ts'
import type { Air } from '../../../domain/air/air.ts'
import { REFERENCE_PRESSURE_PA } from '../../../domain/constants.ts'
import { present } from '../../../domain/present.ts'
import { type BoxCurves, boxCurves, type DriveLimits } from '../evaluate/box-response.ts'
import { risesToHz } from '../evaluate/crossing.ts'
import { type DriverTables, type DriverWish, driverTables } from '../evaluate/driver-tables.ts'
import { gainLimit2, highPass2, leastGain, type Programme, programme } from '../evaluate/held-level.ts'
import { openAreaM2, type Spot, type SpotDrive, solveSpot, spotTuningHz } from './spot.ts'

interface SpotProblem {
  readonly wish: DriverWish
  readonly limits: DriveLimits
  readonly airSpeedMPerS: number
  /** Those of the response that the levels stand beside: a full sine, and air that nobody hears. */
  readonly shown: SpotLimits
  readonly lowPass: { readonly cornerHz: number; readonly order: number }
  /** Where the programme begins; below it nothing is played. */
  readonly musicFromHz: number
  /** What the car adds at these frequencies [dB]. */
  readonly seatGainDb: (frequenciesHz: Float64Array) => Float64Array
  /** Pressure of the plateau at one volt [Pa]. */
  readonly plateauPa: number
  readonly comparedHz: readonly number[]
}

export interface SpotFigures
  extends Pick<PlanWhatIf[number], 'tuningHz' | 'levelDb' | 'f3Hz' | 'coneOfXmax' | 'airSpeedMPerS'> {
  /** Largest gain at which no limit is passed anywhere in the programme, with the high-pass as it is set [V]. */
  readonly heldV: number
}

/** The limit that is reached first, and where. */
interface Reached {
  readonly voltageV: number
  readonly atHz: number
}

export interface SpotSolver {
  readonly figures: (spot: Spot, drive: SpotDrive) => SpotFigures
  /** Gain at which these limits alone are reached, without a high-pass. */
  readonly reached: (spot: Spot, limits: SpotLimits) => Reached
  /** Square of the gain each frequency of {@link played} allows. */
  readonly allowed2: (spot: Spot) => Float64Array
  readonly played: Programme
  readonly limits: DriveLimits
  readonly air: Air
}

export interface SpotLimits {
  readonly drive: DriveLimits
  /** Absent: the air of the port does not limit. */
  readonly airSpeedMPerS?: number
  /** Whether the travel of radiators limits. */
  readonly travels?: boolean
}

const GRID = { fromHz: 10, stepsPerOctave: 24, steps: 104 } as const

/** 10 to 200 Hz in half of the steps of a piano. */
const earGridHz = Float64Array.from(
  { length: GRID.steps },
  (_, step) => GRID.fromHz * 2 ** (step / GRID.stepsPerOctave)
)

function least(frequenciesHz: Float64Array, gain2: Float64Array, highPassHz: number): Reached {
  const { gain2: best2, at } = leastGain(frequenciesHz, gain2, highPassHz)
  return { voltageV: Math.sqrt(best2), atHz: frequenciesHz[at] as number }
}

interface Solved {
  readonly tables: DriverTables
  readonly played: Programme
}

export function spotSolver(problem: SpotProblem): SpotSolver {
  const { wish, limits, airSpeedMPerS, shown, lowPass, plateauPa } = problem
  const on = (frequenciesHz: Float64Array, fromHz: number): Solved => ({
    tables: driverTables(wish, frequenciesHz),
    played: programme(frequenciesHz, lowPass, { fromHz, slopeOrder: 0 })
  })
  const [grid, whole] = [
    on(earGridHz, problem.musicFromHz),
    programme(earGridHz, lowPass, { fromHz: 0, slopeOrder: 0 })
  ]
  const compared = on(Float64Array.from(problem.comparedHz), 0)
  const seatDb = problem.seatGainDb(compared.tables.frequenciesHz)

  const curvesOf = ({ tables }: Solved, spot: Spot, held: SpotLimits): BoxCurves => {
    const curves = boxCurves(tables.frequenciesHz.length)
    solveSpot(tables, spot, held, curves)
    return curves
  }
  const allowed = (solved: Solved, spot: Spot, limited: SpotLimits) => {
    const { airSpeedMPerS: speed = Infinity } = limited
    const gain2 = new Float64Array(solved.played.weight2.length)
    const areaSpeed2 = (speed * (openAreaM2(spot) ?? Infinity)) ** 2
    gainLimit2(curvesOf(solved, spot, limited), solved.played, areaSpeed2, gain2)
    return gain2
  }
  const all = { drive: limits, airSpeedMPerS, travels: true }

  const levels = (spot: Spot, { voltageV, highPassHz = 0 }: SpotDrive): readonly number[] => {
    const { level2 } = curvesOf(compared, spot, shown)
    const gain2 = allowed(compared, spot, shown)
    return problem.comparedHz.map((hz, k) => {
      const played2 = Math.min(voltageV ** 2 * highPass2(highPassHz, hz), gain2[k] as number)
      return (
        10 * Math.log10((level2[k] as number) * played2 * (compared.played.weight2[k] as number)) +
        (seatDb[k] as number)
      )
    })
  }

  const figures = (spot: Spot, drive: SpotDrive): SpotFigures => {
    const { highPassHz = 0, voltageV } = drive
    const curves = curvesOf(grid, spot, all)
    const filtered2 = curves.level2.map(
      (level2, k) => level2 * (whole.weight2[k] as number) * highPass2(highPassHz, earGridHz[k] as number)
    )
    const one = (of: SpotLimits) => voltageV / least(earGridHz, allowed(grid, spot, of), highPassHz).voltageV
    return {
      levelDb: levels(spot, drive),
      heldV: least(earGridHz, allowed(grid, spot, all), highPassHz).voltageV,
      ...present({
        tuningHz: spotTuningHz(spot, wish.air),
        f3Hz: risesToHz(earGridHz, filtered2, (plateauPa / REFERENCE_PRESSURE_PA) ** 2 / 2),
        coneOfXmax: limits.coneM === undefined ? undefined : one({ drive: { coneM: limits.coneM, duty: 1 } }),
        airSpeedMPerS: spot.port && one({ drive: { duty: 1 }, airSpeedMPerS: 1 })
      })
    }
  }

  return {
    figures,
    reached: (spot, of) => least(earGridHz, allowed(grid, spot, of), 0),
    allowed2: spot => allowed(grid, spot, all),
    played: grid.played,
    limits,
    air: wish.air
  }
}
