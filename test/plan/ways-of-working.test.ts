/** Ways to work the boards: each has its tools, its bill and its steps, and says how exact it is. */
import { describe, expect, it } from 'vitest'
import { workWays } from '../../src/contract/systems/words.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { boxError } from '../../src/plan/work/box-error.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any

const planned = (request: unknown): Any => JSON.parse(planSystem.answerText(request, { digits: 'full', basis: false }))
const by = (request: object, way: string) => planned({ ...request, workshop: { way } }).result
const textOf = ({ actions, tools, checks, substitutes }: Any) => [actions, tools, checks, substitutes].flat().join(' ')
const stepOf = ({ buildOrder }: Any, id: string) => buildOrder.steps.find((step: Any) => step.id === id)

describe('an error of a millimetre', () => {
  // By hand: 1/500 + 1/400 + 1/250 = 0.85 %; mouth 1/40 + 1/400 = 2.75 %, length 1/600 = 0.1667 %.
  const inner = { widthM: 0.5, heightM: 0.4, depthM: 0.25 }
  const port = { areaM2: 0.016, lengthM: 0.6 }
  type Layout = Parameters<typeof boxError>[1]
  it('moves air and tuning as worked by hand', () => {
    expect(boxError(0.001, { inner } as Layout).netVolumePercent).toBeCloseTo(0.85, 10)
    expect(boxError(0.001, { inner } as Layout).tuningPercent).toBeUndefined()
    const slot = boxError(0.001, { inner, port } as Layout, 0.04)
    expect(slot.tuningPercent).toBeCloseTo((2.75 + 0.85 + 1 / 6) / 2, 10)
    expect(boxError(0.001, { inner, port } as Layout).tuningPercent).toBeCloseTo((0.85 + 1 / 6) / 2, 10)
  })

  it('bounds what the tuning of a real box does when every size is off at once', () => {
    const tuning = (offM: number) => {
      const [widthM, heightM, depthM] = [0.5 - offM, 0.4 - offM, 0.25 - offM]
      const areaM2 = (0.4 + offM) * (0.04 + offM)
      return Math.sqrt(areaM2 / (widthM * heightM * depthM * (0.6 - offM)))
    }
    const moved = 100 * (tuning(0.001) / tuning(0) - 1)
    const { tuningPercent = 0 } = boxError(0.001, { inner, port } as Layout, 0.04)
    expect(moved).toBeGreaterThan(0.97 * tuningPercent)
    expect(moved).toBeLessThan(1.03 * tuningPercent)
  })
})

