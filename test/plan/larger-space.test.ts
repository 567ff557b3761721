/** Spaces in which port and box once disagreed on the room, although a smaller one was planned. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

const spaces = [
  [980, 460, 460, 'round', 2],
  [980, 460, 520, 'round', 2],
  [980, 400, 520, 'round', 2],
  [600, 400, 520, 'slot', 1],
  [760, 400, 380, 'slot', 1],
  [980, 460, 380, 'slot', 2]
] as const

describe('a vented box in a space where once none was found', () => {
  it.each(spaces)(
    'is planned whole in %i × %i × %i mm, %s, %i drivers',
    (widthMm, heightMm, depthMm, portShape, driverCount) => {
      const request = {
        ...estatePlan,
        driverCount,
        enclosure: { kind: 'vented', portShape },
        board: { ...estatePlan.board, frontLayers: 1 },
        car: { ...estatePlan.car, space: { widthMm, heightMm, depthMm } }
      }
      const { box, sheets } = JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false })).result.parts
      expect([box.done, sheets.done]).toEqual([true, true])
      expect(box.answer.result.clearances.filter(({ passes }: { passes: boolean }) => !passes)).toEqual([])
      expect(box.answer.result.port.kind).toBe(portShape)
    }
  )
})

describe('a space that is too low by its carpet alone', () => {
  // By hand: 312 mm of flange with 2 × 15 mm of wood around it and two boards of 18 mm need 378 mm; 380 less 2 × 4 leave 372.
  const low = { widthMm: 950, heightMm: 380, depthMm: 330 }
  const onPlan = (request: object) =>
    JSON.parse(planSystem.answerText({ ...estatePlan, driverCount: 1, ...request }, { digits: 'six', basis: false }))
      .result

  it.each([
    ['as it is assumed', low, undefined],
    ['as it is measured', { ...low, coveringMm: 6 }, { space: { coveringMm: 0 } }]
  ])('is told to leave it off, %s, and what is built then', (_, space, carPatch) => {
    const car = { ...estatePlan.car, space }
    const { waysOut, summary } = onPlan({ car })
    expect(summary.reasons[0].detail).toMatch(/378 mm in height .* limit is 3(72|68) mm, with [46] mm a side/u)
    const bare = waysOut.changes.find(({ patch }: { patch: { finish?: object } }) => patch.finish !== undefined)
    expect(bare.patch).toEqual({ finish: { covered: false }, ...(carPatch && { car: carPatch }) })
    const mended = onPlan({ car: { ...car, space: { ...space, ...carPatch?.space } }, finish: bare.patch.finish })
    expect(mended.parts.sheets.done).toBe(true)
    expect(mended.parts.box.answer.result.outer.heightMm).toBeGreaterThanOrEqual(378)
  })
})
