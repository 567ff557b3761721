/** What a plan may not hide, drop or take twice. */
import type { Static } from 'typebox'
import { describe, expect, it } from 'vitest'
import type { Si } from '../../src/contract/field/wire-units.ts'
import type { SearchBody, SearchRequest } from '../../src/contract/systems/design-search.ts'
import type { PlanBody, PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { estateSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post } from '../support/call.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (request: unknown): Answer =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))
const written = async (request: unknown, form: string) =>
  String((await planSystem.run(request, { digits: 'six', basis: false, form })).body)

type Paths<T, Deep extends unknown[] = []> = Deep['length'] extends 6
  ? never
  : T extends readonly (infer Item)[]
    ? Paths<Item, [...Deep, 1]>
    : T extends object
      ? { [Key in keyof T & string]: Key | `${Key}.${Paths<NonNullable<T[Key]>, [...Deep, 1]>}` }[keyof T & string]
      : never
type Fields<T> = Paths<Required<T>>
type Apart<A, B> = Exclude<Fields<A>, Fields<B>> | Exclude<Fields<B>, Fields<A>>

describe('the fields of a plan and of a search', () => {
  it('are the same on the wire and inside (held by the types), down to the source of the signal', async () => {
    const plan: [Apart<PlanRequest, Si<Static<typeof PlanBody>>>] extends [never] ? true : false = true
    const search: [Apart<SearchRequest, Si<Static<typeof SearchBody>>>] extends [never] ? true : false = true
    expect([plan, search]).toEqual([true, true])
    const signal = { ...hatchbackPlan.signal, input: { lowestV: 0.2, highestV: 6 }, converterLineV: 2.5 }
    const { parts } = planned({ ...hatchbackPlan, signal }).result
    expect(parts.signal.request.converterLineV).toBe(2.5)
    const line = { ...estatePlan.signal, inputsInParallel: 2 }
    const { request } = planned({ ...hatchbackPlan, signal: line }).result.parts.signal
    expect(request.inputsInParallel).toBe(2)
  })
})

describe('a plan refuses', () => {
  const refused = async (change: object, url = '/v1/plans', request: object = estatePlan) => {
    const { status, body } = await post(url, { ...request, ...change })
    expect([status, body.code]).toEqual([422, 'conflicting-input'])
    return body.errors.map(({ pointer }: { pointer: string }) => pointer)
  }

  it('what the kind of box asked for cannot use', async () => {
    expect(await refused({ enclosure: { kind: 'vented', qtc: 0.7 } })).toEqual(['/enclosure/qtc'])
    expect(await refused({ enclosure: { kind: 'closed', tuningHz: 31, portShape: 'slot' } })).toEqual([
      '/enclosure/tuningHz',
      '/enclosure/portShape'
    ])
    expect(await refused({ enclosure: { qtc: 0.7, tuningHz: 31 } })).toEqual(['/enclosure/qtc', '/enclosure/tuningHz'])
    expect(await refused({ enclosure: { kind: 'closed', qtc: 0.7, netVolumeL: 40 } })).toEqual([
      '/enclosure/qtc',
      '/enclosure/netVolumeL'
    ])
    expect(await refused({ kinds: ['closed'], port: { shape: 'slot' } }, '/v1/designs/search', estateSearch)).toEqual([
      '/port'
    ])
  })

  it('a branch where there is no distribution block', async () => {
    expect(await refused({ supply: { ...estatePlan.supply, branchLengthM: 1 } })).toEqual(['/supply/branchLengthM'])
  })

  it('an amplifier whose two descriptions differ, with both places', async () => {
    const amplifier = { ...estatePlan.amplifier, draw: { class: 'AB', onboardFusesA: [50, 50] } }
    expect(await refused({ amplifier })).toEqual(['/amplifier/class', '/amplifier/draw/class'])
    const amplifiers = [{ ...estateSearch.amplifiers[0], draw: { efficiency: 0.6 }, efficiency: 0.8 }]
    expect(await refused({ amplifiers }, '/v1/designs/search', estateSearch)).toEqual([
      '/amplifiers/0/efficiency',
      '/amplifiers/0/draw/efficiency'
    ])
  })
})

describe('the amplifier of a plan', () => {
  const { class: _, regulation, ratedVoltageV, onboardFusesA, ...sheet } = estatePlan.amplifier
  const older = { ...sheet, draw: { class: 'AB', regulation, ratedVoltageV, onboardFusesA } }
  const newer = { ...sheet, class: 'AB', regulation, ratedVoltageV, onboardFusesA }

  it('gives heat and current by one class, whichever place it stands in', () => {
    const [first, second] = [older, newer].map(amplifier => planned({ ...hatchbackPlan, amplifier }).result.parts)
    expect(first.current.request).toEqual(second.current.request)
    expect(first.matching.request).toEqual(second.matching.request)
    expect(second.current.request.amplifiers[0].class).toBe('AB')
    expect(second.matching.request.amplifier.class).toBe('AB')
    // 420 W at the 60 % of class AB draw 700 W: 280 W of heat, 58.3 A at 12 V.
    expect(second.matching.answer.result.heat.fullSineW).toBeCloseTo(420 / 0.6 - 420, 0)
    expect(second.current.answer.result.amplifiers[0].fullSineA).toBeCloseTo(420 / 0.6 / 12, 0)
  })
})

describe('a plan says', () => {
  it('every default that it used, each once', () => {
    const others = [{ name: 'doors', powerW: 200, class: 'AB', regulation: 'regulated' }]
    const supply = { ...hatchbackPlan.supply, return: { kind: 'chassis', body: 'steel' }, otherAmplifiers: others }
    const { assumed, result } = planned({ ...hatchbackPlan, supply })
    const of = (pointer: string) =>
      assumed.filter((row: Answer) => row.pointer === pointer).map((row: Answer) => row.value)
    expect(of('/car/speakerCableLengthM')).toEqual([2])
    expect(of('/signal/mainsLowHz')).toEqual([80])
    expect(of('/supply/branchLengthM')).toEqual([1])
    expect(of('/supply/return/leadLengthM')).toEqual([0.5])
    expect(of('/supply/source')).toEqual([13.8])
    const speaker = result.billOfMaterials.find(({ item }: Answer) => item.startsWith('two-core loudspeaker wire'))
    expect(speaker.need).toBe(of('/car/speakerCableLengthM')[0])
  })

  it('that the rating of the driver is missing at its own field, once', () => {
    const { powerW: _, sdCm2: __, ...bare } = estatePlan.driver.sheet
    // the mass tells the driver and leaves the size of its cone untold
    const sheet = { ...bare, mmsG: 160 }
    const { result } = planned({ ...estatePlan, driver: { ...estatePlan.driver, sheet } })
    expect(result.parts.matching.problem.errors[0].pointer).toBe('/driver/sheet/powerW')
    expect(result.summary.reasons).toHaveLength(2)
    expect(result.summary.reasons[1].detail).toMatch(/^Waiting for this: wiring, /)
  })

  it('one cause and the ways out where nothing is published for a load of these drivers', () => {
    const amplifier = { ...estatePlan.amplifier, ratings: [{ loadOhm: 16, powerW: 300 }] }
    const { verdict, reasons } = planned({ ...estatePlan, amplifier }).result.summary
    expect(verdict).toBe('incomplete')
    expect(reasons).toHaveLength(2)
    expect(reasons[0].detail).toMatch(/300 W at 16 Ω.*Take an amplifier/)
  })

  const low = { ...hatchbackPlan, car: { space: { widthMm: 700, heightMm: 380, depthMm: 420 } } }

  it('what does not fit and by how much, first, and buys, saws and switches on nothing for it', async () => {
    const { result, cautions } = planned(low)
    const { summary, parts, billOfMaterials, buildOrder, commissioning } = result
    // 312 mm of flange, 2 × 15 mm beside it, 2 × 17.7 mm of board; 380 mm less 2 × 4 mm of carpet.
    expect(parts.box.problem.errors[0].bounds.minimum).toBeCloseTo(312 + 30 + 35.4, 6)
    expect(summary.verdict).toBe('incomplete')
    expect(summary.reasons[0].detail).toMatch(
      /^No enclosure fits the space\. The nearest, .*at least 378 mm in height.* 372 mm/
    )
    expect([billOfMaterials, commissioning, buildOrder, parts.sheets.done]).toEqual([[], [], undefined, false])
    expect(cautions.filter(({ level }: Answer) => level === 'stop')).toEqual([])
    const text = await written(low, 'text/plain')
    expect(text).not.toMatch(/To buy|Panels|Order of work|Switching on/)
    expect(await written(low, 'text/html')).not.toMatch(/id="(see|buy|cut|build|switch-on|check)"/)
  })

  it('the volume built where a hair of it is missing, in figures and in words at the top of every form', async () => {
    const room = { widthMm: 560, heightMm: 390, depthMm: 330 }
    const space = { car: { space: room }, finish: { lined: false, covered: false } }
    const most = planned({ ...hatchbackPlan, ...space, enclosure: { kind: 'closed', netVolumeL: 90 } })
    const [passed] = most.result.tried
    const bound = Number(/holds ([\d.]+) L net/.exec(passed.why)?.[1])
    expect(most.cautions.find(({ code }: Answer) => code === 'not-as-asked').figures.askedNetVolumeL).toBe(90)
    const asked = Number((bound * 1.015).toFixed(2))
    const request = { ...hatchbackPlan, ...space, enclosure: { kind: 'closed', netVolumeL: asked } }
    const { result, cautions } = planned(request)
    const { netL } = result.parts.box.answer.result.volume
    const said = cautions.find(({ code }: Answer) => code === 'not-as-asked')
    expect(said).toMatchObject({ level: 'care', figures: { askedNetVolumeL: asked, builtNetVolumeL: netL } })
    expect(netL).toBeGreaterThan(asked * 0.97)
    expect(result.summary).toMatchObject({ verdict: 'take-care', reasons: [{ code: said.code, detail: said.message }] })
    for (const form of ['text/plain', 'text/html']) expect(await written(request, form)).toContain(said.message)
  })

  it('at which power a closed box needs no high-pass: the response without it reaches Xmax there', () => {
    const sheet = { fsHz: 32, qms: 5, qes: 0.77, vasL: 45, sdCm2: 330, reOhm: 3.4, xmaxMm: 7, powerW: 250 }
    const driver = { ...hatchbackPlan.driver, sheet }
    const amplifier = { ...hatchbackPlan.amplifier, ratings: [{ loadOhm: 4, powerW: 240 }] }
    const car = { space: { widthMm: 800, heightMm: 430, depthMm: 460 } }
    const request = { ...hatchbackPlan, driver, amplifier, car, enclosure: { kind: 'closed', netVolumeL: 60 } }
    const { result, cautions } = planned(request)
    const said = cautions.find(({ code }: Answer) => code === 'closed-box-high-pass')
    const { cornerHz, fcHz, powerW, unfilteredPowerW } = said.figures
    expect(said.level).toBe(cornerHz > fcHz / 2 ? 'care' : 'note')
    expect(powerW).toBe(240)
    const { filters, source, ...asked } = result.parts.response.request
    const again = {
      ...asked,
      filters: filters.filter(({ kind }: Answer) => kind === 'low-pass'),
      source: { ...source, voltageV: source.voltageV * Math.sqrt(unfilteredPowerW / powerW) }
    }
    const answer = JSON.parse(computeResponse.answerText(again, { digits: 'six', basis: false }))
    expect(answer.result.limits.atDrive.coneExcursionMm).toBeCloseTo(7, 3)
  })
})
