/** The response of one enclosure: curves and figures, small signal. */
import { assumptions } from '../assume.ts'
import type { Outcome } from '../outcome.ts'
import { responseBasis, responseSources } from './basis.ts'
import { responseCautions } from './cautions.ts'
import { type PartCurve, partCurves, type ResponseCurves, responseCurves } from './curves.ts'
import { frequenciesOf } from './frequencies.ts'
import type { ResponseRequest } from './request.ts'
import { responseSystem, solveGrid } from './response-system.ts'
import { type ResponseScalars, responseScalars } from './scalars.ts'

export interface Response {
  readonly curves: ResponseCurves
  readonly scalars: ResponseScalars
  /** Custom enclosures and isobaric pairs. */
  readonly parts?: readonly PartCurve[]
}

/**
 * Linear response at the voltage of the source.
 *
 * @throws DesignError `missing-input`, `conflicting-input`
 * @validity Lumped elements: chambers and cones small against the wavelength; linear, so excursions beyond Xmax are nominal.
 */
export function computeResponse(request: ResponseRequest): Outcome<Response> {
  const assume = assumptions()
  const system = responseSystem(request, assume)
  const frequencies = frequenciesOf(request, assume)
  const solution = solveGrid(system, frequencies)
  const curves = responseCurves(system, solution, frequencies)
  const scalars = responseScalars(system)
  const named = system.custom || system.wiring.isobaric !== undefined
  return {
    result: { curves, scalars, ...(named ? { parts: partCurves(system, solution) } : {}) },
    cautions: responseCautions(system, curves),
    assumed: assume.list,
    sources: responseSources(system),
    basis: responseBasis(system, scalars)
  }
}
