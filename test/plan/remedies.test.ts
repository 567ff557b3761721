/** Remedies: each patch, laid over the request and planned again, gives the figures that it promised. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import type { PlanRemedy } from '../../src/contract/systems/remedies.ts'
import { remedyCosts } from '../../src/contract/systems/words.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { mergePatch } from '../../src/plan/remedies/merge-patch.ts'
import { planRemedies } from '../../src/plan/remedies/plan-remedies.ts'
import { alderPlan as plan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { inventedPlan } from '../support/invented-plan.ts'

const remediesOf = (wire: unknown) => planRemedies(toSi(wire) as PlanRequest)
const byId = (all: readonly PlanRemedy[], id: string) => all.find(each => each.id === id)
const strong = plan(2200)
const remedies = remediesOf(strong)

/** Least voltage over all amplifiers of a plan made anew. */
function leastV(wire: unknown, level: string, engine: string): number {
  const { circuit } = electricalHalf(wire).parts
  if (!circuit.done) throw new Error('no circuit')
  const state = circuit.outcome.result.states.find(each => each.level === level && each.engine === engine)
  const ids = circuit.request.amplifiers.map(({ id }) => id)
  return Math.min(...(state?.parts ?? []).filter(({ id }) => ids.includes(id)).map(({ voltageV }) => voltageV))
}

describe('JSON Merge Patch', () => {
  // RFC 7396, Appendix A, from memory
  const cases: readonly (readonly [unknown, unknown, unknown])[] = [
    [{ a: 'b' }, { a: 'c' }, { a: 'c' }],
    [{ a: 'b' }, { b: 'c' }, { a: 'b', b: 'c' }],
    [{ a: 'b' }, { a: null }, {}],
    [{ a: ['b'] }, { a: 'c' }, { a: 'c' }],
    [{ a: { b: 'c' } }, { a: { b: 'd', c: null } }, { a: { b: 'd' } }],
    [{ a: [{ b: 'c' }] }, { a: [1] }, { a: [1] }],
    [{ e: null }, { a: 1 }, { e: null, a: 1 }],
    [{}, { a: { bb: { ccc: null } } }, { a: { bb: {} } }]
  ]
  it.each(cases)('lays %j over %j', (target, patch, result) => {
    expect(mergePatch(target, patch)).toEqual(result)
  })
})

describe('remedies', () => {
  it('are none for a plan that is short of nothing', () => {
    expect(remediesOf(plan(300))).toEqual([])
  })

  it('give what they promise when their patch is planned', () => {
    expect(remedies.length).toBeGreaterThan(3)
    for (const { id, patch, after } of remedies) {
      if (patch === undefined) continue
      const patched = mergePatch(strong, patch)
      expect(leastV(patched, 'full-sine', 'driving'), id).toBeCloseTo(after.fullSineV ?? 0, 6)
      expect(leastV(patched, 'heavy', 'idling'), id).toBeCloseTo(after.heavyV ?? 0, 6)
      const { trunk } = electricalHalf(patched).circuit
      expect(`${trunk?.runs === 1 ? '' : `${trunk?.runs} × `}${trunk?.designation}`, id).toBe(after.cable)
    }
  })

  it('cure what the patched plan no longer says as gravely', () => {
    const grave = (wire: unknown, code: string) =>
      Math.max(
        0,
        ...electricalHalf(wire)
          .cautions.filter(each => each.code === code)
          .map(({ level }) => ['note', 'care', 'stop'].indexOf(level))
      )
    for (const { id, patch, cures } of remedies) {
      if (patch === undefined) continue
      for (const code of cures)
        expect(grave(mergePatch(strong, patch), code), `${id} ${code}`).toBeLessThan(grave(strong, code))
    }
    expect(remedies.some(({ cures }) => cures.length > 0)).toBe(true)
  })

  it('put what cures more first, and of equals the cheaper', () => {
    expect(byId(remedies, 'lower-gain')).toBe(remedies[0])
    const weights = remedies.map(({ cures }) => cures.includes('below-drop-out'))
    expect(weights).toEqual(weights.toSorted((a, b) => Number(b) - Number(a)))
    const idle = remediesOf(estatePlan).filter(({ cures }) => cures.length === 0)
    const costs = idle.map(({ cost }) => remedyCosts.indexOf(cost))
    expect(costs).toEqual(costs.toSorted((a, b) => a - b))
  })

  it('turn down by 2 dB to 63 % of the power, 11.4 V in place of 9.8 V by the closed form of one load', () => {
    // as in the circuit of a plan: 84 A beside a battery of 12.6 V and 5.4 V/680 A
    const wayOhm =
      ((1.02 / 58) * 5.9) / ((Math.PI / 4) * (0.127 * 92 ** (37 / 39)) ** 2) + 6 * 0.0002 + 0.09 / 225 + 0.002
    const [emfV, ohm] = [12.6 + 84 * (5.4 / 680), 5.4 / 680 + wayOhm]
    const powerW = (10 ** -0.2 * 2200) / 0.85
    const heldV = (emfV + Math.sqrt(emfV ** 2 - 4 * powerW * ohm)) / 2
    expect(byId(remedies, 'lower-gain')?.after.fullSineV).toBeCloseTo(heldV, 2)
    expect(byId(remedies, 'lower-gain')?.patch).toBeUndefined()
  })

  it('name the thinner cable that the printed class allows: 1000 W on 80 °C by default', () => {
    const { insulationC: _, ...supply } = estatePlan.supply
    const found = byId(remediesOf({ ...plan(1000), supply }), 'other-insulation')
    expect(found).toMatchObject({ cost: 'reading', after: { cable: '2 AWG' }, before: { cable: '1/0 AWG' } })
    expect(found?.text).toContain('2 AWG in place of 1/0 AWG')
  })

  it('offer other coils where this version gives the amplifier no load', () => {
    const fourOhm = {
      ...plan(600),
      amplifier: { ...plan(600).amplifier, ratings: [{ loadOhm: 4, powerW: 600 }], minimumOhm: 4 },
      driver: { ...estatePlan.driver, coils: { count: 1, ratedOhm: 2 } },
      driverCount: 1
    }
    const offered = remediesOf(fourOhm)
    expect(offered.map(({ id }) => id)).toEqual(offered.map(() => 'other-coils'))
    expect(offered.map(({ patch }) => patch?.driver?.coils.ratedOhm)).toEqual([4])
    expect(offered[0]?.before.cable).toBeUndefined()
  })

  it('are said on the page, folded', () => {
    const page = planPage(inventedPlan(), { paper: metric })
    expect(page).toContain('What would help the supply (1)')
    expect(page).toContain(inventedPlan().remedies[0])
  })

  it('never offer a battery that takes volts away', () => {
    for (const wire of [estatePlan, plan(900), strong])
      for (const { after, before } of remediesOf(wire)) {
        const [sine, music] = [
          (after.fullSineV ?? 0) - (before.fullSineV ?? 0),
          (after.heavyV ?? 0) - (before.heavyV ?? 0)
        ]
        expect(sine > -0.06 || music > -0.06).toBe(true)
      }
  })
})
