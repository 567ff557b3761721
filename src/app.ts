/** Builds the service without listening, so that tests, the demo and the contract script mount the same app. */
import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import { operations } from './http/operations.ts'
import { identifyCallers, requireKeys } from './http/plugins/api-keys.ts'
import { registerBatches } from './http/plugins/batch-routes.ts'
import { registerBodies } from './http/plugins/body.ts'
import { registerCatalogues } from './http/plugins/catalogue-routes.ts'
import { contractRoutes, registerContract } from './http/plugins/contract.ts'
import { registerDocs } from './http/plugins/docs-routes.ts'
import { registerHealth } from './http/plugins/health.ts'
import { registerHost } from './http/plugins/host.ts'
import { registerLimits } from './http/plugins/limits.ts'
import { refuseOtherMethods, watchMethods } from './http/plugins/methods.ts'
import { registerObservability } from './http/plugins/observability.ts'
import { answerCall, exampleAnswer, registerOperations } from './http/plugins/operation-routes.ts'
import { registerOverload } from './http/plugins/overload.ts'
import { registerProblems } from './http/plugins/problems.ts'
import { registerQueryForms } from './http/plugins/query-routes.ts'
import { registerSecurity } from './http/plugins/security.ts'
import { serverOptions } from './http/plugins/server.ts'
import { registerUnfinished } from './http/plugins/unfinished.ts'
import { registerValidation } from './http/plugins/validation.ts'
import { defaultSettings, type Settings } from './http/settings.ts'
import { version } from './http/version.ts'
import { workPool } from './http/work/pool.ts'

export interface AppOptions extends Partial<Settings> {
  readonly logger?: NonNullable<FastifyServerOptions['logger']>
}

export async function buildApp({ logger = false, ...given }: AppOptions = {}): Promise<FastifyInstance> {
  const settings: Settings = { ...defaultSettings(), ...given }
  const app = Fastify(serverOptions(settings, logger))
  const work = workPool(settings, err => app.log.debug({ err }, 'a worker spoke to nobody'))
  app.addHook('onClose', work.close)
  app.addHook('onListen', async () => work.start())

  registerValidation(app)
  registerBodies(app)
  registerProblems(app)
  const methods = watchMethods(app)
  await registerSecurity(app, settings)
  identifyCallers(app, settings)
  await registerLimits(app, settings)
  registerHost(app)
  registerUnfinished(app)
  requireKeys(app, settings)
  await registerOverload(app, settings)
  registerHealth(app)
  const observed = registerObservability(app, settings, work)

  await registerContract(app, version)
  const answer = observed.counted(answerCall(work))
  registerOperations(app, operations, answer)
  registerQueryForms(app, operations, answer, settings.apiKeys.length === 0)
  registerBatches(app, operations, { work, observed, settings })
  registerCatalogues(app)
  contractRoutes(app, exampleAnswer(work))
  registerDocs(app, settings)
  refuseOtherMethods(app, methods)
  return app
}
