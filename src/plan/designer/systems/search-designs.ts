/** POST /v1/designs/search: every system that can be built of what is at hand, in order, and why the others were dropped. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { MergeRequest, SearchPart } from '../../../contract/systems/design-part.ts'
import type { Design } from '../../../contract/systems/design-result.ts'
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import { type Assumptions, assumptions } from '../../../domain/assume.ts'
import { type Caution, caution } from '../../../domain/caution.ts'
import { DesignError, type FoundFault } from '../../../domain/design-error.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import { present } from '../../../domain/present.ts'
import { say } from '../../../domain/say.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'
import { rankDefaults } from '../defaults.ts'
import { scoreBasis } from '../score-basis.ts'
import { requireSearchable } from '../search-combinations.ts'
import { fingerprintOf } from './fingerprint.ts'
import { type JoinedSearch, joinParts } from './join-parts.ts'
import { fromPart } from './part-cautions.ts'
import { type Question, questionOf } from './question.ts'
import { type Shard, searchPart } from './search-part.ts'

interface DesignSearch extends JoinedSearch {
  readonly part?: SearchPart
}

const sameAs = (one: Caution) => (other: Caution) => one.code === other.code && one.message === other.message

/** What holds for every design shown is said once, of the whole answer. */
function sharedCautions(designs: readonly Design[]): readonly Caution[] {
  const [first, ...others] = designs
  if (first !== undefined) {
    return (first.cautions as readonly Caution[]).filter(each =>
      others.every(({ cautions }) => (cautions as readonly Caution[]).some(sameAs(each)))
    )
  }
  return [caution('no-design-found', say('no-design-found'))]
}

function withoutShared(design: Design, shared: readonly Caution[]): Design {
  const own = (design.cautions as readonly Caution[]).filter(each => !shared.some(sameAs(each)))
  return { ...design, cautions: own }
}

const sources: readonly SourceId[] = [
  'design-score',
  'small-1972-closed-box',
  'equal-power-practice',
  'practice-enclosure-choice',
  'acoustic-network',
  'linear-limits',
  'box-geometry',
  'class-efficiency'
]

function outcomeOf(
  joined: JoinedSearch,
  { weights }: Question,
  assumed: Assumptions,
  part?: SearchPart
): Outcome<DesignSearch> {
  const { designs } = joined
  const shared = sharedCautions(designs)
  return {
    result: { ...joined, designs: designs.map(design => withoutShared(design, shared)), ...present({ part }) },
    cautions: shared,
    assumed: assumed.list,
    sources,
    basis: designs.map(({ figures, score }, index) => scoreBasis(`designs[${index}].score`, figures, weights, score))
  }
}

function requireShard({ index, of }: Shard): void {
  if (index < of) return
  const detail = say('refused.last-part', { parts: of, last: of - 1 })
  throw new DesignError('out-of-range', { field: 'shard.index', value: index, maximum: of - 1, unit: '1', detail })
}

const WHOLE: Shard = { index: 0, of: 1 }

/**
 * @throws DesignError `out-of-range` for more combinations than one call weighs, `missing-input`, `conflicting-input`
 * @validity foreseen in closed form on a grid, the first in order built as a plan builds them; an order of preference
 */
export function searchDesigns(request: SearchRequest): Outcome<DesignSearch> {
  const assumed = assumptions()
  const question = questionOf(request, assumed)
  requireSearchable(request)
  const { shard } = request
  if (shard !== undefined) requireShard(shard)
  const part = searchPart(request, question, shard ?? WHOLE)
  return outcomeOf(joinParts(request, question, [part]), question, assumed, shard && part)
}

/** What was weighed stands or was dropped, and only what stands was built: otherwise a join counts fewer than none. */
function addsUp({ weighed, standing, dropped, tried }: SearchPart): boolean {
  return weighed === dropped.reduce((sum, { count }) => sum + count, standing) && tried.length <= standing
}

/** Each part once, all of one search. */
function requireWhole({ request, parts }: MergeRequest): void {
  const fingerprint = fingerprintOf(request)
  const of = parts[0]?.shard.of ?? 1
  const faults = parts.flatMap((part, index): FoundFault[] => {
    const { shard, fingerprint: theirs } = part
    const field = `parts[${index}]`
    if (theirs !== fingerprint)
      return [{ field: `${field}.fingerprint`, detail: say('refused.part-of-another-request') }]
    if (shard.of !== of) return [{ field: `${field}.shard.of`, detail: say('refused.first-part-of', { parts: of }) }]
    if (shard.index >= of)
      return [{ field: `${field}.shard.index`, detail: say('refused.parts-counted', { parts: of }) }]
    const before = parts.findIndex(each => each.shard.index === shard.index)
    if (before < index)
      return [{ field: `${field}.shard.index`, detail: say('refused.part-twice', { part: shard.index }) }]
    return addsUp(part) ? [] : [{ field: `${field}.weighed`, detail: say('refused.part-does-not-add-up') }]
  })
  const absent = Array.from({ length: of }, (_, index) => index).filter(
    index => !parts.some(({ shard }) => shard.index === index)
  )
  const missing = { field: 'parts', detail: say('refused.parts-missing', { parts: of, absent: absent.join(', ') }) }
  const [first, ...others] = faults.length > 0 || absent.length === 0 ? faults : [missing]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
}

/** Names and sentences that nobody has: the part was changed on the way. */
function requireNamed({ request, parts }: MergeRequest): void {
  const drivers = new Set(request.drivers.map(({ name }) => name))
  const amplifiers = new Set(request.amplifiers.map(({ name }) => name))
  const unsaid = parts.flatMap(({ cautions }, index) =>
    cautions.flatMap((each, place): FoundFault[] => {
      const field = `parts[${index}].cautions[${place}].sentence`
      return fromPart(each) === undefined ? [{ field, detail: say('refused.no-such-sentence') }] : []
    })
  )
  const unknown = parts.flatMap(({ tried, cautions }, index) =>
    tried.flatMap((system, place): FoundFault[] => {
      const field = `parts[${index}].tried[${place}]`
      if (!drivers.has(system.driver)) return [{ field: `${field}.driver`, detail: say('refused.no-such-driver') }]
      if (!amplifiers.has(system.amplifier)) {
        return [{ field: `${field}.amplifier`, detail: say('refused.no-such-amplifier') }]
      }
      const caution = system.cautions.findIndex(each => each >= cautions.length)
      return caution < 0 ? [] : [{ field: `${field}.cautions[${caution}]`, detail: say('refused.no-such-caution') }]
    })
  )
  const [first, ...others] = [...unsaid, ...unknown].slice(0, rankDefaults.mostFaults.value)
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
}

/** A fault of the search as one of the request that holds it. */
function within<Value>(field: string, work: () => Value): Value {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    const [first = { field: '' }, ...others] = error.faults.map(fault => ({
      ...fault,
      field: fault.field === '' ? field : `${field}.${fault.field}`
    }))
    throw new DesignError(error.code, first, ...others)
  }
}

/** @throws DesignError `conflicting-input` where parts are missing, twice there, or of another search; those of the search */
export function mergeDesigns(merge: MergeRequest): Outcome<DesignSearch> {
  const { shard: _, ...request } = merge.request
  const assumed = assumptions()
  const question = within('request', () => {
    requireSearchable(request)
    return questionOf(request, assumed)
  })
  requireWhole(merge)
  requireNamed(merge)
  return outcomeOf(joinParts(request, question, sixDigitsThroughout(merge.parts)), question, assumed)
}
