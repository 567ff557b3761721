/** What cables and fuses of a plan are asked, by Ohm, Kirchhoff and the lengths of a drawing; rules of thumb common practice, no source. */
import { describe, expect, it } from 'vitest'
import type { SupplyCurrent } from '../../src/contract/supply/supply-current.ts'
import type { PowerRun } from '../../src/contract/systems/plan-circuit.ts'
import { fuseTailM, relayPieceSize, sizeOfRun } from '../../src/plan/electric/plan-run.ts'
import { dropAssumed, trunkCable, trunkFuse, trunkRun } from '../../src/plan/electric/plan-trunk.ts'
import { type SecondLink, secondLink } from '../../src/plan/electric/second-battery.ts'
import { brief } from '../support/supply-briefs.ts'

const current = {
  amplifiers: [{ sizing: { voltageV: 12 } }, { sizing: { voltageV: 13.8 } }],
  sizing: { fullSineA: 100, heavyA: 60 },
  currents: { averageA: 14.6, heavyA: 60 }
} as unknown as SupplyCurrent
const charger: SecondLink = { kind: 'charger', ratedA: 30 }
const task = (more: object = {}) => ({ current, shared: false, ...more })

describe('the trunk', () => {
  it('has the lead to the body that it ends in; with a block the leads are those of the branches', () => {
    expect(trunkCable(brief(), task()).return).toMatchObject({ leadLengthM: 0.5 })
    expect(trunkCable(brief(), task({ shared: true })).return).toMatchObject({ leadLengthM: 0 })
    const back = { return: { kind: 'cable', lengthM: 4 } }
    expect(trunkCable(brief(back), task({ shared: true })).return).toEqual({ kind: 'cable', lengthM: 4 })
  })

  it('takes of the drop its share by length: 5 of 6.5 m through the body, 9 of 10.5 m with a cable back', () => {
    const shared = task({ shared: true })
    expect(trunkCable(brief(), shared).dropLimitV).toBeCloseTo((0.36 * 5) / 6.5, 12)
    expect(trunkCable(brief({ return: { kind: 'cable', lengthM: 4 } }), shared).dropLimitV).toBeCloseTo(
      (0.36 * 9) / 10.5,
      12
    )
    expect(trunkCable(brief({ dropLimitPercent: 2 }), task())).toMatchObject({ dropLimitPercent: 2 })
    expect(trunkCable(brief({ dropLimitPercent: 2 }), task()).dropLimitV).toBeUndefined()
    // a converter holds what leaves it
    expect(trunkCable(brief({ converter: {} }), shared).dropLimitV).toBeUndefined()
  })

  it('carries what all amplifiers draw, what a charger draws for its output, or what a converter takes', () => {
    const carries = (more: object) => {
      const { currentA, heavyCurrentA } = trunkCable(brief(), task(more))
      return [currentA, heavyCurrentA]
    }
    expect(carries({})).toEqual([100, 60])
    expect(carries({ link: { kind: 'relay' } })).toEqual([100, 60])
    // 30 A at 1.2 times the volts, 0.88 of them from the battery
    for (const amperes of carries({ link: charger })) expect(amperes).toBeCloseTo((30 * 1.2) / 0.88, 9)
    const converter = { ratedInputA: 45, heavyInputA: 31 }
    expect(carries({ current: { ...current, converter } })).toEqual([45, 31])
  })

  it('is judged at the charging voltage where every amplifier draws most then, at the battery’s where one does not', () => {
    const sizedAt = (...volts: number[]) =>
      trunkCable(
        brief(),
        task({ current: { ...current, amplifiers: volts.map(voltageV => ({ sizing: { voltageV } })) } })
      ).sourceVoltageV
    expect([sizedAt(13.8, 14.4), sizedAt(12, 14.4), sizedAt(11)]).toEqual([13.8, undefined, undefined])
  })

  it('is held to terminal, fuses and maker of the amplifier only where it ends in it', () => {
    const told = brief({ makerFuseA: 80, terminalAreaM2: 20e-6 })
    expect(trunkCable(told, task())).toMatchObject({ makerFuseA: 80, terminalAreaM2: 20e-6, onboardFusesA: [40, 40] })
    expect(trunkCable(told, task({ shared: true }))).not.toHaveProperty('makerFuseA')
    expect(trunkCable(told, task({ shared: true }))).not.toHaveProperty('onboardFusesA')
  })

  it('says the share of the drop as assumed only where one is shared and none was given', () => {
    const fields = (supply: object, shared: boolean) => dropAssumed(brief(supply), shared).map(({ value }) => value)
    expect(fields({}, true)).toHaveLength(1)
    expect([fields({}, false), fields({ dropLimitPercent: 2 }, true)]).toEqual([[], []])
  })
})

