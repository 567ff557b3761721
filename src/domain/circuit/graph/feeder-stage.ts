/** One stretch of a feeder: its resistances part by part, its fuse, and how warm its conductor gets. */

import type { FeederCable, FeederStage } from '../../../contract/supply/supply-feeder.ts'
import type { Assumptions } from '../../assume.ts'
import { present } from '../../present.ts'
import { type Ampacity, ampacity, type Surroundings } from '../cable/ampacity.ts'
import { type CableSize, cableSize } from '../cable/cable-size.ts'
import { type ConductorLaw, conductorLaw, conductorOhmPerM } from '../cable/conductor-resistance.ts'
import { conductorTemperature } from '../cable/conductor-temperature.ts'
import { fuseOhm } from '../fuse/battery-source.ts'
import { withMaker } from '../fuse/chosen-fuse.ts'
import { nextRating } from '../fuse/fuse-rating.ts'
import { surroundings } from '../fuse/protected-cable.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { feederDefaults } from './defaults.ts'

interface StageCableTask {
  readonly size: CableSize
  readonly law: ConductorLaw
  readonly surroundings: Surroundings
  readonly carries: Ampacity
  readonly runs: number
  readonly positiveM: number
  readonly returnM: number
  readonly chassisOhm: number
  /** Nobody stated it, so no stop rests on it. */
  readonly bodyAssumed: boolean
}

export interface StageTask {
  readonly cable?: StageCableTask
  readonly fuse?: { readonly ratingA: number; readonly ohm: number }
  readonly unfused: boolean
  readonly jointsOhm: number
  readonly otherOhm: number
}

function resolveCable(cable: FeederCable, assumed: Assumptions, at: string): StageCableTask {
  const size = cableSize(cable.designation, cable.gaugeSystem, `${at}designation`)
  const law = conductorLaw(cable, assumed, at)
  const around = surroundings(cable, assumed, at)
  const path = cable.return
  const { chassisOhm, groundLeadM } = supplyDefaults
  const throughBody = path?.kind === 'chassis'
  return {
    size,
    law,
    surroundings: around,
    carries: ampacity(size, law.material, around, at),
    runs: cable.runs ?? 1,
    positiveM: cable.positiveLengthM,
    returnM: throughBody
      ? assumed.take(path.leadLengthM, `${at}return.leadLengthM`, groundLeadM)
      : (path?.lengthM ?? 0),
    chassisOhm: throughBody ? assumed.take(path.resistanceOhm, `${at}return.resistanceOhm`, chassisOhm) : 0,
    bodyAssumed: throughBody && path.resistanceOhm === undefined
  }
}

/** The fuse of each run. A cable without one gets one: the next rating above what flows, echoed as assumed. */
function resolveFuse(
  stage: FeederStage,
  nominalA: number,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string,
  makerA: number | undefined
): StageTask['fuse'] {
  const runs = stage.cable?.runs ?? 1
  if (stage.fuse !== undefined) {
    return { ratingA: stage.fuse.ratingA, ohm: (stage.fuse.resistanceOhm ?? fuseOhm(stage.fuse.ratingA)) / runs }
  }
  if (stage.cable === undefined || stage.unfused) return undefined
  const next = nextRating({ lowestA: nominalA / runs, systemVoltageV }, `${at}fuse`)
  if (next === undefined) return undefined
  const { ratingA: usualA } = withMaker(next, makerA, nominalA)
  const ratingA = assumed.work(undefined, `${at}fuse.ratingA`, usualA, feederDefaults.fuseRatingA)
  return { ratingA, ohm: fuseOhm(ratingA) / runs }
}

/** @param nominalA  full-sine current at nominal voltage through this stretch [A] */
export function resolveStage(
  stage: FeederStage | undefined,
  nominalA: number,
  systemVoltageV: number,
  assumed: Assumptions,
  at: string,
  makerA?: number
): StageTask {
  if (stage === undefined) return { unfused: true, jointsOhm: 0, otherOhm: 0 }
  const joints =
    stage.joints ??
    (stage.cable === undefined ? 0 : assumed.take<number>(undefined, `${at}joints`, feederDefaults.joints))
  const { jointOhm } = supplyDefaults
  const fuse = resolveFuse(stage, nominalA, systemVoltageV, assumed, at, makerA)
  return {
    ...present({
      cable: stage.cable === undefined ? undefined : resolveCable(stage.cable, assumed, `${at}cable.`),
      fuse
    }),
    unfused: stage.unfused ?? false,
    jointsOhm: joints === 0 ? 0 : joints * assumed.take(stage.jointOhm, `${at}jointOhm`, jointOhm),
    otherOhm: stage.resistanceOhm ?? 0
  }
}

const stageParts = ['positive', 'return', 'chassis', 'fuse', 'joints', 'other'] as const
type PartOhms = Readonly<Record<(typeof stageParts)[number], number>>

/** Resistance of each part [Ω] with the conductor at a temperature. */
export function partOhms({ cable, fuse, jointsOhm, otherOhm }: StageTask, conductorC: number): PartOhms {
  const perM = cable === undefined ? 0 : conductorOhmPerM(cable.size, cable.law, conductorC) / cable.runs
  return {
    positive: perM * (cable?.positiveM ?? 0),
    return: perM * (cable?.returnM ?? 0),
    chassis: cable?.chassisOhm ?? 0,
    fuse: fuse?.ohm ?? 0,
    joints: jointsOhm,
    other: otherOhm
  }
}

/** All parts of a stretch in series, its conductor at this temperature [Ω]. */
export function stageOhm(stage: StageTask, conductorC: number): number {
  const parts = partOhms(stage, conductorC)
  return stageParts.reduce((sum, part) => sum + parts[part], 0)
}

/** Where the conductor of a stretch settles at a current [°C]. */
export function stageTemperature({ cable }: StageTask, currentA: number): number {
  if (cable === undefined) return 20
  const { size, law, surroundings: around, runs } = cable
  return conductorTemperature(
    { areaM2: size.areaM2, ohmPerM20: conductorOhmPerM(size, law, 20), perK: law.perK, ambientC: around.ambientC },
    currentA / runs
  )
}

/** The same stretch with a body of no resistance where nobody stated one. */
export function withoutAssumedBody(stage: StageTask): StageTask {
  const { cable } = stage
  return cable?.bodyAssumed ? { ...stage, cable: { ...cable, chassisOhm: 0 } } : stage
}
