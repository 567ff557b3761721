/** Which calls leave the thread that answers everybody. Whether the figures are true is measured by scripts/bench/cost.ts. */
import { describe, expect, it } from 'vitest'
import { wireCoils } from '../../src/http/operations/coils/coil-wiring.ts'
import { twelveInch } from '../../src/http/operations/drivers/twelve-inch.ts'
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { operations } from '../../src/http/operations.ts'
import { isHeavy, MOST_HERE_MS } from '../../src/http/wire/operation.ts'

const options = { digits: 'six', basis: false } as const

describe('cost model', () => {
  for (const operation of operations) {
    it(`gives ${operation.operationId} a cost for each example and form`, () => {
      for (const { request } of Object.values(operation.examples)) {
        const json = operation.costMs(request, options)
        expect(json).toBeGreaterThan(0)
        expect(json).toBeLessThan(60_000)
        for (const { mediaType } of operation.forms) {
          expect(operation.costMs(request, { ...options, form: mediaType })).toBeGreaterThanOrEqual(json)
        }
      }
    })
  }

  it('sends five unlike coils to a worker, and keeps what is quick', () => {
    const unlike = (coilsOhm: readonly number[]) => ({ driverCount: coilsOhm.length, coilsPerDriver: 1, coilsOhm })
    expect(isHeavy(wireCoils, unlike([1, 2, 3, 4, 5]), options)).toBe(true)
    expect(isHeavy(wireCoils, unlike([2, 4, 8]), options)).toBe(false)
    expect(isHeavy(wireCoils, { driverCount: 16, coilsPerDriver: 4, coilOhm: 4 }, options)).toBe(false)
  })

  it('sends a large response to a worker by points, parts and limits', () => {
    const enclosure = { kind: 'closed', rear: { netVolumeL: 40 } }
    const response = (more: object) => ({ driver: twelveInch, enclosure, source: { voltageV: 20 }, ...more })
    const points = (count: number) => ({ frequenciesHz: { fromHz: 10, toHz: 300, points: count } })
    const cost = (more: object) => computeResponse.costMs(response(more), options)
    expect(cost({})).toBeLessThan(MOST_HERE_MS)
    expect(cost({ limits: {}, ...points(2000) })).toBeGreaterThan(MOST_HERE_MS)
    expect(cost(points(2000))).toBeGreaterThan(cost(points(200)))
    const chambers = Array.from({ length: 12 }, (_, k) => ({ name: `c${k}`, netVolumeL: 20 }))
    const ports = chambers.map(({ name }) => ({
      name: `p${name}`,
      from: name,
      to: 'outside',
      areaCm2: 80,
      lengthMm: 200
    }))
    const driverGroups = [{ name: 'd', front: 'outside', rear: 'c0' }]
    expect(cost({ enclosure: { kind: 'custom', chambers, ports, driverGroups } })).toBeGreaterThan(MOST_HERE_MS)
  })
})
