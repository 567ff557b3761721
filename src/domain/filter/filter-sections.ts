/** Filters of a chain as first- and second-order sections. */

import type { Filter, PassFilter, PeakingFilter, ShelfFilter } from '../../contract/enclosures/filter.ts'
import { DesignError } from '../design-error.ts'
import { present } from '../present.ts'
import { say } from '../say.ts'
import { besselPoles } from './bessel.ts'
import { butterworthPoles, linkwitzRileyPoles } from './butterworth.ts'
import type { FilterSection, PrototypePole } from './filter.ts'

const prototypes: Readonly<Record<PassFilter['family'], (filter: PassFilter) => readonly PrototypePole[]>> = {
  butterworth: ({ order }) => butterworthPoles(order),
  'linkwitz-riley': ({ order }) => linkwitzRileyPoles(order),
  bessel: ({ order }) => besselPoles(order),
  'chosen-q': ({ q }) => [{ corner: 1, ...present({ q }) }]
}

/** A shelf without a Q is as steep as it can be without overshoot. */
const SHELF_Q = Math.SQRT1_2

/** @throws DesignError `conflicting-input`, `missing-input` */
function requireSound({ family, order, q }: PassFilter, field: string): void {
  if (family === 'linkwitz-riley' && order % 2 === 1) {
    const detail = say('refused.a-linkwitz-riley-filter-has-an', { order })
    throw new DesignError('conflicting-input', { field: `${field}.order`, value: order, unit: '1', detail })
  }
  if (family === 'chosen-q' && order !== 2) {
    const detail = say('refused.a-filter-of-chosen-q-has', { order })
    throw new DesignError('conflicting-input', { field: `${field}.order`, value: order, unit: '1', detail })
  }
  if (family === 'chosen-q' && q === undefined) {
    throw new DesignError('missing-input', {
      field: `${field}.q`,
      detail: say('refused.the-family-chosen-q-needs-its')
    })
  }
  if (family !== 'chosen-q' && q !== undefined) {
    const detail = say('refused.the-family-fixes-the-q-of', { family })
    throw new DesignError('conflicting-input', { field: `${field}.q`, value: q, unit: '1', detail })
  }
}

/** A high-pass is its low-pass with s → 1/s: each pole moves to the inverse of its place and keeps its Q. */
function passSections(filter: PassFilter): readonly FilterSection[] {
  const high = filter.kind === 'high-pass'
  return prototypes[filter.family](filter).map(({ corner, q }) => ({
    cornerHz: high ? filter.cornerHz / corner : filter.cornerHz * corner,
    numerator: high ? (q === undefined ? [0, 1, 0] : [0, 0, 1]) : [1, 0, 0],
    denominator: q === undefined ? [1, 1, 0] : [1, 1 / q, 1]
  }))
}

/**
 * Shelving equaliser, half of the gain in decibel at the corner.
 *
 *   low  H = A (s² + (√A/Q)s + A)/(A s² + (√A/Q)s + 1),  A = 10^(dB/40);  high: s → 1/s
 *
 * @source W3C, Audio EQ Cookbook, Working Group Note, 2021: analog prototypes
 */
function shelfSection({ kind, cornerHz, gainDb, q = SHELF_Q }: ShelfFilter): FilterSection {
  const a = 10 ** (gainDb / 40)
  const slope = Math.sqrt(a) / q
  const high = kind === 'high-shelf'
  return {
    cornerHz,
    numerator: high ? [a, a * slope, a * a] : [a * a, a * slope, a],
    denominator: high ? [a, slope, 1] : [1, slope, a]
  }
}

/**
 * Peaking equaliser; a cut is the inverse of the boost.
 *
 *   H = (s² + (A/Q)s + 1)/(s² + s/(A Q) + 1),  A = 10^(dB/40)
 *
 * @source W3C, Audio EQ Cookbook, Working Group Note, 2021: analog prototypes
 */
function peakingSection({ centreHz, gainDb, q }: PeakingFilter): FilterSection {
  const a = 10 ** (gainDb / 40)
  return { cornerHz: centreHz, numerator: [1, a / q, 1], denominator: [1, 1 / (a * q), 1] }
}

/** Beyond this, what a chain holds back is less than arithmetic can carry. */
const HIGHEST_TOTAL_ORDER = 24

/**
 * @param filters  in any order: the chain is linear
 * @param field    path of the list in the request
 * @throws DesignError `conflicting-input`, `missing-input` where family, order and Q do not go together; `out-of-range`
 */
export function filterSections(filters: readonly Filter[], field: string): readonly FilterSection[] {
  const order = filters.reduce((sum, filter) => sum + ('order' in filter ? filter.order : 0), 0)
  if (order > HIGHEST_TOTAL_ORDER) {
    const detail = say('refused.the-orders-of-all-filters-add', { order, highestTotalOrder: HIGHEST_TOTAL_ORDER })
    throw new DesignError('out-of-range', { field, value: order, maximum: HIGHEST_TOTAL_ORDER, unit: '1', detail })
  }
  return filters.flatMap((filter, index) => {
    if (filter.kind === 'peaking') return [peakingSection(filter)]
    if ('gainDb' in filter) return [shelfSection(filter)]
    requireSound(filter, `${field}[${index}]`)
    return passSections(filter)
  })
}
