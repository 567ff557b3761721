/** The contract, derived from the routes: /openapi.json and /openapi.yaml. */
import swagger from '@fastify/swagger'
import type { FastifyInstance } from 'fastify'
import { stringify } from 'yaml'
import { contractDocument } from '../contract-document.ts'

export async function registerContract(app: FastifyInstance, version: string): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Cabinbass',
        version,
        summary: 'From data sheets to a bass system that can be built and trusted',
        description:
          'Stateless calculations for real bass in a car: enclosure, ports, panels, coils, amplifier, current, cable, fuse, signal and the whole plan. Every figure names its source, every danger its caution.',
        license: { name: 'Proprietary', url: '/docs' }
      },
      servers: [{ url: '/', description: 'This service' }],
      components: {
        securitySchemes: {
          apiKey: {
            type: 'apiKey',
            in: 'header',
            name: 'X-Api-Key',
            description: 'Only where the operator has keys in use; without keys every call is open.'
          }
        }
      },
      security: [{}, { apiKey: [] }]
    },
    convertConstToEnum: false,
    refResolver: { buildLocalReference: (json, _base, _fragment, index) => String(json.$id ?? `def-${index}`) }
  })
}

export function contractRoutes(app: FastifyInstance): void {
  let texts: { json: string; yaml: string } | undefined
  const contract = () => {
    texts ??= contractTexts(app)
    return texts
  }
  app.get('/openapi.json', { schema: { hide: true } }, (_request, reply) =>
    reply.type('application/json').send(contract().json)
  )
  app.get('/openapi.yaml', { schema: { hide: true } }, (_request, reply) =>
    reply.type('application/yaml').send(contract().yaml)
  )
}

export function contractTexts(app: FastifyInstance): { readonly json: string; readonly yaml: string } {
  const document = contractDocument(JSON.parse(JSON.stringify(app.swagger())))
  return { json: JSON.stringify(document), yaml: stringify(document, { aliasDuplicateObjects: false, lineWidth: 0 }) }
}
