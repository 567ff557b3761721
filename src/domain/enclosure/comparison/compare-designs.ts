/** Several designs in one place: curves, figures, what differs, and which parameter does it. */
import type { ComparedFigures, Comparison, ComparisonRequest } from '../../../contract/enclosures/comparison.ts'
import type { Response } from '../../../contract/enclosures/response.ts'
import { type ComparedParameter, comparedFigures } from '../../../contract/enclosures/words.ts'
import { DesignError, type FoundFault } from '../../design-error.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { say, type Worded, worded } from '../../say.ts'
import { computeResponse } from '../answer/compute-response.ts'
import type { ResponseRequest } from '../model/request.ts'
import { COMPARED_HZ } from './defaults.ts'
import { comparedCurves, designFigures, differenceOf, differsIn, figureChanges } from './design-figures.ts'
import { differingParameters, withParameter } from './substitutions.ts'

type Difference = Comparison['differences'][number]
type Cause = Difference['causes'][number]

interface Solved {
  readonly name: string
  readonly design: ResponseRequest
  readonly outcome: Outcome<Response>
  readonly figures: ComparedFigures
}

const under = (index: number, field: string) => (field === '' ? `designs[${index}]` : `designs[${index}].${field}`)
/** What all designs share stands beside them. */
const shared = /^(air|cabin|frequenciesHz)\b/
const placed = (index: number, field: string) => (shared.test(field) ? field : under(index, field))

/** @throws DesignError of the response, with the design it belongs to */
function solved({ designs, air, cabin, frequenciesHz }: ComparisonRequest, index: number): Solved {
  const { name, driver, drivers, enclosure, source, filters, limits } = designs[
    index
  ] as ComparisonRequest['designs'][number]
  const optional = present({ drivers, filters, limits, air, cabin, frequenciesHz })
  const design: ResponseRequest = { driver, enclosure, source, ...optional }
  try {
    return { name, design, outcome: computeResponse(design), figures: designFigures(design) }
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    const faults = error.faults.map(fault => ({ ...fault, field: placed(index, fault.field) }))
    throw new DesignError(error.code, ...(faults as unknown as readonly [FoundFault]))
  }
}

/** In the other design, all else changed already; none where the other design without it is no system. */
function lastDb(parameter: ComparedParameter, first: Solved, other: Solved): Pick<Cause, 'lastDb'> {
  try {
    const without = withParameter(parameter, other.design, first.design)
    return { lastDb: differenceOf(other.figures.levelsDb, designFigures(without).levelsDb) }
  } catch (error) {
    if (error instanceof DesignError) return {}
    throw error
  }
}

/**
 * What a parameter does depends on what it meets, so it is told first and last of all changes. In the other order of the two
 * designs each is the other with its sign turned.
 *
 * @check  two parameters: the means of first and last add up to the whole change, with nothing left
 */
function causeOf(parameter: ComparedParameter, first: Solved, other: Solved): Cause {
  try {
    const mixed = withParameter(parameter, first.design, other.design)
    return { parameter, change: figureChanges(designFigures(mixed), first.figures), ...lastDb(parameter, first, other) }
  } catch (error) {
    const fault = error instanceof DesignError ? error.faults[0] : undefined
    if (fault === undefined) throw error
    const refusal: Worded<{ readonly refusal: typeof fault.said.detail }> = worded({ refusal: fault.said.detail })
    return { parameter, ...refusal }
  }
}

function differenceTo(first: Solved, other: Solved): Difference {
  const change = figureChanges(other.figures, first.figures)
  const causes = differingParameters(first.design, other.design).map(name => causeOf(name, first, other))
  const single = causes.flatMap(cause => (cause.change === undefined ? [] : [cause.change.levelsDb]))
  return {
    name: other.name,
    change,
    causes,
    togetherDb: single.reduce((left, levelsDb) => differenceOf(left, levelsDb), change.levelsDb)
  }
}

/** @throws DesignError `conflicting-input` where two designs have one name */
function requireNames({ designs }: ComparisonRequest): void {
  const names = designs.map(({ name }) => name)
  const twice = names.findIndex((name, index) => names.indexOf(name) !== index)
  if (twice < 0) return
  const field = under(twice, 'name')
  throw new DesignError('conflicting-input', {
    field,
    detail: say('refused.the-name-is-used-twice', { id: names[twice] ?? '' })
  })
}

/**
 * Each design as the response computes it, all in one air and one cabin; and each parameter that differs put alone into the first.
 *
 * @returns single changes do not add up where parameters act through each other: `togetherDb` is what is left
 * @throws DesignError `conflicting-input` and those of the response
 * @validity that of the response
 */
export function compareDesigns(request: ComparisonRequest): Outcome<Comparison> {
  requireNames(request)
  const all = request.designs.map((_, index) => solved(request, index))
  const [first, ...others] = all as [Solved, ...Solved[]]
  const figures = all.map(each => each.figures)
  return {
    result: {
      place: request.cabin === undefined ? 'half-space' : 'seat',
      frequencyHz: first.outcome.result.curves.frequencyHz,
      comparedHz: COMPARED_HZ,
      designs: all.map(({ name, outcome, figures: own }) => ({
        name,
        curves: comparedCurves(outcome.result),
        figures: own
      })),
      differing: comparedFigures.filter(figure => differsIn(figure, figures)),
      differences: others.map(other => differenceTo(first, other))
    },
    cautions: all.flatMap(({ outcome }, index) =>
      outcome.cautions.map(each => ({ ...each, at: placed(index, each.at ?? '') }))
    ),
    assumed: all.flatMap(({ outcome }, index) =>
      outcome.assumed.map(each => ({ ...each, field: placed(index, each.field) }))
    ),
    sources: [...new Set(all.flatMap(({ outcome }) => outcome.sources))],
    basis: []
  }
}
