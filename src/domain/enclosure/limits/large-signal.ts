/** A system at work: what limits it where, what it loses, and what protects it. */
import type { CoilHeating, LargeSignal } from '../../../contract/enclosures/large-signal.ts'
import type { LimitsRequest } from '../../../contract/enclosures/limits.ts'
import type { LimitName } from '../../../contract/enclosures/words.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { atOneVolt, type UnitDrive } from '../response/response-at-one-volt.ts'
import { type CompressionCurves, compressionCurves } from './compression.ts'
import { limitDefaults } from './defaults.ts'
import { drivePeaks, programmeLimit } from './drive-peaks.ts'
import { governingLimit } from './governing-limit.ts'
import { unfiltered } from './hot-system.ts'
import { type Limits, limitCurves, limitsOf } from './limit-curves.ts'
import { coilHeating } from './power-compression.ts'
import { protectionOf } from './protection.ts'

interface LargeSignalCurves extends Partial<CompressionCurves> {
  /** Level of a sine at the largest voltage that keeps to every limit, without the filters. */
  readonly maximumLevelDb: readonly number[]
  readonly maximumVoltageV: readonly number[]
  readonly governingLimit: readonly LimitName[]
}

export interface LargeSignalAnswer {
  readonly curves: LargeSignalCurves
  readonly limits: LargeSignal
  readonly bounds: Limits
  /** The system with its filters over the programme, for one volt. */
  readonly programme: UnitDrive
  readonly sources: readonly SourceId[]
}

const PROGRAMME_POINTS = 192

/** Where the drive is judged. */
export function programmeGrid(request: LimitsRequest, assume: Assumptions): Float64Array {
  const { programmeFromHz: from, programmeToHz: to } = limitDefaults
  const fromHz = assume.take(request.programmeFromHz, 'limits.programmeFromHz', from)
  const toHz = assume.take(request.programmeToHz, 'limits.programmeToHz', to)
  if (toHz > fromHz) return Float64Array.from(logarithmicGrid(fromHz, toHz, PROGRAMME_POINTS))
  const detail = say('refused.the-programme-ends-at-hz-not', { toHz, fromHz })
  const bound = { value: toHz, minimum: fromHz, unit: 'Hz', detail }
  throw new DesignError('conflicting-input', { field: 'limits.programmeToHz', ...bound })
}

/** The lowest limit over frequencies; refuses when there is nothing to hold the system against. */
function governingOf(system: ResponseSystem, limits: Limits, frequenciesHz: Float64Array) {
  const bare = unfiltered(system)
  const drive = atOneVolt(bare, frequenciesHz)
  const curves = limitCurves(bare, drive, limits)
  if (curves.length > 0) return { drive, governing: governingLimit(frequenciesHz, curves) }
  const detail = say('refused.no-limit-is-known-give-the')
  throw new DesignError('missing-input', { field: 'driver.xmaxM', detail })
}

const hasPorts = ({ ports }: ResponseSystem) => ports.length > 0

/** Ports cubed times frequencies: beyond this the jets would hold the service for seconds. */
const MOST_JETS = 16_000

/** Whether there are ports, and few enough for the frequencies asked for. */
export function jetsCanBeSolved({ ports }: ResponseSystem, frequencies: number): boolean {
  return ports.length > 0 && ports.length ** 3 * frequencies <= MOST_JETS
}

function compressionOf(
  system: ResponseSystem,
  request: LimitsRequest,
  { amplifierV }: Limits,
  heating: CoilHeating | undefined,
  at: Float64Array,
  assume: Assumptions
) {
  const { portLossFactor } = limitDefaults
  return (
    compressionCurves(system, at, {
      ...present({
        portLossFactor: jetsCanBeSolved(system, at.length)
          ? assume.take(request.portLossFactor, 'limits.portLossFactor', portLossFactor)
          : undefined,
        coilRatio: heating === undefined ? undefined : heating.steadyReOhm / system.groupOhm,
        amplifierV
      })
    }) ?? {}
  )
}

const sourcesOf = (system: ResponseSystem, heating: CoilHeating | undefined): readonly SourceId[] => [
  'linear-limits',
  'thermal-rating',
  ...(hasPorts(system) ? (['ingard-ising-1967', 'bezzola-2020'] as const) : []),
  ...(heating === undefined ? [] : (['iec-60028', 'coil-heat-path'] as const))
]

/**
 * @param system  with its filters, at the drive given
 * @param statedOhm  load at which the power of the source is stated
 * @throws DesignError `missing-input`, `conflicting-input`
 * @validity linear network; excursion beyond Xmax and jets are estimates
 */
export function largeSignal(
  system: ResponseSystem,
  request: LimitsRequest,
  frequenciesHz: Float64Array,
  statedOhm: number | undefined,
  assume: Assumptions
): LargeSignalAnswer {
  const bounds = limitsOf(system, request, statedOhm, assume)
  const programme = programmeGrid(request, assume)
  const { drive, governing } = governingOf(system, bounds, frequenciesHz)
  const throughout = governingOf(system, bounds, programme)
  const grid = { frequenciesHz: programme, dutyFactor: bounds.dutyFactor }
  const heating = coilHeating(system, request.heating ?? {}, grid, assume)
  const xmaxM = system.custom ? undefined : bounds.coneM
  const programmeDrive = atOneVolt(system, programme)
  return {
    bounds,
    programme: programmeDrive,
    sources: sourcesOf(system, heating),
    curves: {
      maximumLevelDb: drive.levelDb.map((level, k) => level + 20 * Math.log10(governing.voltageV[k] as number)),
      maximumVoltageV: [...governing.voltageV],
      governingLimit: governing.limit,
      ...compressionOf(system, request, bounds, heating, frequenciesHz, assume)
    },
    limits: {
      atDrive: drivePeaks(system, programmeDrive),
      programme: programmeLimit(system, programme, throughout.governing),
      segments: governing.segments,
      ...present({ heating, protection: xmaxM === undefined ? undefined : protectionOf(system, xmaxM) })
    }
  }
}
