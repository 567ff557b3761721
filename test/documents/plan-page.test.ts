import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { pageStyle } from '../../src/documents/plan/page-style.ts'
import { planPage } from '../../src/documents/plan/plan-page.ts'
import { inventedPlan } from '../support/invented-plan.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

const metric = { paper: { units: 'metric', inches: 'decimal' } } as const
const page = planPage(inventedPlan(), metric)
/** As many assumptions and sources as a whole plan has. */
const longPlan = {
  ...inventedPlan(),
  assumed: Array.from({ length: 24 }, (_, n) => ({ field: `part: entry.field${n}`, value: n, why: `reason ${n}` })),
  sources: Array.from({ length: 8 }, (_, n) => ({ id: `source-${n}`, title: `Title ${n}`, status: 'derived' as const }))
}
const longPage = planPage(longPlan, metric)
const evil = '<img src=x onerror=alert(1)> "quoted" & \'single\''

/** The page as XML: void elements closed, the style sheet taken out. */
const asXml = (html: string) =>
  html
    .replace('<!doctype html>', '')
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<meta([^>]*)>/g, '<meta$1/>')

describe('the page of a plan', () => {
  it('is well-formed, without script, handler, doubled id or foreign reference', () => {
    expect(complaintsAboutXml(asXml(page))).toEqual([])
    expect(page).not.toMatch(/<script|javascript:|https?:\/\/(?!www\.w3\.org\/2000\/svg)/)
    expect(page).not.toMatch(/ style="/)
  })

  it('has one style element that holds exactly the sheet whose hash a policy names', () => {
    expect([...page.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, text]) => text)).toEqual([pageStyle])
    expect(pageStyle).not.toMatch(/<|url\(|@import/)
  })

  it('escapes whatever a caller named', () => {
    const html = planPage(
      {
        ...inventedPlan(evil),
        lines: [evil],
        reasons: [evil],
        facts: [{ title: evil, rows: [{ label: evil, value: evil }] }]
      },
      metric
    )
    expect(complaintsAboutXml(asXml(html))).toEqual([])
    expect(html).not.toContain('<img')
  })

  it('says the gravest first, with words and not by colour alone', () => {
    const levels = [...page.matchAll(/class="level (\w+)">(\w+)</g)].map(([, level, word]) => [level, word])
    expect(levels.length).toBeGreaterThan(3)
    for (const [level, word] of levels) expect(word?.toLowerCase()).toBe(level)
    const rank = levels.map(([level]) => ['stop', 'care', 'note'].indexOf(level ?? ''))
    expect(rank).toEqual([...rank].sort((a, b) => a - b))
  })

  it('says each caution of a step at that step, once', () => {
    const { stepCautions } = inventedPlan()
    const said = [...stepCautions.values()].flat()
    expect(said.length).toBeGreaterThan(3)
    for (const { message } of said)
      expect(page.split(message.replaceAll('"', '&quot;').replaceAll("'", '&#39;')), message).toHaveLength(2)
    const [, afterwards = ''] = page.split('id="first-start"')
    expect(afterwards).toContain('Every fuse stays out')
  })

  it('shows every panel, every bill row and every step', () => {
    const plan = inventedPlan()
    for (const { title } of plan.buildOrder?.steps ?? [])
      expect(page).toContain(title.replaceAll('"', '&quot;').replaceAll("'", '&#39;'))
    const bought = plan.bill.filter(({ group, needed }) => needed || group !== 'board')
    for (const { item } of bought) expect(page).toContain(item.replaceAll('"', '&quot;'))
    for (const { name } of plan.box?.panels ?? []) expect(page).toContain(`>${name}</td>`)
  })

  it('draws what a size does not describe, and says of the others that they are plain rectangles', () => {
    const { panels = [] } = inventedPlan().box ?? {}
    const holed = panels.filter(({ cutOuts }) => cutOuts.length > 0)
    expect(holed.length).toBeGreaterThan(0)
    for (const { name } of holed) expect(page).toContain(`Drawing of ${name}`)
    const drawn = [...page.matchAll(/aria-label="Drawing of ([^"]*)"/g)].map(([, name]) => name)
    const plain = panels.filter(({ name }) => !drawn.includes(name))
    for (const { outline, lengthM, widthM, cutOuts, edges } of plain) {
      expect([outline.length, cutOuts.length, edges.filter(({ tiltDeg }) => tiltDeg > 0).length]).toEqual([4, 0, 0])
      for (const { uM, vM } of outline)
        expect([0, lengthM, widthM].some(side => Math.abs(side - uM) < 1e-6 && vM >= 0)).toBe(true)
    }
    expect(page.includes('plain rectangles')).toBe(plain.length > 0)
  })

  it('leaves out what a plan does not have', () => {
    const bare = planPage(
      {
        title: 'Bare',
        verdict: 'incomplete',
        reasons: ['driver: too little given'],
        lines: [],
        cautions: [],
        stepCautions: new Map(),
        facts: [],
        bill: [],
        commissioning: [],
        readings: [],
        assumed: [],
        sources: []
      },
      metric
    )
    expect(bare).toContain('too little given')
    expect(bare).not.toContain('<section')
  })

  it('folds a list from eight entries on', () => {
    const folds = (count: number) =>
      planPage({ ...longPlan, assumed: [], sources: longPlan.sources.slice(0, count) }, metric).match(/<details>/g) ??
      []
    expect([1, 7, 8].map(count => folds(count).length)).toEqual([0, 0, 1])
    expect(complaintsAboutXml(asXml(longPage))).toEqual([])
  })

  it('writes inches when asked', () => {
    const html = planPage(inventedPlan(), { paper: { units: 'imperial', inches: 'sixteenths' } })
    expect(html).toMatch(/\d+ \d+\/16 in/)
    expect(html).toMatch(/ lb</)
  })
})

