/** One plan says one air speed: what the port was sized for is what the finished box does behind the same filters. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'

const estate = toSi(estatePlan) as unknown as PlanRequest
const variants = [
  { name: 'as in the example', enclosure: estate.enclosure ?? {} },
  {
    name: 'larger and tuned lower, one tube allowed to be loud',
    enclosure: { kind: 'vented', netVolumeM3: 0.1, tuningHz: 29, portShape: 'round', airSpeedMPerS: 32 }
  }
] as const

describe('port and response of a plan', () => {
  for (const { name, enclosure } of variants) {
    it(`agree on the air speed and on the filters, ${name}`, () => {
      const { port, response } = planSystem({ ...estate, enclosure }).result.parts
      if (!port?.done || !response.done) throw new Error('the plan has no port or no response')
      expect(port.request.filters?.map(({ kind }) => kind)).toEqual(['low-pass', 'high-pass'])
      const sized = port.outcome.result.recommended.airSpeedMPerS ?? 0
      const heard = response.outcome.result.limits?.atDrive.portAirSpeedMPerS ?? 1
      // Braces and whole millimetres change volume and tuning a little, and the corner is set to whole hertz.
      expect(Math.abs(sized / heard - 1)).toBeLessThan(0.05)
    })
  }
})
