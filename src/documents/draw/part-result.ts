import type { Part } from '../../plan/request/part.ts'

/** What a part of a plan came to, where it is done. */
export const resultOf = <Result>(part: Part<unknown, Result> | undefined): Result | undefined =>
  part?.done ? part.outcome.result : undefined
