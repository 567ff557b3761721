/** What can hurt is said where it can hurt: every caution of a step stands there, once, in each form of a plan. */

import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { paperOfPlan } from '../../src/documents/plan/paper-of-plan.ts'
import { pdfBuild, pdfWire } from '../../src/documents/plan/pdf/plan-pdf-work.ts'
import { planText } from '../../src/documents/plan/plan-text.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'
import { inventedPlan } from '../support/invented-plan.ts'

const units = metric

const spaced = (text: string) => text.replace(/\s+/g, ' ')
const readable = (html: string) =>
  spaced(
    html
      .replace(/<style>[\s\S]*?<\/style>/, '')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&')
  )

const withCapacitor = { ...estatePlan, supply: { ...estatePlan.supply, capacitor: { capacitanceF: 4 } } }

for (const [name, wire] of [
  ['two drivers and a capacitor', withCapacitor],
  ['a closed box', hatchbackPlan]
] as const) {
  describe(`cautions at their steps: ${name}`, () => {
    const request = toSi(wire) as unknown as PlanRequest
    const outcome = planSystem(request)
    const { result, cautions } = outcome
    const steps = [...(result.buildOrder?.steps ?? []), ...result.commissioning]
    const page = readable(planPage(paperOfPlan(outcome, request, units), { paper: units }))
    const text = spaced(planText(paperOfPlan(outcome, request, units), { paper: units }))

    it('has steps of different names', () => expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length))

    it('prints each caution whole once, on the page and in the text: at its step, in its part, or with the verdict', () => {
      expect(cautions.length).toBeGreaterThan(20)
      const reasons = result.summary.reasons.map(({ detail }) => detail)
      const behind = (printed: string, opening: string) => printed.slice(printed.indexOf(opening))
      // The first page holds short forms, and the whole of what no plan is without.
      const [worked, listed] = [behind(page, 'What it will do'), behind(text, 'Further cautions')]
      // What is not planned stands on and beside the wiring picture as well: nobody may take the picture for the whole.
      for (const { code, message } of cautions.filter(
        each => each.code !== 'not-planned' && !reasons.includes(each.message)
      ))
        if (code === 'licensed-work')
          for (const printed of [page, text]) expect(printed.split(spaced(message))).toHaveLength(2)
        // What the first page says whole, without a step, stands there alone.
        else if (result.cover.pageOne.some(each => each.sentence === message && each.step === undefined))
          for (const printed of [page, text]) expect(printed.split(spaced(message)), message).toHaveLength(2)
        else for (const printed of [worked, listed]) expect(printed.split(spaced(message)), message).toHaveLength(2)
      for (const reason of reasons) for (const printed of [page, text]) expect(printed).toContain(spaced(reason))
    })

    it('opens with at most seven: figures of this design first, licensed work last', () => {
      const { pageOne } = result.cover
      expect(pageOne.length).toBeGreaterThan(2)
      expect(pageOne.length).toBeLessThanOrEqual(7)
      expect(pageOne.at(-1)?.code).toBe('licensed-work')
      const steps = [...(result.buildOrder?.steps ?? []), ...result.commissioning]
      for (const { code, clause, sentence, step } of pageOne) {
        expect(clause.split(' ').length, clause).toBeLessThanOrEqual(12)
        const whole = cautions.find(each => each.code === code)
        expect(whole?.message.startsWith(sentence), sentence).toBe(true)
        if (step !== undefined) expect(steps.find(({ number }) => number === step)?.cautions).toContain(code)
        expect(page.indexOf(spaced(sentence)), sentence).toBeLessThan(page.indexOf('What it will do'))
      }
    })

    it('keeps to the words of this project', () => {
      for (const printed of [page, text])
        expect(printed).not.toMatch(
          /no clamps|while you can reach|seam you can reach|plus to plus|sings|mirrors the slot|Go on if|earth lead|the air rings|does not shock|driver's seat|two people\.|push down on it/
        )
    })

    it('gives every caution that a step of the first start names', () => {
      const said = new Set<string>(cautions.map(({ code }) => code))
      for (const { id, cautions: codes } of result.commissioning)
        for (const code of codes.filter(each => each !== 'hearing-extreme')) expect(said, id).toContain(code)
    })

    it('says the battery gas where the battery is connected, and the exhaust where the engine runs', () => {
      const from = (opening: string) => text.slice(text.indexOf(opening))
      const gas = cautions.find(({ code }) => code === 'battery-gas')?.message ?? 'none'
      expect(from('Connect the battery again').indexOf(spaced(gas))).toBeGreaterThan(0)
      // Whole where the engine first runs, in short wherever it runs again.
      expect(from('Start the engine').indexOf('carbon monoxide')).toBeGreaterThan(0)
      expect(from('The loudspeaker leads stay off the amplifier')).toMatch(/^.{0,700}Engine running only outdoors/)
      expect(text).toMatch(/carbon monoxide.*ready mode/)
    })
  })
}

describe('a capacitor', () => {
  const { result, cautions } = planSystem(toSi(withCapacitor) as unknown as PlanRequest)
  const place = (id: string) => result.commissioning.findIndex(step => step.id === id)

  // Hand calculation: 14.4² V²/10 Ω = 20.7 W; 10 Ω·4 F·ln 14.4 = 106.7 s; ½·4 F·14.4² V² = 415 J
  it('is charged through a resistor before the fuse goes in, and discharged before later work', () => {
    expect(place('battery-on')).toBeLessThan(place('precharge'))
    expect(place('precharge')).toBe(place('fuse-last') - 1)
    expect(place('discharge')).toBe(result.commissioning.length - 1)
    expect(result.commissioning[place('precharge')]?.text).toMatch(/10 Ω, 25 W.*about 110 s/)
    expect(cautions.find(({ code }) => code === 'capacitor-charge')?.message).toMatch(/410 J/)
    expect(cautions.map(({ code }) => code)).toContain('capacitor-discharge')
  })

  it('brings its resistor into the bill, with ohm and watt', () => {
    const items = result.billOfMaterials.map(({ item }) => item)
    expect(items).toContain('charging resistor 10 Ω, 25 W, with two insulated clips')
    expect(items).toContain('capacitor 4 F with covered terminals')
  })
})

describe('cautions at their steps in the PDF', () => {
  it('stand once, at a step of the work or of the first start', () => {
    const paper = inventedPlan()
    const printed = JSON.stringify([...pdfBuild(paper), ...pdfWire(paper)])
    const said = [...paper.stepCautions.values()].flat()
    expect(said.length).toBeGreaterThan(3)
    for (const { message } of said) expect(printed.split(JSON.stringify(message).slice(1, -1)), message).toHaveLength(2)
  })
})
