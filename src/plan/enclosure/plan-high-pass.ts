/** What the protective high-pass of a closed box costs, and the power that needs none. */
import { type Caution, caution } from '../../domain/caution.ts'
import { inDigits } from '../../domain/digits.ts'
import { computeResponse } from '../../domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../domain/enclosure/model/request.ts'
import type { JoinedDrivers } from '../load/plan-load.ts'
import { runPart } from '../request/part.ts'
import type { ResponsePart } from './plan-response.ts'

/** From this share of the resonance on, the filter takes what the box would have played. Ours. */
const BASS_SHARE = 0.5

const isHighPass = ({ kind }: { readonly kind: string }) => kind === 'high-pass'

function cornerOf({ filters = [] }: ResponseRequest): number | undefined {
  const filter = filters.find(isHighPass)
  return filter !== undefined && 'cornerHz' in filter ? filter.cornerHz : undefined
}

/** Largest excursion over the programme without the high-pass, over Xmax. */
function bareExcursionOfXmax({ filters = [], ...request }: ResponseRequest): number | undefined {
  const bare = runPart({ ...request, filters: filters.filter(filter => !isHighPass(filter)) }, computeResponse)
  return bare.done ? bare.outcome.result.limits?.atDrive.coneExcursionOfXmax : undefined
}

/**
 * The power at which the cone reaches Xmax without the filter: excursion grows with the voltage, power with its square.
 *
 *   P = P_set·(Xmax/x)²
 */
export function closedHighPass(response: ResponsePart, { powerW }: Pick<JoinedDrivers, 'powerW'>): readonly Caution[] {
  if (!response.done || response.request.enclosure.kind !== 'closed') return []
  const cornerHz = cornerOf(response.request)
  const { fcHz } = response.outcome.result.scalars
  const ofXmax = cornerHz === undefined ? undefined : bareExcursionOfXmax(response.request)
  if (cornerHz === undefined || fcHz === undefined || ofXmax === undefined) return []
  const unfilteredPowerW = powerW / ofXmax ** 2
  const grave = cornerHz > BASS_SHARE * fcHz
  const cost = grave
    ? `It lies above half the resonance of the box, ${inDigits(fcHz, 2)} Hz, and takes bass that the cabin would have given: a smaller box or less power keeps it.`
    : `The box resonates at ${inDigits(fcHz, 2)} Hz.`
  return [
    caution(
      'closed-box-high-pass',
      `At ${inDigits(powerW, 2)} W the cone of this closed box needs the high-pass at ${inDigits(cornerHz, 2)} Hz; without it the cone reaches Xmax at ${inDigits(unfilteredPowerW, 2)} W. ${cost}`,
      { level: grave ? 'care' : 'note', figures: { cornerHz, fcHz, powerW, unfilteredPowerW } }
    )
  ]
}
