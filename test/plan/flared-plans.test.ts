/** Plans whose port opens to its mouths: every part of the plan speaks of the same port. */
import { describe, expect, it } from 'vitest'
import { flaredEndM, plainEndsM, roundMouth, slotMouth } from '../../src/domain/port/flare.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any
const planned = (enclosure: object): Any =>
  JSON.parse(planSystem.answerText({ ...estatePlan, enclosure }, { digits: 'full', basis: false }))
const slotted = { kind: 'vented', netVolumeL: 80, tuningHz: 34, portShape: 'slot' }

describe('a plan with a slot whose mouths are rounded to 12 mm', () => {
  const { result } = planned({ ...slotted, portFlareMm: 12 })
  const { box, port, response } = result.parts

  it('has one port: sized, laid out and heard at the tuning asked', () => {
    expect(port.request.port.flareRadiusMm).toBe(12)
    expect(port.request.mouth).toBe('flared')
    expect(box.answer.result.port.flareRadiusMm).toBe(12)
    expect(box.answer.result.port.tuningHz).toBeCloseTo(34, 1)
    expect(response.answer.result.scalars.tuningHz).toBeCloseTo(box.answer.result.port.tuningHz, 1)
    expect(box.answer.result.port.endFactor).toBeCloseTo(port.answer.result.recommended.endFactor, 4)
  })

  it('may be faster before it is heard, so that its slot is smaller than that of sharp mouths', () => {
    const sharp = planned(slotted).result.parts
    expect(sharp.port.request.airSpeedLimitMPerS).toBe(17)
    expect(port.request.airSpeedLimitMPerS).toBe(25)
    expect(port.answer.result.recommended.totalAreaCm2).toBeLessThan(sharp.port.answer.result.recommended.totalAreaCm2)
  })

  it('is rounded before it is glued in, with a tool for it', () => {
    const step = result.buildOrder.steps.find(({ id }: Any) => id === 'port-walls')
    expect(step.actions[0]).toMatch(/^Round the mouths .* to 12 mm\.$/)
    expect(step.tools.join()).toMatch(/round-over/)
    const plain = planned(slotted).result.buildOrder.steps.find(({ id }: Any) => id === 'port-walls')
    expect(plain.actions).toEqual(step.actions.slice(1))
  })
})

describe('flares that a plan cannot build', () => {
  it('are refused: in a closed box, and of a slot beyond the thickness of its board', () => {
    for (const enclosure of [
      { kind: 'closed', portFlareMm: 12 },
      { ...slotted, portFlareMm: 25 }
    ])
      expect(() => planned(enclosure)).toThrow(expect.objectContaining({ code: 'conflicting-input' }))
  })
})

describe('the ends of a port without their flares', () => {
  it('are found back from those with them', () => {
    for (const [area, flareM] of [
      [roundMouth(0.05), 0.025],
      [slotMouth(0.4, 0.04), 0.012],
      [slotMouth(0.4, 0.04), 0]
    ] as const) {
      const both = flaredEndM(0.04, area, flareM) + flaredEndM(0.03, area, flareM)
      expect(plainEndsM(both, area, flareM)).toBeCloseTo(0.07, 12)
    }
  })
})
