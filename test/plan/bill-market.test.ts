/** The bill of a plan on paper in inches, as the shops of that market sell it. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any
const billOf = (request: unknown): Any[] =>
  JSON.parse(planSystem.answerText(request, { digits: 'full', basis: false })).result.billOfMaterials

/** What one unit of the market is in the unit of the row; a foot, a yard and a fluid ounce by definition, glue at 1.1 kg/L. */
const units: Readonly<Record<string, number>> = {
  ft: 0.3048,
  yd: 0.9144,
  'yd²': 0.9144 ** 2,
  'fl oz of kg': 0.029_573_5 * 1.1,
  'fl oz of l': 0.029_573_5
}
const factor = (sold: string, own: string) =>
  sold === own ? 1 : (units[sold] ?? units[`${sold} of ${own}`] ?? Number.NaN)

describe.each([
  ['estate', estatePlan],
  ['hatchback', hatchbackPlan],
  ['leaning', leaningPlan]
])('the bill of the %s in inches', (_, request) => {
  const paper = { units: 'imperial', inches: 'sixteenths' }
  const rows = billOf({ ...request, paper })

  it('buys no less than is needed, and less than a unit or a yard too much', () => {
    for (const { sold, need, sparePercent, unit, part } of rows) {
      if (sold === undefined) continue
      const bought = sold.quantity * factor(sold.unit, unit)
      const wanted = need * (1 + sparePercent / 100)
      expect([part, bought >= wanted - 1e-9]).toEqual([part, true])
      expect([part, bought - wanted <= 1.0001 * Math.max(factor(sold.unit, unit), 1e-9)]).toEqual([part, true])
    }
  })

  it('names no millimetre, metre or litre in what is asked for at the timber yard', () => {
    for (const { sold, item, unit, group, part, needed } of rows) {
      if (!needed || group === 'wiring') continue
      const [asked, by] = [sold?.item ?? item, sold?.unit ?? unit]
      expect([part, by]).not.toEqual([part, 'm'])
      if (part !== 'lining-adhesive' && part !== 'carpet-adhesive' && part !== 'panel')
        expect(asked).not.toMatch(/\d (mm|m²|m|l|ml|kg)\b/)
    }
    for (const { sold, unit } of rows) expect(sold?.unit ?? unit).not.toBe('m')
  })

  it('is the metric bill where nobody asks for inches', () => {
    expect(billOf(request).some(({ sold }) => sold !== undefined)).toBe(false)
  })
})

describe('fasteners in inches', () => {
  const rows = billOf({ ...estatePlan, paper: { units: 'imperial' } })
  const asked = (part: string) => rows.find(each => each.part === part)?.sold.item

  // 4 mm is no. 8 (0.164 in = 4.17 mm); 50 mm and a millimetre of spare take 2 in (50.8); between two boards of 23/32 in
  // (36.5 mm) less 4 mm a screw of 1 1/4 in (31.8) stays inside, of 1 1/2 in (38.1) comes out; M5 × 55 becomes 2 1/2 in.
  it('are the sizes that hold and do not come through (worked by hand)', () => {
    expect(asked('wood-screw')).toContain('#8 × 2 in')
    expect(asked('layer-screw')).toContain('#8 × 1 1/4 in')
    expect(asked('driver-screw')).toContain('#10-32 × 2 1/2 in')
    expect(asked('t-nut')).toContain('#10-32')
    expect(asked('sheet')).toMatch(/^sheet of 23\/32 in MDF, 4 × 8 ft$/)
  })
})
