/** What the protective high-pass of a closed box costs, and the power that needs none. */
import { type Caution, caution } from '../../../domain/caution.ts'
import { toDigits } from '../../../domain/digits.ts'
import { computeResponse } from '../../../domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../../domain/enclosure/model/request.ts'
import { say } from '../../../domain/say.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import type { RunPart } from '../../request/part.ts'
import { boxPlanDefaults } from './defaults.ts'
import type { ResponsePart } from './plan-response.ts'

const isHighPass = ({ kind }: { readonly kind: string }) => kind === 'high-pass'

function cornerOf({ filters = [] }: ResponseRequest): number | undefined {
  const filter = filters.find(isHighPass)
  return filter !== undefined && 'cornerHz' in filter ? filter.cornerHz : undefined
}

/** Largest excursion over the programme without the high-pass, over Xmax. */
function bareExcursionOfXmax(run: RunPart, { filters = [], ...request }: ResponseRequest): number | undefined {
  const bare = run({ ...request, filters: filters.filter(filter => !isHighPass(filter)) }, computeResponse)
  return bare.done ? bare.outcome.result.limits?.atDrive.coneExcursionOfXmax : undefined
}

/** Of drivers that are shut in between two chambers. */
export const hiddenCones = (response: ResponsePart): readonly Caution[] =>
  response.done && response.request.enclosure.kind === 'band-pass-4'
    ? [caution('cones-out-of-sight', say('cones-out-of-sight'))]
    : []

/**
 * The power at which the cone reaches Xmax without the filter: excursion grows with the voltage, power with its square.
 *
 *   P = P_set·(Xmax/x)²
 */
export function closedHighPass(
  run: RunPart,
  response: ResponsePart,
  { powerW }: Pick<JoinedDrivers, 'powerW'>
): readonly Caution[] {
  if (!response.done || response.request.enclosure.kind !== 'closed') return []
  const cornerHz = cornerOf(response.request)
  const { fcHz } = response.outcome.result.scalars
  const ofXmax = cornerHz === undefined ? undefined : bareExcursionOfXmax(run, response.request)
  if (cornerHz === undefined || fcHz === undefined || ofXmax === undefined) return []
  const unfilteredPowerW = powerW / ofXmax ** 2
  const grave = cornerHz > boxPlanDefaults.bassShare.value * fcHz
  const cost = grave
    ? say('closed-box-high-pass.takes-bass', { fcHz: toDigits(fcHz, 2) })
    : say('closed-box-high-pass.resonance', { fcHz: toDigits(fcHz, 2) })
  return [
    caution(
      'closed-box-high-pass',
      say('closed-box-high-pass', {
        powerW: toDigits(powerW, 2),
        cornerHz: toDigits(cornerHz, 2),
        unfilteredPowerW: toDigits(unfilteredPowerW, 2),
        cost
      }),
      { level: grave ? 'care' : 'note', figures: { cornerHz, fcHz, powerW, unfilteredPowerW } }
    )
  ]
}
