/** The contract as its readers see it, the pages of the documentation for one. */
import type { JsonSchema } from '../../contract/field/component.ts'

interface Referable {
  readonly $ref?: string
}

interface MediaType {
  readonly schema?: JsonSchema
  readonly examples?: Readonly<Record<string, { readonly summary: string; readonly value: unknown }>>
}

interface ContractParameter extends Referable {
  readonly name: string
  readonly in: string
  readonly required?: boolean
  readonly description?: string
  readonly schema: JsonSchema
}

interface ContractResponse extends Referable {
  readonly description?: string
  readonly content?: Readonly<Record<string, MediaType>>
}

export interface ContractOperation {
  readonly operationId?: string
  readonly summary?: string
  readonly description?: string
  readonly tags?: readonly string[]
  readonly parameters?: readonly ContractParameter[]
  readonly requestBody?: { readonly content: Readonly<Record<string, MediaType>> }
  readonly responses: Readonly<Record<string, ContractResponse>>
}

export interface ContractDocument {
  readonly paths: Readonly<Record<string, Readonly<Record<string, ContractOperation>>>>
  readonly components: {
    readonly schemas: Readonly<Record<string, JsonSchema>>
    readonly parameters?: Readonly<Record<string, ContractParameter>>
    readonly responses?: Readonly<Record<string, ContractResponse>>
  }
}

const nameOf = ({ $ref = '' }: Referable) => $ref.split('/').pop() ?? ''

/** The operation with its shared parameters and responses in their places. */
export function spelledOut({ components }: ContractDocument, operation: ContractOperation): ContractOperation {
  const { parameters = [], responses } = operation
  return {
    ...operation,
    parameters: parameters.map(parameter => components.parameters?.[nameOf(parameter)] ?? parameter),
    responses: Object.fromEntries(
      Object.entries(responses).map(([status, response]) => [
        status,
        components.responses?.[nameOf(response)] ?? response
      ])
    )
  }
}
