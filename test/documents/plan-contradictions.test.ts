/** The reader of every form over the examples, and over the same with a fault put into one form. */

import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { planText } from '../../src/documents/plan/plan-text.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'
import { contradictions, foundOf, quantities, type ReadPlan, readPlan } from '../support/plan-reader.ts'

const options = { paper: metric } as const

function read(wire: unknown): ReadPlan {
  const request = toSi(wire) as unknown as PlanRequest
  return readPlan(planSystem(request), request, options)
}

const examples = Object.entries({ estatePlan, hatchbackPlan, leaningPlan }).map(([name, wire]) => ({
  name,
  plan: read(wire)
}))

describe('a reader of every form', () => {
  it.each(examples)('finds no contradiction in $name', ({ plan }) => {
    expect(contradictions(plan)).toEqual([])
  })

  it.each(examples)(
    'is led from each thing to buy to the step that uses it, in 80 columns at most: $name',
    ({ plan }) => {
      const page = planPage(plan.paper, options)
      const linked = new Set(
        [...page.matchAll(/<\/b> ([^<]*)<\/span><\/label><a href="#step-\d+"/g)].map(([, item = '']) =>
          item.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&')
        )
      )
      const unused = plan.plan.billOfMaterials.filter(
        ({ needed, group, item }) => needed && group !== 'board' && !linked.has(item)
      )
      expect(unused.map(({ item }) => item)).toEqual([])
      const lines = planText(plan.paper, options).split('\n')
      expect(lines.filter(line => [...line].length > 80)).toEqual([])
    }
  )

  it('sees every quantity in at least two places of the examples', () => {
    for (const [name, quantity] of Object.entries(quantities)) {
      const most = Math.max(...examples.map(({ plan }) => foundOf(plan, quantity).length))
      expect(most, name).toBeGreaterThan(1)
    }
  })
})

/** One number of a form, another in its place. */
function withFault({ forms, ...rest }: ReadPlan, form: string, pattern: RegExp): ReadPlan | undefined {
  const text = forms[form] ?? ''
  const [match] = text.matchAll(pattern)
  const value = match?.slice(1).find(each => each !== undefined)
  if (match === undefined || value === undefined) return undefined
  const other = /^[\d.]+$/.test(value) ? String(Math.round(Number(value) * 1.4 + 3)) : `9${value}`
  const at = match.index + match[0].lastIndexOf(value)
  return { ...rest, forms: { ...forms, [form]: text.slice(0, at) + other + text.slice(at + value.length) } }
}

describe('the reader notices', () => {
  const [estate] = examples
  if (estate === undefined) throw new Error('no example')
  const { plan } = estate

  it.each(Object.entries(quantities))('another %s in any form that writes it', (name, { written }) => {
    let planted = 0
    for (const form of Object.keys(plan.forms))
      for (const pattern of written) {
        const faulty = withFault(plan, form, pattern)
        if (faulty === undefined) continue
        planted++
        expect(contradictions(faulty), `${name} in the ${form}: ${pattern}`).not.toEqual([])
      }
    expect(planted, name).toBeGreaterThan(0)
  })

  const without = (form: string, text: string): ReadPlan => ({
    ...plan,
    forms: { ...plan.forms, [form]: plan.forms[form]?.replaceAll(text, ' ') ?? '' }
  })

  it('a thing that is bought and shown nowhere, and one that no step uses', () => {
    const { item = '', part } = plan.paper.bill.find(({ group }) => group === 'fittings') ?? {}
    expect(contradictions(without('pdf', item))).toContain(`${item}: not in the pdf`)
    const { buildOrder } = plan.plan
    if (buildOrder === undefined) throw new Error('nothing to build')
    const steps = buildOrder.steps.map(step => ({ ...step, uses: step.uses.filter(each => each !== part) }))
    const unused = { ...plan, plan: { ...plan.plan, buildOrder: { ...buildOrder, steps } } }
    expect(contradictions(unused).some(text => text.startsWith(item))).toBe(true)
  })

  it('a panel that is cut and not in the list, and one that is listed and not cut', () => {
    const { box, cutPlan } = plan.paper
    if (box === undefined || cutPlan === undefined) throw new Error('nothing to cut')
    const fewer = { ...plan, paper: { ...plan.paper, box: { ...box, panels: box.panels.slice(1) } } }
    expect(contradictions(fewer).join(' ')).toContain('on a sheet, not in the list')
    const [layout, ...others] = cutPlan.layouts
    if (layout === undefined) throw new Error('no sheet')
    const uncut = { ...cutPlan, layouts: [{ ...layout, pieces: layout.pieces.slice(1) }, ...others] }
    expect(contradictions({ ...plan, paper: { ...plan.paper, cutPlan: uncut } }).join(' ')).toContain('on the sheets')
  })

  it('a step that is named and not there, one that is not shown, a conductor without its number, a day too long', () => {
    const { forms } = plan
    const text = forms.text ?? ''
    const changed = (form: string, with_: string): ReadPlan => ({ ...plan, forms: { ...forms, [form]: with_ } })
    expect(contradictions(changed('text', `${text} (step 999)`))).toContain('text: step 999 is named and not there')
    const title = plan.plan.commissioning[0]?.title ?? ''
    expect(contradictions(without('markdown', title)).join(' ')).toContain('is not shown')
    expect(contradictions(changed('page', (forms.page ?? '').replace('1 positive', 'positive'))).join(' ')).toContain(
      'conductor 1'
    )
    expect(contradictions(changed('text', text.replace(/Day 1, \d+ h/, 'Day 1, 99 h'))).join(' ')).toContain(
      'text: days of'
    )
  })
})
