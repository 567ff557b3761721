/** Asks operations as the service would, without loading the service: validated, worked out, written; refusals as problems. */
import type { JsonSchema } from '../../src/contract/field/component.ts'
import { DesignError } from '../../src/domain/design-error.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { designProblem } from '../../src/http/wire/problem/design-problem.ts'
import { problemKinds } from '../../src/http/wire/problem/problem-kinds.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'

interface Reply {
  readonly status: number
  // biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
  readonly body: any
}

export function postTo(...operations: readonly Operation[]) {
  const ajv = requestValidator()
  return async (url: string, request: unknown): Promise<Reply> => {
    const { pathname, searchParams } = new URL(url, 'http://here')
    const operation = operations.find(({ path }) => path === pathname)
    if (operation === undefined) throw new TypeError(`no operation at ${pathname}`)
    const sent = JSON.parse(JSON.stringify(request))
    if (!ajv.validate(operation.body, sent)) throw new TypeError(`not a request of ${pathname}: ${ajv.errorsText()}`)
    const digits = searchParams.get('digits') === 'full' ? 'full' : 'six'
    try {
      const text = operation.answerText(sent, { digits, basis: searchParams.get('basis') === 'true' })
      return { status: 200, body: JSON.parse(text) }
    } catch (error) {
      if (!(error instanceof DesignError)) throw error
      return { status: problemKinds[error.code].status, body: designProblem(error, operation.body as JsonSchema) }
    }
  }
}
