/** The front door in a real browser: by keyboard alone from the form to the plan, at a desk and on a phone, without a finding of axe. */
import { existsSync } from 'node:fs'
import axe from 'axe-core'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { present } from '../../src/domain/present.ts'
import { frontExample } from '../../src/http/front/front-request.ts'
import { listening } from '../support/service.ts'

const executablePath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)

describe('the front door without a browser', () => {
  it.skipIf(executablePath !== undefined)('was not tried: no Chromium here', () => {})
})

describe.skipIf(executablePath === undefined)('the front door in Chromium', () => {
  let browser: Browser
  let service: Awaited<ReturnType<typeof listening>>
  beforeAll(async () => {
    service = await listening({ workTimeoutMs: 120_000 })
    browser = await chromium.launch({
      ...present({ executablePath }),
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage']
    })
  })
  afterAll(async () => {
    await browser?.close()
    await service?.app.close()
  })

  const findings = async (tab: Page) => {
    await tab.evaluate(axe.source)
    const { violations } = (await tab.evaluate('axe.run()')) as {
      violations: { id: string; nodes: { html: string }[] }[]
    }
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)
  }
  const beyond = (tab: Page) => tab.evaluate('document.documentElement.scrollWidth - innerWidth')
  const focused = (tab: Page) => tab.evaluate('document.activeElement.id || document.activeElement.textContent')

  for (const width of [1280, 360]) {
    it(`leads by keyboard from the form through a slip to a plan, at ${width} px`, { timeout: 180_000 }, async () => {
      const tab = await browser.newPage({ viewport: { width, height: 760 } })
      const logged: string[] = []
      tab.on('console', message => logged.push(message.text()))
      await tab.goto(`${service.url}/`)
      expect(await findings(tab)).toEqual([])
      expect(await beyond(tab)).toBeLessThanOrEqual(0)

      await tab.focus('#f-fs')
      await tab.keyboard.press('Control+A')
      await tab.keyboard.type('about thirty')
      await tab.keyboard.press('Enter')
      await tab.waitForURL(/\/plan\?/)
      expect(await tab.title()).toMatch(/^One thing to mend/)
      expect(await findings(tab)).toEqual([])
      expect(await tab.inputValue('#f-fs')).toBe('about thirty')
      await tab.focus('.faults a')
      await tab.keyboard.press('Enter')
      await tab.keyboard.press('Tab')
      await tab.focus('#f-fs')
      await tab.keyboard.press('Control+A')
      await tab.keyboard.type('29,5')

      const stops: unknown[] = []
      for (let press = 0; press < 60 && (await focused(tab)) !== 'Make my plan'; press++) {
        stops.push(await focused(tab))
        await tab.keyboard.press('Tab')
      }
      expect(stops).toContain('f-alternator')
      expect(new Set(stops).size).toBe(stops.length)
      await tab.keyboard.press('Enter')
      await tab.waitForSelector('.verdict', { timeout: 120_000 })
      expect(new URL(tab.url()).searchParams.get('fs')).toBe('29,5')
      expect(await tab.textContent('h1')).toBe(frontExample.name)
      expect(await beyond(tab)).toBeLessThanOrEqual(0)
      expect(logged.filter(text => !text.includes('400'))).toEqual([])
      await tab.close()
    })
  }
})
