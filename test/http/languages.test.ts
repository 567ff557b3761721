/** Answers in the language asked for. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { cautionCatalogue } from '../../src/contract/cautions/catalogue.ts'
import { english } from '../../src/contract/sentences/english.ts'
import { german, germanMeanings } from '../../src/contract/sentences/german.ts'
import { languages } from '../../src/domain/languages.ts'
import { printed } from '../../src/domain/template.ts'
import { acceptedLanguage } from '../../src/http/serving/language.ts'

let app: Awaited<ReturnType<typeof buildApp>>
beforeAll(async () => {
  app = await buildApp()
})
afterAll(() => app.close())

const request = {
  amplifiers: [{ powerW: 1200, class: 'AB', ratedVoltageV: 14.4 }],
  systemVoltageV: 12,
  charging: { kind: 'alternator', ratedA: 60, baseLoadA: 35 }
}
const ask = (language: string) =>
  app.inject({
    method: 'POST',
    url: '/v1/supply/current',
    headers: { 'accept-language': language },
    payload: request
  })

describe('the language of an answer', () => {
  for (const [header, code] of [
    ['de-AT, en;q=0.8', 'de'],
    ['fr', 'en'],
    ['fr, de;q=0.1', 'de'],
    ['en, de', 'en'],
    ['de, en', 'de'],
    ['de;q=0', 'en'],
    ['de;q=high', 'en'],
    ['', 'en'],
    [undefined, 'en']
  ] as const) {
    it(`is ${code} for ${header}`, () => expect(acceptedLanguage(header)).toBe(code))
  }

  it('is that of the caller, with the figures of the English answer', async () => {
    const [de, en] = await Promise.all([ask('de'), ask('en')])
    expect(de.headers['content-language']).toMatch(/^de/)
    expect(de.headers.vary).toContain('Accept-Language')
    expect(en.headers['content-language']).toBe('en')
    const [german, english] = [de.json(), en.json()]
    expect(german.result).toEqual(english.result)
    expect(german.cautions.map(({ message: _, ...rest }: { message: string }) => rest)).toEqual(
      english.cautions.map(({ message: _, ...rest }: { message: string }) => rest)
    )
    const deficit = german.cautions.find(({ code }: { code: string }) => code === 'charge-deficit-cruise').message
    expect(deficit).toMatch(/^Bei gewöhnlicher Musik fehlen auf der Fahrt \d+,\d A: .* kommen von der Lichtmaschine\./)
    expect(JSON.stringify(german)).not.toContain('"said"')
  })

  it('parts the catalogue by language, with its own tag', async () => {
    const of = (language: string) =>
      app.inject({ method: 'GET', url: '/v1/cautions/total-drop', headers: { 'accept-language': language } })
    const [de, en] = await Promise.all([of('de'), of('en')])
    expect(de.headers.etag).not.toBe(en.headers.etag)
    expect(de.json().meaning).toContain('Nennspannung')
    expect(en.json().templates.map(({ id }: { id: string }) => id)).toContain('total-drop.cable')
    expect(de.json().templates.length).toBe(en.json().templates.length)
  })
})

describe('German', () => {
  const all = { ...german, ...germanMeanings }

  it('has what English has and nothing else', () => {
    expect(Object.keys(german).toSorted()).toEqual(Object.keys(english).toSorted())
    expect(Object.keys(germanMeanings).toSorted()).toEqual(Object.keys(cautionCatalogue).toSorted())
  })

  it('prints every template, every value in it', () => {
    for (const [id, template] of Object.entries({ ...english, ...german })) {
      const text = printed(template, name => (/[A-Z]/.test(name) ? 2.5 : 'x'), languages.de)
      expect(text, id).not.toMatch(/[{}]/)
    }
  })

  it('is no English with German headers', () => {
    const words = /\b(the|and|with|which|from|than|when|must|where|that|this)\b/
    expect(Object.entries(all).filter(([, text]) => words.test(text.replace(/\{[^{}]*\}/g, '')))).toEqual([])
    const bare = (text: string) => text.replace(/\{[^{}]*\}/g, '').replace(/[^a-zäöüß]+/gi, '')
    const same = Object.entries(german).filter(([id, text]) => text === english[id as keyof typeof english])
    const worded = same.filter(([, text]) => bare(text).length > 3)
    expect(worded).toEqual([])
  })
})
