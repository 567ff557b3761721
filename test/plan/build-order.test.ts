import { describe, expect, it } from 'vitest'
import { assumptions } from '../../src/domain/assume.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { liftCautions, peopleFor } from '../../src/domain/box/layout/lift.ts'
import { say } from '../../src/domain/say.ts'
import { boxNodes } from '../../src/plan/steps/work-nodes.ts'
import { type BuildFacts, buildFacts } from '../../src/plan/work/build-facts.ts'
import { buildCautions, buildOrder } from '../../src/plan/work/build-order.ts'
import { inOrder, step } from '../../src/plan/work/build-step.ts'
import { closingPanel } from '../../src/plan/work/closing-panel.ts'
import { type RestraintRequest, restraint, restraintCautions } from '../../src/plan/work/restraint.ts'
import { inventedBox } from '../support/invented-box.ts'

const facts = (given: Partial<BuildFacts> = {}): BuildFacts => ({
  ...buildFacts(inventedBox, {
    way: 'saw-and-router',
    sheetCount: 1,
    lined: true,
    covered: true,
    driverCount: 1,
    driverMassKg: 9,
    innerWire: true
  }),
  ...given
})

const everyFact = (['none', 'round', 'slot'] as const).flatMap(port =>
  [0, 2].flatMap(braceCount =>
    [true, false].flatMap(lined =>
      [true, false].flatMap(covered =>
        [1, 2].flatMap(frontLayers =>
          [true, false].map(heavy => facts({ port, braceCount, lined, covered, frontLayers, heavy }))
        )
      )
    )
  )
)

const nameless = say('start.warm-check')

describe('build order', () => {
  it('has no circle, for any box: every step is reached once, none before what it needs', () => {
    expect(everyFact).toHaveLength(96)
    for (const fact of everyFact) {
      const { steps } = buildOrder(boxNodes(fact))
      expect(steps.map(({ id }) => id).sort()).toEqual(
        boxNodes(fact)
          .map(({ id }) => id)
          .sort()
      )
      const place = new Map(steps.map(({ id, number }) => [id, number]))
      for (const { number, needs } of steps) for (const need of needs) expect(place.get(need)).toBeLessThan(number)
    }
  })

  it('saws the sloped edges after the panels and before they are put together, only where there are any', () => {
    const wedge = layOutBox({
      shape: 'wedge',
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.25 },
      thicknessM: 0.018
    }).result
    const slopeDeg = (Math.atan2(0.13, 0.4) * 180) / Math.PI
    const sloped = buildFacts(wedge, {
      way: 'saw-and-router',
      sheetCount: 1,
      lined: false,
      covered: false,
      driverCount: 1,
      innerWire: true
    })
    expect(sloped.bevels.map(({ angleDeg }) => angleDeg)).toEqual([Math.round(2 * slopeDeg) / 2])
    const ids = buildOrder(boxNodes(sloped)).steps.map(({ id }) => id)
    expect(ids.indexOf('saw-bevels')).toBeGreaterThan(ids.indexOf('cut-panels'))
    expect(ids.indexOf('saw-bevels')).toBeLessThan(ids.indexOf('dry-fit'))
    expect(buildOrder(boxNodes(facts())).steps.some(({ id }) => id === 'saw-bevels')).toBe(false)
  })

  it('closes the hole of the cup in the leak test, and takes the short screws for the layers', () => {
    const { steps } = buildOrder(boxNodes(facts({ frontLayers: 2 })))
    const text = (id: string) => steps.find(each => each.id === id)?.actions.join(' ')
    expect(text('leak-test')).toMatch(/hole of the terminal cup/)
    expect(text('laminate-baffle')).toMatch(/through the front/)
  })

  it('waits for the shell, also where nothing is fitted inside it', () => {
    for (const fact of everyFact) {
      const { steps } = buildOrder(boxNodes(fact))
      const place = (id: string) => steps.findIndex(step => step.id === id)
      expect(place('seal-seams')).toBeGreaterThan(place('assemble-shell'))
    }
  })

  it('would notice a circle', () => {
    const node = (id: string, needs: string[]) =>
      step({ id, needs, title: nameless, actions: [], tools: [], uses: [], minutes: 1 })
    expect(inOrder([node('a', ['b']), node('b', ['a']), node('c', [])]).map(({ id }) => id)).toEqual(['c'])
  })

  it('does what cannot be done later before the box is closed, even with the steps listed backwards', () => {
    for (const fact of everyFact) {
      const steps = inOrder([...boxNodes(fact)].reverse())
      const place = (id: string) => steps.find(step => step.id === id)?.number
      const closed = place('close-box') ?? 0
      expect(closed).toBeGreaterThan(0)
      for (const id of [
        'cut-holes',
        'driver-fixings',
        'seal-seams',
        'line-walls',
        'colour-port',
        'braces',
        'port-walls',
        'wire-inside'
      ]) {
        expect(place(id) ?? 0, id).toBeLessThan(closed)
      }
      for (const id of ['leak-test', 'sand', 'cover', 'terminals', 'fit-driver', 'mount'])
        expect(place(id) ?? 99, id).toBeGreaterThan(closed)
      expect(place('cover') ?? 0).toBeLessThan(place('terminals') ?? 0)
      expect(place('leak-test')).toBeLessThan(place('sand') ?? 0)
    }
  })

  it('waits for what must cure', () => {
    const { workMinutes, elapsedMinutes } = buildOrder(boxNodes(facts()))
    expect(elapsedMinutes).toBeGreaterThan(workMinutes + 2 * 24 * 60)
    const alone = step({
      id: 'a',
      needs: [],
      title: nameless,
      actions: [],
      tools: [],
      uses: [],
      minutes: 10,
      cureMinutes: 30
    })
    const after = step({ id: 'b', needs: ['a'], title: nameless, actions: [], tools: [], uses: [], minutes: 5 })
    expect(buildOrder(boxNodes(facts())).steps.at(-1)?.id).toBe('mount')
    expect(inOrder([after, alone]).map(({ id }) => id)).toEqual(['a', 'b'])
  })

  it('reads the port, the layers and the closing panel from the panels', () => {
    expect(facts()).toMatchObject({ port: 'slot', frontLayers: 1, panelCount: 7, cutOutCount: 2, braceCount: 0 })
    const { closing, order } = facts()
    expect(closing).toMatchObject({ name: 'front', openingM: 0.282, reachable: true })
    expect(closing.reachM).toBeCloseTo(Math.hypot(0.604 - 0.25, 0.182), 12)
    expect(order).toMatchObject({
      shell: ['bottom', 'side', 'side', 'back'],
      inside: ['port wall', 'top'],
      leftOff: ['top', 'front']
    })
    const [top] = inventedBox.panels.filter(({ role }) => role === 'top')
    expect(top && closingPanel(top)).toEqual({ name: 'top', openingM: 0, reachM: 0, reachable: false })
  })

  it('asks for a bead of sealant beforehand where no arm reaches', () => {
    const blind = facts({ closing: { name: 'back', openingM: 0.09, reachM: 0, reachable: false } })
    expect(
      buildOrder(boxNodes(blind))
        .steps.find(({ id }) => id === 'close-box')
        ?.actions.join(' ')
    ).toMatch(/bead of sealant/)
    expect(buildCautions(blind).map(({ code }) => code)).toContain('seams-out-of-reach')
    expect(buildCautions(facts()).map(({ code }) => code)).not.toContain('seams-out-of-reach')
  })
})

