/** The front door: a form whose every field reaches the request, an address that holds the plan, faults beside their fields. */
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { frontFields } from '../../src/http/front/front-fields.ts'
import { withLink } from '../../src/http/front/front-link.ts'
import { frontAddress } from '../../src/http/front/front-page.ts'
import { exampleBy, frontExample, frontFaults, frontRequest } from '../../src/http/front/front-request.ts'
import { schemaOf, unitOf } from '../../src/http/front/front-schema.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { here } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await buildApp(here)
})
afterAll(() => app.close())

const page = (url: string, accept = 'text/html') => app.inject({ url, headers: { accept } })
const plan = (change: Record<string, string>) => page(frontAddress('/plan', { ...frontExample, ...change }))
const valid = requestValidator().compile(planSystem.body)
const named = (name: string) => frontFields.find(field => field.name === name) ?? frontFields[0]

/** What a form sends: every control by its name. */
function controlsOf(body: string): Record<string, string> {
  const texts = [...body.matchAll(/<input type="text"[^>]* name="(\w+)" value="([^"]*)"/g)].map(([, name, value]) => [
    name,
    value
  ])
  const chosen = [...body.matchAll(/<select[^>]* name="(\w+)"[\s\S]*?<option value="([^"]*)" selected/g)].map(
    ([, name, value]) => [name, value]
  )
  const ticked = [...body.matchAll(/<input type="radio"[^>]* name="(\w+)" value="([^"]*)" checked/g)].map(
    ([, name, value]) => [name, value]
  )
  return Object.fromEntries([...texts, ...chosen, ...ticked])
}

describe('the plan of the front door', () => {
  it('prints the address at which it can be made again, whatever form it is read in', async () => {
    const address = frontAddress('/plan', { ...frontExample, name: 'Two words', volume: '' })
    const { body } = await page(`${address}&form=text`)
    const [link = ''] = body.match(/http:\/\/\S+/) ?? []
    const { searchParams, pathname, host } = new URL(link)
    expect([pathname, host]).toEqual(['/plan', 'localhost'])
    expect(Object.fromEntries(searchParams)).toEqual({ ...frontExample, name: 'Two words' })
    const html = (await page(address)).body
    expect(html).toContain(`<a href="${link.replaceAll('&', '&amp;')}">`)
  })

  it('leaves out an address that the contract would not print', () => {
    const asked = { paper: { units: 'imperial' } }
    expect(withLink(asked, 'https://boot.example/plan?fs=30')).toEqual({
      paper: { units: 'imperial', link: 'https://boot.example/plan?fs=30' }
    })
    for (const link of ['https://boot.example/a b', `https://boot.example/${'x'.repeat(800)}`, 'javascript:1'])
      expect(withLink(asked, link)).toEqual(asked)
  })

  it('is written in inches and pounds where the visitor asks for them', async () => {
    const { body } = await plan({ units: 'imperial' })
    expect(body).toMatch(/\d+ \d+\/16/)
    expect(body).toMatch(/\d lb\b/)
  })
})

describe('the fields of the front door', () => {
  it('stand in the contract, with its units', () => {
    for (const field of frontFields) expect(schemaOf(field), field.path).toBeDefined()
    expect(['fs', 'vas', 'sd', 'rms', 'cable', 'qms', 'goal'].map(name => unitOf(named(name) as never))).toEqual([
      'Hz',
      'L',
      'cm²',
      'W',
      'm',
      '',
      ''
    ])
    expect(new Set(frontFields.map(({ name }) => name)).size).toBe(frontFields.length)
  })

  it('are sent as they stand and make the example, a request of the contract', async () => {
    const { body, headers, statusCode } = await page('/')
    expect([statusCode, headers['content-type']]).toEqual([200, 'text/html; charset=utf-8'])
    const sent = Object.fromEntries(Object.entries(controlsOf(body)).filter(([, value]) => value !== ''))
    expect(sent).toEqual(frontExample)
    const { request, faults } = frontRequest(sent)
    expect([faults, valid(request), valid.errors]).toEqual([[], true, null])
    expect(frontAddress('/plan', frontExample).length).toBeLessThan(320)
  })

  it('each change the request when they change', () => {
    const before = JSON.stringify(frontRequest(frontExample).request)
    for (const field of frontFields) {
      const { name, choices, example } = field
      const other = choices?.find(value => value !== example) ?? (name === 'name' ? 'Another' : '31')
      const { request, faults } = frontRequest({ ...frontExample, [name]: other })
      expect(faults, name).toEqual([])
      expect(JSON.stringify(request), name).not.toBe(before)
    }
  })

  it('take a comma for a point, and leave out what is empty without a gap in the powers', () => {
    const { request } = frontRequest({ ...frontExample, fs: '29,5', at4: ' ', cabin: '' })
    expect(request).toMatchObject({
      driver: { sheet: { fsHz: 29.5 } },
      amplifier: {
        ratings: [
          { loadOhm: 2, powerW: 700 },
          { loadOhm: 1, powerW: 1000 }
        ]
      }
    })
    expect(JSON.stringify(request)).not.toContain('cabin')
  })
})

