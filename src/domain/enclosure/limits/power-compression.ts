/** The coil at work: how warm it gets at the given drive, how fast, and what level that costs. */

import type { CoilHeating } from '../../../contract/enclosures/large-signal.ts'
import type { HeatingRequest } from '../../../contract/enclosures/limits.ts'
import type { Assumptions } from '../../assume.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import {
  type CoilHeat,
  type CoilMetal,
  coilWarming,
  type HeatPath,
  resistanceRatio,
  steadyCoilC
} from './coil-heating.ts'
import { limitDefaults } from './defaults.ts'
import { heatCompression } from './formulas.ts'
import { coilHeat } from './hot-system.ts'

/** Moments a person can picture: a bar, a verse, a song, an album, a journey [s]. */
const MOMENTS_S = [1, 5, 20, 60, 180, 600, 1800, 3600] as const

function heatPath(system: ResponseSystem, heating: HeatingRequest, assume: Assumptions): HeatPath | undefined {
  const { coilKPerW, magnetKPerW = 0, coilTimeConstantS = 1, magnetTimeConstantS = 1 } = heating
  const { powerW } = system.driver
  if (coilKPerW !== undefined) return { coilKPerW, magnetKPerW, coilTimeConstantS, magnetTimeConstantS }
  if (powerW === undefined) return undefined
  const usualKPerW = limitDefaults.coilRiseK.value / powerW
  assume.note('limits.heating.coilKPerW', usualKPerW, limitDefaults.coilRiseK)
  return { coilKPerW: usualKPerW, magnetKPerW: 0, coilTimeConstantS, magnetTimeConstantS }
}

/** 20 lg of cold over hot total resistance: the pressure of the mass-controlled band goes with 1/(Re + Rg). */
function plateauLossDb({ groupOhm: Rcold, sourceOhm: Rg }: ResponseSystem, ratio: number): number {
  return heatCompression.of({ Rhot: Rcold * ratio, Rcold, Rg })
}

function warmingOf(system: ResponseSystem, heating: HeatingRequest, heat: CoilHeat, path: HeatPath, by: Thermal) {
  if (heating.coilTimeConstantS === undefined) return {}
  const warming = coilWarming(heat, path, by.ambientC, MOMENTS_S).map(({ timeS, coilC }) => {
    const ratio = resistanceRatio(by.metal, coilC)
    return { timeS, coilC, reOhm: system.groupOhm * ratio, compressionDb: plateauLossDb(system, ratio) }
  })
  return { warming }
}

interface Thermal {
  readonly metal: CoilMetal
  readonly ambientC: number
}

/**
 * @param system  with the filters before it
 * @returns nothing where neither a heat path nor a rated power is known
 * @validity one coil temperature; heat of the magnet and cooling by the cone's own air left out: an estimate
 */
export function coilHeating(
  system: ResponseSystem,
  heating: HeatingRequest,
  grid: { readonly frequenciesHz: Float64Array; readonly dutyFactor: number },
  assume: Assumptions
): CoilHeating | undefined {
  const path = heatPath(system, heating, assume)
  if (path === undefined) return undefined
  const { metal, ambientC, maximumCoilC } = limitDefaults
  const by = {
    metal: assume.take<CoilMetal>(heating.metal, 'limits.heating.metal', metal),
    ambientC: assume.take(heating.ambientC, 'limits.heating.ambientC', ambientC)
  }
  const heatByRatio = coilHeat(system, grid.frequenciesHz, grid.dutyFactor)
  const heat: CoilHeat = coilC => heatByRatio(resistanceRatio(by.metal, coilC))
  const steadyC = steadyCoilC(heat, path, by.ambientC)
  const ratio = resistanceRatio(by.metal, steadyC)
  return {
    ...by,
    coilKPerW: path.coilKPerW,
    magnetKPerW: path.magnetKPerW,
    coilHeatW: heat(steadyC),
    steadyCoilC: steadyC,
    maximumCoilC: assume.take(heating.maximumCoilC, 'limits.heating.maximumCoilC', maximumCoilC),
    steadyReOhm: system.groupOhm * ratio,
    compressionDb: plateauLossDb(system, ratio),
    ...warmingOf(system, heating, heat, path, by)
  }
}
