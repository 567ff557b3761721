/** Answers in the language asked for. */
import { beforeAll, describe, expect, it } from 'vitest'
import { cautionCatalogue } from '../../src/contract/cautions/catalogue.ts'
import { english } from '../../src/contract/sentences/english.ts'
import { german, germanMeanings } from '../../src/contract/sentences/german.ts'
import { languages } from '../../src/domain/languages.ts'
import { printed } from '../../src/domain/template.ts'
import { acceptedLanguage } from '../../src/http/serving/representation/language.ts'
import { type ProblemCode, problemKinds } from '../../src/http/wire/problem/problem-kinds.ts'
import { testApp } from '../support/call.ts'

let app: Awaited<ReturnType<typeof testApp>>
beforeAll(async () => {
  app = await testApp()
})

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

  it('is named by the address where there is no header: a link that is kept, a printed code', async () => {
    const of = (url: string, accept = 'application/json') =>
      app.inject({ method: 'POST', url, headers: { accept, 'accept-language': 'en' }, payload: request })
    const named = await of('/v1/supply/current?language=de')
    expect(named.headers['content-language']).toBe('de')
    expect(String(named.headers.vary ?? '')).not.toContain('Accept-Language')
    expect((await of('/v1/supply/current?language=fr')).statusCode).toBe(400)
    const refused = await app.inject({
      method: 'POST',
      url: '/v1/supply/current?language=de',
      payload: { ...request, systemVoltageV: 6 }
    })
    expect(refused.json().title).toBe('Außerhalb des Bereichs')
  })

  it('reaches the front door, which carries it on to the plan', async () => {
    const door = (url: string) => app.inject({ url, headers: { accept: 'text/html', 'accept-language': 'de' } })
    const { body, headers } = await door('/')
    expect(headers['content-language']).toBe('de')
    expect(body).toContain('<html lang="de">')
    expect(body).toContain('Plan erstellen')
    expect(body).not.toContain('type="hidden"')
    expect((await door('/?language=en')).body).toContain('Make my plan')
    expect((await door('/?language=de')).body).toContain('<input type="hidden" name="language" value="de">')
    const slip = await door('/plan?language=de&fs=dreissig')
    expect(slip.statusCode).toBe(400)
    expect(slip.body).toContain('Nur eine Zahl [Hz] schreiben, etwa 29')
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

describe('a refusal', () => {
  const refused = async (language: string, payload: object) =>
    (
      await app.inject({
        method: 'POST',
        url: '/v1/supply/current',
        headers: { 'accept-language': language },
        payload
      })
    ).json()

  it('of the domain is said in the language of the caller', async () => {
    const wrong = { ...request, systemVoltageV: 6 }
    const [de, en] = await Promise.all([refused('de', wrong), refused('en', wrong)])
    expect(de.title).toBe('Außerhalb des Bereichs')
    expect(de.detail).toContain('6 V ist kein Bordnetz mit 12, 24 oder 48 V')
    expect(de.errors[0].detail).toBe(de.detail)
    expect({ ...de.errors[0], detail: '' }).toEqual({ ...en.errors[0], detail: '' })
    expect(en.detail).toContain('6 V is no 12, 24 or 48 V system')
  })

  it('of the contract too, with its plurals', async () => {
    const { detail, errors } = await refused('de', { ...request, amplifiers: [] })
    expect(detail).toBe('Die Anfrage hat 1 Fehler.')
    expect(errors[0].detail).toBe('Braucht mindestens 1 Eintrag.')
    expect(JSON.stringify(errors)).not.toContain('said')
    expect((await refused('en', { ...request, amplifiers: [] })).errors[0].detail).toBe('Needs at least 1 entry.')
  })

  it('has German title and meaning for each code', async () => {
    const { problems } = (
      await app.inject({ method: 'GET', url: '/v1/problems', headers: { 'accept-language': 'de' } })
    ).json()
    expect(problems.length).toBe(Object.keys(problemKinds).length)
    for (const { code, title } of problems) expect(title).not.toBe(problemKinds[code as ProblemCode].title)
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
    // Symbols of the standards and their units are alike in both.
    const symbols = /^(fs|Qts|Vas|Sd|Le)(,| \/|$)/
    const worded = same.filter(([, text]) => bare(text).length > 3 && !symbols.test(text))
    expect(worded).toEqual([])
  })
})
