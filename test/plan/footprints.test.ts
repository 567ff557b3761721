import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any
const planned = (request: unknown): Any => JSON.parse(planSystem.answerText(request, { digits: 'full', basis: false }))
const inRoom = (space: unknown, more: object = {}) => ({
  ...hatchbackPlan,
  driverCount: 1,
  ...more,
  car: { ...hatchbackPlan.car, space }
})
const boxOf = (plan: Any) => plan.result.parts.box.answer.result

describe('a plan in a round well', () => {
  const plan = planned(inRoom({ diameterMm: 640, heightMm: 320 }))
  const { outer, panels, clearances, assembly, volume } = boxOf(plan)

  it('is of twelve staves with mitres of 15°, eleven of them alike, and closed by two boards of twelve corners', () => {
    const staves = panels.filter(({ role }: Any) => role === 'front' || role === 'wall')
    expect(staves.map(({ name, quantity }: Any) => [name, quantity])).toEqual([
      ['front', 1],
      ['wall', 11]
    ])
    for (const { edges } of staves)
      expect(edges.map(({ tiltDeg }: Any) => Math.round(tiltDeg * 10) / 10)).toEqual([15, 15])
    expect(panels.filter(({ outline }: Any) => outline.length === 12)).toHaveLength(2)
  })

  it('stands in the well with its play, its drivers in the lid, and goes together', () => {
    expect(outer.widthMm).toBeLessThanOrEqual(640 * Math.cos(Math.PI / 12) + 0.1)
    expect(outer.heightMm).toBeLessThanOrEqual(320)
    expect(clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    expect(assembly.stuck).toEqual([])
    const lid = panels.find(({ name }: Any) => name === 'top')
    expect(lid.cutOuts.map(({ purpose }: Any) => purpose)).toEqual(['driver'])
    expect(plan.assumed.find(({ pointer }: Any) => pointer === '/driver/mounting/face').value).toBe('top')
  })

  it('holds the air asked for: the polygon less its boards, worked by the formula of a regular twelve-sided one', () => {
    const t = hatchbackPlan.board.thicknessMm
    const apothem = outer.widthMm / 2
    const sides = 12 * (apothem - t) ** 2 * Math.tan(Math.PI / 12)
    expect(volume.grossL).toBeCloseTo((sides * (outer.heightMm - 2 * t)) / 1e6, 1)
    expect(Math.abs(volume.errorPercent)).toBeLessThan(0.5)
  })
})

describe('a plan over a footprint with a corner cut off', () => {
  const corners = [
    [0, 0],
    [700, 0],
    [700, 250],
    [450, 480],
    [0, 480]
  ].map(([xMm, yMm]) => ({ xMm, yMm }))
  const plan = planned(inRoom({ heightMm: 420, footprint: corners, clearanceMm: 5 }))

  it('carries its driver on the longest edge, and is drawn in where the whole room holds too much', () => {
    const { outer, panels, clearances } = boxOf(plan)
    expect(clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    expect(outer.widthMm).toBeLessThan(690)
    expect(panels.find(({ name }: Any) => name === 'front').cutOuts[0].purpose).toBe('driver')
    expect(panels.filter(({ role }: Any) => role === 'wall')).toHaveLength(4)
  })

  it.each([
    ['the shape without its outline', { shape: 'prism', heightMm: 420 }, 'car.space.footprint'],
    ['a diameter of a box with four walls', { shape: 'wedge', diameterMm: 600 }, 'car.space.diameterM'],
    ['both', { footprint: corners, diameterMm: 600 }, 'car.space.diameterM']
  ])('refuses %s', (_, space, field) => {
    expect(() => planned(inRoom(space))).toThrow(
      expect.objectContaining({ faults: [expect.objectContaining({ field })] })
    )
  })

  it('refuses a slot there, and two boards on staves', () => {
    const slot = { enclosure: { kind: 'vented', portShape: 'slot' } }
    expect(() => planned(inRoom({ footprint: corners, heightMm: 420 }, slot))).toThrow('A slot starts in the front')
    const board = { board: { ...hatchbackPlan.board, frontLayers: 2 } }
    expect(() => planned(inRoom({ diameterMm: 640, heightMm: 320 }, board))).toThrow(
      'The staves of a round box are mitred'
    )
  })
})

describe('a plan with its tubes on another face', () => {
  it.each(['top', 'right', 'back'])('sets them into the %s, beside the motor that reaches across', face => {
    const plan = planned({
      ...estatePlan,
      driverCount: 1,
      enclosure: { portFace: face },
      car: { ...estatePlan.car, space: { widthMm: 900, heightMm: 560, depthMm: 520 } }
    })
    const { panels, clearances, port } = boxOf(plan)
    expect(clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    const boards = panels.filter(({ cutOuts }: Any) => cutOuts.some(({ purpose }: Any) => purpose === 'port'))
    expect(boards.map(({ name }: Any) => name)).toEqual([face === 'right' ? 'side right' : face])
    expect(port.tuningHz).toBeGreaterThan(20)
  })
})

describe('a plan in a room that slopes on every side', () => {
  const space = { widthMm: 900, heightMm: 400, depthMm: 450, seatSlopeDeg: 12, acrossSlopeDeg: 8, lidSlopeDeg: 6 }
  const plan = planned(inRoom(space))
  const { outer, panels, volume, clearances, shape } = boxOf(plan)
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180)

  it('leans with the seat and across from it, and its lid falls to the seat: by its own corners', () => {
    expect(shape).toBe('wedge')
    const [side] = panels.filter(({ name }: Any) => name === 'side' || name === 'left')
    const points = side.outline.map(({ uMm, vMm }: Any) => [uMm, vMm]).toSorted((a: Any, b: Any) => a[1] - b[1])
    // Two on the floor, then the lower corner of the lid, then the higher one.
    const [high, low] = [points[3], points[2]]
    expect(high[1]).toBeCloseTo(outer.heightMm, 2)
    expect((high[1] - low[1]) / Math.abs(high[0] - low[0])).toBeCloseTo(tan(6), 4)
    expect(outer.topDepthMm).toBeCloseTo(Math.abs(high[0] - low[0]), 2)
    expect(outer.depthMm - outer.topDepthMm).toBeCloseTo(high[1] * tan(8) + low[1] * tan(12), 2)
  })

  it('holds its air, clears everything and stands in the room', () => {
    expect(Math.abs(volume.errorPercent)).toBeLessThan(0.5)
    expect(clearances.filter(({ passes }: Any) => !passes)).toEqual([])
    for (const { spareMm } of boxOf(plan).fit.spare) expect(spareMm).toBeGreaterThan(-0.01)
  })

  it('is refused where the room is round or the box upright', () => {
    for (const more of [
      { shape: 'rectangular', lidSlopeDeg: 5 },
      { diameterMm: 600, acrossSlopeDeg: 5 }
    ]) {
      expect(() => planned(inRoom({ heightMm: 320, ...more }))).toThrow(
        expect.objectContaining({ code: 'conflicting-input' })
      )
    }
  })
})
