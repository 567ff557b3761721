/** One size held against every limit of the task. */
import type { Candidate } from '../../../contract/supply/supply-cables.ts'
import type { CableLimit, FusePolicy } from '../../../contract/supply/words.ts'
import { present } from '../../present.ts'
import { type Ampacity, ampacity } from '../cable/ampacity.ts'
import type { CableSize } from '../cable/cable-size.ts'
import { areaForOhmPerM, conductorOhmPerM } from '../cable/conductor-resistance.ts'
import { finalTemperatureC } from '../cable/insulation-material.ts'
import { faultCurrent, fuseOhm } from '../fuse/battery-source.ts'
import { type CableFault, cableFault } from '../fuse/cable-fault.ts'
import type { FuseLink } from '../fuse/fuse-rating.ts'
import { highestFuse } from '../fuse/protected-cable.ts'
import { voltageAtConstantPower } from '../load/constant-power-feeder.ts'
import type { CableTask } from './cable-request.ts'

/** What the limits are judged by beside the task: the fuse, the source, the rest of the loop. */
export interface Criteria {
  readonly fuse?: FuseLink
  readonly policy: FusePolicy
  readonly systemVoltageV: number
  readonly openCircuitV: number
  readonly sourceOhm: number
  /** Chassis and joints [Ω]. */
  readonly restOhm: number
  readonly terminalAreaM2?: number
}

export interface JudgedSize {
  readonly size: CableSize
  readonly carries: Ampacity
  readonly fault?: CableFault
  readonly candidate: Candidate
}

function endVoltage(task: CableTask, loopOhm: number): number | undefined {
  if (task.constantPower) return voltageAtConstantPower(task.sourceV, task.loadPowerW, loopOhm)
  return task.sourceV - task.currentA * loopOhm
}

function faultOf(task: CableTask, size: CableSize, loopOhm: number, criteria: Criteria): CableFault | undefined {
  if (criteria.fuse === undefined) return undefined
  const loop = loopOhm + criteria.restOhm + fuseOhm(criteria.fuse.ratingA)
  const { insulationC } = task.surroundings
  return cableFault(criteria.fuse, faultCurrent(criteria.openCircuitV, criteria.sourceOhm, loop), {
    areaM2: size.areaM2,
    material: task.law.material,
    startC: insulationC,
    endC: finalTemperatureC(task.insulationMaterial, insulationC, size.areaM2)
  })
}

/** A hair of tolerance, so that a size exactly at its limit is not thrown out by rounding. */
const HAIR = 1 + 1e-12

interface Facts {
  readonly dropV: number | undefined
  readonly carries: Ampacity
  readonly highestFuseA: number | undefined
  readonly fault: CableFault | undefined
}

function passesOf(
  task: CableTask,
  size: CableSize,
  criteria: Criteria,
  { dropV, carries, highestFuseA, fault }: Facts
): Readonly<Record<CableLimit, boolean>> {
  return {
    drop: dropV !== undefined && dropV <= task.dropLimitV * HAIR,
    ampacity: carries.ampacityA !== undefined && task.currentA <= carries.ampacityA * HAIR,
    fuse: criteria.fuse !== undefined && criteria.fuse.ratingA <= (highestFuseA ?? 0) * HAIR,
    'short-circuit': fault?.survives === true,
    terminal: size.areaM2 <= (criteria.terminalAreaM2 ?? Number.POSITIVE_INFINITY) * HAIR
  }
}

/** Nothing to tell of a load that collapses behind this size. */
function atLoad(task: CableTask, voltageV: number | undefined, systemVoltageV: number): Partial<Candidate> {
  if (voltageV === undefined || !(voltageV > 0)) return {}
  const currentA = task.constantPower ? task.loadPowerW / voltageV : task.currentA
  const dropV = task.sourceV - voltageV
  return {
    currentA,
    dropV,
    lossW: currentA * dropV,
    dropPercent: (100 * dropV) / systemVoltageV,
    endVoltageV: voltageV
  }
}

export function judgeSize(task: CableTask, size: CableSize, criteria: Criteria): JudgedSize {
  const ohmPerM = conductorOhmPerM(size, task.law, task.temperatureC)
  const loopOhm = ohmPerM * task.conductorLengthM + task.contactOhm
  const voltageV = endVoltage(task, loopOhm)
  const dropV = voltageV === undefined ? undefined : task.sourceV - voltageV
  const carries = ampacity(size, task.law.material, task.surroundings)
  const { ampacityA } = carries
  const highestFuseA =
    ampacityA === undefined ? undefined : highestFuse(criteria.policy, carries, criteria.systemVoltageV)
  const fault = faultOf(task, size, loopOhm, criteria)
  const passes = passesOf(task, size, criteria, { dropV, carries, highestFuseA, fault })
  return {
    size,
    carries,
    ...present({ fault }),
    candidate: {
      designation: size.designation,
      areaM2: size.areaM2,
      diameterM: Math.sqrt((4 * size.areaM2) / Math.PI),
      ohmPerM,
      loopOhm,
      ...atLoad(task, voltageV, criteria.systemVoltageV),
      ...(ampacityA === undefined ? {} : { ampacityA, highestFuseA: highestFuseA ?? 0 }),
      ...present({ faultA: fault?.faultA }),
      fails: task.checks.filter(limit => !passes[limit])
    }
  }
}

/**
 * Least conductor area that keeps the drop.
 *
 *   A = ρ·s·(1 + α·(T − 20))·L/(ΔV/I − Rc)
 *
 * @returns [m²]; undefined where the contacts alone use up the drop
 * @source Ohm’s law
 * @check  50.98 A, 6.5 m, 0.36 V, s 1 → 15.87 mm²; with s 1.02 → 16.19 mm²
 */
export function leastAreaForDrop(task: CableTask): number | undefined {
  const currentA = task.constantPower ? task.loadPowerW / (task.sourceV - task.dropLimitV) : task.currentA
  const allowedOhm = task.dropLimitV / currentA - task.contactOhm
  if (!(allowedOhm > 0) || task.conductorLengthM === 0) return undefined
  return areaForOhmPerM(allowedOhm / task.conductorLengthM, task.law, task.temperatureC)
}

/**
 * The limit that kept the next smaller size out; the first of the list where several did.
 *
 * @returns 'smallest-size' where the smallest of the list already passes everything
 */
export function governingLimit(
  judged: readonly JudgedSize[],
  chosen: number,
  checks: readonly CableLimit[]
): CableLimit | 'smallest-size' {
  const fails = judged[chosen - 1]?.candidate.fails ?? []
  return checks.find(limit => fails.includes(limit)) ?? 'smallest-size'
}
