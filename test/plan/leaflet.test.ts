/** A leaflet that leaves the travel of the cone out: the plan holds the cone all the same, and says by what. */
import { beforeAll, describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
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
