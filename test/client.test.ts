/** The typed client compiles in strict mode, refuses a wrong call at compile time, and talks to the running service. */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createClient, type Problem } from '../client/index.ts'
import { listening } from './support/service.ts'

const wiring = '/v1/coils/wiring'
const root = path.resolve(import.meta.dirname, '..')

let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening()
})
afterAll(() => service.app.close())

describe('client', () => {
  it('gives data with its type', async () => {
    const client = createClient({ baseUrl: service.url })
    const { data, error, response } = await client.POST('/v1/coils/wiring', {
      body: { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 },
      params: { query: { digits: 'full' } }
    })
    expect(error).toBeUndefined()
    expect(response.status).toBe(200)
    // The resource also has a drawing, which is text.
    const ohms: number[] = typeof data === 'object' ? data.result.loads.map(load => load.ohm) : []
    expect(ohms).toEqual([2, 8])
  })

  it('gives a refusal as a problem with its type', async () => {
    const client = createClient({ baseUrl: service.url })
    // @ts-expect-error a string is no number, and the compiler says so
    const { data, error } = await client.POST(wiring, { body: { driverCount: 2, coilsPerDriver: 1, coilOhm: '4' } })
    expect(data).toBeUndefined()
    const problem: Problem | undefined = error
    expect(problem?.code).toBe('invalid-request')
    expect(problem?.errors?.[0]?.pointer).toBe('/coilOhm')
  })

  it('knows which paths there are', async () => {
    const client = createClient({ baseUrl: service.url })
    // @ts-expect-error there is no such path
    expect((await client.POST('/v1/coils/wirings', { body: {} })).response.status).toBe(404)
  })

  it('asks by query and reads the catalogues', async () => {
    const client = createClient({ baseUrl: service.url })
    const query = { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }
    const { data } = await client.GET('/v1/coils/wiring', { params: { query } })
    expect(data?.result.loads).toHaveLength(2)
    const { data: problems } = await client.GET('/v1/problems')
    expect(problems?.problems.length).toBeGreaterThan(10)
  })

  it('sends the key it was given', async () => {
    const { createHash } = await import('node:crypto')
    const sha256 = createHash('sha256').update('a key').digest('hex')
    const closed = await listening({ apiKeys: [{ holder: 'shop', sha256 }] })
    const body = { driverCount: 1, coilsPerDriver: 1, coilOhm: 4 }
    const withKey = await createClient({ baseUrl: closed.url, apiKey: 'a key' }).POST('/v1/coils/wiring', { body })
    const without = await createClient({ baseUrl: closed.url }).POST('/v1/coils/wiring', { body })
    await closed.app.close()
    expect([withKey.response.status, without.response.status]).toEqual([200, 401])
  })

  it('builds into what the package exports', async () => {
    const outDir = mkdtempSync(path.join(tmpdir(), 'cabinbass-client-'))
    const tsc = path.join(root, 'node_modules/typescript/bin/tsc')
    execFileSync(process.execPath, [tsc, '-p', path.join(root, 'client/tsconfig.json'), '--outDir', outDir])
    const exported = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')).exports['./client']
    for (const target of Object.values<string>(exported)) {
      expect(existsSync(path.join(outDir, path.relative('./dist/client', target))), target).toBe(true)
    }
    rmSync(outDir, { recursive: true })
  })
})
