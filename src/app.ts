/** Builds the service without listening, so that tests, the demo and the contract script mount the same app. */
import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import { operations } from './http/operations.ts'
import { identifyCallers, requireKeys } from './http/plugins/api-keys.ts'
import { registerBodies } from './http/plugins/body.ts'
import { contractRoutes, registerContract } from './http/plugins/contract.ts'
import { registerHealth } from './http/plugins/health.ts'
import { registerLimits } from './http/plugins/limits.ts'
import { refuseOtherMethods, watchMethods } from './http/plugins/methods.ts'
import { answerCall, registerOperations } from './http/plugins/operation-routes.ts'
import { registerOverload } from './http/plugins/overload.ts'
import { registerProblems } from './http/plugins/problems.ts'
import { registerSecurity } from './http/plugins/security.ts'
import { serverOptions } from './http/plugins/server.ts'
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
  requireKeys(app, settings)
  await registerOverload(app, settings)
  registerHealth(app)

  await registerContract(app, version)
  registerOperations(app, operations, answerCall(work))
  contractRoutes(app)
  refuseOtherMethods(app, methods)
  return app
}