describe('a form in inches', () => {
  const inches = exampleBy('inch')
  // One inch is 25.4 mm, one foot 0.3048 m (yard and pound agreement of 1959).
  it('takes fractions of an inch, feet and cubic feet, and what a sheet states as it stands there', () => {
    const { request, faults } = frontRequest({ ...inches, volume: '1.5', thick: '23/32', deep: '6-1/4' })
    expect([faults, valid(request), valid.errors]).toEqual([[], true, null])
    expect(request).toMatchObject({
      driver: {
        sheet: { vasL: 62, sdCm2: 490, xmaxMm: 14 },
        mounting: { cutOutDiameterMm: 282.575, mountingDepthMm: 158.75 }
      },
      car: { space: { widthMm: 977.9, heightMm: 457.2, depthMm: 520.7 }, cabin: { lengthM: 2.896 } },
      supply: { positiveLengthM: 5.486 },
      enclosure: { netVolumeL: 42.475 },
      board: { thicknessMm: 18.256 },
      paper: { units: 'imperial' }
    })
    expect(frontRequest({ ...frontExample, width: '38 1/2' }).faults).toHaveLength(1)
    expect(frontRequest({ ...inches, width: '3/0' }).faults).toHaveLength(1)
    expect(frontRequest({ ...inches, xmax: '1/2' }).faults).toHaveLength(1)
  })

  it('is what North America finds, and anybody by one link; it carries its rule to the plan', async () => {
    const american = (await page('/?language=en-US')).body
    expect(american).toMatch(/name="width" value="38 1\/2"[^>]*><span class="unit">in<\/span>/)
    expect(american).toContain('<input type="hidden" name="rule" value="inch">')
    const [, link = ''] = (await page('/')).body.match(/href="([^"]*rule=inch[^"]*)"/) ?? []
    const { body } = await page(link.replaceAll('&amp;', '&'))
    const hidden = [...body.matchAll(/<input type="hidden" name="(\w+)" value="([^"]*)"/g)].map(([, name, value]) => [
      name,
      value
    ])
    const sent = { ...controlsOf(body), ...Object.fromEntries(hidden) }
    expect(Object.fromEntries(Object.entries(sent).filter(([, value]) => value !== ''))).toEqual(inches)
    expect(body).toContain('value="23/32"')
    expect(body).toMatch(/<td>11 1\/8 in<\/td>/)
  })

  it('says what is wrong in its own unit, and refuses a rule it does not have', async () => {
    const told = (change: Record<string, string>) =>
      frontRequest({ ...inches, ...change }).faults.map(({ text }) => text)
    expect(told({ width: 'wide' })).toEqual(['Write a bare number [in], such as 38 1/2.'])
    const { maximum = 0 } = schemaOf(named('width') as never)
    expect(told({ width: '99999' })).toEqual([`At most ${Number((maximum / 25.4).toFixed(2))} in.`])
    const slip = await page(frontAddress('/plan', { ...frontExample, rule: 'cubit' }))
    expect([slip.statusCode, slip.body.includes('Choose one of: mm, inch.')]).toEqual([400, true])
  })
})

describe('the front door', () => {
  it('gives programs links, people a form that sends to this service alone', async () => {
    expect((await page('/', '*/*')).json().links.map(({ rel }: { rel: string }) => rel)).toContain('service-desc')
    const { headers, body } = await page('/')
    const policy = String(headers['content-security-policy'])
    expect(policy).toContain("form-action 'self'")
    expect(policy).not.toMatch(/unsafe|script-src|https?:/)
    expect(body).not.toMatch(/<script| style="|\son\w+=/)
    expect((await page('/', 'audio/wav')).statusCode).toBe(406)
  })

  it('keeps what was typed and says what to mend beside its field, linked from a list on top', async () => {
    const { statusCode, body, headers } = await plan({ fs: '29,5 Hz', qes: 'half', cable: '' })
    expect([statusCode, headers['content-type']]).toEqual([400, 'text/html; charset=utf-8'])
    expect(body).toContain('<title>2 things to mend')
    for (const name of ['fs', 'qes']) expect(body).toMatch(new RegExp(`id="f-${name}"[^>]*aria-invalid="true"`))
    expect(body).toContain('value="29,5 Hz"')
    expect(body).toContain('<a href="#f-fs" autofocus>Resonance</a>: Write a bare number [Hz], such as 29.5.')
    const missing = await plan({ cable: '' })
    expect(missing.body).toContain('<a href="#f-cable"')
  })

  it('escapes what was typed, and refuses names it does not have', async () => {
    const { body, statusCode } = await plan({ fs: '"><img src=x>' })
    expect(statusCode).toBe(400)
    expect(body).not.toContain('<img')
    const slip = await page(`${frontAddress('/plan', frontExample)}&fss=30`)
    expect([slip.statusCode, slip.body.includes('no field “fss”')]).toEqual([400, true])
  })

  it('finds the field of an entry of a list, empty ones not counted', () => {
    const errors = [{ pointer: '/amplifier/ratings/0/powerW', code: 'below-minimum', detail: 'Too little.' }]
    expect(frontFaults(errors, { ...frontExample, at4: '' }).map(({ field }) => field?.name)).toEqual(['at2'])
    expect(frontFaults(errors, frontExample).map(({ field }) => field?.name)).toEqual(['at4'])
  })

  it('answers each field emptied or wrong with a page, never with a bare error', async () => {
    for (const { name, choices } of frontFields) {
      const { statusCode, headers } = await plan({
        [name]: name === 'name' ? 'x'.repeat(200) : choices === undefined ? '1e9' : 'zz'
      })
      expect([statusCode, headers['content-type']], name).toEqual([400, 'text/html; charset=utf-8'])
    }
  })

  it('refuses in the form of a program what a program asked for', async () => {
    const { statusCode, headers } = await page(frontAddress('/plan', { ...frontExample, fs: 'x' }), 'application/json')
    expect(statusCode).toBe(400)
    expect(headers['content-type']).toMatch(/^application\/problem\+json/)
  })
})
