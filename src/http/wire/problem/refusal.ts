/** A refusal that HTTP itself makes, before or around the calculation; the domain's own is DesignError. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { inEnglish } from '../../../domain/say.ts'
import type { ProblemError } from './problem.ts'
import type { ProblemCode } from './problem-kinds.ts'

/** The client closed its connection before the answer had left: no fault, and no work for anybody. */
export class ClientGone extends Error {
  override readonly name = 'ClientGone'
  readonly code = 'client-gone'
}

export const hasLeft = (error: unknown): boolean =>
  error instanceof ClientGone || (error as { code?: unknown }).code === 'ERR_STREAM_PREMATURE_CLOSE'

export class Refusal extends Error {
  override readonly name = 'Refusal'
  readonly code: ProblemCode
  /** The sentence behind the message, for another language. */
  readonly said: Said
  readonly errors: readonly ProblemError[] | undefined
  readonly headers: Readonly<Record<string, string>>

  constructor(
    code: ProblemCode,
    detail: Said,
    { errors, headers = {} }: { errors?: readonly ProblemError[]; headers?: Readonly<Record<string, string>> } = {}
  ) {
    super(inEnglish(detail))
    this.said = detail
    this.code = code
    this.errors = errors
    this.headers = headers
  }
}
