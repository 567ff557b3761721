/** Worked responses: curves from a circuit simulator, figures from polynomial closed forms, neither from this service. */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { post } from '../../support/call.ts'

const folder = new URL('../../published/responses/', import.meta.url)

interface Worked {
  readonly title: string
  readonly request: object
  readonly mechanicalDriver: object
  readonly curves: Readonly<Record<string, readonly number[]>>
  readonly scalars: Readonly<Record<string, unknown>>
}

/** The figures carry ten digits; a relative 1e-6 leaves room for theirs being refined less far. */
function expectClose(actual: unknown, expected: unknown, name: string): void {
  if (typeof expected === 'number') {
    const allowed = 1e-8 + 4e-6 * Math.abs(expected)
    expect(Math.abs((actual as number) - expected), `${name}: ${actual} for ${expected}`).toBeLessThanOrEqual(allowed)
    return
  }
  const entries = Object.entries(expected as object)
  if (Array.isArray(expected)) expect(actual, name).toHaveLength(entries.length)
  for (const [key, value] of entries) expectClose((actual as Record<string, unknown>)?.[key], value, `${name}.${key}`)
}

describe('worked responses', () => {
  for (const file of readdirSync(folder)) {
    const { title, request, mechanicalDriver, curves, scalars }: Worked = JSON.parse(
      readFileSync(new URL(file, folder), 'utf8')
    )
    it(`${title}: every curve and figure`, async () => {
      const { status, body } = await post('/v1/enclosures/response?digits=full', request)
      expect(status, JSON.stringify(body)).toBe(200)
      expectClose(body.result.curves, curves, 'curves')
      expectClose(body.result.scalars, scalars, 'scalars')
    })

    it(`${title}: the mechanical set of the same driver gives the same`, async () => {
      const { body } = await post('/v1/enclosures/response?digits=full', { ...request, driver: mechanicalDriver })
      expectClose(body.result.curves, curves, 'curves')
      expectClose(body.result.scalars, scalars, 'scalars')
    })
  }
})