describe('the fuse of the trunk', () => {
  const fused = (runs: number, supply: object = {}, more: object = {}) =>
    trunkFuse(brief({ makerFuseA: 80, ...supply }), task(more), { designation: '4 AWG', runs })

  it('carries the share of its cable, and obeys a maker only over one cable to one amplifier', () => {
    expect([fused(1).currentA, fused(2).currentA, fused(4).heavyCurrentA]).toEqual([100, 50, 15])
    expect([fused(1).makerFuseA, fused(2).makerFuseA]).toEqual([80, undefined])
    expect(fused(1, {}, { shared: true }).makerFuseA).toBeUndefined()
  })

  it('stands between two batteries where a relay or nothing parts them', () => {
    const links = ['relay', 'joined'].map(kind => fused(1, {}, { link: { kind } }).linksTwoBatteries)
    expect(links).toEqual([true, true])
    expect([fused(1).linksTwoBatteries, fused(1, {}, { link: charger }).linksTwoBatteries]).toEqual([
      undefined,
      undefined
    ])
  })

  const fuse = { ratingA: 80 }
  const part = { done: true, outcome: { result: { fuse } } } as never
  const laid = (runs: number, more: object = {}, supply: object = {}) =>
    trunkRun(brief(supply), { designation: '4 AWG', runs }, part, task(more))

  it('is at both ends where the far end is a source: a second battery, or two further cables beside it', () => {
    const ends = (runs: number, more: object = {}) => laid(runs, more).endFuse !== undefined
    expect([ends(1), ends(2), ends(3), ends(1, { link: charger })]).toEqual([false, false, true, false])
    expect([ends(1, { link: { kind: 'relay' } }), ends(1, { link: { kind: 'joined' } })]).toEqual([true, true])
  })

  it('lies on a run with its return as long as it is laid: lead, none behind a block, or cable', () => {
    expect([laid(1).returnLengthM, laid(1, { shared: true }).returnLengthM]).toEqual([0.5, 0])
    expect(laid(1, { shared: true }, { return: { kind: 'cable', lengthM: 4 } }).returnLengthM).toBe(4)
  })

  it('has before it as much cable as the caller says, else what its place usually allows, more in a sheath', () => {
    const placed = { placement: { usualM: 0.175, sheathedM: 1 } } as never
    const tail = (supply: object) => fuseTailM(supply as never, placed)
    expect([tail({}), tail({ sheathed: true }), tail({ sheathed: false })]).toEqual([0.175, 1, 0.175])
    expect(tail({ fuseDistanceM: 0.3, sheathed: true })).toBe(0.3)
  })
})

describe('a second battery', () => {
  const link = (second: object | undefined, averageA = 14.6, first: object = {}) =>
    secondLink(brief({ secondBattery: second, battery: first }), {
      ...current,
      currents: { ...current.currents, averageA }
    })
  const lithium = { arrangement: 'isolated', chemistry: 'lithium' }

  it('is joined where so asked, parted by a relay from one of its kind, charged where it is of another', () => {
    expect(link(undefined)).toBeUndefined()
    expect(link({ arrangement: 'parallel', chemistry: 'lithium' })).toEqual({ kind: 'joined' })
    expect(link({ arrangement: 'isolated', chemistry: 'flooded' })).toEqual({ kind: 'relay' })
    expect(link(lithium, 14.6, { chemistry: 'lithium' })).toEqual({ kind: 'relay' })
  })

  it('is charged by the next charger above ordinary music, by the largest sold where none is', () => {
    const rated = [14.6, 20, 20.1, 45, 60, 90].map(averageA => {
      const found = link(lithium, averageA)
      return found?.kind === 'charger' ? found.ratedA : 0
    })
    expect(rated).toEqual([20, 20, 30, 50, 60, 60])
  })

  it('is reached from a relay by the size of the trunk, by that of its own lead where the trunk is several cables', () => {
    const [trunk, lead] = [{ designation: '4 AWG' }, { designation: '1/0 AWG' }] as const
    const size = (runs: number, has = true) =>
      relayPieceSize({ ...trunk, runs } as PowerRun, has ? (lead as PowerRun) : undefined)
    expect([size(1), size(2), size(2, false)]).toEqual(['4 AWG', '1/0 AWG', '4 AWG'])
    expect([sizeOfRun({ designation: '4 AWG', runs: 1 }), sizeOfRun({ designation: '4 AWG', runs: 2 })]).toEqual([
      '4 AWG',
      '2 × 4 AWG'
    ])
  })
})
