/** Builds the service without listening, so that tests, the demo and the contract script mount the same app. */
import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import { operations } from './http/operations.ts'
import { contractRoutes, registerContract } from './http/plugins/contract.ts'
import { refuseOtherMethods, watchMethods } from './http/plugins/methods.ts'
import { registerOperations } from './http/plugins/operation-routes.ts'
import { registerProblems } from './http/plugins/problems.ts'
import { registerValidation } from './http/plugins/validation.ts'
import { version } from './http/version.ts'

export interface AppOptions {
  readonly logger?: FastifyServerOptions['logger']
}

export async function buildApp({ logger = false }: AppOptions = {}): Promise<FastifyInstance> {
  const app = Fastify({ logger, bodyLimit: 256 * 1024 })
  app.removeAllContentTypeParsers()
  app.addContentTypeParser('application/json', { parseAs: 'string' }, app.getDefaultJsonParser('error', 'error'))
  registerValidation(app)
  registerProblems(app)
  const methods = watchMethods(app)
  await registerContract(app, version)
  registerOperations(app, operations, (operation, request, options) => operation.answerText(request, options))
  contractRoutes(app)
  refuseOtherMethods(app, methods)
  return app
}
