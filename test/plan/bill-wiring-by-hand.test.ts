/** Cables, lugs, clamps, clips and fuses of a bill, end by end on a drawing; rules of thumb common practice, no source. */
import { describe, expect, it } from 'vitest'
import { say } from '../../src/domain/say.ts'
import { accessoryRows } from '../../src/plan/bill/bill-accessories.ts'
import { branchesRows } from '../../src/plan/bill/bill-branches.ts'
import { type BillBranch, type BillCable, cableRows } from '../../src/plan/bill/bill-power.ts'
import { bought, needs } from '../support/bill-sums.ts'

const fuse = { ratingA: 80, type: 'SF30' } as const
const trunk: BillCable = {
  designation: '4 AWG',
  positiveLengthM: 5,
  returnKind: 'chassis',
  returnLengthM: 0.5,
  fuse,
  grommetCount: 1
}

describe('a cable in its clips', () => {
  it('has one every 300 mm of all that lies along the car: 5 m are 17, and 9 m with its return by cable 30', () => {
    const clips = (given: object) => bought(cableRows({ ...trunk, ...given }, false)).clip
    expect([clips({}), clips({ returnKind: 'cable', returnLengthM: 4 })]).toEqual([17, 30])
  })

  it('comes off the reel by half metres with a tenth more: 5 m as 5.5 m, 5.1 m as 6 m; unfused it has two lugs fewer', () => {
    const rows = (given: object) => cableRows({ ...trunk, ...given }, false)
    expect(bought(rows({}))['power-cable']).toBe(5.5)
    expect(bought(rows({ positiveLengthM: 5.1 }))['power-cable']).toBe(6)
    const { fuse: _, ...unfused } = trunk
    expect(needs(rows({}))['ring-lug']).toBe(4)
    expect(needs(cableRows(unfused, false))).toMatchObject({ 'ring-lug': 2, 'power-ferrule': 2 })
    expect(needs(rows({ returnLengthM: 0 }))).toMatchObject({ 'ring-lug': 3, 'power-ferrule': 1 })
  })
})

describe('behind the trunk', () => {
  const branch: BillBranch = { ...trunk, positiveLengthM: 1, amplifier: 'bass' }
  const classT = { ...branch, fuse: { ratingA: 200, type: 'class-t' } } as const
  const counts = (run: object, ...branches: BillBranch[]) => {
    const rows = needs(branchesRows({ ...trunk, ...run }, branches))
    return ['distribution-block', 'fuse', 'fuse-holder', 'ring-lug', 'power-ferrule'].map(part => rows[part] ?? 0)
  }

  it('stands a block, one more for returns by cable, none where nothing branches or a converter feeds straight', () => {
    expect(counts({}, branch)).toEqual([1, 1, 0, 1, 3])
    expect(counts({ returnKind: 'cable' }, { ...branch, returnKind: 'cable' })).toEqual([2, 1, 0, 0, 4])
    expect(counts({ converter: 'no-block' }, branch)).toEqual([0, 1, 1, 3, 3])
    expect(counts({})).toEqual([0, 0, 0, 0, 0])
  })

  it('has a cartridge in a holder of its own, with a lug on both sides of it', () => {
    expect(counts({}, classT)).toEqual([1, 1, 1, 3, 3])
    expect(counts({}, branch, classT)).toEqual([1, 2, 1, 4, 6])
  })

  it('has a block with places for fuses unless none of them fits in one', () => {
    const block = (...branches: BillBranch[]) =>
      branchesRows(trunk, branches).find(({ part }) => part === 'distribution-block')?.item
    expect(block(branch, classT)).toBe(block(branch, branch))
    expect(block(classT, classT)).not.toBe(block(branch, branch))
  })
})

describe('what stands beside the amplifier', () => {
  const lead = { designation: '4 AWG', runs: 1, positiveLengthM: 0.5, returnBy: 'body', returnLengthM: 0.5, fuse }
  const rows = (circuit: object) => needs(accessoryRows({ signalLead: { turnOnLengthM: 0 }, ...circuit } as never))

  it('ties a second battery by five lugs and a clamp: posts, both sides of its fuse, body; the block', () => {
    const second = { name: '95 A·h', link: 'joined', lead }
    expect(rows({ secondBattery: second })).toMatchObject({
      'second-battery': 1,
      'battery-tray': 1,
      'power-cable': 0.5,
      'return-cable': 0.5,
      fuse: 1,
      'fuse-holder': 1,
      'ring-lug': 5,
      'power-ferrule': 1,
      sleeve: 0.3
    })
    expect(rows({ secondBattery: second })).not.toHaveProperty('second-battery-link')
  })

  it('puts a relay with its two studs and 200 mm to the block between, or a charger by three lugs, a fuse and a clamp', () => {
    const relay = { name: '95 A·h', link: 'relay', relayA: 200 }
    expect(rows({ secondBattery: relay, trunk: lead })).toEqual({
      'second-battery': 1,
      'battery-tray': 1,
      'second-battery-link': 1,
      'power-cable': 0.2,
      'ring-lug': 2,
      sleeve: 0.1
    })
    const charger = { name: '95 A·h', link: 'charger', charger: { ratedA: 30, inputA: 40, lead } }
    expect(rows({ secondBattery: charger })).toMatchObject({ 'ring-lug': 3, 'power-ferrule': 1, fuse: 1 })
  })

  it('feeds the coil of a relay over a small fuse with one in reserve and its holder', () => {
    const second = { name: '95 A·h', link: 'relay', signalWireM: 4, signalFuseA: 3 }
    expect(rows({ secondBattery: second })).toMatchObject({ 'turn-on-wire': 4, 'fuse-holder': 2 })
    const { signalWireM: _, ...bare } = second
    expect(rows({ secondBattery: bare })).not.toHaveProperty('turn-on-wire')
  })

  it('clamps a converter by four ends: two lugs at its fuse, one more where its minus goes to the body', () => {
    const converter = { inputV: 24, nominalV: 12, outputV: 13.6, ratedA: 70, ratedInputA: 45 }
    const ends = (given: object) => {
      const found = rows({ converter: { ...converter, ...given } })
      return [found['ring-lug'] ?? 0, found['power-ferrule'] ?? 0, found['return-cable'] ?? 0]
    }
    expect(ends({ lead })).toEqual([3, 4, 0.5])
    expect(ends({ lead: { ...lead, returnBy: 'cable' } })).toEqual([2, 4, 0.5])
    expect(ends({ ground: { designation: '4 AWG', lengthM: 0.4 } })).toEqual([1, 1, 0.4])
  })

  it('hangs a capacitor on two leads with four lugs', () => {
    const capacitor = { designation: '4 AWG', lengthM: 0.3, at: 'block', said: { at: say('bill.charger') } }
    expect(rows({ capacitor })).toEqual({ 'power-cable': 0.6, 'ring-lug': 4, sleeve: 0.2 })
  })
})
