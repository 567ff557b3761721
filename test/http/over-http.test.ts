/** The API as a client meets it: a listening service and real HTTP, no short cut through the framework. */
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { coils, listening } from '../support/service.ts'

let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening()
})
afterAll(() => service.app.close())

describe('the service over HTTP', () => {
  it('answers a calculation as JSON', async () => {
    const answer = await request(service.url)
      .post(coils.url)
      .send(coils.body)
      .expect(200)
      .expect('content-type', /^application\/json/)
    // Two 4 Ω coils by hand: 8 Ω in series, 2 Ω in parallel.
    expect(
      answer.body.result.loads.map((load: { ohm: number }) => load.ohm).sort((a: number, b: number) => a - b)
    ).toEqual([2, 8])
  })

  it('refuses an unknown field with a problem document and its pointer', async () => {
    const answer = await request(service.url)
      .post(coils.url)
      .send({ ...coils.body, coilOhms: 4 })
      .expect(400)
      .expect('content-type', /^application\/problem\+json/)
    expect(JSON.stringify(answer.body.errors)).toContain('/coilOhms')
  })

  it('answers an unknown path with 404 and a wrong method with 405 and the right one', async () => {
    await request(service.url)
      .get('/v1/nothing')
      .expect(404)
      .expect('content-type', /^application\/problem\+json/)
    await request(service.url).delete(coils.url).expect(405).expect('allow', /POST/)
  })

  it('gives the same bytes for the same question, and 304 to who has them', async () => {
    const first = await request(service.url).get('/v1/problems').expect(200)
    await request(service.url)
      .get('/v1/problems')
      .set('if-none-match', first.headers.etag ?? '')
      .expect(304)
  })
})
