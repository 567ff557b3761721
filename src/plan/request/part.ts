/** One part of a plan: what was asked of an operation and what it gave, or why it could not be done. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { DesignError, type DesignErrorCode, type Fault } from '../../domain/design-error.ts'
import type { Outcome } from '../../domain/outcome.ts'
import { phrased, say, worded } from '../../domain/say.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'

interface Refusal {
  readonly code: DesignErrorCode
  readonly message: string
  readonly faults: readonly Fault[]
  /** Nothing is wrong here: the part waits for another. */
  readonly waiting?: true
}

interface Undone {
  readonly done: false
  readonly refusal: Refusal
}

/** Done: `outcome` is what the operation gives for `request`. Refused: `refusal` says why. */
export type Part<Request, Result> =
  | { readonly done: true; readonly request: Request; readonly outcome: Outcome<Result> }
  | { readonly done: false; readonly request?: Request; readonly refusal: Refusal }

/** What a refusal says, as sentences; two fields may share one. */
export const refusalSaid = ({ faults }: Refusal): Said =>
  say('sentences', { all: [...new Map(faults.map(({ detail, said }) => [detail, said.detail])).values()] })

/**
 * Runs one operation of the chain; a refusal stays in its place and the rest of the plan goes on.
 *
 * @param operation  what is remembered, where `compute` only comes to the same sooner
 */
export type RunPart = <Request, Result>(
  unrounded: Request,
  compute: (request: Request) => Outcome<Result>,
  operation?: (request: Request) => Outcome<Result>
) => Part<Request, Result>

/**
 * For one piece of work, which hands it to all its rooms: an operation asked the same again answers from memory. Operations are
 * pure, so nothing but time changes. The request is rounded to the digits it is shown with, so that the single resource gives the
 * same answer for it.
 */
export function partRunner(): RunPart {
  const memory = new Map<unknown, Map<string, Part<unknown, unknown>>>()
  return <Request, Result>(
    unrounded: Request,
    compute: (request: Request) => Outcome<Result>,
    operation: (request: Request) => Outcome<Result> = compute
  ) => {
    const request = sixDigitsThroughout(unrounded)
    const known = memory.get(operation) ?? new Map<string, Part<unknown, unknown>>()
    memory.set(operation, known)
    const key = JSON.stringify(request)
    const part = (known.get(key) as Part<Request, Result> | undefined) ?? attempted(request, compute)
    known.set(key, part)
    return part
  }
}

function attempted<Request, Result>(
  request: Request,
  compute: (request: Request) => Outcome<Result>
): Part<Request, Result> {
  try {
    return { done: true, request, outcome: compute(request) }
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    return { done: false, request, refusal: { code: error.code, message: error.message, faults: error.faults } }
  }
}

/** A part that cannot start because another gave it nothing to stand on. */
export function waitingFor(what: string): Undone {
  const fault = worded({ detail: say('refused.waiting', { what: phrased(what) }) })
  const faults = [{ field: '', ...fault }]
  return { done: false, refusal: { code: 'missing-input', message: fault.detail, faults, waiting: true } }
}

/** A part that the request of the plan itself does not allow; its faults name fields of that request. */
export function refusedBy(code: DesignErrorCode, field: string, text: Said | string): Undone {
  const detail = typeof text === 'string' ? say('sentences', { all: text }) : text
  const fault = worded({ detail })
  return { done: false, refusal: { code, message: fault.detail, faults: [{ field, ...fault }] } }
}
