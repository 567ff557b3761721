/** Filters, cabin, limits and tolerances as a caller over HTTP meets them. */
import { describe, expect, it } from 'vitest'
import { post } from '../support/call.ts'

const driver = { fsHz: 31, qms: 5.2, qes: 0.47, vasL: 55, sdCm2: 483, reOhm: 3.3, leMh: 1.4, xmaxMm: 12, powerW: 400 }
const vented = {
  driver,
  enclosure: { kind: 'vented', rear: { netVolumeL: 58, leakQ: 7, port: { areaCm2: 78.5398, lengthMm: 280 } } },
  source: { voltageV: 30 },
  frequenciesHz: [15, 25, 32, 40, 60, 100]
}
const response = (change: object) => post('/v1/enclosures/response?basis=true', { ...vented, ...change })

describe('filters over HTTP', () => {
  it('give half power at a Butterworth corner, in public units', async () => {
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 4, cornerHz: 32 }]
    const { body } = await response({ filters })
    expect(body.result.curves.filterGainDb[2]).toBeCloseTo(-3.0103, 4)
    expect(body.result.curves.filterGroupDelayMs[2]).toBeGreaterThan(5)
    expect(body.result.curves.filterGroupDelayMs[2]).toBeLessThan(20)
    expect(body.sources).toContain('butterworth-1930')
  })

  it('are refused by a pointer to the fault', async () => {
    const odd = await response({ filters: [{ kind: 'low-pass', family: 'linkwitz-riley', order: 3, cornerHz: 80 }] })
    expect(odd.status).toBe(422)
    expect(odd.body.errors[0]).toMatchObject({ pointer: '/filters/0/order', code: 'conflicting-input' })
    const wrong = await response({ filters: [{ kind: 'low-pass', cornerHz: 80, order: 2, family: 'unheard-of' }] })
    expect(wrong.status).toBe(400)
    expect(wrong.body.errors[0].pointer).toBe('/filters/0/family')
  })
})

describe('the cabin over HTTP', () => {
  it('adds a curve and leaves the level alone', async () => {
    const [plain, seat] = [await response({}), await response({ cabin: { volumeL: 3000 } })]
    expect(seat.body.result.curves.levelDb).toEqual(plain.body.result.curves.levelDb)
    expect(plain.body.result.curves.seatLevelDb).toBeUndefined()
    const { curves, cabin } = seat.body.result
    expect(curves.seatLevelDb[0]).toBeCloseTo(curves.levelDb[0] + curves.cabinGainDb[0], 3)
    expect(cabin).toMatchObject({ model: 'pressure-vessel', uncertaintyDb: 6 })
    // (c/2π)·√(2π·1 m/3 m³) with c 343.21 m/s
    expect(cabin.cornerHz).toBeCloseTo(79.0514, 3)
    expect(seat.body.assumed.map(({ pointer }: { pointer: string }) => pointer)).toContain('/cabin/leakCornerHz')
    expect(seat.body.cautions.map(({ code }: { code: string }) => code)).toContain('cabin-modes')
  })

  it('takes a measured curve as it is, and refuses it beside a model', async () => {
    const measured = { frequencyHz: [15, 60], gainDb: [12, 0] }
    const { body } = await response({ cabin: { measured } })
    expect(body.result.curves.cabinGainDb[0]).toBe(12)
    expect(body.result.curves.cabinGainDb[4]).toBe(0)
    const both = await response({ cabin: { measured, lengthM: 2.5 } })
    expect(both).toMatchObject({ status: 422, body: { code: 'conflicting-input' } })
    expect(both.body.errors[0].pointer).toBe('/cabin/lengthM')
  })
})