describe('restraint', () => {
  const held = (request: RestraintRequest) => restraint(request, assumptions())

  it('pulls a 35 kg box with 6860 N (49 CFR 571.207 S4.2: 20 × m × 9.8)', () => {
    expect(held({ massKg: 35 }).crashForceN).toBeCloseTo(6860, 9)
  })

  it('holds 0.9, 0.5 and 0.7 of the weight while driving, 0.8, 0.5 and 0.6 above 2.0 t (ESV 09-0008, Figure 1)', () => {
    const weight = 35 * 9.806_65
    const light = held({ massKg: 35, vehicleMassKg: 1900 })
    expect(
      [light.drivingForwardN, light.drivingRearwardN, light.drivingSidewaysN].map(force => force / weight)
    ).toEqual([0.9, 0.5, 0.7].map(share => expect.closeTo(share, 12)))
    const heavy = held({ massKg: 35, vehicleMassKg: 2500 })
    expect(
      [heavy.drivingForwardN, heavy.drivingRearwardN, heavy.drivingSidewaysN].map(force => force / weight)
    ).toEqual([0.8, 0.5, 0.6].map(share => expect.closeTo(share, 12)))
  })

  // Hand calculation: 20·44·9.8 = 8624 N; 8624/(cos 45°·3500) = 3.48; 8624/(cos² 45°·3500) = 4.93; 18 kg: 3528/1750 = 2.02
  it('counts straps (strapsFor) by their angle and by the weaker of strap and eye, one more as soon as they do not hold', () => {
    // 2·3500 N at rest on 20·m·9.8
    const level = { strapSlopeDeg: 0, strapSpreadDeg: 0 }
    expect(held({ massKg: 7000 / 196 - 1e-6, ...level }).strapCount).toBe(2)
    expect(held({ massKg: 7000 / 196 + 1e-6, ...level }).strapCount).toBe(3)
    expect(held({ massKg: 44, strapSlopeDeg: 45, strapSpreadDeg: 0 }).strapCount).toBe(4)
    expect(held({ massKg: 44 }).strapCount).toBe(5)
    expect(held({ massKg: 18 }).strapCount).toBe(3)
    expect(held({ massKg: 44, eyeStrengthN: 20_000, strapSlopeDeg: 0, strapSpreadDeg: 0 }).strapCount).toBe(2)
    expect(held({ massKg: 1 }).strapCount).toBe(2)
  })

  it('echoes what it took for strap, eye and angles, and nothing of what was given', () => {
    const assumed = assumptions()
    restraint({ massKg: 30, eyeStrengthN: 4000 }, assumed)
    expect(assumed.list.map(({ field, value }) => [field, value])).toEqual([
      ['car.restraint.strapCapacityN', 5000],
      ['car.restraint.strapSlopeDeg', 45],
      ['car.restraint.strapSpreadDeg', 45]
    ])
  })

  it('keeps off child-seat and belt anchors, and claims no proof', () => {
    const it = held({ massKg: 30 })
    for (const words of [it.advice.join(' '), restraintCautions(it)[0]?.message ?? '']) {
      expect(words).toMatch(/child-seat anchors/)
      expect(words).toMatch(/belt/)
      expect(words).toMatch(/proved for a crash/)
    }
    expect(it.advice.join(' ')).toMatch(/Never under a car on its jack/)
  })
})

