/** What opens a plan: what is peculiar to it, what can kill before what disappoints, and licensed work always. */
import { describe, expect, it } from 'vitest'
import type { PlanHazard } from '../../src/contract/systems/safety.ts'
import { type Caution, caution } from '../../src/domain/caution.ts'
import { pageOne } from '../../src/plan/answer/page-one.ts'
import { plainWords } from '../support/plain-words.ts'

const danger = (code: Caution['code'], harm: PlanHazard['harm'], peculiar = true): PlanHazard => ({
  id: code,
  harm,
  peculiar,
  barrier: '',
  proof: '',
  hands: 'maker',
  steps: [],
  caution: code,
  basis: ''
})
const figures = { valueMm: 1 }
const licensed = caution('licensed-work', plainWords('Ask first.'))
const codes = (cautions: readonly Caution[], dangers: readonly PlanHazard[], said: readonly string[] = []) =>
  pageOne([...cautions, licensed], [], said, dangers).map(({ code }) => code)

describe('page one', () => {
  it('puts death before fire before injury, and what only disappoints between', () => {
    const cautions = [
      caution('port-air-speed', plainWords('fast'), { figures, level: 'care' }),
      caution('output-touch-voltage', plainWords('live')),
      caution('lithium-battery', plainWords('strong')),
      caution('high-voltage-orange', plainWords('orange'))
    ]
    const dangers = [
      danger('output-touch-voltage', 'injury'),
      danger('lithium-battery', 'fire'),
      danger('high-voltage-orange', 'death')
    ]
    expect(codes(cautions, dangers)).toEqual([
      'high-voltage-orange',
      'lithium-battery',
      'port-air-speed',
      'output-touch-voltage',
      'licensed-work'
    ])
  })

  it('says nothing there that every plan has, no note, and nothing that the verdict says', () => {
    const cautions = [
      caution('wood-dust', plainWords('dust'), { figures }),
      caution('port-air-speed', plainWords('heard'), { figures, level: 'note' }),
      caution('box-restraint', plainWords('the reason'), { figures })
    ]
    const dangers = [danger('wood-dust', 'illness', false), danger('box-restraint', 'death')]
    expect(codes(cautions, dangers, ['the reason'])).toEqual(['licensed-work'])
  })

  it('keeps a place for two of what disappoints, and never takes more than seven', () => {
    const grave = [
      'box-restraint',
      'high-voltage-orange',
      'hearing-exposure',
      'lithium-battery',
      'capacitor-charge'
    ] as const
    const design = ['port-air-speed', 'coil-too-hot', 'excursion-above-xmax'] as const
    const cautions = [
      ...grave.map(code => caution(code, plainWords(code))),
      ...design.map(code => caution(code, plainWords(code), { figures, level: 'care' }))
    ]
    const told = codes(
      cautions,
      grave.map(code => danger(code, 'death'))
    )
    expect(told).toHaveLength(7)
    expect(told.slice(0, 4)).toEqual(grave.slice(0, 4))
    expect(told.slice(4, 6).every(code => (design as readonly string[]).includes(code))).toBe(true)
    expect(told.at(-1)).toBe('licensed-work')
  })

  it('says a caution once that two dangers share, by the graver of them', () => {
    const dangers = [
      danger('box-restraint', 'death'),
      danger('box-restraint', 'damage', false),
      danger('lithium-battery', 'fire')
    ]
    expect(
      codes([caution('lithium-battery', plainWords('a')), caution('box-restraint', plainWords('b'))], dangers)
    ).toEqual(['box-restraint', 'lithium-battery', 'licensed-work'])
  })
})
