/** Leaflets that leave much out: the plan holds the cone and the coil all the same, builds the box that is given, and says what it cannot say. */
import { beforeAll, describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { mergePatch } from '../support/merge-patch.ts'
import { postTo } from '../support/post-to.ts'

const post = postTo(planSystem)
const { xmaxMm: _, ...leaflet } = hatchbackPlan.driver.sheet
const withSheet = (sheet: object) => ({ ...hatchbackPlan, driver: { ...hatchbackPlan.driver, sheet } })
type Body = Awaited<ReturnType<typeof post>>['body']

const travelOf = ({ assumed }: Body) =>
  assumed.find(({ pointer }: { pointer: string }) => pointer === '/driver/sheet/xmaxMm')
const codes = ({ cautions }: Body) => cautions.map(({ code }: { code: string }) => code)

describe('a plan by a leaflet without Xmax', () => {
  let open: Body
  let told: Body
  beforeAll(async () => {
    open = (await post('/v1/plans', withSheet(leaflet))).body
    told = (await post('/v1/plans', withSheet({ ...leaflet, xmaxMm: 5 }))).body
  }, 120_000)

  it('takes a fiftieth of the diameter of the piston, by hand: √(4·490 cm²/π)/50 = 5.0 mm, and says so', () => {
    expect(travelOf(open).value).toBe(5)
    expect(open.cautions.find(({ code }: { code: string }) => code === 'travel-assumed').level).toBe('care')
  })

  it('is the very plan of a sheet that says so much, which needs no such caution', () => {
    expect(travelOf(told)).toBeUndefined()
    expect(codes(told)).not.toContain('travel-assumed')
    expect(open.result.parts.response.answer.result).toEqual(told.result.parts.response.answer.result)
  })

  it('holds the cone of a searched box to it over the whole programme', async () => {
    const { enclosure: __, ...searched } = withSheet(leaflet)
    const { body } = await post('/v1/plans', searched)
    const { atDrive } = body.result.parts.response.answer.result.limits
    expect(atDrive.coneExcursionMm).toBeGreaterThan(2)
    expect(atDrive.coneExcursionMm).toBeLessThanOrEqual(5.05)
  }, 60_000)

  it('takes the piston from the nominal diameter where the leaflet gives no area', async () => {
    const { sdCm2: __, ...bare } = leaflet
    const { body } = await post('/v1/plans', withSheet({ ...bare, nominalDiameterMm: 305 }))
    // 0.82 · 305 mm / 50 = 5.0 mm
    expect(travelOf(body).value).toBe(5)
  }, 60_000)
})

const bare = {
  ...hatchbackPlan,
  driver: {
    sheet: { nominalDiameterMm: 254, powerW: 250 },
    coils: { count: 1, ratedOhm: 4 },
    mounting: { cutOutDiameterMm: 232, flangeDiameterMm: 265, mountingDepthMm: 142 }
  },
  enclosure: { kind: 'vented', netVolumeL: 45, tuningHz: 33 }
} as const

/** Sizes of a piston by hand. */
const diameterMm = 0.82 * 254
const areaCm2 = (Math.PI / 4) * (diameterMm / 10) ** 2

describe('a plan by a leaflet of volume and tuning', () => {
  let body: Body
  beforeAll(async () => {
    body = (await post('/v1/plans', bare)).body
  }, 60_000)

  it('gives the box, its port, its panels, its bill and its order of work', () => {
    const { summary, parts, billOfMaterials, buildOrder } = body.result
    expect(summary.verdict).toBe('take-care')
    expect(summary.figures.netVolumeL).toBeCloseTo(45, 0)
    expect(parts.sheets.answer.result.total.sheetCount).toBeGreaterThan(0)
    expect(billOfMaterials.length).toBeGreaterThan(20)
    expect(buildOrder.steps.length).toBeGreaterThan(20)
  })

  it('says first what it cannot say, and says nothing of it', () => {
    expect(body.result.summary.reasons[0].code).toBe('leaflet-box')
    expect(body.cautions[0]).toMatchObject({ code: 'leaflet-box', level: 'care' })
    const { figures } = body.result.summary
    for (const figure of ['f3Hz', 'peakLevelDb', 'coneExcursionMm', 'airSpeedMPerS'])
      expect(figures[figure]).toBeUndefined()
    expect(body.result.cover.band).toBeUndefined()
    expect(body.result.headroom).toBeUndefined()
  })

  it('has a port of the area of Small 1973 (from memory), 0.8·fB·VD for 5 % of the speed of sound, at 17 m/s', () => {
    const sweptM3 = areaCm2 * 1e-4 * diameterMm * 1e-3 * 0.05
    // sweptVolumeM3: 341 cm² by 10.4 mm
    expect(sweptM3 * 1e3).toBeCloseTo(0.355, 3)
    const wantedCm2 = (0.8 * 33 * sweptM3 * 0.05 * 343.2 * 1e4) / 17
    const { recommended } = body.result.parts.port.answer.result
    expect(recommended.totalAreaCm2 / wantedCm2).toBeCloseTo(1, 1)
    // common practice, no source: 60 to 160 cm² for 45 L
    expect(wantedCm2).toBeGreaterThan(60)
    expect(wantedCm2).toBeLessThan(160)
  })

  it('is tuned by a Helmholtz resonator of the size that is cut, ends of a flanged pipe and a wall', () => {
    const { recommended } = body.result.parts.port.answer.result
    const lengthM = recommended.effectiveLengthMm / 1e3
    const { netL } = body.result.parts.box.answer.result.volume
    const hz = (343.2 / (2 * Math.PI)) * Math.sqrt((recommended.totalAreaCm2 * 1e-4) / (lengthM * netL * 1e-3))
    expect(hz).toBeCloseTo(33, 0)
  })

  it('sets the high-pass of a cone that nothing is known of by the tuning', () => {
    const { highPass } = body.result.parts.signal.answer.result.filters
    expect(highPass.cornerHz).toBeCloseTo(0.8 * 33, 1)
  })

  it('builds a closed box likewise, without a port', async () => {
    const closed = await post('/v1/plans', { ...bare, enclosure: { kind: 'closed', netVolumeL: 25 } })
    const { summary, parts } = closed.body.result
    expect(summary.verdict).toBe('take-care')
    expect(parts.port).toBeUndefined()
    expect(summary.figures.netVolumeL).toBeCloseTo(25, 0)
  }, 60_000)

  it('says what a port needs where nothing tells the size of the cone, unless its area is given', async () => {
    const driver = { ...bare.driver, sheet: { powerW: 250 } }
    const unsized = await post('/v1/plans', { ...bare, driver })
    expect(unsized.body.result.summary.verdict).toBe('incomplete')
    expect(JSON.stringify(unsized.body.result.summary.reasons)).toContain('nominal diameter')
    const sized = await post('/v1/plans', { ...bare, driver, enclosure: { ...bare.enclosure, portAreaCm2: 90 } })
    expect(sized.body.result.parts.port.answer.result.recommended.totalAreaCm2).toBeCloseTo(90, 0)
    expect(sized.body.result.summary.verdict).toBe('take-care')
  }, 60_000)

  it('names the nearest miss where it does not fit', async () => {
    const large = await post('/v1/plans', { ...bare, enclosure: { ...bare.enclosure, netVolumeL: 200 } })
    const { verdict, reasons } = large.body.result.summary
    expect(verdict).toBe('incomplete')
    expect(reasons.map(({ code }: { code: string }) => code)).toEqual(['no-box-fits', 'waiting'])
  }, 60_000)

  it('is read once the sheet tells what the driver is: the leaflet only guides then', async () => {
    const { body: known } = await post('/v1/plans', {
      ...bare,
      driver: hatchbackPlan.driver,
      enclosure: { kind: 'closed', netVolumeL: 40 }
    })
    expect(codes(known)).not.toContain('leaflet-box')
    expect(known.result.summary.figures.f3Hz).toBeGreaterThan(10)
  }, 60_000)
})

describe('a sheet without ratings', () => {
  const { powerW: _p, leMh: _l, ...thin } = hatchbackPlan.driver.sheet
  let body: Body
  beforeAll(async () => {
    body = (await post('/v1/plans', withSheet(thin))).body
  }, 60_000)

  const assumedAt = (pointer: string) =>
    body.assumed.find((each: { pointer: string }) => each.pointer === pointer)?.value

  it('takes half a watt for each square centimetre of cone: 490 cm² → 245 W, to two digits', () => {
    expect(assumedAt('/driver/sheet/powerW')).toBe(250)
    expect(body.cautions.find(({ code }: { code: string }) => code === 'rating-assumed').level).toBe('care')
    expect(body.result.summary.figures.powerW).toBeLessThanOrEqual(250)
  })

  it('takes half a millihenry for each ohm: 3.4 Ω → 1.7 mH', () => {
    expect(assumedAt('/driver/sheet/leMh')).toBe(1.7)
    expect(body.result.parts.driver.request.driver.leMh).toBe(1.7)
  })
})

describe('a leaflet whose box the space does not hold', () => {
  const low = { ...hatchbackPlan.car, space: { ...hatchbackPlan.car.space, heightMm: 300 } }
  let body: Body
  beforeAll(async () => {
    body = (await post('/v1/plans', { ...bare, car: low })).body
  }, 120_000)

  it('is told what would make it fit, with no word on the sound, and the change does it', async () => {
    const { changes } = body.result.waysOut
    expect(body.result.summary.verdict).toBe('incomplete')
    expect(changes.length).toBeGreaterThan(0)
    for (const { builds, figures, patch } of changes) {
      expect(figures).toBeUndefined()
      expect(builds).not.toContain('dB')
      const { body: again } = await post('/v1/plans', mergePatch({ ...bare, car: low }, patch))
      expect(again.result.summary.verdict).toBe('take-care')
      expect(again.result.parts.box.answer.result.volume.netL).toBeCloseTo(45, 0)
    }
  }, 120_000)

  it('is never built for fewer drivers: the leaflet told it for so many', async () => {
    const narrow = { ...low, space: { ...low.space, widthMm: 480, heightMm: 400 } }
    const { body: two } = await post('/v1/plans', { ...bare, driverCount: 2, car: narrow })
    expect(two.result.summary.verdict).toBe('incomplete')
    for (const { patch } of two.result.waysOut.changes) expect(patch.driverCount).toBeUndefined()
  }, 120_000)
})
