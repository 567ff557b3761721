import { describe, expect, it } from 'vitest'
import { ringGapM } from '../../src/domain/box/solids/front-gaps.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any
const planned = (request: unknown): Any => JSON.parse(planSystem.answerText(request, { digits: 'full', basis: false }))

const { driver } = estatePlan
const set = (face: string) => ({ ...driver, mounting: { ...driver.mounting, face } })
const onFace = (face: string) => ({
  ...estatePlan,
  driverCount: 1,
  driver: set(face),
  car: { ...estatePlan.car, space: { widthMm: 900, heightMm: 460, depthMm: 520 } }
})
const holesOf = (plan: Any, purpose: string) =>
  plan.result.parts.box.answer.result.panels.flatMap((panel: Any) =>
    panel.cutOuts.filter((hole: Any) => hole.purpose === purpose && !hole.rebateDepthMm).map(() => panel)
  )

describe('a plan with its drivers in another face', () => {
  it.each(['top', 'bottom', 'left', 'right', 'back'])('sets them into the %s, clear of everything', face => {
    const plan = planned(onFace(face))
    const { box } = plan.result.parts
    expect(box.answer.result.clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    expect(box.answer.result.assembly.stuck).toEqual([])
    const boards = holesOf(plan, 'driver')
    const name = face === 'left' || face === 'right' ? `side ${face}` : face
    expect(boards.map((panel: Any) => panel.name)).toEqual([name])
    const said = plan.cautions.filter(({ code }: Any) => code === 'cone-needs-room')
    expect(said.map(({ level }: Any) => level)).toEqual([face === 'bottom' ? 'care' : 'note'])
    expect(said[0].figures.gapMm).toBeCloseTo(282 / 4, 9)
  })

  it('needs a ring before the cone as large as the cone (worked by hand)', () => {
    expect(Math.PI * 0.28 * ringGapM(0.28)).toBeCloseTo((Math.PI * 0.28 ** 2) / 4, 12)
  })

  it('offers the front as a way out where nothing else fits, and plans it before', () => {
    const request = { ...leaningPlan, driverCount: 1, driver: set('left') }
    const { waysOut, parts } = planned(request).result
    expect(parts.sheets.done).toBe(false)
    expect(waysOut.changes.map(({ patch }: Any) => patch)).toContainEqual({ driver: { mounting: { face: null } } })
    const { face: _, ...mounting } = request.driver.mounting
    const mended = planned({ ...request, driver: { ...request.driver, mounting } })
    expect(mended.result.parts.sheets.done).toBe(true)
  })
})

describe('a plan with its front set back', () => {
  it('is as much deeper as the hollow, of the same air, and says the hollow in its balance', () => {
    const plain = planned(hatchbackPlan).result.parts.box.answer.result
    const back = planned({ ...hatchbackPlan, board: { ...hatchbackPlan.board, recessMm: 25 } }).result.parts.box
    const { outer, volume, panels } = back.answer.result
    expect(back.request.recessMm).toBe(25)
    expect(volume.netL).toBeCloseTo(plain.volume.netL, 0)
    const front = panels.find(({ role }: Any) => role === 'front')
    const hollowL = (front.lengthMm * front.widthMm * 25) / 1e6
    expect(volume.recessL).toBeCloseTo(hollowL, 6)
    expect(outer.widthMm * outer.heightMm * outer.depthMm).toBeGreaterThan(
      plain.outer.widthMm * plain.outer.heightMm * plain.outer.depthMm
    )
  })

  it('is searched for a wish as well', () => {
    const { parts, summary } = planned({ ...estatePlan, board: { ...estatePlan.board, recessMm: 25 } }).result
    expect(parts.box.answer.result.clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    expect(parts.box.answer.result.outer.depthMm).toBeLessThanOrEqual(512)
    expect(summary.verdict).toBe('take-care')
  })
})
