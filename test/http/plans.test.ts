/** The whole chain over HTTP: every part is what its own resource gives, and a part that cannot be done stays in its place. */
import { beforeAll, describe, expect, it } from 'vitest'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post, type Reply } from '../support/call.ts'

const partNames = [
  'matching',
  'wiring',
  'driver',
  'sizing',
  'box',
  'response',
  'sheets',
  'current',
  'cable',
  'fuse',
  'circuit',
  'signal'
]

describe('a plan', () => {
  let estate: Reply
  let hatchback: Reply
  beforeAll(async () => {
    estate = await post('/v1/plans', estatePlan)
    hatchback = await post('/v1/plans', hatchbackPlan)
  })

  it('answers every part for two drivers with the enclosure left open', () => {
    const { summary, parts } = estate.body.result
    expect(Object.keys(parts)).toEqual(expect.arrayContaining([...partNames, 'port']))
    for (const [name, part] of Object.entries<Reply['body']>(parts)) expect(part.done, name).toBe(true)
    expect(summary.verdict).toBe('take-care')
    expect(summary.lines).toHaveLength(8)
    expect(summary.lines[2]).toContain('Cut from 1 sheet')
  })

  it('answers every part for one closed box on a speaker-level source', () => {
    const { parts } = hatchback.body.result
    expect(parts.port).toBeUndefined()
    for (const name of partNames) expect(parts[name].done, name).toBe(true)
    expect(parts.response.request.enclosure.kind).toBe('closed')
    expect(parts.signal.answer.result.input.connection).toBe('speaker-level-input')
  })

  it('holds in each part exactly what the resource of that part answers for the request shown', async () => {
    for (const { body } of [estate, hatchback]) {
      for (const [name, part] of Object.entries<Reply['body']>(body.result.parts)) {
        const single = await post(part.resource, part.request)
        expect(single.status, name).toBe(200)
        expect(single.body, name).toEqual(part.answer)
      }
    }
  })

  it('protects the cable with the fuse, and the fuse carries the current', () => {
    const { current, cable, fuse } = estate.body.result.parts
    const fullSineA = current.answer.result.currents.fullSineA
    const { ratingA } = fuse.answer.result.fuse
    expect(ratingA).toBeGreaterThanOrEqual(fullSineA)
    expect(ratingA).toBeLessThanOrEqual(cable.answer.result.cable.ampacityA)
    expect(cable.answer.result.fuse.ratingA).toBe(ratingA)
  })

  it('hears the box at the voltage the gain is set to, behind the resistance of the loudspeaker cable', () => {
    const { matching, wiring, response } = estate.body.result.parts
    const { source } = response.request
    expect(source.voltageV).toBe(matching.answer.result.gain.targetVoltageV)
    expect(source.seriesOhm).toBe(wiring.answer.result.cable.sourceSeriesOhm)
  })

  it('tells one gain, that of the box, in the match as in the signal and the response', async () => {
    const sheet = { ...estatePlan.driver.sheet, xmaxMm: 9 }
    const low = { ...estatePlan, enclosure: { goal: 'low' }, driver: { ...estatePlan.driver, sheet } }
    const dialled = { ...estatePlan, signal: { ...estatePlan.signal, gainPowerW: 100 } }
    const plans = await Promise.all([low, dialled].map(request => post('/v1/plans', request)))
    const told = [estate, hatchback, ...plans].map(({ body }) => {
      const { matching, signal, response } = body.result.parts
      const [matched, set] = [matching.answer.result.gain, signal.answer.result.gain]
      expect(matched.targetVoltageV).toBe(set.targetVoltageV)
      expect(matched.powerW).toBe(set.powerW)
      expect(matched.limitedBy).toBe(set.limitedBy)
      expect(response.request.source.voltageV).toBe(set.targetVoltageV)
      return set.limitedBy
    })
    expect(told.slice(2)).toEqual(['asked', 'asked'])
  })

  it('holds levels and searches boxes up to one speed of the air, and says which', async () => {
    const { response } = estate.body.result.parts
    expect(response.request.limits.airSpeedMPerS).toBe(25)
    expect(estate.body.assumed).toContainEqual(
      expect.objectContaining({ pointer: '/enclosure/airSpeedMPerS', value: 25 })
    )
    expect(hatchback.body.result.parts.response.request.limits.airSpeedMPerS).toBeUndefined()
    const asked = await post('/v1/plans', { ...estatePlan, enclosure: { goal: 'everyday', airSpeedMPerS: 20 } })
    expect(asked.body.result.parts.response.request.limits.airSpeedMPerS).toBe(20)
    expect(asked.body.assumed.map(({ pointer }: Reply['body']) => pointer)).not.toContain('/enclosure/airSpeedMPerS')
  })

  it('fuses trunk and branches of two amplifiers so that no cable is without its guard', async () => {
    const doors = { name: 'doors', powerW: 300, class: 'AB', regulation: 'regulated' }
    const supply = { ...estatePlan.supply, otherAmplifiers: [doors], branchLengthM: 1.2 }
    const { body } = await post('/v1/plans', { ...estatePlan, supply })
    const { circuit, current } = body.result.parts
    expect(current.answer.result.amplifiers).toHaveLength(2)
    const [trunk, ...branches] = circuit.request.fuses
    expect(trunk.id).toBe('main fuse')
    expect(branches).toHaveLength(2)
    expect(trunk.ratingA).toBeGreaterThanOrEqual(current.answer.result.currents.fullSineA)
    for (const { ratingA } of branches) expect(ratingA).toBeLessThan(trunk.ratingA)
    const { cables, series } = circuit.answer.result
    // trunk, two branches, turn-on wire and on from the first amplifier to the second
    expect(cables).toHaveLength(5)
    for (const { guarded, id } of cables) expect(guarded, id).toBe(true)
    expect(series.map(({ before }: { before: string }) => before)).toEqual(['main fuse', 'main fuse'])
    const items = body.result.billOfMaterials.map((row: { item: string }) => row.item)
    expect(items).toContain('distribution block, 1 in, 2 out, fused')
    for (const { designation } of body.result.circuit.branches)
      expect(items.join('\n')).toContain(`${designation}, branch`)
    for (const { ratingA } of branches) expect(items.join('\n')).toContain(`fuse ${ratingA} A`)
  })

  it('lays out a box whose net volume is the one asked for within 0.5 %, inside the space left by its covering', () => {
    const { outer, volume } = estate.body.result.parts.box.answer.result
    expect(Math.abs(volume.errorPercent)).toBeLessThan(0.5)
    expect(outer.widthMm).toBeLessThanOrEqual(980 - 8)
    expect(outer.heightMm).toBeLessThanOrEqual(460 - 8)
    expect(outer.depthMm).toBeLessThanOrEqual(520 - 8)
  })

  it('holds the cone below its limit with the high-pass that the signal part sets', () => {
    const { response, signal } = estate.body.result.parts
    const { atDrive } = response.answer.result.limits
    expect(atDrive.coneExcursionMm).toBeLessThanOrEqual(estatePlan.driver.sheet.xmaxMm * 1.001)
    const filter = response.request.filters.find(({ kind }: { kind: string }) => kind === 'high-pass')
    expect(signal.answer.result.filters.highPass.cornerHz).toBe(filter.cornerHz)
  })

  it('orders the work, the bill and the switching-on', () => {
    const { billOfMaterials, buildOrder, commissioning, restraint } = estate.body.result
    expect(billOfMaterials.map((row: { group: string }) => row.group)).toEqual(
      expect.arrayContaining(['board', 'wiring'])
    )
    expect(buildOrder.steps[0].number).toBe(1)
    const ids = commissioning.map((step: { id: string }) => step.id)
    expect(buildOrder.steps.map((step: { id: string }) => step.id)).toContain('battery-off')
    expect(ids.indexOf('no-short')).toBeLessThan(ids.indexOf('battery-on'))
    expect(ids.indexOf('battery-on')).toBeLessThan(ids.indexOf('fuse-last'))
    expect(ids.indexOf('fuse-last')).toBeLessThan(ids.indexOf('gain'))
    expect(restraint.massKg).toBeGreaterThan(20)
    expect(estate.body.sources).toEqual(expect.arrayContaining(['wood-dust-osha', 'seat-inertia-49-cfr-571-207']))
  })

  it('sets no high-pass below the reach of a dial, so that a small amplifier gets its signal part too', async () => {
    const amplifier = { ...estatePlan.amplifier, ratings: [{ loadOhm: 2, powerW: 90 }] }
    const { body } = await post('/v1/plans', { ...estatePlan, amplifier })
    const { signal, response } = body.result.parts
    expect(signal.done, JSON.stringify(signal.problem)).toBe(true)
    for (const { kind, cornerHz } of response.request.filters) if (kind === 'high-pass') expect(cornerHz).toBe(10)
    expect(response.request.filters).toHaveLength(2)
  })

  it('plans a wedge with two drivers and a folded slot from the boot alone, and closes its volume and tuning', async () => {
    const { body } = await post('/v1/plans', leaningPlan)
    const { box, port, response } = body.result.parts
    const { shape, outer, volume, clearances, panels } = box.answer.result
    expect(shape).toBe('wedge')
    expect(Math.abs(volume.netL - 85) / 85).toBeLessThan(0.005)
    expect(outer.depthMm - outer.topDepthMm).toBeCloseTo(outer.heightMm * Math.tan((20 * Math.PI) / 180), 0)
    expect(outer.depthMm).toBeLessThanOrEqual(560 - 8)
    expect(clearances.filter(({ passes }: { passes: boolean }) => !passes)).toEqual([])
    expect(panels.map(({ name }: { name: string }) => name)).toContain('port plate, second leg')
    expect(port.answer.result.recommended.kind).toBe('slot')
    expect(Math.abs(response.answer.result.scalars.tuningHz - 31)).toBeLessThan(0.33)
    expect(body.assumed).toContainEqual(expect.objectContaining({ pointer: '/car/space/shape', value: 'wedge' }))
  })

  it('says what does not fit, and still gives the supply', async () => {
    const tiny = { ...estatePlan, car: { space: { widthMm: 330, heightMm: 330, depthMm: 200 } } }
    const { status, body } = await post('/v1/plans', tiny)
    expect(status).toBe(200)
    expect(body.result.summary.verdict).toBe('incomplete')
    expect(body.result.parts.box.done).toBe(false)
    expect(body.result.parts.box.problem.code).toBe('no-solution')
    expect(body.result.parts.cable.done).toBe(true)
    expect(body.result.billOfMaterials).toEqual([])
  })

  it('asks for the rating of the driver where not even the size of its cone bears a guess', async () => {
    const { powerW: _, sdCm2: __, ...sheet } = estatePlan.driver.sheet
    const { body } = await post('/v1/plans', { ...estatePlan, driver: { ...estatePlan.driver, sheet } })
    expect(body.result.parts.matching).toMatchObject({ done: false, problem: { code: 'missing-input' } })
    expect(body.result.parts.matching.problem.detail).toContain('driver.sheet.powerW')
  })

  it('does not call a part done whose request its own resource would not take', async () => {
    const sheet = { ...estatePlan.driver.sheet, powerW: 0.05 }
    const { body } = await post('/v1/plans', { ...estatePlan, driver: { ...estatePlan.driver, sheet } })
    const { summary, parts } = body.result
    expect(parts.matching).toMatchObject({ done: false, problem: { code: 'invalid-request' } })
    expect(parts.matching.problem.errors[0].pointer).toBe('/driver/powerW')
    expect(summary.verdict).toBe('incomplete')
    expect(summary.reasons.map(({ part }: Reply['body']) => part)).toContain('matching')
  })

  it('refuses peak power in the place where it stands and waits with what follows', async () => {
    const boast = { ...estatePlan, amplifier: { ...estatePlan.amplifier, ratingKind: 'peak' } }
    const { status, body } = await post('/v1/plans', boast)
    expect(status).toBe(200)
    const { matching, cable, driver } = body.result.parts
    expect(matching.problem.errors[0].pointer).toBe('/amplifier/ratingKind')
    expect(cable).toMatchObject({ done: false, problem: { code: 'missing-input' } })
    expect(driver.done).toBe(true)
  })

  it('refuses what does not fit the contract with a pointer to each fault', async () => {
    const { status, body } = await post('/v1/plans', { ...estatePlan, driverCount: '2', boot: {} })
    expect(status).toBe(400)
    const pointers = body.errors.map((error: { pointer: string }) => error.pointer)
    expect(pointers).toEqual(expect.arrayContaining(['/driverCount', '/boot']))
  })
})
