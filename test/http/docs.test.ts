/** The documentation in a browser: quiet console, nothing from outside, strict policy, readable on a phone, and it works. */
import { existsSync } from 'node:fs'
import axe from 'axe-core'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { listening } from '../support/service.ts'

const executablePath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)
let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening()
})
afterAll(() => service.app.close())

describe('documentation', () => {
  for (const path of ['/docs', '/docs/reference']) {
    it(`${path} allows nothing but itself`, async () => {
      const { headers, body } = await service.app.inject(path)
      const policy = String(headers['content-security-policy'])
      expect(policy).toContain("default-src 'none'")
      expect(policy).not.toMatch(/unsafe|\*|https?:/)
      expect(body).not.toMatch(/<script(?! src="\/docs\/try-it\.js" defer>)|\son\w+=|style="|javascript:/)
      expect(body).not.toMatch(/(src|href)="(https?:)?\/\//)
    })

    it(`${path} has one target for each of its links`, async () => {
      const { body } = await service.app.inject(path)
      const ids = [...body.matchAll(/\sid="([^"]+)"/g)].map(match => match[1])
      expect(ids.length).toBe(new Set(ids).size)
      const targets = [...body.matchAll(/href="#([^"]+)"/g)].map(match => match[1])
      expect(targets.filter(target => !ids.includes(target))).toEqual([])
    })
  }

  it('leads from the guide only to operations there are', async () => {
    const { body: guide } = await service.app.inject('/docs')
    const { body: reference } = await service.app.inject('/docs/reference')
    const targets = [...guide.matchAll(/href="\/docs\/reference#([^"]+)"/g)].map(match => match[1])
    expect(targets.length).toBeGreaterThan(3)
    for (const target of targets) expect(reference).toContain(`<article id="${target}">`)
  })

  it('documents every operation of the contract', async () => {
    const { body } = await service.app.inject('/docs/reference')
    const { paths } = JSON.parse((await service.app.contract()).json)
    for (const methods of Object.values<Record<string, { operationId: string }>>(paths)) {
      for (const { operationId } of Object.values(methods)) expect(body).toContain(`<article id="${operationId}">`)
    }
  })

  it('travels in at most 300 kB', async () => {
    const headers = { 'accept-encoding': 'gzip' }
    expect((await service.app.inject({ url: '/docs/reference', headers })).rawPayload.length).toBeLessThan(300_000)
  })

  it('starts with the whole job', async () => {
    const { body } = await service.app.inject('/docs/reference')
    expect(/<article id="([^"]+)">/.exec(body)?.[1]).toBe('planSystem')
  })

  it('escapes whatever a Host header brings', async () => {
    const { body } = await service.app.inject({ url: '/docs', headers: { host: '"><img src=x>' } })
    expect(body).not.toContain('<img')
  })

  it.skipIf(executablePath !== undefined)('was not tried in a browser: no Chromium here', () => {})
})

describe.skipIf(executablePath === undefined)('documentation in Chromium', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: String(executablePath), args: ['--no-sandbox'] })
  })
  afterAll(() => browser.close())

  async function opened(path: string, width: number): Promise<{ page: Page; complaints: string[] }> {
    const page = await browser.newPage({ viewport: { width, height: 740 } })
    const complaints: string[] = []
    page.on('console', message => complaints.push(`${message.type()} ${message.text()}`))
    page.on('pageerror', error => complaints.push(`error ${error.message}`))
    page.on('request', request => {
      if (!request.url().startsWith(service.url) && !request.url().startsWith('data:'))
        complaints.push(`asks ${request.url()}`)
    })
    await page.goto(service.url + path, { waitUntil: 'load' })
    return { page, complaints }
  }

  for (const [path, width] of [
    ['/docs', 360],
    ['/docs', 1280],
    ['/docs/reference', 360],
    ['/docs/reference', 1280]
  ] as const) {
    it(`${path} at ${width} px has a quiet console and no sideways scrolling`, async () => {
      const { page, complaints } = await opened(path, width)
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width)
      expect(complaints).toEqual([])
      await page.close()
    })
  }

  it('the guide has no fault that an accessibility checker finds', async () => {
    const { page } = await opened('/docs', 360)
    await page.evaluate(axe.source)
    const violations = await page.evaluate(`axe.run(document, { resultTypes: ['violations'] })
      .then(found => found.violations.map(({ id, nodes }) => id + ' ' + nodes[0].html.slice(0, 200)))`)
    expect(violations).toEqual([])
    await page.close()
  })

  it('opens the object that a link leads to', async () => {
    const { page, complaints } = await opened('/docs/reference', 360)
    const list = page.locator('#schema-CoilWiringRequest details')
    expect(await list.getAttribute('open')).toBeNull()
    await page.locator('#wireCoils a[href="#schema-CoilWiringRequest"]').first().click()
    await page.locator('#schema-CoilWiringRequest details[open] table').waitFor()
    expect(complaints).toEqual([])
    await page.close()
  })

  it('sends what stands in the form and shows the answer and the refusal as text', async () => {
    const { page, complaints } = await opened('/docs/reference', 360)
    const form = page.locator('#wireCoils form')
    await form.locator('button').click()
    await form.locator('output pre').waitFor()
    expect(await form.locator('output p').textContent()).toMatch(/^200 application\/json/)
    expect(JSON.parse(String(await form.locator('output pre').textContent())).result.loads.length).toBeGreaterThan(0)
    await form.locator('textarea').fill('{"coilOhm":"<img src=x onerror=alert(1)>"}')
    await form.locator('button').click()
    await page.waitForFunction(`document.querySelector('#wireCoils output p')?.textContent.startsWith('400')`)
    expect(await form.locator('output img').count()).toBe(0)
    expect(complaints.filter(text => !text.includes('400 (Bad Request)'))).toEqual([])
    await page.close()
  })

  for (const width of [360, 1280]) {
    it(`paints within a second, finds fields by name and opens objects in place, at ${width} px`, async () => {
      await service.app.inject('/docs/reference')
      const { page, complaints } = await opened('/docs/reference', width)
      const paints = "performance.getEntriesByName('first-contentful-paint').map(({ startTime }) => startTime)"
      await page.waitForTimeout(300)
      expect(((await page.evaluate(paints)) as number[])[0]).toBeLessThan(1_000)
      await page.locator('#search').fill('coilsPerDriver')
      await page.locator('#found a[href="#wireCoils"]').waitFor()
      await page.locator('#search').fill('no such field anywhere')
      expect(await page.locator('#found li').allTextContents()).toEqual(['Nothing of that name here'])
      const link = page.locator('#planSystem td a[href="#schema-PlanDriver"]').first()
      await link.click()
      await page.locator('#planSystem tr.inside a[href="#schema-DriverSheet"]').first().click()
      await page.locator('#planSystem tr.inside tr.inside', { hasText: 'fsHz' }).waitFor()
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width)
      await link.click()
      expect(await page.locator('#planSystem tr.inside').count()).toBe(0)
      expect(complaints).toEqual([])
      await page.close()
    })
  }

  it('shows a picture as a picture and a page as a page that may do nothing, and asks by query', async () => {
    const { page, complaints } = await opened('/docs/reference', 1280)
    const coils = page.locator('#wireCoils form')
    await coils.locator('select[name=accept]').selectOption('image/svg+xml')
    await coils.locator('button[type=submit]').click()
    await coils.locator('output img').waitFor()
    await expect
      .poll(() => page.evaluate("document.querySelector('#wireCoils output img').naturalWidth"))
      .toBeGreaterThan(100)
    const byQuery = page.locator('#wireCoilsByQuery form')
    await byQuery.locator('button[type=submit]').click()
    await byQuery.locator('output pre').waitFor()
    expect(await byQuery.locator('output p').textContent()).toMatch(/^200 application\/json/)
    const plan = page.locator('#planSystem form')
    await plan.locator('select[name=accept]').selectOption('text/html')
    await plan.locator('button[type=submit]').click()
    expect(await plan.locator('output iframe').getAttribute('sandbox')).toBe('')
    const inside = page.frameLocator('#planSystem output iframe')
    await inside.locator('h1').waitFor()
    expect(await plan.locator('output a').getAttribute('download')).toBe('answer')
    expect(complaints.filter(text => !text.startsWith('asks blob:'))).toEqual([])
    await page.close()
  })

  it('copies what stands in a box', async () => {
    const context = await browser.newContext({ permissions: ['clipboard-read', 'clipboard-write'] })
    const page = await context.newPage()
    await page.goto(`${service.url}/docs`)
    const first = page.locator('.copied').first()
    await first.locator('button').click()
    await first.locator('button', { hasText: 'Copied' }).waitFor()
    expect(await page.evaluate('navigator.clipboard.readText()')).toBe(await first.locator('pre').textContent())
    await context.close()
  })
})
