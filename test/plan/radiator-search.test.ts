/** A search with passive radiators at hand: ranked beside the other kinds, and what it builds is what a plan builds. */
import { describe, expect, it } from 'vitest'
import { searchDesigns } from '../../src/http/operations/systems/design-search.ts'
import { estateSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { radiatorPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post } from '../support/call.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const { passiveRadiators } = radiatorPlan
const shelf = { ...estateSearch, limits: {}, driverCounts: [1], passiveRadiators }
const found = (more: object = {}): Answer =>
  JSON.parse(searchDesigns.answerText({ ...shelf, ...more }, { digits: 'six', basis: false })).result
const kindsOf = ({ designs }: Answer): readonly string[] => designs.map(({ kind }: Answer) => kind)

describe('a search with passive radiators at hand', () => {
  const all = found({ show: 6 })

  it('weighs every driver on every amplifier in all three kinds, and shows radiators beside ports', () => {
    expect(all.weighed).toBe(3 * shelf.drivers.length * shelf.amplifiers.length)
    expect(kindsOf(all)).toContain('passive-radiator')
    expect(kindsOf(all)).toContain('vented')
    expect(kindsOf(found({ passiveRadiators: undefined, show: 6 }))).not.toContain('passive-radiator')
  })

  it('finds alone what it finds among the others', () => {
    const alone = found({ kinds: ['passive-radiator'], show: 2 }).designs
    const among = all.designs.filter(({ kind }: Answer) => kind === 'passive-radiator').slice(0, 2)
    expect(alone.map(({ figures }: Answer) => figures)).toEqual(among.map(({ figures }: Answer) => figures))
  })

  it('carries the request by which a plan comes to the same box, its radiators within their travel', () => {
    for (const { plan, figures } of all.designs.filter(({ kind }: Answer) => kind === 'passive-radiator')) {
      const { result } = JSON.parse(planSystem.answerText(plan, { digits: 'six', basis: false }))
      const { scalars, limits } = result.parts.response.answer.result
      expect(result.parts.box.answer.result.volume.netL).toBe(figures.netVolumeL)
      expect(scalars.tuningHz).toBe(figures.tuningHz)
      expect(limits.atDrive.coneExcursionOfXmax).toBe(figures.excursionOfXmax)
      expect(result.cover.radiators.held).toBe(true)
      expect(plan.enclosure.radiatorCount).toBe(result.cover.radiators.count)
    }
  })

  it.each([
    [{ passiveRadiators: undefined, kinds: ['passive-radiator'] }, '/passiveRadiators'],
    [{ kinds: ['closed', 'vented'] }, '/passiveRadiators'],
    [{ kinds: ['passive-radiator'], port: { shape: 'slot' } }, '/port']
  ])('refuses %j at %s', async (more, pointer) => {
    const { status, body } = await post('/v1/designs/search', { ...shelf, ...more })
    expect(status).toBe(422)
    expect(body.errors.map((each: Answer) => each.pointer)).toContain(pointer)
  })
})
