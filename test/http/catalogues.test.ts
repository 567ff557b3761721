import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { cautionCatalogue } from '../../src/contract/cautions/catalogue.ts'
import { sources } from '../../src/contract/sources/source.ts'
import { referenceTables } from '../../src/http/reference/reference-tables.ts'
import { problemKinds } from '../../src/http/wire/problem/problem-kinds.ts'
import { here } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await buildApp(here)
})
afterAll(() => app.close())

describe('catalogues', () => {
  it('list every problem and every caution, each under the path that `type` names', async () => {
    const { problems } = (await app.inject('/v1/problems')).json()
    expect(problems.map(({ code }: { code: string }) => code)).toEqual(Object.keys(problemKinds).sort())
    for (const listed of problems) expect((await app.inject(listed.type)).json()).toEqual(listed)
    const { cautions } = (await app.inject('/v1/cautions')).json()
    expect(cautions.map(({ code }: { code: string }) => code)).toEqual(Object.keys(cautionCatalogue).sort())
    for (const listed of cautions) {
      expect(listed.meaning.length, listed.code).toBeGreaterThan(20)
      expect((await app.inject(`/v1/cautions/${listed.code}`)).json()).toEqual(listed)
    }
  })

  it('a problem that leaves leads to its documentation', async () => {
    const refused = (await app.inject({ method: 'POST', url: '/v1/coils/wiring', payload: {} })).json()
    expect((await app.inject(refused.type)).json()).toMatchObject({ code: refused.code, status: refused.status })
  })

  it('know nothing of an unknown code, nor of names that every object has', async () => {
    for (const code of ['nothing', 'constructor', '__proto__', 'toString']) {
      for (const path of ['/v1/problems/', '/v1/cautions/'])
        expect((await app.inject(path + code)).statusCode).toBe(404)
    }
  })

  it('every table is cacheable and conditional', async () => {
    for (const { name } of referenceTables) {
      const first = await app.inject(`/v1/reference/${name}`)
      expect(first.statusCode).toBe(200)
      expect(first.headers['cache-control']).toMatch(/^public, max-age=/)
      expect(first.json().rows.length).toBeGreaterThan(3)
      const again = await app.inject({
        url: `/v1/reference/${name}`,
        headers: { 'if-none-match': String(first.headers.etag) }
      })
      expect(again.statusCode).toBe(304)
    }
    expect((await app.inject('/v1/reference/sources')).json().rows).toHaveLength(Object.keys(sources).length)
  })
})
