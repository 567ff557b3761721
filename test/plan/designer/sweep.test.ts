/** No ordinary request ends without a box to build, or without the change that gives one. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
import { estatePlan, leaningPlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { mergePatch } from '../../support/merge-patch.ts'
import { sweepRequests } from '../../support/sweep-requests.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (request: unknown): Answer =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))

function expectBuildable({ result }: Answer): void {
  const { box, response } = result.parts
  expect(['ready', 'take-care']).toContain(result.summary.verdict)
  expect(box.answer.result.clearances.every(({ passes }: Answer) => passes)).toBe(true)
  const { coneExcursionOfXmax, portAirSpeedMPerS = 0 } = response.answer.result.limits.atDrive
  expect(coneExcursionOfXmax).toBeLessThanOrEqual(1.001)
  // beyond a tenth of the speed of sound nothing is built (common practice, no source)
  expect(portAirSpeedMPerS).toBeLessThan(34)
}

/** Each is planned again by its patch and is, to the last digit, what was said of it. */
function expectWaysOut(request: unknown, changes: Answer): void {
  expect(changes.length).toBeGreaterThan(0)
  for (const { patch, figures, builds } of changes) {
    const again = planned(mergePatch(request, patch))
    expectBuildable(again)
    if (again.result.choice !== undefined) expect(again.result.choice.figures).toEqual(figures)
    expect(again.result.parts.box.answer.result.volume.netL).toBe(figures.netVolumeL)
    expect(builds).toContain(` dB at the seat from 25 to 63 Hz, `)
  }
}

const meanDb = ({ figures }: Answer) =>
  figures.levelDb.reduce((sum: number, each: number) => sum + each, 0) / figures.levelDb.length

/** Every seventh meets every driver, space and wish; SWEEP=all takes them all. */
const asked = sweepRequests.filter((_, index) => process.env.SWEEP === 'all' || index % 7 === 0)

describe('of ordinary requests', () => {
  it.each(asked)('$name: builds a box or says what would', ({ request }) => {
    const plan = planned(request)
    const { waysOut } = plan.result
    if (waysOut === undefined) return expectBuildable(plan)
    const [least] = waysOut.changes
    expect(plan.result.summary.reasons[0]?.detail).toContain(least.change)
    expectWaysOut(request, waysOut.changes)
    // a driver of 30 cm or more is too high for the lower boots, whatever is built round it
    expect(waysOut.largestDriver.nominalMm).toBeLessThanOrEqual(300)
  })
})

const offTheFront = (face: string, driver: object) => ({
  ...estatePlan,
  driver: { ...estatePlan.driver, ...driver, mounting: { ...estatePlan.driver.mounting, face } }
})

describe('where one change is not enough', () => {
  it('joins two, for drivers on the lid of a boot too low for them', () => {
    const low = { ...estatePlan.car, space: { widthMm: 950, heightMm: 380, depthMm: 330 } }
    const request = { ...offTheFront('top', {}), car: low }
    const { waysOut } = planned(request).result
    expect(waysOut.changes[0].patch).toMatchObject({ driver: { mounting: { face: null } }, car: { space: {} } })
    expectWaysOut(request, waysOut.changes)
  })
})

describe('where the room is too low for drivers on the front', () => {
  it('sets them into the lid, as under a seat', () => {
    const low = { ...estatePlan.car, space: { widthMm: 950, heightMm: 300, depthMm: 460 } }
    const request = { ...estatePlan, car: low }
    const { changes } = planned(request).result.waysOut
    expect(changes.map((each: Answer) => each.patch)).toContainEqual({ driver: { mounting: { face: 'top' } } })
    expectWaysOut(request, changes)
  })
})

describe('where several changes would do', () => {
  it('says first what costs the least: the level less 1.8 dB a doubling of the room, as the wish takes for it', () => {
    const ways = planned(offTheFront('left', {})).result.waysOut.changes
    const worth = ways.map((way: Answer) => meanDb(way) - 1.8 * Math.log2(way.figures.outerVolumeL))
    expect(ways.length).toBeGreaterThan(1)
    expect(worth).toEqual(worth.toSorted((a: number, b: number) => b - a))
  })
})

describe('the least box of a leaning boot', () => {
  it('is a larger one where the least does not stand, not a textbook’s', () => {
    const { choice, tried, summary } = planned({ ...leaningPlan, enclosure: { goal: 'small' } }).result
    expect(choice.goal).toBe('small')
    expect(tried.length).toBeGreaterThan(0)
    expect(choice.figures.netVolumeL).toBeLessThan(60)
    expect(summary.reasons).toEqual([])
  })
})
