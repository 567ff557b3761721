/** What a caller of the three sizing resources meets over HTTP: public units, pointers, refusals. */
import { describe, expect, it } from 'vitest'
import { post } from '../../support/call.ts'

const sheet = {
  fsHz: 30,
  qms: 5,
  qes: 0.45,
  vasL: 60,
  vasAir: 'request',
  sdCm2: 483,
  reOhm: 3.4,
  leMh: 1.5,
  xmaxMm: 12,
  powerW: 500
}
const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }

describe('POST /v1/drivers/parameters', () => {
  it('answers in the units of data sheets (Mms 155.202 g, Cms 0.181343 mm/N, Bl 14.8673; recomputed from Small 1972)', async () => {
    const { status, body } = await post('/v1/drivers/parameters', { driver: sheet, air })
    expect(status).toBe(200)
    expect(body.result.driver).toMatchObject({ mmsG: 155.202, cmsMmPerN: 0.181343, blTm: 14.8673, sdCm2: 483 })
    expect(body.result.figures.sweptVolumeL).toBeCloseTo(0.5796, 4)
    expect(body.result.origins.mmsG.origin).toBe('derived')
  })

  it('points at the figure in doubt and says the other reading in its unit', async () => {
    const { body } = await post('/v1/drivers/parameters', { driver: { ...sheet, mmsG: 155.2, vasL: 2.11888 }, air })
    const slip = body.cautions.find(({ code }: { code: string }) => code === 'driver-unit-slip')
    expect(slip.at).toBe('/driver/vasL')
    expect(body.result.slips[0]).toMatchObject({ id: 'vas-in-cubic-feet', mended: { vasL: 60 } })
    expect(body.cautions[0].level).toBe('stop')
  })

  it('takes its own answer as the driver of a response, and answers like the sheet', async () => {
    const { body } = await post('/v1/drivers/parameters?digits=full', { driver: sheet })
    const ask = (driver: unknown) =>
      post('/v1/enclosures/response?digits=full', {
        driver,
        enclosure: { kind: 'closed', rear: { netVolumeL: 30 } },
        source: { voltageV: 2.83 },
        frequenciesHz: [40]
      })
    const [mine, theirs] = [await ask(body.result.driver), await ask(sheet)]
    expect(mine.status).toBe(200)
    expect(mine.body.result.curves.levelDb[0]).toBeCloseTo(theirs.body.result.curves.levelDb[0], 9)
  })

  it('refuses too little with a pointer to what would complete the set', async () => {
    const { status, body } = await post('/v1/drivers/parameters', {
      driver: { fsHz: 30, qms: 5, qes: 0.45, sdCm2: 483, reOhm: 3.4 }
    })
    expect(status).toBe(422)
    expect(body.code).toBe('missing-input')
    expect(body.errors.map(({ pointer }: { pointer: string }) => pointer)).toContain('/driver/vasL')
    expect((await post('/v1/drivers/parameters', { driver: {} })).status).toBe(422)
  })
})

describe('POST /v1/enclosures/sizing', () => {
  it('gives a closed box in litres (Qtc 0.707 of Qts 0.412844: 31.04 L) and echoes every default', async () => {
    const { status, body } = await post('/v1/enclosures/sizing', { driver: sheet, air })
    expect(status).toBe(200)
    const closed = body.result.candidates.find(
      ({ kind, preferred }: { kind: string; preferred: boolean }) => kind === 'closed' && preferred
    )
    expect(closed.netVolumeL).toBeCloseTo(31.044, 2)
    const vented = body.result.candidates.find(
      ({ kind, preferred }: { kind: string; preferred: boolean }) => kind === 'vented' && preferred
    )
    expect(vented.alignment).toBe('c4')
    expect(body.assumed.map(({ pointer }: { pointer: string }) => pointer)).toEqual(
      expect.arrayContaining(['/wanted/qtc', '/losses/leakQ', '/kinds', '/drivers/count'])
    )
  })

  it('says the same half power as the response of the finished box with the port that is sized for it', async () => {
    const sized = await post('/v1/enclosures/sizing?digits=full', { driver: sheet, kinds: ['vented'] })
    const { netVolumeL, tuningHz, response } = sized.body.result.candidates[0]
    const port = await post('/v1/ports/sizing?digits=full', {
      netVolumeL,
      tuningHz,
      driver: sheet,
      source: { voltageV: 20 }
    })
    const { count, areaCm2, lengthMm, endFactor } = port.body.result.recommended
    const { body } = await post('/v1/enclosures/response?digits=full', {
      driver: sheet,
      enclosure: { kind: 'vented', rear: { netVolumeL, leakQ: 7, port: { count, areaCm2, lengthMm, endFactor } } },
      source: { voltageV: 20 },
      frequenciesHz: [tuningHz]
    })
    expect(body.result.scalars.tuningHz / tuningHz).toBeCloseTo(1, 9)
    expect(body.result.scalars.f3Hz / response.f3Hz).toBeCloseTo(1, 9)
    const speed = port.body.result.recommended.airSpeedAtTuningMPerS
    expect(body.result.curves.rearPortAirSpeedMPerS[0] / speed).toBeCloseTo(1, 9)
  })

  it('refuses bounds that are broken, with pointer and bound', async () => {
    const { status, body } = await post('/v1/enclosures/sizing', { driver: sheet, wanted: { netVolumeL: -3 } })
    expect(status).toBe(400)
    expect(body.errors[0].pointer).toBe('/wanted/netVolumeL')
    const strings = await post('/v1/enclosures/sizing', { driver: sheet, drivers: { count: 3, inSeries: 2 } })
    expect([strings.status, strings.body.errors[0].pointer]).toEqual([422, '/drivers/inSeries'])
  })
})

describe('POST /v1/ports/sizing', () => {
  it('tells the tuning of a port given whole (c 343.2, 60 L, d 0.1 m, 300 mm: Leff 373.15 mm → 32.35 Hz by hand)', async () => {
    const { status, body } = await post('/v1/ports/sizing', {
      netVolumeL: 60,
      air,
      port: { kind: 'round', count: 1, diameterMm: 100, lengthMm: 300 }
    })
    expect(status).toBe(200)
    expect(body.result.recommended.effectiveLengthMm).toBeCloseTo(373.15, 2)
    expect(body.result.tuningHz).toBeCloseTo(32.3516, 3)
    expect(body.cautions.map(({ code }: { code: string }) => code)).toContain('port-speed-unchecked')
  })

  it('refuses a wish of the wrong kind by the branch that is meant', async () => {
    const { status, body } = await post('/v1/ports/sizing', {
      netVolumeL: 60,
      tuningHz: 30,
      port: { kind: 'slot', heightMm: 40 }
    })
    expect(status).toBe(400)
    expect(body.errors.map(({ pointer }: { pointer: string }) => pointer)).toContain('/port/widthMm')
  })
})

describe('GET /v1/reference/alignments', () => {
  it('lists every alignment with members', async () => {
    const { testApp } = await import('../../support/call.ts')
    const app = await testApp()
    const { rows } = JSON.parse((await app.inject('/v1/reference/alignments')).body)
    const qb3 = rows.find(({ id }: { id: string }) => id === 'qb3')
    // QT 0.3, QL 7 → h 1.3145, α 2.8452 (Small 1973, from memory)
    const member = qb3.members.find(({ qts, leakQ }: { qts: number; leakQ?: number }) => qts === 0.3 && leakQ === 7)
    expect(member.tuningRatio).toBeCloseTo(1.3145, 4)
    expect(member.alpha).toBeCloseTo(2.8452, 4)
  })
})
