import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { testApp } from '../support/call.ts'
import { numbersOf, readCsv, textsOf } from '../support/csv-reader.ts'

const request = planSystem.examples.estate?.request as Record<string, unknown>

async function plan(accept: string, payload: unknown = request) {
  const app = await testApp()
  return app.inject({
    method: 'POST',
    url: '/v1/plans',
    headers: { accept, 'content-type': 'application/json' },
    payload: JSON.stringify(payload)
  })
}

describe('POST /v1/plans on paper', () => {
  it('answers a browser with the page, under a policy that lets exactly its style through', async () => {
    const reply = await plan('text/html,application/xhtml+xml,*/*;q=0.8')
    expect(reply.statusCode).toBe(200)
    expect(reply.headers['content-type']).toBe('text/html; charset=utf-8')
    const style = /<style>([\s\S]*?)<\/style>/.exec(reply.body)?.[1] ?? ''
    const hash = createHash('sha256').update(style, 'utf8').digest('base64')
    expect(reply.headers['content-security-policy']).toContain(`style-src 'sha256-${hash}'`)
    expect(reply.headers['content-security-policy']).toContain("default-src 'none'")
    expect(reply.headers['content-security-policy']).not.toMatch(/unsafe|script-src/)
  })

  it('shows what the JSON answer says: verdict, cable, fuse, net volume, cautions, every panel', async () => {
    const { result, cautions } = (await plan('application/json')).json()
    const text = (await plan('text/html')).body
      .replace(/<style>[\s\S]*?<\/style>/, '')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
    for (const line of result.summary.lines) expect(text).toContain(line)
    for (const { message } of cautions) expect(text).toContain(message)
    const { cable, fuse, box } = result.parts
    expect(text).toContain(cable.answer.result.cable.designation)
    expect(text).toContain(`${fuse.answer.result.fuse.ratingA} A`)
    const [, printed = ''] = /net air volume\s+([\d.]+) L/.exec(text) ?? []
    expect(Math.abs(Number(printed) - box.answer.result.volume.netL)).toBeLessThan(0.006)
    for (const { name } of box.answer.result.panels) expect(text).toContain(name)
    for (const { title } of result.buildOrder.steps) expect(text).toContain(title)
    for (const { name } of result.parts.wiring.answer.result.chosen.joints.filter(({ name }: { name: string }) =>
      name.startsWith('joint')
    ))
      expect(text).toContain(name)
    expect(text).toContain('2 drivers with 2 coils each wired to 2 Ω')
    // Two parts assume an ambient temperature of their own; both stand there, told apart.
    expect(text).toMatch(/cable: ambientC\s+70\s/)
    expect(text).toMatch(/wiring: cable\.ambientC\s+30\s/)
    expect(text.match(/air\.temperatureC\s/g)).toHaveLength(1)
  })

  it('answers as PDF, the same bytes for the same request, in inches when asked', async () => {
    const [first, second] = [await plan('application/pdf'), await plan('application/pdf')]
    expect(first.headers['content-type']).toBe('application/pdf')
    expect(first.rawPayload.equals(second.rawPayload)).toBe(true)
    const inches = await plan('text/html', { ...request, paper: { units: 'imperial', inches: 'sixteenths' } })
    expect(inches.body).toMatch(/\d+ \d+\/16 in/)
  })

  it('takes at most twelve pages for each example, thirteen in German, as many as its footer says', async () => {
    for (const { request: example } of Object.values(planSystem.examples))
      for (const [language, most] of [
        ['en', 12],
        ['de', 13]
      ] as const) {
        const options = { digits: 'six', basis: false, form: 'application/pdf', language } as const
        const pdf = Buffer.from((await planSystem.run(example, options)).body as Uint8Array).toString('latin1')
        const pages = pdf.match(/\/Type \/Page\b(?!s)/g) ?? []
        expect(pages.length).toBeGreaterThan(6)
        expect(pages.length, language).toBeLessThanOrEqual(most)
        expect(pdf).toContain(`/Count ${pages.length}`)
        expect(pdf).toContain(`/Lang (${language})`)
      }
  })

  it('is tagged for who hears it: headings, paragraphs, tables with their rows, and a title for each picture', async () => {
    const pdf = (await plan('application/pdf')).rawPayload.toString('latin1')
    expect(pdf).toContain('/Marked true')
    const elements = [...pdf.matchAll(/<<\n\/S \/(\w+)\n(?:\/Alt ([^\n]*)\n)?/g)].map(([, tag, alt]) => ({
      tag,
      alt
    }))
    const counted = (wanted: string) => elements.filter(({ tag }) => tag === wanted)
    expect(counted('H1')).toHaveLength(1)
    expect(counted('H2').length).toBeGreaterThan(6)
    expect(counted('H3').length).toBeGreaterThan(10)
    expect(counted('P').length).toBeGreaterThan(250)
    expect(counted('Table').length).toBeGreaterThan(5)
    expect(counted('TR').length).toBeGreaterThan(60)
    expect(counted('Figure').length).toBeGreaterThan(10)
    expect(counted('Figure').filter(({ alt = '()' }) => alt === '()')).toEqual([])
  })

  it('prints who publishes it, when and where, and carries the request inside the PDF', async () => {
    const link = 'https://plans.example/plan?fs=29.5'
    const imprint = { author: 'R. Example', date: '14 March 2026', licence: 'CC BY-SA 4.0', revision: '2', link }
    const asked = { ...request, paper: imprint }
    const page = (await plan('text/html', asked)).body
    expect(page).toContain('revision 2, 14 March 2026')
    expect(page).toContain(`<a href="${link}">`)
    for (const form of ['text/plain', 'text/markdown']) expect((await plan(form, asked)).body).toContain(link)
    const pdf = (await plan('application/pdf', asked)).rawPayload.toString('latin1')
    expect(pdf).toContain('(R. Example)')
    expect(pdf).toMatch(/\/EmbeddedFile\b/)
    expect(pdf).toContain('plan-request.json')
    const refused = await plan('text/html', { ...request, paper: { link: 'javascript:alert(1)' } })
    expect(refused.statusCode).toBe(400)
  })

  it('gives the bill of materials as CSV, row by row as in JSON; sheets and cut panels are not both needed', async () => {
    const { billOfMaterials } = (await plan('application/json')).json().result
    const read = readCsv((await plan('text/csv')).body)
    expect(textsOf(read, 'item')).toEqual(billOfMaterials.map(({ item }: { item: string }) => item))
    expect(numbersOf(read, 'quantity')).toEqual(billOfMaterials.map(({ quantity }: { quantity: number }) => quantity))
    const board = textsOf(read, 'group').flatMap((group, index) => (group === 'board' ? [index] : []))
    const needed = board.filter(index => textsOf(read, 'needed')[index] === 'true')
    expect(needed.map(index => textsOf(read, 'unit')[index])).toEqual(['piece'])
    expect(board.length).toBeGreaterThan(5)
  })

  it('keeps the grain of plywood on the sheets', async () => {
    const board = { thicknessMm: 18, material: 'birch-plywood' }
    const { result } = (await plan('application/json', { ...request, board })).json()
    const { request: asked, answer } = result.parts.sheets
    expect(asked.sheets).toMatchObject([{ material: 'birch-plywood', grain: 'length' }])
    for (const { grain } of asked.panels) expect(grain).toMatch(/^(length|width)$/)
    for (const layout of answer.result.layouts)
      for (const piece of layout.pieces) {
        const { grain } = asked.panels.find(({ name }: { name: string }) => name === piece.panel)
        expect(piece.turned).toBe(grain === 'width')
      }
  })

  it('still makes a page of a plan whose parts were refused', async () => {
    const car = { ...(request.car as object), space: { widthMm: 250, heightMm: 200, depthMm: 150 } }
    const reply = await plan('text/html', { ...request, car })
    expect(reply.statusCode).toBe(200)
    expect(reply.body).toContain('Not complete')
  })
})
