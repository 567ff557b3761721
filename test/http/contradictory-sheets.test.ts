/** A data sheet that contradicts itself is told in every operation that takes a driver, once and alike. */
import { describe, expect, it } from 'vitest'
import { hatchbackSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post, type Reply } from '../support/call.ts'

interface Told {
  readonly code: string
  readonly level: string
  readonly message: string
}

/** Vas 2.05 in cubic feet (58 L) beside the mechanical set of the same driver. */
const sheet = {
  fsHz: 28.3,
  qms: 5.4,
  qes: 0.46,
  vasL: 2.05,
  sdCm2: 490,
  reOhm: 3.1,
  mmsG: 176,
  cmsMmPerN: 0.18,
  blTm: 14.6,
  xmaxMm: 14,
  powerW: 600
}
const ofSheet = ({ body }: Reply): readonly Told[] =>
  body.cautions
    .filter(({ code }: Told) => code === 'driver-figures-disagree' || code === 'driver-unit-slip')
    .map(({ code, level, message }: Told) => ({ code, level, message }))

const closed = { kind: 'closed', rear: { netVolumeL: 30 } }
const source = { voltageV: 20 }
const operations: readonly (readonly [string, object])[] = [
  ['/v1/enclosures/sizing', { driver: sheet }],
  ['/v1/enclosures/response', { driver: sheet, enclosure: closed, source }],
  ['/v1/enclosures/tolerance', { driver: sheet, enclosure: closed, source, samples: 20 }],
  ['/v1/ports/sizing', { driver: sheet, netVolumeL: 60, tuningHz: 31 }]
]

describe('a contradictory data sheet', () => {
  for (const [path, request] of operations) {
    it(`is told by ${path} as by /v1/drivers/parameters`, async () => {
      const told = ofSheet(await post('/v1/drivers/parameters', { driver: sheet }))
      expect(told.map(({ level }) => level)).toContain('stop')
      expect(told.map(({ message }) => message).join()).toContain('cubic feet')
      const reply = await post(path, request)
      expect(reply.status).toBe(200)
      expect(ofSheet(reply)).toEqual(told)
    })
  }

  it('makes a plan stop, each of its cautions said once', async () => {
    const { driver } = hatchbackPlan
    const plan = {
      ...hatchbackPlan,
      driver: { ...driver, sheet: { ...driver.sheet, vasL: 2.05, mmsG: 176, cmsMmPerN: 0.18 } }
    }
    const reply = await post('/v1/plans', plan)
    const told = ofSheet(reply)
    expect(reply.body.result.summary.verdict).toBe('stop')
    expect(told.filter(({ code }) => code === 'driver-unit-slip')).toHaveLength(1)
    expect(new Set(told.map(({ message }) => message)).size).toBe(told.length)
  })

  it('leaves no design in a search', async () => {
    const drivers = hatchbackSearch.drivers.slice(0, 1).map(driver => ({
      ...driver,
      sheet: { ...driver.sheet, mmsG: 400, cmsMmPerN: 0.5 }
    }))
    const { status, body } = await post('/v1/designs/search', { ...hatchbackSearch, drivers })
    expect(status).toBe(200)
    expect(body.result.designs).toEqual([])
  })

  it('comes in far enough to be named where Sd is in mm²', async () => {
    const { status, body } = await post('/v1/enclosures/response', {
      driver: { ...sheet, vasL: 58, sdCm2: 49_000 },
      enclosure: closed,
      source
    })
    expect(status).toBe(200)
    expect(body.cautions.map(({ message }: Told) => message).join()).toContain('mm²')
  })
})

/** 490 cm² · 14 mm = 0.686 L; six times that is 4.1 L, from (γ + 1)/4·ΔV/V = 0.6·ΔV/V = 10 %. */
describe('a box too small for its driver', () => {
  it('does not suit, whatever the sheet makes of it, and says the figure', async () => {
    const { body } = await post('/v1/enclosures/sizing', { driver: sheet, kinds: ['closed'] })
    for (const { suits, why, netVolumeL } of body.result.candidates) {
      expect(netVolumeL).toBeLessThan(4.1)
      expect(suits).toBe(false)
      expect(why.join()).toContain('Sd·Xmax')
    }
  })

  it('is measured by the cones themselves where no Xmax is given', async () => {
    const { xmaxMm: _, ...unswept } = sheet
    const asked = async (netVolumeL: number) => {
      const wanted = { netVolumeL }
      const { body } = await post('/v1/enclosures/sizing', {
        driver: { ...unswept, vasL: 58 },
        kinds: ['closed'],
        wanted
      })
      return body.result.candidates.find(({ alignment }: { alignment: string }) => alignment === 'as-asked')
    }
    // (2/3)·π·(124.9 mm)³ = 4.08 L
    expect((await asked(4)).why.join()).toContain('behind their cones')
    expect((await asked(4.2)).why.join()).not.toContain('behind their cones')
  })
})

describe('a sheet without Re in a plan', () => {
  it('falls back on the rated impedance of the coils, as joined', async () => {
    const { driver } = hatchbackPlan
    const { reOhm: _, ...rest } = driver.sheet as typeof driver.sheet & { reOhm: number }
    const { body } = await post('/v1/plans', { ...hatchbackPlan, driver: { ...driver, sheet: rest } })
    const part = body.result.parts.driver
    expect(part.done).toBe(true)
    expect(JSON.stringify(part)).toContain('0.85 of the rated impedance')
  })
})
