/** Page, paper, text, Markdown and pictures in German: no English word, the figures of the English ones, decimal commas. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { inLanguage } from '../../src/domain/in-language.ts'
import { languages } from '../../src/domain/languages.ts'
import { drawBox } from '../../src/http/operations/boxes/box-drawings.ts'
import { wireCoils } from '../../src/http/operations/coils/coil-wiring.ts'
import { compareDesigns } from '../../src/http/operations/enclosures/design-comparison.ts'
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { estatePlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'
import { readPlan } from '../support/plan-reader.ts'
import { randomPlan } from '../support/random-plans.ts'

const ENGLISH =
  /\b(the|and|with|which|from|than|when|must|where|that|this|of|for|at|by|step|box|driver|panel|screw|fuse|cut|hole|middle|below|above|no|not|see|look|width|height|depth|rear|inside)\b/i

function formsIn(wire: unknown, code: 'en' | 'de') {
  const request = toSi(wire) as unknown as PlanRequest
  const outcome = inLanguage(planSystem(request), languages[code])
  return { outcome, ...readPlan(outcome, request, { paper: { ...metric, language: languages[code] } }) }
}

/** Titles of what others published, and names the caller gave, stand as they are. */
function without(text: string, names: readonly string[]): string {
  return names
    .map(name => name.replaceAll("'", "'").replace(/\s+/g, ' '))
    .toSorted((a, b) => b.length - a.length)
    .reduce((rest, name) => (name.length < 3 ? rest : rest.replaceAll(name, ' ')), text)
}

const NAMES = ['Tarn driver', 'Tarn amplifier', 'Fenlark 30', 'Osier 700', 'Two Fenlarks for the Brackwater estate']

/** Ids of fields and sources, words a caller may send, and titles as they were published. */
function foreign({ paper }: ReturnType<typeof formsIn>): readonly string[] {
  return [
    ...NAMES,
    paper.title,
    ...paper.sources.flatMap(({ id, title }) => [title, id]),
    ...paper.assumed.flatMap(({ field, part, value }) => [
      part === undefined ? field : `${part}: ${field}`,
      field,
      ...(typeof value === 'string' ? [value] : [])
    ])
  ]
}

const figuresOf = (text: string) =>
  [...text.replace(/\bP100\b/g, '').matchAll(/\d+(?:[.,]\d+)?/g)].map(([figure]) => figure.replace(',', '.')).toSorted()

/** Those of one that the other lacks, each as often as it is lacking. */
function lacking(of: readonly string[], other: readonly string[]): readonly string[] {
  const left = [...other]
  return of.filter(figure => {
    const at = left.indexOf(figure)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

const around = (text: string, found: RegExpExecArray) => text.slice(Math.max(0, found.index - 40), found.index + 40)

const requests = { estatePlan, leaningPlan, second: randomPlan(2), third: randomPlan(3), none: randomPlan(1) }

for (const [name, wire] of Object.entries(requests)) {
  describe(`the papers of ${name} in German`, () => {
    const [german, english] = [formsIn(wire, 'de'), formsIn(wire, 'en')]
    for (const form of ['page', 'text', 'markdown', 'pdf'] as const) {
      const said = without(german.forms[form] ?? '', foreign(german))
      const told = without(english.forms[form] ?? '', foreign(english))

      it(`have no English word in the ${form}`, () => {
        expect(said.length).toBeGreaterThan(500)
        const found = ENGLISH.exec(said)
        expect(found === null ? '' : around(said, found)).toBe('')
        expect(ENGLISH.test(told)).toBe(true)
      })

      it(`have the figures of the English ${form}, with commas`, () => {
        const [ours, theirs] = [figuresOf(german.forms[form] ?? ''), figuresOf(english.forms[form] ?? '')]
        expect([lacking(ours, theirs), lacking(theirs, ours)]).toEqual([[], []])
        const pointed = /\d\.\d/.exec(said.replace(/\d+ CFR \d+\.\d+/g, ''))
        expect(pointed === null ? '' : around(said, pointed)).toBe('')
      })
    }
  })
}

describe('pictures in German', () => {
  const operations = { drawBox, wireCoils, compareDesigns, computeResponse }
  for (const [name, operation] of Object.entries(operations)) {
    it(`of ${name} have no English word and the figures of the English ones`, async () => {
      const letteringOf = async (language: 'en' | 'de') => {
        const [example] = Object.values(operation.examples)
        const options = { digits: 'six', basis: false, form: 'image/svg+xml', language } as const
        const { body } = await operation.run(example?.request, options)
        return [...String(body).matchAll(/<(?:text|title|desc)[^>]*>([^<]*)</g)].map(([, text]) => text).join(' | ')
      }
      const [german, english] = [await letteringOf('de'), await letteringOf('en')]
      expect(ENGLISH.exec(german)).toBeNull()
      expect(ENGLISH.test(english)).toBe(true)
      expect(figuresOf(german)).toEqual(figuresOf(english))
    })
  }
})
