/** The other boxes that a plan shows: a real choice, and each planned to the last digit by its patch. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, radiatorPlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { mergePatch } from '../../support/merge-patch.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (request: unknown): Answer =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))

const requests = {
  'an open wish': estatePlan,
  'a wish and a kind that stay fixed': { ...hatchbackPlan, enclosure: { goal: 'loud', kind: 'vented' } },
  'a tuning that stays fixed': { ...estatePlan, enclosure: { goal: 'small', tuningHz: 32, portShape: 'slot' } }
} as const

describe.each(Object.entries(requests))('a plan for %s', (_name, request) => {
  const { choice, parts } = planned(request).result
  const asked: Answer = { enclosure: {}, ...request }

  it('says what the planned box is and does', () => {
    const { volume, massKg } = parts.box.answer.result
    expect(choice.goal).toBe(asked.enclosure.goal ?? 'everyday')
    expect([choice.figures.netVolumeL, choice.figures.massKg]).toEqual([volume.netL, massKg])
    expect(choice.figures.levelDb).toHaveLength(5)
  })

  it('shows others that each give something up and win something', () => {
    expect(choice.alternatives.length).toBeGreaterThan(asked.enclosure.tuningHz === undefined ? 1 : 0)
    for (const { gains, givesUp, goal } of choice.alternatives) {
      expect(gains, goal).not.toEqual([])
      expect(givesUp, goal).not.toEqual([])
    }
  })

  it('plans each of them again by its patch, with what the caller fixed, within every limit', () => {
    for (const { goal, figures, patch } of choice.alternatives) {
      const again = planned(mergePatch(request, patch))
      const { box, response } = again.result.parts
      const { scalars, limits } = response.answer.result
      expect(again.result.choice, goal).toBeUndefined()
      expect([box.answer.result.volume.netL, box.answer.result.massKg]).toEqual([figures.netVolumeL, figures.massKg])
      expect(scalars.f3Hz).toBe(figures.f3Hz)
      expect(limits.atDrive.portAirSpeedMPerS).toBe(figures.airSpeedMPerS)
      expect(limits.atDrive.coneExcursionOfXmax).toBeLessThanOrEqual(1.001)
      expect(limits.atDrive.portAirSpeedMPerS ?? 0).toBeLessThan(34)
      expect(box.answer.result.clearances.every(({ passes }: Answer) => passes)).toBe(true)
      expect(again.cautions.filter(({ code }: Answer) => code === 'not-as-asked')).toEqual([])
      const { kind, tuningHz, portShape } = { kind: figures.kind, ...asked.enclosure }
      expect(figures.kind).toBe(kind)
      if (tuningHz !== undefined) expect(Math.abs(figures.tuningHz / tuningHz - 1)).toBeLessThan(0.01)
      if (portShape !== undefined) expect(patch.enclosure.portShape).toBe(portShape)
    }
  })
})

const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length
const upper = ({ levelDb }: Answer) => mean(levelDb.slice(2))
const lower = ({ levelDb }: Answer) => mean(levelDb.slice(0, 2))

/** In steps that are noticed: a decibel from 40 Hz up and below it, a fifth of the room, 3 ms, a twentieth of the price. Ours. */
function noticed(other: Answer, planned: Answer): readonly number[] {
  const ported = [other, planned].find(({ kind }) => kind === 'vented')
  const isHeard = (ported?.airSpeedMPerS ?? 0) > 17 && [other, planned].some(({ kind }) => kind === 'passive-radiator')
  const air = other.kind === 'passive-radiator' ? 1 : -1
  const priceSteps = (1 - other.price / planned.price) / 0.05
  return [
    upper(other) - upper(planned),
    lower(other) - lower(planned),
    (1 - other.outerVolumeL / planned.outerVolumeL) / 0.2,
    (planned.groupDelayMs - other.groupDelayMs) / 3,
    ...(isHeard ? [air] : []),
    ...(planned.price === undefined || other.price === planned.price ? [] : [priceSteps])
  ]
}

