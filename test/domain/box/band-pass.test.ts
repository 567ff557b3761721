/** Boxes of two chambers: each has its own air, its own port, its own braces. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const box: BoxRequest = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.6 }, thicknessM: 0.018 }
const soundSpeedMPerS = 343.21

/** Helmholtz 1860: c/2π·sqrt(S/(L·V)), the end correction one flanged and one free end of the radius. */
const helmholtz = (radiusM: number, lengthM: number, volumeM3: number, c: number) =>
  (c / (2 * Math.PI)) * Math.sqrt((Math.PI * radiusM ** 2) / ((lengthM + 1.463 * radiusM) * volumeM3))

describe('the port of a band-pass box', () => {
  it('is tuned with the air of its own chamber: 43.972 L less a tube of 106 × 132 mm → 49.5 Hz (arithmetic)', () => {
    const port = { kind: 'round', innerDiameterM: 0.1, lengthM: 0.15, chamber: 'front' } as const
    const { result } = layOutBox({ ...box, divider: { fromFrontM: 0.2 }, port })
    const air = 0.604 * 0.364 * 0.2 - (Math.PI / 4) * 0.106 ** 2 * 0.132
    expect(result.port?.tuningHz).toBeCloseTo(helmholtz(0.05, 0.15, air, soundSpeedMPerS), 1)
    expect(result.port?.tuningHz).toBeCloseTo(49.5, 1)
  })

  it('keeps to its chamber in boxes of any size, front or rear, with a driver on the divider (seeded)', () => {
    const random = randomStream(2511)
    const between = (low: number, high: number) => low + (high - low) * random.uniform()
    for (let n = 0; n < 16; n++) {
      const outer = { widthM: between(0.5, 0.9), heightM: between(0.4, 0.5), depthM: between(0.6, 0.9) }
      const fromFrontM = between(0.2, 0.3)
      const chamber = n % 2 === 0 ? ('front' as const) : ('rear' as const)
      const [radius, length] = [between(0.03, 0.06), between(0.08, 0.15)]
      const face = chamber === 'front' ? ('front' as const) : ('back' as const)
      const port = { kind: 'round', innerDiameterM: 2 * radius, lengthM: length, chamber, face } as const
      const driver = { cutOutDiameterM: 0.2, displacementM3: 1.5e-3, face: 'divider' } as const
      const { result } = layOutBox({ outer, thicknessM: 0.018, divider: { fromFrontM }, port, drivers: [driver] })
      const section = (outer.widthM - 0.036) * (outer.heightM - 0.036)
      const tube = Math.PI * (radius + 0.003) ** 2 * (length - 0.018)
      const front = section * fromFrontM
      const rear = section * (outer.depthM - 3 * 0.018 - fromFrontM) - 1.5e-3
      const air = (chamber === 'front' ? front : rear) - tube
      expect(result.port?.tuningHz).toBeCloseTo(helmholtz(radius, length, air, soundSpeedMPerS), 1)
      expect(result.port?.pipeResonanceHz).toBeCloseTo(soundSpeedMPerS / (2 * (length + 1.463 * radius)), 1)
    }
  })

  it('finds its length for a tuning of its chamber, whether the divider or the net volume is given', () => {
    const port = { kind: 'round', innerDiameterM: 0.1, tuningHz: 46, chamber: 'front' } as const
    for (const divider of [{ fromFrontM: 0.22 }, { frontNetVolumeM3: 0.045 }]) {
      const { result } = layOutBox({ ...box, divider, port })
      const air = result.chambers?.find(({ name }) => name === 'front')?.netM3 ?? 0
      const lengthM = result.port?.lengthM ?? 0
      expect(Math.abs(helmholtz(0.05, lengthM, air, soundSpeedMPerS) / 46 - 1)).toBeLessThan(0.005)
      expect(result.port?.wantedTuningHz).toBe(46)
      if (divider.frontNetVolumeM3 !== undefined) expect(air).toBeCloseTo(0.045, 4)
    }
  })

  it('is refused where it stands in the other chamber than it is said to open from', () => {
    const port = { kind: 'round', innerDiameterM: 0.1, lengthM: 0.15 } as const
    for (const wrong of [port, { ...port, face: 'back', chamber: 'front' } as const]) {
      expect(() => layOutBox({ ...box, divider: { fromFrontM: 0.2 }, port: wrong })).toThrow(
        expect.objectContaining({ faults: [expect.objectContaining({ field: 'port.chamber' })] })
      )
    }
  })
})

describe('what stands in a chamber takes its air from that chamber', () => {
  const box = (more: object): BoxRequest => ({
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.6 },
    thicknessM: 0.018,
    divider: { fromFrontM: 0.2 },
    ...more
  })
  const driver = { cutOutDiameterM: 0.23, displacementM3: 0.002, mountingDepthM: 0.12 } as const
  const taken = (more: object) =>
    Object.fromEntries((layOutBox(box(more)).result.chambers ?? []).map(({ name, displacedM3 }) => [name, displacedM3]))

  it('a driver on the front in the front one, on the divider behind it, reversed before it, on the back behind it', () => {
    for (const [own, front] of [
      [{}, 0.002],
      [{ face: 'divider' }, 0],
      [{ face: 'divider', mount: 'reversed' }, 0.002],
      [{ face: 'back' }, 0]
    ] as const) {
      const { front: before, rear } = taken({ drivers: [{ ...driver, ...own }] })
      expect([own, before, rear]).toEqual([own, expect.closeTo(front, 9), expect.closeTo(0.002 - front, 9)])
    }
  })

  it('a cup on the front in the front one', () => {
    const { front, rear } = taken({ fittings: { terminal: { face: 'front', volumeM3: 0.0003 } } })
    expect([front, rear]).toEqual([expect.closeTo(0.0003, 9), expect.closeTo(0, 9)])
  })

  it('given for all drivers at once by their number', () => {
    const drivers = [driver, { ...driver, face: 'divider', count: 2 }]
    const { front, rear } = taken({ drivers, displacement: { driversM3: 0.009 } })
    expect([front, rear]).toEqual([expect.closeTo(0.003, 9), expect.closeTo(0.006, 9)])
  })

  it('a net volume of the front chamber is kept beside a driver on the front', () => {
    const { chambers } = layOutBox(box({ divider: { frontNetVolumeM3: 0.04 }, drivers: [driver] })).result
    expect(chambers?.find(({ name }) => name === 'front')?.netM3).toBeCloseTo(0.04, 6)
  })
})
