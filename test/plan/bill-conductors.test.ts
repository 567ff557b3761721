/** Every end, wall and core counted by hand on a drawing of the car: what is one short stops the work on a Sunday. */
import { describe, expect, it } from 'vitest'
import type { BillRow } from '../../src/contract/systems/workshop.ts'
import { driverRows } from '../../src/plan/bill/bill-box.ts'
import { type BillBranch, type BillCable, cableRows } from '../../src/plan/bill/bill-power.ts'
import { terminalRows, wireRows } from '../../src/plan/bill/bill-wiring.ts'

const fuse = { ratingA: 80, type: 'bolt-down' }
const cable: BillCable = {
  designation: '4 AWG',
  positiveLengthM: 5,
  returnKind: 'cable',
  returnLengthM: 4,
  fuse,
  grommetCount: 2
}
const branch = { ...cable, positiveLengthM: 1, returnLengthM: 0.5 }

/** Needs of all rows of a part together. */
const needs = (rows: readonly BillRow[]) => {
  const sums = new Map<string, number>()
  for (const { part = '', need } of rows) sums.set(part, (sums.get(part) ?? 0) + need)
  return (part: string) => sums.get(part) ?? 0
}

describe('a power cable', () => {
  const one = needs(cableRows(cable))

  it('has four lugs on studs and two ends in clamps: post, both sides of the fuse, post of the return; twice the amplifier', () => {
    expect([one('ring-lug'), one('power-ferrule')]).toEqual([4, 2])
    expect(one('sleeve')).toBeCloseTo(6 * 0.05, 12)
    expect([one('fuse'), one('fuse-holder'), one('grommet')]).toEqual([1, 1, 2])
  })

  it('is wanted twice in everything where two lie side by side', () => {
    const two = needs(cableRows({ ...cable, runs: 2 }))
    for (const part of ['power-cable', 'return-cable', 'fuse', 'fuse-holder', 'ring-lug', 'power-ferrule', 'grommet'])
      expect(two(part), part).toBe(2 * one(part))
  })

  it('has a fuse with its holder and two more lugs at the end that a second battery feeds', () => {
    const both = needs(cableRows({ ...cable, endFuse: fuse }))
    expect([both('fuse'), both('fuse-holder'), both('ring-lug')]).toEqual([2, 2, 6])
  })

  it('has a fuse in reserve for each in use', () => {
    const row = cableRows(cable).find(({ part }) => part === 'fuse')
    expect([row?.need, row?.quantity]).toEqual([1, 2])
  })
})

describe('a branch', () => {
  const ends = (given: Partial<BillBranch>) => {
    const alone = needs(cableRows(cable))
    const rows = needs(cableRows(cable, [{ ...branch, ...given, amplifier: 'bass' }]))
    return ['ring-lug', 'power-ferrule'].map(part => rows(part) - alone(part))
  }

  it('goes to the body by a lug, else back to a block: three or four ends in clamps', () => {
    expect(ends({ returnKind: 'chassis' })).toEqual([1, 3])
    expect(ends({})).toEqual([0, 4])
    const trunk = cableRows(cable, [{ ...branch, amplifier: 'bass' }]).find(({ part }) => part === 'power-ferrule')
    expect(trunk?.basis).toContain('distribution block')
  })
})

describe('signal and loudspeaker wire', () => {
  const pair = { kind: 'twisted-pair', name: 'pair', lengthM: 5, count: 2, converter: false, turnOnLengthM: 5 } as const

  it('has two cores a channel, each with a splice and a ferrule, and a pair for each channel', () => {
    const rows = needs(wireRows({ lead: pair }))
    expect([rows('splice'), rows('signal-ferrule'), rows('signal-lead')]).toEqual([4, 4, 10])
  })

  it('goes from each output, inside to each driver, with four receptacles a driver and four screws a cup', () => {
    const wire = { designation: '12 AWG', areaM2: 3.3e-6, lengthM: 2, count: 2 }
    expect(needs(wireRows({ speaker: wire, lead: pair }))('speaker-wire')).toBe(4)
    const rows = needs(terminalRows({ cupCount: 2, driverCount: 2, wire: { ...wire, lengthM: 0.5 } }))
    expect(['inside-wire', 'receptacle', 'cup-screw', 'terminal-cup'].map(rows)).toEqual([1, 8, 8, 2])
  })
})

it('two drivers are fixed and sealed like one, twice', () => {
  const driver = { cutOutDiameterM: 0.28, flangeDiameterM: 0.31, screwCount: 8, massKg: 7, baffleThicknessM: 0.036 }
  const [one, two] = [1, 2].map(count => needs(driverRows({ ...driver, count })))
  expect(['driver-screw', 't-nut', 'gasket'].map(part => two?.(part))).toEqual(
    ['driver-screw', 't-nut', 'gasket'].map(part => 2 * (one?.(part) ?? Number.NaN))
  )
  expect(one?.('driver-screw')).toBe(8)
})
