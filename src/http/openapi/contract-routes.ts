/** The contract, derived from the routes: /openapi.json and /openapi.yaml. */
import type { FastifyInstance } from 'fastify'
import { builtText, isBuilt } from '../serving/representation/fixed-file.ts'
import { type FixedText, fixedText, sendFixed } from '../serving/representation/fixed-text.ts'

const info = {
  title: 'Cabinbass',
  summary: 'From data sheets to a bass system that can be built and trusted',
  description:
    'Stateless calculations for real bass in a car: enclosure, ports, panels, coils, amplifier, current, cable, fuse, signal and the whole plan. Every figure names its source, every danger its caution.',
  contact: { name: 'Whoever runs this service' },
  license: { name: 'Proprietary', identifier: 'LicenseRef-Proprietary' }
}

const apiKey = {
  type: 'apiKey',
  in: 'header',
  name: 'X-Api-Key',
  description: 'Only where the operator has keys in use; without keys every call is open.'
} as const

/** Watches the routes; a build has done so already, and needs the generator no longer. */
export async function watchRoutes(app: FastifyInstance, version: string): Promise<void> {
  if (isBuilt()) return
  const { default: swagger } = await import('@fastify/swagger')
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { ...info, version },
      servers: [{ url: '/', description: 'This service' }],
      components: { securitySchemes: { apiKey } },
      security: [{}, { apiKey: [] }]
    },
    convertConstToEnum: false,
    refResolver: { buildLocalReference: (json, _base, _fragment, index) => String(json.$id ?? `def-${index}`) }
  })
}

interface Contract {
  readonly json: string
  readonly yaml: string
}

declare module 'fastify' {
  interface FastifyInstance {
    /** Made once, when somebody first asks. */
    readonly contract: () => Promise<Contract>
  }
}

async function contractOf(app: FastifyInstance): Promise<Contract> {
  const [json, yaml] = [builtText('/openapi.json'), builtText('/openapi.yaml')]
  if (json !== undefined && yaml !== undefined) return { json, yaml }
  const { contractDocument } = await import('./contract-document.ts')
  const { yamlText } = await import('./yaml-text.ts')
  const document = contractDocument(JSON.parse(JSON.stringify(app.swagger())))
  return { json: JSON.stringify(document), yaml: yamlText(document) }
}

export function contractRoutes(app: FastifyInstance): void {
  let made: Promise<Contract> | undefined
  app.decorate('contract', () => {
    made ??= contractOf(app)
    return made
  })
  const forms = { json: 'application/json; charset=utf-8', yaml: 'application/yaml; charset=utf-8' } as const
  for (const form of ['json', 'yaml'] as const) {
    const path = `/openapi.${form}`
    let kept: FixedText | undefined
    app.get(path, { schema: { hide: true } }, async (request, reply) => {
      kept ??= fixedText(path, (await app.contract())[form])
      return sendFixed(request, reply, kept, { shared: true, type: forms[form] })
    })
  }
}
