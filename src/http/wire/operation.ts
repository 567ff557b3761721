/**
 * One resource of the service: its schemas and the pure function behind it. Routes, batches, workers, the contract and the
 * plan's parts all go through this record, so that none of them can differ from another.
 */
import type { Static, TObject, TSchema } from 'typebox'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { answerOf } from '../../contract/field/envelope.ts'
import type { Si } from '../../contract/field/wire-units.ts'
import type { LanguageCode } from '../../contract/sentences/words.ts'
import { inLanguage } from '../../domain/in-language.ts'
import { languages } from '../../domain/languages.ts'
import type { Outcome } from '../../domain/outcome.ts'
import type { Language } from '../../domain/say.ts'
import { type Calculation, calculationOf } from './answer/calculation.ts'
import { chosenParts } from './answer/chosen-parts.ts'
import { type Digits, jsonWriter } from './answer/json-writer.ts'
import { saidOnce } from './answer/said-once.ts'
import { wireOutcome } from './answer/wire-outcome.ts'
import type { Deprecation } from './deprecation.ts'
import type { Law } from './law.ts'
import { toSi } from './request/to-si.ts'

interface Example {
  readonly summary: string
  readonly request: unknown
}

interface OperationText {
  readonly path: `/v1/${string}`
  readonly operationId: string
  readonly tag: string
  readonly summary: string
  readonly description: string
  /** Worked requests; the contract shows each with the answer the service gives. */
  readonly examples: Readonly<Record<string, Example>>
  /** Runs in a worker thread, for whatever can hold the event loop longer than a few milliseconds. */
  readonly heavy?: boolean
  /** How many times the body of another call may be sent; 1 where absent. */
  readonly bodyLimits?: number
  /** Where the resource is on its way out; says so in headers and contract. */
  readonly deprecation?: Deprecation
}

export interface AnswerOptions {
  readonly digits: Digits
  readonly basis: boolean
  /** Media type of the form asked for; JSON where absent. */
  readonly form?: string
  /** English where absent. */
  readonly language?: LanguageCode
  /** Names among `parts` of the operation: only these of the result; all of it where absent. */
  readonly parts?: readonly string[]
}

export interface Answer {
  readonly body: string | Uint8Array
  /** For the counts of /metrics. */
  readonly cautions: readonly CautionCode[]
}

/** Another form a result can leave in, chosen by the Accept header. */
interface FormText {
  /** Bare type, e.g. `application/pdf`; text types leave in UTF-8. */
  readonly mediaType: string
  readonly description: string
  /** Of a form that is JSON too. */
  readonly schema?: TSchema
  /** Runs in a worker thread although the JSON form does not. */
  readonly heavy?: boolean
  /** What it costs beside the calculation [ms]; little where absent. */
  readonly moreMs?: number
}

interface Form<Body, Domain> extends FormText {
  readonly render: (
    outcome: Outcome<Domain>,
    request: Si<Body>,
    options: AnswerOptions & { readonly calculation: Calculation }
  ) => string | Uint8Array | Promise<string | Uint8Array>
}

export interface Operation extends OperationText {
  readonly body: TObject
  readonly result: TSchema
  readonly answer: TSchema
  readonly forms: readonly FormText[]
  /** What `?parts=` can name. */
  readonly parts: readonly string[]
  /** What always holds; shown in the reference. */
  readonly laws: readonly Law[]
  /**
   * Processor time of a validated request in the form asked for, when warm [ms], on the machine that scripts/bench/cost.ts was
   * run on. Meant to be good to a factor of two, enough to choose a thread and to tell a wait; the bench marks where it is not.
   */
  readonly costMs: (request: unknown, options: AnswerOptions) => number
  /** From a validated request to the text of the JSON answer. @throws DesignError */
  readonly answerText: (request: unknown, options: AnswerOptions) => string
  /** From a validated request to the answer in the form asked for. @throws DesignError */
  readonly run: (request: unknown, options: AnswerOptions) => Promise<Answer>
}

