/** The region of drivers that would suit: its corners are planned by the whole plan, and a driver far outside is not as good. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../../src/app.ts'
import { regionOfDrivers } from '../../../src/http/operations/systems/driver-region.ts'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { mean } from '../../../src/numeric/mean.ts'
import { bestNode, grownBlock, type Node } from '../../../src/plan/designer/region/grow-region.ts'
import { postTo } from '../../support/post-to.ts'
import { here } from '../../support/service.ts'

const post = postTo(regionOfDrivers, planSystem)
type Body = Awaited<ReturnType<typeof post>>['body']

const asked = {
  driverCount: 1,
  nominalDiameterMm: 250,
  powerW: 400,
  board: { material: 'mdf', thicknessMm: 18 },
  space: { widthMm: 900, heightMm: 420, depthMm: 420 },
  cabin: { lengthM: 2.9 }
} as const

interface Trio {
  readonly fsHz: number
  readonly qts: number
  readonly vasL: number
}

/** Level less what the wish takes for room, 1.8 dB a doubling. */
const worth = ({ levelDb, outerVolumeL }: { readonly levelDb: readonly number[]; readonly outerVolumeL: number }) =>
  mean(levelDb) - 1.8 * Math.log2(outerVolumeL)

/** A plan for a driver of the region, as a shop would send it: the estate's supply, an amplifier of the power. */
async function planned({ fsHz, qts, vasL }: Trio, { typical }: Body['result']) {
  const { flangeDiameterMm, cutOutDiameterMm, mountingDepthMm, ratedOhm, ...sheet } = typical
  const { body } = await post('/v1/plans', {
    ...estatePlan,
    driver: {
      sheet: { fsHz, qts, vasL, ...sheet },
      coils: { count: 1, ratedOhm },
      mounting: { flangeDiameterMm, cutOutDiameterMm, mountingDepthMm }
    },
    driverCount: asked.driverCount,
    amplifier: { ...estatePlan.amplifier, ratings: [{ loadOhm: ratedOhm, powerW: asked.powerW }], minimumOhm: 4 },
    board: asked.board,
    car: { space: asked.space, cabin: asked.cabin }
  })
  return body.result
}

describe('the region of a driver of 25 cm on 400 W in an estate car', () => {
  let region: Body['result']
  beforeAll(async () => {
    region = (await post('/v1/designs/drivers', asked)).body.result
  }, 120_000)

  it('has breadth, and says it in a sentence', () => {
    const { text, fsFromHz, fsToHz, qtsFrom, qtsTo, vasFromL, vasToL } = region
    expect(fsToHz).toBeGreaterThan(fsFromHz)
    expect(qtsTo).toBeGreaterThan(qtsFrom)
    expect(vasToL).toBeGreaterThan(vasFromL)
    for (const figure of [fsFromHz, fsToHz, qtsFrom, qtsTo, vasFromL, vasToL]) expect(text).toContain(String(figure))
  })

  it('lies where builders look for such a driver (common practice, no source: fs 20 to 40 Hz, Qts 0.25 to 0.6)', () => {
    expect(region.fsFromHz).toBeGreaterThanOrEqual(20)
    expect(region.fsToHz).toBeLessThanOrEqual(40)
    expect(region.qtsFrom).toBeGreaterThanOrEqual(0.25)
    expect(region.qtsTo).toBeLessThanOrEqual(0.6)
  })

  it('has corners that really suit: the whole plan builds a box as good for each, and holds its limits', async () => {
    for (const { figures, ...trio } of [region.best, ...region.corners]) {
      const { summary, choice } = await planned(trio, region)
      expect(summary.verdict).toBe('take-care')
      expect(choice.figures.kind).toBe(figures.kind)
      // volumes lie on a flat hill: what counts is that the box is worth as much
      expect(Math.abs(worth(choice.figures) - worth(figures))).toBeLessThan(0.5)
      // the tolerance is of the search, which weighs twelfths of an octave, ringing and bumps; these are five frequencies
      expect(worth(choice.figures)).toBeGreaterThan(worth(region.best.figures) - region.toleranceDb - 1.5)
      expect(summary.figures.coneExcursionMm).toBeLessThanOrEqual(region.typical.xmaxMm * 1.02)
    }
  }, 300_000)

  it.each([
    ['too stiff', { fsHz: 50, qts: 0.25, vasL: 6 }],
    ['hardly damped', { fsHz: 20, qts: 1.1, vasL: 78 }]
  ])(
    'leaves out a driver that is %s: it gives away more than the edge of the region may',
    async (_, trio) => {
      const { choice } = await planned(trio, region)
      expect(worth(choice.figures)).toBeLessThan(worth(region.best.figures) - region.toleranceDb)
    },
    60_000
  )

  it('takes the largest usual size that stands where none is named, and refuses a space for none', async () => {
    const { nominalDiameterMm: _, ...open } = asked
    const low = await post('/v1/designs/drivers', { ...open, space: { widthMm: 700, heightMm: 300, depthMm: 300 } })
    // 262 mm of flange with 15 mm to either edge inside 18 mm boards: 328 mm; 212 mm: 278 mm
    expect(low.body.result.nominalMm).toBe(200)
    const none = await post('/v1/designs/drivers', { ...open, space: { widthMm: 150, heightMm: 120, depthMm: 100 } })
    expect([none.status, none.body.code]).toEqual([422, 'no-solution'])
  }, 120_000)
})

