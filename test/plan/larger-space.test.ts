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
