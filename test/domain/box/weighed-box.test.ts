/** Mass, balance and air of plain boxes, and by how much a box misses, all worked out with a pencil. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'

const T = 0.018
const outer = { widthM: 0.64, heightM: 0.4, depthM: 0.38 }
const plain: BoxRequest = { outer, thicknessM: T }
const laid = (more: Partial<BoxRequest> = {}) => layOutBox({ ...plain, ...more }).result
/** Of 18 mm MDF at 750 kg/m³: what is outside less what is inside. */
const boardsKg = 750 * (0.64 * 0.4 * 0.38 - 0.604 * 0.364 * 0.344)
const driver = { cutOutDiameterM: 0.22, flangeDiameterM: 0.25, mountingDepthM: 0.13, massKg: 6 }

describe('what a box weighs', () => {
  it('is its boards less the hole, and its driver; it balances in its middle without one', () => {
    const bare = laid()
    expect(bare.massKg).toBeCloseTo(boardsKg, 9)
    expect(bare.boardMassKg).toBeCloseTo(boardsKg, 9)
    const { xM, yM, zM } = bare.centreOfGravity
    expect([xM, yM, zM]).toEqual([expect.closeTo(0.32, 9), expect.closeTo(0.19, 9), expect.closeTo(0.2, 9)])
    const holeKg = 750 * T * (Math.PI / 4) * 0.22 ** 2
    const loaded = laid({ drivers: [driver] })
    expect(loaded.boardMassKg).toBeCloseTo(boardsKg - holeKg, 9)
    expect(loaded.massKg).toBeCloseTo(boardsKg - holeKg + 6, 9)
  })

  it('hangs on the motor: seven tenths of its depth behind the board, or before it where it is turned round', () => {
    const holeKg = 750 * T * (Math.PI / 4) * 0.22 ** 2
    const depthOf = (motorM: number) => (boardsKg * 0.19 - holeKg * (T / 2) + 6 * motorM) / (boardsKg - holeKg + 6)
    const y = (mount?: 'reversed') => laid({ drivers: [{ ...driver, ...(mount && { mount }) }] }).centreOfGravity.yM
    expect(y()).toBeCloseTo(depthOf(0.7 * 0.13), 9)
    expect(y('reversed')).toBeCloseTo(depthOf(-0.7 * 0.13), 9)
  })

  it('counts an amplifier, and drivers of which only the weight is known', () => {
    const amplifier = { widthM: 0.2, heightM: 0.15, depthM: 0.05, massKg: 3 }
    const { massKg } = laid({ drivers: [{ massKg: 2, count: 2 }, { massKg: 1 }, {}], fittings: { amplifier } })
    expect(massKg - boardsKg).toBeCloseTo(2 * 2 + 1 + 3, 9)
  })
})

describe('air that a lining takes', () => {
  /** All walls but the front. */
  const wallsM2 = 2 * (0.604 * 0.344 + 0.364 * 0.344) + 0.604 * 0.364
  const taken = (lining: NonNullable<NonNullable<BoxRequest['fittings']>['lining']>) =>
    laid({ fittings: { lining } }).volume.displaced.liningM3

  // PET 1.38, wool 1.31, glass 2.5 g/cm³: any table of fibres, from memory.
  it('is that of its fibres, on every wall but the front unless told', () => {
    const pad = { thicknessM: 0.02, densityKgPerM3: 30 }
    expect(taken({ ...pad, fibre: 'polyester' })).toBeCloseTo((wallsM2 * 0.02 * 30) / 1380, 9)
    expect(taken({ ...pad, fibre: 'wool', areaM2: 0.5 })).toBeCloseTo((0.5 * 0.02 * 30) / 1310, 12)
    expect(taken({ ...pad, fibre: 'glass', areaM2: 0.5 })).toBeCloseTo((0.5 * 0.02 * 30) / 2500, 12)
    expect(taken({ ...pad, fibre: 'dense', areaM2: 0.5 })).toBeCloseTo(0.01, 12)
    expect(taken({ ...pad, densityKgPerM3: 3000, fibre: 'wool', areaM2: 0.5 })).toBeCloseTo(0.01, 12)
  })
})

describe('air that is told', () => {
  it('stands in place of what would be worked out, item by item, and the sum is theirs', () => {
    const displacement = {
      driversM3: 1e-3,
      portsM3: 2e-3,
      bracesM3: 3e-3,
      amplifierM3: 4e-3,
      terminalM3: 5e-4,
      liningM3: 6e-4,
      otherM3: 7e-4
    }
    const { volume } = laid({
      drivers: [{ ...driver, displacementM3: 9e-3 }],
      fittings: { terminal: {}, amplifier: { widthM: 0.2, heightM: 0.15, depthM: 0.05 } },
      displacement
    })
    const sum = Object.values(displacement).reduce((all, each) => all + each, 0)
    expect(volume.displaced).toMatchObject({ ...displacement, totalM3: expect.closeTo(sum, 12) })
    expect(volume.netM3).toBeCloseTo(volume.grossM3 - sum, 12)
    expect(volume.rows.every(({ known }) => known === 'given')).toBe(true)
  })

  it('of a driver counts once each; with its magnet outside what a sheet says of one inside does not', () => {
    const row = (more: object, request: Partial<BoxRequest> = {}) =>
      laid({ ...request, drivers: [{ ...driver, ...more }] }).volume.rows.find(({ item }) => item === 'drivers')
    const wide = { outer: { ...outer, widthM: 0.9 } }
    expect(row({ displacementM3: 2e-3, count: 2 }, wide)).toMatchObject({ volumeM3: 4e-3, known: 'given' })
    expect(row({ displacementM3: 2e-3, mount: 'reversed' })).toMatchObject({ volumeM3: 0, known: 'estimated' })
    expect(row({ displacementM3: 0, mount: 'reversed' })).toMatchObject({ volumeM3: 0, known: 'given' })
    expect(row({ mount: 'reversed' })).toBeUndefined()
    expect(row({})).toBeUndefined()
    expect(row({ displacementM3: 0 })).toMatchObject({ known: 'given' })
  })
})