describe('limits over HTTP', () => {
  it('name what governs where, in public units', async () => {
    const { body } = await response({ limits: { amplifierPowerW: 400, amplifierLoadOhm: 4 } })
    const { curves, limits } = body.result
    expect(curves.governingLimit[0]).toBe('cone-excursion')
    expect(curves.maximumLevelDb).toHaveLength(6)
    expect(limits.segments[0]).toMatchObject({ limit: 'cone-excursion', fromHz: 15 })
    expect(limits.atDrive.coneExcursionMm).toBeGreaterThan(12)
    expect(limits.atDrive.coneExcursionOfXmax).toBeCloseTo(limits.atDrive.coneExcursionMm / 12, 4)
    expect(limits.protection).toMatchObject({ needed: true, highPass: [{ order: 2 }, { order: 3 }, { order: 4 }] })
    expect(limits.protection.belowHz).toBe(body.result.scalars.tuningHz)
    expect(body.cautions[0]).toMatchObject({ level: 'stop' })
  })

  it('point at the caution in the words of the request', async () => {
    const { body } = await response({ limits: {} })
    const unloaded = body.cautions.find(({ code }: { code: string }) => code === 'unprotected-below-tuning')
    expect(unloaded.at).toBe('/driver/xmaxMm')
  })

  it('are refused where nothing is known to limit', async () => {
    const { xmaxMm: _, powerW: __, ...bare } = driver
    const enclosure = { kind: 'closed', rear: { netVolumeL: 30 } }
    const { status, body } = await response({ driver: bare, enclosure, limits: {} })
    expect(status).toBe(422)
    expect(body.errors[0]).toMatchObject({ pointer: '/driver/xmaxMm', code: 'missing-input' })
  })
})

describe('tolerances over HTTP', () => {
  const request = { ...vented, samples: 60, seed: 9, percentiles: [10, 90] }

  it('echo the seed, answer alike for it, and give bands in public units', async () => {
    const [one, two] = [
      await post('/v1/enclosures/tolerance', request),
      await post('/v1/enclosures/tolerance', request)
    ]
    expect(one.status, JSON.stringify(one.body)).toBe(200)
    expect(one.body).toEqual(two.body)
    const { seed, samples, bands, figures, nominal, sensitivities } = one.body.result
    expect({ seed, samples }).toEqual({ seed: 9, samples: 60 })
    expect(bands.map(({ percent }: { percent: number }) => percent)).toEqual([10, 90])
    expect(figures.peakExcursion.nominalMm).toBe(Math.max(...nominal.coneExcursionMm))
    expect(figures.tuning.percentilesHz[0]).toBeLessThan(figures.tuning.percentilesHz[1])
    const volume = sensitivities.find(
      (row: { figure: string; parameter: string }) => row.figure === 'tuning' && row.parameter === 'rear-volume'
    )
    expect(volume.elasticity).toBeCloseTo(-0.5, 5)
  })

  it('assume a seed and say so', async () => {
    const { seed: _, ...unseeded } = request
    const { body } = await post('/v1/enclosures/tolerance', unseeded)
    expect(body.assumed.find(({ pointer }: { pointer: string }) => pointer === '/seed')?.value).toBe(1)
  })

  it('refuse what would take too long, with the bound', async () => {
    const long = { ...request, samples: 4000, frequenciesHz: { fromHz: 10, toHz: 100, points: 328 } }
    const { status, body } = await post('/v1/enclosures/tolerance', long)
    expect(status).toBe(422)
    expect(body.errors[0]).toMatchObject({ pointer: '/samples', bounds: { maximum: 2000 } })
  })
})

describe('pointers', () => {
  it('reach into the branch of a union that knows the name, with its unit', async () => {
    const { body } = await response({})
    const found = body.assumed.filter(({ pointer }: { pointer: string }) => pointer.startsWith('/enclosure'))
    expect(found.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      '/enclosure/rear/absorptionQ',
      '/enclosure/rear/port/count',
      '/enclosure/rear/port/endFactor',
      '/enclosure/rear/port/lossQ'
    ])
  })

  it('name the port whose air is too fast', async () => {
    const { body } = await response({ source: { voltageV: 60 } })
    const fast = body.cautions.find(({ code }: { code: string }) => code === 'port-air-speed')
    expect(fast.at).toBe('/enclosure/rear/port')
  })

  it('warn of passive radiators whose travel is not known', async () => {
    const passiveRadiators = { areaCm2: 500, massG: 400, complianceMmPerN: 0.3 }
    const enclosure = { kind: 'passive-radiator', rear: { netVolumeL: 50, passiveRadiators } }
    const unknown = await response({ enclosure, limits: {} })
    expect(unknown.body.cautions.map(({ code }: { code: string }) => code)).toContain('passive-radiator-travel-unknown')
    const known = await response({ enclosure, limits: { passiveRadiatorXmaxMm: 15 } })
    expect(known.body.cautions.map(({ code }: { code: string }) => code)).toContain('passive-radiator-excursion')
    expect(known.body.result.curves.governingLimit).toContain('passive-radiator-excursion')
  })
})
