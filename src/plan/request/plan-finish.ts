/** How the box is lined and covered, where the caller does not say. */
import type { FinishRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { planDefaults } from './defaults.ts'

export interface Finish {
  readonly lined: boolean
  readonly covered: boolean
}

export const resolvedFinish = (finish: FinishRequest | undefined, assumed: Assumptions): Finish => ({
  lined: assumed.take(finish?.lined, 'finish.lined', planDefaults.lined),
  covered: assumed.take(finish?.covered, 'finish.covered', planDefaults.covered)
})
