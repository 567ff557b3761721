/** Curves and lists as CSV: the names of the answer, its public units, its figures. */
import { describe, expect, it } from 'vitest'
import { post, testApp } from '../support/call.ts'
import { numbersOf, readCsv, textsOf } from '../support/csv-reader.ts'
import { complaintsAboutXml } from '../support/well-formed.ts'

async function ask(url: string, payload: object, accept = 'text/csv') {
  const app = await testApp()
  const reply = await app.inject({ method: 'POST', url, payload, headers: { accept } })
  expect(reply.statusCode, reply.body.slice(0, 400)).toBe(200)
  return reply
}
const table = async (url: string, payload: object) => readCsv((await ask(url, payload)).body)

const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasL: 58, sdCm2: 490, reOhm: 3.4, leMh: 1.6, xmaxMm: 14, powerW: 600 }
const response = {
  driver,
  enclosure: {
    kind: 'vented',
    rear: { netVolumeL: 62, leakQ: 7, port: { count: 1, areaCm2: 110, lengthMm: 290 } }
  },
  source: { voltageV: 2.83 },
  frequenciesHz: [20, 31.5, 50, 80, 100]
}

describe('CSV of a response', () => {
  it('has a row a frequency, columns named and scaled as in the answer', async () => {
    const read = await table('/v1/enclosures/response', { ...response, limits: {}, cabin: { volumeL: 3000 } })
    const { body } = await post('/v1/enclosures/response', { ...response, limits: {}, cabin: { volumeL: 3000 } })
    expect(read[0]?.toSorted()).toEqual(Object.keys(body.result.curves).toSorted())
    for (const [name, values] of Object.entries(body.result.curves)) {
      if (name === 'governingLimit') expect(textsOf(read, name)).toEqual(values)
      else expect(numbersOf(read, name), name).toEqual(values)
    }
  })

  it('gives excursion in millimetres: peak excursion times ω is √2 times the RMS velocity', async () => {
    const read = await table('/v1/enclosures/response', response)
    const velocity = numbersOf(read, 'coneVelocityMPerS')
    numbersOf(read, 'frequencyHz').forEach((hz, index) => {
      const mm = (Math.SQRT2 * 1000 * (velocity[index] ?? 0)) / (2 * Math.PI * hz)
      expect(Math.abs((numbersOf(read, 'coneExcursionMm')[index] ?? 0) / mm - 1)).toBeLessThan(1e-5)
    })
  })

  it('gives every digit when asked for', async () => {
    const read = await table('/v1/enclosures/response?digits=full', response)
    expect(textsOf(read, 'levelDb').some(text => text.replace(/\D/g, '').length > 10)).toBe(true)
  })

  it('adds the curves of named parts, and lets no name of a caller run as a formula', async () => {
    const custom = {
      kind: 'custom',
      chambers: [{ name: '=box', netVolumeL: 40 }],
      driverGroups: [{ name: 'pair', front: 'outside', rear: '=box' }]
    }
    const [header = []] = await table('/v1/enclosures/response', { ...response, enclosure: custom })
    expect(header).toContain("'=box.pressurePa")
    expect(header).toContain('pair.excursionMm')
    expect(header.filter(name => /^[=+@-]/.test(name))).toEqual([])
  })
})

