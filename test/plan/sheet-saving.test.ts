import { describe, expect, it } from 'vitest'
import type { SheetPlanRequest } from '../../src/contract/boxes/box-sheets.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { quickSheetCount } from '../../src/domain/sheet/quick-count.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'
import type { BoxPart } from '../../src/plan/enclosure/parts/plan-box.ts'
import { planSheets } from '../../src/plan/enclosure/parts/plan-sheets.ts'
import { onFewerSheets } from '../../src/plan/enclosure/sheet-saving.ts'
import { partRunner } from '../../src/plan/request/part.ts'
import { complaintsAbout } from '../support/sheet-checker.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any

const run = partRunner()

const sheetCount = (request: Any, box: BoxPart) => {
  const cut = box.done ? planSheets({ ...request, run }, box.outcome.result) : undefined
  if (!cut?.done) throw new Error('not cut')
  expect(complaintsAbout(cut.request, cut.outcome.result, 0.0032)).toEqual([])
  return cut.outcome.result.total.sheetCount
}

describe('a plan whose last sheet is nearly empty', () => {
  it('takes other sizes of the same air, and says true what they save', () => {
    const { result } = JSON.parse(planSystem.answerText(estatePlan, { digits: 'full', basis: false })) as Any
    const { box, sheets } = result.parts
    expect(sheets.answer.result.total.sheetCount).toBe(1)
    expect(Math.abs(box.answer.result.volume.errorPercent)).toBeLessThan(0.25)
    const line = result.summary.lines.find((each: string) => each.startsWith('Cut from 1 sheet'))
    const [widthM, heightM, depthM] =
      /(\d+) × (\d+) × (\d+) mm/
        .exec(line)
        ?.slice(1)
        .map(mm => Number(mm) / 1000) ?? []
    const request: Any = toSi(estatePlan as Any)
    const instead = run({ ...(toSi(box.request) as Any), outer: { widthM, heightM, depthM } }, layOutBox)
    expect(sheetCount(request, instead)).toBe(2)
    expect(instead.done && Math.abs(instead.outcome.result.volume.errorPercent ?? 9)).toBeLessThan(0.5)
  })

  it('gets a box no worse, on fewer sheets, or the very box it had', () => {
    const { uniform } = randomStream(41)
    const { mounting } = estatePlan.driver
    const slot = { kind: 'slot', heightMm: 65, tuningHz: 35, widthMm: 363, along: 'right' }
    let saved = 0
    for (let turn = 0; turn < 8; turn++) {
      const space = { widthMm: 940 + 80 * uniform(), heightMm: 430 + 50 * uniform(), depthMm: 520 }
      const request: Any = toSi({ ...estatePlan, car: { space } } as Any)
      const wish = {
        thicknessMm: 18,
        frontLayers: 2,
        drivers: [{ ...mounting, count: 2 }],
        port: slot,
        fittings: { terminal: {} }
      }
      const asked: Any = toSi({ ...wish, netVolumeL: 112 + 24 * uniform(), limits: space } as Any)
      const box = run(asked, layOutBox) as BoxPart
      const { box: other, saving } = onFewerSheets({ ...request, space: request.car.space, run }, box)
      if (!box.done || !other.done) continue
      if (saving === undefined) {
        expect(other).toBe(box)
        continue
      }
      saved++
      const { volume, clearances, outer } = other.outcome.result
      expect(Math.abs(volume.errorPercent ?? 9)).toBeLessThanOrEqual(0.25)
      expect(clearances.filter(({ passes }) => !passes)).toEqual([])
      expect(outer.widthM).toBeLessThanOrEqual(space.widthMm / 1000 + 1e-9)
      expect(outer.heightM).toBeLessThanOrEqual(space.heightMm / 1000 + 1e-9)
      expect(sheetCount(request, other)).toBeLessThan(sheetCount(request, box))
    }
    expect(saved).toBeGreaterThan(0)
  })
})

describe('a short count of sheets', () => {
  it('is never below what the area of the panels with their kerfs needs', () => {
    const { uniform } = randomStream(7)
    const sheet = { name: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018 }
    for (let turn = 0; turn < 20; turn++) {
      const panels = Array.from({ length: 12 }, (_, i) => ({
        name: `${i}`,
        quantity: 1,
        lengthM: 0.3 + 0.7 * uniform(),
        widthM: 0.2 + 0.5 * uniform(),
        thicknessM: 0.018
      }))
      const request: SheetPlanRequest = { panels, sheets: [sheet], kerfM: 0.003, trimM: 0.01 }
      const { sheetCount: count, leastUsedShare } = quickSheetCount(request, { work: 'glance', evenly: true })
      const area = panels.reduce((sum, { lengthM, widthM }) => sum + lengthM * widthM, 0)
      expect(count).toBeGreaterThanOrEqual(Math.ceil(area / (2.42 * 1.2)))
      expect(leastUsedShare).toBeLessThanOrEqual(area / (count * 2.42 * 1.2) + 1e-9)
    }
  })
})
