import type { Response } from '../../../contract/enclosures/response.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { type CabinGain, cabinGain } from '../../cabin/cabin-gain.ts'
import { hearingCautions } from '../../cabin/hearing.ts'
import type { Caution } from '../../caution.ts'
import { givenDriverCautions } from '../../driver/given-driver-cautions.ts'
import type { FilterSection } from '../../filter/filter.ts'
import { chainTransfer } from '../../filter/filter-transfer.ts'
import type { Outcome } from '../../outcome.ts'
import { type LargeSignalAnswer, largeSignal } from '../limits/large-signal.ts'
import { limitCautions } from '../limits/limit-cautions.ts'
import { limitsBasis } from '../limits/limits-basis.ts'
import { smallChamberCautions, springCautions } from '../model/air-spring.ts'
import type { ResponseRequest } from '../model/request.ts'
import { type ResponseSystem, responseSystem, solveGrid } from '../model/response-system.ts'
import { partCurves, type ResponseCurves, responseCurves } from '../response/curves.ts'
import { frequenciesOf } from '../response/frequencies.ts'
import { responseScalars } from '../response/scalars.ts'
import { timeResponse } from '../response/time-response.ts'
import { responseBasis, responseSources } from './basis.ts'
import { driveCautions, tracesOfCurves, tracesOfDrive } from './cautions.ts'
import { tightnessCautions } from './tightness.ts'

/** What the filters alone do. */
interface FilterCurves {
  readonly filterGainDb: readonly number[]
  readonly filterPhaseDeg: readonly number[]
  readonly filterGroupDelayS: readonly number[]
}

interface SeatCurves {
  readonly cabinGainDb: readonly number[]
  readonly seatLevelDb: readonly number[]
  /** With limits only. */
  readonly maximumSeatLevelDb?: readonly number[]
}

function filterCurves(sections: readonly FilterSection[], frequencies: readonly number[]): Partial<FilterCurves> {
  if (sections.length === 0) return {}
  const transfers = frequencies.map(frequency => chainTransfer(sections, frequency))
  return {
    filterGainDb: transfers.map(({ re, im }) => 20 * Math.log10(Math.hypot(re, im))),
    filterPhaseDeg: transfers.map(({ re, im }) => (Math.atan2(im, re) * 180) / Math.PI),
    filterGroupDelayS: transfers.map(({ groupDelayS }) => groupDelayS)
  }
}

const sum = (one: ArrayLike<number>, other: ArrayLike<number>) =>
  Array.from(one, (value, k) => value + (other[k] as number))

function seatCurves(
  seat: CabinGain | undefined,
  levelDb: readonly number[],
  loud?: LargeSignalAnswer
): Partial<SeatCurves> {
  if (seat === undefined) return {}
  return {
    cabinGainDb: [...seat.gainDb],
    seatLevelDb: sum(levelDb, seat.gainDb),
    ...(loud && { maximumSeatLevelDb: sum(loud.curves.maximumLevelDb, seat.gainDb) })
  }
}

/** The parts a caller asks for beside the linear response. */
function extrasOf(request: ResponseRequest, system: ResponseSystem, frequencies: Float64Array, assume: Assumptions) {
  const { cabin, limits } = request
  return {
    seat: cabin && cabinGain(cabin, system.air.soundSpeedMPerS, frequencies, assume),
    loud: limits && largeSignal(system, limits, frequencies, request.source.loadOhm, assume)
  }
}
type Extras = ReturnType<typeof extrasOf>

function cautionsOf(
  request: ResponseRequest,
  system: ResponseSystem,
  curves: ResponseCurves & Pick<Response['curves'], 'seatLevelDb'>,
  { seat, loud }: Extras
): readonly Caution[] {
  const traces = loud === undefined ? tracesOfCurves(curves) : tracesOfDrive(loud.programme, system.voltageV)
  const frequencies = Float64Array.from(curves.frequencyHz)
  return [
    ...driveCautions(system, traces),
    ...springCautions(system, traces.frequencyHz),
    ...smallChamberCautions(system),
    ...tightnessCautions(request, system),
    ...(loud === undefined ? [] : limitCautions(system, loud, frequencies)),
    ...hearingCautions(
      frequencies,
      Float64Array.from(curves.seatLevelDb ?? curves.levelDb),
      curves.seatLevelDb === undefined ? 'half-space' : 'seat'
    ),
    ...(seat?.cautions ?? [])
  ]
}

const earSources: readonly SourceId[] = ['niosh-98-126', 'iec-61672', 'directive-2003-10-ec']

function sourcesOf(request: ResponseRequest, system: ResponseSystem, { seat, loud }: Extras): readonly SourceId[] {
  const families = (request.filters ?? []).map(filter => ('family' in filter ? filter.family : 'equaliser'))
  const byFamily = {
    butterworth: 'butterworth-1930',
    'linkwitz-riley': 'linkwitz-1976',
    bessel: 'thomson-1949',
    'chosen-q': undefined,
    equaliser: 'w3c-equalisers-2021'
  } as const
  const filters = families.map(family => byFamily[family]).filter(id => id !== undefined)
  return [
    ...new Set([
      ...responseSources(system),
      ...filters,
      ...(seat?.sources ?? []),
      ...earSources,
      ...(loud?.sources ?? [])
    ])
  ]
}

/**
 * Linear response at the voltage of the source.
 *
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`
 * @validity Lumped elements: chambers and cones small against the wavelength; linear, so excursions beyond Xmax are nominal.
 */
export function computeResponse(request: ResponseRequest): Outcome<Response> {
  const assume = assumptions()
  const system = responseSystem(request, assume)
  const frequencies = frequenciesOf(request, assume)
  const solution = solveGrid(system, frequencies)
  const linear = responseCurves(system, solution, frequencies)
  const scalars = responseScalars(system)
  const extras = extrasOf(request, system, Float64Array.from(frequencies), assume)
  const { seat, loud } = extras
  const curves = {
    ...linear,
    ...filterCurves(system.filters, frequencies),
    ...seatCurves(seat, linear.levelDb, loud),
    ...loud?.curves
  }
  const cautions = [...givenDriverCautions(request.driver, system.air), ...cautionsOf(request, system, curves, extras)]
  const named = system.custom || system.wiring.isobaric !== undefined
  return {
    result: {
      curves,
      scalars,
      ...(seat && { cabin: seat.model }),
      ...(loud && { limits: loud.limits }),
      ...(request.timeResponse && { timeResponse: timeResponse(system, scalars, request.timeResponse, assume) }),
      ...(named ? { parts: partCurves(system, solution) } : {})
    },
    cautions,
    assumed: assume.list,
    sources: [
      ...sourcesOf(request, system, extras),
      ...(cautions.some(({ code }) => code === 'air-spring-stiffens') ? (['air-spring-harmonic'] as const) : [])
    ],
    basis: [
      ...responseBasis(system, scalars),
      ...(seat?.basis ?? []),
      ...(loud === undefined ? [] : limitsBasis(system, loud.limits))
    ]
  }
}
