/** What the order of designs weighs, where the caller does not say: judgement, echoed with the answer. */
import type { SearchRequest } from '../../contract/systems/design-search.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { DesignError } from '../../domain/design-error.ts'
import { say } from '../../domain/say.ts'
import { type Criterion, criteria, type Weights } from './search-score.ts'

/** The dearest default of each table, said once. */
const why: Readonly<Record<Criterion, string>> = {
  level: 'a decibel of level counts one',
  reach: 'an octave of f3 counts nine decibels, as efficiency goes with its third power',
  box: 'half the box counts three decibels, as efficiency goes with volume',
  price: 'half the price counts three decibels, as half the power',
  current: 'half the current counts three decibels, as half the power'
}

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
    const reason = silent ? 'a price is missing, so none counts' : why[criterion]
    const weight = silent ? 0 : 1
    return [criterion, assumed.or(request.weights?.[criterion], `weights.${criterion}`, weight, reason)] as const
  })
  if (entries.some(([, weight]) => weight > 0)) return Object.fromEntries(entries) as Weights
  throw new DesignError('conflicting-input', {
    field: 'weights',
    detail: say('refused.with-every-weight-zero-there-is')
  })
}