interface Definition<Body extends TObject, Result extends TSchema, Domain> extends OperationText {
  readonly body: Body
  readonly result: Result
  /** What is drawn is drawn in a language; all else is said again in it. */
  readonly compute: (request: Si<Static<Body>>, language: LanguageCode) => Outcome<Domain>
  /** The language as the request wants it written, in inches for one; as it is where absent. */
  readonly written?: (request: Si<Static<Body>>, language: Language) => Language
  readonly forms?: readonly Form<Static<Body>, Domain>[]
  readonly parts?: readonly string[]
  readonly laws?: readonly Law<Static<Body>, Static<Result>>[]
  readonly costMs: (request: Static<Body>) => number
  /** Whether it leaves as lines as well, progress first: see `work/divided.ts`. */
  readonly lines?: boolean
  /** Whose answer this gives: paths lead into the body of that call, and it is cited as that. */
  readonly answersFor?: {
    readonly operationId: string
    readonly body: TObject
    readonly request: (request: Static<Body>) => unknown
  }
}

/** How a result, its sentences told, goes into the contract's shape; titles of refusals in it are told here. */
type Present<Domain> = (result: Domain, language: LanguageCode) => unknown

/** The result is the domain's own, or `present` says how it goes into the contract's shape. */
type Presented<Body extends TObject, Result extends TSchema, Domain> = Definition<Body, Result, Domain> &
  (Domain extends Si<Static<Result>> ? unknown : { readonly present: Present<Domain> })

const linesForm: FormText = {
  mediaType: 'application/x-ndjson',
  description:
    'Lines of JSON: `{"progress": …}` after each part, and last `{"answer": …}`; without it the stream was cut'
}

/** Whether the answer is the last of several lines. */
export const isLines = ({ form }: AnswerOptions): boolean => form === linesForm.mediaType

/** What was found out, once each, in the language asked for. */
function saidIn<Result>(outcome: Outcome<Result>, language: Language): Outcome<Result> {
  const once = saidOnce(outcome)
  return language === languages.en ? once : inLanguage(once, language)
}

/** The answer component takes the operation's name with `Answer` behind it. */
export function defineOperation<Body extends TObject, Result extends TSchema, Domain = Si<Static<Result>>>(
  presented: Presented<Body, Result, Domain>
): Operation {
  const {
    compute,
    written = (_request: Si<Static<Body>>, language: Language) => language,
    costMs,
    forms: given = [],
    lines = false,
    laws = [],
    answersFor = { ...presented, request: (request: Static<Body>): unknown => request },
    parts = [],
    ...definition
  }: Definition<Body, Result, Domain> = presented
  const forms: readonly FormText[] = lines ? [...given, linesForm] : given
  const { present = result => result } = presented as { present?: Present<Domain> }
  const name = `${definition.operationId[0]?.toUpperCase()}${definition.operationId.slice(1)}Answer`
  const answer = answerOf(name, definition.result)
  const write = jsonWriter(answer)
  const cited = (request: unknown) => calculationOf(answersFor.operationId, answersFor.request(request as Static<Body>))
  const found = (si: Si<Static<Body>>, { language = 'en' }: AnswerOptions) =>
    saidIn(compute(si, language), written(si, languages[language]))
  const text = (
    request: unknown,
    outcome: Outcome<Domain>,
    { digits, basis, parts: chosen, language = 'en' }: AnswerOptions
  ) =>
    write(
      wireOutcome(
        { ...outcome, result: chosenParts(present(outcome.result, language), chosen) },
        answersFor.body,
        definition.result,
        basis,
        cited(request)
      ),
      digits
    )
  return {
    ...definition,
    answer,
    forms,
    parts,
    laws,
    costMs: (request, { form }) =>
      costMs(request as Static<Body>) + (forms.find(({ mediaType }) => mediaType === form)?.moreMs ?? 0),
    answerText: (request, options) => text(request, found(toSi(request as Static<Body>), options), options),
    run: async (request, options) => {
      const si = toSi(request as Static<Body>)
      const outcome = found(si, options)
      const form = given.find(({ mediaType }) => mediaType === options.form)
      const whole = () => text(request, outcome, options)
      return {
        body:
          form === undefined
            ? isLines(options)
              ? `{"answer":${whole()}}\n`
              : whole()
            : await form.render(outcome, si, {
                ...options,
                calculation: cited(request)
              }),
        cautions: outcome.cautions.map(({ code }) => code)
      }
    }
  }
}

/** What costs more leaves the thread that answers everybody. */
export const MOST_HERE_MS = 3

/** Whether a validated request belongs in a worker thread. */
export function isHeavy(operation: Operation, request: unknown, options: AnswerOptions): boolean {
  const { heavy = false, forms, costMs } = operation
  const heavyForm = forms.some(({ mediaType, heavy: always }) => mediaType === options.form && always === true)
  return heavy || heavyForm || costMs(request, options) > MOST_HERE_MS
}
