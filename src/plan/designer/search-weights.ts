/** What the order of designs weighs, where the caller does not say: judgement, echoed with the answer. */
import type { SearchRequest } from '../../contract/systems/design-search.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { DesignError } from '../../domain/design-error.ts'
import { say } from '../../domain/say.ts'
import { rankDefaults } from './defaults.ts'
import { criteria, type Weights } from './search-score.ts'

function missingPrice({ drivers, amplifiers }: SearchRequest): string | undefined {
  const driver = drivers.findIndex(({ price }) => price === undefined)
  if (driver >= 0) return `drivers[${driver}].price`
  const amplifier = amplifiers.findIndex(({ price }) => price === undefined)
  return amplifier >= 0 ? `amplifiers[${amplifier}].price` : undefined
}

const asksForPrice = ({ rankBy, weights, limits }: SearchRequest) =>
  rankBy === 'price' || (weights?.price ?? 0) > 0 || limits?.pricePerSystem !== undefined

/** @throws DesignError `missing-input` where price counts and one is missing, `conflicting-input` where nothing counts */
export function resolvedWeights(request: SearchRequest, assumed: Assumptions): Weights {
  const unpriced = missingPrice(request)
  if (unpriced !== undefined && asksForPrice(request)) {
    const detail = say('refused.where-price-counts-every-driver-and')
    throw new DesignError('missing-input', { field: unpriced, detail })
  }
  const entries = criteria.map(criterion => {
    const silent = criterion === 'price' && unpriced !== undefined
    const rule = silent ? rankDefaults.unpriced : rankDefaults[`${criterion}Weight`]
    const weight = silent ? 0 : rankDefaults.weight.value
    return [
      criterion,
      assumed.work<number>(request.weights?.[criterion], `weights.${criterion}`, weight, rule)
    ] as const
  })
  if (entries.some(([, weight]) => weight > 0)) return Object.fromEntries(entries) as Weights
  throw new DesignError('conflicting-input', {
    field: 'weights',
    detail: say('refused.with-every-weight-zero-there-is')
  })
}