/** 2 dB, 0.4 octaves of room, 10 ms or, for seven tenths, another kind: one apart. Ours. */
const apart = (a: Answer, b: Answer) =>
  Math.hypot(
    (upper(a) - upper(b)) / 2,
    (lower(a) - lower(b)) / 2,
    Math.log2(a.outerVolumeL / b.outerVolumeL) / 0.4,
    (a.groupDelayMs - b.groupDelayMs) / 10,
    a.kind === b.kind ? 0 : 0.7
  )

describe('the boxes that are shown beside each other (weighed again from their figures)', () => {
  const all = [...Object.values(requests), radiatorPlan].map(request => planned(request).result.choice)

  it('gain what is noticed as better, and give up what is noticed as worse or at least the worst', () => {
    for (const { figures: own, alternatives } of all)
      for (const { figures, gains, givesUp } of alternatives) {
        const steps = noticed(figures, own)
        const worst = Math.max(-1, Math.min(...steps))
        expect(gains).toHaveLength(steps.filter(each => each >= 1).length)
        expect(givesUp).toHaveLength(steps.filter(each => each <= worst).length)
      }
  })

  it('are one apart at least, but for the other opening that was at hand, and none is worse than another on all counts', () => {
    let pairs = 0
    for (const { figures: own, alternatives, goal } of all)
      alternatives.forEach(({ figures, goal: other }: Answer, i: number) => {
        const before = [own, ...alternatives.slice(0, i).map((each: Answer) => each.figures)]
        for (const each of before) {
          if (other !== goal) expect(apart(figures, each)).toBeGreaterThanOrEqual(0.999)
          expect(noticed(figures, each).every(steps => steps <= 0)).toBe(false)
          pairs++
        }
      })
    expect(pairs).toBeGreaterThan(5)
  })
})

describe('prices', () => {
  const [driver, amplifier, sheet] = [180, 320, 45]
  const size = { lengthMm: 2440, widthMm: 1220 }
  const priced = {
    ...estatePlan,
    driver: { ...estatePlan.driver, price: driver },
    amplifier: { ...estatePlan.amplifier, price: amplifier },
    board: { ...estatePlan.board, sheet: { ...size, price: sheet } }
  }
  const { choice, parts } = planned(priced).result

  it('of drivers, amplifier and the sheets of the cut plan make that of the box', () => {
    const { sheetCount } = parts.sheets.answer.result.total
    expect(choice.figures.price).toBe(estatePlan.driverCount * driver + amplifier + sheetCount * sheet)
  })

  it('of another box are those of its own plan, and it says what it costs more or less', () => {
    expect(choice.alternatives.some(({ figures }: Answer) => figures.price !== choice.figures.price)).toBe(true)
    for (const { figures, patch, gains, givesUp } of choice.alternatives) {
      const { total } = planned(mergePatch(priced, patch)).result.parts.sheets.answer.result
      expect(figures.price).toBe(estatePlan.driverCount * driver + amplifier + total.price)
      const by = figures.price - choice.figures.price
      const said = by === 0 ? undefined : `costs ${Math.abs(by)} ${by > 0 ? 'more' : 'less'}`
      if (said !== undefined) expect(by > 0 ? givesUp : gains).toContain(said)
    }
  })

  it('are not spoken of where nothing has one, and count what has one', () => {
    expect(planned(estatePlan).result.choice.figures.price).toBeUndefined()
    const { driver: bare, amplifier: unpriced } = estatePlan
    const some = { ...priced, driver: bare, amplifier: unpriced }
    expect(planned(some).result.choice.figures.price).toBe(parts.sheets.answer.result.total.price)
  })

  it('stand beside a change that would make a box fit', () => {
    const low = { space: { widthMm: 800, heightMm: 320, depthMm: 300 } }
    const { changes } = planned({ ...priced, car: { ...estatePlan.car, ...low } }).result.waysOut
    for (const { builds, figures } of changes) expect(builds).toContain(`, ${figures.price} for what has a price`)
  })
})