describe('the region of a driver for a tight box', () => {
  let region: Body['result']
  beforeAll(async () => {
    region = (await post('/v1/designs/drivers', { ...asked, goal: 'tight' })).body.result
  }, 120_000)

  it('has breadth along each axis, and drivers that a small closed box damps to a Qtc of 0.8 or nearly', () => {
    expect(region.fsToHz).toBeGreaterThan(region.fsFromHz)
    expect(region.qtsTo).toBeGreaterThan(region.qtsFrom)
    expect(region.vasToL).toBeGreaterThan(region.vasFromL)
    for (const { qts, vasL, figures } of [region.best, ...region.corners]) {
      expect(figures.kind).toBe('closed')
      expect(qts * Math.sqrt(1 + vasL / figures.netVolumeL)).toBeLessThan(0.85)
      // a filter at 20 Hz alone would ring for 11 ms more
      expect(figures.groupDelayMs).toBeLessThan(15)
    }
  })
})

describe('the region as a page and as text', () => {
  const app = buildApp(here)
  afterAll(async () => (await app).close())
  const form = async (accept: string, language: string) => {
    const headers = { accept, 'accept-language': language }
    const { body } = await (await app).inject({ method: 'POST', url: '/v1/designs/drivers', payload: asked, headers })
    return body
  }

  it('says the same ranges in both, in either language', async () => {
    const { fsFromHz, fsToHz, corners } = (await post('/v1/designs/drivers', asked)).body.result
    for (const [language, title] of [
      ['en', 'Which drivers would suit'],
      ['de', 'Welche Lautsprecher passen würden']
    ] as const) {
      const [page, text] = [await form('text/html', language), await form('text/plain', language)]
      expect(page).toContain(`<html lang="${language}">`)
      expect(page).not.toMatch(/<script|src=|url\(http/)
      for (const shown of [page, text]) {
        expect(shown).toContain(title)
        for (const figure of [fsFromHz, fsToHz]) expect(shown).toContain(String(figure))
      }
      expect(page.match(/<tr>/g)?.length).toBeGreaterThan(corners.length + 14)
      for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80)
    }
  }, 120_000)
})

describe('a block grown on nodes', () => {
  const sizes: Node = [7, 8, 6]
  const inside = ([a, b, c]: Node) => a >= 2 && a <= 4 && b >= 1 && b <= 5 && c >= 0 && c <= 2

  it('is the whole of a block that is known', () => {
    const worth = (node: Node) => (inside(node) ? 1 - 0.01 * (node[0] + node[1]) : -9)
    const from = bestNode({ sizes, worth })
    expect(from).toEqual([2, 1, 0])
    expect(grownBlock({ sizes, worth }, from, 0)).toEqual({ low: [2, 1, 0], high: [4, 5, 2] })
  })

  it('stays a single node where all others are worse', () => {
    const worth = ([a, b, c]: Node) => (a === 4 && b === 4 && c === 4 ? 1 : 0)
    expect(grownBlock({ sizes, worth }, bestNode({ sizes, worth }), 0.5)).toEqual({ low: [4, 4, 4], high: [4, 4, 4] })
  })
})
