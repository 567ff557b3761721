/** A plan in German is German: no English sentence in what a person reads, the same figures, the same words for programs. */
import { describe, expect, it } from 'vitest'
import { cautionBriefs } from '../../src/contract/cautions/briefs.ts'
import { germanBriefs } from '../../src/contract/sentences/german-briefs.ts'
import { layOutBox } from '../../src/http/operations/boxes/box-panels.ts'
import { sizePort } from '../../src/http/operations/ports/port-sizing.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { germanProblems } from '../../src/http/wire/problem/german-problems.ts'
import type { ProblemCode } from '../../src/http/wire/problem/problem-kinds.ts'
import { testApp } from '../support/call.ts'
import { randomPlan } from '../support/random-plans.ts'

type Plain = Readonly<Record<string, unknown>>

/** Fields whose texts are sentences, by where they stand in a plan. */
const read = {
  cover: ['sentence', 'finding', 'clause'],
  summary: ['lines', 'detail'],
  headroom: ['text'],
  choice: ['gains', 'givesUp'],
  remedies: ['text'],
  billOfMaterials: ['item', 'basis'],
  buildOrder: ['title', 'actions', 'tools', 'substitutes', 'checks', 'warnings'],
  commissioning: ['title', 'text', 'passIf', 'tools'],
  readings: ['what', 'probes', 'when', 'below', 'above'],
  safety: ['barrier', 'proof'],
  restraint: ['advice'],
  parts: ['between', 'form'],
  circuit: ['form'],
  waysOut: ['change', 'builds'],
  tried: ['name', 'why']
} as const

function textsIn(value: unknown, fields: readonly string[], place: string): readonly (readonly [string, string])[] {
  if (Array.isArray(value)) return value.flatMap((each, at) => textsIn(each, fields, `${place}/${at}`))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) => {
    const here = `${place}/${name}`
    if (!fields.includes(name)) return textsIn(inner, fields, here)
    const texts: readonly unknown[] = Array.isArray(inner) ? inner : [inner]
    return texts.flatMap((text, at) => (typeof text === 'string' ? [[`${here}/${at}`, text] as const] : []))
  })
}

const planIn = (request: unknown, language: 'en' | 'de'): Plain =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false, language })).result

const answerIn = (operation: Pick<typeof planSystem, 'answerText'>, request: unknown) =>
  JSON.parse(operation.answerText(request, { digits: 'six', basis: false, language: 'de' }))

const readIn = (plan: Plain) => Object.entries(read).flatMap(([part, fields]) => textsIn(plan[part], fields, part))

/** What the caller named stays as it is named. */
const NAMES = /Tarn (driver|amplifier)|Fenlark 30|Osier 700|doors/g
const ENGLISH =
  /\b(the|and|with|which|from|than|when|must|where|that|this|of|for|box|driver|panel|screw|fuse|width|height|depth|rear|inside)\b/i
const GERMAN = /\b(der|das|und|mit|nicht|wird|oder|auf|für|eine?n?|Gehäuse|Lautsprecher|Sicherung)\b/

/** A tuning of the literature bears its English name nowhere; P100 is the American word for P3. */
const figuresOf = (text: string) =>
  [...text.replace(/\bP100\b/g, '').matchAll(/\d+(?:[.,]\d+)?/g)].map(([figure]) => figure.replace(',', '.')).toSorted()

/** A space that holds no box for the driver; what would do is told. */
const tight = {
  ...estatePlan,
  driverCount: 2,
  enclosure: { kind: 'vented', netVolumeL: 90, tuningHz: 22 },
  car: { space: { widthMm: 600, heightMm: 400, depthMm: 300 } }
}

const requests = {
  tight,
  estatePlan,
  hatchbackPlan,
  leaningPlan,
  first: randomPlan(1),
  second: randomPlan(2),
  third: randomPlan(3)
}

