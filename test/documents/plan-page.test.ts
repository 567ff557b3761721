import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { metric } from '../../src/documents/draw/number-text.ts'
import { pageStyle } from '../../src/documents/plan/page/page-style.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { inventedPlan } from '../support/invented-plan.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

const options = { paper: metric } as const
const page = planPage(inventedPlan(), options)
/** As many assumptions and sources as a whole plan has. */
const longPlan = {
  ...inventedPlan(),
  assumed: Array.from({ length: 24 }, (_, n) => ({ field: `part: entry.field${n}`, value: n, why: `reason ${n}` })),
  sources: Array.from({ length: 8 }, (_, n) => ({ id: `source-${n}`, title: `Title ${n}`, status: 'derived' as const }))
}
const longPage = planPage(longPlan, options)
const evil = '<img src=x onerror=alert(1)> "quoted" & \'single\''

/** The page as XML: void elements closed, the style sheet taken out. */
const asXml = (html: string) =>
  html
    .replace('<!doctype html>', '')
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<(meta|input)([^>]*)>/g, '<$1$2/>')
    .replaceAll('&', '&amp;')
    .replace(/&amp;(amp|lt|gt|quot|#39);/g, '&$1;')
    .replace(/\/\/>/g, '/>')

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
        facts: [{ title: evil, rows: [{ label: evil, value: evil }] }],
        figures: [{ value: evil, unit: evil, note: evil }],
        ways: [evil],
        others: [evil],
        nearest: [{ name: evil, why: evil }],
        tried: [{ name: evil, why: evil }],
        cover: { ...inventedPlan().cover, sentence: evil }
      },
      options
    )
    expect(complaintsAboutXml(asXml(html))).toEqual([])
    expect(html).not.toContain('<img')
  })

  it('opens with what the plan chose for its first page, and says the way to each step', () => {
    const { pageOne } = inventedPlan().cover
    const before = page.slice(0, page.indexOf('<nav'))
    for (const { clause, sentence } of pageOne) expect(before).toContain(`<b>${clause}.</b> ${sentence}`)
    expect(before).toContain('<a href="#step-20">step 20</a>')
    expect(before).not.toContain('<details')
  })

  it('leads every link to a place that is there', () => {
    const ids = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
    const links = [...page.matchAll(/ href="#([^"]+)"/g)].map(([, id]) => id ?? '')
    expect(links.length).toBeGreaterThan(7)
    expect(links.filter(id => !ids.has(id))).toEqual([])
  })

  it('numbers the steps through, and shows what prevents harm and what is read without opening one', () => {
    const { buildOrder, commissioning } = inventedPlan()
    const numbers = [...page.matchAll(/<li id="step-(\d+)">/g)].map(([, number]) => Number(number))
    const count = (buildOrder?.steps.length ?? 0) + commissioning.length
    // Work on the bench and work in the car stand apart, so the numbers of one part may have gaps.
    expect(numbers.toSorted((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, index) => index + 1))
    const sights = [...page.matchAll(/<summary>(.*?)<\/summary>/gs)].map(([, sight]) => sight ?? '').join(' ')
    for (const { warnings, checks } of buildOrder?.steps ?? [])
      for (const text of [...warnings, ...checks])
        expect(sights).toContain(text.replaceAll('"', '&quot;').replaceAll("'", '&#39;'))
    for (const { passIf } of commissioning) expect(sights).toContain(passIf)
    expect(sights).toContain('The fuse goes in last')
  })

  it('says each caution of a step at that step, once', () => {
    const { stepCautions } = inventedPlan()
    const said = [...stepCautions.values()].flat()
    expect(said.length).toBeGreaterThan(3)
    for (const { message } of said)
      expect(page.split(message.replaceAll('"', '&quot;').replaceAll("'", '&#39;')), message).toHaveLength(2)
    const [, afterwards = ''] = page.split('<section id="switch-on"')
    expect(afterwards).toContain('Every fuse stays out')
  })

  it('shows every panel, every bill row and every step', () => {
    const plan = inventedPlan()
    for (const { title } of plan.buildOrder?.steps ?? [])
      expect(page).toContain(title.replaceAll('"', '&quot;').replaceAll("'", '&#39;'))
    const bought = plan.bill.filter(({ group, needed }) => needed || group !== 'board')
    for (const { item } of bought) expect(page).toContain(item.replaceAll('"', '&quot;'))
    for (const { name } of plan.box?.panels ?? [])
      expect(page).toMatch(new RegExp(`<th scope="row">${name}( <small|</th>)`))
  })

  it('draws what a size does not describe, and says of the others that they are plain rectangles', () => {
    const { panels = [] } = inventedPlan().box ?? {}
    const holed = panels.filter(({ cutOuts }) => cutOuts.length > 0)
    expect(holed.length).toBeGreaterThan(0)
    for (const { name } of holed) expect(page).toContain(`>${name}, panel drawing</title>`)
    const drawn = [...page.matchAll(/>([^<>]*), panel drawing<\/title>/g)].map(([, name]) => name)
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
        language: metric.language,
        title: 'Bare',
        verdict: 'incomplete',
        reasons: ['driver: too little given'],
        lines: [],
        cover: { sentence: 'Two drivers.', pageOne: [] },
        figures: [],
        stepCautions: new Map(),
        chapterCautions: new Map(),
        whatIf: { headings: [], rows: [] },
        ways: ['Give the space 12 mm more height: a closed box of 30 L.'],
        others: [],
        nearest: [{ name: 'Closed', why: '12 mm too high' }],
        tried: [],
        conductors: [],
        card: [],
        facts: [],
        bill: [],
        commissioning: [],
        remedies: [],
        assumed: [],
        sources: []
      },
      options
    )
    expect(bare).toContain('too little given')
    expect(bare).toContain('12 mm too high')
    expect(bare).toContain('Give the space 12 mm more height')
    expect(bare).not.toContain('<section')
  })

  it('says which other boxes the same parts could have', () => {
    const html = planPage(inventedPlan(), options)
    expect(html).toContain('Other boxes for the same parts (1)')
    expect(html).toContain('Worse: 4.2 dB less.')
  })

  it('writes inches when asked', () => {
    const html = planPage(inventedPlan(), { paper: { ...metric, units: 'imperial', inches: 'sixteenths' } as const })
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

  it('folds what is looked up, opens it by keyboard, and prints every fold open', async () => {
    const tab = await browser.newPage({ viewport: { width: 360, height: 800 } })
    await tab.setContent(longPage, { waitUntil: 'domcontentloaded' })
    const shown = (selector: string) =>
      tab.evaluate(
        `[...document.querySelectorAll(${JSON.stringify(selector)})].filter(part => part.checkVisibility() && part.getBoundingClientRect().height > 0).length`
      ) as Promise<number>
    expect(await shown('#look-up tbody tr')).toBe(0)
    expect(await shown('.steps details > ul')).toBe(0)
    await tab.emulateMedia({ media: 'print' })
    expect(await shown('#look-up tbody tr')).toBeGreaterThan(24 + 8)
    expect(await shown('.steps details > ul')).toBe(
      (longPlan.buildOrder?.steps.length ?? Number.NaN) + longPlan.commissioning.length
    )
    await tab.emulateMedia({ media: 'screen' })
    for (const summary of ['.stretch > summary', '.steps details summary']) {
      await tab.focus(summary)
      await tab.keyboard.press('Enter')
    }
    expect(await shown('.steps details > ul')).toBe(1)
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
      await tab.evaluate('for (const fold of document.querySelectorAll("details")) fold.open = true')
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
