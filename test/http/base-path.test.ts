/** Behind a gateway that shows the service under a path of its own, every address that leaves leads back through the gateway. */
import { brotliDecompressSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { buildApp } from '../../src/app.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { readSettings } from '../../src/http/serving/settings.ts'
import { coils, quiet } from '../support/service.ts'
import { inThisProcess } from '../support/work-here.ts'

const base = '/shop/bass'
let app: Awaited<ReturnType<typeof buildApp>>
beforeAll(async () => {
  app = await buildApp({ ...quiet, basePath: base, work: inThisProcess })
})
afterAll(() => app.close())

const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers })
const post = (url: string, payload: object) => app.inject({ method: 'POST', url, payload })
/** Addresses of this host that a page leads to or sends to. */
const addressesOf = (page: string) =>
  [...page.matchAll(/ (?:href|src|action|data-path)="(\/[^"#]*)/g)].map(([, address = '']) =>
    address.replaceAll('&amp;', '&')
  )

describe('a base path', () => {
  it('may be left on what arrives or be taken off', async () => {
    const answers = [await post(coils.url, coils.body), await post(base + coils.url, coils.body)]
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([200, 200])
    expect(answers[1]?.body).toBe(answers[0]?.body)
    expect((await get(base, { accept: 'text/html' })).statusCode).toBe(200)
    expect((await get(`${base}?form=html`)).statusCode).toBe(200)
    expect((await get(`${base}ment/v1/coils/wiring`)).statusCode).toBe(404)
  })

  it('stands before every address of a page, and each leads somewhere', async () => {
    const pages = [await get('/', { accept: 'text/html' }), await get('/docs'), await get('/docs/reference')]
    const addresses = new Set(pages.flatMap(({ body }) => addressesOf(body)))
    expect([...addresses].filter(address => !address.startsWith(`${base}/`) && address !== base)).toEqual([])
    const asked = [...addresses].filter(address => !address.includes('/v1/') && !address.includes('/plan'))
    expect(asked.length).toBeGreaterThan(4)
    for (const address of asked) expect((await get(address)).statusCode, address).toBe(200)
    expect(pages[1]?.body).toContain(`http://localhost:80${base}/v1/plans`)
  })

  it('stands before the kinds of problems, of a call and of a part of a plan', async () => {
    const refused = (await post(coils.url, { driverCount: 2 })).json()
    expect(refused.type).toBe(`${base}/v1/problems/invalid-request`)
    expect((await get(refused.type)).statusCode).toBe(200)
    const { driver, ...plan } = estatePlan
    const { fsHz: _resonance, ...sheet } = driver.sheet as { fsHz?: number }
    const answer = await post('/v1/plans', { ...plan, driver: { ...driver, sheet } })
    const kinds = [...answer.body.matchAll(/"type":"(\/[^"]*)"/g)].map(([, kind = '']) => kind)
    expect(kinds.length).toBeGreaterThan(0)
    expect(kinds.filter(kind => !kind.startsWith(`${base}/v1/problems/`))).toEqual([])
  })

  it('is the server of the contract, in each form of it', async () => {
    const yaml = await get('/openapi.yaml')
    const json = await get('/openapi.json')
    expect(parse(yaml.body).servers).toEqual([{ url: base, description: 'This service' }])
    expect(json.json().servers).toEqual([{ url: base, description: 'This service' }])
    for (const { body } of [yaml, json]) expect(body).not.toMatch(/\]\(\/(?!shop\/bass\/)/)
    const { rawPayload } = await get('/openapi.yaml', { 'accept-encoding': 'br' })
    expect(brotliDecompressSync(rawPayload).toString()).toBe(yaml.body)
    const alone = await buildApp(quiet)
    expect((await alone.inject('/openapi.yaml')).headers.etag).not.toBe(yaml.headers.etag)
    await alone.close()
  })

  it('stands before links for programs', async () => {
    const { links } = (await get('/', { accept: 'application/json' })).json()
    expect(links.every(({ href }: { href: string }) => href.startsWith(`${base}/`))).toBe(true)
    const catalogue = await get('/.well-known/api-catalog')
    expect(catalogue.headers.link).toBe(`<${base}/.well-known/api-catalog>; rel="api-catalog"`)
    expect(catalogue.body.match(/"(href|anchor)":"\/shop\/bass\//g)).toHaveLength(5)
    expect(catalogue.body).not.toMatch(/"(href|anchor)":"\/(?!shop\/bass\/)/)
  })

  it('leaves what callers wrote as it stands', async () => {
    const name = 'see ](/docs) or href="/plan" or "type":"/v1/problems/x"'
    const amplifiers = [{ name, powerW: 500, class: 'D' }]
    const { result } = (await post('/v1/supply/current', { systemVoltageV: 12, amplifiers })).json()
    expect(JSON.stringify(result)).toContain(JSON.stringify(name))
  })

  it('is read as a path and as nothing else', () => {
    for (const wrong of ['bass', '/bass/', '/', '//evil.example', '/a/../b', '/a b', '/a?b', '/<script>']) {
      expect(readSettings({ BASE_PATH: wrong }), wrong).toMatchObject({ faults: [{ variable: 'BASE_PATH' }] })
    }
    expect(readSettings({ BASE_PATH: '/shop/v2.1' })).toMatchObject({ settings: { basePath: '/shop/v2.1' } })
  })
})