describe('lifting', () => {
  // HSE filters 25 and 16 kg, two people two thirds of their sum, three half of it: second-hand
  it('counts people by their shares: 16, 27.3 and 33 kg', () => {
    expect([16, 16.1, 27.3, 27.4, 33, 33.1].map(peopleFor)).toEqual([1, 2, 2, 3, 3, 4])
  })

  it('is silent for one, a note for two or three, and from 33 kg carries the box without its drivers', () => {
    expect(liftCautions(15, 12)).toEqual([])
    expect(liftCautions(24, 16)).toMatchObject([{ level: 'note', message: expect.stringContaining('two people') }])
    expect(liftCautions(47, 30.6)).toMatchObject([
      { level: 'care', message: expect.stringMatching(/without its drivers \(30\.6 kg, three people\)/) }
    ])
  })

  it('fits the drivers of a heavy box in the car, and listens then', () => {
    const place = (heavy: boolean, id: string) =>
      buildOrder(boxNodes(facts({ heavy }))).steps.find(step => step.id === id)?.number
    expect(place(true, 'fit-driver')).toBeGreaterThan(place(true, 'mount') ?? 99)
    expect(place(true, 'listen')).toBeGreaterThan(place(true, 'fit-driver') ?? 99)
    expect(place(false, 'fit-driver')).toBeLessThan(place(false, 'mount') ?? 0)
  })
})

describe('what a step is told', () => {
  const words = (given: Partial<BuildFacts>, id: string) => {
    const { title = '', actions = [] } = buildOrder(boxNodes(facts(given))).steps.find(step => step.id === id) ?? {}
    return [title, ...actions].join(' ')
  }

  it('speaks of port, braces and windows only where there are some', () => {
    expect(words({ port: 'none', braceCount: 0 }, 'fit-inside')).toBe('')
    const alone = { shell: ['bottom'], inside: ['brace 1', 'brace 2'], leftOff: ['front'] }
    expect(words({ port: 'none', braceCount: 2, order: alone }, 'fit-inside')).not.toMatch(/port/)
    expect(words({ port: 'slot', braceCount: 0 }, 'fit-inside')).not.toMatch(/brace/)
    expect(words({ braceCount: 2, braceWindows: false }, 'braces')).not.toMatch(/window/i)
    expect(words({ braceCount: 2, braceWindows: true }, 'braces')).toMatch(/window/i)
  })

  it('blows up every box to find leaks, and presses the cone of a closed one once it is in', () => {
    for (const port of ['none', 'slot', 'round'] as const) {
      expect(words({ port }, 'leak-test')).toMatch(/blow/)
      expect(words({ port }, 'leak-test')).not.toMatch(/sink/)
    }
    const { steps } = buildOrder(boxNodes(facts({ port: 'none' })))
    const place = (id: string) => steps.findIndex(step => step.id === id)
    expect(place('cone-leak-test')).toBeGreaterThan(place('fit-driver'))
    expect(place('cone-leak-test')).toBeLessThan(place('polarity'))
    expect(words({ port: 'slot' }, 'cone-leak-test')).toBe('')
  })

  it('sends nobody under a car on its jack', () => expect(words({}, 'mount')).toMatch(/never a jack/))
})