const chromiumPath = '/usr/bin/chromium'
const there = existsSync(chromiumPath)
if (!there) console.log(`no ${chromiumPath}: the page is not looked at by a browser`)

describe.skipIf(!there)('the page in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: chromiumPath,
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage']
    })
  })
  afterAll(async () => {
    await browser?.close()
  })

  it('folds long lists on a screen, opens them by keyboard, and prints them open without their lines', async () => {
    const tab = await browser.newPage({ viewport: { width: 360, height: 800 } })
    await tab.setContent(longPage, { waitUntil: 'domcontentloaded' })
    const shown = (selector: string) =>
      tab.evaluate(
        `[...document.querySelectorAll(${JSON.stringify(selector)})].map(part => part.checkVisibility() && part.getBoundingClientRect().height > 0)`
      ) as Promise<boolean[]>
    const none = Array.from({ length: 24 + 8 }, () => false)
    expect(await shown('#ground tbody tr')).toEqual(none)
    expect(await shown('#ground summary')).toEqual([true, true])
    await tab.emulateMedia({ media: 'print' })
    expect(await shown('#ground tbody tr')).toEqual(none.map(() => true))
    expect(await shown('#ground summary')).toEqual([false, false])
    await tab.emulateMedia({ media: 'screen' })
    expect(await shown('#ground tbody tr')).toEqual(none)
    await tab.focus('#ground details:first-of-type summary')
    await tab.keyboard.press('Enter')
    expect((await shown('#ground tbody tr')).filter(Boolean)).toHaveLength(24)
    await tab.close()
  })

  for (const [width, colorScheme] of [
    [360, 'light'],
    [1280, 'dark']
  ] as const) {
    it(`is accessible, fits ${width} px and logs nothing (${colorScheme})`, async () => {
      const tab = await browser.newPage({ viewport: { width, height: 800 }, colorScheme })
      const logged: string[] = []
      tab.on('console', message => logged.push(message.text()))
      tab.on('pageerror', error => logged.push(error.message))
      await tab.setContent(longPage, { waitUntil: 'domcontentloaded' })
      const beyond = await tab.evaluate('document.documentElement.scrollWidth - innerWidth')
      expect(beyond).toBeLessThanOrEqual(0)
      await tab.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'))
      await tab.evaluate('for (const fold of document.querySelectorAll("details:last-of-type")) fold.open = true')
      expect(await tab.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0)
      const { violations } = (await tab.evaluate('axe.run()')) as {
        violations: { id: string; impact: string; nodes: { html: string }[] }[]
      }
      expect(violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html}`)).toEqual([])
      expect(logged).toEqual([])
      await tab.close()
    })
  }
})
