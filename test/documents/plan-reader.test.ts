/** Reads page, text, Markdown and paper of a plan as a stranger would, and finds what contradicts itself. */

import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { paperOfPlan } from '../../src/documents/plan/paper-of-plan.ts'
import { pdfCover } from '../../src/documents/plan/pdf/plan-pdf-cover.ts'
import { pdfBuy, pdfCheck, pdfWire } from '../../src/documents/plan/pdf/plan-pdf-work.ts'
import { planMarkdown, planText } from '../../src/documents/plan/plan-text.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'

const options = { paper: metric } as const

/** Every text of a PDF's content, whatever it stands in. */
function textsOf(node: unknown): string {
  if (typeof node === 'string') return `${node} `
  if (Array.isArray(node)) return node.map(textsOf).join('')
  if (typeof node !== 'object' || node === null) return ''
  return Object.entries(node)
    .filter(([name]) => name !== 'color' && name !== 'alignment')
    .map(([, inner]) => textsOf(inner))
    .join('')
}

const bare = (text: string) =>
  text
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('\\', '')
    .replace(/[*#]/g, ' ')
    .replace(/\s+/g, ' ')

type Forms = Readonly<Record<string, string>>

/** A quantity and every way it is written; each match of one form is its value. */
const quantities: Readonly<Record<string, readonly RegExp[]>> = {
  'gain [V]': [
    /gain (?:set )?to ([\d.]+) V/gi,
    /The meter reads ([\d.]+) V/g,
    /Speaker terminals at the tone[^\d]*([\d.]+) V/g
  ],
  'loudest [dB]': [
    /(\d+) dB(?:: | )?(?=loudest)|loudest at the seat[^\d]*± \d+ dB (\d+) dB/g,
    /Up to (\d+) dB at the seat/g
  ],
  'net air [L]': [
    /in a \w+ box of ([\d.]+) L/g,
    /net air volume ([\d.]+) L/gi,
    /Net air (?:asked )?(?:open|[\d.]+ L)[, ]+(?:built )?([\d.]+) L/g
  ],
  'outside with carpet [mm]': [/(\d+(?:\.\d)? × \d+(?:\.\d)? × \d+(?:\.\d)?) mm:? outside, with carpet/g],
  'main fuse [A]': [/Put the (\d+) A fuse/g, /1 positive [^A]*?AWG [\d.]+ m (\d+) A/g]
}

const rounded = (text: string) => (/^[\d.]+$/.test(text) ? String(Number(Number(text).toPrecision(3))) : text)

/** Quantities that have two values somewhere, with where. */
function contradictions(forms: Forms): readonly string[] {
  return Object.entries(quantities).flatMap(([quantity, patterns]) => {
    const found = Object.entries(forms).flatMap(([form, text]) =>
      patterns.flatMap(pattern =>
        [...text.matchAll(pattern)].map(match => ({
          form,
          value: rounded(match.slice(1).find(each => each !== undefined) ?? '')
        }))
      )
    )
    return new Set(found.map(({ value }) => value)).size < 2 ? [] : [`${quantity}: ${JSON.stringify(found)}`]
  })
}

for (const [name, wire] of Object.entries({ estatePlan, hatchbackPlan, leaningPlan })) {
  describe(`a reader of every form: ${name}`, () => {
    const request = toSi(wire) as unknown as PlanRequest
    const outcome = planSystem(request)
    const { result } = outcome
    const paper = paperOfPlan(outcome, request, options.paper)
    const page = planPage(paper, options)
    const pdf = [pdfCover(paper, options), pdfBuy(paper), pdfWire(paper), pdfCheck(paper)]
    const forms: Forms = {
      page: bare(page),
      text: bare(planText(paper, options)),
      markdown: bare(planMarkdown(paper, options)),
      pdf: bare(textsOf(pdf))
    }

    it('finds each quantity in several forms, with one value', () => {
      const matches = (patterns: readonly RegExp[]) =>
        Object.values(forms).flatMap(text => patterns.flatMap(each => text.match(each) ?? []))
      for (const [quantity, patterns] of Object.entries(quantities))
        if (quantity !== 'loudest [dB]' || result.cover.band?.place === 'seat')
          expect(matches(patterns).length, quantity).toBeGreaterThan(1)
      expect(contradictions(forms)).toEqual([])
    })

    it('finds a figure that was changed in one place', () => {
      const gainV = result.parts.signal.done ? result.parts.signal.outcome.result.gain.meterVoltageV : 0
      const gain = String(Number(gainV.toFixed(1)))
      expect(
        contradictions({ ...forms, text: forms.text?.replaceAll(`gain to ${gain} V`, 'gain to 99 V') ?? '' })
      ).toHaveLength(1)
      const volume = forms.markdown?.replace(/box of [\d.]+ L/, 'box of 12 L') ?? ''
      expect(contradictions({ ...forms, markdown: volume })).toHaveLength(1)
    })

    it('finds every thing that is bought at the step that uses it, and every panel of the list on a sheet', () => {
      const links = new Map(
        [...page.matchAll(/<\/b> ([^<]*)<\/span><\/label><a href="#step-(\d+)"/g)].map(([, item, step]) => [item, step])
      )
      const unused = result.billOfMaterials.filter(
        ({ needed, group, item }) =>
          needed && group !== 'board' && !links.has(item.replaceAll('"', '&quot;').replaceAll("'", '&#39;'))
      )
      expect(unused.map(({ item }) => item)).toEqual([])
      const pieces = (paper.cutPlan?.layouts ?? []).flatMap(layout => layout.pieces.map(({ panel }) => panel))
      for (const { name: panel, quantity } of paper.box?.panels ?? [])
        expect(pieces.filter(each => each === panel).length, panel).toBe(quantity)
    })

    it('is sent to no step that is not there, in any form', () => {
      const numbers = new Set(
        [...(result.buildOrder?.steps ?? []), ...result.commissioning].map(({ number }) => String(number))
      )
      for (const [form, text] of Object.entries(forms)) {
        const named = [...text.matchAll(/\(step (\d+)\)/g)].map(([, number]) => number ?? '')
        expect(
          named.filter(number => !numbers.has(number)),
          form
        ).toEqual([])
      }
      expect(forms.text).toMatch(/\(step \d+\)/)
    })

    it('keeps to 80 columns in the text', () => {
      expect(
        planText(paper, options)
          .split('\n')
          .filter(line => [...line].length > 80)
      ).toEqual([])
    })
  })
}
