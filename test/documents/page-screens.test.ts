/** The page of whole plans on a phone: how many screens it takes, whether its drawings can be read, and that it needs neither network nor script. */

import { existsSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { paperOfPlan } from '../../src/documents/plan/paper-of-plan.ts'
import { inLanguage } from '../../src/domain/in-language.ts'
import { languages } from '../../src/domain/languages.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'

const executablePath = '/usr/bin/chromium'
const PHONE = { width: 360, height: 740 } as const

/** Most screens of a phone [740 px]; a face as wide as DejaVu Sans stands in where no other is there, the widest that is met. */
const plans = {
  estate: { wire: estatePlan, most: 13 },
  hatchback: { wire: hatchbackPlan, most: 13 },
  leaning: { wire: leaningPlan, most: 14 },
  'two amplifiers, four drivers': {
    wire: {
      ...estatePlan,
      driverCount: 4,
      car: { ...estatePlan.car, space: { widthMm: 1700, heightMm: 800, depthMm: 1000 } },
      supply: { ...estatePlan.supply, otherAmplifiers: [{ name: 'doors', powerW: 300, class: 'D' }] }
    },
    most: 15
  }
} as const

const folder = mkdtempSync(path.join(tmpdir(), 'plan-page-'))

/** The page as a file that somebody saved. */
function saved(name: string, wire: unknown, code: 'en' | 'de' = 'en'): string {
  const request = toSi(wire) as unknown as PlanRequest
  const file = path.join(folder, `${name.replaceAll(/\W+/g, '-')}-${code}.html`)
  const paper = { ...metric, language: languages[code] }
  writeFileSync(file, planPage(paperOfPlan(inLanguage(planSystem(request), paper.language), request, paper), { paper }))
  return pathToFileURL(file).href
}

const beyond = (tab: Page) => tab.evaluate('document.documentElement.scrollWidth - innerWidth')

/** Texts of drawings and charts that are smaller than 11 px as they stand on the screen. */
const smallTexts = (tab: Page) =>
  tab.evaluate(`[...document.querySelectorAll('svg text')].flatMap(text => {
    const { height } = text.getBoundingClientRect()
    const px = parseFloat(getComputedStyle(text).fontSize) * Math.hypot(text.getScreenCTM().a, text.getScreenCTM().b)
    return height > 0 && px < 10.9 ? [text.textContent + ' ' + px.toFixed(1)] : []
  })`)

describe.skipIf(!existsSync(executablePath)).each(Object.entries(plans))(
  'the page of a plan: %s',
  (name, { wire, most }) => {
    let browser: Browser
    let address = ''
    beforeAll(async () => {
      address = saved(name, wire)
      browser = await chromium.launch({
        executablePath,
        args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage']
      })
    })
    afterAll(async () => {
      await browser?.close()
    })

    it(`takes at most ${most} screens of a phone, from a file, without network or script`, async () => {
      const context = await browser.newContext({ viewport: PHONE, javaScriptEnabled: true, offline: true })
      const tab = await context.newPage()
      const asked: string[] = []
      tab.on('request', request => asked.push(request.url()))
      await tab.goto(address)
      expect(asked).toEqual([address])
      expect(await tab.locator('#build').count(), 'a plan to be built').toBe(1)
      const screens = async () =>
        ((await tab.evaluate('document.documentElement.scrollHeight')) as number) / PHONE.height
      expect(await screens()).toBeLessThanOrEqual(most)
      await tab.goto(saved(name, wire, 'de'))
      expect(await screens(), 'in German').toBeLessThanOrEqual(15)
      await context.close()
    })

    it('scrolls sideways at no width, folds shut and open, and writes no drawing below 11 px on a phone', async () => {
      for (const width of [320, 360, 768, 1280]) {
        const tab = await browser.newPage({ viewport: { width, height: 740 } })
        await tab.goto(address)
        expect(await beyond(tab), `${width} px, shut`).toBeLessThanOrEqual(0)
        await tab.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true')
        expect(await beyond(tab), `${width} px, open`).toBeLessThanOrEqual(0)
        if (width === 360) expect(await smallTexts(tab)).toEqual([])
        await tab.close()
      }
    })

    it('leads from a caution on the first page to its step, and opens what it is folded in', async () => {
      const tab = await browser.newPage({ viewport: PHONE })
      await tab.goto(address)
      const link = tab.locator('.cautions a[href^="#step-"]').first()
      const id = (await link.getAttribute('href'))?.slice(1)
      await link.focus()
      await tab.keyboard.press('Enter')
      expect(await tab.evaluate(`document.getElementById('${id}').checkVisibility()`)).toBe(true)
      await tab.close()
    })

    it('has no finding of axe, by day and in the dark, folds shut and open', async () => {
      for (const [width, colorScheme] of [
        [360, 'light'],
        [1280, 'dark']
      ] as const) {
        const tab = await browser.newPage({ viewport: { width, height: 740 }, colorScheme })
        await tab.goto(address)
        await tab.evaluate(axe.source)
        for (const open of ['shut', 'open']) {
          if (open === 'open')
            await tab.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true')
          const { violations } = (await tab.evaluate('axe.run()')) as {
            violations: { id: string; nodes: { html: string }[] }[]
          }
          expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([])
        }
        await tab.close()
      }
    })
  }
)
