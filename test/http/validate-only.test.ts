/** A dry run refuses what the calculation refuses, and the schema alone says the same: held by requests made by chance. */
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import type { JsonSchema } from '../../src/contract/field/component.ts'
import { DesignError } from '../../src/domain/design-error.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { operations } from '../../src/http/operations.ts'
import { unmetConditions } from '../../src/http/wire/request/conditions.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { post, testApp } from '../support/call.ts'
import { requestSchema } from '../support/contract-judge.ts'
import { nearExample, pick, seeded, valueFor } from '../support/random-requests.ts'
import { coils } from '../support/service.ts'

const dry = async (url: string, payload: unknown) =>
  (await testApp()).inject({ method: 'POST', url: `${url}?validate=only`, payload: payload as object })

describe('?validate=only', () => {
  it('is 204 and calculates nothing where nothing is wrong', async () => {
    const answer = await dry('/v1/plans', estatePlan)
    expect([answer.statusCode, answer.body]).toEqual([204, ''])
  })

  it('refuses as the calculation does', async () => {
    for (const request of [
      { driverCount: 2, coilsPerDriver: 1 },
      { ...coils.body, coilsOhm: [4, 4] },
      { coilOhm: '4' }
    ]) {
      const { statusCode, body } = await dry(coils.url, request)
      const real = await post(coils.url, request)
      expect(statusCode).toBe(real.status)
      const pointers = (errors: { pointer: string; code: string }[]) =>
        errors.map(({ pointer, code }) => [pointer, code])
      expect(pointers(JSON.parse(body).errors)).toEqual(pointers(real.body.errors))
    }
    expect((await dry('/v1/coils/wiring', coils.body)).statusCode).toBe(204)
  })

  it('says in the language asked for what the calculation says', async () => {
    const request = { ...coils.body, cable: { lengthM: 3 } }
    for (const language of ['en', 'de']) {
      const ask = async (url: string) =>
        (
          await (
            await testApp()
          ).inject({
            method: 'POST',
            url,
            headers: { 'accept-language': language },
            payload: request
          })
        ).json()
      const [only, real] = [await ask(`${coils.url}?validate=only`), await ask(coils.url)]
      expect(only.errors[0].detail).toMatch(language === 'de' ? /Lautsprecherkabel/ : /loudspeaker cable/)
      expect([only.code, only.title, only.detail]).toEqual([real.code, real.title, real.detail])
    }
    expect((await dry(coils.url, coils.body)).statusCode).toBe(204)
    expect((await post(`${coils.url}?validate=yes`, coils.body)).status).toBe(400)
  })
})

const ROUNDS = 150
/** Those with an object that has conditions; of the others the test shows that nothing is refused wrongly. */
const held = [
  'wireCoils',
  'chooseCable',
  'computeResponse',
  'sizePort',
  'sizeEnclosure',
  'computeTolerance',
  'computeCurrent',
  'completeDriverParameters'
]

describe('conditions of a schema', () => {
  for (const { operationId, path, body, examples, answerText } of operations) {
    it(`of ${operationId} are refusals of the calculation, and the schema served alone says the same`, async () => {
      const fits = requestValidator().compile(body)
      const { $id = '' } = body as JsonSchema
      const served = (await (await testApp()).inject(`/v1/schemas/${$id}`)).json()
      const alone = new Ajv2020({ strict: false }).compile(served)
      const random = seeded(7)
      let unmet = 0
      for (let round = 0; round < ROUNDS; round++) {
        const example = pick(random, Object.values(examples)).request
        const request = JSON.parse(
          JSON.stringify(
            round % 2 === 0 ? valueFor(requestSchema(path), random, 0.6) : nearExample(path, example, random)
          )
        )
        if (fits(request) !== true) continue
        const faults = unmetConditions(body as JsonSchema, request)
        expect(alone(request), JSON.stringify(request)).toBe(faults.length === 0)
        if (faults.length === 0) continue
        unmet++
        expect(() => answerText(request, { digits: 'six', basis: false }), JSON.stringify(request)).toThrow(DesignError)
      }
      if (held.includes(operationId)) expect(unmet).toBeGreaterThan(0)
    })
  }
})