describe('charts of a response', () => {
  it('come as one SVG with every chart, and are well-formed', async () => {
    const reply = await ask('/v1/enclosures/response', { ...response, limits: {} }, 'image/svg+xml')
    expect(reply.headers['content-type']).toBe('image/svg+xml; charset=utf-8')
    expect(complaintsAboutXml(reply.body)).toEqual([])
    const ids = [...reply.body.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    const titles = ['Sound pressure level', 'Excursion, one way', 'Air speed in the port', 'Impedance at the terminals']
    for (const title of titles) expect(reply.body).toContain(`>${title}<`)
    for (const text of ['Xmax 14 mm', 'most within every limit']) expect(reply.body).toContain(text)
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(reply.body) ?? []
    const tops = [...reply.body.matchAll(/<svg y="(\d+)"/g)].map(([, y]) => Number(y))
    expect([Number(width), Number(height)]).toEqual([760, 430 * tops.length])
    expect(tops).toEqual(tops.map((_, index) => 430 * index))
  })
})

describe('CSV of a tolerance run', () => {
  it('puts the bands beside the nominal curves', async () => {
    const request = { ...response, samples: 40, seed: 7, percentiles: [10, 97.5] }
    const read = await table('/v1/enclosures/tolerance', request)
    const { result } = (await post('/v1/enclosures/tolerance', request)).body
    expect(numbersOf(read, 'frequencyHz')).toEqual(result.frequencyHz)
    expect(numbersOf(read, 'nominal.coneExcursionMm')).toEqual(result.nominal.coneExcursionMm)
    expect(numbersOf(read, 'p97.5.levelDb')).toEqual(result.bands[1].levelDb)
    expect(read[0]).toHaveLength(10)
  })
})

describe('CSV of a box', () => {
  const box = {
    outer: { widthMm: 640, heightMm: 400, depthMm: 380 },
    thicknessMm: 18,
    drivers: [{ label: 'driver, "left"', cutOutDiameterMm: 282, mountingDepthMm: 165 }]
  }
  const sizes = (read: string[][]) =>
    Object.fromEntries(
      textsOf(read, 'name').map((name, index) => [
        name,
        ['quantity', 'lengthMm', 'widthMm', 'thicknessMm'].map(column => numbersOf(read, column)[index])
      ])
    )

  it('lists the panels by the rule of the joints, by hand: 640 × 400 × 380 mm in 18 mm', async () => {
    const read = await table('/v1/boxes/panels', box)
    expect(sizes(read)).toEqual({
      top: [1, 640, 380, 18],
      bottom: [1, 640, 380, 18],
      front: [1, 640, 364, 18],
      back: [1, 640, 364, 18],
      side: [2, 364, 344, 18]
    })
    expect(textsOf(read, 'holes').join()).toMatch(/driver, "left"[^;]* ⌀282, centre 320 right and 182 up/)
  })

  it('says how the saw is tilted for a wedge', async () => {
    const outer = { widthMm: 640, heightMm: 400, depthMm: 380, topDepthMm: 250 }
    const wedge = await table('/v1/boxes/panels', { shape: 'wedge', outer, slopedFace: 'back', thicknessMm: 18 })
    // The back leans by atan((380 − 250)/400) = 18.004°.
    expect(textsOf(wedge, 'edges').join()).toMatch(/saw at 18°, (inner|outer) face long/)
  })

  it('lists the cuts in the order of work; every panel comes off once', async () => {
    const panels = [
      { name: 'lid', quantity: 2, lengthMm: 640, widthMm: 380, thicknessMm: 18 },
      { name: 'side, =1', quantity: 2, lengthMm: 364, widthMm: 344, thicknessMm: 18 }
    ]
    const sheets = [{ name: 'full', lengthMm: 2440, widthMm: 1220, thicknessMm: 18 }]
    const read = await table('/v1/boxes/sheets', { panels, sheets, kerfMm: 3 })
    expect(numbersOf(read, 'step')).toEqual(numbersOf(read, 'step').map((_, index) => index + 1))
    const off = ['near', 'far'].flatMap(side =>
      textsOf(read, `${side}Is`).flatMap((is, index) =>
        is === 'panel'
          ? [[textsOf(read, `${side}Name`)[index], numbersOf(read, `${side}LengthMm`)[index]] as const]
          : []
      )
    )
    expect(off.map(([name]) => name).sort()).toEqual(['lid 1', 'lid 2', 'side, =1 1', 'side, =1 2'])
    for (const [name, mm] of off) expect(name?.startsWith('lid') ? [640, 380] : [364, 344]).toContain(mm)
    // What comes off near is as wide as the fence stands.
    numbersOf(read, 'distanceMm').forEach((fence, index) => {
      const side = textsOf(read, 'along')[index] === 'length' ? 'nearWidthMm' : 'nearLengthMm'
      expect(numbersOf(read, side)[index]).toBeCloseTo(fence, 9)
    })
  })
})
