/** No ordinary request ends without a box to build, or without the change that gives one. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
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

/** Every seventh meets every driver, space and wish; SWEEP=all takes them all. */
const asked = sweepRequests.filter((_, index) => process.env.SWEEP === 'all' || index % 7 === 0)

describe('of ordinary requests', () => {
  it.each(asked)('$name: builds a box or says what would', ({ request }) => {
    const plan = planned(request)
    const { waysOut } = plan.result
    if (waysOut === undefined) return expectBuildable(plan)
    const [least] = waysOut.changes
    expect(plan.result.summary.reasons[0]?.detail).toContain(least.change)
    for (const { patch } of waysOut.changes) expectBuildable(planned(mergePatch(request, patch)))
    // a driver of 30 cm or more is too high for the lower boots, whatever is built round it
    expect(waysOut.largestDriver.nominalMm).toBeLessThanOrEqual(300)
  })
})
