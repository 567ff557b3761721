/** What a plan shows on paper: the parts that were done, in the records of their own rooms. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { SourceStatus } from '../../contract/sources/entry.ts'
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanChapter } from '../../contract/systems/words.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import type { Caution } from '../../domain/caution.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { type Language, told } from '../../domain/say.ts'
import type { WorkOrder } from '../../plan/steps/work-order.ts'
import type { CommissioningStep } from '../../plan/work/first-start.ts'
import type { PlanCurves } from '../charts/plan-charts.ts'
import type { ChartLimits } from '../charts/response-charts.ts'
import { type Reader, significant } from '../draw/number-text.ts'
import type { Conductor } from '../wiring/conductors.ts'
import type { SystemWiring } from '../wiring/system-wiring-record.ts'
import type { DrawnWiring } from '../wiring/wiring-diagram.ts'
import type { PaperTable } from './what-if-rows.ts'

export interface PaperFact {
  readonly label: string
  readonly value: string
}

export interface PaperFacts {
  readonly title: string
  readonly rows: readonly PaperFact[]
}

/** A great figure of the first page and what to do with it. */
export interface GreatFigure {
  readonly value: string
  readonly unit: string
  readonly note: string
}

/** One row of the test card. */
interface CardRow {
  readonly what: string
  /** Where the probes go, and when; empty where the step says it. */
  readonly how: string
  readonly planned: string
  readonly step: number
  /** What it may mean if the meter shows something else; empty where nothing is known. */
  readonly otherwise: string
}

/** Of the request where no part is named, else what that part took by itself. */
export interface PaperAssumption extends Assumption {
  readonly part?: string
}

interface PaperSource {
  readonly id: string
  readonly title: string
  readonly status: SourceStatus
}

type PaperTries = readonly { readonly name: string; readonly why: string }[]

export interface PlanPaper {
  readonly language: Language
  readonly title: string
  readonly verdict: 'ready' | 'take-care' | 'incomplete' | 'stop'
  readonly reasons: readonly string[]
  readonly lines: readonly string[]
  readonly cover: PlanCover
  readonly figures: readonly GreatFigure[]
  /** By the id of the step. */
  readonly stepCautions: ReadonlyMap<string, readonly Caution[]>
  /** Of no step, by part of the paper. */
  readonly chapterCautions: ReadonlyMap<PlanChapter, readonly Caution[]>
  /** What would mend the supply, the best first, a sentence each. */
  readonly remedies: readonly string[]
  /** Where nothing fits: what would make a box fit, the least change first. */
  readonly ways: readonly string[]
  /** Other boxes for the same parts, what each does better and worse. */
  readonly others: readonly string[]
  /** What the limits of the parts cost; absent where no box fits. */
  readonly headroom?: string
  /** The planned box with each figure a tenth down and up. */
  readonly whatIf: PaperTable
  /** Where nothing fits: the boxes that came nearest, in place of the six figures. */
  readonly nearest: PaperTries
  /** What else was tried. */
  readonly tried: PaperTries
  readonly facts: readonly PaperFacts[]
  readonly curves?: PlanCurves
  readonly limits?: ChartLimits
  readonly box?: BoxLayout
  readonly cutPlan?: SheetPlan
  readonly wiring?: SystemWiring
  readonly conductors: readonly Conductor[]
  /** The coils on one output. */
  readonly coils?: DrawnWiring
  readonly bill: readonly BillRow[]
  readonly buildOrder?: WorkOrder
  readonly restraint?: Restraint
  readonly commissioning: readonly CommissioningStep[]
  readonly card: readonly CardRow[]
  readonly assumed: readonly PaperAssumption[]
  readonly sources: readonly PaperSource[]
}

/** An assumed value as it is read. */
export const valueText = (value: Assumption['value'], reader: Pick<Reader, 'language'>): string =>
  typeof value === 'number' ? significant(value, 4, reader) : String(value)

/** Who publishes the plan, when and where, as the caller says. */
type Imprint = Omit<NonNullable<PlanRequest['paper']>, 'units' | 'inches'>

/** Name under which the request travels in the paper. */
export const REQUEST_FILE = 'plan-request.json'

export interface PaperOptions {
  readonly paper: Reader
  readonly imprint?: Imprint
  /** The request as JSON, to travel with the paper. */
  readonly requestJson?: string
  /** What the plan is cited by. */
  readonly calculation?: { readonly version: string; readonly digest: string }
}

/** How well a source is known. */
export const statusText = (status: SourceStatus, language: Language): string =>
  told(language, `paper.status.${status === 'from memory' ? 'from-memory' : status}`)

const marks = { ready: '✓', 'take-care': '✓', incomplete: '✕', stop: '✕' } as const

export const verdictText = ({ verdict, language }: Pick<PlanPaper, 'verdict' | 'language'>) => ({
  mark: marks[verdict],
  title: told(language, `paper.verdict.${verdict}`),
  text: told(language, `paper.verdict.${verdict}.text`)
})

/** Where a figure turns out wrong, this says which plans have it. */
export const calculationText = ({ calculation, paper }: PaperOptions): string | undefined =>
  calculation && told(paper.language, 'paper.computed', calculation)

/** Revision and date, author and licence, each as far as it was given. */
export const imprintTexts = ({ imprint: { revision, date, author, licence } = {}, paper }: PaperOptions) => ({
  issue: [revision === undefined ? undefined : told(paper.language, 'paper.revision', { revision }), date]
    .filter(each => each !== undefined)
    .join(', '),
  rights: [author, licence].filter(each => each !== undefined).join(', ')
})