describe('a plan in German', () => {
  for (const [name, request] of Object.entries(requests)) {
    const [english, german] = [readIn(planIn(request, 'en')), readIn(planIn(request, 'de'))]

    it(`is German where ${name} is read, and English in English`, () => {
      expect(german.length).toBeGreaterThan(name.endsWith('Plan') ? 200 : 8)
      expect(german.filter(([, text]) => ENGLISH.test(text.replace(NAMES, '')))).toEqual([])
      expect(english.filter(([, text]) => GERMAN.test(text.replace(NAMES, '')))).toEqual([])
    })

    it(`says in ${name} the same figures at the same places`, () => {
      expect(german.map(([place]) => place)).toEqual(english.map(([place]) => place))
      const differing = german.filter(([, text], at) => {
        const [, told = ''] = english[at] ?? []
        return figuresOf(text).join() !== figuresOf(told).join()
      })
      expect(differing).toEqual([])
    })

    it(`leaves no decimal point in ${name}`, () => {
      const pointed = german.filter(([, text]) =>
        /\d\.\d/.test(text.replace(NAMES, '').replace(/\d+ CFR \d+\.\d+/g, ''))
      )
      expect(pointed).toEqual([])
    })
  }

  it('tells what stands too near in a box, and what would make a port fit', () => {
    const small = { outer: { widthMm: 330, heightMm: 330, depthMm: 180 }, thicknessMm: 18 }
    const driver = { cutOutDiameterMm: 282, flangeDiameterMm: 312, mountingDepthMm: 158, magnetDiameterMm: 150 }
    const box = answerIn(layOutBox, { ...small, drivers: [driver] })
    const port = answerIn(sizePort, {
      netVolumeL: 40,
      tuningHz: 30,
      port: { kind: 'round' },
      peakFlowM3PerS: 0.4,
      space: { straightMm: 300 }
    })
    const told = [
      ...box.cautions.map(({ message }: Plain) => message),
      ...box.result.clearances.flatMap(({ between, why }: Plain) => [between, why]),
      ...port.cautions.map(({ message }: Plain) => message),
      ...port.result.recommended.why,
      ...port.result.waysOut.map(({ detail }: Plain) => detail)
    ]
    expect(box.result.clearances.length).toBeGreaterThan(2)
    expect(port.result.waysOut.length).toBeGreaterThan(2)
    expect(told.filter(text => ENGLISH.test(text) || /\d\.\d/.test(text))).toEqual([])
  })

  it('would notice an English sentence', () => {
    expect(ENGLISH.test('Glue and screw the last panel.')).toBe(true)
    expect(ENGLISH.test('Die letzte Platte leimen und schrauben.')).toBe(false)
    expect(GERMAN.test('Die letzte Platte leimen und schrauben.')).toBe(true)
  })
})

describe('a German plan for programs', () => {
  it('gives the short cautions of its compact form in German', async () => {
    const app = await testApp()
    const url = '/v1/plans?form=compact&language=de'
    const { cautions } = (await app.inject({ method: 'POST', url, payload: estatePlan })).json()
    const english: readonly string[] = Object.values(cautionBriefs)
    const messages: readonly string[] = cautions.map(({ message }: { message: string }) => message)
    expect(messages.filter(message => english.includes(message))).toEqual([])
    expect(messages.filter(message => Object.values<string>(germanBriefs).includes(message)).length).toBeGreaterThan(3)
  })

  it('titles the parts that were refused in German', () => {
    const tight = { ...estatePlan, car: { space: { widthMm: 400, heightMm: 300, depthMm: 260 } } }
    const { parts } = planIn(tight, 'de') as {
      parts: Record<string, { problem?: { title: string; code: ProblemCode } }>
    }
    const titles = Object.values(parts).flatMap(({ problem }) => (problem === undefined ? [] : [problem]))
    expect(titles.length).toBeGreaterThan(1)
    for (const { title, code } of titles) expect(title).toBe(germanProblems[code].title)
  })
})