describe.each([
  ['estate', estatePlan],
  ['leaning', leaningPlan]
])('the %s', (_, request) => {
  const plans = Object.fromEntries(workWays.map(way => [way, by(request, way)]))

  it('holds the same air by every way, which only gets other sides where a finer cut saves a sheet, and says them beside each other', () => {
    const boxes = workWays.map(way => plans[way].parts.box.answer.result)
    const sheets = workWays.map(way => plans[way].parts.sheets.answer.result.total.sheetCount)
    expect(boxes[2]).toEqual(boxes[1])
    if (sheets[0] === sheets[1]) expect(boxes[0]).toEqual(boxes[1])
    expect(sheets[0]).toBeLessThanOrEqual(sheets[1])
    for (const { volume, port } of boxes) {
      expect(Math.abs(volume.netL / boxes[0].volume.netL - 1)).toBeLessThan(0.005)
      expect(Math.abs(port.tuningHz / boxes[0].port.tuningHz - 1)).toBeLessThan(0.005)
    }
    for (const way of workWays) {
      const { ways } = plans[way].buildOrder
      expect(ways.filter(({ taken }: Any) => taken).map((each: Any) => each.way)).toEqual([way])
      expect(ways.map((each: Any) => each.way)).toEqual(workWays)
      const untaken = (all: Any) => all.map(({ taken: _, ...each }: Any) => each)
      const alike = sheets[0] !== sheets[1] && way === 'saw-and-router' ? way : 'cutting-service'
      expect(untaken(ways)).toEqual(untaken(plans[alike].buildOrder.ways))
      for (const { tools, cutMm, holeMm } of ways) {
        expect(tools.length).toBeGreaterThan(2)
        expect(cutMm).toBeLessThanOrEqual(holeMm)
      }
    }
  })

  it('asks for a router by one way alone, and for no saw where a service cuts', () => {
    for (const way of ['cutting-service', 'jigsaw-and-drill']) {
      const tools = plans[way].buildOrder.steps.flatMap((step: Any) => step.tools).join(' ')
      expect(tools).not.toMatch(/router|panel saw/)
      expect(tools).toMatch(/jigsaw/)
    }
    const { steps } = plans['cutting-service'].buildOrder
    expect(steps.map(({ id }: Any) => id)).not.toContain('cut-panels')
    expect(textOf(stepOf(plans['cutting-service'], 'order-panels'))).not.toMatch(/saw\b/)
    expect(stepOf(plans['cutting-service'], 'order-panels').cautions).not.toContain('turning-blade')
    expect(stepOf(plans['jigsaw-and-drill'], 'cut-panels').cautions).toContain('turning-blade')
  })

  it('buys panels of a service and sheets for a saw, and leaves the gap of each between the parts', () => {
    const boards = ({ billOfMaterials }: Any) =>
      billOfMaterials.filter((row: Any) => row.group === 'board' && row.needed).map((row: Any) => row.part)
    expect(new Set(boards(plans['cutting-service']))).toEqual(new Set(['panel']))
    expect(new Set(boards(plans['jigsaw-and-drill']))).toEqual(new Set(['sheet']))
    const gap = (way: string) => plans[way].parts.sheets.request.kerfMm
    expect([gap('saw-and-router'), gap('cutting-service'), gap('jigsaw-and-drill')]).toEqual([undefined, 4.5, 4])
    const given = by(
      { ...request, board: { ...request.board, sheet: { lengthMm: 2500, widthMm: 1250, kerfMm: 2 } } },
      'jigsaw-and-drill'
    )
    expect(given.parts.sheets.request.kerfMm).toBe(2)
  })

  it('checks no closer than its way is exact', () => {
    for (const way of workWays) {
      const { cutMm, holeMm } = plans[way].buildOrder.ways.find((each: Any) => each.way === way)
      const cut = stepOf(plans[way], way === 'cutting-service' ? 'order-panels' : 'cut-panels')
      expect(cut.checks.join(' ')).toContain(`equal to ${cutMm} mm`)
      expect(stepOf(plans[way], 'dry-fit').checks.join(' ')).toContain(`wider than ${cutMm} mm`)
      expect(stepOf(plans[way], 'cut-holes').checks.join(' ')).toContain(`within ${holeMm} mm`)
    }
  })
})

describe('sloped edges', () => {
  const edges = planned(leaningPlan).result.parts.box.answer.result.panels.flatMap(({ name, edges: all }: Any) =>
    all.flatMap(({ tiltDeg }: Any) => (tiltDeg > 0.25 ? [{ name, tiltDeg }] : []))
  )
  it('are named at their angle, every panel that has one', () => {
    expect(edges.length).toBeGreaterThan(2)
    for (const way of workWays) {
      const { actions } = stepOf(by(leaningPlan, way), 'saw-bevels')
      for (const { name, tiltDeg } of edges) {
        const angle = `${Math.round(2 * tiltDeg) / 2}°:`
        expect(actions.find((text: string) => text.startsWith(angle))).toContain(name)
      }
    }
  })
})

describe('a flange in a rebate', () => {
  it('is said to take a router where there is none', () => {
    const mounting = { ...leaningPlan.driver.mounting, rebateDepthMm: 6 }
    const sunk = { ...leaningPlan, driver: { ...leaningPlan.driver, mounting } }
    expect(textOf(stepOf(by(sunk, 'jigsaw-and-drill'), 'cut-holes'))).toMatch(/rebate takes a router/)
    expect(textOf(stepOf(by(sunk, 'saw-and-router'), 'cut-holes'))).not.toMatch(/rebate takes a router/)
    expect(textOf(stepOf(by(leaningPlan, 'jigsaw-and-drill'), 'cut-holes'))).not.toMatch(/rebate takes a router/)
  })
})

describe('paper for a cutting service', () => {
  it('sends to the service with the cut list, and to no shop for sheets', async () => {
    const text = async (way: string) =>
      String(
        (
          await planSystem.run(
            { ...leaningPlan, workshop: { way } },
            { form: 'text/plain', digits: 'six', basis: false }
          )
        ).body
      )
    const [service, saw] = [await text('cutting-service'), await text('saw-and-router')]
    expect(service).toMatch(/panels come cut to size/)
    expect(service).not.toMatch(/sheet of/)
    expect(saw).toMatch(/sheet of/)
    expect(saw).not.toMatch(/panels come cut to size/)
  })
})
