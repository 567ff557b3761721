/** A refusal that HTTP itself makes, before or around the calculation; the domain's own is DesignError. */
import type { ProblemCode, ProblemError } from './problem.ts'

export class Refusal extends Error {
  override readonly name = 'Refusal'
  readonly code: ProblemCode
  readonly errors: readonly ProblemError[] | undefined
  readonly headers: Readonly<Record<string, string>>

  constructor(
    code: ProblemCode,
    detail: string,
    { errors, headers = {} }: { errors?: readonly ProblemError[]; headers?: Readonly<Record<string, string>> } = {}
  ) {
    super(detail)
    this.code = code
    this.errors = errors
    this.headers = headers
  }
}
