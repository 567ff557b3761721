/** The examples for integrators do what they say, against the running service; the shop's page in a browser. */
import { existsSync, readFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sweep } from '../scripts/examples/design-sweep.ts'
import { phoneBackend } from '../scripts/examples/phone-backend.ts'
import { present } from '../src/domain/present.ts'
import { hatchbackPlan } from '../src/http/operations/systems/plans-examples.ts'
import { listening } from './support/service.ts'

const executablePath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)

async function opened(server: Server): Promise<string> {
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`
}

function halfPowerHz(fcHz: number, qtc: number): number {
  const a = 1 / (2 * qtc ** 2) - 1
  return fcHz * Math.sqrt(a + Math.sqrt(a ** 2 + 1))
}

/** The files of the shop, as any server of files gives them. */
const shop = createServer((request, response) => {
  const name = new URL(request.url ?? '/', 'http://shop').pathname.slice(1)
  const type = { html: 'text/html', css: 'text/css', js: 'text/javascript' }[name.split('.').pop() ?? '']
  const file = new URL(`../scripts/examples/shop-page/${name}`, import.meta.url)
  if (type === undefined || !existsSync(file)) return response.writeHead(404).end()
  return response.writeHead(200, { 'content-type': type }).end(readFileSync(file))
})

let service: Awaited<ReturnType<typeof listening>>
let shopUrl: string
beforeAll(async () => {
  shopUrl = await opened(shop)
  service = await listening({ corsOrigins: [shopUrl], workTimeoutMs: 120_000 })
})
afterAll(async () => {
  shop.close()
  await service.app.close()
})

describe('the design sweep', () => {
  it('gives the half-power frequency of each closed box', async () => {
    const rows = await sweep(service.url, [20, 40, 80])
    expect(rows.map(({ volumeL }) => volumeL)).toEqual([20, 40, 80])
    const [fsHz, qts, vasL] = [28, (5.2 * 0.46) / (5.2 + 0.46), 62]
    for (const { volumeL, f3Hz, qtc } of rows) {
      // R. H. Small, "Closed-Box Loudspeaker Systems", JAES 20 (1972) (from memory), for a box without losses.
      const rise = Math.sqrt(1 + vasL / volumeL)
      expect(qtc).toBeCloseTo(qts * rise, 1)
      expect(f3Hz).toBeCloseTo(halfPowerHz(fsHz * rise, qts * rise), 0)
    }
  })
})

describe('the back end of an app', () => {
  it('passes the compact plan on, keeps it by its digest, and a refusal with its pointer', async () => {
    const backend = phoneBackend({ service: service.url })
    const url = await opened(backend)
    const ask = (body: unknown) => fetch(`${url}/plans`, { method: 'POST', body: JSON.stringify(body) })
    const first = await ask(hatchbackPlan)
    expect(first.status).toBe(200)
    const text = await first.text()
    expect(JSON.parse(text).summary.verdict).toMatch(/^(ready|take-care)$/)
    expect(await (await fetch(url + first.headers.get('location'))).text()).toBe(text)
    const refused = await ask({ ...hatchbackPlan, driverCount: '2' })
    expect([refused.status, (await refused.json()).errors[0].pointer]).toEqual([400, '/driverCount'])
    expect((await fetch(`${url}/plans/nothing`)).status).toBe(404)
    backend.close()
  })
})

describe.skipIf(executablePath === undefined)('the page of a shop in Chromium', () => {
  for (const width of [1280, 360]) {
    it(`says whether an amplifier fits, with its cautions and the wiring, at ${width} px`, async () => {
      const browser = await chromium.launch({
        ...present({ executablePath }),
        args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage']
      })
      const page = await browser.newPage({ viewport: { width, height: 800 } })
      const logged: string[] = []
      page.on('console', message => logged.push(message.text()))
      await page.goto(`${shopUrl}/index.html?service=${encodeURIComponent(service.url)}`)
      await page.getByRole('button').click()
      const picture = page.locator('#wiring')
      await picture.waitFor({ state: 'visible' })
      // Two coils of 4 Ω on one channel that takes 2 Ω: in parallel.
      expect(await page.locator('#verdict').textContent()).toMatch(/^2 Ω, good: /)
      await page.waitForFunction('document.querySelector("#wiring").naturalWidth > 100')
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0)
      expect(logged).toEqual([])
      await browser.close()
    })
  }
})
