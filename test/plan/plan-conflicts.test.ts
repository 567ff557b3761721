/** What contradicts itself is refused: every field of a box's wish judged by the kinds it leaves possible, a second way round. */
import { describe, expect, it } from 'vitest'
import type { PlanEnclosure } from '../../src/contract/systems/plan-enclosure.ts'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { DesignError } from '../../src/domain/design-error.ts'
import { requireUsable } from '../../src/plan/request/plan-conflicts.ts'

const base = {
  amplifier: {},
  car: { space: {} },
  supply: {},
  board: { thicknessM: 0.018 },
  driver: { sheet: {} },
  driverCount: 1,
  passiveRadiators: {}
}

const refusal = (given: object) => {
  try {
    requireUsable({ ...base, ...given } as unknown as PlanRequest)
    return { code: 'none', fields: [], text: '' }
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    return {
      code: error.code,
      fields: error.faults.map(({ field }) => field),
      text: error.faults.map(({ detail }) => detail).join(' ')
    }
  }
}
const fieldsOf = (given: object) => refusal(given).fields

const opened = ['vented', 'passive-radiator']
/** Kinds of box of which a field can be asked. */
const kindsOf: Readonly<Record<string, readonly string[]>> = {
  qtc: ['closed'],
  tuningHz: opened,
  portAreaM2: ['vented'],
  radiatorCount: ['passive-radiator'],
  radiatorFace: ['passive-radiator']
}

function possible(enclosure: PlanEnclosure): boolean {
  const left = ['closed', ...opened].filter(
    kind =>
      (enclosure.kind ?? kind) === kind &&
      (enclosure.goal !== 'tight' || kind === 'closed') &&
      Object.keys(enclosure).every(field => kindsOf[field]?.includes(kind) ?? true)
  )
  const searched = enclosure.goal !== undefined && (enclosure.netVolumeM3 !== undefined || enclosure.qtc !== undefined)
  const twice = enclosure.qtc !== undefined && enclosure.netVolumeM3 !== undefined
  const odd = enclosure.radiatorFace === 'sides' && (enclosure.radiatorCount ?? 2) % 2 === 1
  return left.length > 0 && !searched && !twice && !odd
}

const choices: readonly (readonly object[])[] = [
  [{}, { kind: 'closed' }, { kind: 'vented' }, { kind: 'passive-radiator' }],
  [{}, { goal: 'everyday' }, { goal: 'tight' }],
  [{}, { qtc: 0.7 }],
  [{}, { netVolumeM3: 0.04 }],
  [{}, { tuningHz: 32 }],
  [{}, { portAreaM2: 0.01 }],
  [{}, { radiatorCount: 1 }, { radiatorCount: 2 }],
  [{}, { radiatorFace: 'sides' }]
]
const wishes = choices.reduce<readonly object[]>(
  (all, each) => all.flatMap(wish => each.map(more => ({ ...wish, ...more }))),
  [{}]
) as readonly PlanEnclosure[]

describe('a wish for a box', () => {
  it('is refused if and only if no kind of box is left, or two figures settle one: every wish of eight fields', () => {
    expect(wishes).toHaveLength(4 * 3 * 2 * 2 * 2 * 2 * 3 * 2)
    const wrong = wishes.filter(enclosure => (refusal({ enclosure }).code === 'none') !== possible(enclosure))
    expect(wrong).toEqual([])
  })

  it('is told only fields that it has, and stands once what is named is left out', () => {
    for (const enclosure of wishes.filter((_, index) => index % 11 === 0)) {
      let left: Readonly<Record<string, unknown>> = { ...enclosure }
      for (let turn = 0; turn < 3; turn++) {
        const named = fieldsOf({ enclosure: left }).map(field => field.replace('enclosure.', ''))
        expect(named.filter(field => !(field in left))).toEqual([])
        left = Object.fromEntries(Object.entries(left).filter(([field]) => !named.includes(field)))
      }
      expect(fieldsOf({ enclosure: left })).toEqual([])
    }
  })

  it('for radiators wants their sheet, and says the air they sweep: twice 2 × 500 cm² × 10 mm are 2 L', () => {
    const { passiveRadiators: _, ...bare } = base
    const asked = {
      ...bare,
      passiveRadiators: undefined,
      driver: { sheet: { sdM2: 0.05, xmaxM: 0.01 } },
      driverCount: 2
    }
    for (const enclosure of [{ kind: 'passive-radiator' }, { radiatorCount: 2 }, { radiatorFace: 'left' }]) {
      const { code, fields, text } = refusal({ ...asked, enclosure })
      expect([code, fields]).toEqual(['missing-input', ['passiveRadiators']])
      expect(text).toContain('sweep 2 L one way')
    }
    const untold = refusal({ ...asked, driver: { sheet: { sdM2: 0.05 } }, enclosure: { radiatorCount: 2 } })
    expect(untold.code).toBe('missing-input')
    expect(untold.text).not.toContain('sweep 2 L')
    expect(refusal({ ...asked, enclosure: { kind: 'vented' } }).code).toBe('none')
  })
})

