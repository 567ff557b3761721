/** Plans of boxes with passive radiators: tuned by their weight, held within their travel, bought and built as a whole. */
import { describe, expect, it } from 'vitest'
import { standardAir } from '../../src/domain/air/air.ts'
import { loadedRadiator, radiatorSagM, radiatorUnit } from '../../src/domain/enclosure/alignment/radiator-sheet.ts'
import { radiatorResonanceHz } from '../../src/domain/enclosure/model/tuned-radiators.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { radiatorPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post, testApp } from '../support/call.ts'
import { mergePatch } from '../support/merge-patch.ts'
import { workStates } from '../support/work-states.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (patch: object = {}): Answer =>
  JSON.parse(planSystem.answerText(mergePatch(radiatorPlan, patch), { digits: 'six', basis: false }))
const sheet = radiatorPlan.passiveRadiators.sheet
const withSheet = (more: object) => ({ passiveRadiators: { sheet: more } })

/** Dry air at 20 °C (ρ 1.204 kg/m³, c 343.2 m/s): common handbook values, from memory. */
const STIFFNESS_PA = 1.204 * 343.2 ** 2

describe('radiatorUnit', () => {
  it('takes the compliance from resonance or Vas where the sheet gives no other', () => {
    const bare = { areaM2: 0.049, massKg: 0.3, xmaxM: 0.02 }
    expect(radiatorUnit({ ...bare, fsHz: 9.18881 }, standardAir.stiffnessPa).complianceMPerN).toBeCloseTo(1e-3, 8)
    expect(radiatorResonanceHz({ massKg: 0.3, complianceMPerN: 1e-3 })).toBeCloseTo(9.18881, 5)
    const vasM3 = STIFFNESS_PA * 0.049 ** 2 * 1e-3
    expect(radiatorUnit({ ...bare, vasM3 }, standardAir.stiffnessPa).complianceMPerN / 1e-3).toBeCloseTo(1, 2)
  })

  it('hangs through by its weight where it lies flat, and that much less it travels', () => {
    // 0.4 kg times 9.80665 m/s² on 0.5 mm/N, by hand
    expect(radiatorSagM({ complianceMPerN: 0.5e-3 }, 0.4) * 1e3).toBeCloseTo(1.96133, 6)
    const flat = planned({ enclosure: { radiatorCount: 1, radiatorFace: 'top' } }).result.cover.radiators
    expect(flat.sagMm).toBeCloseTo((flat.massG / 1e3) * 9.80665 * sheet.complianceMmPerN, 4)
    expect(flat.limitMm).toBeCloseTo(sheet.xmaxMm - flat.sagMm, 4)
    expect(flat.peakMm).toBeLessThanOrEqual(flat.limitMm * 1.001)
  })

  it('keeps the resistance of the suspension when a weight is added: four times the mass doubles the Q', () => {
    const unit = radiatorUnit(
      { areaM2: 0.049, massKg: 0.2, complianceMPerN: 5e-4, qm: 8, xmaxM: 0.02 },
      standardAir.stiffnessPa
    )
    expect(loadedRadiator(unit, 0.6).qm).toBeCloseTo(16, 9)
    expect(unit.mostAddedKg).toBe(0.4)
  })
})

