/** What a plan shows on paper: the parts that were done, in the records of their own rooms. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import type { Caution } from '../../domain/caution.ts'
import type { Assumption } from '../../domain/outcome.ts'
import type { BuildOrder } from '../../plan/work/build-order.ts'
import type { ChartCurves, ChartLimits } from '../charts/response-charts.ts'
import { type PaperUnits, significant } from '../draw/number-text.ts'
import type { SystemWiring } from '../wiring/system-wiring-layout.ts'
import type { DrawnWiring } from '../wiring/wiring-diagram.ts'

export interface PaperFact {
  readonly label: string
  readonly value: string
}

export interface PaperFacts {
  readonly title: string
  readonly rows: readonly PaperFact[]
}

interface PaperCheck {
  readonly id: string
  readonly text: string
  readonly passIf: string
}

interface PaperSource {
  readonly id: string
  readonly title: string
  readonly status: string
}

export interface PlanPaper {
  readonly title: string
  readonly verdict: 'ready' | 'take-care' | 'incomplete' | 'stop'
  readonly reasons: readonly string[]
  readonly lines: readonly string[]
  /** Those that stand ahead of everything; the others stand at their steps. */
  readonly cautions: readonly Caution[]
  /** By the id of the step. */
  readonly stepCautions: ReadonlyMap<string, readonly Caution[]>
  /** How many more stand further on. */
  readonly furtherCautions?: string
  readonly facts: readonly PaperFacts[]
  readonly curves?: ChartCurves
  readonly limits?: ChartLimits
  readonly box?: BoxLayout
  readonly cutPlan?: SheetPlan
  readonly wiring?: SystemWiring
  /** The coils on one output. */
  readonly coils?: DrawnWiring
  readonly bill: readonly BillRow[]
  readonly buildOrder?: BuildOrder
  readonly restraint?: Restraint
  readonly commissioning: readonly PaperCheck[]
  readonly readings: readonly PlanReading[]
  readonly assumed: readonly Assumption[]
  readonly sources: readonly PaperSource[]
}

/** An assumed value as it is read. */
export const valueText = (value: Assumption['value']): string =>
  typeof value === 'number' ? significant(value, 4) : String(value)

export interface PaperOptions {
  readonly paper: PaperUnits
  /** BCP 47 language of the page. */
  readonly language?: 'en'
}

export const verdictText = {
  ready: { mark: 'OK', title: 'Ready to build', text: 'Every part of the plan holds.' },
  'take-care': { mark: '!', title: 'Take care', text: 'It can be built; read what to watch first.' },
  incomplete: { mark: '?', title: 'Not complete', text: 'Some parts could not be worked out.' },
  stop: { mark: 'STOP', title: 'Do not build or switch this on', text: 'Something in it is dangerous as it stands.' }
} as const

export const levelText = { stop: 'Stop', care: 'Care', note: 'Note' } as const

/** A caution as it stands at its step. */
export const stepCautionTexts = ({ stepCautions }: PlanPaper, id: string): readonly string[] =>
  gravestFirst(stepCautions.get(id) ?? []).map(({ level, message }) => `${levelText[level]}: ${message}`)

const gravity = { stop: 0, care: 1, note: 2 } as const

export const gravestFirst = (cautions: readonly Caution[]): readonly Caution[] =>
  [...cautions].sort((a, b) => gravity[a.level] - gravity[b.level])
