/** Designs side by side as a caller sees them: pointers of faults, the page and the curves. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { compareDesigns } from '../../src/http/operations/enclosures/design-comparison.ts'
import { here } from '../support/service.ts'

const { request } = compareDesigns.examples.volumes as { readonly request: Readonly<Record<string, unknown>> }
const [first, second] = request.designs as readonly Readonly<Record<string, unknown>>[]
let app: Awaited<ReturnType<typeof buildApp>>
beforeAll(async () => {
  app = await buildApp(here)
})
afterAll(() => app.close())
const call = (payload: object, accept = 'application/json') =>
  app.inject({ method: 'POST', url: '/v1/designs/compare', payload, headers: { accept } })

describe('/v1/designs/compare', () => {
  it('points at the design that is at fault', async () => {
    const source = { voltageV: 30, powerW: 100 }
    const answer = await call({ ...request, designs: [first, { ...second, source }] })
    expect(answer.statusCode).toBe(422)
    expect(answer.json().errors[0].pointer).toMatch(/^\/designs\/1\/source/)
    expect((await call({ ...request, designs: [first] })).statusCode).toBe(400)
  })

  it('shows every design on the page, names escaped, with no script and nothing fetched', async () => {
    const designs = [{ ...first, name: '<b>one</b>' }, second]
    const { body, headers } = await call({ ...request, designs }, 'text/html')
    expect(headers['content-security-policy']).toContain("default-src 'none'")
    expect(body).not.toContain('<b>one</b>')
    expect(body).toContain('&lt;b&gt;one&lt;/b&gt;')
    expect(body).not.toMatch(/<script|src=|url\(http/)
    // a curve of its own in each of the six charts
    expect(body.match(/class="beside beside-0"/g)).toHaveLength(6)
  })

  it('draws as many curves as there are designs, up to eight, told apart by colour and dash', async () => {
    const designs = Array.from({ length: 8 }, (_, index) => ({ ...first, limits: undefined, name: `design ${index}` }))
    const { body, statusCode } = await call({ ...request, designs }, 'image/svg+xml')
    expect(statusCode).toBe(200)
    const looks = new Set(
      [...body.matchAll(/<path[^>]*class="curve-\d"[^>]*>/g)].map(
        ([path]) => `${/stroke="([^"]*)"/.exec(path)?.[1]} ${/stroke-dasharray="([^"]*)"/.exec(path)?.[1] ?? ''}`
      )
    )
    expect(looks.size).toBe(8)
  })
})
