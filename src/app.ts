/** Builds the service without listening, so that tests, the demo and the contract script mount the same app. */
import Fastify, { type FastifyBaseLogger, type FastifyInstance } from 'fastify'
import { registerDocs } from './http/docs/docs-routes.ts'
import { registerFront } from './http/front/front-routes.ts'
import { apiCatalogue } from './http/openapi/api-catalogue.ts'
import { contractRoutes, watchRoutes } from './http/openapi/contract-routes.ts'
import { exampleRoutes } from './http/openapi/example-routes.ts'
import { schemaRoutes } from './http/openapi/schema-routes.ts'
import { operations } from './http/operations.ts'
import { identifyCallers, requireKeys } from './http/serving/api-keys.ts'
import { registerBatches } from './http/serving/batch/batch-routes.ts'
import { registerBodies } from './http/serving/body.ts'
import { registerCatalogues } from './http/serving/catalogue/catalogue-routes.ts'
import { registerHealth } from './http/serving/health.ts'
import { registerHost } from './http/serving/host.ts'
import { registerLimits } from './http/serving/limits.ts'
import { refuseOtherMethods, watchMethods } from './http/serving/methods.ts'
import { registerObservability } from './http/serving/observability.ts'
import { answerCall, registerOperations } from './http/serving/operations/operation-routes.ts'
import { registerQueryForms } from './http/serving/operations/query-routes.ts'
import { registerValidation } from './http/serving/operations/validation.ts'
import { registerOverload } from './http/serving/overload.ts'
import { registerProblems } from './http/serving/problems.ts'
import { registerBasePath } from './http/serving/representation/base-path.ts'
import { registerCompression } from './http/serving/representation/compression.ts'
import { registerSecurity } from './http/serving/security.ts'
import { serverOptions } from './http/serving/server.ts'
import { defaultSettings, type Settings } from './http/serving/settings.ts'
import { registerUnfinished } from './http/serving/unfinished.ts'
import { version } from './http/wire/answer/version.ts'
import { type Work, workPool } from './http/work/pool.ts'
import { warmUp } from './http/work/warm-up.ts'

export interface AppOptions extends Partial<Settings> {
  /** Without one the service is silent. */
  readonly log?: FastifyBaseLogger
  /** Where heavy calls run; threads of the app's own where absent. */
  readonly work?: Work
}

export async function buildApp({ log, work: elsewhere, ...given }: AppOptions = {}): Promise<FastifyInstance> {
  const settings: Settings = { ...defaultSettings(), ...given }
  const app = Fastify(serverOptions(settings, log))
  const work = elsewhere ?? workPool(settings, err => app.log.debug({ err }, 'a worker spoke to nobody'))
  app.addHook('onClose', work.close)
  app.decorate('warmUp', () => warmUp(app, operations, work))

  registerBasePath(app, settings.basePath)
  registerValidation(app)
  registerBodies(app)
  registerProblems(app)
  const methods = watchMethods(app)
  await registerSecurity(app, settings)
  await registerCompression(app)
  identifyCallers(app, settings)
  await registerLimits(app, settings)
  registerHost(app)
  registerUnfinished(app)
  requireKeys(app, settings)
  await registerOverload(app, settings)
  registerHealth(app)
  const observed = registerObservability(app, settings, work)

  await watchRoutes(app, version)
  const answer = observed.counted(answerCall(work))
  registerOperations(app, operations, answer)
  registerQueryForms(app, operations, answer, settings.apiKeys.length === 0)
  registerBatches(app, operations, { work, observed, settings })
  registerCatalogues(app)
  contractRoutes(app)
  schemaRoutes(app)
  apiCatalogue(app)
  exampleRoutes(app, operations, work)
  registerDocs(app, settings)
  registerFront(app, answer)
  refuseOtherMethods(app, methods)
  return app
}

declare module 'fastify' {
  interface FastifyInstance {
    /** Makes the first calls fast; for after listening. */
    readonly warmUp: () => Promise<void>
  }
}
