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
import { partRunner } from '../../src/plan/request/part.ts'
import { alder, bearing, alderPlan as plan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { inventedPlan } from '../support/invented-plan.ts'

const remediesOf = (wire: unknown) => planRemedies(toSi(wire) as PlanRequest, partRunner())
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
    expect(remediesOf(plan(340))).toEqual([])
  })

  it('give what they promise when their patch is planned', () => {
    expect(remedies.length).toBeGreaterThan(3)
    for (const { id, patch, after } of remedies) {
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
    // 10^−0.2·2200 W to three digits, on the line from 15 W at silence
    const gainPowerW = 1390
    expect(byId(remedies, 'lower-gain')?.patch).toEqual({ signal: { gainPowerW } })
    const powerW = ((2200 / 0.85 - 15) * gainPowerW) / 2200 + 15
    const heldV = (emfV + Math.sqrt(emfV ** 2 - 4 * powerW * ohm)) / 2
    expect(byId(remedies, 'lower-gain')?.after.fullSineV).toBeCloseTo(heldV, 2)
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

  it('say what just misses: clad aluminium of 2/0 AWG for a limit of 2.95 %, and what it would give', () => {
    const wire = plan(1500, { conductor: 'copper-clad-10', dropLimitPercent: 2.95 })
    const found = byId(remediesOf(wire), 'smaller-size')
    // section for the drop: ρ·L·I/ΔV of clad aluminium at 0.85 × 12 V
    expect(found?.text).toMatch(/^2\/0 AWG misses the limit of the drop by [\d.]+ %/)
    const patched = electricalHalf(mergePatch(wire, found?.patch)).circuit.trunk
    expect([electricalHalf(wire).circuit.trunk?.designation, patched?.designation]).toEqual(['4/0 AWG', '2/0 AWG'])
    // a tenth of a per cent less would not have done
    const limit = found?.patch.supply?.dropLimitPercent ?? 0
    const less = electricalHalf(mergePatch(wire, { supply: { dropLimitPercent: 0.999 * limit } })).circuit.trunk
    expect(less?.designation).toBe('4/0 AWG')
  })

  it('lay two cables for a stiff one, each behind its own fuse, and none for a thin one', () => {
    const found = byId(remediesOf(plan(1500)), 'parallel-runs')
    expect(found).toMatchObject({ cost: 'cable', patch: { supply: { runs: 2 } }, after: { cable: '2 × 2 AWG' } })
    const { circuit, bill } = electricalHalf(mergePatch(plan(1500), found?.patch))
    expect(circuit.trunk).toMatchObject({ runs: 2, designation: '2 AWG' })
    expect(bill.filter(({ item }) => /^fuse \d/.test(item)).map(({ need }) => need)).toEqual([2])
    expect(byId(remediesOf(plan(500)), 'parallel-runs')).toBeUndefined()
  })

  it('offer a hotter insulation where the class carries too little, and none where it is not the class', () => {
    const hot = byId(remediesOf(plan(1000, { insulationC: 80 })), 'other-insulation')
    expect(hot).toMatchObject({ cost: 'cable', patch: { supply: { insulationC: 105 } } })
    const crossLinked = byId(remediesOf(plan(2200, { insulationC: 105, ambientC: 85 })), 'other-insulation')
    expect(crossLinked).toMatchObject({ patch: { supply: { insulationC: 125, insulationMaterial: 'xlpe' } } })
  })

  it('bridge two channels of a weak amplifier whose sheet was not read for it: 4·Pch/2 at the same load', () => {
    const pair = { ratings: [{ loadOhm: 2, powerW: 200 }], minimumOhm: 2, channels: undefined }
    const weak = (more: object) =>
      plan(
        600,
        {},
        {
          driver: { ...bearing(600), coils: { count: 1, ratedOhm: 4 } },
          driverCount: 1,
          amplifier: { ...alder(600), ...pair, ...more }
        }
      )
    // a channel gives 200 W at 2 Ω, so at least 100 W at 4 Ω; the pair 2 × 200 W at 4 Ω
    expect(byId(remediesOf(weak({})), 'bridging')).toMatchObject({
      cost: 'reading',
      before: { powerW: 100 },
      after: { powerW: 400 },
      patch: { amplifier: { channels: 2, minimumBridgedOhm: 4 } }
    })
    for (const told of [{ channels: 1 }, { minimumBridgedOhm: 8 }])
      expect(byId(remediesOf(weak(told)), 'bridging')).toBeUndefined()
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
