import { describe, expect, it } from 'vitest'
import { drawBox } from '../../src/http/operations/boxes/box-drawings.ts'
import { testApp } from '../support/call.ts'
import { readDxf } from '../support/dxf-reader.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

const request = drawBox.examples.wedgeInInches?.request

async function draw(accept: string, payload: unknown = request) {
  const app = await testApp()
  return app.inject({
    method: 'POST',
    url: '/v1/boxes/drawings',
    headers: { accept, 'content-type': 'application/json' },
    payload: JSON.stringify(payload)
  })
}

describe('POST /v1/boxes/drawings', () => {
  it('answers in the form asked for, and says that the form depends on Accept', async () => {
    const svg = await draw('image/svg+xml')
    expect(svg.headers['content-type']).toBe('image/svg+xml; charset=utf-8')
    expect(complaintsAboutXml(svg.body)).toEqual([])
    const dxf = await draw('image/vnd.dxf, image/svg+xml;q=0.5')
    expect(dxf.headers['content-type']).toBe('image/vnd.dxf')
    expect(readDxf(dxf.body).length).toBeGreaterThan(5)
    const pdf = await draw('text/html, application/pdf;q=0.2')
    expect(pdf.headers['content-type']).toBe('application/pdf')
    expect(pdf.rawPayload.subarray(0, 5).toString()).toBe('%PDF-')
    for (const reply of [svg, dxf, pdf]) {
      expect(reply.statusCode).toBe(200)
      expect(reply.headers.vary).toMatch(/accept/i)
    }
  })

  it('answers 406 with the forms there are', async () => {
    const reply = await draw('image/png')
    expect(reply.statusCode).toBe(406)
    expect(reply.headers['content-type']).toMatch(/^application\/problem\+json/)
    for (const form of ['application/json', 'image/svg+xml', 'image/vnd.dxf', 'application/pdf'])
      expect(reply.json().detail).toContain(form)
  })

  it('refuses in JSON whatever form was asked for, with pointers into this request', async () => {
    const small = await draw('application/pdf', {
      box: { outer: { widthMm: 60, heightMm: 60, depthMm: 60 }, thicknessMm: 30 }
    })
    expect(small.statusCode).toBe(422)
    expect(small.headers['content-type']).toMatch(/^application\/problem\+json/)
    for (const { pointer } of small.json().errors) expect(pointer).toMatch(/^\/box/)
    const sheet = { name: 'small', lengthMm: 200, widthMm: 200, thicknessMm: 18 }
    const noSheet = await draw('image/svg+xml', { ...(request as object), sheets: [sheet] })
    expect(noSheet.statusCode).toBe(422)
    expect(noSheet.json().errors[0].pointer).toBe('/box')
  })
})