describe('a plan of a box with passive radiators', () => {
  const plan = planned()
  const { result, cautions } = plan
  const { radiators } = result.cover

  it('is whole: nothing is refused, nothing stops', () => {
    expect(result.summary.verdict).toBe('take-care')
    expect(result.summary.reasons).toEqual([])
    expect(result.choice.figures.kind).toBe('passive-radiator')
    expect(result.parts.port).toBeUndefined()
    expect(result.cover.sentence).toContain('with passive radiators')
  })

  it('says the weight that tunes it, by the formula of the tuning', () => {
    const { netL } = result.parts.box.answer.result.volume
    const massKg = (sheet.massG + radiators.addedG) / 1000
    const complianceMPerN = sheet.complianceMmPerN / 1000
    const freeHz = 1 / (2 * Math.PI * Math.sqrt(massKg * complianceMPerN))
    const vasM3 = radiators.count * STIFFNESS_PA * (sheet.areaCm2 / 1e4) ** 2 * complianceMPerN
    expect(radiators.massG).toBe(sheet.massG + radiators.addedG)
    expect(radiators.resonanceHz / freeHz).toBeCloseTo(1, 5)
    expect(result.choice.figures.tuningHz / (freeHz * Math.sqrt(1 + (vasM3 * 1e3) / netL))).toBeCloseTo(1, 3)
  })

  it('holds the radiators and the cone within their travel, and narrower ones by a higher filter or less gain', () => {
    const corner = (answer: Answer) =>
      answer.result.parts.response.request.filters.find(({ kind }: Answer) => kind === 'high-pass')?.cornerHz ?? 0
    const weak = planned({ enclosure: { radiatorCount: 2, radiatorFace: 'sides' }, ...withSheet({ xmaxMm: 8 }) })
    expect(radiators.peakMm).toBeLessThanOrEqual(sheet.xmaxMm)
    expect(weak.result.cover.radiators.peakMm).toBeLessThanOrEqual(8 * 1.001)
    const gives = (answer: Answer) => answer.result.choice.figures.gainPowerW / (1 + (corner(answer) / 50) ** 4)
    expect(gives(weak)).toBeLessThan(gives(plan))
  })

  it('cuts a hole for each, buys each with its weight and its fixings, and says when they go in', () => {
    const holes = result.parts.box.answer.result.panels.flatMap(({ cutOuts, quantity }: Answer) =>
      cutOuts.filter(({ purpose }: Answer) => purpose === 'passive-radiator').map(() => quantity)
    )
    const bought = (part: string) =>
      result.billOfMaterials
        .filter((row: Answer) => row.part === part)
        .reduce((sum: number, { need }: Answer) => sum + need, 0)
    expect(holes.reduce((sum: number, each: number) => sum + each, 0)).toBe(radiators.count)
    expect(bought('passive-radiator')).toBe(radiators.count)
    expect(bought('radiator-weight')).toBe(radiators.count)
    expect(bought('driver-screw')).toBe(8 * (radiators.count + 1))
    const ids = result.buildOrder.steps.map(({ id }: Answer) => id)
    expect(ids.filter((id: string) => id.includes('radiator'))).toEqual([
      'weight-radiators',
      'fit-radiators',
      'radiator-leak-test'
    ])
    expect(ids).not.toContain('cone-leak-test')
    expect(ids.every((id: string) => id in workStates)).toBe(true)
    expect(cautions.map(({ code }: Answer) => code)).toContain('cone-needs-room')
  })

  it('is planned again to the last digit by the patch of each other box', () => {
    expect(result.choice.alternatives.length).toBeGreaterThan(0)
    for (const { patch, figures } of result.choice.alternatives) {
      const again = planned(patch).result
      expect(again.parts.box.answer.result.volume.netL).toBe(figures.netVolumeL)
      expect(again.parts.response.answer.result.scalars.tuningHz).toBe(figures.tuningHz)
    }
  })

  it('leaves a free way before radiators on the sides', () => {
    const { face } = radiators
    const { outer } = result.parts.box.answer.result
    const narrow = planned({ car: { space: { widthMm: Math.ceil(outer.widthMm) + 20 } } }).result
    expect(face).toBe('sides')
    const other = narrow.cover.radiators
    const needs = other?.face === 'sides' ? narrow.parts.box.answer.result.outer.widthMm + 2 * (282 / 4) : 0
    expect(needs).toBeLessThanOrEqual(Math.ceil(outer.widthMm) + 20)
  })

  it('stands in German too', async () => {
    const headers = { 'accept-language': 'de', 'content-type': 'application/json' }
    const request = { method: 'POST', url: '/v1/plans', headers, payload: JSON.stringify(radiatorPlan) } as const
    const { statusCode, body } = await (await testApp()).inject(request)
    expect(statusCode).toBe(200)
    expect(body).toContain('Passivmembranen')
    expect(body).toContain('abwiegen')
  })
})

describe('a plan asked for passive radiators', () => {
  const faults = async (patch: object) => {
    const { status, body } = await post('/v1/plans', mergePatch(radiatorPlan, patch))
    return { ...body, status }
  }

  it('says what data is needed where none is given, and how much air to look for', async () => {
    const { status, errors } = await faults({ passiveRadiators: null })
    expect(status).toBe(422)
    expect(errors[0].pointer).toBe('/passiveRadiators')
    // 490 cm² times 14 mm, twice: 1.4 L
    expect(errors[0].detail).toMatch(/area, moving mass, compliance .* 1\.4 L one way/)
  })

  it.each([
    [{ enclosure: { portShape: 'slot' } }, '/enclosure/portShape'],
    [{ enclosure: { qtc: 0.7, goal: null } }, '/enclosure/qtc'],
    [{ enclosure: { kind: 'vented', radiatorCount: 2 } }, '/enclosure/radiatorCount'],
    [{ enclosure: { kind: 'closed', radiatorFace: 'sides' } }, '/enclosure/radiatorFace'],
    [{ enclosure: { radiatorCount: 3, radiatorFace: 'sides' } }, '/enclosure/radiatorCount'],
    [{ enclosure: { goal: 'tight' } }, '/enclosure/goal'],
    [withSheet({ complianceMmPerN: null }), '/passiveRadiators/sheet/complianceMmPerN'],
    [withSheet({ fsHz: 12 }), '/passiveRadiators/sheet/fsHz']
  ])('refuses %j at %s', async (patch, pointer) => {
    const { status, errors } = await faults(patch)
    expect(status).toBe(422)
    expect(errors.map((each: Answer) => each.pointer)).toContain(pointer)
  })

  it('says why radiators cannot tune the box that is given', () => {
    const given = (netVolumeL: number, tuningHz: number) =>
      planned({ enclosure: { goal: null, netVolumeL, tuningHz } }).result.summary.reasons[0].detail
    expect(given(40, 70)).toContain('lighter than their own 180 g')
    expect(given(40, 18)).toContain('500 g are the most')
  })

  it('weighs them beside ports where no kind is named', () => {
    const free = planned({ enclosure: { kind: null } }).result
    expect(free.choice.figures.kind).toBe('vented')
    expect(free.choice.alternatives.map(({ figures }: Answer) => figures.kind)).toContain('passive-radiator')
  })
})
