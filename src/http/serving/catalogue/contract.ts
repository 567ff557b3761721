/** The contract, derived from the routes: /openapi.json and /openapi.yaml. */
import swagger from '@fastify/swagger'
import type { FastifyInstance } from 'fastify'
import { stringify } from 'yaml'
import { type ContractDocument, contractDocument, type ExampleAnswer } from '../contract-document.ts'
import { type FixedText, fixedText, sendCacheable } from '../etag.ts'

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

interface Contract {
  readonly document: ContractDocument
  readonly json: string
  readonly yaml: string
}

declare module 'fastify' {
  interface FastifyInstance {
    /** Made once, when somebody first asks. */
    readonly contract: () => Promise<Contract>
  }
}

async function contractOf(app: FastifyInstance, answer: ExampleAnswer): Promise<Contract> {
  const document = await contractDocument(JSON.parse(JSON.stringify(app.swagger())), answer)
  const yaml = stringify(document, { aliasDuplicateObjects: false, lineWidth: 0 })
  return { document, json: JSON.stringify(document), yaml }
}

export function contractRoutes(app: FastifyInstance, answer: ExampleAnswer): void {
  let made: Promise<Contract> | undefined
  app.decorate('contract', () => {
    made ??= contractOf(app, answer)
    return made
  })
  const forms = { json: 'application/json; charset=utf-8', yaml: 'application/yaml; charset=utf-8' } as const
  for (const form of ['json', 'yaml'] as const) {
    const path = `/openapi.${form}`
    let kept: FixedText | undefined
    app.get(path, { schema: { hide: true } }, async (request, reply) => {
      kept ??= fixedText(path, (await app.contract())[form])
      const { tag, bytes } = kept
      return sendCacheable(request, reply, { tag, shared: true, type: forms[form] }, () => bytes)
    })
  }
}
