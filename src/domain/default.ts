/** Judgement values: each one record in the `defaults.ts` of its room, with its unit, its reason and what it rests on. */
import type { SourceId } from '../contract/sources/source.ts'

/** A source of the catalogue; or, where there is none: common practice without a source, a choice of this service, or derived. */
type Grounds = SourceId | 'practice' | 'ours' | 'derived'

/** Why a value is taken; the value itself is worked out from the request. */
export interface Rule {
  readonly why: string
  readonly source: Grounds
}

export interface Default<Value> extends Rule {
  readonly value: Value
  /** SI, `1` for a pure number, `word` for a choice. */
  readonly unit: string
}

export type DefaultTable = Readonly<Record<string, Rule | Default<unknown>>>
