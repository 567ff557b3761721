/** The typed client compiles in strict mode, refuses a wrong call at compile time, and talks to the running service. */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createClient, type Problem } from '../client/index.ts'
import { version } from '../src/http/wire/answer/version.ts'
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

  it('is a package of its own: small, one dependency, strict for who uses it', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'cabinbass-client-'))
    const run = (file: string, args: readonly string[], cwd: string) =>
      execFileSync(file, args, { cwd, encoding: 'utf8', stdio: 'pipe' })
    const tar = run('npm', ['pack', '--silent', '--pack-destination', folder], path.join(root, 'client')).trim()
    expect(statSync(path.join(folder, tar)).size).toBeLessThan(50_000)
    const modules = path.join(folder, 'node_modules')
    const own = path.join(modules, 'cabinbass-client')
    mkdirSync(own, { recursive: true })
    run('tar', ['-xzf', tar, '--strip-components=1', '-C', own], folder)
    const { dependencies, version: ownVersion } = JSON.parse(readFileSync(path.join(own, 'package.json'), 'utf8'))
    expect([Object.keys(dependencies), ownVersion]).toEqual([['openapi-fetch'], version])
    expect(existsSync(path.join(own, 'README.md'))).toBe(true)
    for (const name of ['openapi-fetch', 'openapi-typescript-helpers'])
      symlinkSync(path.join(root, 'node_modules', name), path.join(modules, name))
    writeFileSync(path.join(folder, 'package.json'), '{"type":"module"}')
    const [, example = ''] = /```ts\n([\s\S]*?)```/.exec(readFileSync(path.join(own, 'README.md'), 'utf8')) ?? []
    writeFileSync(path.join(folder, 'use.ts'), example.replace('http://localhost:3000', service.url) + narrowing)
    const strict = ['--strict', '--exactOptionalPropertyTypes', '--noUncheckedIndexedAccess', '--skipLibCheck', 'false']
    const shape = ['--module', 'nodenext', '--target', 'es2022', '--lib', 'es2024,dom']
    const tsc = path.join(root, 'node_modules/typescript/bin/tsc')
    run(process.execPath, [tsc, ...strict, ...shape, 'use.ts'], folder)
    rmSync(folder, { recursive: true })
  })
})

/** What the words `status` and `outcome` are for: the compiler finds the answer behind them. */
const narrowing = `
import { answerIn, batchCall, type AnswerOf, type Schemas } from 'cabinbass-client'
export const boxOf = ({ result }: AnswerOf<'planSystem'>): number | undefined => {
  const box = result.parts?.box
  return box?.status === 'done' ? box.answer.result.volume.netL : undefined
}
export const call = batchCall('wireCoils', { driverCount: 1, coilsPerDriver: 2, coilOhm: 4 })
export const loads = (item: Schemas['BatchItem']) => answerIn(item, 'wireCoils')?.result.loads.map(({ ohm }) => ohm)
`
