/** What a tried box is asked is what its whole response says. */
import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { coneNeeds, highestChamberPressurePa } from '../../../src/domain/enclosure/answer/trial-answers.ts'
import type { ResponseRequest } from '../../../src/domain/enclosure/model/request.ts'

const driver = {
  fsHz: 29,
  qms: 4.8,
  qes: 0.44,
  vasM3: 0.071,
  sdM2: 0.0479,
  reOhm: 3.4,
  leH: 1.6e-3,
  xmaxM: 0.011,
  powerW: 350
}
const port = { areaM2: 0.012, lengthM: 0.34 }
const filters = [{ kind: 'low-pass', family: 'butterworth', order: 4, cornerHz: 80 }] as const
const rest = { driver, source: { voltageV: 34 }, filters, limits: { amplifierVoltageV: 40 } }
const boxes: Readonly<Record<string, ResponseRequest>> = {
  vented: { ...rest, enclosure: { kind: 'vented', rear: { netVolumeM3: 0.062, leakQ: 8, port } } },
  'vented at the seat': {
    ...rest,
    enclosure: { kind: 'vented', rear: { netVolumeM3: 0.062, leakQ: 8, port } },
    cabin: { lengthM: 2.6 }
  },
  closed: { ...rest, enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } } },
  'closed and quiet': { ...rest, source: { voltageV: 5 }, enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } } },
  'without an excursion': {
    ...rest,
    driver: { ...driver, xmaxM: undefined as unknown as number },
    enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } }
  }
}

for (const [name, request] of Object.entries(boxes)) {
  describe(`${name}, only tried`, () => {
    const { result } = computeResponse(request)

    it('needs the high-pass that its response asks for', () => {
      const { limits } = coneNeeds({ ...request, frequenciesHz: [40] }).result
      expect(limits.protection).toEqual(result.limits?.protection)
      expect(limits.atDrive.coneExcursionOfXmax).toBe(result.limits?.atDrive.coneExcursionOfXmax)
    })

    it('sees the highest pressure of the curve', () => {
      const { limits: _, ...linear } = request
      expect(highestChamberPressurePa(linear).result).toBe(Math.max(...(result.curves.rearChamberPressurePa ?? [])))
    })
  })
}

it('is refused where its response is refused', () => {
  const { vented } = boxes
  if (vented === undefined) throw new Error('no box')
  const refused: ResponseRequest = { ...vented, cabin: { measured: { frequencyHz: [20, 40], gainDb: [6] } } }
  expect(() => computeResponse(refused)).toThrow(/2 frequencies and 1 gains/)
  expect(() => coneNeeds(refused)).toThrow(/2 frequencies and 1 gains/)
})