describe('a slot', () => {
  const slot = (more: object, space: object = {}) =>
    fieldsOf({ enclosure: { portShape: 'slot', ...more }, car: { space } })
  it('runs along the walls of a box of four, from its front', () => {
    expect([slot({}), slot({ portFace: 'front' })]).toEqual([[], []])
    const faults = [
      slot({ portFace: 'top' }),
      slot({}, { diameterM: 0.5 }),
      slot({}, { footprint: [{ xM: 0, yM: 0 }] })
    ]
    expect(faults).toEqual(faults.map(() => ['enclosure.portShape']))
    expect(fieldsOf({ enclosure: { portShape: 'round', portFace: 'top' } })).toEqual([])
  })

  it('is rounded to the thickness of its board and no further; a tube has a flare of its own', () => {
    const flare = (portFlareM: number, more: object = {}) => fieldsOf({ enclosure: { portFlareM, ...more } })
    expect([flare(0.018), flare(0.03, { portShape: 'round' })]).toEqual([[], []])
    expect([flare(0.0181), flare(0.0181, { portShape: 'slot' })]).toEqual([
      ['enclosure.portFlareM'],
      ['enclosure.portFlareM']
    ])
  })
})

describe('a space', () => {
  const footprint = [{ xM: 0, yM: 0 }]
  const of = (space: object, board: object = {}) =>
    fieldsOf({ car: { space }, board: { thicknessM: 0.018, ...board } }).map(field => field.replace('car.space.', ''))

  it('has an outline if it is free, a diameter if it is round, and not the other’s', () => {
    expect([of({ footprint }), of({ shape: 'prism', footprint }), of({ diameterM: 0.5 })]).toEqual([[], [], []])
    expect(of({ shape: 'round', diameterM: 0.5 })).toEqual([])
    expect(of({ shape: 'prism' })).toEqual(['footprint'])
    expect(of({ shape: 'round' })).toEqual(['diameterM'])
    expect(of({ shape: 'wedge', footprint })).toEqual(['footprint'])
    expect(of({ shape: 'rectangular', diameterM: 0.5 })).toEqual(['diameterM'])
    expect(of({ footprint, diameterM: 0.5 })).toEqual(['diameterM'])
  })

  it('slopes only as a wedge of four walls', () => {
    for (const slope of ['acrossSlopeDeg', 'lidSlopeDeg']) {
      expect([of({ [slope]: 5 }), of({ shape: 'wedge', [slope]: 5 })]).toEqual([[], []])
      expect(of({ shape: 'rectangular', [slope]: 5 })).toEqual([slope])
      expect(of({ footprint, [slope]: 5 })).toEqual([slope])
      expect(of({ diameterM: 0.5, [slope]: 5 })).toEqual([slope])
    }
  })

  it('that is round has staves in one layer, without a recess', () => {
    expect(of({ diameterM: 0.5 }, { frontLayers: 2, recessM: 0.02 })).toEqual(['board.frontLayers', 'board.recessM'])
    expect(of({}, { frontLayers: 2, recessM: 0.02 })).toEqual([])
  })
})

describe('a supply', () => {
  it('has branches behind a block, and no second battery behind a converter', () => {
    expect(fieldsOf({ supply: { branchLengthM: 1 } })).toEqual(['supply.branchLengthM'])
    for (const behind of [{ otherAmplifiers: [] }, { secondBattery: {} }, { converter: {} }])
      expect(fieldsOf({ supply: { branchLengthM: 1, ...behind } })).toEqual([])
    expect(fieldsOf({ supply: { converter: {}, secondBattery: {} } })).toEqual([
      'supply.converter',
      'supply.secondBattery'
    ])
  })

  it('reads a figure of the amplifier in two places only where both say the same', () => {
    const amplifier = (class_: string) => ({ amplifier: { class: 'D', draw: { class: class_, standbyA: 0.01 } } })
    expect(fieldsOf(amplifier('D'))).toEqual([])
    expect(fieldsOf(amplifier('AB'))).toEqual(['amplifier.class', 'amplifier.draw.class'])
  })
})
